import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { runInNewContext } from 'node:vm';

const script = readFileSync(new URL('../../main/resources/dashboard/ahead.js', import.meta.url), 'utf8');

/** What is asked for before the page is there, and whether it waits for a picture. */
function opened(hash) {
  const asked = [];
  const page = { location: { hash }, document: { documentElement: {} }, fetch: async (path) => asked.push(path) };
  runInNewContext(script, page);
  return [asked, page.document.documentElement.hidden];
}

test('an address of the book says what must be asked for, before the page is there', () => {
  assert.deepEqual(opened('#book'), [['api/book'], false]);
  assert.deepEqual(opened('#book/7'), [['api/book/7/climb'], true]);
  assert.deepEqual(opened('#book/7/3'), [['api/book/7/climb', 'api/book/3/climb'], true]);
});

test('other addresses ask for nothing and are shown at once, nonsense too', () => {
  for (const hash of ['', '#pan', '#lesson/7', '#book/0', '#book/x', '#book/7/../../door', '#book/7?x', '#books']) {
    assert.deepEqual(opened(hash), [[], false]);
  }
});
