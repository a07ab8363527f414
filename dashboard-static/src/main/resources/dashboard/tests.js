// The view of the set tests: one big act, the plate's time, what was seen, and taking it back.

import { put } from './elements.js';
import { drawing } from './test-drawings.js';
import { CHOICES, testView } from './test-words.js';

const PLATE_SECONDS = [60, 90, 120];
const HEADINGS = { sheet: 'On the spoon', plate: 'On the plate', verdict: 'Or only' };

/**
 * Mounts the view into its section, and the quiet button `sooner` for who wants to test before it tells much; returns update(state, unit, elsewhere), where `elsewhere` means that another view is shown.
 * @param {(method: string, path: string, body?: object) => Promise<string>} ask returns what went wrong, or ''
 */
export function mountTests(section, sooner, ask) {
  const title = make('h2', { testid: 'test-title', tabindex: '-1' });
  const digits = make('p', { testid: 'test-timer', class: 'test-digits', role: 'timer', 'aria-label': 'Time left for the plate' });
  const note = make('p', { testid: 'test-note', class: 'note' });
  const wrong = make('p', { testid: 'test-error', class: 'error', role: 'status' });
  const begin = button('Take the pan off the heat, then tap here', 'big', 'test-begin', beginTest);
  sooner.addEventListener('click', beginTest);
  const seconds = secondsChoice();
  const choices = make('div', { class: 'test-choices', testid: 'test-choices' });
  for (const [how, list] of Object.entries(CHOICES)) {
    choices.append(group(how, list));
  }
  const undo = button('Undo', 'big', 'test-undo', () => send('DELETE', `api/test/seen?id=${encodeURIComponent(view.undo)}`));
  const later = button('It was not set after all', 'plain', 'test-not-set', () => send('DELETE', `api/test/seen?id=${encodeURIComponent(view.later)}`));
  const none = button('I did not test', 'plain', 'test-none', () => send('DELETE', `api/test?id=${encodeURIComponent(view.id)}`));
  section.append(title, note, wrong, digits, begin, seconds, choices, undo, later, none);
  let view = { mode: 'hidden' };

  async function send(method, path, body) {
    put(wrong, await ask(method, path, body));
  }

  function group(how, list) {
    const fieldset = make('fieldset', {});
    const legend = make('legend', {});
    legend.textContent = HEADINGS[how];
    const row = make('div', { class: `test-row test-${how}` });
    for (const { seen, label } of list) {
      const choice = button(label, 'choice', `seen-${seen}`, () => send('POST', 'api/test/seen', { id: view.id, [how]: seen }));
      const picture = drawing(seen);
      if (picture) {
        choice.prepend(picture);
      }
      row.append(choice);
    }
    fieldset.append(legend, row);
    return fieldset;
  }

  function secondsChoice() {
    const fieldset = make('fieldset', { class: 'test-seconds', testid: 'test-seconds' });
    const legend = make('legend', {});
    legend.textContent = 'How long the plate stands';
    fieldset.append(legend);
    for (const s of PLATE_SECONDS) {
      const label = make('label', {});
      const radio = make('input', { type: 'radio', name: 'plate-seconds', value: String(s) });
      radio.checked = s === 90;
      label.append(radio, ` ${s} s`);
      fieldset.append(label);
    }
    return fieldset;
  }

  function beginTest() {
    return send('POST', 'api/test', { id: newId(), plateS: plateS() });
  }

  function plateS() {
    return Number(section.querySelector('input[name="plate-seconds"]:checked')?.value ?? 90);
  }

  return function update(state, unit, elsewhere) {
    const before = view.mode;
    view = elsewhere ? { mode: 'hidden' } : testView(state, unit);
    const held = section.contains(document.activeElement);
    section.hidden = view.mode === 'hidden';
    sooner.hidden = !view.early;
    section.dataset.mode = view.mode;
    if (section.hidden) {
      return;
    }
    put(title, view.title);
    put(note, view.note);
    put(digits, view.digits ?? '');
    digits.hidden = !view.digits;
    begin.hidden = view.mode !== 'offer';
    seconds.hidden = view.mode !== 'offer';
    choices.hidden = view.mode !== 'open';
    none.hidden = view.mode !== 'open';
    undo.hidden = !view.undo;
    later.hidden = !view.later;
    if (before !== view.mode) {
      put(wrong, '');
      if (held) {
        title.focus({ preventScroll: true });
      }
    }
  };
}

function newId() {
  return `${Date.now().toString(36)}-${Math.random().toString(36).slice(2, 10)}`;
}

function button(words, className, testid, act) {
  const element = make('button', { type: 'button', class: className, testid });
  const label = document.createElement('span');
  label.textContent = words;
  element.append(label);
  element.addEventListener('click', act);
  return element;
}

function make(name, { testid, ...attributes }) {
  const element = document.createElement(name);
  if (testid) {
    element.dataset.testid = testid;
  }
  Object.entries(attributes).forEach(([key, value]) => element.setAttribute(key, value));
  return element;
}
