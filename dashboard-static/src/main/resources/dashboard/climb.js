// The picture of the climb: height is the rise above boiling water, the fill is the syrup's solids.

import uPlot from './webjars/uplot/1.6.30/dist/uPlot.esm.js';
import { aimOf, columns, setsT, span, syrupStops, testMarks, topC } from './climb-data.js';
import { FAMILY, TEXT_PX, diamond, dot, readColours, text } from './climb-ink.js';
import { clock, difference, temperature } from './words.js';

const STEPS_S = [60, 120, 300, 600, 900, 1800, 3600, 7200];
const SAY_EVERY_MS = 15000;

/** So wide are the widest words of the marks. */
const LABEL_PX = 180;

/** Draws into `element`; returns update(state, unit). */
export function mountClimb(element, below) {
  let state = null;
  let unit = 'C';
  let chart = null;
  let colours = readColours(element);
  let saidAt = 0;

  const scale = () => (unit === 'F' ? 1.8 : 1);
  const top = () => (state ? topC(state) : 5.4) * scale();

  function options(width, height) {
    const axis = {
      stroke: () => colours.soft,
      font: `${TEXT_PX}px ${FAMILY}`,
      grid: { show: false },
      ticks: { show: false },
    };
    return {
      width,
      height,
      legend: { show: false },
      cursor: { show: false },
      padding: [10, 26, 0, 0],
      scales: {
        x: { time: false, range: () => (state ? span(state) : [0, 600]) },
        y: { range: () => [0, top()] },
      },
      axes: [
        { ...axis, incrs: STEPS_S, space: 70, size: 30, values: (u, ticks) => ticks.map((t) => nearNow(u, t) ? '' : clockAt(t)) },
        { ...axis, size: 50, splits: () => ticksUp(), values: (u, ticks) => ticks.map((v) => `+${v}°`) },
      ],
      series: [
        {},
        { stroke: () => colours.ink, width: 2.5, fill: (u) => syrup(u), points: { show: false }, spanGaps: false },
        { stroke: () => colours.ink, width: 2.5, dash: [2, 6], cap: 'round', points: { show: false } },
        { stroke: 'transparent', points: { show: false } },
        { stroke: 'transparent', points: { show: false } },
      ],
      bands: [{ series: [4, 3], fill: () => colours.fan }],
      hooks: { drawClear: [drawGround], draw: [drawMarks] },
    };
  }

  function clockAt(t) {
    return clock(t, state?.cook?.startedAtMs ?? null);
  }

  function nearNow(u, t) {
    return Math.abs(u.valToPos(t, 'x') - u.valToPos(state?.status?.t ?? -1e9, 'x')) < 48;
  }

  function ticksUp() {
    const step = unit === 'F' ? 2 : 1;
    const ticks = [];
    for (let v = step; v < top(); v += step) {
      ticks.push(v);
    }
    return ticks;
  }

  function syrup(u) {
    const gradient = u.ctx.createLinearGradient(0, u.bbox.top + u.bbox.height, 0, u.bbox.top);
    for (const [part, thick] of syrupStops(state?.syrup, topC(state))) {
      gradient.addColorStop(part, colours.syrup(thick));
    }
    return gradient;
  }

  function drawGround(u) {
    if (!state?.basis) {
      return;
    }
    const { ctx, bbox } = u;
    const aim = aimOf(state);
    const gelY = u.valToPos(aim.riseC * scale(), 'y', true);
    const windowY = u.valToPos((aim.windowFromC - aim.waterBoilC) * scale(), 'y', true);
    ctx.fillStyle = colours.window;
    ctx.fillRect(bbox.left, gelY, bbox.width, windowY - gelY);
    ctx.fillStyle = colours.rim;
    ctx.fillRect(bbox.left, gelY - uPlot.pxRatio, bbox.width, 2 * uPlot.pxRatio);
    ctx.fillRect(bbox.left, bbox.top + bbox.height - uPlot.pxRatio, bbox.width, uPlot.pxRatio);
  }

  function drawMarks(u) {
    if (!state?.basis || !state.status) {
      return;
    }
    const { ctx, bbox } = u;
    const px = uPlot.pxRatio;
    const aim = aimOf(state);
    const gelY = u.valToPos(aim.riseC * scale(), 'y', true);
    const windowY = u.valToPos((aim.windowFromC - aim.waterBoilC) * scale(), 'y', true);
    const now = u.valToPos(state.status.t, 'x', true);
    ctx.save();
    ctx.strokeStyle = colours.soft;
    ctx.lineWidth = px;
    ctx.setLineDash([3 * px, 4 * px]);
    ctx.beginPath();
    ctx.moveTo(now, bbox.top);
    ctx.lineTo(now, bbox.top + bbox.height);
    ctx.stroke();
    ctx.restore();
    const left = (now - bbox.left < LABEL_PX * px ? Math.max(now, bbox.left) : bbox.left) + 8 * px; // no line through the words
    text(ctx, `${aim.label} · ${temperature(aim.gelPointC, unit)}`, left, gelY - 7 * px, colours.ink, 'bold');
    if (windowY - gelY > 18 * px) {
      text(ctx, 'set tests', left, (gelY + windowY) / 2 + 5 * px, colours.soft, 'bold');
    }
    const base = bbox.top + bbox.height - 8 * px;
    text(ctx, `water boils · ${temperature(state.basis.waterBoilC, unit)}`, left, base, colours.ink, 'bold');
    text(ctx, 'now', now, bbox.top + bbox.height + 19 * px, colours.ink, 'bold', 'center');
    drawPoints(u, now);
  }

  function drawPoints(u, now) {
    const last = state.climb[state.climb.length - 1];
    if (state.status.fresh && last?.riseC > 0) {
      dot(u.ctx, now, u.valToPos(last.riseC * scale(), 'y', true), colours.ink, colours.enamel);
    }
    for (const test of testMarks(state)) {
      diamond(u.ctx, u.valToPos(test.t, 'x', true), u.valToPos(test.riseC * scale(), 'y', true), test.set ? colours.rim : colours.enamel, colours.rim);
    }
    const at = setsT(state);
    if (at !== null) {
      dot(u.ctx, u.valToPos(at, 'x', true), u.valToPos(aimOf(state).riseC * scale(), 'y', true), colours.enamel, colours.rim);
    }
  }

  function render() {
    const width = Math.floor(element.clientWidth);
    const height = Math.floor(element.clientHeight);
    if (width < 80 || height < 80 || !state) {
      return;
    }
    if (chart === null) {
      chart = new uPlot(options(width, height), columns(state, scale()), element);
      return;
    }
    if (chart.width !== width || chart.height !== height) {
      chart.setSize({ width, height });
    }
    chart.setData(columns(state, scale()));
    chart.redraw(false, true); // what stands at the axes goes by the clock and by now, and not only by where they end
  }

  new ResizeObserver(() => render()).observe(element);
  matchMedia('(prefers-color-scheme: dark)').addEventListener('change', () => {
    colours = readColours(element);
    render();
  });

  return function update(newState, newUnit) {
    if (!newState.heard) {
      return;
    }
    state = newState;
    const turned = unit !== newUnit;
    unit = newUnit;
    showBelow(below, state, unit);
    if (turned || Date.now() - saidAt > SAY_EVERY_MS) {
      saidAt = Date.now();
      element.setAttribute('aria-label', inWords(state, unit));
    }
    render();
  };
}

