import assert from 'node:assert/strict';
import { test } from 'node:test';
import * as store from '../../main/resources/dashboard/store.js';

const basis = { waterBoilC: 95.8, riseC: 4.4, gelPointC: 100.2, windowFromC: 99.1 };

function alarm(name, state, priority = 'high', raisedT = 10) {
  return { id: `${name}-1`, alarm: name, state, priority, raisedT, title: name, act: '' };
}

function snapshot(more = {}) {
  return {
    type: 'snapshot', seq: 5, run: 'a', kitchen: { name: 'Hollin Bank', batch: '' },
    cook: { number: 1, startedAtMs: 0, speed: 1, source: 'live' }, probe: { state: 'reading' }, basis, syrup: [],
    status: { t: 10, fresh: true, temperatureC: 97, riseC: 1.2 }, alarms: [], events: [], climb: [[0, 95.8], [5, null], [10, 97]],
    ...more,
  };
}

function started(more) {
  return store.connection(store.receive(store.empty(), snapshot(more)), 'live');
}

test('a snapshot fills the state, and a gap stays a gap', () => {
  const state = started();
  assert.equal(state.heard, true);
  assert.deepEqual(state.climb.map((p) => p.riseC === null), [false, true, false]);
  assert.ok(store.isLive(state));
});

test('nothing is live without a fresh status or without a connection', () => {
  assert.ok(!store.isLive(store.connection(started(), 'lost')));
  assert.ok(!store.isLive(store.receive(started(), { type: 'status', seq: 5, t: 12, fresh: false, riseC: null })));
});

test('a status before the snapshot is not believed', () => {
  const state = store.receive(store.empty(), { type: 'status', t: 1, fresh: true, riseC: 2 });
  assert.equal(state.heard, false);
});

test('statuses lengthen the climb, once a second, and silence breaks it once', () => {
  let state = started();
  const before = state.climb.length;
  for (const [t, riseC] of [[10.4, 1.2], [11, 1.3], [12, null], [13, null], [14, 1.4]]) {
    state = store.receive(state, { type: 'status', seq: 5, t, fresh: riseC !== null, riseC });
  }
  assert.deepEqual(state.climb.slice(before).map((p) => p.riseC), [1.3, null, 1.4]);
});

test('a silence that went by between two statuses is a gap too', () => {
  const state = store.receive(started(), { type: 'status', seq: 5, t: 160, fresh: true, riseC: 2 });
  assert.deepEqual(state.climb.slice(-2).map((p) => p.riseC), [null, 2]);
});

test('alarms call until acknowledged, then stand, then go', () => {
  let state = store.receive(started(), { type: 'alarm', seq: 6, alarm: alarm('stalled', 'unacknowledged', 'medium') });
  state = store.receive(state, { type: 'alarm', seq: 7, alarm: alarm('gel-point', 'unacknowledged') });
  assert.deepEqual(store.calls(state).map((a) => a.alarm), ['gel-point', 'stalled']);
  state = store.receive(state, { type: 'alarm', seq: 8, alarm: alarm('gel-point', 'acknowledged') });
  assert.deepEqual(store.calls(state).map((a) => a.alarm), ['stalled']);
  assert.deepEqual(store.standing(state).map((a) => a.alarm), ['gel-point']);
  state = store.receive(state, { type: 'alarm', seq: 9, alarm: alarm('gel-point', 'normal') });
  assert.deepEqual(store.standing(state), []);
});

test('what is put aside neither calls nor stands, and what is suppressed is not there', () => {
  const shelved = { ...alarm('stalled', 'shelved', 'medium'), shelvedUntilT: 600 };
  const sooner = { ...alarm('probe-stuck', 'shelved', 'medium'), shelvedUntilT: 300 };
  let state = started({ alarms: [shelved, sooner] });
  assert.deepEqual(store.calls(state), []);
  assert.deepEqual(store.standing(state), []);
  assert.deepEqual(store.aside(state).map((a) => a.alarm), ['probe-stuck', 'stalled']);
  state = store.receive(state, { type: 'alarm', seq: 6, change: 'unshelved', alarm: alarm('stalled', 'unacknowledged', 'medium') });
  assert.deepEqual(store.calls(state).map((a) => a.alarm), ['stalled']);
  state = store.receive(state, { type: 'alarm', seq: 7, change: 'suppressed', alarm: alarm('stalled', 'suppressed', 'medium') });
  assert.deepEqual([...store.calls(state), ...store.standing(state)], []);
});

test('a reminder for what has come is of no use any more', () => {
  const event = (seq, reminder) => ({ type: 'reminder', seq, t: 1, reminder, text: reminder });
  const state = ['chill-plates', 'warm-jars', 'stir', 'came-back'].reduce((now, reminder, i) => store.receive(now, event(i + 1, reminder)), store.empty());
  const shown = (stage) => store.reminders({ ...state, status: { t: 100, stage } }).map((r) => r.reminder);
  assert.deepEqual(shown('test-window'), ['came-back', 'stir', 'warm-jars', 'chill-plates']);
  assert.deepEqual(shown('at-gel-point'), ['came-back', 'stir', 'warm-jars']);
  assert.deepEqual(shown('off-the-heat'), ['came-back']);
});

