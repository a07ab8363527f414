// How a batch came out, one tap each. Returns update(cook, said), which calls said with what the service kept.

import { askBook } from './book-ask.js';
import { field, make, put } from './elements.js';
import { AFTER, SETS, TASTES } from './book-words.js';

/** @param {HTMLElement} place */
export function mountOutcome(place) {
  const wrong = make('p', { className: 'error' }, 'book-outcome-error');
  wrong.setAttribute('role', 'status');
  const rows = Object.entries(AFTER).map(([after, words]) => row(after, words));
  const form = make('form', { className: 'book-made' });
  const fruit = field('Fruit, by a short name', { type: 'text', maxLength: 40 }, 'book-made-fruit');
  const jars = field('Jars filled', { type: 'number', min: 0, max: 999, inputMode: 'numeric' }, 'book-made-jars');
  const words = field('In your words, after a day', { type: 'text', maxLength: 500 }, 'book-made-words');
  const keep = make('button', { type: 'submit', className: 'plain', textContent: 'Keep this' }, 'book-made-keep');
  form.append(fruit.label, jars.label, words.label, keep);
  place.append(make('h2', { textContent: 'How it came out' }), ...rows.map(({ element }) => element), form, wrong);

  let cook = null;
  let said = () => {};
  let filledFor = null;

  form.addEventListener('submit', (event) => {
    event.preventDefault();
    const number = jars.input.value === '' ? null : Number(jars.input.value);
    tell({ after: 'day', fruit: fruit.input.value, jars: number, words: words.input.value });
  });

  function row(after, label) {
    const element = make('div', { className: 'book-taps' }, `book-${after}`);
    element.setAttribute('role', 'group');
    element.setAttribute('aria-label', label);
    element.append(make('span', { textContent: label }));
    const sets = SETS.map((set) => tap(set, `book-${after}-${set}`, () => tell({ after, set })));
    const tastes = TASTES.map((taste) => tap(taste, `book-${after}-${taste}`, () => tell({ after, taste: turned(after, taste) })));
    const between = make('span', { textContent: 'tastes', className: 'book-tastes' });
    element.append(...sets, between, ...tastes);
    return { after, element, sets, tastes };
  }

  function tap(words, testid, act) {
    const button = make('button', { type: 'button', className: 'plain', textContent: words }, testid);
    button.addEventListener('click', act);
    return button;
  }

  function turned(after, taste) {
    const before = cook.outcomes[after]?.taste ?? [];
    return before.includes(taste) ? before.filter((one) => one !== taste) : [...before, taste];
  }

  async function tell(body) {
    const [answer, error] = await askBook('POST', `api/book/${cook.id}/outcome`, body);
    put(wrong, error);
    if (answer) {
      filledFor = null;
      said(answer);
    }
  }

  return function update(newCook, newSaid) {
    cook = newCook;
    said = newSaid;
    for (const { after, sets, tastes } of rows) {
      const outcome = cook.outcomes[after] ?? { set: null, taste: [] };
      sets.forEach((button, i) => button.setAttribute('aria-pressed', String(outcome.set === SETS[i])));
      tastes.forEach((button, i) => button.setAttribute('aria-pressed', String(outcome.taste.includes(TASTES[i]))));
    }
    if (filledFor !== cook.id && !form.contains(document.activeElement)) {
      filledFor = cook.id;
      fruit.input.value = cook.fruit;
      jars.input.value = cook.jars ?? '';
      words.input.value = cook.outcomes.day?.words ?? '';
    }
  };
}
