import assert from 'node:assert/strict';
import { test } from 'node:test';
import { aimWords, batchWords, learnPicture, learnSaying, pictureWords, takeWords } from '../../main/resources/dashboard/learn-words.js';

function fruit(more = {}) {
  return {
    fruit: 'orange', riseC: 4.8, bestFromC: 4.2, bestToC: 5.5, batches: 2, others: 0,
    chances: { runny: 0.02, soft: 0.15, right: 0.65, firm: 0.15, stiff: 0.03 },
    words: ['Next: {diff:4.8} above boiling water.', '{diff:0.4} firmer than your last; 65 % chance of "right".'],
    curve: [{ riseC: 3.3, right: 0.1 }, { riseC: 4.8, right: 0.65 }, { riseC: 6.1, right: 0.2 }],
    told: [{ id: 12, fruit: 'orange', set: 'soft', finalRiseC: 4.4 }, { id: -1, fruit: 'orange', set: 'stiff', finalRiseC: 9 }],
    ...more,
  };
}

test('the proposal is said in the unit of the reader, its fruit first', () => {
  assert.deepEqual(learnSaying(fruit(), 'C'), {
    headline: 'Orange. Next: 4.8° above boiling water.',
    lines: ['0.4° firmer than your last; 65 % chance of "right".'],
  });
  assert.equal(learnSaying(fruit(), 'F').headline, 'Orange. Next: 8.6° above boiling water.');
  assert.equal(learnSaying(fruit({ batches: 0 }), 'C').headline, 'Next: 4.8° above boiling water.');
  assert.equal(learnSaying(null, 'C').headline, 'What your batches teach.');
});

test('a target that is taken already is not offered again', () => {
  assert.equal(takeWords(fruit(), 4.44, 'C'), 'Aim at 4.8°');
  assert.equal(takeWords(fruit(), 4.8, 'C'), '');
  assert.equal(takeWords(null, 4.8, 'C'), '');
  assert.equal(aimWords(fruit(), 4.44, 'C'), 'This pan is to be boiled to 4.4° above boiling water.');
  assert.match(aimWords(fruit(), 4.8, 'C'), /, as proposed\.$/);
});

test('a batch is named by its number, or by the notebook', () => {
  const [own, noted] = fruit().told;
  assert.equal(batchWords(own, 'C'), 'Cook 12, orange: soft at 4.4°');
  assert.equal(batchWords(noted, 'C'), 'Orange, from the notebook: stiff at 9.0°');
});

test('everything of the picture lies within it, and says itself in words', () => {
  const edge = { left: 10, right: 10, top: 30, bottom: 50 };
  const { hill, best, target, marks, floor } = learnPicture(fruit({ bestFromC: 2.9 }), 400, 240, edge);
  assert.equal(hill.length, 3);
  assert.equal(best[0], 10);
  assert.ok(target[0] > best[0] && target[0] < best[1]);
  assert.equal(marks.length, 1);
  for (const [x, y] of [...hill, target, [marks[0].x, marks[0].y]]) {
    assert.ok(x >= 10 && x <= 390 && y >= 30 && y <= floor);
  }
  assert.equal(pictureWords(fruit(), 'C'), 'The chance of "right" over the rise: highest at 4.8°, 65 %.');
});
