import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { basename } from 'node:path';
import { test } from 'node:test';

const folder = new URL('../../main/resources/dashboard/', import.meta.url);
const read = (name) => readFileSync(new URL(name, folder), 'utf8');

/** The modules that one needs before it can run, with itself. */
function needed(name, seen = new Set([name])) {
  for (const [, path] of read(name).matchAll(/^(?:import|export) [^;]*? from '\.\/([^']+)'/gm)) {
    const other = basename(path);
    if (!seen.has(other)) {
      seen.add(other);
      if (!path.startsWith('webjars/')) {
        needed(other, seen);
      }
    }
  }
  return [...seen].sort();
}

const first = [...read('index.html').matchAll(/rel="modulepreload" href="([^"]+)"/g)].map(([, path]) => basename(path)).sort();

test('the page asks at once for what a cook of the book needs, and for nothing else', () => {
  assert.deepEqual(first, needed('book-first.js'));
});

test('then it asks for the rest of what it needs, all at once, and for nothing else', () => {
  const [, names] = read('ahead.js').match(/^  const REST = \[([^\]]*)\]/m);
  const rest = [...names.matchAll(/'([^']+)'/g)].map(([, name]) => name).sort();
  assert.deepEqual(rest, needed('app.js').filter((name) => !first.includes(name)));
});
