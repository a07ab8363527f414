// Our own drawings of what a set test shows: a spoon's edge seen from the side, a plate seen from above.

import { svg } from './elements.js';

const drop = (x, y, r) =>
  `M${x} ${y - 2.2 * r}C${x + 1.7 * r} ${y - 0.2 * r} ${x + r} ${y + r} ${x} ${y + r}C${x - r} ${y + r} ${x - 1.7 * r} ${y - 0.2 * r} ${x} ${y - 2.2 * r}Z`;

const SPOON = ['spoon', 'M10 16Q60 2 110 16Q60 38 10 16Z'];
const PLATE = ['plate', 'M6 42A54 30 0 1 1 114 42A54 30 0 1 1 6 42Z'];
const WELL = ['line', 'M20 42A40 21 0 1 1 100 42A40 21 0 1 1 20 42Z'];
const FINGER = ['finger', 'M92 20Q84 14 78 21L66 35Q63 41 68 44Q73 47 78 42L93 28Q96 24 92 20Z'];

const DRAWINGS = {
  'separate-drops': [SPOON, ['syrup', `${drop(42, 46, 7)}${drop(76, 64, 7)}`]],
  'drops-join': [SPOON, ['syrup', 'M38 26Q36 48 44 58Q50 66 56 57Q60 50 64 57Q70 66 76 58Q84 48 82 26Q60 31 38 26Z']],
  'sheets-off': [SPOON, ['syrup', 'M24 22Q26 50 36 66Q60 78 84 66Q94 50 96 22Q60 34 24 22Z'], ['line', 'M34 60Q60 72 86 60']],
  runs: [PLATE, WELL, ['syrup', 'M40 26Q58 20 72 28Q84 34 76 42Q72 47 78 56Q82 66 73 68Q64 69 63 58Q61 48 50 47Q30 44 32 34Q34 28 40 26Z']],
  thickens: [PLATE, WELL, ['syrup', 'M40 34Q58 24 78 34Q90 42 78 52Q58 60 42 52Q28 43 40 34Z'], ['groove', 'M52 46Q60 42 68 41'], FINGER],
  wrinkles: [PLATE, WELL, ['syrup', 'M36 34Q54 24 72 32Q76 42 70 52Q54 60 38 52Q24 43 36 34Z'],
    ['groove', 'M44 34Q38 42 44 51M52 32Q46 42 52 53M60 32Q54 42 60 52'], FINGER],
};

/** The drawing of what was seen; none for what has none. It is decoration: the words say the same. */
export function drawing(seen) {
  const shapes = DRAWINGS[seen];
  if (!shapes) {
    return null;
  }
  const drawn = svg('svg', { viewBox: '0 0 120 80', 'aria-hidden': 'true', focusable: 'false' });
  drawn.append(...shapes.map(([name, d]) => svg('path', { class: name, d })));
  return drawn;
}
