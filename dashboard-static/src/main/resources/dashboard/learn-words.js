// What the batches teach, in words and as points of a picture. Pure.

import { difference, fill } from './words.js';

/** Batches from a notebook are not recorded; their numbers are below 0. */
export const recorded = (batch) => batch.id > 0;

/** The headline and the sentences below it. @param {object | null} fruit what is known of one fruit @param {'C' | 'F'} unit */
export function learnSaying(fruit, unit) {
  if (fruit === null) {
    return { headline: 'What your batches teach.', lines: [] };
  }
  const [first, ...rest] = fruit.words.map((words) => fill(words, unit, null));
  const about = fruit.batches + fruit.others === 0 ? '' : `${capital(fruit.fruit)}. `;
  return { headline: `${about}${first}`, lines: rest };
}

/** What the pan is to be boiled to, and by whom. */
export function aimWords(fruit, aimC, unit) {
  const same = fruit !== null && Math.abs(fruit.riseC - aimC) < 0.05;
  return `This pan is to be boiled to ${difference(aimC, unit)} above boiling water${same ? ', as proposed' : ''}.`;
}

/** The words on the button that takes a proposal; empty where it is taken. */
export function takeWords(fruit, aimC, unit) {
  return fruit === null || Math.abs(fruit.riseC - aimC) < 0.05 ? '' : `Aim at ${difference(fruit.riseC, unit)}`;
}

/** Such as "Cook 12, orange: soft at 4.4°". */
export function batchWords(batch, unit) {
  const named = recorded(batch) ? `Cook ${batch.id}, ${batch.fruit}` : `${capital(batch.fruit)}, from the notebook`;
  return `${named}: ${batch.set} at ${difference(batch.finalRiseC, unit)}`;
}

/** The picture in words. */
export function pictureWords(fruit, unit) {
  const right = Math.round(100 * fruit.chances.right);
  return `The chance of "right" over the rise: highest at ${difference(fruit.riseC, unit)}, ${right} %.`;
}

/**
 * Where everything lies in a picture of that size: the hill of "right", the interval of what is best, a mark for each batch, the
 * softest sets lowest. What lies outside of the picture is left out.
 */
export function learnPicture(fruit, width, height, edge) {
  const first = fruit.curve[0].riseC;
  const last = fruit.curve[fruit.curve.length - 1].riseC;
  const floor = height - edge.bottom;
  const x = (riseC) => edge.left + ((riseC - first) / (last - first)) * (width - edge.left - edge.right);
  const y = (share) => floor - share * (floor - edge.top);
  const within = (riseC) => Math.min(last, Math.max(first, riseC));
  const levels = ['runny', 'soft', 'right', 'firm', 'stiff'];
  return {
    floor,
    hill: fruit.curve.map((point) => [x(point.riseC), y(point.right)]),
    best: [x(within(fruit.bestFromC)), x(within(fruit.bestToC))],
    target: [x(fruit.riseC), y(fruit.chances.right)],
    marks: fruit.told
      .filter((batch) => batch.finalRiseC >= first && batch.finalRiseC <= last)
      .map((batch) => ({ x: x(batch.finalRiseC), y: y(0.1 + 0.2 * levels.indexOf(batch.set)), set: batch.set })),
  };
}

function capital(words) {
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}`;
}
