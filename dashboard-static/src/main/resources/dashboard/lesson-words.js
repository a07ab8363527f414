// What a lesson shows at which moment, and in which words. Pure.

import { clock, difference, temperature } from './words.js';

/** How many seconds of the cook may pass in one of ours. */
export const SPEEDS = [1, 5, 20, 60];

/**
 * Where an address leads: to the lesson of a cook, or of two beside each other; without a cook to the pan. Other addresses name what they
 * lead to. @param {string} hash
 */
export function lessonOf(hash) {
  const [name, ...ids] = hash.replace(/^#/, '').split('/');
  const numbers = ids.map(Number).filter((id) => Number.isSafeInteger(id) && id > 0);
  const view = name !== 'lesson' ? hash.replace(/^#/, '') : numbers.length > 0 ? 'lesson' : 'pan';
  return { name: view, id: numbers[0] ?? null, other: numbers[1] ?? null };
}

/** What was seen and said at second `t`: the latest frame that is not after it; nothing before the first. */
export function frameAt(frames, t) {
  let [low, high] = [0, frames.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (frames[middle].t <= t) {
      low = middle + 1;
    } else {
      high = middle;
    }
  }
  return frames[low - 1] ?? null;
}

/**
 * The moments of one or two lessons in one row, with the lesson (0 or 1) that each belongs to and its second on the lesson's own clock, which
 * counts from where the cooks are lined up. Those that the picture does not show are left out.
 * @param {{moments: object[]}[]} lessons @param {number[]} zeros seconds of each cook at which the clock is 0 @param {[number, number]} span
 */
export function inOneRow(lessons, zeros, [from, until]) {
  return lessons
    .flatMap(({ moments }, who) => moments.map((moment) => ({ ...moment, who, at: moment.t - zeros[who] })))
    .filter(({ at }) => at >= from && at <= until)
    .sort((a, b) => a.at - b.at);
}

/** The next moment from where the lesson stands: its index, or -1. @param {number} stands index of the moment at which it stands, or -1 */
export function nextOf(row, now, stands) {
  return stands >= 0 ? (stands + 1 < row.length ? stands + 1 : -1) : row.findIndex(({ at }) => at > now);
}

/** The one before. */
export function previousOf(row, now, stands) {
  return stands >= 0 ? stands - 1 : row.findLastIndex(({ at }) => at < now);
}

/**
 * Plays on: returns [now, stands, playing]. Stops at the next moment if something is to be asked there, and at the end.
 * @param {{at: number, choices: string[]}[]} row @param {{now: number, stands: number, until: number, asks: boolean}} from
 * @param {number} bySeconds of the cook
 */
export function playOn(row, { now, stands, until, asks }, bySeconds) {
  const goal = Math.min(until, now + bySeconds);
  let last = stands;
  for (let next = nextOf(row, now, stands); next >= 0 && row[next].at <= goal; next = nextOf(row, now, next)) {
    last = next;
    if (asks && row[next].choices.length > 0) {
      return [row[next].at, next, false];
    }
  }
  return [goal, last, goal < until];
}

/** A climb as far as it had come at second `t`; it keeps its width. */
export function upTo(climb, t) {
  const end = climb.points[climb.points.length - 1]?.[0] ?? 0;
  return { ...climb, points: [...climb.points.filter(([at]) => at <= t), [end, null]], tests: climb.tests.filter((test) => test.t <= t) };
}

/** Such as "98.2 °C, 2.3° above boiling water". */
export function heatWords(frame, unit) {
  if (!frame || frame.temperatureC === null) {
    return 'No reading.';
  }
  const where = frame.riseC >= 0 ? 'above' : 'below';
  return `${temperature(frame.temperatureC, unit)}, ${difference(Math.abs(frame.riseC), unit)} ${where} boiling water`;
}

/** What the forecast was then; nothing where there was none. */
export function forecastWords(frame, startedAtMs) {
  if (!frame || frame.etaS === null || frame.etaS <= 0) {
    return '';
  }
  const [mid, low, high] = [frame.etaS, frame.etaLowS, frame.etaHighS].map((s) => clock(frame.t + s, startedAtMs));
  return low === high ? `It was forecast to set at ${mid}.` : `It was forecast to set at ${mid}, between ${low} and ${high}.`;
}

/** The time on the lesson's clock: of the day, or minutes from where two cooks are lined up. */
export function timeWords(now, startedAtMs, lined) {
  if (!lined) {
    return clock(now, startedAtMs);
  }
  const minutes = Math.round(now / 60);
  return minutes === 0 ? 'lined up here' : `${Math.abs(minutes)} min ${minutes < 0 ? 'before' : 'after'}`;
}

/** What was done about a moment, in one text. */
export function doneWords(moment) {
  if (moment.done.length > 0) {
    return moment.done.join(' ');
  }
  return moment.choices.length > 0 ? 'The record tells of nothing that was done within a quarter of an hour.' : '';
}
