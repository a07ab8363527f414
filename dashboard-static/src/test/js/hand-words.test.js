import assert from 'node:assert/strict';
import { test } from 'node:test';
import { higher, keyOf, lastReading, press, readingOf, shown, steps, takesBack, whenWords } from '../../main/resources/dashboard/hand-words.js';

const typed = (keys) => [...keys].reduce(press, '');

test('the pad types a number with one point, as long as a thermometer shows', () => {
  assert.equal(typed('100.4'), '100.4');
  assert.equal(typed('1.0.4'), '1.04');
  assert.equal(typed('.5'), '0.5');
  assert.equal(typed('007'), '7');
  assert.equal(typed('12345678'), '123456');
  assert.equal(press('100.', 'back'), '100');
  assert.equal(press('', 'back'), '');
});

test('a real keyboard types the same, with a comma for the point', () => {
  assert.equal(keyOf('7'), '7');
  assert.equal(keyOf(','), '.');
  assert.equal(keyOf('Backspace'), 'back');
  assert.equal(keyOf('Enter'), null);
  assert.equal(keyOf('F5'), null);
});

test('a draft is a reading as soon as it holds a number', () => {
  assert.equal(readingOf('100.4', 'C'), '100.4C');
  assert.equal(readingOf('212.', 'F'), '212F');
  assert.equal(readingOf('', 'C'), null);
});

test('"same" and the steps go on from the last reading, in the unit of the page', () => {
  assert.deepEqual(steps('C'), [0.5, 1]);
  assert.deepEqual(steps('F'), [1, 2]);
  assert.equal(higher('100.4C', 0, 'C'), '100.4C');
  assert.equal(higher('100.4C', 1, 'C'), '101.4C');
  assert.equal(higher('212F', 1, 'F'), '213F');
  assert.equal(higher('100C', 1, 'F'), '213F');
  assert.equal(higher('212F', 0, 'C'), '100C');
  assert.equal(higher(null, 1, 'C'), null);
});

test('it says when the last was typed, and when it is time for the next', () => {
  const status = { t: 130, seenT: 60, seenC: 99.5, hand: { due: false, last: { reading: '99.5C', takeBackUntilT: 120 } } };
  assert.equal(whenWords(status, null), 'Typed at 1 min.');
  assert.equal(whenWords({ ...status, hand: { ...status.hand, due: true } }, null), 'Typed at 1 min. Read the thermometer again.');
  assert.equal(whenWords({ ...status, seenT: null }, null), 'Type the first reading.');
  assert.equal(takesBack(status), null);
  assert.equal(takesBack({ ...status, t: 90 }), '99.5C');
  assert.equal(shown('99.5C'), '99.5 °C');
  assert.equal(lastReading(status), '99.5C');
  assert.equal(lastReading({ ...status, hand: { last: null } }), '99.5C');
});
