// What the page knows, and how a message changes it. Pure: (state, message) -> state.

import { jarAlarms } from './jars-words.js';
import { withNote } from './notes-words.js';

const MOST_POINTS = 4000;
const LONGEST_STEP_S = 60;

/** A reminder that is so old was heeded or is no use any more. */
const REMINDS_FOR_S = 600;

/** What was reminded of in time for the set is of no use once it has come, or the pan is off the heat. */
const OF_NO_USE = {
  'at-gel-point': ['chill-plates'],
  'past-gel-point': ['chill-plates', 'warm-jars', 'stir'],
  'off-the-heat': ['chill-plates', 'warm-jars', 'stir'],
};

/** Nothing is known yet. */
export function empty() {
  return { connection: 'connecting', heard: false, seq: 0, run: '', missed: [], climb: [], alarms: [], reminders: [] };
}

/** The state after a message of the live channel. Unknown messages change nothing. */
export function receive(state, message) {
  switch (message.type) {
    case 'snapshot':
      return begin(state, message);
    case 'status':
      return state.heard ? follow(state, message) : state;
    case 'alarm':
      return { ...state, seq: message.seq, alarms: withAlarm(state.alarms, message.alarm) };
    case 'probe':
      return withProbe({ ...state, seq: message.seq }, message.probe);
    case 'reminder':
    case 'came-back':
      return { ...state, seq: message.seq, reminders: withReminder(state.reminders, message) };
    case 'afternoon':
      return { ...state, seq: message.seq, afternoon: message.afternoon };
    case 'note':
      return { ...state, seq: message.seq, notes: withNote(state.notes ?? [], message.note) };
    case 'pans':
      return { ...state, pans: withRows(state.pans, message.pans), canner: message.canner };
    case 'jars':
      return { ...state, jars: message };
    case 'stage':
      return { ...state, seq: message.seq };
    default:
      return state;
  }
}

/** The pans in their order, with those rows anew that changed. */
function withRows(pans, changed) {
  const rows = new Map(changed.map((row) => [row.name, row]));
  return (pans ?? []).map((row) => rows.get(row.name) ?? row);
}

/** The first probe is the one that the cook follows. */
function withProbe(state, changed) {
  const probes = (state.probes ?? []).map((probe) => (probe.name === changed.name ? changed : probe));
  return { ...state, probes, probe: probes[0] ?? changed };
}

/** The connection came or went. @param {'connecting' | 'live' | 'lost'} connection */
export function connection(state, connection) {
  return state.connection === connection ? state : { ...state, connection };
}

/** The page asked for a pan that is not there, or for one that is (''). @param {string} name */
export function unknownPan(state, name) {
  return { ...state, unknownPan: name };
}

/** The cook has read what was missed. */
export function forgetMissed(state) {
  return { ...state, missed: [] };
}

/** The alarms that call the cook, most urgent first. */
export function calls(state) {
  return sorted(state.alarms.filter((alarm) => alarm.state === 'unacknowledged'));
}

/** Those that stand without calling: known to the cook, or over before anyone knew. */
export function standing(state) {
  return sorted(all(state).filter((alarm) => alarm.state === 'acknowledged' || alarm.state === 'returned'));
}

/** Those that the cook put aside, the first to come back first. */
export function aside(state) {
  return state.alarms.filter((alarm) => alarm.state === 'shelved').sort((a, b) => a.shelvedUntilT - b.shelvedUntilT);
}

/** What the cook was reminded of of late, the newest first. */
export function reminders(state) {
  const { t = 0, stage } = state.status ?? {};
  return state.reminders.filter((reminder) => t - reminder.t < REMINDS_FOR_S && !OF_NO_USE[stage]?.includes(reminder.reminder));
}

/** Whether what is shown of the pan is live. */
export function isLive(state) {
  return state.connection === 'live' && Boolean(state.status?.fresh);
}

