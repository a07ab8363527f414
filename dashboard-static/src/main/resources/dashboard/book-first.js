// Shows the picture of a cook of the book while the rest of the page is still on its way.

import { mountBook } from './book.js';
import { rememberedUnit } from './kept.js';
import { showView } from './views.js';

const frame = () => new Promise((drawn) => requestAnimationFrame(drawn));

/** Kept when the picture can be seen, or when it turned out that there is none. */
export async function showBook() {
  document.documentElement.hidden = false;
  showView('book');
  await mountBook(document.querySelector('[data-testid="book"]'))(rememberedUnit());
  await frame();
  await frame();
}
