// Small parts that the page is made of.

/** An element with a class, and with a name for tests. */
export function make(tag, properties, testid) {
  const element = Object.assign(document.createElement(tag), properties);
  if (testid) {
    element.dataset.testid = testid;
  }
  return element;
}

/** One of a form's fields: what is chosen from where there are choices, else what is typed into. @param {[string, string][]} [choices] */
export function input(testid, choices) {
  const made = make(choices ? 'select' : 'input', {}, testid);
  if (choices) {
    made.append(...choices.map(([value, words]) => new Option(words, value)));
  } else {
    Object.assign(made, { type: 'text', autocomplete: 'off' });
  }
  return made;
}

/** A field under its words. */
export function labelled(words, field) {
  const made = make('label', {});
  made.append(make('span', { textContent: words }), field);
  return made;
}

/** An element of a picture. */
export function svg(tag, attributes) {
  const made = document.createElementNS('http://www.w3.org/2000/svg', tag);
  for (const [name, value] of Object.entries(attributes)) {
    made.setAttribute(name, value);
  }
  return made;
}

/** Words in a picture. @param {'start' | 'middle' | 'end'} anchor which end of them stands at x */
export function svgWords(text, x, y, anchor) {
  const made = svg('text', { x, y, 'text-anchor': anchor });
  made.textContent = text;
  return made;
}

/** What is chosen from, under a label. @param {[string, string][]} options value and words */
export function choice(words, options, testid) {
  const select = make('select', {}, testid);
  options.forEach(([value, label]) => select.append(new Option(label, value)));
  const label = make('label', {});
  label.append(words, select);
  return { label, select };
}

/** What is typed into, under a label. */
export function field(words, properties, testid) {
  const input = make('input', { autocomplete: 'off', ...properties }, testid);
  const label = make('label', {});
  label.append(words, input);
  return { label, input };
}

/** Text that is put only when it is another. */
export function put(element, words) {
  if (element.textContent !== words) {
    element.textContent = words;
  }
}
