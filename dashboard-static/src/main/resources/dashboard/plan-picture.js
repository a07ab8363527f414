// The way from the first boil to the setting point: height is the temperature, the fill says how thick the syrup is.

import { svg, svgWords } from './elements.js';
import { pathWords, when } from './plan-words.js';
import { temperature } from './words.js';

const HEIGHT = 240;
const EDGE = { left: 12, right: 12, top: 34, bottom: 52 };

/** Draws a plan into an element, as wide as it is. Returns update(plan, unit). */
export function mountPlanPicture(element) {
  let shown = '';

  return function update(plan, unit) {
    const width = Math.max(240, Math.round(element.clientWidth));
    const key = JSON.stringify([plan?.path, plan?.out, unit, width]);
    if (key === shown) {
      return;
    }
    shown = key;
    element.hidden = plan === null || plan.path.length === 0;
    if (element.hidden) {
      element.replaceChildren();
      return;
    }
    element.setAttribute('aria-label', `The way there. ${pathWords(plan, unit)}`);
    element.replaceChildren(picture(plan, unit, width));
  };
}

function picture(plan, unit, width) {
  const path = plan.path;
  const last = path[path.length - 1];
  const lowC = plan.out.waterBoilC;
  const highC = plan.out.gelPointC;
  const right = width - EDGE.right;
  const floor = HEIGHT - EDGE.bottom;
  const x = (point) => EDGE.left + (point.waterOffKg / last.waterOffKg) * (right - EDGE.left);
  const y = (celsius) => floor - ((celsius - lowC) / (highC - lowC)) * (floor - EDGE.top);

  const line = path.map((point, i) => `${i === 0 ? 'M' : 'L'}${x(point).toFixed(1)} ${y(point.temperatureC).toFixed(1)}`).join('');
  const drawn = svg('svg', { width, height: HEIGHT, viewBox: `0 0 ${width} ${HEIGHT}`, 'aria-hidden': 'true' });
  drawn.append(
    gradient(path, (point) => (x(point) - EDGE.left) / (right - EDGE.left)),
    svg('path', { d: `${line}L${right} ${floor}L${EDGE.left} ${floor}Z`, fill: 'url(#plan-syrup)' }),
    svg('path', { d: line, class: 'plan-line' }),
    svg('path', { d: `M${EDGE.left} ${y(highC)}H${right}`, class: 'plan-gel' }),
    svg('path', { d: `M${EDGE.left} ${floor}H${right}`, class: 'plan-floor' }),
    svgWords(`sets at ${temperature(highC, unit)}`, EDGE.left, EDGE.top - 12, 'start'),
    svgWords(`${Math.round(100 * path[0].solids)} % solids`, EDGE.left, floor + 20, 'start'),
    svgWords(`${Math.round(100 * last.solids)} % solids`, right, floor + 20, 'end'),
    svgWords('it boils', EDGE.left, HEIGHT - 8, 'start'),
    svgWords(when(last), right, HEIGHT - 8, 'end'),
  );
  return drawn;
}

/** Pale below half, amber at 60 %, dark beyond: as in the picture of the climb. */
function gradient(path, at) {
  const made = svg('linearGradient', { id: 'plan-syrup' });
  for (const point of path) {
    const thickness = point.solids < 0.5 ? 'thin' : point.solids < 0.62 ? 'amber' : 'thick';
    made.append(svg('stop', { offset: at(point).toFixed(3), class: `plan-${thickness}` }));
  }
  const defs = svg('defs', {});
  defs.append(made);
  return defs;
}
