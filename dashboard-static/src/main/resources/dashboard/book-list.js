// The list of the batch book, to look cooks up in.

import { askBook } from './book-ask.js';
import { SETS, day, found, listPath, summary, title } from './book-words.js';
import { choice, field, make } from './elements.js';

const WAIT_MS = 250;

/**
 * @param {(head: string | null, note: string, error: string) => void} say puts words above the list
 * @returns update(unit), which asks for the list anew
 */
export function mountBookList(place, say) {
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
  place.append(form, list, more);

  let unit = 'C';
  let cooks = [];
  let page = 0;
  let asked = 0;
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
    if (mine !== asked || place.hidden) {
      return; // somebody typed on, or went on to a cook
    }
    if (!answer) {
      say(null, '', error);
      return;
    }
    page = which;
    cooks = which === 0 ? answer.cooks : [...cooks, ...answer.cooks];
    more.hidden = cooks.length >= answer.found;
    say('The batch book.', found(answer.found, Object.values(query()).some((value) => value !== '')), '');
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
        const words = [day(cook.startedAtMs), cook.fruit, summary(cook, unit)].filter((part) => part !== '').join(' · ');
        row.append(link, make('span', { textContent: words }));
        return row;
      }),
    );
  }

  return function update(newUnit) {
    if (unit !== newUnit) {
      unit = newUnit;
      drawList();
    }
    look(0);
  };
}
