// Shows the picture of a cook of the book, and lets the rest of the page come then.

import { mountBook } from './book.js';
import { rememberedUnit } from './kept.js';

/** The picture keeps the rest of the page waiting for no longer. */
const LONGEST_MS = 2000;

const late = new Promise((over) => setTimeout(over, LONGEST_MS));

async function show() {
  await mountBook(document.querySelector('[data-testid="book"]'))(rememberedUnit());
  await globalThis.ahead.painted();
}

Promise.race([show(), late]).then(globalThis.ahead.goOn, globalThis.ahead.goOn);
