import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { runInNewContext } from 'node:vm';

const script = readFileSync(new URL('../../main/resources/dashboard/ahead.js', import.meta.url), 'utf8');

/** A page that was opened and parsed: what was asked for, whether it waits for a picture, the scripts that run. */
function opened(hash) {
  const made = [];
  const asked = [];
  const page = {
    location: { hash },
    document: { documentElement: {}, head: { append: (one) => made.push(one) }, createElement: (tag) => ({ tag }) },
    addEventListener: (name, parsed) => (page.parsed = parsed),
    fetch: async (path) => asked.push(path),
  };
  runInNewContext(script, page);
  page.parsed();
  const links = () => made.filter(({ tag }) => tag === 'link').length;
  const scripts = () => made.filter(({ tag }) => tag === 'script').map(({ src }) => src);
  return { asked, scripts, links, hidden: () => page.document.documentElement.hidden, made, ahead: page.ahead };
}

test('the book is asked for at once, before the rest of the page', () => {
  const { asked, scripts, links, hidden } = opened('#book');
  assert.deepEqual(asked, ['api/book']);
  assert.deepEqual(scripts(), ['app.js']);
  assert.ok(links() > 10);
  assert.equal(hidden(), false);
});

test('a cook of the book has its picture before the rest of the page is asked for', () => {
  assert.deepEqual(opened('#book/7/3').asked, ['api/book/7/climb', 'api/book/3/climb']);
  const { asked, scripts, links, hidden, ahead } = opened('#book/7');
  assert.deepEqual(asked, ['api/book/7/climb']);
  assert.deepEqual([scripts(), links(), hidden()], [['book-first.js'], 0, true]);
  ahead.goOn();
  assert.deepEqual([scripts(), hidden()], [['book-first.js', 'app.js'], false]);
  assert.ok(links() > 10);
});

test('the rest comes all the same where the picture cannot', () => {
  const { scripts, hidden, made } = opened('#book/7');
  made.find(({ src }) => src === 'book-first.js').onerror();
  assert.deepEqual([scripts(), hidden()], [['book-first.js', 'app.js'], false]);
});

test('other addresses ask for nothing of the book, nonsense too', () => {
  for (const hash of ['', '#pan', '#lesson/7', '#book/0', '#book/x', '#book/7/../../door', '#book/7?x', '#books']) {
    const { asked, scripts, hidden } = opened(hash);
    assert.deepEqual([asked, scripts(), hidden()], [[], ['app.js'], false]);
  }
});
