// Asks the service for what is in the book. What the address names was asked for before the page was there (ahead.js).

const JSON_TYPE = { 'Content-Type': 'application/json' };

const ahead = globalThis.ahead?.asked ?? new Map();

addEventListener('hashchange', () => ahead.clear(), { once: true }); // by then it may have changed

/**
 * @param {string} method
 * @param {string} path
 * @param {object | Blob} [body] an object goes as JSON, a file as it is
 * @returns [answer, ''] or [null, what went wrong in one line]
 */
export async function askBook(method, path, body) {
  const coming = method === 'GET' ? ahead.get(path) : undefined;
  const file = body instanceof Blob;
  ahead.delete(path);
  try {
    const asked = { method, body: body === undefined || file ? body : JSON.stringify(body), headers: body === undefined || file ? {} : JSON_TYPE };
    const answer = await (coming ?? fetch(path, asked));
    const said = await answer.json();
    return answer.ok ? [said, ''] : [null, sentence(String(said.error))];
  } catch {
    return [null, 'No word from Spoonfall; try again.'];
  }
}

function sentence(words) {
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}${words.endsWith('.') ? '' : '.'}`;
}
