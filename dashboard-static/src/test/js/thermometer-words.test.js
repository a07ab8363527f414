import assert from 'node:assert/strict';
import { test } from 'node:test';
import { baseAsked, basisWords, checkWords, daysAgo, otherWords, pictureOf, signed, trust } from '../../main/resources/dashboard/thermometer-words.js';

const probe = { name: 'pan', calibration: null, calibrationDue: 'Never checked in boiling water: it may be off by ±{diff:2.50}. Check it.' };
const basis = { from: 'elevation', detail: '1,240 m above sea level', riseC: 4.4, waterBoilC: 95.85, doubtC: 0.4, probeDoubtC: 2.5, totalDoubtC: 2.53, measuredAtMs: null };
const check = { probe: 'pan', in: 'boiling-water', state: 'watching', why: 'Still rising.', shownC: 93, points: [[0, 92], [60, 93]], referenceC: 95.85, pointC: null, correctionC: null, half95C: null, waterBoilC: null, cannotCorrect: null, boiledToo: false };
const found = { ...check, state: 'found', why: 'It has stood still for a minute, at {temp:95.40}.', pointC: 95.4, correctionC: 0.45, half95C: 0.38, waterBoilC: 95.4 };
const state = (now) => ({ heard: true, connection: 'live', probe, probes: [probe], basis, status: { check: now } });
const labels = (words) => [words.act?.label ?? null, ...words.quieter.map((one) => one.label)];

test('a correction says its sign, its place and its day, in the chosen unit', () => {
  const at = new Date(2026, 10, 25, 9).toISOString();
  const now = new Date(2026, 10, 25, 18).getTime();
  const made = { ...probe, calibration: { offsetC: 0.4, at, points: 1 }, calibrationDue: null };
  assert.equal(trust(made, 'C', now), 'Corrected by +0.4°, checked in boiling water today.');
  assert.equal(trust(made, 'F', now), 'Corrected by +0.7°, checked in boiling water today.');
  assert.equal(trust(probe, 'C', now), 'Never checked in boiling water: it may be off by ±2.5°. Check it.');
  assert.equal(signed(-0.4, 'C'), '−0.4°');
  assert.equal(daysAgo(new Date(2026, 10, 24, 23).getTime(), now), 'yesterday');
  assert.equal(daysAgo(new Date(2026, 10, 5).getTime(), now), '20 days ago');
});

test('what the gel point rests on is said with its doubt', () => {
  assert.match(basisWords(basis, 'C'), /by 1,240 m above sea level; true to ±2.5° \(the place ±0.4°, the thermometer ±2.5°\)/);
  const at = new Date(2026, 10, 25, 17, 5).getTime();
  assert.match(basisWords({ ...basis, from: 'measured', measuredAtMs: at, probeDoubtC: null, totalDoubtC: 0.1 }, 'C'), /measured at 17:05: 95.\d °C; true to ±0.1°/);
  assert.match(basisWords({ ...basis, from: 'standard' }, 'C'), /Sea level assumed/);
});

test('the check begins with one act, and offers what can be done with what it finds', () => {
  assert.deepEqual(labels(checkWords(state(null), 'C')), ['The water boils: check it']);
  assert.deepEqual(labels(checkWords(state(check), 'C')), [null, 'Stop']);
  assert.deepEqual(labels(checkWords(state(found), 'C')), ['Use it as today’s water boil', 'Correct the thermometer by +0.5°', 'Check it in ice too', 'Stop']);
  assert.equal(checkWords(state(found), 'F').state, 'It has stood still for a minute, at 203.7 °F.');
  assert.deepEqual(labels(checkWords(state({ ...found, in: 'ice', boiledToo: true }), 'C')), ['Correct the thermometer by both', 'Stop']);
});

test('what cannot be corrected is not offered, and why is said', () => {
  const words = checkWords(state({ ...found, correctionC: null, half95C: null, referenceC: null, cannotCorrect: 'Nobody said how high.' }), 'C');
  assert.deepEqual(labels(words), ['Use it as today’s water boil', 'Check it in ice too', 'Stop']);
  assert.equal(words.note, 'Nobody said how high.');
});

test('a service that is not heard offers nothing', () => {
  assert.deepEqual(labels(checkWords({ ...state(null), connection: 'lost' }, 'C')), [null]);
});

test('another probe is one quiet line', () => {
  assert.equal(otherWords({ name: 'clip', temperatureC: 98.4, quality: 'good' }, 'C'), 'clip: 98.4 °C');
  assert.equal(otherWords({ name: 'clip', temperatureC: null, quality: 'silent' }, 'C'), 'clip: nothing of late');
  assert.equal(otherWords({ name: 'clip', temperatureC: 60, quality: 'stuck' }, 'C'), 'clip: 60.0 °C, but it does not move');
});

test('the picture holds every point and the reference', () => {
  const { points, reference } = pictureOf(check);
  assert.deepEqual(points.map(([x]) => x), [0.5, 1]);
  for (const y of [...points.map(([, up]) => up), reference]) {
    assert.ok(y > 0 && y < 1);
  }
  assert.deepEqual(pictureOf({ points: [], referenceC: null }).points, []);
});

test('the form asks for what was chosen', () => {
  const form = { elevation: '1240m', pressure: '1016hPa' };
  assert.deepEqual(baseAsked({ ...form, how: 'elevation' }), { elevation: '1240m' });
  assert.deepEqual(baseAsked({ ...form, how: 'kitchen' }), { pressure: '1016hPa', where: 'kitchen' });
  assert.deepEqual(baseAsked({ ...form, how: 'sea-level' }), { pressure: '1016hPa', where: 'sea-level', elevation: '1240m' });
});
