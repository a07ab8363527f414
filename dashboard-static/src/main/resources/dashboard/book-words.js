// What the page says of the batch book. Pure.

import { difference } from './words.js';

/** How a preserve may have set, from the loosest to the hardest, as the service calls it. */
export const SETS = ['runny', 'soft', 'right', 'firm', 'stiff'];

/** How it may taste. */
export const TASTES = ['bright', 'bitter', 'caramel'];

/** When somebody looks, with what that is called. */
export const AFTER = { day: 'After a day', month: 'After a month' };

/** By what two cooks may be lined up, with what that is called. */
export const LINED_UP = { sugarS: 'when the sugar went in', boilS: 'when they boiled hard', gelS: 'at the gel point' };

/** Where an address leads: the list, a cook, or two of them. @param {string} hash */
export function routeOf(hash) {
  const [name, ...ids] = hash.replace(/^#/, '').split('/');
  const numbers = ids.map(Number).filter((id) => Number.isSafeInteger(id) && id > 0);
  return { book: name === 'book', id: numbers[0] ?? null, other: numbers[1] ?? null };
}

/** A day such as "25 November 2026". @param {number} ms */
export function day(ms) {
  return new Date(ms).toLocaleDateString('en-GB', { day: 'numeric', month: 'long', year: 'numeric' });
}

/** What a cook is called. */
export function title(cook) {
  return cook.batch || cook.fruit || `Cook ${cook.id}`;
}

/** What came of a cook, such as "rose 4.5° in 38 minutes; right after a day; 6 jars". */
export function summary(cook, unit) {
  const parts = [];
  if (cook.finalRiseC !== null) {
    const minutes = cook.boilMinutes === null ? '' : ` in ${Math.round(cook.boilMinutes)} minutes of boiling`;
    parts.push(`rose ${difference(cook.finalRiseC, unit)} above boiling water${minutes}`);
  } else if (!cook.ended) {
    parts.push('not over yet');
  }
  for (const [after, words] of Object.entries(AFTER)) {
    const set = cook.outcomes[after]?.set;
    if (set) {
      parts.push(`${set} ${words.toLowerCase()}`);
    }
  }
  if (cook.jars !== null) {
    parts.push(cook.jars === 1 ? '1 jar' : `${cook.jars} jars`);
  }
  if (cook.photos > 0) {
    parts.push(cook.photos === 1 ? '1 photo' : `${cook.photos} photos`);
  }
  return parts.join('; ');
}

/** How many there are. */
export function found(count, looking) {
  if (count === 0) {
    return looking ? 'No cook is like that.' : 'Nothing is in the book yet. Every cook that Spoonfall watches comes into it.';
  }
  const cooks = count === 1 ? '1 cook' : `${count} cooks`;
  return looking ? `${cooks} found.` : `${cooks} so far.`;
}

/** The call that looks cooks up. @param {Record<string, string>} query @param {number} page */
export function listPath(query, page) {
  const asked = Object.entries({ ...query, page: page > 0 ? String(page) : '' }).filter(([, value]) => value !== '');
  const words = asked.map(([name, value]) => `${name}=${encodeURIComponent(value)}`).join('&');
  return words === '' ? 'api/book' : `api/book?${words}`;
}

/** What was planned of a cook, and beside it what was filled. @param plan null where nothing was planned */
export function planWords(plan) {
  if (plan === null) {
    return '';
  }
  const went = plan.ingredients.map(({ amount, food }) => `${amount} ${food}`).join(', ');
  const come = plan.yield ? plan.mass : `${plan.mass}, ${plan.jars}`;
  return `Planned: ${come}, of ${went}.${plan.yield ? ` ${plan.yield}` : ''}`;
}

/** A set test in words, such as "tested at 4.1°: drops join". */
export function testWords(test, unit) {
  const where = test.riseC === null ? '' : ` at ${difference(test.riseC, unit)} above boiling water`;
  const seen = test.seen === '' ? '' : `: ${test.seen.replaceAll('-', ' ')}`;
  return `Set test${where}${seen}${test.set ? ' (set)' : ''}`;
}

/** How high a picture of climbs must be: room above where each was to set, and above where it went. In °C above boiling water. */
export function topC(climbs) {
  const highest = ({ riseC, points }) => Math.max(riseC + 1.2, 0.4 + points.reduce((top, [, rise]) => Math.max(top, rise ?? 0), 0));
  return Math.max(...climbs.map(highest));
}

/** What can line two cooks up: marks that both have. */
export function linesUp(one, other) {
  return Object.keys(LINED_UP).filter((mark) => one.marks[mark] !== null && (!other || other.marks[mark] !== null));
}

/**
 * The points of a climb as columns, in minutes from a mark (the cook's beginning without one), in the cook's unit. Gaps are null.
 * @param {{points: [number, number | null][], marks: object}} climb @param {string | null} mark @param {number} scale 1 or 1.8
 */
export function columns(climb, mark, scale) {
  const zero = mark === null ? 0 : climb.marks[mark];
  return [climb.points.map(([t]) => (t - zero) / 60), climb.points.map(([, riseC]) => (riseC === null ? null : riseC * scale))];
}

/** The minutes worth showing: from a little before the boil to the end, or all of it if it never boiled. */
export function spanMinutes(climbs, mark) {
  const spans = climbs.map((climb) => {
    const zero = mark === null ? 0 : climb.marks[mark];
    const boil = climb.marks.boilS === null ? null : Math.max(0, climb.marks.boilS - 300);
    const first = mark === 'sugarS' ? climb.marks.sugarS : (boil ?? climb.points[0]?.[0] ?? 0);
    const last = climb.points[climb.points.length - 1]?.[0] ?? 0;
    return [(first - zero) / 60, (last - zero) / 60];
  });
  const from = Math.min(...spans.map(([first]) => first));
  return [from, Math.max(from + 10, ...spans.map(([, last]) => last))];
}
