// What is said of thermometers and of what the gel point rests on. Pure.

import { clock, difference, fill, temperature } from './words.js';

const DAY_MS = 86_400_000;

/** A difference with its sign, such as "+0.4°". @param {number} celsius */
export function signed(celsius, unit) {
  const size = difference(Math.abs(celsius), unit);
  return `${celsius < 0 ? '−' : '+'}${size}`;
}

/** How long ago a day was, such as "today". @param {number} atMs @param {number} nowMs */
export function daysAgo(atMs, nowMs) {
  const midnight = (ms) => new Date(ms).setHours(0, 0, 0, 0);
  const days = Math.round((midnight(nowMs) - midnight(atMs)) / DAY_MS);
  return days <= 0 ? 'today' : days === 1 ? 'yesterday' : `${days} days ago`;
}

/** The quiet line on the followed probe's calibration, such as "Corrected by +0.4°, checked in boiling water today." */
export function trust(probe, unit, nowMs) {
  if (!probe) {
    return '';
  }
  const made = probe.calibration;
  const due = probe.calibrationDue ? fill(probe.calibrationDue, unit, null) : '';
  if (!made) {
    return due;
  }
  const where = made.points > 1 ? 'boiling water and ice' : 'boiling water';
  const line = `Corrected by ${signed(made.offsetC, unit)}, checked in ${where} ${daysAgo(Date.parse(made.at), nowMs)}.`;
  return due ? `${line} ${due}` : line;
}

/** What the gel point rests on, and how far it may be off. */
export function basisWords(basis, unit) {
  const sets = `Sets ${difference(basis.riseC, unit)} above boiling water`;
  const total = `true to ±${difference(basis.totalDoubtC, unit)}`;
  if (basis.from === 'standard') {
    return `${sets}. Sea level assumed: say how high the kitchen is, or this is wrong in the hills.`;
  }
  if (basis.from === 'measured') {
    return `${sets}, which was measured at ${clock(0, basis.measuredAtMs)}: ${temperature(basis.waterBoilC, unit)}; ${total}.`;
  }
  const shares =
    basis.probeDoubtC === null
      ? ''
      : ` (the place ±${difference(basis.doubtC, unit)}, the thermometer ±${difference(basis.probeDoubtC, unit)})`;
  return `${sets}, by ${basis.detail}; ${total}${shares}.`;
}

/** What another probe in the pan says, such as "clip: 98.4 °C". */
export function otherWords(other, unit) {
  const odd = { stuck: 'it does not move', implausible: 'that cannot be the pan', spike: 'a wild value', silent: 'nothing of late' }[other.quality];
  if (other.temperatureC === null) {
    return `${other.name}: ${odd ?? 'nothing readable'}`;
  }
  const words = `${other.name}: ${temperature(other.temperatureC, unit)}`;
  return odd ? `${words}, but ${odd}` : words;
}

/**
 * What the view says and offers, whatever is known.
 * @returns {{state: string, note: string, act: {label: string, does: string} | null, quieter: {label: string, does: string}[]}}
 */
export function checkWords(state, unit) {
  const check = state.status?.check ?? null;
  if (!state.heard || state.connection !== 'live') {
    return { state: 'No word from Spoonfall.', note: 'I keep trying.', act: null, quieter: [] };
  }
  if (check === null) {
    return idle(state, unit);
  }
  return check.state === 'found' ? found(state, check, unit) : watching(check, unit);
}

function idle(state, unit) {
  const quieter = [];
  if (state.probe.calibration) {
    quieter.push({ label: `Take the last correction (${signed(state.probe.calibration.offsetC, unit)}) back`, does: 'undo' });
  }
  if (state.basis.from === 'measured') {
    quieter.push({ label: 'Forget today’s water boil', does: 'forget' });
  }
  return {
    state: 'Check it in boiling water.',
    note: 'A pan of plain water at a rolling boil, the tip well covered and clear of the base.',
    act: { label: 'The water boils: check it', does: 'boil' },
    quieter,
  };
}

function watching(check, unit) {
  const shown = check.shownC === null ? '' : `It shows ${temperature(check.shownC, unit)}. `;
  const where = check.in === 'ice' ? 'A well-stirred slush of clean crushed ice and water.' : 'Plain water at a rolling boil.';
  return {
    state: fill(check.why, unit, null),
    note: `${shown}${where}`,
    act: null,
    quieter: [{ label: 'Stop', does: 'stop' }],
  };
}

function found(state, check, unit) {
  const correct =
    check.correctionC !== null && check.cannotCorrect === null
      ? { label: `Correct the thermometer by ${signed(check.correctionC, unit)}`, does: 'correct' }
      : null;
  const stop = { label: 'Stop', does: 'stop' };
  if (check.in === 'ice') {
    const line = correct ? { label: check.boiledToo ? 'Correct the thermometer by both' : 'Correct the thermometer by ice too', does: 'correct' } : null;
    return { state: fill(check.why, unit, null), note: trustNote(check, unit), act: line, quieter: [stop] };
  }
  const boil = check.waterBoilC !== null ? { label: 'Use it as today’s water boil', does: 'use' } : null;
  const quieter = [correct && boil ? correct : null, { label: 'Check it in ice too', does: 'ice' }, stop].filter(Boolean);
  return { state: fill(check.why, unit, null), note: trustNote(check, unit), act: boil ?? correct, quieter };
}

function trustNote(check, unit) {
  if (check.cannotCorrect !== null) {
    return fill(check.cannotCorrect, unit, null);
  }
  if (check.correctionC === null) {
    return '';
  }
  const off = `It should show ${temperature(check.referenceC, unit)}: ${signed(check.correctionC, unit)}, true to ±${difference(check.half95C, unit)}.`;
  return check.in === 'ice' ? off : `${off} Today’s water boil cancels weather and thermometer at once.`;
}

/**
 * Where the check's picture draws its points: x and y from 0 to 1, y upwards, and where the reference lies.
 * @param {{points: [number, number][], referenceC: number | null}} check
 */
export function pictureOf(check) {
  const points = check.points ?? [];
  const values = points.map(([, c]) => c).concat(check.referenceC === null ? [] : [check.referenceC]);
  if (points.length === 0) {
    return { points: [], reference: null, lowC: 0, highC: 0 };
  }
  const middle = (Math.min(...values) + Math.max(...values)) / 2;
  const half = Math.max(0.75, (Math.max(...values) - Math.min(...values)) / 2 + 0.25);
  const [lowC, highC] = [middle - half, middle + half];
  const up = (c) => (c - lowC) / (highC - lowC);
  const last = points[points.length - 1][0];
  return {
    points: points.map(([s, c]) => [1 + (s - last) / 120, up(c)]),
    reference: check.referenceC === null ? null : up(check.referenceC),
    lowC,
    highC,
  };
}

/**
 * What the form asks the service. @param {{how: string, elevation: string, pressure: string}} form
 * @returns {object} the body of POST api/base
 */
export function baseAsked({ how, elevation, pressure }) {
  switch (how) {
    case 'kitchen':
      return { pressure, where: 'kitchen' };
    case 'sea-level':
      return { pressure, where: 'sea-level', elevation };
    default:
      return { elevation };
  }
}
