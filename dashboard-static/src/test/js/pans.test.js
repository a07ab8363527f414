import assert from 'node:assert/strict';
import { test } from 'node:test';
import { alarmPath, callsOfAll, cannerWords, hrefOf, panOf, pathFor, rows } from '../../main/resources/dashboard/pans.js';
import * as store from '../../main/resources/dashboard/store.js';

function alarm(id, priority = 'high', title = 'Look.') {
  return { id, alarm: id, state: 'unacknowledged', priority, raisedT: 10, title, act: 'Now, at {temp:100}.' };
}

function state(more = {}) {
  return {
    connection: 'live', pan: 'big', cook: { startedAtMs: 0 }, alarms: [], canner: null,
    pans: [
      { name: 'big', startedAtMs: 0, state: 'Climbing steadily.', alarms: [] },
      { name: 'small pan', startedAtMs: 0, state: 'At {temp:100}.', alarms: [] },
    ],
    ...more,
  };
}

test('an address names a pan, or none', () => {
  assert.equal(panOf(hrefOf('small pan')), 'small pan');
  for (const hash of ['', '#pan', '#pan=', '#thermometer', '#pan=%E0%A4%A']) {
    assert.equal(panOf(hash), null);
  }
});

test('calls of the service go to the pan that is shown; with one pan they stay as they were', () => {
  assert.equal(pathFor('api/cook', state({ pan: 'small pan' })), 'api/pans/small%20pan/cook');
  assert.equal(pathFor('api/cook', state({ pans: [{ name: 'pan' }] })), 'api/cook');
  assert.equal(pathFor('api/cook', store.empty()), 'api/cook');
});

test('an alarm is answered where it was raised', () => {
  assert.equal(alarmPath('stalled-1', 'acknowledge', state()), 'api/pans/big/alarms/stalled-1/acknowledge');
  assert.equal(alarmPath('small pan/stalled-1', 'shelve', state()), 'api/pans/small%20pan/alarms/stalled-1/shelve');
  assert.equal(alarmPath('stalled-1', 'acknowledge', store.empty()), 'api/alarms/stalled-1/acknowledge');
});

test('a page on one pan is called for all, the most urgent first, by the name of the pan', () => {
  const known = state({ alarms: [alarm('a-1', 'medium')] });
  known.pans[1].alarms = [alarm('b-1', 'high', 'It stopped climbing at {temp:98}.')];
  const [first, second] = callsOfAll(known, 'C');
  assert.deepEqual([first.id, first.title, first.act], ['small pan/b-1', 'Small pan: It stopped climbing at 98.0 °C.', 'Now, at 100.0 °C.']);
  assert.deepEqual([second.id, second.title], ['big/a-1', 'Big: Look.']);
});

test('the calls of the pan that is shown are its own, not those of the board', () => {
  const known = state();
  known.pans[0].alarms = [alarm('a-1')];
  assert.deepEqual(callsOfAll(known, 'C'), []);
});

test('with one pan nothing is named', () => {
  const known = state({ pans: [{ name: 'pan', startedAtMs: 0, state: '', alarms: [] }], alarms: [alarm('a-1')] });
  assert.equal(callsOfAll(known, 'C')[0].id, 'a-1');
  assert.deepEqual(rows(known, 'C'), []);
});

test('the row says how each pan is, that it calls, and nothing that may be old', () => {
  const known = state();
  assert.deepEqual(rows(known, 'F')[1], { name: 'small pan', title: 'Small pan', words: 'At 212.0 °F.', shown: false, calls: false });
  known.pans[1].alarms = [alarm('b-1')];
  assert.deepEqual([rows(known, 'F')[1].words, rows(known, 'F')[1].calls], ['Needs you.', true]);
  const lost = rows(store.connection(known, 'lost'), 'C');
  assert.deepEqual([lost[1].words, lost[1].calls], ['', false]);
});

test('the canner is shown by its temperature, or by why there is none', () => {
  const canner = (more) => state({ canner: { temperatureC: null, state: 'reading', detail: '', ...more } });
  assert.equal(cannerWords(canner({ temperatureC: 95.9 }), 'C'), '95.9 °C');
  assert.equal(cannerWords(canner({ state: 'silent' }), 'C'), 'No word from its thermometer.');
  assert.equal(cannerWords(canner({ state: 'lost', detail: '/dev/x is not there.' }), 'C'), '/dev/x is not there.');
  assert.equal(cannerWords(state(), 'C'), '');
});
