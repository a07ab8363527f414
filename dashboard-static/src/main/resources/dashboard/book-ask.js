// Asks the service for what is in the book. Returns [answer, ''] or [null, what went wrong in one line].

/** @param {string} method @param {string} path @param {object | Blob} [body] an object goes as JSON, a file as it is */
export async function askBook(method, path, body) {
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
