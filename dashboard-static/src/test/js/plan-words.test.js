import assert from 'node:assert/strict';
import { test } from 'node:test';
import { allAdvice, complete, figures, jarsFilled, parts, pathWords, planAct, planSentence, rowOf, when, withoutRow } from '../../main/resources/dashboard/plan-words.js';

const range = (low, middle, high) => ({ low, middle, high });
const plan = {
  in: { totalKg: 2.03, waterKg: 1.29, solidsKg: 0.71, restKg: 0.03, solids: 0.355 },
  out: { finishedKg: range(1.04, 1.13, 1.23), solids: 0.644, gelPointC: 100.28, riseC: 4.44, waterBoilC: 95.84 },
  jars: { ...range(3.4, 3.75, 4.1), jar: 'half-pint', many: 'half-pint jars', ready: 5 },
  waterOffKg: range(0.7, 0.89, 1.05),
  boilMinutes: range(15, 19.2, 26),
  heatMinutes: 5.2,
  hob: { kW: 1.75, from: 'litre' },
  contentsL: 1.77,
  panL: 7.08,
  path: [
    { minutes: 0, waterOffKg: 0, solids: 0.355, temperatureC: 96.7 },
    { minutes: 9.6, waterOffKg: 0.45, solids: 0.46, temperatureC: 97.5 },
    { minutes: 19.2, waterOffKg: 0.89, solids: 0.644, temperatureC: 100.28 },
  ],
};

test('the sentence says jars with their range, and minutes when the hob is known', () => {
  assert.equal(planSentence(plan), '3.4 to 4.1 half-pint jars, after about 19 minutes of boiling.');
  assert.equal(planSentence({ ...plan, boilMinutes: null }), '3.4 to 4.1 half-pint jars.');
  assert.equal(planSentence({ ...plan, waterOffKg: range(0, 0, 0) }), 'Nothing to boil down.');
  assert.equal(planSentence(null), 'What goes into the pan?');
  assert.equal(planAct(plan), 'Have 5 half-pint jars ready, and a pan of 7.1 L or more.'.replace('half-pint jars ', ''));
});

test('the figures leave out what is not known', () => {
  const known = figures(plan, 'F').map(([what]) => what);
  assert.ok(known.includes('Boils for'));
  assert.ok(!figures({ ...plan, boilMinutes: null }, 'C').some(([what]) => what === 'Boils for'));
  assert.match(figures(plan, 'F').find(([what]) => what === 'Sets at')[1], /212\.5 °F, with 64 % solids/);
});

test('the way there is told by its ends and its middle', () => {
  assert.equal(pathWords(plan, 'C'), '0 min: 36 % solids, 96.7 °C; 10 min: 46 % solids, 97.5 °C; 19 min: 64 % solids, 100.3 °C');
  assert.equal(when({ minutes: null, waterOffKg: 0.45 }), '0.45 kg driven off');
  assert.match(pathWords({ path: [] }, 'C'), /no water has to leave/);
});

test('an amount is taken apart, and one without a unit counts pieces', () => {
  assert.deepEqual(parts('0.75 cup'), { amount: '0.75', unit: 'cup' });
  assert.deepEqual(parts('4'), { amount: '4', unit: 'piece' });
  assert.deepEqual(parts(''), { amount: '', unit: 'piece' });
});

test('only rows that say enough are sent, and an answer finds its row', () => {
  const rows = [{ amount: '', unit: 'g', food: 'sugar' }, { amount: '1', unit: 'kg', food: 'plum' }, { amount: '2', unit: 'g', food: ' ' }];
  assert.deepEqual(complete(rows).map((row) => row.place), [1]);
  assert.equal(rowOf('Row 2: amount "x" is not understood.'), 1);
  assert.equal(rowOf('Give the power or the minutes.'), -1);
  assert.equal(withoutRow('Row 2: "oragne" is not in the table.'), '"oragne" is not in the table.');
});

test('warnings come first, then what does not scale', () => {
  const advice = [{ id: 'a', warns: true }, { id: 'b', warns: false }];
  assert.deepEqual(allAdvice({ advice, doesNotScale: ['the hob'] }).map((one) => one.id), ['a', 'does-not-scale', 'b']);
  assert.deepEqual(allAdvice({ advice }).map((one) => one.id), ['a', 'b']);
});

test('the count of jars begins with those that are in the canner, or went in since the cook began', () => {
  const shelf = [
    { jars: 6, loadedT: 900, liftedT: 2400 }, // an earlier cook's: this one began while they were in the canner
    { jars: 3, loadedT: 5000, liftedT: 7000 },
  ];
  assert.equal(jarsFilled({ zeroAtMs: 1_000_000, load: { jars: 4 }, shelf }, 2_000_000), '7');
  assert.equal(jarsFilled({ zeroAtMs: 1_000_000, load: null, shelf }, 7_000_000), '');
  assert.equal(jarsFilled({ zeroAtMs: 1_000_000, load: null, shelf }, null), '');
  assert.equal(jarsFilled({ zeroAtMs: 1_000_000, load: null, shelf: [] }, 0), '');
  assert.equal(jarsFilled(undefined, 0), '');
});
