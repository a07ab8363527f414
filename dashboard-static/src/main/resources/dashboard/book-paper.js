// Labels and a report of a cook, as files to keep. Returns update(cook).

import { choice, field, make } from './elements.js';

/** Sheets that are sold (common practice, no source): label size and gap in mm, paper, and how many across and down where that is fewer than fit. */
const SHEETS = [
  ['63.5x38.1 2.5x0 a4', '63.5 × 38.1 mm, 21 on A4'],
  ['99.1x38.1 2.5x0 a4', '99.1 × 38.1 mm, 14 on A4'],
  ['70x37 0x0 a4', '70 × 37 mm, 24 on A4'],
  ['66.7x25.4 3.2x0 letter 3x10', '66.7 × 25.4 mm, 30 on letter'],
];

/** @param {HTMLElement} place */
export function mountPaper(place) {
  const box = make('details', { className: 'book-paper' });
  const sheet = choice('Sheet', SHEETS, 'book-sheet');
  const count = field('How many', { type: 'number', min: 1, max: 500, inputMode: 'numeric' }, 'book-count');
  const contents = field('What is in the jar', { type: 'text', maxLength: 80 }, 'book-contents');
  const pdf = make('a', { className: 'way', textContent: 'Labels to print (PDF)', download: '' }, 'book-labels');
  const svg = make('a', { className: 'way', textContent: 'The same as a picture (SVG)', download: '' }, 'book-labels-svg');
  const notes = tick('with the notes', 'book-report-notes');
  const photos = tick('with the photos', 'book-report-photos');
  const kitchen = tick('with the kitchen’s name', 'book-report-kitchen');
  const ingredients = tick('with what went in', 'book-report-ingredients');
  const report = make('a', { className: 'way', textContent: 'A report to share (one file)', download: '' }, 'book-report');
  const fields = make('div', { className: 'book-compare' });
  fields.append(sheet.label, count.label, contents.label);
  const labels = make('p', {});
  labels.append(pdf, ' ', svg);
  const ticks = make('div', { className: 'book-ticks' });
  ticks.append(notes.label, photos.label, kitchen.label, ingredients.label);
  const last = make('p', {});
  last.append(report);
  const caution = make('p', {
    className: 'basis',
    textContent: 'Print labels without scaling. What a label must say where preserves are sold is for your local food-safety authority to tell.',
  });
  box.append(make('summary', { textContent: 'Labels and a report' }), fields, labels, caution, ticks, last);
  place.append(box);

  let cook = null;
  box.addEventListener('input', address);

  function tick(words, testid) {
    const input = make('input', { type: 'checkbox' }, testid);
    const label = make('label', { className: 'book-tick' });
    label.append(input, ` ${words}`);
    return { label, input };
  }

  function address() {
    const [size, gap, paper, grid = ''] = sheet.select.value.split(' ');
    const asked = new URLSearchParams({ size, gap, paper, ...(grid && { grid }) });
    for (const [name, { input }] of Object.entries({ count, contents })) {
      if (input.value.trim() !== '') {
        asked.set(name, input.value.trim());
      }
    }
    pdf.href = `api/book/${cook.id}/labels.pdf?${asked}`;
    svg.href = `api/book/${cook.id}/labels.svg?${asked}`;
    const chosen = Object.entries({ notes, photos, kitchen, ingredients }).filter(([, { input }]) => input.checked);
    report.href = `api/book/${cook.id}/report.html?${chosen.map(([name]) => `${name}=yes`).join('&')}`;
  }

  return function update(newCook) {
    cook = newCook;
    ingredients.label.hidden = cook.plan === null;
    count.input.placeholder = String(cook.jars ?? 21);
    contents.input.placeholder = cook.fruit || cook.batch;
    address();
  };
}
