// Asks the service for what is in the book. What the address names is asked for at once, while the rest of the page is on its way.

import { routeOf, wantedBy } from './book-words.js';

const early = new Map(wantedBy(routeOf(location.hash)).map((path) => [path, asked('GET', path)]));

addEventListener('hashchange', () => early.clear(), { once: true }); // by then it may have changed

/**
 * @param {string} method
 * @param {string} path
 * @param {object | Blob} [body] an object goes as JSON, a file as it is
 * @returns [answer, ''] or [null, what went wrong in one line]
 */
export function askBook(method, path, body) {
  const coming = method === 'GET' ? early.get(path) : undefined;
  early.delete(path);
  return coming ?? asked(method, path, body);
}

async function asked(method, path, body) {
  const file = body instanceof Blob;
  try {
    const answer = await fetch(path, {
      method,
      body: body === undefined || file ? body : JSON.stringify(body),
      headers: body === undefined || file ? {} : { 'Content-Type': 'application/json' },
    });
    const said = await answer.json();
    return answer.ok ? [said, ''] : [null, sentence(String(said.error))];
  } catch {
    return [null, 'No word from Spoonfall; try again.'];
  }
}

function sentence(words) {
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}${words.endsWith('.') ? '' : '.'}`;
}
