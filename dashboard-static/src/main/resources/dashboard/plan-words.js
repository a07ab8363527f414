// The plan of a batch in words. Pure.

import { temperature } from './words.js';

const POUND_KG = 0.45359237;

/** What the plan comes to, in one sentence. @param {object | null} plan */
export function planSentence(plan) {
  if (plan === null) {
    return 'What goes into the pan?';
  }
  if (plan.waterOffKg.middle === 0) {
    return 'Nothing to boil down.';
  }
  const jars = `${span(plan.jars, 1)} ${plan.jars.many}`;
  return plan.boilMinutes === null ? `${jars}.` : `${jars}, after about ${Math.round(plan.boilMinutes.middle)} minutes of boiling.`;
}

/** What to do about it. @param {object | null} plan */
export function planAct(plan) {
  if (plan === null) {
    return 'Write your recipe below, a row for each ingredient.';
  }
  return `Have ${plan.jars.ready} ready, and a pan of ${plan.panL.toFixed(1)} L or more.`;
}

/** The figures, as pairs of what and how much. @param {object} plan @param {'C' | 'F'} unit */
export function figures(plan, unit) {
  const rows = [
    ['Goes in', `${mass(plan.in.totalKg)}: ${kg(plan.in.waterKg)} of water, ${kg(plan.in.solidsKg)} that dissolves, ${kg(plan.in.restKg)} of neither`],
    ['Solids at first', percent(plan.in.solids)],
    ['Sets at', `${temperature(plan.out.gelPointC, unit)}, with ${percent(plan.out.solids)} solids`],
    ['Comes out', `${mass(plan.out.finishedKg.middle)} (${span(plan.out.finishedKg, 2)} kg)`],
    ['Water to drive off', `${plan.waterOffKg.middle.toFixed(2)} kg (${span(plan.waterOffKg, 2)})`],
  ];
  if (plan.boilMinutes !== null) {
    rows.push(['Boils for', `about ${Math.round(plan.boilMinutes.middle)} minutes (${span(plan.boilMinutes, 0)})`]);
    rows.push(['To the boil', `about ${Math.round(plan.heatMinutes)} minutes from cold`]);
    rows.push(['In the pan', `${plan.hob.kW.toFixed(1)} kW, ${hobFrom(plan.hob)}`]);
  }
  rows.push(['Pan', `${plan.panL.toFixed(1)} L or more: four times the ${plan.contentsL.toFixed(1)} L that go in, for the foam`]);
  return rows;
}

/** What is said of a plan: warnings, what does not scale, the rest. @param {object} plan */
export function allAdvice(plan) {
  const unscaled = (plan.doesNotScale ?? []).map((text) => ({ id: 'does-not-scale', warns: false, text, source: '' }));
  return [...plan.advice.filter((one) => one.warns), ...unscaled, ...plan.advice.filter((one) => !one.warns)];
}

/**
 * How many jars are in the canner, or on the shelf and went into it since a cook began, for a count to begin with; '' for none.
 * @param {object | undefined} jars @param {number | null | undefined} cookAtMs when the cook began
 */
export function jarsFilled(jars, cookAtMs) {
  const shelf = (jars?.shelf ?? []).filter((load) => jars.zeroAtMs + 1000 * load.loadedT >= (cookAtMs ?? Infinity));
  const loads = [jars?.load, ...shelf].filter(Boolean);
  const filled = loads.reduce((sum, load) => sum + load.jars, 0);
  return filled === 0 ? '' : String(filled);
}

/** What a power rests on. */
export function hobFrom(hob) {
  return { given: 'as you gave it', litre: 'by your litre of water', learnt: 'by your earlier cooks' }[hob.from];
}

/** The way there, for those who do not see it. @param {object} plan @param {'C' | 'F'} unit */
export function pathWords(plan, unit) {
  if (plan.path.length === 0) {
    return 'Nothing to draw: no water has to leave.';
  }
  const middle = plan.path[Math.floor(plan.path.length / 2)];
  const last = plan.path[plan.path.length - 1];
  return [plan.path[0], middle, last]
    .map((point) => `${when(point)}: ${percent(point.solids)} solids, ${temperature(point.temperatureC, unit)}`)
    .join('; ');
}

/** When a point of the way is: in minutes, or by the water that has left. */
export function when(point) {
  return point.minutes === null ? `${point.waterOffKg.toFixed(2)} kg driven off` : `${Math.round(point.minutes)} min`;
}

/** An amount such as "0.75 cup" in its two parts; without a unit it counts pieces. @param {string} words */
export function parts(words) {
  const [, number, unit] = /^(\S+)\s*(.*)$/.exec(words) ?? ['', '', ''];
  return { amount: number, unit: unit === '' ? 'piece' : unit };
}

/** The rows that say enough to be planned, with the place of each. @param {{amount: string, unit: string, food: string}[]} rows */
export function complete(rows) {
  return rows
    .map((row, place) => ({ ...row, place }))
    .filter((row) => row.amount.trim() !== '' && row.food.trim() !== '');
}

/** Which of the rows that were sent an answer is about, from 0; -1 for none. @param {string} wrong */
export function rowOf(wrong) {
  const [, number] = /^row (\d+): /i.exec(wrong) ?? [];
  return number === undefined ? -1 : Number(number) - 1;
}

/** A complaint without the number of its row, which the page numbers in its own way. */
export function withoutRow(wrong) {
  const bare = wrong.replace(/^row \d+: /i, '');
  return bare.charAt(0).toUpperCase() + bare.slice(1);
}

function span(range, decimals) {
  const [low, high] = [range.low, range.high].map((value) => value.toFixed(decimals));
  return low === high ? low : `${low} to ${high}`;
}

function mass(kilograms) {
  return `${kg(kilograms)} (${(kilograms / POUND_KG).toFixed(1)} lb)`;
}

function kg(kilograms) {
  return `${kilograms.toFixed(2)} kg`;
}

function percent(share) {
  return `${Math.round(100 * share)} %`;
}
