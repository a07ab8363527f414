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

/** What one of the lists of ahead.js holds. */
function listed(name) {
  const [, names] = read('ahead.js').match(new RegExp(`^  const ${name} = \\[([^\\]]*)\\]`, 'm'));
  return [...names.matchAll(/'([^']+)'/g)].map(([, path]) => basename(path)).sort();
}

test('the page asks at once for what a cook of the book needs, and for nothing else', () => {
  assert.deepEqual(listed('FIRST'), needed('book-first.js'));
});

test('then it asks for the rest of what it needs, all at once, and for nothing else', () => {
  assert.deepEqual(
    listed('REST'),
    needed('app.js').filter((name) => !listed('FIRST').includes(name)),
  );
});

test('no script is asked for before the one that knows what is looked at', () => {
  assert.equal(read('index.html').includes('modulepreload'), false);
});
