// Several pans on one page: which one is shown, how the others stand, and the calls of all.

import { put } from './elements.js';
import { jarAlarmPath, jarCalls, ofJars } from './jars-words.js';
import { calls } from './store.js';
import { fill, temperature } from './words.js';

const URGENCY = { high: 0, medium: 1, low: 2 };

/** The pan that an address names, such as "small pan" in "#pan=small%20pan"; null if it names none. @param {string} hash */
export function panOf(hash) {
  if (!hash.startsWith('#pan=')) {
    return null;
  }
  try {
    return decodeURIComponent(hash.slice('#pan='.length)) || null;
  } catch {
    return null; // typed by hand
  }
}

/** The address that shows a pan. @param {string} pan */
export function hrefOf(pan) {
  return `#pan=${encodeURIComponent(pan)}`;
}

/** What each pan has of its own, by its name or path; made when it is first asked for. @param {(pan: string) => object} make */
export function ofEach(make) {
  const made = new Map();
  return (pan) => {
    if (!made.has(pan)) {
      made.set(pan, make(pan));
    }
    return made.get(pan);
  };
}

/** A call of the service, such as "api/cook", for the pan that is shown. */
export function pathFor(path, state) {
  return several(state) ? panPath(path, state.pan) : path;
}

/** The call that answers an alarm: one of the pan that is shown, or one of {@link callsOfAll}. */
export function alarmPath(id, act, state) {
  if (ofJars(id)) {
    return jarAlarmPath(id);
  }
  const slash = id.indexOf('/');
  const path = `api/alarms/${encodeURIComponent(id.slice(slash + 1))}/${act}`;
  return slash < 0 ? pathFor(path, state) : panPath(path, id.slice(0, slash));
}

/**
 * The alarms that call the cook, of every pan and of the jars, most urgent first. With several pans the titles name theirs and the ids
 * begin with it ("small pan/stalled-1"); the texts are then filled in, for every pan counts its time from its own start.
 */
export function callsOfAll(state, unit) {
  if (!several(state)) {
    return byUrgency([...calls(state), ...jarCalls(state.jars)]);
  }
  const own = calls(state).map((alarm) => named(alarm, state.pan, state.cook.startedAtMs, unit));
  const others = state.pans
    .filter((pan) => pan.name !== state.pan)
    .flatMap((pan) => pan.alarms.map((alarm) => named(alarm, pan.name, pan.startedAtMs, unit)));
  return byUrgency([...own, ...others, ...jarCalls(state.jars)]);
}

function byUrgency(alarms) {
  return alarms.sort((a, b) => URGENCY[a.priority] - URGENCY[b.priority]);
}

/** What the row says of each pan: { name, words, shown, calls }. */
export function rows(state, unit) {
  const live = state.connection === 'live';
  return (several(state) ? state.pans : []).map((pan) => ({
    name: pan.name,
    title: capital(pan.name),
    words: !live ? '' : pan.alarms.length > 0 ? 'Needs you.' : fill(pan.state, unit, pan.startedAtMs),
    shown: pan.name === state.pan,
    calls: live && pan.alarms.length > 0,
  }));
}

/** What the row says of the canner; empty without one. */
export function cannerWords(state, unit) {
  if (!state.canner || state.connection !== 'live') {
    return '';
  }
  const { temperatureC, detail, state: how } = state.canner;
  const trouble = { waiting: 'Waiting for its thermometer.', silent: 'No word from its thermometer.', ended: 'Its recording is over.' };
  return temperatureC === null ? (trouble[how] ?? detail) : temperature(temperatureC, unit);
}

/** The row of pans at the top. Returns update(state, unit). */
export function mountPans(nav) {
  const links = new Map();
  const canner = entry('p', 'Canner');
  const note = document.createElement('p');
  note.setAttribute('role', 'status');
  let listed = '';

  // After a tap the keys, and a pedal, are for calls again; whoever goes by the keyboard stays where they are.
  nav.addEventListener('click', (event) => event.detail > 0 && event.target.closest('a')?.blur());

  return function update(state, unit) {
    const pans = rows(state, unit);
    const inCanner = cannerWords(state, unit);
    const unknown = state.unknownPan ? `No pan is called “${state.unknownPan}” here. This is another one.` : '';
    nav.hidden = pans.length === 0 && inCanner === '' && unknown === '';
    const key = JSON.stringify([pans.map((pan) => pan.name), inCanner !== '', unknown !== '']);
    if (key !== listed) {
      listed = key;
      links.clear();
      pans.forEach((pan) => links.set(pan.name, link(pan)));
      nav.replaceChildren(...links.values(), ...(inCanner ? [canner] : []), ...(unknown ? [note] : []));
    }
    for (const pan of pans) {
      const a = links.get(pan.name);
      pan.shown ? a.setAttribute('aria-current', 'true') : a.removeAttribute('aria-current');
      a.dataset.calls = String(pan.calls);
      put(a.lastChild, pan.words);
    }
    put(canner.lastChild, inCanner);
    put(note, unknown);
  };
}

function several(state) {
  return (state.pans?.length ?? 0) > 1;
}

function panPath(path, pan) {
  return path.replace(/^api\//, `api/pans/${encodeURIComponent(pan)}/`);
}

function named(alarm, pan, startedAtMs, unit) {
  return {
    ...alarm,
    id: `${pan}/${alarm.id}`,
    title: `${capital(pan)}: ${fill(alarm.title, unit, startedAtMs)}`,
    act: fill(alarm.act, unit, startedAtMs),
  };
}

function capital(words) {
  return words.charAt(0).toUpperCase() + words.slice(1);
}

function link(pan) {
  const a = entry('a', pan.title);
  a.href = hrefOf(pan.name);
  return a;
}

function entry(tag, title) {
  const element = document.createElement(tag);
  element.className = 'pan';
  const [name, words] = [document.createElement('strong'), document.createElement('span')];
  name.textContent = title;
  element.append(name, ' ', words);
  return element;
}
