// What the book says of a cook below its picture: how it came out, what was planned, its photos, papers, and what happened.

import { mountOutcome } from './book-outcome.js';
import { mountPaper } from './book-paper.js';
import { mountPhotos } from './book-photos.js';
import { planWords, testWords } from './book-words.js';
import { make, put } from './elements.js';
import { clock, fill } from './words.js';

/** @param {(cook: object) => void} changed is told the cook with what was just said of it */
export function mountBookBelow(place, changed) {
  const outcome = make('div', {}, 'book-outcome');
  const plan = make('p', { className: 'basis' }, 'book-plan');
  const photos = make('div', {});
  const paper = make('div', {});
  const heading = make('h2', { textContent: 'What happened' });
  const happened = make('ol', { className: 'book-events' }, 'book-events');
  place.append(outcome, plan, photos, paper, heading, happened);
  const updateOutcome = mountOutcome(outcome);
  const updatePhotos = mountPhotos(photos);
  const updatePaper = mountPaper(paper);

  return function update(cook, climb, unit) {
    updateOutcome(cook, (said) => changed({ ...cook, ...said }));
    put(plan, planWords(cook.plan));
    updatePhotos(cook);
    updatePaper(cook);
    const rows = [
      ...cook.events.map(({ t, text }) => [t, fill(text, unit, cook.startedAtMs)]),
      ...climb.tests.map((test) => [test.t, testWords(test, unit)]),
      ...cook.notes.map(({ t, text }) => [t, `Note: ${text}`]),
    ].sort((a, b) => a[0] - b[0]);
    happened.replaceChildren(
      ...rows.map(([t, words]) => {
        const row = make('li', {});
        const late = t > cook.lastedS;
        row.append(make('span', { textContent: late ? 'later' : clock(t, cook.startedAtMs) }), make('span', { textContent: words }));
        return row;
      }),
    );
  };
}
