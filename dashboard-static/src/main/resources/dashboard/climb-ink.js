// The ink of both pictures of a climb: colours, words and marks.

import uPlot from './webjars/uplot/1.6.30/dist/uPlot.esm.js';

export const TEXT_PX = 14;
export const FAMILY = 'system-ui, "Segoe UI", Roboto, "Liberation Sans", Arial, sans-serif';

/** Words whose base line is at y. @param {'left' | 'right' | 'center'} align */
export function text(ctx, words, x, y, colour, weight = 'normal', align = 'left') {
  ctx.save();
  ctx.font = `${weight} ${TEXT_PX * uPlot.pxRatio}px ${FAMILY}`;
  ctx.fillStyle = colour;
  ctx.textAlign = align;
  ctx.textBaseline = 'alphabetic';
  ctx.fillText(words, x, y);
  ctx.restore();
}

/** Where the pan is. */
export function dot(ctx, x, y, fill, ring) {
  const px = uPlot.pxRatio;
  ctx.beginPath();
  ctx.arc(x, y, 6 * px, 0, 2 * Math.PI);
  ctx.fillStyle = fill;
  ctx.fill();
  ctx.lineWidth = 3 * px;
  ctx.strokeStyle = ring;
  ctx.stroke();
}

/** A set test: filled when it was set. */
export function diamond(ctx, x, y, fill, ring) {
  const r = 8 * uPlot.pxRatio;
  ctx.beginPath();
  ctx.moveTo(x, y - r);
  ctx.lineTo(x + r, y);
  ctx.lineTo(x, y + r);
  ctx.lineTo(x - r, y);
  ctx.closePath();
  ctx.fillStyle = fill;
  ctx.fill();
  ctx.lineWidth = 2.5 * uPlot.pxRatio;
  ctx.strokeStyle = ring;
  ctx.stroke();
}

/** The page's colours, and the syrup's at a thickness from 0 to 2. */
export function readColours(element) {
  const style = getComputedStyle(element);
  const value = (name) => style.getPropertyValue(`--${name}`).trim();
  const [thin, amber, thick] = ['thin', 'amber', 'thick'].map((name) => rgb(value(name)));
  return {
    ink: value('ink'),
    soft: value('soft'),
    rim: value('rim'),
    window: value('window'),
    enamel: value('enamel'),
    fan: value('fan'),
    syrup: (t) => (t <= 1 ? mixed(thin, amber, t) : mixed(amber, thick, t - 1)),
  };
}

function rgb(hex) {
  return [1, 3, 5].map((i) => parseInt(hex.slice(i, i + 2), 16));
}

function mixed(one, other, part) {
  return `rgb(${one.map((v, i) => Math.round(v + (other[i] - v) * part)).join(' ')})`;
}
