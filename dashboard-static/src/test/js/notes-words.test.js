import assert from 'node:assert/strict';
import { test } from 'node:test';
import { heading, line, withNote } from '../../main/resources/dashboard/notes-words.js';

test('a note that arrives twice is there once', () => {
  const one = { id: 'a', t: 5, text: 'skimmed' };
  assert.deepEqual(withNote([one], { ...one }), [one]);
  assert.equal(withNote([one], { id: 'b', t: 6, text: 'again' }).length, 2);
});

test('the folded box counts', () => {
  assert.equal(heading([]), 'Write a note');
  assert.equal(heading([1]), '1 note');
  assert.equal(heading([1, 2]), '2 notes');
});

test('a line says when it was', () => {
  assert.equal(line({ t: 125, text: 'skimmed' }, null), '2 min  skimmed');
});
