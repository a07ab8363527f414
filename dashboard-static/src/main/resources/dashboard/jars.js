// The view of the jars: a sentence, the time in large digits, one big act; the form that looks the time up; the jars that cool.

import { make, put } from './elements.js';
import { awayAsked, elevationOf, jarsSaying, loadAsked, loadWords, sealAsked, tapAsked, timeAsked } from './jars-words.js';
import { buildForm } from './jars-form.js';
import { fill } from './words.js';

/** A tap must not fall on what has come under the finger just now. */
const DEAF_MS = 400;

/**
 * Mounts the view into its section; returns update(state, unit).
 * @param {(method: string, path: string, body?: object, heard?: (answer: object) => void) => Promise<string>} ask returns what went
 *   wrong, or '', after it has told what was answered
 */
export function mountJars(section, ask) {
  const head = make('h1', { tabIndex: -1 }, 'jars-state');
  const act = make('p', { className: 'jars-do' }, 'jars-act');
  const note = make('p', { className: 'note' }, 'jars-note');
  const spoken = make('div', {});
  spoken.setAttribute('aria-live', 'polite');
  spoken.append(head, act); // the note tells every tenth of a degree: too much to be read out
  const timer = make('p', { className: 'timer', hidden: true }, 'jars-timer');
  timer.setAttribute('role', 'timer');
  const error = make('p', { className: 'error' }, 'jars-error');
  error.setAttribute('role', 'status');
  const big = button('big', 'jars-main');
  big.dataset.oneAct = '';
  const quieter = make('div', { className: 'quieter' }, 'jars-quieter');
  const what = make('p', { className: 'basis' }, 'jars-load');
  const why = make('div', {}, 'jars-why');
  const shelf = make('div', { className: 'shelf' }, 'jars-shelf');
  const form = buildForm(lookUp, putIn, whyOf);
  const back = make('p', {});
  back.append(Object.assign(document.createElement('a'), { className: 'way', href: '#pan', textContent: 'Back to the pan' }));
  section.append(back, spoken, note, timer, error, big, quieter, what, why, shelf, form.element);

  const listed = new Map();
  let main = null;
  let mainSince = 0;
  let filled = false;

  big.addEventListener('click', () => main && performance.now() - mainSince > DEAF_MS && send(tapAsked(main, tapId())));

  async function send(asked) {
    const wrong = await ask(...asked);
    put(error, wrong);
    return wrong;
  }

  async function lookUp(values) {
    let time = null;
    const wrong = await ask(...timeAsked(values), (answer) => {
      time = answer;
    });
    return { wrong, time };
  }

  async function putIn(values) {
    return ask(...loadAsked(values, tapId()));
  }

  function once(element, key, make) {
    if (listed.get(element) !== key) {
      listed.set(element, key);
      const focused = document.activeElement?.closest?.('[data-does]')?.dataset.does;
      const had = focused && element.contains(document.activeElement);
      element.replaceChildren(...make());
      if (had) {
        element.querySelector(`[data-does="${focused}"]`)?.focus();
      }
    }
  }

  function quiet(offer) {
    const made = button('plain');
    made.dataset.does = offer.does;
    made.textContent = offer.label;
    made.addEventListener('click', () => send(tapAsked(offer, tapId())));
    return made;
  }

  function jarRow(load, jar, seal) {
    const row = make('li', {});
    row.append(Object.assign(document.createElement('span'), { textContent: `Jar ${jar}` }));
    for (const [sealed, label, is] of [['yes', 'Sealed', 'sealed'], ['no', 'Not sealed', 'unsealed']]) {
      const made = button('plain');
      made.dataset.does = `${load.number}-${jar}-${sealed}`;
      made.textContent = label;
      made.setAttribute('aria-label', `Jar ${jar}: ${label.toLowerCase()}`);
      made.setAttribute('aria-pressed', String(seal === is));
      made.addEventListener('click', () => send(sealAsked(load.number, jar, seal === is ? 'unknown' : sealed, tapId())));
      row.append(made);
    }
    return row;
  }

  function loadOf(load, words) {
    const made = make('section', {}, `jars-load-${load.number}`);
    made.setAttribute('aria-label', `Load ${load.number}`);
    const title = make('h2', { textContent: `Load ${load.number}: ${load.jars} ${load.jars === 1 ? 'jar' : 'jars'} of ${load.food}` });
    made.append(title, make('p', { textContent: words }));
    if (load.phase !== 'cooling') {
      const list = make('ol', {});
      list.append(...load.seals.map((seal, i) => jarRow(load, i + 1, seal)));
      made.append(list);
    }
    const away = button('plain');
    away.dataset.does = `away-${load.number}`;
    away.textContent = 'Put this load away';
    away.addEventListener('click', () => send(awayAsked(load.number, tapId())));
    made.append(...(load.phase === 'done' ? [away] : []));
    return made;
  }

  return function update(state, unit) {
    const said = jarsSaying(state, unit);
    const jars = state.jars;
    put(head, said.state);
    put(act, said.act);
    put(note, said.note);
    timer.hidden = said.digits === '';
    put(timer, said.digits);
    timer.setAttribute('aria-label', said.label);
    if (main?.does !== said.main?.does) {
      mainSince = performance.now();
      put(error, '');
    }
    main = said.main;
    big.hidden = main === null;
    put(big, main?.label ?? '');
    once(quieter, JSON.stringify(said.quieter), () => said.quieter.map(quiet));
    const live = state.connection === 'live' && jars;
    put(what, live ? loadWords(jars.load) : '');
    once(why, JSON.stringify(live && jars.load?.reasons), () => (live && jars.load ? [whyOf(jars.load)] : []));
    const loads = live ? jars.shelf : [];
    const texts = loads.map((load) => fill(load.text, unit, jars.zeroAtMs));
    once(shelf, JSON.stringify([loads.map((load) => [load.number, load.phase, load.seals]), texts]), () =>
      loads.map((load, i) => loadOf(load, texts[i])));
    form.element.hidden = !said.form;
    if (!filled && state.heard) {
      filled = true;
      form.suggest(elevationOf(state.basis));
    }
  };
}

/** Why the time is what it is, folded away. */
export function whyOf(time) {
  const details = make('details', {});
  details.append(make('summary', { textContent: `Why ${time.minutes} minutes` }));
  for (const [title, lines] of [['', time.reasons], ['Take care', time.cautions], ['Sources', time.sources]]) {
    if (title) {
      details.append(make('h2', { textContent: title }));
    }
    details.append(...lines.map((line) => make('p', { textContent: line })));
  }
  return details;
}

function tapId() {
  return `${Date.now().toString(36)}-${Math.random().toString(36).slice(2)}`;
}

function button(className, testid) {
  return make('button', { type: 'button', className }, testid);
}
