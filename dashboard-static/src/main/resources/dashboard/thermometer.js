// The view that checks the thermometer: a sentence, one picture, one big act, and the form that says where the kitchen is.

import { put, svg } from './elements.js';
import { baseAsked, checkWords, pictureOf, trust } from './thermometer-words.js';
import { temperature } from './words.js';

const TEXT_PX = 15;
const ASKS = {
  boil: (probe) => ['POST', 'api/check', { probe, in: 'boiling-water' }],
  ice: (probe) => ['POST', 'api/check', { probe, in: 'ice' }],
  stop: () => ['DELETE', 'api/check'],
  use: () => ['POST', 'api/check/keep', { as: 'water-boil' }],
  correct: () => ['POST', 'api/check/keep', { as: 'calibration' }],
  undo: (probe) => ['POST', 'api/calibration/undo', { probe }],
  forget: () => ['DELETE', 'api/base/measured'],
};

/**
 * Mounts the view into its section; returns update(state, unit).
 * @param {(method: string, path: string, body?: object) => Promise<string>} ask returns what went wrong, or ''
 */
export function mountThermometer(section, ask) {
  const part = (name) => section.querySelector(`[data-testid="${name}"]`);
  const chooser = part('check-probe');
  const form = part('base-form');
  let doing = '';
  let drawn = '';
  let listed = '';

  async function act(does) {
    const probe = chooser.value;
    put(part('check-error'), await ask(...ASKS[does](probe)));
  }

  part('check-act').addEventListener('click', () => act(doing));
  form.addEventListener('submit', async (event) => {
    event.preventDefault();
    const [how, elevation, pressure] = ['base-how', 'base-elevation', 'base-pressure'].map((name) => part(name).value.trim());
    const wrong = await ask('POST', 'api/base', baseAsked({ how, elevation, pressure }));
    put(part('base-answer'), wrong || 'Kept. The cook goes on by that.');
  });
  part('base-how').addEventListener('change', showFields);
  showFields();

  function showFields() {
    const how = part('base-how').value;
    part('base-elevation').closest('label').hidden = how === 'kitchen';
    part('base-pressure').closest('label').hidden = how === 'elevation';
  }

  function buttons(quieter) {
    const key = JSON.stringify(quieter);
    if (key === listed) {
      return;
    }
    listed = key;
    const focused = document.activeElement?.dataset?.does;
    part('check-quieter').replaceChildren(
      ...quieter.map(({ label, does }) => {
        const button = document.createElement('button');
        button.type = 'button';
        button.className = 'plain';
        button.dataset.does = does;
        button.textContent = label;
        button.addEventListener('click', () => act(does));
        return button;
      }),
    );
    if (focused) {
      part('check-quieter').querySelector(`[data-does="${focused}"]`)?.focus();
    }
  }

  function choose(state) {
    const names = (state.probes ?? []).map((probe) => probe.name);
    const shown = [...chooser.options].map((option) => option.value);
    if (JSON.stringify(names) !== JSON.stringify(shown)) {
      chooser.replaceChildren(...names.map((name) => new Option(name, name)));
    }
    const running = state.status?.check?.probe;
    if (running) {
      chooser.value = running;
    }
    chooser.disabled = Boolean(running);
    chooser.closest('label').hidden = names.length < 2;
  }

  return function update(state, unit) {
    const words = checkWords(state, unit);
    put(part('check-state'), words.state);
    put(part('check-note'), words.note);
    put(part('check-trust'), trust(state.probe, unit, Date.now()));
    const big = part('check-act');
    big.hidden = words.act === null;
    if (words.act) {
      doing = words.act.does;
      put(big, words.act.label);
    }
    buttons(words.quieter);
    choose(state);
    const picture = part('check-picture');
    const check = state.status?.check ?? null;
    picture.hidden = !check || check.points.length === 0;
    const key = picture.hidden ? '' : JSON.stringify([check.points, check.referenceC, unit, picture.clientWidth]);
    if (key !== drawn) {
      drawn = key;
      draw(picture, check, unit);
    }
  };
}

/** Draws the last two minutes against the reference, at the size it has: text stays as large as it is. */
function draw(element, check, unit) {
  if (element.hidden) {
    element.replaceChildren();
    return;
  }
  const [width, height] = [Math.max(200, element.clientWidth), Math.max(160, element.clientHeight)];
  const { points, reference, lowC, highC } = pictureOf(check);
  const [top, bottom] = [12, height - 30];
  const x = (part) => part * (width - 12);
  const y = (part) => bottom - part * (bottom - top);
  const drawn = svg('svg', { width, height, viewBox: `0 0 ${width} ${height}`, 'aria-hidden': 'true' });
  drawn.append(svg('line', { x1: 0, x2: width, y1: bottom, y2: bottom, class: 'ground' }));
  if (reference !== null) {
    drawn.append(svg('line', { x1: 0, x2: width, y1: y(reference), y2: y(reference), class: 'reference' }));
    const below = y(reference) < 40;
    const words = `${check.in === 'ice' ? 'ice' : 'water boils'} · ${temperature(check.referenceC, unit)}`;
    drawn.append(text(words, 4, y(reference) + (below ? TEXT_PX + 4 : -7), 'start', true));
  }
  const path = points.map(([px, py], i) => `${i === 0 ? 'M' : 'L'}${x(px).toFixed(1)} ${y(py).toFixed(1)}`).join('');
  drawn.append(svg('path', { d: path, class: 'shown' }));
  drawn.append(text('2 minutes ago', 0, height - 8, 'start', false), text('now', width - 4, height - 8, 'end', true));
  element.replaceChildren(drawn);
  const shown = temperature(check.shownC, unit);
  const should = check.referenceC === null ? '' : ` It should show ${temperature(check.referenceC, unit)}.`;
  element.setAttribute('aria-label', `The last two minutes, from ${temperature(lowC, unit)} to ${temperature(highC, unit)}. It shows ${shown}.${should}`);
}

function text(words, x, y, anchor, strong) {
  const element = svg('text', { x, y, 'text-anchor': anchor, 'font-size': TEXT_PX, class: strong ? 'strong' : '' });
  element.textContent = words;
  return element;
}
