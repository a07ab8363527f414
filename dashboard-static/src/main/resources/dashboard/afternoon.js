// The afternoon: the sentence, one act, the steps, and the cook's own notes.

import { addition, afternoonSaying, choices, places, request, rows, unprocessed } from './afternoon-words.js';
import { put } from './elements.js';
import { pathFor } from './pans.js';

/** A tap must not fall on what has come under the finger just now. */
const DEAF_MS = 400;
const deaf = new WeakMap();

/**
 * Mounts the view into its section; returns update(state).
 * @param {(method: string, path: string, body?: object) => Promise<string>} ask returns what went wrong, or ''
 */
export function mountAfternoon(section, ask) {
  const part = (name) => section.querySelector(`[data-testid="afternoon-${name}"]`);
  const chooser = part('choose');
  let afternoon = null;
  let drawn = '';
  let chosen = '';

  const tapId = () => `${Date.now().toString(36)}-${Math.random().toString(36).slice(2)}`;
  const send = async (asked) => {
    const wrong = await ask(...asked);
    put(part('error'), wrong);
    return wrong;
  };
  const said = () => choices(afternoon).length && [...afternoon.steps, ...afternoon.preparations].find(({ id }) => id === chooser.value);

  once(part('act'), () => send(request(afternoon.act.does, afternoon.act.id, tapId())));
  once(part('other'), () => send(request(afternoon.other.does, afternoon.other.id, tapId())));
  once(part('skip'), () => send(request('skip', current().id, tapId())));
  once(part('undo'), () => send(['POST', 'api/afternoon/undo', { mark: afternoon.undo.mark }]));
  once(part('already'), () => send(request(isStep() ? 'done' : 'prepared', chooser.value, tapId())));
  once(part('leave-out'), () => send(request('skip', chooser.value, tapId())));
  once(part('remove'), () => send(['DELETE', `api/afternoon/notes/${encodeURIComponent(chooser.value)}`]));
  chooser.addEventListener('change', () => showChosen(true));
  part('change').addEventListener('submit', async (event) => {
    event.preventDefault();
    const body = { tap: tapId(), name: part('name').value, minutes: said().fixed ? undefined : Number(part('minutes').value) };
    const wrong = await send(['POST', `api/afternoon/notes/${encodeURIComponent(chooser.value)}`, body]);
    put(part('answer'), wrong || 'Kept.');
  });
  part('add').addEventListener('submit', async (event) => {
    event.preventDefault();
    const wrong = await send(addition(part('add-name').value, part('add-minutes').value, part('add-place').value, tapId()));
    put(part('answer'), wrong || 'Added.');
    if (!wrong) {
      part('add-name').value = '';
    }
  });

  function current() {
    return afternoon.steps.find((step) => step.state === 'now');
  }

  function isStep() {
    return afternoon.steps.some(({ id }) => id === chooser.value);
  }

  function showChosen(afresh) {
    const note = said();
    if (!note) {
      return;
    }
    if (afresh) {
      part('name').value = note.name;
      part('minutes').value = note.minutes;
    }
    part('minutes').disabled = Boolean(note.fixed);
    part('leave-out').hidden = !isStep();
    put(part('minutes-words'), isStep() ? 'Minutes it usually takes' : note.fixed ? 'Minutes ahead, as Spoonfall reminds you' : 'Minutes ahead');
  }

  function label(button, act) {
    if (act && button.textContent !== act.label) {
      if (!button.hidden && button.textContent) {
        deafen(button);
      }
      button.textContent = act.label;
    }
    button.hidden = !act;
  }

  return function update(state) {
    afternoon = state.afternoon ?? null;
    if (!afternoon) {
      return;
    }
    const live = state.connection === 'live';
    const words = afternoonSaying(afternoon);
    put(part('state'), live ? words.state : 'No word from Spoonfall.');
    put(part('due'), live ? words.act : '');
    put(part('note'), live ? words.note : 'The steps below are as they were last heard. I keep trying.');
    put(part('caution'), unprocessed(afternoon));
    label(part('act'), live && afternoon.act);
    label(part('other'), live && afternoon.other);
    label(part('skip'), live && current()?.optional && { label: 'Leave it out' });
    label(part('undo'), live && afternoon.undo && { label: `Undo: ${afternoon.undo.words}` });
    const list = rows(afternoon);
    const key = JSON.stringify(list);
    if (key !== drawn) {
      drawn = key;
      part('steps').replaceChildren(...list.map(line));
    }
    part('file').setAttribute('href', pathFor('api/afternoon/notes', state));
    fillChooser(chooser, choices(afternoon));
    fillChooser(part('add-place'), places(afternoon));
    showChosen(chosen !== chooser.value);
    chosen = chooser.value;
  };
}

/** Does what a tap asks, and is deaf for a moment after it. */
function once(button, act) {
  button.addEventListener('click', () => {
    if (button.ariaDisabled !== 'true') {
      deafen(button);
      act();
    }
  });
}

/** Deaf for a moment, but neither gone nor out of focus. */
function deafen(button) {
  clearTimeout(deaf.get(button));
  button.ariaDisabled = 'true';
  deaf.set(
    button,
    setTimeout(() => {
      button.ariaDisabled = null;
    }, DEAF_MS),
  );
}

function line({ id, kind, state, when, what, how }) {
  const li = document.createElement('li');
  Object.assign(li.dataset, { state, kind, id });
  for (const words of [when, what, how]) {
    const span = document.createElement('span');
    span.textContent = words;
    li.append(span);
  }
  if (state === 'now') {
    li.setAttribute('aria-current', 'step');
  }
  return li;
}

function fillChooser(chooser, options) {
  const key = JSON.stringify(options);
  if (chooser.dataset.key !== key) {
    const value = chooser.value;
    chooser.dataset.key = key;
    chooser.replaceChildren(...options.map(([id, words]) => new Option(words, id)));
    if (options.some(([id]) => id === value)) {
      chooser.value = value;
    }
  }
}
