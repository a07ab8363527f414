// What the number pad makes of taps, and what it says. Pure.

import { clock } from './words.js';

const LONGEST = 6;

/** The keys that type, row by row. */
export const KEYS = ['7', '8', '9', '4', '5', '6', '1', '2', '3', '.', '0', 'back'];

/** What is typed after another key. @param {string} draft @param {string} key */
export function press(draft, key) {
  if (key === 'back') {
    return draft.slice(0, -1);
  }
  if (draft.length >= LONGEST || (key === '.' && draft.includes('.'))) {
    return draft;
  }
  if (key === '.') {
    return draft === '' ? '0.' : `${draft}.`;
  }
  return draft === '0' ? key : `${draft}${key}`;
}

/** The key of the pad that a real keyboard's key means; null for none. @param {string} key */
export function keyOf(key) {
  if (/^[0-9]$/.test(key)) {
    return key;
  }
  return { '.': '.', ',': '.', Decimal: '.', Backspace: 'back' }[key] ?? null;
}

/** What is sent for a draft, such as "100.4C"; null when there is no number yet. @param {string} draft @param {'C' | 'F'} unit */
export function readingOf(draft, unit) {
  return /^[0-9]+(\.[0-9]*)?$/.test(draft) ? `${draft.replace(/\.$/, '')}${unit}` : null;
}

/** The steps of the quick keys: what thermometers with marks in that unit climb by. @param {'C' | 'F'} unit */
export function steps(unit) {
  return unit === 'C' ? [0.5, 1] : [1, 2];
}

/**
 * The last reading, so much higher, in the unit of the page; null when there is none.
 * @param {string | null} last such as "100.4C" @param {number} step @param {'C' | 'F'} unit
 */
export function higher(last, step, unit) {
  const typed = /^(-?[0-9.]+)([CF])$/.exec(last ?? '');
  if (!typed) {
    return null;
  }
  const value = Number(typed[1]);
  const shown = typed[2] === unit ? value : unit === 'F' ? value * 1.8 + 32 : (value - 32) / 1.8;
  return `${Number((shown + step).toFixed(1))}${unit}`;
}

/** Such as "100.4 °C" of "100.4C". @param {string} reading */
export function shown(reading) {
  return `${reading.slice(0, -1)} °${reading.slice(-1)}`;
}

/** The last reading, however it is known; null when there is none. */
export function lastReading(status) {
  return status.hand.last?.reading ?? (status.seenC === null ? null : `${Number(status.seenC.toFixed(1))}C`);
}

/** When the last was typed, and whether it is time for the next. */
export function whenWords(status, startedAtMs) {
  if (status.seenT === null) {
    return 'Type the first reading.';
  }
  const at = `Typed at ${clock(status.seenT, startedAtMs)}.`;
  return status.hand.due ? `${at} Read the thermometer again.` : at;
}

/** What can be taken back now, such as "100.4C"; null for nothing. */
export function takesBack(status) {
  const last = status.hand.last;
  return last && status.t <= last.takeBackUntilT ? last.reading : null;
}
