import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { setImmediate } from 'node:timers/promises';
import { runInNewContext } from 'node:vm';

const script = readFileSync(new URL('../../main/resources/dashboard/ahead.js', import.meta.url), 'utf8');

/** A page that was opened: what it asked for and made so far; parsed() goes on to where all of it has been read. */
function opened(hash, { unit = null, decodes = async () => {} } = {}) {
  const made = [];
  const asked = [];
  const pictures = [];
  const sections = new Map();
  const section = (name) => {
    if (!sections.has(name)) {
      sections.set(name, { hidden: true, children: [], append: (one) => sections.get(name).children.push(one) });
    }
    return sections.get(name);
  };
  class Picture {
    constructor() {
      pictures.push(this);
    }

    decode() {
      return decodes();
    }

    remove() {
      this.gone = true;
    }
  }
  let parsed = null;
  const page = {
    location: { hash },
    document: {
      documentElement: { hidden: false },
      head: { append: (one) => made.push(one) },
      createElement: (tag) => ({ tag }),
      querySelector: section,
      querySelectorAll: () => [],
    },
    localStorage: { getItem: () => unit },
    addEventListener: (name, then) => (parsed = then),
    fetch: async (path) => asked.push(path),
    Image: Picture,
    Intl: { DateTimeFormat: class { resolvedOptions = () => ({ timeZone: 'Europe/London' }); } },
    requestAnimationFrame: (then) => then(),
    setTimeout: () => {},
  };
  runInNewContext(script, page);
  return {
    asked,
    pictures,
    links: () => made.filter(({ tag }) => tag === 'link').length,
    scripts: () => made.filter(({ tag }) => tag === 'script').map(({ src }) => src),
    hidden: () => page.document.documentElement.hidden,
    section: (name) => section(`[data-testid="${name}"]`),
    made,
    ahead: page.ahead,
    parsed: async () => {
      parsed();
      await setImmediate();
    },
  };
}

test('the book is asked for at once, before the rest of the page', async () => {
  const page = opened('#book');
  assert.deepEqual(page.asked, ['api/book']);
  assert.ok(page.links() > 30);
  await page.parsed();
  assert.deepEqual([page.scripts(), page.hidden()], [['app.js'], false]);
});

test('a cook of the book has its picture before any script is asked for', async () => {
  const page = opened('#book/7');
  assert.deepEqual([page.asked, page.links(), page.hidden()], [[], 0, true]);
  assert.deepEqual(page.pictures.map(({ src }) => src), ['api/book/7/picture.svg?unit=C&zone=Europe%2FLondon']);
  await page.parsed();
  assert.deepEqual([page.hidden(), page.section('book').hidden, page.section('book-cook').hidden], [false, false, false]);
  assert.deepEqual(page.section('book-climb').children, page.pictures);
  assert.deepEqual([page.asked, page.scripts()], [['api/book/7/climb'], ['book-first.js']]);
  const first = page.links();
  page.ahead.goOn();
  assert.deepEqual(page.scripts(), ['book-first.js', 'app.js']);
  assert.ok(page.links() > first && first > 10);
});

test('two cooks have one picture, in the unit that was chosen', async () => {
  const page = opened('#book/7/3', { unit: 'F' });
  assert.deepEqual(page.pictures.map(({ src }) => src), ['api/book/7/picture.svg?unit=F&zone=Europe%2FLondon&beside=3']);
  await page.parsed();
  assert.deepEqual(page.asked, ['api/book/7/climb', 'api/book/3/climb']);
});

test('the scripts wait for the picture, and come all the same where there is none', async () => {
  let fails = null;
  const page = opened('#book/7', { decodes: () => new Promise((there, not) => (fails = not)) });
  await page.parsed();
  assert.deepEqual([page.scripts(), page.hidden()], [[], false]);
  fails(new Error('none'));
  await setImmediate();
  assert.deepEqual([page.scripts(), page.pictures[0].gone], [['book-first.js'], true]);
});

test('the rest comes all the same where the first scripts cannot', async () => {
  const page = opened('#book/7');
  await page.parsed();
  page.made.find(({ src }) => src === 'book-first.js').onerror();
  assert.deepEqual(page.scripts(), ['book-first.js', 'app.js']);
});

test('other addresses ask for nothing of the book, nonsense too', async () => {
  for (const hash of ['', '#pan', '#lesson/7', '#book/0', '#book/x', '#book/7/../../door', '#book/7?x', '#books']) {
    const page = opened(hash);
    await page.parsed();
    assert.deepEqual([page.asked, page.pictures, page.scripts(), page.hidden()], [[], [], ['app.js'], false]);
  }
});
