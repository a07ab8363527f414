import assert from 'node:assert/strict';
import { test } from 'node:test';
import { clock, degrees, difference, fill, inMinutes, inMinutesBetween, temperature } from '../../main/resources/dashboard/words.js';

test('temperatures and differences follow the unit', () => {
  assert.equal(temperature(98.2, 'C'), '98.2 °C');
  assert.equal(temperature(100, 'F'), '212.0 °F');
  assert.equal(degrees(0, 'F'), '32.0');
  assert.equal(difference(2, 'C'), '2.0°');
  assert.equal(difference(5, 'F'), '9.0°');
});

test('marks are filled in and anything else is left alone', () => {
  const at = new Date(2026, 0, 17, 17, 0).getTime();
  assert.equal(fill('No word since {clock:1980}. Last seen {temp:98.2}.', 'C', at), 'No word since 17:33. Last seen 98.2 °C.');
  assert.equal(fill('{diff:5} short, {other:3} {temp:1.2.3}', 'F', at), '9.0° short, {other:3} {temp:1.2.3}');
});

test('without a clock the minutes of the cook are told', () => {
  assert.equal(clock(150, null), '2 min');
});

test('how long until something is said as a range where no more is known', () => {
  assert.equal(inMinutesBetween(10, 10), 'in 10 min');
  assert.equal(inMinutesBetween(5, 15), 'in 5 to 15 min');
  assert.equal(inMinutesBetween(0, 15), 'within 15 min');
  assert.equal(inMinutesBetween(0, 0), 'now');
});

test('how long until something is said in whole minutes', () => {
  assert.equal(inMinutes(20), 'now');
  assert.equal(inMinutes(70), 'in 1 min');
  assert.equal(inMinutes(430), 'in 7 min');
  assert.equal(inMinutes(87 * 60), 'in 85 min'); // nobody means 87
  assert.equal(inMinutes(7200), 'in 2 h');
});
