// Wires the page: one state, one redraw a frame.

import { mountCall, mountOthers } from './call.js';
import { mountClimb } from './climb.js';
import { mountHand } from './hand.js';
import { listen } from './live.js';
import { mountComingUp, mountHeader, mountHeat, mountSentence, saying } from './panels.js';
import { mountSound } from './sound.js';
import { mountThermometer } from './thermometer.js';
import { basisWords, otherWords, trust } from './thermometer-words.js';
import { aside, calls, connection, empty, forgetMissed, isLive, receive, reminders, standing } from './store.js';

const part = (name) => document.querySelector(`[data-testid="${name}"]`);

/** "Not now" puts a call aside for so long. */
const MINUTES_ASIDE = 5;

let state = empty();
let unit = remembered('unit') === 'F' ? 'F' : 'C';
let drawing = false;

const updateSentence = mountSentence(part('sentence'), part('sentence-state'), part('sentence-act'), part('note'));
const updateHeat = mountHeat(part('temperature'), part('rise'));
const updateHand = mountHand(part('hand'), part('temperature'), () => change(connection(state, 'lost')), redraw);
const updateHeader = mountHeader({ kitchen: part('kitchen'), batch: part('batch'), probe: part('probe'), basis: part('basis') });
const updateComingUp = mountComingUp(part('coming-up'), part('nothing-yet'));
const updateCall = mountCall(part('call'), acknowledge, putAside);
const updateOthers = mountOthers(part('others'), { acknowledge, takeBack, forgetMissed: () => change(forgetMissed(state)) });
const updateClimb = mountClimb(part('climb'), part('below'));
const updateSound = mountSound(part('sound'));
const updateThermometer = mountThermometer(part('thermometer'), ask);
const updateOtherProbes = mountLines(part('other-probes'));

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
  updateHand(state, unit);
  document.querySelector('main').dataset.hand = state.status?.hand ? 'yes' : 'no';
  updateHeader(state, unit);
  updateComingUp(state);
  updateCall(calling, unit, at);
  updateOthers({ reminders: reminders(state), standing: standing(state), aside: aside(state), missed: state.missed }, unit, at);
  const checking = location.hash === '#thermometer';
  showView(checking);
  if (checking) {
    part('sentence').hidden = true;
    updateThermometer(state, unit);
    put(part('base-now'), state.heard ? basisWords(state.basis, unit) : '');
  } else {
    updateClimb(state, unit);
  }
  put(part('trust'), state.heard ? trust(state.probe, unit, Date.now()) : '');
  updateOtherProbes((state.connection === 'live' && state.status?.others ? state.status.others : []).map((other) => otherWords(other, unit)));
  updateSound(calling);
  part('unit').textContent = unit === 'C' ? 'Show °F' : 'Show °C';
  part('new-cook').hidden = state.status?.stage !== 'off-the-heat' || state.connection !== 'live';
}

/** The pan or the thermometer; a call stays on top of both. */
function showView(checking) {
  for (const section of document.querySelectorAll('.heat, .picture, .next')) {
    section.hidden = checking;
  }
  part('thermometer').hidden = !checking;
}

function mountLines(element) {
  let shown = '';
  return function update(lines) {
    const key = lines.join('\n');
    if (key !== shown) {
      shown = key;
      element.replaceChildren(...lines.map((line) => Object.assign(document.createElement('p'), { textContent: line })));
    }
  };
}

function put(element, words) {
  if (element.textContent !== words) {
    element.textContent = words;
  }
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

async function putAside(id) {
  await post(`api/alarms/${encodeURIComponent(id)}/shelve`, { minutes: MINUTES_ASIDE });
}

async function takeBack(id) {
  await post(`api/alarms/${encodeURIComponent(id)}/unshelve`);
}

async function post(path, body) {
  try {
    await fetch(path, { method: 'POST', body: body && JSON.stringify(body), headers: body && { 'Content-Type': 'application/json' } });
  } catch {
    change(connection(state, 'lost')); // the live channel finds out whether it is back
  }
}

/** Asks the service for something; returns what went wrong, in one line, or nothing. */
async function ask(method, path, body) {
  try {
    const answer = await fetch(path, { method, body: body && JSON.stringify(body), headers: body && { 'Content-Type': 'application/json' } });
    return answer.ok ? '' : sentence((await answer.json()).error);
  } catch {
    change(connection(state, 'lost'));
    return 'No word from Spoonfall; try again.';
  }
}

function sentence(words) {
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}${words.endsWith('.') ? '' : '.'}`;
}

addEventListener('hashchange', () => {
  draw();
  (location.hash === '#thermometer' ? part('check-state') : part('to-thermometer')).focus();
  scrollTo(0, 0);
});
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
