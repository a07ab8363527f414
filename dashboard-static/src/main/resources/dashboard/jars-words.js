// What the view of the jars shows and asks, from how they stand. Pure.

import { fill } from './words.js';

/** The canner belongs to no pan: its calls are the same whichever pan is shown. */
const BASE = './api/jars';

const ALARM = /^jars-/;

/** Whether an alarm is one of the jars. @param {string} id */
export function ofJars(id) {
  return ALARM.test(id);
}

/** The call that says that somebody knows of an alarm of the jars. @param {string} id */
export function jarAlarmPath(id) {
  return `${BASE}/alarms/${encodeURIComponent(id)}/acknowledge`;
}

/** The alarms of the jars as the page's other alarms are: they cannot wait, so "Not now" is not offered. */
export function jarAlarms(jars) {
  return (jars?.alarms ?? []).map((alarm) => ({ ...alarm, canWait: false }));
}

/** Those that call. */
export function jarCalls(jars) {
  return jarAlarms(jars).filter((alarm) => alarm.state === 'unacknowledged');
}

/** The digits of a time that runs, such as "9:05" or "11:20 h". @param {number} seconds */
export function digits(seconds) {
  const whole = Math.max(0, Math.ceil(seconds));
  const two = (n) => String(n).padStart(2, '0');
  return whole < 3600
    ? `${Math.floor(whole / 60)}:${two(whole % 60)}`
    : `${Math.floor(whole / 3600)}:${two(Math.floor((whole % 3600) / 60))} h`;
}

/** The same for a screen reader, calm: whole minutes. @param {number} seconds */
export function spokenTime(seconds) {
  const minutes = Math.ceil(seconds / 60);
  return minutes <= 1 ? 'less than a minute left' : `${minutes} minutes left`;
}

/**
 * What the view shows, whatever is known.
 * @returns {{state: string, act: string, note: string, digits: string, label: string, main: object | null, quieter: object[],
 *   form: boolean}}
 */
export function jarsSaying(state, unit) {
  const jars = state.jars;
  if (state.connection !== 'live' || !jars) {
    const timed = jars && jars.phase !== 'empty';
    return {
      state: state.connection === 'lost' ? 'No word from Spoonfall.' : 'Waiting for Spoonfall.',
      act: timed && jars.dueT !== null ? fill(`By its last word the time is up at {clock:${jars.dueT}}.`, unit, jars.zeroAtMs) : '',
      note: timed ? 'Watch the canner yourself. I keep trying.' : 'I keep trying.',
      digits: '', label: '', main: null, quieter: [], form: false,
    };
  }
  const words = (text) => fill(text, unit, jars.zeroAtMs);
  return {
    state: words(jars.say.state),
    act: words(jars.say.act),
    note: words(jars.say.note),
    digits: jars.remainingS === null ? '' : digits(jars.remainingS),
    label: jars.remainingS === null ? '' : spokenTime(jars.remainingS),
    main: jars.offers.find((offer) => offer.main) ?? null,
    quieter: [...jars.offers.filter((offer) => !offer.main), ...undoOf(jars)],
    form: jars.phase === 'empty',
  };
}

function undoOf(jars) {
  return jars.undo === null ? [] : [{ does: 'undo', label: 'Take the last tap back', mark: jars.undo }];
}

/** What a tap asks. @param {{does: string, mark?: number}} offer @param {string} id names the tap */
export function tapAsked(offer, id) {
  return offer.does === 'undo'
    ? ['POST', `${BASE}/undo`, { mark: offer.mark }]
    : ['POST', `${BASE}/tap`, { tap: id, does: offer.does }];
}

/** What saying of a lid asks. @param {number} load @param {number} jar @param {'yes' | 'no' | 'unknown'} sealed */
export function sealAsked(load, jar, sealed, id) {
  return ['POST', `${BASE}/loads/${load}/seal`, { tap: id, jar, sealed }];
}

/** What putting a load away asks. @param {number} load */
export function awayAsked(load, id) {
  return ['POST', `${BASE}/loads/${load}/away`, { tap: id }];
}

/** What the form asks; members that were left empty are left out. @param {object} form */
export function batchOf(form) {
  const asked = {
    food: form.food,
    elevation: form.elevation,
    jar: form.jar,
    sterilised: form.sterilised,
    canner: form.canner,
    headspace: form.headspace,
    recipeTime: form.recipeTime,
    recipeElevation: form.recipeTime && form.recipeFor === 'low' ? '0m' : form.recipeTime && form.elevation,
    ph: form.canner === 'steam' ? form.ph : '',
    tested: form.canner === 'steam' ? form.tested : '',
  };
  return Object.fromEntries(Object.entries(asked).filter(([, value]) => value));
}

/** The call that looks the published time up. */
export function timeAsked(form) {
  return ['POST', `${BASE}/time`, batchOf(form)];
}

/** The call that puts jars into the canner. */
export function loadAsked(form, id) {
  return ['POST', BASE, { ...batchOf(form), jars: Number(form.jars), tap: id }];
}

/** The kitchen's elevation as the form shows it; empty if nobody said it. */
export function elevationOf(basis) {
  return basis?.elevationM == null ? '' : `${Math.round(basis.elevationM)}m`;
}

/** What is in the canner, in a line. */
export function loadWords(load) {
  if (!load) {
    return '';
  }
  const kind = { smaller: 'small jars', 'half-pint': 'half-pint jars', pint: 'pint jars' }[load.jar] ?? 'jars';
  return `${load.jars} ${load.jars === 1 ? kind.replace(/s$/, '') : kind} of ${load.food}, ${load.minutes} minutes in ${load.canner === 'steam' ? 'steam' : 'boiling water'}.`;
}

/** How long empty jars are boiled, for whoever still has to. @param {'yes' | 'no'} sterilised */
export function steriliseWords(time, sterilised) {
  return sterilised === 'yes'
    ? `To sterilise empty jars, boil them for ${time.steriliseMinutes} minutes here.`
    : 'Keep the clean jars hot until they are filled.';
}
