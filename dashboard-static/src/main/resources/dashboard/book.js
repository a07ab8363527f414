// The batch book: a list to look cooks up in, one cook, or two on one picture.

import { mountBookCook } from './book-cook.js';
import { routeOf } from './book-words.js';
import { put } from './elements.js';
import { later } from './later.js';

let mounted = null;

/**
 * Mounts the view into its section, once, whoever asks for it first; returns update(unit), which follows the address and
 * whose promise, if it shows another cook, is kept when its picture is drawn.
 */
export function mountBook(section) {
  return (mounted ??= mount(section));
}

function mount(section) {
  const [toList, head, note, wrong, listPlace, cookPlace] = ['all', 'state', 'note', 'error', 'looks', 'cook'].map((name) =>
    section.querySelector(`[data-testid="book-${name}"]`),
  );
  const updateCook = mountBookCook(cookPlace, say);
  const updateList = later(() => import('./book-list.js'), ({ mountBookList }) => mountBookList(listPlace, say));
  let shown = '';

  /** What the list or a cook has to say of itself, above it. */
  function say(words, more, error) {
    if (words !== null) {
      put(head, words);
      put(note, more);
    }
    put(wrong, error);
  }

  return function update(unit) {
    const route = routeOf(location.hash);
    const key = `${location.hash} ${unit}`;
    if (!route.book || key === shown) {
      return null;
    }
    shown = key;
    const one = route.id !== null;
    toList.hidden = !one;
    listPlace.hidden = one;
    cookPlace.hidden = !one;
    if (one) {
      return updateCook(route, unit);
    }
    put(head, 'The batch book.');
    updateList(unit);
    return null;
  };
}
