// The box in which the cook writes a line of the cook. Returns update(state).

import { put } from './elements.js';
import { heading, line, LONGEST } from './notes-words.js';
import { ofEach } from './pans.js';

/** @param {HTMLDetailsElement} element @param {(method: string, path: string, body: object) => Promise<string>} ask */
export function mountNotes(element, ask) {
  const summary = document.createElement('summary');
  const list = Object.assign(document.createElement('ol'), { className: 'note-list' });
  const form = document.createElement('form');
  const label = document.createElement('label');
  const text = Object.assign(document.createElement('input'), { type: 'text', maxLength: LONGEST, required: true, autocomplete: 'off' });
  const keep = Object.assign(document.createElement('button'), { type: 'submit', className: 'plain', textContent: 'Keep the note' });
  const answer = Object.assign(document.createElement('p'), { className: 'error' });
  text.dataset.testid = 'note-text';
  keep.dataset.testid = 'note-keep';
  answer.dataset.testid = 'note-error';
  list.dataset.testid = 'note-list';
  answer.setAttribute('role', 'status');
  label.append('A line for whoever makes this batch next ', text);
  form.append(label, keep);
  element.append(summary, list, form, answer);

  /** What is written for each cook, by its pan and number: nobody writes for one and finds it in another. */
  const writingFor = ofEach(() => ({ text: '', pending: null, error: '', busy: false }));
  let writing = writingFor('');
  let shown = '';

  text.addEventListener('input', () => {
    writing.text = text.value;
  });

  form.addEventListener('submit', async (event) => {
    event.preventDefault();
    const of = writing;
    const written = of.text.trim();
    if (written === '' || of.busy) {
      return;
    }
    // the same line keeps its id until it is answered: what arrives twice counts once
    of.pending = of.pending?.text === written ? of.pending : { id: crypto.getRandomValues(new Uint32Array(2)).join('-'), text: written };
    of.busy = true;
    show();
    of.error = await ask('POST', 'api/notes', of.pending);
    of.busy = false;
    if (of.error === '') {
      of.pending = null;
      of.text = of.text.trim() === written ? '' : of.text; // what was written on meanwhile is not kept yet
    }
    show();
  });

  function show() {
    if (text.value !== writing.text) {
      text.value = writing.text;
    }
    keep.disabled = writing.busy;
    put(answer, writing.error);
  }

  return function update(state) {
    writing = writingFor(JSON.stringify([state.pan ?? '', state.cook?.number ?? 0]));
    show();
    const startedAtMs = state.cook?.startedAtMs ?? null;
    const notes = state.notes ?? [];
    element.hidden = !state.status || startedAtMs === null;
    const lines = notes.map((note) => line(note, startedAtMs));
    const key = lines.join('\n');
    if (key !== shown || summary.textContent === '') {
      shown = key;
      summary.textContent = heading(notes);
      list.replaceChildren(...lines.map((words) => Object.assign(document.createElement('li'), { textContent: words })));
    }
  };
}
