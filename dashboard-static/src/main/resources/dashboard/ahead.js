// Runs before anything else of the page. What is looked at first is there first: where the address names a cook of the book, its climb is asked
// for at once, nothing is laid out before its picture can be, and the rest of the page comes after it.

(() => {
  /** What the page needs besides what a cook of the book needs (index.html): all at once, rather than one for the sake of another. */
  const REST = [
    'app.js',
    'call.js',
    'climb.js',
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
    'live.js',
    'notes.js',
    'pans.js',
    'panels.js',
    'thermometer-words.js',
    'shell.js',
    'test-words.js',
    'tests.js',
    'test-drawings.js',
    'views.js',
    'lesson-words.js',
  ];

  const [book, id, other] = /^#book(?:\/([1-9]\d{0,14})(?:\/([1-9]\d{0,14}))?)?$/.exec(location.hash) ?? [];
  const climbs = [id, other].filter((one) => one !== undefined).map((one) => `api/book/${one}/climb`);
  const paths = book === '#book' ? ['api/book'] : climbs;
  const asked = new Map(paths.map((path) => [path, fetch(path)]));
  asked.forEach((answer) => answer.catch(() => {})); // whoever wants it is told

  function make(tag, properties) {
    document.head.append(Object.assign(document.createElement(tag), properties));
  }

  function fetchRest() {
    REST.forEach((href) => make('link', { rel: 'modulepreload', href }));
  }

  function run(src, onerror = null) {
    make('script', { type: 'module', src, onerror });
  }

  function goOn() {
    document.documentElement.hidden = false;
    fetchRest();
    run('app.js');
  }

  globalThis.ahead = { asked, hash: location.hash, goOn };
  document.documentElement.hidden = climbs.length > 0;
  if (climbs.length === 0) {
    fetchRest();
  }
  addEventListener('DOMContentLoaded', () => (climbs.length > 0 ? run('book-first.js', goOn) : run('app.js')));
})();