test('a reminder is shown for ten minutes, the newest of each kind, and calls nobody', () => {
  const event = (seq, t, reminder) => ({ type: 'reminder', seq, t, reminder, text: `${reminder} ${t}` });
  let state = started({ events: [event(3, 5, 'stir'), event(4, 9, 'stir')] });
  assert.deepEqual(store.reminders(state).map((r) => r.t), [9]);
  state = store.receive(state, event(6, 300, 'chill-plates'));
  state = store.receive(state, { type: 'status', seq: 6, t: 310, fresh: true, riseC: 2 });
  assert.deepEqual(store.reminders(state).map((r) => r.reminder), ['chill-plates', 'stir']);
  assert.deepEqual(store.calls(state), []);
  state = store.receive(state, { type: 'status', seq: 6, t: 700, fresh: true, riseC: 2 });
  assert.deepEqual(store.reminders(state).map((r) => r.reminder), ['chill-plates']);
});

test('what came and went while the page was away is told, and only that', () => {
  const events = [
    { type: 'alarm', seq: 4, change: 'raised', alarm: alarm('stalled', 'unacknowledged') },
    { type: 'alarm', seq: 6, change: 'raised', alarm: alarm('probe-silent', 'unacknowledged') },
    { type: 'alarm', seq: 8, change: 'raised', alarm: alarm('gel-point', 'unacknowledged') },
  ];
  const state = store.receive(started(), snapshot({ seq: 9, events, alarms: [alarm('gel-point', 'unacknowledged')] }));
  assert.deepEqual(state.missed.map((a) => a.alarm), ['probe-silent']);
  assert.deepEqual(store.forgetMissed(state).missed, []);
});

test('a restarted service and a new cook start the page afresh', () => {
  const events = [{ type: 'alarm', seq: 8, change: 'raised', alarm: alarm('stalled', 'unacknowledged') }];
  assert.deepEqual(store.receive(started(), snapshot({ run: 'b', seq: 9, events })).missed, []);
  const cook = { number: 2, startedAtMs: 0, speed: 1, source: 'live' };
  assert.deepEqual(store.receive(started(), snapshot({ cook, seq: 9, events })).missed, []);
});

test('messages from a later version change nothing', () => {
  const state = started();
  assert.equal(store.receive(state, { type: 'weather' }), state);
});

test('that nobody watched for a while is a quiet line for ten minutes', () => {
  const text = 'Spoonfall was away for 40 seconds, until {clock:5}. Nobody watched the pan then.';
  const state = started({ events: [{ type: 'came-back', seq: 4, t: 5, forS: 40, text }] });
  assert.deepEqual(store.reminders(state), [{ t: 5, reminder: 'came-back', text }]);
  const later = store.receive(state, { type: 'came-back', seq: 6, t: 9, forS: 2, text: 'again' });
  assert.deepEqual(store.reminders(later).map((line) => line.text), ['again']);
});

test('another pan is another cook, though its number is the same', () => {
  const raised = { type: 'alarm', change: 'raised', seq: 7, t: 5, alarm: alarm('stalled', 'normal') };
  const before = started({ pan: 'big', seq: 5 });
  const other = store.receive(before, snapshot({ pan: 'small', seq: 8, events: [raised] }));
  assert.deepEqual(other.missed, []);
  assert.equal(other.pan, 'small');
  assert.equal(store.receive(before, snapshot({ pan: 'big', seq: 8, events: [raised] })).missed.length, 1);
});

test('a page that was open before the cook began learns when it did', () => {
  const before = started({ cook: { number: 1, startedAtMs: null, speed: 1, source: 'live' } });
  const after = store.receive(before, { type: 'status', seq: 5, t: 11, fresh: true, riseC: 1.3, startedAtMs: 12000 });
  assert.equal(after.cook.startedAtMs, 12000);
  assert.equal(store.receive(after, { type: 'status', seq: 5, t: 12, fresh: true, riseC: 1.3 }).cook.startedAtMs, 12000);
});

test('a row of the pans takes the place of the older one, and the others stay', () => {
  const state = started({ pans: [{ name: 'big', state: 'Warming up.' }, { name: 'small', state: 'Warming up.' }], canner: null });
  const next = store.receive(state, { type: 'pans', pans: [{ name: 'small', state: 'Boiling.' }], canner: null });
  assert.deepEqual(next.pans.map((pan) => `${pan.name} ${pan.state}`), ['big Warming up.', 'small Boiling.']);
});

test('what is wrong calls above a prompt as urgent, though that came later', () => {
  const prompt = { ...alarm('start-set-tests', 'unacknowledged', 'high', 20), prompt: true };
  const wrong = { ...alarm('scorch-risk', 'unacknowledged', 'high', 10), prompt: false };
  const state = started({ alarms: [prompt, wrong] });
  assert.deepEqual(store.calls(state).map((call) => call.alarm), ['scorch-risk', 'start-set-tests']);
});
