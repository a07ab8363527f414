// One picture of what is known of a fruit: the hill of "right" over the rise, what is best, and the batches so far.

import { svg, svgWords } from './elements.js';
import { learnPicture, pictureWords } from './learn-words.js';
import { difference } from './words.js';

const HEIGHT = 240;
/** The band is named in place where its name fits before the middle. */
const BEST_WIDTH = 90;

const EDGE = { left: 12, right: 12, top: 34, bottom: 56 };

/** Draws into an element, as wide as it is. Returns update(fruit, unit). */
export function mountLearnPicture(element) {
  let shown = '';

  return function update(fruit, unit) {
    const width = Math.max(240, Math.round(element.clientWidth));
    const key = JSON.stringify([fruit, unit, width]);
    if (key === shown) {
      return;
    }
    shown = key;
    element.hidden = fruit === null;
    if (fruit !== null) {
      element.setAttribute('aria-label', pictureWords(fruit, unit));
      element.replaceChildren(picture(fruit, unit, width));
    }
  };
}

function picture(fruit, unit, width) {
  const { floor, hill, best, target, marks } = learnPicture(fruit, width, HEIGHT, EDGE);
  const right = width - EDGE.right;
  const line = hill.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${x.toFixed(1)} ${y.toFixed(1)}`).join('');
  const drawn = svg('svg', { width, height: HEIGHT, viewBox: `0 0 ${width} ${HEIGHT}`, 'aria-hidden': 'true' });
  const middle = Math.min(right - 90, Math.max(EDGE.left + 90, target[0]));
  drawn.append(
    svg('rect', { x: best[0], y: EDGE.top, width: Math.max(2, best[1] - best[0]), height: floor - EDGE.top, class: 'learn-best' }),
    svg('path', { d: `${line}L${right} ${floor}L${EDGE.left} ${floor}Z`, class: 'learn-hill' }),
    svg('path', { d: line, class: 'learn-line' }),
    svg('path', { d: `M${target[0]} ${EDGE.top}V${floor}`, class: 'learn-target' }),
    svg('path', { d: `M${EDGE.left} ${floor}H${right}`, class: 'learn-floor' }),
    ...marks.map(mark),
    ...(best[1] - best[0] > BEST_WIDTH ? [svgWords('best', best[0] + 6, EDGE.top + 20, 'start')] : []),
    svgWords(`${Math.round(100 * fruit.chances.right)} % right at ${difference(fruit.riseC, unit)}`, middle, EDGE.top - 12, 'middle'),
    svgWords(difference(fruit.curve[0].riseC, unit), EDGE.left, floor + 20, 'start'),
    svgWords(difference(fruit.curve[fruit.curve.length - 1].riseC, unit), right, floor + 20, 'end'),
    svgWords('softer', EDGE.left, HEIGHT - 10, 'start'),
    svgWords('firmer', right, HEIGHT - 10, 'end'),
  );
  return drawn;
}

/** A batch: a full spot was right, a ring with a stroke down too soft, with a stroke up too firm. */
function mark({ x, y, set }) {
  const made = svg('g', { class: 'learn-mark' });
  const soft = set === 'runny' || set === 'soft';
  made.append(svg('circle', { cx: x, cy: y, r: 6, class: set === 'right' ? 'learn-right' : 'learn-wrong' }));
  if (set !== 'right') {
    made.append(svg('path', { d: `M${x} ${y + (soft ? 6 : -6)}v${soft ? 8 : -8}`, class: 'learn-stroke' }));
  }
  return made;
}
