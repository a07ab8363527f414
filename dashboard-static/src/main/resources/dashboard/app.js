// Wires the page: one state, one redraw a frame.

import { mountCall, mountOthers } from './call.js';
import { mountClimb } from './climb.js';
import { mountDoor } from './door.js';
import { put } from './elements.js';
import { mountHands } from './hands.js';
import { remember, remembered, rememberedUnit } from './kept.js';
import { mountHand } from './hand.js';
import { later } from './later.js';
import { listen } from './live.js';
import { mountNotes } from './notes.js';
import { oncePerCall, oncePerTap } from './one-act.js';
import { alarmPath, callsOfAll, mountPans, panOf, pathFor } from './pans.js';
import { mountComingUp, mountHeader, mountHeat, mountSentence, saying } from './panels.js';
import { showView } from './sections.js';
import { keepShell } from './shell.js';
import { inATest } from './test-words.js';
import { mountTests } from './tests.js';
import { basisWords, otherWords, trust } from './thermometer-words.js';
import { aside, connection, empty, forgetMissed, isLive, receive, reminders, standing, unknownPan } from './store.js';
import { HEADINGS, viewNow } from './views.js';

const part = (name) => document.querySelector(`[data-testid="${name}"]`);

/** "Not now" puts a call aside for so long. */
const MINUTES_ASIDE = 5;

const NEW_COOK = 'new-cook';

/** Which pan is shown is this tab's own choice. */
const tab = () => sessionStorage;

let state = empty();
let lastQuiet = wayTo(viewNow() === 'pan' ? 'thermometer' : viewNow());
let unit = rememberedUnit();
let drawing = false;
let refused = { of: '', words: '' }; // what was tapped last: the call's id, or a new cook
let headingDue = false; // somebody came to a quiet page that is not there yet

const updateSentence = mountSentence(part('sentence'), part('sentence-state'), part('sentence-act'), part('note'));
const updateHeat = mountHeat(part('temperature'), part('rise'));
const updateHand = mountHand(part('hand'), part('temperature'), () => change(connection(state, 'lost')), redraw);
const updateHeader = mountHeader({ kitchen: part('kitchen'), batch: part('batch'), probe: part('probe'), basis: part('basis') });
const updateComingUp = mountComingUp(part('coming-up'), part('nothing-yet'));
const once = oncePerTap();
const answerCall = oncePerCall(acknowledge); // a key and the button it presses may both answer
const updateCall = mountCall(part('call'), once(answerCall), once(putAside));
const updateOthers = mountOthers(part('others'), { acknowledge, takeBack, forgetMissed: () => change(forgetMissed(state)) });
const updateClimb = mountClimb(part('climb'), part('below'));
const updateHands = mountHands({ sound: part('sound'), voice: part('voice'), place: part('hands') }, answerCall);
const updateAfternoon = quiet('afternoon', () => import('./afternoon.js'), ({ mountAfternoon }) => mountAfternoon(part('afternoon'), ask));
const updateJars = quiet('jars', () => import('./jars.js'), ({ mountJars }) => mountJars(part('jars'), ask));
const updateLearn = quiet('learn', () => import('./learn.js'), ({ mountLearn }) => mountLearn(part('learn'), ask));
const updateBook = quiet('book', () => import('./book.js'), ({ mountBook }) => mountBook(part('book')));
const updateLesson = quiet('lesson', () => import('./lesson.js'), ({ mountLesson }) => mountLesson(part('lesson')));
const updatePlan = quiet('plan', () => import('./plan.js'), ({ mountPlan }) => mountPlan(part('plan'), ask));
const updateThermometer = quiet('thermometer', () => import('./thermometer.js'), ({ mountThermometer }) => mountThermometer(part('thermometer'), ask));
const updateDoor = mountDoor(part('door'), part('looks-on'));
const updatePans = mountPans(part('pans'));
const updateTests = mountTests(part('tests'), part('test-sooner'), ask);
const updateNotes = mountNotes(part('notes'), ask);
const updateOtherProbes = mountLines(part('other-probes'));

