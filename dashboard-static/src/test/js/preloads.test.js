import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { basename } from 'node:path';
import { test } from 'node:test';

const folder = new URL('../../main/resources/dashboard/', import.meta.url);
const read = (name) => readFileSync(new URL(name, folder), 'utf8');

/** The modules that one needs before it can run. */
function needed(name, seen = new Set()) {
  for (const [, path] of read(name).matchAll(/^(?:import|export) [^;]*? from '\.\/([^']+)'/gm)) {
    const other = basename(path);
    if (!seen.has(other)) {
      seen.add(other);
      if (!path.startsWith('webjars/')) {
        needed(other, seen);
      }
    }
  }
  return seen;
}

test('what the page needs at once is asked for at once, and nothing that is not there', () => {
  const preloaded = [...read('index.html').matchAll(/rel="modulepreload" href="([^"]+)"/g)].map(([, path]) => basename(path));
  const wanted = new Set(['app.js', ...needed('app.js'), 'book.js', ...needed('book.js')]);
  assert.deepEqual([...preloaded].sort(), [...wanted].sort());
});
