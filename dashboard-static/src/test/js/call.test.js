import assert from 'node:assert/strict';
import { test } from 'node:test';
import { alsoWords, asideWords } from '../../main/resources/dashboard/call.js';

const startedAtMs = new Date(2026, 0, 17, 15, 0).getTime();

test('what calls as well is said with what to do', () => {
  const call = { title: 'It is cooling: {diff:2.0} down since {clock:600}.', act: 'Is the heat on?' };
  assert.equal(alsoWords(call, 'C', startedAtMs), 'Also: It is cooling: 2.0° down since 15:10. Is the heat on?');
});

test('what is put aside says until when, and what it was', () => {
  const alarm = { title: 'It is cooling: {diff:2.0} down since {clock:600}.', shelvedUntilT: 1200 };
  assert.equal(asideWords(alarm, 'C', startedAtMs), 'Put aside until 15:20: It is cooling: 2.0° down since 15:10.');
  assert.equal(asideWords(alarm, 'F', startedAtMs), 'Put aside until 15:20: It is cooling: 3.6° down since 15:10.');
});
