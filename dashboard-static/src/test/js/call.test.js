import assert from 'node:assert/strict';
import { test } from 'node:test';
import { alsoWords, asideWords, titleWords } from '../../main/resources/dashboard/call.js';

const startedAtMs = new Date(2026, 0, 17, 15, 0).getTime();

test('what calls as well is said with what to do', () => {
  const call = { title: 'It is cooling: {diff:2.0} down since {clock:600}.', act: 'Is the heat on?' };
  assert.equal(alsoWords(call, 'C', startedAtMs), 'Also: It is cooling: 2.0° down since 15:10. Is the heat on?');
});

test('a long title says what is so, and the numbers behind it apart', () => {
  const title = 'The base may be catching: it climbs 1.2° a minute; the water that leaves allows 0.3°.';
  assert.deepEqual(titleWords(title), { what: 'The base may be catching.', why: 'It climbs 1.2° a minute; the water that leaves allows 0.3°.' });
  const short = 'It is cooling: 2.0° down since 15:10.';
  assert.deepEqual(titleWords(short), { what: short, why: '' });
  const whole = 'The reading has stayed exactly the same for 60 seconds, though the pan boils.';
  assert.deepEqual(titleWords(whole), { what: whole, why: '' });
});

test('what is put aside says until when, and what it was', () => {
  const alarm = { title: 'It is cooling: {diff:2.0} down since {clock:600}.', shelvedUntilT: 1200 };
  assert.equal(asideWords(alarm, 'C', startedAtMs), 'Put aside until 15:20: It is cooling: 2.0° down since 15:10.');
  assert.equal(asideWords(alarm, 'F', startedAtMs), 'Put aside until 15:20: It is cooling: 3.6° down since 15:10.');
});
