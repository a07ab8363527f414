// The batch book: a list to look cooks up in, one cook, or two on one picture.

import { askBook } from './book-ask.js';
import { mountBookCook } from './book-cook.js';
import { choice, field, make, put } from './elements.js';
import { SETS, day, found, listPath, routeOf, summary, title } from './book-words.js';

const WAIT_MS = 250;

let mounted = null;

/**
 * Mounts the view into its section, once, whoever asks for it first; returns update(unit), which follows the address and whose promise, if it has something to ask for, is kept when it is shown.
 */
export function mountBook(section) {
  return (mounted ??= mount(section));
}

function mount(section) {
  const back = make('p', {});
  back.append(make('a', { className: 'way', href: '#pan', textContent: 'Back to the pan' }), ' ');
  const toList = make('a', { className: 'way', href: '#book', textContent: 'All cooks', hidden: true }, 'book-all');
  back.append(toList, ' ', make('a', { className: 'way', href: '#learn', textContent: 'What your batches teach' }, 'book-learn'));
  const head = make('h1', { tabIndex: -1, textContent: 'The batch book.' }, 'book-state');
  const note = make('p', { className: 'note' }, 'book-note');
  const wrong = make('p', { className: 'error' }, 'book-error');
  note.setAttribute('role', 'status');
  wrong.setAttribute('role', 'status');
  const form = make('form', { className: 'book-search' });
  form.setAttribute('role', 'search');
  const text = field('Look for', { type: 'search', maxLength: 100, placeholder: 'a batch, a note, a taste' }, 'book-text');
  const fruit = choice('Fruit', [['', 'any']], 'book-fruit');
  const set = choice('Set', [['', 'any'], ...SETS.map((one) => [one, one])], 'book-set');
  const from = field('From', { type: 'date' }, 'book-from');
  const until = field('Until', { type: 'date' }, 'book-until');
  form.append(text.label, fruit.label, set.label, from.label, until.label);
  const list = make('ol', { className: 'book-list' }, 'book-list');
  const more = make('button', { type: 'button', className: 'plain', textContent: 'Show more', hidden: true }, 'book-more');
  const cookPlace = make('div', { className: 'book-cook', hidden: true }, 'book-cook');
  section.append(back, head, note, wrong, form, list, more, cookPlace);
  const updateCook = mountBookCook(cookPlace, say);

  let unit = 'C';
  let cooks = [];
  let page = 0;
  let asked = 0;
  let shown = '';
  let timer = 0;

  const query = () => ({
    text: text.input.value.trim(),
    fruit: fruit.select.value,
    set: set.select.value,
    from: from.input.value,
    until: until.input.value,
  });

  form.addEventListener('submit', (event) => event.preventDefault());
  form.addEventListener('input', () => {
    clearTimeout(timer);
    timer = setTimeout(() => look(0), WAIT_MS);
  });
  more.addEventListener('click', () => look(page + 1));

  async function look(which) {
    const mine = ++asked;
    const [answer, error] = await askBook('GET', listPath(query(), which));
    if (mine !== asked) {
      return; // somebody typed on
    }
    put(wrong, error);
    if (!answer) {
      return;
    }
    page = which;
    cooks = which === 0 ? answer.cooks : [...cooks, ...answer.cooks];
    more.hidden = cooks.length >= answer.found;
    put(note, found(answer.found, Object.values(query()).some((value) => value !== '')));
    offer(answer.fruits);
    drawList();
  }

  function offer(fruits) {
    const known = [...fruit.select.options].slice(1).map((option) => option.value);
    fruits.filter((one) => !known.includes(one)).forEach((one) => fruit.select.append(new Option(one, one)));
  }

  function drawList() {
    list.replaceChildren(
      ...cooks.map((cook) => {
        const row = make('li', {});
        const link = make('a', { href: `#book/${cook.id}`, className: 'book-link', textContent: title(cook) });
        const more = [day(cook.startedAtMs), cook.fruit, summary(cook, unit)].filter((words) => words !== '').join(' · ');
        row.append(link, make('span', { textContent: more }));
        return row;
      }),
    );
  }

  /** What a cook of the book has to say of itself, in the place of the list's words. */
  function say(words, more, error) {
    if (words !== null) {
      put(head, words);
      put(note, more);
    }
    put(wrong, error);
  }

  return function update(newUnit) {
    const route = routeOf(location.hash);
    const key = `${location.hash} ${newUnit}`;
    if (!route.book || key === shown) {
      return null;
    }
    const turned = unit !== newUnit;
    unit = newUnit;
    shown = key;
    const one = route.id !== null;
    for (const part of [form, list]) {
      part.hidden = one;
    }
    more.hidden = one || more.hidden;
    toList.hidden = !one;
    cookPlace.hidden = !one;
    if (one) {
      return updateCook(route, unit);
    }
    put(head, 'The batch book.');
    if (turned) {
      drawList();
    }
    return look(0);
  };
}