function begin(state, snapshot) {
  const same = state.heard && state.run === snapshot.run && state.pan === snapshot.pan && state.cook.number === snapshot.cook.number;
  const missed = same ? [...state.missed, ...missedAlarms(snapshot, state.seq)] : [];
  return {
    ...state,
    heard: true,
    run: snapshot.run,
    seq: snapshot.seq,
    pan: snapshot.pan,
    pans: snapshot.pans,
    canner: snapshot.canner,
    kitchen: snapshot.kitchen,
    cook: snapshot.cook,
    probe: snapshot.probe,
    probes: snapshot.probes,
    basis: snapshot.basis,
    syrup: snapshot.syrup,
    status: snapshot.status,
    afternoon: snapshot.afternoon,
    notes: snapshot.notes,
    alarms: snapshot.alarms,
    reminders: snapshot.events.filter(({ type }) => type === 'reminder' || type === 'came-back').reduce(withReminder, []),
    climb: snapshot.climb.map(([t, temperatureC]) => ({ t, riseC: above(temperatureC, snapshot.basis) })),
    missed,
  };
}

/** Alarms that were raised and went while this page was away. */
function missedAlarms(snapshot, seq) {
  const standing = new Set(snapshot.alarms.map((alarm) => alarm.id));
  return snapshot.events
    .filter((event) => event.type === 'alarm' && event.change === 'raised' && event.seq > seq)
    .map((event) => event.alarm)
    .filter((alarm) => !standing.has(alarm.id));
}

/** Between two readings by hand nothing is known: the line goes from one to the next. */
function followByHand(state, status) {
  const last = state.climb[state.climb.length - 1];
  if (status.seenT === null || (last && last.t >= status.seenT)) {
    return { ...state, status };
  }
  const riseC = above(status.seenC, state.basis);
  return { ...state, status, climb: [...state.climb, { t: status.seenT, riseC }] };
}

function follow(before, status) {
  const cook = { ...before.cook, startedAtMs: status.startedAtMs ?? before.cook.startedAtMs };
  const state = { ...before, cook };
  if (status.hand) {
    return followByHand(state, status);
  }
  const climb = state.climb;
  const last = climb[climb.length - 1];
  const riseC = status.fresh ? status.riseC : null;
  const news = riseC === null ? last && last.riseC !== null : !last || last.riseC === null || status.t - last.t >= 1;
  if (!news) {
    return { ...state, status };
  }
  // played so fast that the silence went by between two statuses
  const jumped = riseC !== null && last && last.riseC !== null && status.t - last.t > LONGEST_STEP_S;
  const gap = jumped ? [{ t: last.t + 1, riseC: null }] : [];
  return { ...state, status, climb: thinned([...climb, ...gap, { t: status.t, riseC }]) };
}

function thinned(points) {
  return points.length <= MOST_POINTS ? points : points.filter((point, i) => i % 2 === 0 || point.riseC === null);
}

/** The newest of each kind, the newest first. That nobody watched for a while is one of them. */
function withReminder(reminders, { t, reminder = 'came-back', text }) {
  return [{ t, reminder, text }, ...reminders.filter((other) => other.reminder !== reminder)];
}

function withAlarm(alarms, alarm) {
  const others = alarms.filter((other) => other.alarm !== alarm.alarm);
  return alarm.state === 'normal' || alarm.state === 'suppressed' ? others : [...others, alarm];
}

/** The alarms of the cook and of the jars. */
function all(state) {
  return [...state.alarms, ...jarAlarms(state.jars)];
}

/** The most urgent first, what is wrong before prompts to what only comes next, then the newest. */
function sorted(alarms) {
  const urgency = { high: 0, medium: 1, low: 2 };
  return [...alarms].sort((a, b) => urgency[a.priority] - urgency[b.priority] || a.prompt - b.prompt || b.raisedT - a.raisedT);
}

function above(temperatureC, basis) {
  return temperatureC === null ? null : temperatureC - basis.waterBoilC;
}
