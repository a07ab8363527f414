// Shows the picture of a cook of the book, and lets the rest of the page come then.

import { mountBook } from './book.js';
import { rememberedUnit } from './kept.js';
import { showView } from './sections.js';

/** The picture keeps the rest of the page waiting for no longer. */
const LONGEST_MS = 2000;

const frame = () => new Promise((drawn) => requestAnimationFrame(drawn));
const late = new Promise((over) => setTimeout(over, LONGEST_MS));

async function show() {
  showView('book');
  await mountBook(document.querySelector('[data-testid="book"]'))(rememberedUnit());
  await frame();
  await frame();
}

Promise.race([show(), late]).then(globalThis.ahead.goOn, globalThis.ahead.goOn);
