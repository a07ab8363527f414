import assert from 'node:assert/strict';
import { test } from 'node:test';
import { columns, setsT, span, syrupStops, topC } from '../../main/resources/dashboard/climb-data.js';

const climb = [{ t: 0, riseC: -20 }, { t: 300, riseC: 0.5 }, { t: 310, riseC: null }, { t: 600, riseC: 2 }];

test('the forecast leaves from the last measured point and gaps stay gaps', () => {
  const status = { t: 600, fan: [[600, 2, 2, 2], [900, 2.5, 3, 4]] };
  const [t, rise, mid, low, high] = columns({ climb, status }, 1);
  assert.deepEqual(t, [0, 300, 310, 600, 900]);
  assert.deepEqual(rise, [-20, 0.5, null, 2, null]);
  assert.deepEqual(mid, [null, null, null, 2, 3]);
  assert.deepEqual(low, [null, null, null, 2, 2.5]);
  assert.deepEqual(high, [null, null, null, 2, 4]);
});

test('the unit scales every height', () => {
  assert.deepEqual(columns({ climb: [{ t: 0, riseC: 2 }], status: { t: 0, fan: [] } }, 1.8)[1], [3.6]);
});

test('the picture goes from just before the boil to the end of the forecast', () => {
  assert.deepEqual(span({ climb, status: { t: 600, fan: [[600, 2, 2, 2], [1500, 4, 5, 6]] } }), [270, 1500]);
  const [from, to] = span({ climb: [], status: { t: 0, fan: [] } });
  assert.ok(from === 0 && to >= 600);
});

test('the forecast sets where its middle reaches the gel point', () => {
  const basis = { riseC: 4 };
  assert.equal(setsT({ basis, status: { fan: [[600, 2, 2, 2], [900, 2.5, 3, 4], [1100, 3, 5, 5]] } }), 1000);
  assert.equal(setsT({ basis, status: { fan: [[600, 2, 2, 2], [900, 2.5, 3, 4]] } }), null);
  assert.equal(setsT({ basis, status: { fan: [] } }), null);
});

test('the fill is thin at the bottom, amber at sixty per cent and thick above', () => {
  const stops = syrupStops([[0, 0], [3, 0.6], [5, 0.7], [9, 0.8]], 5);
  assert.deepEqual(stops, [[0, 0], [0.6, 1], [1, 2]]);
});

test('the top leaves room above the gel point', () => {
  assert.ok(topC({ basis: { riseC: 4.4 } }) > 5);
});
