// Wires the page: one state, one redraw a frame.

import { mountCall, mountOthers } from './call.js';
import { mountClimb } from './climb.js';
import { listen } from './live.js';
import { mountComingUp, mountHeader, mountHeat, mountSentence, saying } from './panels.js';
import { mountSound } from './sound.js';
import { calls, connection, empty, forgetMissed, isLive, receive, standing } from './store.js';

const part = (name) => document.querySelector(`[data-testid="${name}"]`);

let state = empty();
let unit = remembered('unit') === 'F' ? 'F' : 'C';
let drawing = false;

const updateSentence = mountSentence(part('sentence'), part('sentence-state'), part('sentence-act'), part('note'));
const updateHeat = mountHeat(part('temperature'), part('rise'));
const updateHeader = mountHeader({ kitchen: part('kitchen'), batch: part('batch'), probe: part('probe'), basis: part('basis') });
const updateComingUp = mountComingUp(part('coming-up'), part('nothing-yet'));
const updateCall = mountCall(part('call'), acknowledge);
const updateOthers = mountOthers(part('others'), acknowledge, () => change(forgetMissed(state)));
const updateClimb = mountClimb(part('climb'), part('below'));
const updateSound = mountSound(part('sound'));

function change(next) {
  if (next !== state) {
    state = next;
    redraw();
  }
}

function redraw() {
  if (!drawing) {
    drawing = true;
    requestAnimationFrame(draw);
  }
}

function draw() {
  drawing = false;
  const live = isLive(state);
  const calling = state.connection === 'live' ? calls(state) : [];
  const at = state.cook?.startedAtMs ?? null;
  document.body.dataset.look = lookOf(live, calling);
  document.body.dataset.connection = state.connection;
  updateSentence(saying(state, unit), calling.length > 0);
  updateHeat(state, live, unit);
  updateHeader(state, unit);
  updateComingUp(state);
  updateCall(calling, unit, at);
  updateOthers(standing(state), state.missed, unit, at);
  updateClimb(state, unit);
  updateSound(calling);
  part('unit').textContent = unit === 'C' ? 'Show °F' : 'Show °C';
  part('new-cook').hidden = state.status?.stage !== 'off-the-heat' || state.connection !== 'live';
}

function lookOf(live, calling) {
  if (calling.length > 0) {
    return 'call';
  }
  return live || !state.heard ? 'calm' : 'lost';
}

async function acknowledge(id) {
  await post(`api/alarms/${encodeURIComponent(id)}/acknowledge`);
}

async function post(path) {
  try {
    await fetch(path, { method: 'POST' });
  } catch {
    change(connection(state, 'lost')); // the live channel finds out whether it is back
  }
}

part('unit').addEventListener('click', () => {
  unit = unit === 'C' ? 'F' : 'C';
  remember('unit', unit);
  redraw();
});
part('new-cook').addEventListener('click', () => post('api/cook'));
addEventListener('keydown', (event) => {
  const elsewhere = document.activeElement !== document.body;
  const call = state.connection === 'live' ? calls(state)[0] : undefined;
  if ((event.key === ' ' || event.key === 'Enter') && call && !elsewhere) {
    event.preventDefault();
    acknowledge(call.id);
  }
});

listen(
  (message) => change(receive(state, message)),
  (now) => change(connection(state, now)),
);

function remembered(name) {
  try {
    return localStorage.getItem(`spoonfall.${name}`);
  } catch {
    return null;
  }
}

function remember(name, value) {
  try {
    localStorage.setItem(`spoonfall.${name}`, value);
  } catch {
    // a private window keeps nothing; the choice lasts as long as the page
  }
}