/** The picture in words. */
export function inWords(state, unit) {
  const { status } = state;
  const basis = aimOf(state);
  const sets = `It sets ${difference(basis.riseC, unit)} above boiling water, at ${temperature(basis.gelPointC, unit)}.`;
  if (status.riseC === null) {
    return `The climb. Nothing live to draw. ${sets}`;
  }
  const where = status.riseC >= 0 ? 'above' : 'below';
  const solids = status.solids === null ? '' : ` The syrup is about ${Math.round(status.solids * 100)} % sugar.`;
  const at = setsT(state);
  const when = at === null ? '' : ` The forecast reaches it in about ${Math.max(1, Math.round((at - status.t) / 60))} min.`;
  const tests = testMarks(state).map((test) => difference(test.riseC, unit));
  const tested = tests.length === 0 ? '' : ` Tested at ${tests.join(', ')} above boiling water.`;
  return `The climb: ${difference(Math.abs(status.riseC), unit)} ${where} boiling water.${solids} ${sets}${when}${tested}`;
}

function showBelow(below, state, unit) {
  const riseC = state.status.riseC;
  const show = riseC !== null && riseC < 0 && !state.climb.some((point) => point.riseC !== null && point.riseC > 0.2);
  below.hidden = !show;
  if (show) {
    below.textContent = `Not boiling yet: the climb begins ${difference(-riseC, unit)} from here.`;
  }
}
