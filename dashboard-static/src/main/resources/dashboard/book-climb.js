// The picture of one cook of the book, or of two lined up at the same moment. Returns update(climb, other, mark, unit, cursor), where
// cursor is the minute at which a lesson stands, or null.

import uPlot from './webjars/uplot/1.6.30/dist/uPlot.esm.js';
import { LINED_UP, columns, spanMinutes, topC } from './book-words.js';
import { syrupStops } from './climb-data.js';
import { FAMILY, TEXT_PX, diamond, readColours, text } from './climb-ink.js';
import { clock, difference, temperature } from './words.js';

const STEPS_MIN = [1, 2, 5, 10, 15, 30, 60, 120];

/** Draws into `element`. */
export function mountBookClimb(element) {
  let shown = null;
  let chart = null;
  let colours = readColours(element);

  const scale = () => (shown?.unit === 'F' ? 1.8 : 1);
  const climbs = () => [shown.climb, shown.other].filter(Boolean);
  const top = () => topC(climbs());

  function axisWords(minutes) {
    return shown.mark === null ? clock(minutes * 60, shown.climb.startedAtMs) : `${minutes > 0 ? '+' : ''}${minutes} min`;
  }

  function options(width, height) {
    const axis = { stroke: () => colours.soft, font: `${TEXT_PX}px ${FAMILY}`, grid: { show: false }, ticks: { show: false } };
    return {
      width,
      height,
      legend: { show: false },
      cursor: { show: false },
      padding: [10, 26, 0, 0],
      scales: { x: { time: false, range: () => spanMinutes(climbs(), shown.mark) }, y: { range: () => [0, top() * scale()] } },
      axes: [
        { ...axis, incrs: STEPS_MIN, space: 84, size: 30, values: (u, ticks) => ticks.map(axisWords) },
        { ...axis, size: 50, incrs: [1, 2, 5], values: (u, ticks) => ticks.map((v) => (v === 0 ? '' : `+${v}°`)) },
      ],
      series: [
        {},
        { stroke: () => colours.ink, width: 2.5, fill: (u) => syrup(u), points: { show: false } },
        { stroke: () => colours.rim, width: 3, dash: [9, 6], points: { show: false } },
      ],
      hooks: { drawClear: [drawGround], draw: [drawMarks] },
    };
  }

  function syrup(u) {
    const gradient = u.ctx.createLinearGradient(0, u.bbox.top + u.bbox.height, 0, u.bbox.top);
    for (const [part, thick] of syrupStops(shown.climb.syrup, top())) {
      gradient.addColorStop(part, colours.syrup(thick));
    }
    return gradient;
  }

  function drawGround(u) {
    const { ctx, bbox } = u;
    const { riseC, windowFromC, waterBoilC } = shown.climb;
    const gelY = u.valToPos(riseC * scale(), 'y', true);
    const windowY = u.valToPos((windowFromC - waterBoilC) * scale(), 'y', true);
    ctx.fillStyle = colours.window;
    ctx.fillRect(bbox.left, gelY, bbox.width, windowY - gelY);
    ctx.fillStyle = colours.rim;
    ctx.fillRect(bbox.left, gelY - uPlot.pxRatio, bbox.width, 2 * uPlot.pxRatio);
    ctx.fillRect(bbox.left, bbox.top + bbox.height - uPlot.pxRatio, bbox.width, uPlot.pxRatio);
  }

  function drawMarks(u) {
    const { riseC, gelPointC, marks, tests } = shown.climb;
    const px = uPlot.pxRatio;
    const gelY = u.valToPos(riseC * scale(), 'y', true);
    text(u.ctx, `was to set here · ${temperature(gelPointC, shown.unit)}`, u.bbox.left + 8 * px, gelY - 7 * px, colours.ink, 'bold');
    const zero = shown.mark === null ? 0 : marks[shown.mark];
    if (shown.cursor !== null) {
      u.ctx.fillStyle = colours.ink;
      u.ctx.fillRect(u.valToPos(shown.cursor, 'x', true) - px, u.bbox.top, 2 * px, u.bbox.height);
    }
    for (const test of tests.filter((one) => one.riseC !== null)) {
      const x = u.valToPos((test.t - zero) / 60, 'x', true);
      diamond(u.ctx, x, u.valToPos(test.riseC * scale(), 'y', true), test.set ? colours.rim : colours.enamel, colours.rim);
    }
  }

  function data() {
    const one = columns(shown.climb, shown.mark, scale());
    return shown.other ? uPlot.join([one, columns(shown.other, shown.mark, scale())]) : [...one, one[0].map(() => null)];
  }

  function render() {
    const width = Math.floor(element.clientWidth);
    const height = Math.floor(element.clientHeight);
    if (!shown || width < 80 || height < 80) {
      return;
    }
    if (chart === null) {
      chart = new uPlot(options(width, height), data(), element);
      element.querySelector('img')?.remove(); // the service's own picture, which was there first
      return;
    }
    if (chart.width !== width || chart.height !== height) {
      chart.setSize({ width, height });
    }
    chart.setData(data());
  }

  new ResizeObserver(render).observe(element);
  matchMedia('(prefers-color-scheme: dark)').addEventListener('change', () => {
    colours = readColours(element);
    render();
  });

  return function update(climb, other, mark, unit, cursor = null) {
    shown = { climb, other, mark, unit, cursor };
    element.setAttribute('aria-label', inWords(climb, other, mark, unit));
    render();
  };
}

/** The picture in words. */
export function inWords(climb, other, mark, unit) {
  const highest = (one) => difference(Math.max(0, ...one.points.map(([, riseC]) => riseC ?? 0)), unit);
  const own = `The climb of this cook, up to ${highest(climb)} above boiling water.`;
  return other ? `${own} The other, dashed, went up to ${highest(other)}. They are lined up ${LINED_UP[mark] ?? 'at their beginning'}.` : own;
}
