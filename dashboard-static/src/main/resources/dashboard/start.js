// What is looked at first is there first: a cook of the book has its picture before the rest of the page is fetched. index.html asks at once for
// the modules that such a cook needs; these are the others of the page, all at once, rather than one for the sake of another.

const REST = [
  'app.js',
  'call.js',
  'door.js',
  'door-words.js',
  'hands.js',
  'awake.js',
  'hands-words.js',
  'one-act.js',
  'notices.js',
  'sound.js',
  'sound-patterns.js',
  'spoken.js',
  'store.js',
  'jars-words.js',
  'notes-words.js',
  'voice.js',
  'speech-queue.js',
  'hand.js',
  'hand-words.js',
  'later.js',
  'live.js',
  'notes.js',
  'pans.js',
  'panels.js',
  'thermometer-words.js',
  'shell.js',
  'test-words.js',
  'tests.js',
  'test-drawings.js',
];

/** A cook's picture keeps the rest of the page waiting for no longer. */
const LONGEST_MS = 2000;

const parsed = document.readyState === 'loading' ? new Promise((done) => addEventListener('DOMContentLoaded', done, { once: true })) : null;
if (/^#book\/[1-9]/.test(location.hash)) {
  await parsed;
  const shown = import('./book-first.js').then(({ showBook }) => showBook());
  await Promise.race([shown.catch(() => {}), new Promise((done) => setTimeout(done, LONGEST_MS))]); // without the service the page says so
  document.documentElement.hidden = false;
}
REST.forEach((name) => document.head.append(Object.assign(document.createElement('link'), { rel: 'modulepreload', href: name })));
await parsed;
import('./app.js');
