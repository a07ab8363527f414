import assert from 'node:assert/strict';
import { test } from 'node:test';
import * as words from '../../main/resources/dashboard/jars-words.js';
import { alarmPath, callsOfAll } from '../../main/resources/dashboard/pans.js';
import * as store from '../../main/resources/dashboard/store.js';

function jars(more = {}) {
  return {
    type: 'jars', phase: 'processing', t: 100, zeroAtMs: 0, remainingS: 412.3, dueT: 512.3, restarts: 0,
    probe: { state: 'reading', temperatureC: 95.8 },
    say: { state: 'At the boil.', act: 'Keep the boil up.', note: 'The canner is at {temp:95.8}.' },
    offers: [{ does: 'boils', label: 'It still boils', main: true }, { does: 'clear', label: 'Give up this load', main: false }],
    load: { food: 'marmalade', jar: 'half-pint', canner: 'boiling-water', jars: 6, minutes: 10 }, shelf: [], undo: 3,
    alarms: [{ id: 'jars-boil-lost-1', alarm: 'boil-lost', state: 'unacknowledged', priority: 'high', raisedT: 90, title: '', act: '' }],
    ...more,
  };
}

const live = (more) => ({ ...store.connection(store.receive(store.empty(), jars(more)), 'live') });

test('the digits never show less than what is left', () => {
  assert.deepEqual([600, 599.2, 59.01, 0, -3, 3600, 43199].map(words.digits), ['10:00', '10:00', '1:00', '0:00', '0:00', '1:00 h', '11:59 h']);
  assert.equal(words.spokenTime(412.3), '7 minutes left');
  assert.equal(words.spokenTime(30), 'less than a minute left');
});

test('the sentence, one big act and the quiet ones, with the last tap to take back', () => {
  const said = words.jarsSaying(live(), 'F');
  assert.equal(said.note, 'The canner is at 204.4 °F.');
  assert.equal(said.main.does, 'boils');
  assert.deepEqual(said.quieter.map((offer) => offer.does), ['clear', 'undo']);
  assert.equal(said.digits, '6:53');
  assert.equal(said.form, false);
  assert.equal(words.jarsSaying(live({ phase: 'empty', remainingS: null }), 'C').form, true);
});

test('a page that lost the service shows no live time', () => {
  const said = words.jarsSaying(store.connection(live(), 'lost'), 'C');
  assert.equal(said.digits, '');
  assert.equal(said.main, null);
  assert.match(said.act, /^By its last word the time is up at \d\d:\d\d\.$/);
  assert.equal(said.note, 'Watch the canner yourself. I keep trying.');
});

test('the alarms of the jars call among the others and are answered at their own place', () => {
  const [call] = callsOfAll(live(), 'C');
  assert.equal(call.id, 'jars-boil-lost-1');
  assert.equal(call.canWait, false);
  assert.ok(words.ofJars(call.id) && !words.ofJars('stalled-1'));
  assert.equal(alarmPath(call.id, 'acknowledge', live()), './api/jars/alarms/jars-boil-lost-1/acknowledge');
});

test('a tap carries its id, and an undo its mark', () => {
  assert.deepEqual(words.tapAsked({ does: 'boils' }, 'x'), ['POST', './api/jars/tap', { tap: 'x', does: 'boils' }]);
  assert.deepEqual(words.tapAsked({ does: 'undo', mark: 3 }, 'x'), ['POST', './api/jars/undo', { mark: 3 }]);
  assert.deepEqual(words.sealAsked(2, 5, 'no', 'x'), ['POST', './api/jars/loads/2/seal', { tap: 'x', jar: 5, sealed: 'no' }]);
  assert.deepEqual(words.awayAsked(2, 'x'), ['POST', './api/jars/loads/2/away', { tap: 'x' }]);
});

test('the form leaves out what was left empty, and what only steam needs', () => {
  const form = {
    food: 'jam', elevation: '1240m', jar: 'pint', sterilised: 'no', canner: 'boiling-water', headspace: '', recipeTime: '', recipeFor: 'low',
    ph: '3.2', tested: 'yes', jars: '4',
  };
  assert.deepEqual(words.batchOf(form), { food: 'jam', elevation: '1240m', jar: 'pint', sterilised: 'no', canner: 'boiling-water' });
  const steam = words.batchOf({ ...form, canner: 'steam', recipeTime: '15min' });
  assert.equal(steam.ph, '3.2');
  assert.equal(steam.recipeElevation, '0m');
  assert.equal(words.batchOf({ ...form, recipeTime: '15min', recipeFor: 'here' }).recipeElevation, '1240m');
  assert.equal(words.loadAsked(form, 'x')[2].jars, 4);
});

test('what is in the canner, in a line', () => {
  assert.equal(words.loadWords(jars().load), '6 half-pint jars of marmalade, 10 minutes in boiling water.');
  assert.equal(words.loadWords({ ...jars().load, jars: 1, canner: 'steam' }), '1 half-pint jar of marmalade, 10 minutes in steam.');
  assert.equal(words.loadWords(null), '');
  assert.equal(words.elevationOf({ elevationM: 1240.4 }), '1240m');
  assert.equal(words.elevationOf({ elevationM: null }), '');
});
