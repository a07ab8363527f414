// Runs before anything else of the page. What is looked at first is there first: where the address names a cook of the book, the service
// draws its picture, which needs no script. Then come those that draw the same again and know its words, and the rest of the page after them.

(() => {
  /** The service's picture keeps the scripts waiting for no longer. */
  const LONGEST_MS = 1500;

  /** What a cook of the book needs. */
  const FIRST = [
    'webjars/uplot/1.6.30/dist/uPlot.esm.js',
    'book-ask.js',
    'book-words.js',
    'words.js',
    'book-first.js',
    'book.js',
    'book-cook.js',
    'book-climb.js',
    'climb-data.js',
    'climb-ink.js',
    'elements.js',
    'later.js',
    'kept.js',
  ];

  /** What the page needs besides: all at once, rather than one for the sake of another. */
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
    'taps.js',
    'live.js',
    'notes.js',
    'pans.js',
    'panels.js',
    'thermometer-words.js',
    'shell.js',
    'test-words.js',
    'tests.js',
    'test-drawings.js',
    'sections.js',
    'views.js',
    'lesson-words.js',
  ];

  const [book, id, other] = /^#book(?:\/([1-9]\d{0,14})(?:\/([1-9]\d{0,14}))?)?$/.exec(location.hash) ?? [];
  const cooks = [id, other].filter((one) => one !== undefined);
  const asked = new Map();

  function ask(path) {
    const answer = fetch(path);
    answer.catch(() => {}); // whoever wants it is told
    asked.set(path, answer);
  }

  function make(tag, properties) {
    document.head.append(Object.assign(document.createElement(tag), properties));
  }

  function preload(scripts) {
    scripts.forEach((href) => make('link', { rel: 'modulepreload', href }));
  }

  function run(src, onerror = null) {
    make('script', { type: 'module', src, onerror });
  }

  function goOn() {
    preload(REST);
    run('app.js');
  }

  function unit() {
    try {
      return localStorage.getItem('spoonfall.unit') === 'F' ? 'F' : 'C';
    } catch {
      return 'C';
    }
  }

  /** Asks for the picture, and says when it is there, or will not be. */
  function picture() {
    const { timeZone } = new Intl.DateTimeFormat().resolvedOptions();
    const beside = other === undefined ? '' : `&beside=${other}`;
    const drawn = Object.assign(new Image(), { alt: '', src: `api/book/${id}/picture.svg?unit=${unit()}&zone=${encodeURIComponent(timeZone)}${beside}` });
    const there = Promise.race([drawn.decode(), new Promise((over) => setTimeout(over, LONGEST_MS))]);
    return { drawn, there: there.catch(() => drawn.remove()) };
  }

  function showBook(drawn) {
    document.querySelectorAll('.sentence, .heat, .picture, .next').forEach((section) => (section.hidden = true));
    for (const name of ['book', 'book-all', 'book-cook']) {
      document.querySelector(`[data-testid="${name}"]`).hidden = false;
    }
    document.querySelector('[data-testid="book-climb"]').append(drawn);
    document.documentElement.hidden = false;
  }

  /** Twice: the frame in which something is laid out, and that in which it has been painted. */
  const painted = () => new Promise((over) => requestAnimationFrame(() => requestAnimationFrame(over)));

  async function showFirst({ drawn, there }) {
    showBook(drawn);
    await there;
    await painted();
    cooks.forEach((one) => ask(`api/book/${one}/climb`));
    preload(FIRST);
    run('book-first.js', goOn);
  }

  globalThis.ahead = { asked, hash: location.hash, goOn, painted };
  if (cooks.length > 0) {
    document.documentElement.hidden = true;
    const coming = picture();
    addEventListener('DOMContentLoaded', () => showFirst(coming));
    return;
  }
  if (book === '#book') {
    ask('api/book');
  }
  preload([...FIRST, ...REST]);
  addEventListener('DOMContentLoaded', () => run('app.js'));
})();
