import assert from 'node:assert/strict';
import { test } from 'node:test';
import { riseWords, saying, stepWords, together } from '../../main/resources/dashboard/panels.js';

const say = { state: 'Climbing steadily.', act: 'Set tests in about 7 minutes.', note: '' };
const state = { heard: true, connection: 'live', cook: { startedAtMs: new Date(2026, 0, 17, 17, 0).getTime() }, status: { t: 1980, seenC: 98.2, say } };

test('the sentence is what the service says while it can be heard', () => {
  assert.deepEqual(saying(state, 'C'), { ...say, act: 'Set tests in about 7\u00a0minutes.' });
});

test('how long is not broken over two lines, and no more is kept together than a narrow screen has room for', () => {
  assert.equal(together('Set tests in 5 to 20 minutes.'), 'Set tests in 5\u00a0to\u00a020\u00a0minutes.');
  assert.equal(together('The next test is at 100.3 °C, within 10 minutes.'), 'The next test is at 100.3 °C, within 10\u00a0minutes.');
  assert.equal(together('Set tests any moment now.'), 'Set tests any moment now.');
});

test('what comes up says when, and in how long as precisely as it is known', () => {
  const at = state.cook.startedAtMs;
  const step = { t: 2580, text: 'Test the set', state: 'later' };
  assert.deepEqual(stepWords(step, 1980, at), ['later', '17:43', 'Test the set', 'in 10 min']);
  assert.deepEqual(stepWords({ ...step, leastMinutes: 5, mostMinutes: 20 }, 1980, at), ['later', '17:43', 'Test the set', 'in 5 to 20 min']);
  assert.deepEqual(stepWords({ ...step, leastMinutes: 5 }, 1980, at), ['later', '', 'Test the set', 'in more than 5 min']);
  assert.deepEqual(stepWords({ ...step, known: false }, 1980, at), ['later', '', 'Test the set', 'not known yet']);
  assert.deepEqual(stepWords({ ...step, fromT: 2520, untilT: 2700 }, 1980, at), ['later', '17:43', 'Test the set, 17:42 to 17:45', 'in 10 min']);
  assert.deepEqual(stepWords({ ...step, t: 1800, state: 'done' }, 1980, at), ['done', '17:30', 'Test the set', 'done']);
});

test('a lost connection says since when and what was last seen', () => {
  const lost = saying({ ...state, connection: 'lost' }, 'C');
  assert.equal(lost.state, 'No word from Spoonfall since 17:33.');
  assert.equal(lost.act, 'Last seen 98.2 °C.');
});

test('a service that never answered is asked for', () => {
  assert.match(saying({ heard: false, connection: 'lost' }, 'C').state, /No word from Spoonfall/);
});

test('the rise says where it is and how far to go', () => {
  assert.equal(riseWords(2.3, 2.1, 'C'), '2.3° above boiling water, 2.1° to go');
  assert.equal(riseWords(-1, 5.4, 'C'), '1.0° below boiling water, 5.4° to go');
  assert.equal(riseWords(5, -0.6, 'C'), '5.0° above boiling water, 0.6° past setting');
  assert.equal(riseWords(-1.3, null, 'C'), '1.3° below boiling water');
});
