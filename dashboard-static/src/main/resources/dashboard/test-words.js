// What the view of the set tests shows and says. Pure.

import { clock, difference, temperature } from './words.js';

/** So many seconds of ours an answer can be taken back by one big tap. */
export const UNDO_S = 30;

/** So many seconds of the cook a pan may take to come back to the boil. */
const BACK_S = 240;

const WORTH_TESTING = ['test-window', 'at-gel-point', 'past-gel-point'];

/** What came off the heat close to setting is tested as long as it is no colder than that below the boil of water. */
const RESTED_C = 10;

/** Somebody may test sooner, where a thermometer may be wrong: the page offers it quietly. */
const MAY_TEST = ['simmering', 'rolling-boil'];

/** What can be seen, in the order of the buttons: the plate's come first, for which the page keeps the time. */
export const CHOICES = {
  plate: [
    { seen: 'runs', label: 'It runs' },
    { seen: 'thickens', label: 'It thickens' },
    { seen: 'wrinkles', label: 'It wrinkles' },
  ],
  sheet: [
    { seen: 'separate-drops', label: 'Separate drops' },
    { seen: 'drops-join', label: 'Two drops join' },
    { seen: 'sheets-off', label: 'It sheets off' },
  ],
  verdict: [
    { seen: 'not-yet', label: 'Not yet' },
    { seen: 'set', label: 'Set' },
  ],
};

/**
 * What to show: `hidden`, `offer` (the pan may come off the heat), `open` (a test goes on), `between` (on the way to the next
 * one) or `set`. `early`: it may be tested sooner than that tells much. `undo` names the test whose answer can be taken back by a big tap now, `later` the one found set before.
 */
export function testView(state, unit) {
  const { tests, t, stage } = state.status ?? {};
  if (state.connection !== 'live' || !tests) {
    return { mode: 'hidden' };
  }
  const last = tests.list[tests.list.length - 1];
  const seen = last?.seen ? last : null;
  const undo = seen && t - seen.seenT < UNDO_S * Math.max(1, state.cook.speed) ? seen.id : null;
  const at = state.cook.startedAtMs;
  if (tests.open) {
    const leftS = Math.max(0, last.plateDueT - t);
    return { mode: 'open', id: tests.open, title: openTitle(leftS), digits: leftS > 0 ? digits(leftS) : '', note: earlyWords(last, tests, unit), undo: null };
  }
  if (tests.set) {
    return { mode: 'set', id: last.id, title: seenWords(seen, unit, at), note: '', undo, later: undo ? null : last.id };
  }
  const note = nextWords(tests, unit);
  if (WORTH_TESTING.includes(stage) || cameOffUntested(state.status)) {
    const title = seen ? 'Test it again.' : 'Test the set.';
    return { mode: 'offer', title, note: seen ? seenWords(seen, unit, at) : note, undo };
  }
  const early = MAY_TEST.includes(stage);
  return seen ? { mode: 'between', title: seenWords(seen, unit, at), note, undo, early: early && !undo } : { mode: 'hidden', early };
}

/** Whether it came off the heat close to setting, and nobody has said that it is not set since. */
function cameOffUntested({ stage, wasClose, temperatureC, waterBoilC, tests }) {
  return stage === 'off-the-heat' && wasClose && !tests.goesBack && temperatureC !== null && temperatureC > waterBoilC - RESTED_C;
}

/** Said of a test before it is worth doing: what runs then may set all the same. */
function earlyWords(test, tests, unit) {
  const early = test.temperatureC !== null && test.temperatureC < tests.aim.windowFromC;
  return early ? `It is early, and may well run. A test tells most at ${temperature(tests.nextC, unit)}.` : '';
}

/** Whether a pan off the heat stands there for a test, or is on its way back from one: no moment to begin a new cook. */
export function inATest(status) {
  const last = status?.tests?.list.at(-1);
  return Boolean(last) && !last.set && (last.seenT === null || status.t - last.seenT < BACK_S);
}

function openTitle(leftS) {
  return leftS > 0 ? 'The plate stands.' : 'The plate is ready: what do you see?';
}

/** Such as "1:12". @param {number} seconds */
export function digits(seconds) {
  const whole = Math.ceil(seconds);
  return `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, '0')}`;
}

/** Such as "Two drops join, at 99.9 °C (17:31)." */
export function seenWords(test, unit, startedAtMs) {
  const label = CHOICES[test.how].find((choice) => choice.seen === test.seen)?.label ?? test.seen;
  const where = test.temperatureC === null ? '' : `, at ${temperature(test.temperatureC, unit)}`;
  return `${label}${where} (${clock(test.beganT, startedAtMs)}).`;
}

/** Such as "It tells most at 99.9 °C, 4.0° above boiling water." */
function nextWords(tests, unit) {
  const first = tests.list.length === 0;
  const where = `${temperature(tests.nextC, unit)}, ${difference(tests.nextRiseC, unit)} above boiling water`;
  if (tests.nextInS !== null && tests.nextInS < 20) {
    return first ? 'Now is the moment for the first test.' : 'Now is the moment for the next test.';
  }
  return `${first ? 'It tells most at' : 'The next test is at'} ${where}.`;
}
