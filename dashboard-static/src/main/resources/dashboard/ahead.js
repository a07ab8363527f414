// Runs before anything else of the page: what the address names of the book is asked for at once, and where it is a cook, nothing is laid out
// before its picture can be (start.js shows the page again).

(() => {
  const [book, id, other] = /^#book(?:\/([1-9]\d{0,14})(?:\/([1-9]\d{0,14}))?)?$/.exec(location.hash) ?? [];
  const climbs = [id, other].filter((one) => one !== undefined).map((one) => `api/book/${one}/climb`);
  const paths = book === '#book' ? ['api/book'] : climbs;
  document.documentElement.hidden = climbs.length > 0;
  globalThis.askedAhead = new Map(paths.map((path) => [path, fetch(path)]));
  globalThis.askedAhead.forEach((answer) => answer.catch(() => {})); // whoever wants it is told
})();
