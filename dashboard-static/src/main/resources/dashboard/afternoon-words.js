// What is said of the afternoon's steps. Pure.

import { clock, fill, inMinutes, inMinutesBetween } from './words.js';

/** An interval that is narrower than this is not worth reading; and beyond the set it is always the same. */
const LEAST_WIDTH_S = 120;
const MOST_RANGES = 2;

/** The sentence of the afternoon with its clocks filled in; they are in seconds of the afternoon. */
export function afternoonSaying(afternoon) {
  const words = (text) => fill(text, 'C', afternoon.startedAtMs);
  return { state: words(afternoon.say.state), act: words(afternoon.say.act), note: words(afternoon.say.note) };
}

/** Steps and preparations in the order of their times, each as { id, kind, state, when, what, how }. */
export function rows(afternoon) {
  const lines = afternoon.steps.map((step) => ({ ...step, kind: 'step' }));
  for (const preparation of afternoon.preparations) {
    const own = lines.findIndex((line) => line.kind === 'step' && line.id === preparation.before);
    const at = preparation.doneT ?? preparation.dueT;
    const later = at === null ? -1 : lines.findIndex((line) => timeOf(line) > at);
    const place = later === -1 ? own : Math.min(own, later);
    lines.splice(place, 0, { ...preparation, kind: 'preparation' });
  }
  const ranged = lines.filter((line) => line.kind === 'step' && line.state === 'later' && line.forecast).slice(0, MOST_RANGES);
  return lines.map((line) => row(ranged.includes(line) ? line : { ...line, forecast: false }, afternoon));
}

/** When a line belongs into the list. */
function timeOf({ kind, state, begunT, endedT, doneT, dueT }) {
  if (kind === 'preparation') {
    return doneT ?? dueT ?? -Infinity;
  }
  return begunT ?? endedT ?? (state === 'later' ? dueT : null) ?? -Infinity;
}

function row(line, { t, startedAtMs }) {
  const at = (seconds) => clock(seconds, startedAtMs);
  const base = { id: line.id, kind: line.kind, state: line.state, what: line.name };
  if (line.kind === 'preparation') {
    const seconds = line.doneT ?? line.dueT;
    const how = { done: 'done', skipped: 'past', now: 'now' }[line.state] ?? inMinutes(line.dueT - t);
    return { ...base, when: seconds === null ? '' : at(seconds), how };
  }
  switch (line.state) {
    case 'now':
      return { ...base, when: at(line.begunT), how: 'now' };
    case 'later':
      if (line.known === false) {
        return { ...base, when: '', how: line.dueT === null ? '' : 'not known yet' };
      }
      if (line.leastMinutes !== undefined) {
        return { ...base, when: '', how: inMinutesBetween(line.leastMinutes, undefined) };
      }
      return { ...base, when: at(line.dueT), what: line.name + range(line, at), how: inMinutes(line.dueT - t) };
    default: {
      const begun = line.begunT ?? line.endedT;
      const until = line.begunT === null ? 'done' : `until ${at(line.endedT)}`;
      return { ...base, when: at(begun), how: line.state === 'skipped' ? 'left out' : until };
    }
  }
}

function range({ forecast, fromT, untilT }, at) {
  return forecast && untilT - fromT >= LEAST_WIDTH_S ? `, ${at(fromT)} to ${at(untilT)}` : '';
}

/** What the notes have, for the chooser of what is to be changed: [value, words]. */
export function choices(afternoon) {
  return [...afternoon.steps, ...afternoon.preparations].map(({ id, name }) => [id, name]);
}

/** Where a step or a preparation of one's own can go: [value, words]. */
export function places(afternoon) {
  const after = afternoon.steps.map(({ id, name }) => [`after ${id}`, `After: ${name}`]);
  const before = afternoon.steps.map(({ id, name }) => [`before ${id}`, `Ready before: ${name}`]);
  return [...after, ...before];
}

/** The caution of an afternoon that does without processing; empty else. */
export function unprocessed(afternoon) {
  return afternoon.steps.some((step) => step.id === 'process' && step.state !== 'skipped')
    ? ''
    : 'These jars are not processed: they belong in the fridge. Your local food-safety authority knows how long they keep.';
}

/** The request that a tap makes: [method, path, body]. @param {string} tap an id of its own, by which it is taken once */
export function request(does, id, tap) {
  const where = does === 'prepared' ? 'preparations' : 'steps';
  const what = does === 'prepared' ? 'done' : does;
  return ['POST', `api/afternoon/${where}/${encodeURIComponent(id)}/${what}`, { tap }];
}

/** The request that adds something: place is one of places(). */
export function addition(name, minutes, place, tap) {
  const [where, step] = place.split(' ');
  return ['POST', 'api/afternoon/notes', { tap, name, minutes: Number(minutes), [where]: step }];
}
