// A cook of the book as a lesson, or two beside each other: played, paused, asked about. Never the pan on the hob, and it says so.

import { askBook } from './book-ask.js';
import { mountBookClimb } from './book-climb.js';
import { choice, make, put } from './elements.js';
import { LINED_UP, day, linesUp, spanMinutes, title } from './book-words.js';
import { mountMoment } from './lesson-moment.js';
import { SPEEDS, forecastWords, frameAt, heatWords, inOneRow, lessonOf, nextOf, playOn, previousOf, timeWords, upTo } from './lesson-words.js';
import { fill } from './words.js';

const TICK_MS = 100;
const CALM_TICK_MS = 1000;

/** Mounts the view into its section; returns update(unit, called), which follows the address and pauses when the live pan calls. */
export function mountLesson(section) {
  const button = (words, name, className = 'plain') => make('button', { type: 'button', className, textContent: words }, `lesson-${name}`);
  const ways = make('p', {});
  const toCook = make('a', { className: 'way', textContent: 'Back to the cook' }, 'lesson-back');
  ways.append(toCook, ' ', make('a', { className: 'way', href: '#pan', textContent: 'The pan on the hob' }));
  const head = make('h1', { tabIndex: -1 }, 'lesson-state');
  const flag = make('p', { className: 'lesson-flag', textContent: 'A lesson, not the pan on the hob.' }, 'lesson-flag');
  const note = make('p', { className: 'note' }, 'lesson-about');
  const wrong = make('p', { className: 'error' }, 'lesson-error');
  wrong.setAttribute('role', 'status');
  const body = make('div', { className: 'lesson-body', hidden: true });
  const picture = make('div', { className: 'climb book-climb' }, 'lesson-climb');
  picture.setAttribute('role', 'img');
  picture.setAttribute('aria-label', 'Nothing to draw yet.');
  const legend = make('p', { className: 'basis' }, 'lesson-beside');
  const panels = make('div', { className: 'lesson-panels' }, 'lesson-panels');
  const slider = make('input', { type: 'range', step: 1 }, 'lesson-slider');
  const sliderLabel = make('label', { className: 'lesson-slider' });
  const time = make('span', {}, 'lesson-time');
  sliderLabel.append(time, slider);
  slider.setAttribute('aria-label', 'Where in the cook');
  const controls = make('div', { className: 'lesson-controls' });
  const play = button('Play', 'play', 'big');
  play.dataset.oneAct = '';
  const previous = button('Previous moment', 'previous');
  const next = button('Next moment', 'next');
  controls.append(previous, play, next);
  const settings = make('div', { className: 'lesson-settings' });
  const speed = choice('Speed', SPEEDS.map((times) => [String(times), times === 1 ? 'as it was' : `${times} times as fast`]), 'lesson-speed');
  speed.select.value = '20';
  const mark = choice('Lined up', [], 'lesson-mark');
  const ask = make('input', { type: 'checkbox', checked: true }, 'lesson-ask');
  const askLabel = make('label', { className: 'lesson-ask' });
  askLabel.append(ask, make('span', { textContent: 'Ask me what I would do, and hide what came later' }));
  settings.append(speed.label, mark.label, askLabel);
  const momentPlace = make('div', { className: 'lesson-moment' }, 'lesson-moment');
  const all = make('details', {});
  const list = make('ol', { className: 'book-events' }, 'lesson-moments');
  all.append(make('summary', { textContent: 'All its moments' }), list);
  body.append(picture, legend, panels, momentPlace, controls, sliderLabel, settings, all);
  section.append(ways, flag, head, note, wrong, body);
  const updateClimb = mountBookClimb(picture);
  const updateMoment = mountMoment(momentPlace, (words) => {
    chosen = words;
    draw();
  });

  let route = { id: null, other: null };
  let unit = 'C';
  let cooks = [];
  let row = [];
  let zeros = [0];
  let span = [0, 0];
  let now = 0;
  let stands = -1;
  let chosen = null;
  let playing = false;
  let timer = 0;
  let tickedMs = 0;

  const asking = () => ask.checked && chosen === null && (row[stands]?.choices.length ?? 0) > 0;

  play.addEventListener('click', () => (playing ? pause() : start()));
  previous.addEventListener('click', () => stand(previousOf(row, now, stands)));
  next.addEventListener('click', () => stand(nextOf(row, now, stands)));
  ask.addEventListener('change', draw);
  mark.select.addEventListener('change', lineUp);
  slider.addEventListener('input', () => {
    [now, stands, chosen] = [Number(slider.value), -1, null];
    draw();
  });

  function start() {
    if (now >= span[1]) {
      [now, stands] = [span[0], -1];
    }
    playing = true;
    chosen = chosen ?? ''; // who plays on has answered
    tickedMs = performance.now();
    clearInterval(timer);
    timer = setInterval(tick, matchMedia('(prefers-reduced-motion: reduce)').matches ? CALM_TICK_MS : TICK_MS);
    draw();
  }

  function pause() {
    playing = false;
    clearInterval(timer);
    draw();
  }

  function tick() {
    if (section.hidden) {
      pause();
      return;
    }
    const nowMs = performance.now();
    const before = stands;
    let goesOn;
    [now, stands, goesOn] = playOn(row, { now, stands, until: span[1], asks: ask.checked }, ((nowMs - tickedMs) / 1000) * Number(speed.select.value));
    tickedMs = nowMs;
    chosen = stands === before ? chosen : null;
    if (goesOn) {
      draw();
    } else {
      pause();
    }
  }

  function stand(index) {
    if (index >= 0) {
      [now, stands, chosen] = [row[index].at, index, null];
      pause();
    }
  }

  async function load(mine) {
    const ids = [mine.id, mine.other].filter((id) => id !== null);
    const got = await Promise.all(ids.flatMap((id) => ['', '/climb', '/lesson'].map((part) => askBook('GET', `api/book/${id}${part}`))));
    if (mine !== route) {
      return;
    }
    const error = got.find(([answer]) => !answer)?.[1] ?? '';
    put(wrong, error);
    body.hidden = error !== '';
    if (error !== '') {
      put(head, 'There is no lesson of it.');
      return;
    }
    cooks = ids.map((id, i) => ({ page: got[3 * i][0], climb: got[3 * i + 1][0], lesson: got[3 * i + 2][0] }));
    put(head, cooks.length > 1 ? 'Two cooks beside each other, as a lesson.' : `${title(cooks[0].page)}, as a lesson.`);
    const cut = cooks.some(({ lesson }) => lesson.cut) ? ' It went on for longer than a lesson can show.' : '';
    put(note, `${cooks.length > 1 ? '' : `Cooked on ${day(cooks[0].page.startedAtMs)}.`}${cut}`.trim());
    const marks = cooks.length > 1 ? linesUp(cooks[0].climb, cooks[1].climb) : [];
    mark.select.replaceChildren(...marks.map((name) => new Option(LINED_UP[name], name)));
    mark.select.value = marks.includes('gelS') ? 'gelS' : (marks[0] ?? '');
    mark.label.hidden = cooks.length < 2;
    lineUp();
  }

  const lined = () => (cooks.length > 1 ? mark.select.value || null : null);

  function lineUp() {
    zeros = cooks.map(({ climb }) => (lined() === null ? 0 : climb.marks[lined()]));
    span = spanMinutes(cooks.map(({ climb }) => climb), lined()).map((minutes) => minutes * 60);
    row = inOneRow(cooks.map(({ lesson }) => lesson), zeros, span);
    [slider.min, slider.max] = span.map(Math.floor);
    [now, stands, chosen] = [span[0], -1, null];
    panels.replaceChildren(...cooks.map(panel));
    list.replaceChildren(...row.map(entry));
    put(legend, cooks.length > 1 ? `Filled: ${name(0)}. Dashed: ${name(1)}.` : '');
    pause();
  }

  const name = (who) => `${title(cooks[who].page)}, ${day(cooks[who].page.startedAtMs)}`;

  function panel(cook, who) {
    const place = make('div', { className: 'lesson-panel' }, `lesson-panel-${who}`);
    place.append(
      ...(cooks.length > 1 ? [make('h2', { textContent: name(who) })] : []),
      make('p', { className: 'lesson-heat' }, `lesson-heat-${who}`),
      make('p', { className: 'lesson-say' }, `lesson-say-${who}`),
      make('p', { className: 'basis' }, `lesson-note-${who}`),
    );
    return place;
  }

  function entry(moment, index) {
    const item = make('li', {});
    const words = fill(moment.title, unit, cooks[moment.who].lesson.startedAtMs);
    const go = make('button', { type: 'button', className: 'quiet', textContent: words });
    go.addEventListener('click', () => stand(index));
    item.append(make('span', { textContent: timeAt(moment.at) }), go);
    return item;
  }

  const timeAt = (at) => timeWords(at, cooks[0].lesson.startedAtMs, lined() !== null);

  function draw() {
    if (cooks.length === 0) {
      return;
    }
    const hides = ask.checked;
    const [one, two] = cooks.map(({ climb }, who) => (hides ? upTo(climb, now + zeros[who]) : climb));
    updateClimb(one, two ?? null, lined(), unit, now / 60);
    cooks.forEach(({ lesson }, who) => {
      const t = now + zeros[who];
      const frame = t <= lesson.lastT ? frameAt(lesson.frames, t) : null;
      const saying = lesson.sayings[frame?.saying] ?? { state: t < 0 ? 'It has not begun yet.' : 'The cook is over.', act: '', note: '' };
      const [state, act, note] = [saying.state, saying.act, saying.note].map((words) => fill(words, unit, lesson.startedAtMs));
      const part = (which) => panels.querySelector(`[data-testid="lesson-${which}-${who}"]`);
      const secret = asking() && row[stands].who === who;
      put(part('heat'), frame ? heatWords(frame, unit) : '');
      put(part('say'), secret ? '' : `${state} ${act}`.trim());
      put(part('note'), secret ? '' : [note, forecastWords(frame, lesson.startedAtMs)].filter(Boolean).join(' '));
    });
    updateMoment(row[stands] ?? null, asking(), chosen, (words, who) => fill(words, unit, cooks[who].lesson.startedAtMs), cooks.length > 1 ? name : null);
    put(time, timeAt(now));
    slider.value = String(Math.round(now));
    slider.setAttribute('aria-valuetext', timeAt(now));
    put(play, playing ? 'Pause' : now >= span[1] ? 'Play again' : 'Play');
    previous.disabled = previousOf(row, now, stands) < 0;
    next.disabled = nextOf(row, now, stands) < 0;
    all.hidden = hides;
  }

  return function update(newUnit, called) {
    const { id, other } = lessonOf(location.hash);
    if (called && playing) {
      pause();
    }
    if (id !== route.id || other !== route.other) {
      route = { id, other };
      unit = newUnit;
      cooks = [];
      playing = false;
      clearInterval(timer);
      body.hidden = true;
      toCook.href = `#book/${id}${other === null ? '' : `/${other}`}`;
      put(head, 'Going through the cook.');
      put(note, '');
      load(route);
    } else if (unit !== newUnit) {
      unit = newUnit;
      list.replaceChildren(...row.map(entry));
      draw();
    }
  };
}