function change(next) {
  if (next !== state) {
    state = next;
    updateHands(state, allCalls(), unit);
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
  const calling = allCalls();
  const at = state.cook?.startedAtMs ?? null;
  const view = viewNow();
  document.body.dataset.look = lookOf(live || (['jars', 'plan', 'book', 'learn', 'lesson'].includes(view) && state.connection === 'live'), calling);
  document.body.dataset.connection = state.connection;
  updateSentence(saying(state, unit), calling.length > 0);
  updateHeat(state, live, unit);
  updateHand(state, unit, pathFor('api/readings', state));
  document.querySelector('main').dataset.hand = state.status?.hand ? 'yes' : 'no';
  updateHeader(state, unit);
  updatePans(state, unit);
  updateComingUp(state);
  updateNotes(state);
  updateCall(calling, unit, at);
  updateOthers({ reminders: reminders(state), standing: standing(state), aside: aside(state), missed: state.missed }, unit, at);
  showView(view);
  updateDoor(view === 'devices');
  updateTests(state, unit, view !== 'pan');
  if (view === 'thermometer') {
    updateThermometer(state, unit);
    put(part('base-now'), state.heard ? basisWords(state.basis, unit) : '');
  } else if (view === 'afternoon') {
    updateAfternoon(state);
  } else if (view === 'jars') {
    updateJars(state, unit);
  } else if (view === 'learn') {
    updateLearn(state, unit);
  } else if (view === 'book') {
    updateBook(unit);
  } else if (view === 'lesson') {
    updateLesson(unit, calling.length > 0);
  } else if (view === 'plan') {
    updatePlan(state, unit);
  } else if (view === 'pan') {
    updateClimb(state, unit);
  }
  put(part('trust'), state.heard ? trust(state.probe, unit, Date.now()) : '');
  updateOtherProbes((state.connection === 'live' && state.status?.others ? state.status.others : []).map((other) => otherWords(other, unit)));
  part('unit').textContent = unit === 'C' ? 'Show °F' : 'Show °C';
  part('new-cook').hidden = state.status?.stage !== 'off-the-heat' || inATest(state.status) || state.connection !== 'live';
  put(part('act-error'), offered(refused.of, calling) ? refused.words : '');
}

function allCalls() {
  return state.connection === 'live' ? callsOfAll(state, unit) : [];
}

/** A quiet page of that name, which comes a little later. */
function quiet(name, load, mount) {
  return later(load, mount, () => {
    if (headingDue && viewNow() === name) {
      focusOn(name);
    }
  });
}

/** Leads the focus to the heading of a view, or back to the way by which one left the pan. */
function focusOn(view) {
  const heading = part(HEADINGS[view] ?? `to-${lastQuiet}`);
  headingDue = heading === null;
  heading?.focus();
}

/** The quiet page from which one comes to a view. */
function wayTo(view) {
  return view === 'lesson' ? 'book' : view;
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

function lookOf(live, calling) {
  if (calling.length > 0) {
    return 'call';
  }
  return live || !state.heard ? 'calm' : 'lost';
}

function acknowledge(id) {
  return act(id, alarmPath(id, 'acknowledge', state));
}

function putAside(id) {
  return act(id, alarmPath(id, 'shelve', state), { minutes: MINUTES_ASIDE });
}

function takeBack(id) {
  return act(id, alarmPath(id, 'unshelve', state));
}

/** All pages that show this cook mean the same new one, however often somebody taps. */
function beginNewCook() {
  return act(NEW_COOK, pathFor('api/cook', state), { tap: `after-${state.cook.number}` });
}

/** Does something about a call, or begins a cook; what went wrong is said for as long as it can be tried again. */
async function act(of, path, body) {
  refused = { of, words: await send('POST', path, body) };
  redraw();
}

/** Whether what was refused can be tried again. */
function offered(of, calling) {
  return of === NEW_COOK ? !part('new-cook').hidden : [...calling, ...standing(state), ...aside(state)].some((alarm) => alarm.id === of);
}

/** Asks the service for something about the pan that is shown, and tells what was answered; returns what went wrong, in one line, or nothing. */
function ask(method, path, body, heard) {
  return send(method, pathFor(path, state), body, heard);
}

async function send(method, path, body, heard = () => {}) {
  try {
    const answer = await fetch(path, { method, body: body && JSON.stringify(body), headers: body && { 'Content-Type': 'application/json' } });
    const said = await answer.json();
    if (answer.ok) {
      heard(said);
    }
    return answer.ok ? '' : sentence(said.error);
  } catch {
    change(connection(state, 'lost')); // the live channel finds out whether it is back
    return 'No word from Spoonfall; try again.';
  }
}

function sentence(words) {
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}${words.endsWith('.') ? '' : '.'}`;
}

addEventListener('hashchange', () => {
  const pan = panOf(location.hash);
  if (pan !== null) {
    remember('pan', pan, tab);
    change(unknownPan(state, ''));
    follow(pan);
    redraw();
    return; // the focus stays in the row of pans
  }
  draw();
  const view = viewNow();
  focusOn(view);
  lastQuiet = view === 'pan' ? lastQuiet : wayTo(view);
  scrollTo(0, 0);
});
part('unit').addEventListener('click', () => {
  unit = unit === 'C' ? 'F' : 'C';
  remember('unit', unit);
  redraw();
});
part('new-cook').addEventListener('click', beginNewCook);

const follow = listen(
  panOf(location.hash) ?? remembered('pan', tab) ?? '',
  (message) => change(receive(state, message)),
  (now) => change(connection(state, now)),
  (pan) => {
    remember('pan', '', tab);
    change(unknownPan(state, pan));
  },
);
keepShell();
if (location.hash !== globalThis.ahead.hash) {
  draw(); // somebody was quicker than this page, and what is hidden cannot be focused
  focusOn(viewNow());
}
