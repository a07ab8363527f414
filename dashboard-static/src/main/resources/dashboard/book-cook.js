// One cook of the book: its climb, what happened, how it came out; beside another one if the address says so.

import { askBook } from './book-ask.js';
import { mountBookClimb } from './book-climb.js';
import { choice, make, put } from './elements.js';
import { LINED_UP, day, linesUp, listPath, summary, title } from './book-words.js';

/**
 * @param {(head: string | null, note: string, error: string) => void} say puts words above the cook
 * @returns update(route, unit), whose promise, if it has to ask for something, is kept when the picture is drawn
 */
export function mountBookCook(place, say) {
  const picture = place.querySelector('[data-testid="book-climb"]');
  const legend = make('p', { className: 'basis' }, 'book-beside');
  const lesson = make('a', { className: 'way', textContent: 'Go through it as a lesson' }, 'book-lesson');
  const compare = make('div', { className: 'book-compare' });
  const other = choice('Beside', [['', 'no other cook']], 'book-other');
  const mark = choice('Lined up', [], 'book-mark');
  compare.append(other.label, mark.label);
  const below = make('div', { className: 'book-below' });
  place.append(legend, compare, lesson, below);
  const updateClimb = mountBookClimb(picture);

  let updateBelow = null; // comes after the picture

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
    const [[line, wrong], [besideLine, besideWrong]] = await Promise.all([
      askBook('GET', `api/book/${mine.id}/climb`),
      mine.other === null ? [null, ''] : askBook('GET', `api/book/${mine.other}/climb`),
    ]);
    if (mine !== route) {
      return;
    }
    if (!line) {
      say('It is not in the book.', '', wrong);
      place.hidden = true;
      return;
    }
    climb = line;
    beside = besideLine;
    trouble = besideWrong;
    offer([]);
    draw();
    loadRest(mine).catch(() => say(null, '', 'No word from Spoonfall; open this page again.'));
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

  /** The words of the cook, what lies below its picture, and what may stand beside it: after the picture. */
  async function loadRest(mine) {
    const [[page, wrong], { mountBookBelow }] = await Promise.all([askBook('GET', `api/book/${mine.id}`), import('./book-below.js')]);
    if (mine !== route) {
      return;
    }
    if (!page) {
      say(null, '', wrong);
      return;
    }
    updateBelow ??= mountBookBelow(below, drawRest);
    drawRest(page);
    const [list] = await askBook('GET', listPath({}, 0));
    if (mine === route) {
      offer(list?.cooks ?? []);
      draw();
    }
  }

  function drawRest(newCook) {
    cook = newCook;
    say(`${title(cook)}.`, [day(cook.startedAtMs), cook.kitchen, summary({ ...cook, photos: 0 }, unit)].filter(Boolean).join(' · '), trouble);
    updateBelow(cook, climb, unit);
  }

  function draw() {
    const lined = beside === null ? null : mark.select.value || null;
    updateClimb(climb, beside, lined, unit);
    put(legend, beside === null ? '' : `Filled: this cook. Dashed: ${other.select.selectedOptions[0]?.textContent ?? 'the other'}.`);
  }

  return function update(newRoute, newUnit) {
    unit = newUnit;
    if (newRoute.id === route.id && newRoute.other === route.other && cook) {
      draw();
      drawRest(cook);
      return null;
    }
    route = newRoute;
    cook = null;
    lesson.href = `#lesson/${route.id}${route.other === null ? '' : `/${route.other}`}`;
    put(lesson, route.other === null ? 'Go through it as a lesson' : 'Go through both as a lesson');
    return load(route);
  };
}
