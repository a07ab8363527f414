import assert from 'node:assert/strict';
import { test } from 'node:test';
import { columns, found, linesUp, listPath, planWords, routeOf, spanMinutes, summary, testWords, title, topC } from '../../main/resources/dashboard/book-words.js';

const cook = { id: 12, batch: '', fruit: '', finalRiseC: 4.51, boilMinutes: 37.8, ended: true, jars: 6, photos: 1, outcomes: { day: { set: 'right', taste: [] } } };

test('an address leads to the list, a cook or two, and nonsense to the list', () => {
  assert.deepEqual(routeOf('#book'), { book: true, id: null, other: null });
  assert.deepEqual(routeOf('#book/12/7'), { book: true, id: 12, other: 7 });
  assert.deepEqual(routeOf('#book/x'), { book: true, id: null, other: null });
  assert.equal(routeOf('#bookish').book, false);
  assert.equal(routeOf('').book, false);
});

test('a cook is summed up in its unit', () => {
  assert.equal(summary(cook, 'C'), 'rose 4.5° above boiling water in 38 minutes of boiling; right after a day; 6 jars; 1 photo');
  assert.match(summary(cook, 'F'), /rose 8\.1°/);
  assert.equal(summary({ ...cook, finalRiseC: null, ended: false, jars: null, photos: 0, outcomes: {} }, 'C'), 'not over yet');
  assert.equal(title(cook), 'Cook 12');
});

test('what is looked for goes into the call as it was typed', () => {
  assert.equal(listPath({ text: '', fruit: '' }, 0), 'api/book');
  assert.equal(listPath({ text: 'a&b', fruit: '' }, 2), 'api/book?text=a%26b&page=2');
  assert.equal(found(0, true), 'No cook is like that.');
  assert.equal(found(1, false), '1 cook so far.');
});

test('two cooks are lined up at a mark that both have', () => {
  const one = { points: [[0, -70], [600, 0], [1200, null], [1800, 5]], marks: { sugarS: 0, boilS: 600, gelS: 1800 } };
  const other = { points: [[0, 0], [900, 2]], marks: { sugarS: 0, boilS: 300, gelS: null } };
  assert.deepEqual(linesUp(one, null), ['sugarS', 'boilS', 'gelS']);
  assert.deepEqual(linesUp(one, other), ['sugarS', 'boilS']);
  assert.deepEqual(columns(one, 'boilS', 1.8), [[-10, 0, 10, 20], [-126, 0, null, 9]]);
  assert.deepEqual(spanMinutes([one, other], 'boilS'), [-5, 20]);
});

test('a set test says where and what', () => {
  assert.equal(testWords({ riseC: 4.13, seen: 'drops-join', set: false }, 'C'), 'Set test at 4.1° above boiling water: drops join');
  assert.equal(testWords({ riseC: null, seen: 'set', set: true }, 'C'), 'Set test: set (set)');
});

test('a plan is told with what went in, and with what was filled once somebody said so', () => {
  const plan = { mass: '1.9 kg', jars: '6 jars', ingredients: [{ amount: '600 g', food: 'damson' }, { amount: '700 g', food: 'sugar' }] };
  assert.equal(planWords(plan), 'Planned: 1.9 kg, 6 jars, of 600 g damson, 700 g sugar.');
  assert.equal(planWords({ ...plan, yield: 'You filled 6.' }), 'Planned: 1.9 kg, of 600 g damson, 700 g sugar. You filled 6.');
  assert.equal(planWords(null), '');
});

test('a picture has room for a cook that went far past its setting point', () => {
  assert.equal(topC([{ riseC: 4.4, points: [[0, -20], [60, null], [120, 3]] }]), 5.6000000000000005);
  assert.equal(topC([{ riseC: 4.4, points: [] }, { riseC: 4.4, points: [[0, 6.3]] }]), 6.7);
});
