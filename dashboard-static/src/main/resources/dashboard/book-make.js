// Small parts that the book is made of.

/** An element with a class, and with a name for tests. */
export function make(tag, properties, testid) {
  const element = Object.assign(document.createElement(tag), properties);
  if (testid) {
    element.dataset.testid = testid;
  }
  return element;
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
