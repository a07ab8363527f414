import assert from 'node:assert/strict';
import { test } from 'node:test';
import { CHOICES, digits, inATest, seenWords, testView } from '../../main/resources/dashboard/test-words.js';
import { aimOf, testMarks, topC } from '../../main/resources/dashboard/climb-data.js';

function tests(more = {}) {
  return { open: null, set: false, nextRiseC: 4, nextC: 99.9, nextInS: 150, aim: { riseC: 4.4, gelPointC: 100.3, windowFromC: 99.2 }, list: [], ...more };
}

function tested(more = {}) {
  return { id: 'a', beganT: 1500, plateDueT: 1590, temperatureC: 99.9, riseC: 4, solids: 0.64, seenT: 1600, how: 'sheet', seen: 'drops-join', set: false, ...more };
}

function state(status, more = {}) {
  return { connection: 'live', cook: { startedAtMs: null, speed: 1 }, status: { t: 1500, stage: 'test-window', tests: tests(), ...status }, ...more };
}

test('nothing is shown before the window, without tests or without a connection', () => {
  assert.equal(testView(state({ stage: 'rolling-boil' }), 'C').mode, 'hidden');
  assert.equal(testView(state({ tests: null }), 'C').mode, 'hidden');
  assert.equal(testView({ ...state(), connection: 'lost' }, 'C').mode, 'hidden');
  assert.equal(testView({ connection: 'connecting' }, 'C').mode, 'hidden');
});

test('a pan that came off close to setting is tested while it is hot, unless it goes back', () => {
  const off = { stage: 'off-the-heat', wasClose: true, temperatureC: 97, waterBoilC: 95.9 };
  assert.equal(testView(state(off), 'C').mode, 'offer');
  assert.equal(testView(state({ ...off, temperatureC: 85.8 }), 'C').mode, 'hidden');
  assert.equal(testView(state({ ...off, temperatureC: null }), 'C').mode, 'hidden');
  assert.equal(testView(state({ ...off, wasClose: false }), 'C').mode, 'hidden');
  const notSet = tests({ goesBack: true, list: [tested()] });
  assert.equal(testView(state({ ...off, tests: notSet }), 'C').mode, 'between');
  assert.equal(testView(state({ ...off, tests: { ...notSet, goesBack: false } }), 'C').title, 'Test it again.');
});

test('before the window a test may be had, and says that it is early', () => {
  assert.equal(testView(state({ stage: 'rolling-boil' }), 'C').early, true);
  assert.equal(testView(state({ stage: 'simmering' }), 'C').early, true);
  assert.equal(Boolean(testView(state({ stage: 'warming' }), 'C').early), false);
  assert.equal(Boolean(testView(state(), 'C').early), false);
  const early = tests({ open: 'a', list: [tested({ temperatureC: 97.4, riseC: 1.5, seenT: null, how: null, seen: null })] });
  assert.equal(testView(state({ t: 1518, stage: 'off-the-heat', tests: early }), 'C').note, 'It is early, and may well run. A test tells most at 99.9 °C.');
  const inTime = tests({ open: 'a', list: [tested({ seenT: null, how: null, seen: null })] });
  assert.equal(testView(state({ t: 1518, stage: 'off-the-heat', tests: inTime }), 'C').note, '');
});

test('in the window a test is offered, with the moment at which it tells most', () => {
  assert.deepEqual(testView(state(), 'C'), { mode: 'offer', title: 'Test the set.', note: 'It tells most at 99.9 °C, 4.0° above boiling water.', undo: null });
  assert.equal(testView(state({ tests: tests({ nextInS: 0 }) }), 'C').note, 'Now is the moment for the first test.');
  assert.match(testView(state(), 'F').note, /211\.8 °F, 7\.2°/);
});

test('a test that goes on counts down by the time of the cook', () => {
  const open = tests({ open: 'a', list: [tested({ seenT: null, how: null, seen: null })] });
  assert.equal(testView(state({ t: 1518, stage: 'off-the-heat', tests: open }), 'C').digits, '1:12');
  const over = testView(state({ t: 1700, stage: 'off-the-heat', tests: open }), 'C');
  assert.equal(over.digits, '');
  assert.match(over.title, /what do you see/);
});

test('an answer can be taken back for thirty seconds of ours', () => {
  const answered = tests({ list: [tested()] });
  assert.equal(testView(state({ t: 1629, stage: 'off-the-heat', tests: answered }), 'C').undo, 'a');
  assert.equal(testView(state({ t: 1630, stage: 'off-the-heat', tests: answered }), 'C').undo, null);
  const fast = state({ t: 2000, stage: 'off-the-heat', tests: answered }, { cook: { startedAtMs: null, speed: 20 } });
  assert.equal(testView(fast, 'C').undo, 'a');
});

test('what was found set can be taken back later too, by a quieter button', () => {
  const done = tests({ set: true, list: [tested({ how: 'verdict', seen: 'set', set: true })] });
  assert.deepEqual(testView(state({ t: 1610, stage: 'off-the-heat', tests: done }), 'C'), { mode: 'set', id: 'a', title: 'Set, at 99.9 °C (25 min).', note: '', undo: 'a', later: null });
  assert.equal(testView(state({ t: 1700, stage: 'off-the-heat', tests: done }), 'C').later, 'a');
});

test('on the way to the next test the last one and the next stand there', () => {
  const view = testView(state({ t: 1700, stage: 'rolling-boil', tests: tests({ nextC: 100.8, nextRiseC: 4.9, list: [tested()] }) }), 'C');
  assert.deepEqual([view.mode, view.title, view.note], ['between', 'Two drops join, at 99.9 °C (25 min).', 'The next test is at 100.8 °C, 4.9° above boiling water.']);
});

test('a pan that stands off the heat for a test is not done', () => {
  assert.equal(inATest(undefined), false);
  assert.equal(inATest({ t: 1600, tests: tests() }), false);
  assert.equal(inATest({ t: 9000, tests: tests({ list: [tested({ seenT: null })] }) }), true);
  assert.equal(inATest({ t: 1800, tests: tests({ list: [tested()] }) }), true);
  assert.equal(inATest({ t: 1900, tests: tests({ list: [tested()] }) }), false);
  assert.equal(inATest({ t: 1601, tests: tests({ list: [tested({ set: true })] }) }), false);
});

test('a test without a reading is told without one', () => {
  assert.equal(seenWords(tested({ temperatureC: null }), 'C', null), 'Two drops join (25 min).');
});

test('there are three choices each for spoon and plate, and a plain yes and no', () => {
  assert.deepEqual(Object.values(CHOICES).map((list) => list.length), [3, 3, 2]);
  assert.equal(digits(59.2), '1:00');
  assert.equal(digits(0), '0:00');
});

test('the picture aims at what was learnt and marks the tests that had a reading', () => {
  const basis = { waterBoilC: 95.9, riseC: 4.4, gelPointC: 100.3, windowFromC: 99.2 };
  const learnt = { basis, status: { tests: tests({ aim: { riseC: 5, gelPointC: 100.9, windowFromC: 100.7 }, list: [tested(), tested({ id: 'b', riseC: null })] }) } };
  assert.equal(aimOf(learnt).riseC, 5);
  assert.equal(aimOf(learnt).waterBoilC, 95.9);
  assert.equal(topC(learnt), 5.9);
  assert.equal(aimOf({ basis }).riseC, 4.4);
  assert.deepEqual(testMarks(learnt), [{ t: 1500, riseC: 4, set: false }]);
  assert.deepEqual(testMarks({}), []);
});
