// One cook of the book: its climb, what happened, how it came out; beside another one if the address says so.

import { askBook } from './book-ask.js';
import { mountBookClimb } from './book-climb.js';
import { choice, make, put } from './elements.js';
import { mountOutcome } from './book-outcome.js';
import { mountPaper } from './book-paper.js';
import { mountPhotos } from './book-photos.js';
import { LINED_UP, day, linesUp, listPath, planWords, summary, testWords, title } from './book-words.js';
import { clock, fill } from './words.js';

/** @param {(head: string | null, note: string, error: string) => void} say puts words above the cook */
export function mountBookCook(place, say) {
  const picture = make('div', { className: 'climb book-climb' }, 'book-climb');
  picture.setAttribute('role', 'img');
  picture.setAttribute('aria-label', 'Nothing to draw yet.');
  const legend = make('p', { className: 'basis' }, 'book-beside');
  const lesson = make('a', { className: 'way', textContent: 'Go through it as a lesson' }, 'book-lesson');
  const compare = make('div', { className: 'book-compare' });
  const other = choice('Beside', [['', 'no other cook']], 'book-other');
  const mark = choice('Lined up', [], 'book-mark');
  compare.append(other.label, mark.label);
  const outcome = make('div', {}, 'book-outcome');
  const happened = make('ol', { className: 'book-events' }, 'book-events');
  const plan = make('p', { className: 'basis' }, 'book-plan');
  const photos = make('div', {});
  const paper = make('div', {});
  const heading = make('h2', { textContent: 'What happened' });
  place.append(picture, legend, compare, lesson, outcome, plan, photos, paper, heading, happened);
  const updateClimb = mountBookClimb(picture);
  const updateOutcome = mountOutcome(outcome);
  const updatePhotos = mountPhotos(photos);
  const updatePaper = mountPaper(paper);

  let route = { id: null, other: null };
  let unit = 'C';
  let cook = null;
  let climb = null;
  let beside = null;
  let trouble = ''; // with the other one

  other.select.addEventListener('change', () => {
    location.hash = other.select.value === '' ? `#book/${route.id}` : `#book/${route.id}/${other.select.value}`;
  });
  mark.select.addEventListener('change', draw);

  async function load(mine) {
    const others = askBook('GET', listPath({}, 0)); // the picture does not wait for what may stand beside it
    const [[page, wrong], [line], [besideLine, besideWrong]] = await Promise.all([
      askBook('GET', `api/book/${mine.id}`),
      askBook('GET', `api/book/${mine.id}/climb`),
      mine.other === null ? [null, ''] : askBook('GET', `api/book/${mine.other}/climb`),
    ]);
    if (mine !== route) {
      return;
    }
    if (!page || !line) {
      say('It is not in the book.', '', wrong);
      place.hidden = true;
      return;
    }
    cook = page;
    climb = line;
    beside = besideLine;
    offer([]);
    trouble = besideWrong;
    drawAll();
    const [list] = await others;
    if (mine === route) {
      offer(list?.cooks ?? []);
      draw();
    }
  }

  function offer(cooks) {
    other.select.replaceChildren(new Option('no other cook', ''));
    for (const one of cooks.filter(({ id }) => id !== route.id)) {
      other.select.append(new Option(`${title(one)}, ${day(one.startedAtMs)}`, String(one.id)));
    }
    if (route.other !== null && ![...other.select.options].some(({ value }) => value === String(route.other))) {
      other.select.append(new Option(`Cook ${route.other}`, String(route.other)));
    }
    other.select.value = route.other === null ? '' : String(route.other);
    const marks = linesUp(climb, beside);
    const chosen = marks.includes(mark.select.value) ? mark.select.value : marks.includes('gelS') ? 'gelS' : marks[0];
    mark.select.replaceChildren(...marks.map((name) => new Option(LINED_UP[name], name)));
    mark.select.value = chosen ?? '';
    mark.label.hidden = beside === null;
  }

  function drawAll() {
    say(`${title(cook)}.`, [day(cook.startedAtMs), cook.kitchen, summary({ ...cook, photos: 0 }, unit)].filter(Boolean).join(' · '), trouble);
    updateOutcome(cook, (said) => {
      cook = { ...cook, ...said };
      drawAll();
    });
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
    draw();
  }

  function draw() {
    const lined = beside === null ? null : mark.select.value || null;
    updateClimb(climb, beside, lined, unit);
    put(legend, beside === null ? '' : `Filled: this cook. Dashed: ${other.select.selectedOptions[0]?.textContent ?? 'the other'}.`);
  }

  return function update(newRoute, newUnit) {
    unit = newUnit;
    if (newRoute.id === route.id && newRoute.other === route.other && cook) {
      drawAll();
      return;
    }
    route = newRoute;
    cook = null;
    lesson.href = `#lesson/${route.id}${route.other === null ? '' : `/${route.other}`}`;
    put(lesson, route.other === null ? 'Go through it as a lesson' : 'Go through both as a lesson');
    load(route);
  };
}
