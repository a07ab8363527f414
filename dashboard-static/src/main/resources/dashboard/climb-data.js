// What the picture of the climb draws, worked out from the state. Pure.

const LEAST_SPAN_S = 600;

/**
 * Columns for the chart: seconds of the cook, the measured rise, and the forecast with its fan, all in the
 * cook's unit. Gaps are null.
 * @param {{climb: {t: number, riseC: number | null}[], status: object}} state @param {number} scale 1 or 1.8
 */
export function columns(state, scale) {
  const columns = [[], [], [], [], []];
  for (const { t, riseC } of state.climb) {
    push(columns, [t, times(riseC, scale), null, null, null]);
  }
  for (const [t, lowC, midC, highC] of state.status?.fan ?? []) {
    const last = columns[0].length - 1;
    if (last < 0 || t > columns[0][last]) {
      push(columns, [t, null, midC * scale, lowC * scale, highC * scale]);
    } else if (columns[1][last] !== null) {
      // the forecast leaves from the last measured point, so that the line has no break
      [midC, lowC, highC].forEach((riseC, i) => (columns[i + 2][last] = riseC * scale));
    }
  }
  return columns;
}

/**
 * The seconds to show: from a little before the boil (or the last ten minutes) to the end of the forecast.
 * @returns {[number, number]}
 */
export function span(state) {
  const now = state.status?.t ?? 0;
  const boil = state.climb.find((point) => point.riseC !== null && point.riseC > 0);
  const from = boil ? Math.max(0, boil.t - 30) : Math.max(0, now - LEAST_SPAN_S);
  const fan = state.status?.fan ?? [];
  const ahead = fan.length > 0 ? fan[fan.length - 1][0] : now + Math.max(60, (now - from) / 4);
  return [from, Math.max(ahead, from + LEAST_SPAN_S)];
}

/**
 * What the cook is measured against by now: the basis, re-aimed by what set tests taught, with what to call the height where it
 * sets; where it was found set, that is it.
 */
export function aimOf(state) {
  const tests = state.status?.tests;
  if (!state.basis || !tests) {
    return state.basis && { ...state.basis, label: 'sets here' };
  }
  const last = tests.list[tests.list.length - 1];
  if (tests.set && last.riseC !== null) {
    return { ...state.basis, riseC: last.riseC, gelPointC: last.temperatureC, windowFromC: last.temperatureC, label: 'it set here' };
  }
  const learnt = tests.list.some((test) => test.seen && test.riseC !== null);
  return { ...state.basis, ...tests.aim, label: learnt ? 'test again here' : 'sets here' };
}

/** The second at which the forecast reaches the gel point; null without one. */
export function setsT(state) {
  const fan = state.status?.fan ?? [];
  const { riseC } = aimOf(state);
  const next = fan.findIndex(([, , midC]) => midC >= riseC);
  if (next < 1) {
    return null;
  }
  const [[fromT, , fromC], [toT, , toC]] = [fan[next - 1], fan[next]];
  return fromT + ((riseC - fromC) / (toC - fromC)) * (toT - fromT);
}

/** The set tests that can be drawn: when, at which rise, and whether it was set. */
export function testMarks(state) {
  return (state.status?.tests?.list ?? [])
    .filter((test) => test.riseC !== null)
    .map(({ beganT, riseC, set }) => ({ t: beganT, riseC, set }));
}

/** The top of the picture in °C above the water boil. */
export function topC(state) {
  return (aimOf(state)?.riseC ?? 4.5) + 0.9;
}

/**
 * Stops of the syrup's colour from the bottom to the top of the picture: [part of the height, how thick],
 * where 0 is thin, 1 amber (60 % solids) and 2 thick.
 * @returns {[number, number][]}
 */
export function syrupStops(syrup, top) {
  return (syrup ?? [])
    .filter(([riseC]) => riseC <= top)
    .map(([riseC, solids]) => [riseC / top, solids <= 0.6 ? Math.max(0, (solids - 0.3) / 0.3) : Math.min(2, 1 + (solids - 0.6) / 0.08)]);
}

function push(columns, row) {
  row.forEach((value, i) => columns[i].push(value));
}

function times(value, scale) {
  return value === null ? null : value * scale;
}
