import assert from 'node:assert/strict';
import { test } from 'node:test';
import {
  doneWords,
  forecastWords,
  frameAt,
  heatWords,
  inOneRow,
  lessonOf,
  nextOf,
  playOn,
  previousOf,
  timeWords,
  upTo,
} from '../../main/resources/dashboard/lesson-words.js';

const asked = { choices: ['Test the set.'] };
const plain = { choices: [] };

test('an address leads to a lesson, or to two, and without a cook to the pan', () => {
  assert.deepEqual(lessonOf('#lesson/12'), { name: 'lesson', id: 12, other: null });
  assert.deepEqual(lessonOf('#lesson/12/7'), { name: 'lesson', id: 12, other: 7 });
  assert.equal(lessonOf('#lesson').name, 'pan');
  assert.equal(lessonOf('#lesson/x').name, 'pan');
  assert.equal(lessonOf('#jars').name, 'jars');
});

test('the frame of a second is the latest that is not after it', () => {
  const frames = [{ t: 0 }, { t: 5 }, { t: 10 }];
  assert.equal(frameAt(frames, -1), null);
  assert.equal(frameAt(frames, 5).t, 5);
  assert.equal(frameAt(frames, 9.9).t, 5);
  assert.equal(frameAt(frames, 1e9).t, 10);
  assert.equal(frameAt([], 5), null);
});

test('the moments of two cooks stand in one row on the clock of where they are lined up', () => {
  const row = inOneRow([{ moments: [{ t: 100 }, { t: 900 }] }, { moments: [{ t: 700 }] }], [500, 400], [-450, 450]);
  assert.deepEqual(row.map(({ who, at }) => [who, at]), [[0, -400], [1, 300], [0, 400]]);
});

test('next and previous go from moment to moment, those of one second too', () => {
  const row = [{ at: 10 }, { at: 10 }, { at: 20 }];
  assert.deepEqual([nextOf(row, 0, -1), nextOf(row, 10, 0), nextOf(row, 20, 2), nextOf(row, 15, -1)], [0, 1, -1, 2]);
  assert.deepEqual([previousOf(row, 0, -1), previousOf(row, 10, 1), previousOf(row, 15, -1), previousOf(row, 10, 0)], [-1, 0, 1, -1]);
});

test('play stops where something is asked and at the end, and passes the rest', () => {
  const row = [{ at: 10, ...plain }, { at: 20, ...asked }, { at: 30, ...plain }];
  const from = { now: 0, stands: -1, until: 40, asks: true };
  assert.deepEqual(playOn(row, from, 5), [5, -1, true]);
  assert.deepEqual(playOn(row, from, 15), [15, 0, true]);
  assert.deepEqual(playOn(row, from, 100), [20, 1, false]);
  assert.deepEqual(playOn(row, { ...from, now: 20, stands: 1 }, 5), [25, 1, true], 'what was answered does not stop again');
  assert.deepEqual(playOn(row, { ...from, asks: false }, 100), [40, 2, false]);
});

test('a climb up to a second shows nothing of what came later and keeps its width', () => {
  const climb = { points: [[0, 0], [60, null], [120, 2], [180, 4]], tests: [{ t: 100 }, { t: 170 }], riseC: 4.4 };
  assert.deepEqual(upTo(climb, 120), { points: [[0, 0], [60, null], [120, 2], [180, null]], tests: [{ t: 100 }], riseC: 4.4 });
  assert.deepEqual(upTo({ points: [], tests: [] }, 5).points, [[0, null]]);
});

test('what was seen, forecast and done is said in the cook’s unit, and what is unknown is not made up', () => {
  assert.equal(heatWords({ temperatureC: 98.2, riseC: 2.3 }, 'C'), '98.2 °C, 2.3° above boiling water');
  assert.equal(heatWords({ temperatureC: 90, riseC: -5 }, 'F'), '194.0 °F, 9.0° below boiling water');
  assert.equal(heatWords({ temperatureC: null, riseC: null }, 'C'), 'No reading.');
  assert.equal(forecastWords({ t: 0, etaS: null }, null), '');
  assert.equal(forecastWords({ t: 60, etaS: 600, etaLowS: 540, etaHighS: 720 }, null), 'It was forecast to set at 11 min, between 10 min and 13 min.');
  assert.equal(doneWords({ done: ['The call was answered at once.'], ...asked }), 'The call was answered at once.');
  assert.match(doneWords({ done: [], ...asked }), /tells of nothing/);
  assert.equal(doneWords({ done: [], ...plain }), '');
  assert.equal(timeWords(-300, 0, true), '5 min before');
  assert.equal(timeWords(0, 0, true), 'lined up here');
});
