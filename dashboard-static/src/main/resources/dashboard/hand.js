// The number pad: what an ordinary thermometer shows becomes a reading. Returns update(state, unit, path).

import { put } from './elements.js';
import { higher, KEYS, keyOf, lastReading, press, readingOf, shown, steps, takesBack, whenWords } from './hand-words.js';
import { ofEach } from './pans.js';
import { onTaps } from './taps.js';

/** A second tap of a quick key so soon is the same tap of a sticky finger. */
const SAME_TAP_MS = 800;

/**
 * @param {HTMLElement} section @param {HTMLElement} degreesLine where the digits stand
 * @param {() => void} lost called when the service does not answer @param {() => void} redraw
 */
export function mountHand(section, degreesLine, lost, redraw) {
  const part = (name) => section.querySelector(`[data-testid="${name}"]`);
  const digits = degreesLine.querySelector('.digits');
  const sign = degreesLine.querySelector('.unit');
  const pad = part('hand-keys');
  const keys = new Map();
  const acts = new Map();
  /** What is typed for each pan, by the path it goes to: nobody types for one and sees it go to another. */
  const typingFor = ofEach((path) => ({
    path,
    draft: '',
    error: '',
    question: null,
    pending: null,
    busy: false,
    queue: [],
    quickAt: Number.NEGATIVE_INFINITY,
  }));
  let typing = typingFor('api/readings');
  let [unit, status, asked] = ['C', null, null];

  for (const [i, key] of KEYS.entries()) {
    add(key, key === 'back' ? '⌫' : key, () => type(key), key === 'back' ? 'Rub out the last digit' : '');
    if (i % 3 === 2) {
      addQuick((i + 1) / 3);
    }
  }
  onTaps(pad, (button) => acts.get(button)());
  part('hand-back').addEventListener('click', takeBack);
  addEventListener('keydown', onKey, { capture: true });

  function addQuick(row) {
    if (row === 1) {
      add('same', 'Same', () => quick(0));
    } else if (row === 4) {
      add('enter', 'Enter', () => enter());
    } else {
      add(`step-${row - 2}`, '', () => quick(steps(unit)[row - 2]));
    }
  }

  function add(name, label, act, spoken) {
    const button = document.createElement('button');
    button.type = 'button';
    button.dataset.key = name;
    button.textContent = label;
    if (spoken) {
      button.setAttribute('aria-label', spoken);
    }
    acts.set(button, act);
    keys.set(name, button);
    pad.append(button);
  }

  function type(key) {
    typing.draft = press(typing.draft, key);
    typing.error = '';
    redraw();
  }

  function quick(step) {
    if (performance.now() - typing.quickAt <= SAME_TAP_MS) {
      return;
    }
    typing.quickAt = performance.now();
    typing.draft = '';
    typing.queue.push({ step, unit });
    goOn(typing, lastReading(status));
  }

  function enter() {
    const reading = readingOf(typing.draft, unit);
    if (reading && typing.busy) {
      typing.queue.push({ reading });
    } else if (reading) {
      send(typing, reading, false, typing.draft);
    }
    typing.draft = reading ? '' : typing.draft;
    redraw();
  }

  function onKey(event) {
    const elsewhere = event.target instanceof Element && event.target.closest('input, select, textarea');
    if (section.hidden || section.closest('[hidden]') || typing.question || elsewhere || event.ctrlKey || event.metaKey || event.altKey) {
      return;
    }
    const key = keyOf(event.key);
    const mine = document.activeElement === document.body || section.contains(document.activeElement);
    if (key) {
      event.preventDefault();
      type(key);
    } else if (event.key === 'Enter' && typing.draft !== '' && mine) {
      event.preventDefault();
      event.stopImmediatePropagation();
      enter();
    } else if (event.key === 'Escape' && typing.draft !== '') {
      typing.draft = '';
      redraw();
    }
  }

  /** The same reading keeps its id until it is answered: what arrives twice counts once. */
  async function send(of, reading, sure, typed = '') {
    of.pending = of.pending?.for === reading || sure ? { ...of.pending, for: reading } : { id: newId(), for: reading };
    of.busy = true;
    const answer = await call('POST', of.path, { id: of.pending.id, reading, sure });
    of.busy = false;
    of.error = '';
    if (answer.ok) {
      of.pending = null;
      goOn(of, answer.said.taken?.reading ?? lastReading(status));
    } else {
      of.draft = of.draft || typed; // what was typed meanwhile is the next reading
      of.question = answer.question ?? null;
      of.queue = of.question ? of.queue : of.queue.filter((next) => next.reading); // a quick key counts from a reading that is taken
      of.error = of.question ? '' : answer.error;
    }
    redraw();
  }

  /** Sends what was asked for while another was on its way; a quick key counts from the reading that is the last by then. */
  function goOn(of, last) {
    while (!of.busy && of.queue.length > 0) {
      const next = of.queue.shift();
      const reading = next.reading ?? higher(last, next.step, next.unit);
      if (reading) {
        send(of, reading, next.sure ?? false);
      }
    }
  }

  function choose(reading) {
    typing.question = null;
    if (reading === null) {
      [typing.draft, typing.pending] = ['', null];
      goOn(typing, lastReading(status));
      pad.hidden = false;
      keys.get('7').focus();
      redraw();
    } else {
      typing.draft = '';
      typing.queue.unshift({ reading, sure: true });
      goOn(typing, lastReading(status));
    }
  }

  async function takeBack() {
    const id = status?.hand?.last?.id;
    const of = typing;
    if (id && !of.busy) {
      of.busy = true;
      const answer = await call('DELETE', `${of.path}/${encodeURIComponent(id)}`);
      of.busy = false;
      of.error = answer.ok ? '' : answer.error;
      goOn(of, answer.ok ? lastReading(answer.said.status) : lastReading(status));
      redraw();
    }
  }

  async function call(method, path, body) {
    try {
      const answer = await fetch(path, { method, body: body && JSON.stringify(body), headers: body && { 'Content-Type': 'application/json' } });
      const said = await answer.json();
      return answer.ok ? { ok: true, said } : said;
    } catch {
      lost();
      return { error: 'No word from Spoonfall. What you typed is still here: try again.' };
    }
  }

  function ask() {
    const question = typing.question;
    if (asked === question) {
      return;
    }
    asked = question;
    const box = part('hand-question');
    box.hidden = !question;
    box.replaceChildren();
    if (question) {
      box.append(
        Object.assign(document.createElement('h2'), { textContent: question.text }),
        Object.assign(document.createElement('p'), { textContent: question.detail }),
        ...question.choices.map((choice) => {
          const button = Object.assign(document.createElement('button'), { type: 'button', textContent: choice.label });
          button.addEventListener('click', () => choose(choice.reading));
          return button;
        }),
      );
      box.querySelector('button').focus();
    }
  }

  return function update(state, newUnit, newPath) {
    typing = typingFor(newPath);
    status = state.status ?? null;
    const byHand = Boolean(status?.hand);
    section.hidden = !byHand;
    if (!byHand) {
      degreesLine.classList.remove('empty', 'drafting'); // they are a probe's now
      return;
    }
    unit = newUnit;
    if (typing.draft !== '') {
      put(digits, typing.draft);
      put(sign, `°${unit}`);
    }
    // The line keeps its place while it is empty, or the keys would move down at the first digit, beneath the finger of the second.
    degreesLine.hidden = false;
    degreesLine.classList.toggle('empty', digits.textContent === '');
    degreesLine.classList.toggle('drafting', typing.draft !== '');
    ask();
    pad.hidden = Boolean(typing.question);
    const last = lastReading(status);
    for (const [i, step] of steps(unit).entries()) {
      put(keys.get(`step-${i}`), `+${step}`);
      keys.get(`step-${i}`).disabled = last === null;
    }
    keys.get('same').disabled = last === null;
    keys.get('enter').disabled = readingOf(typing.draft, unit) === null;
    const when = part('hand-when');
    put(when, whenWords(status, state.cook?.startedAtMs ?? null));
    when.classList.toggle('due', status.hand.due);
    const back = part('hand-back');
    const taken = takesBack(status);
    back.hidden = taken === null;
    put(back, taken === null ? '' : `Take back ${shown(taken)}`);
    put(part('hand-error'), typing.error);
  };
}

function newId() {
  return [...crypto.getRandomValues(new Uint8Array(12))].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}
