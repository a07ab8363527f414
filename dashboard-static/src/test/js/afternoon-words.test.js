import assert from 'node:assert/strict';
import { test } from 'node:test';
import { addition, afternoonSaying, places, request, rows, unprocessed } from '../../main/resources/dashboard/afternoon-words.js';

const startedAtMs = new Date(2026, 0, 17, 15, 0).getTime();
const step = (id, name, state, begunT, endedT, dueT, more = {}) => ({ id, name, state, begunT, endedT, dueT, forecast: false, ...more });
const afternoon = {
  startedAtMs,
  t: 1800,
  say: { state: 'Let it rest: until {clock:3600}.', act: '', note: '' },
  steps: [
    step('soften', 'Soften the peel', 'done', 0, 900, null),
    step('sugar', 'Stir the sugar in', 'skipped', null, 900, null),
    step('boil', 'Boil it hard', 'now', 900, null, 2700),
    step('test', 'Test the set', 'later', null, null, 2700, { forecast: true, fromT: 2400, untilT: 3300 }),
    step('process', 'Process the jars', 'later', null, null, 4500),
  ],
  preparations: [
    { id: 'plates', name: 'Put the plates in the freezer', before: 'test', state: 'now', doneT: null, dueT: 1800 },
    { id: 'canner', name: 'Heat the canner', before: 'process', state: 'later', doneT: null, dueT: 2750 },
  ],
};

test('the steps and what is to be prepared stand in the order of their times', () => {
  assert.deepEqual(
    rows(afternoon).map((row) => row.id),
    ['soften', 'sugar', 'boil', 'plates', 'test', 'canner', 'process'],
  );
});

test('each says when it began and ended, or when it is due, as precisely as that is known', () => {
  const said = Object.fromEntries(rows(afternoon).map(({ id, when, what, how }) => [id, [when, what, how]]));
  assert.deepEqual(said.soften, ['15:00', 'Soften the peel', 'until 15:15']);
  assert.deepEqual(said.sugar, ['15:15', 'Stir the sugar in', 'left out']);
  assert.deepEqual(said.boil, ['15:15', 'Boil it hard', 'now']);
  assert.deepEqual(said.plates, ['15:30', 'Put the plates in the freezer', 'now']);
  assert.deepEqual(said.test, ['15:45', 'Test the set, 15:40 to 15:55', 'in 15 min']);
  assert.deepEqual(said.process, ['16:15', 'Process the jars', 'in 45 min']);
});

test('of a step that only the pan can time no usual minutes are shown', () => {
  const unknown = { ...afternoon, steps: afternoon.steps.map((one) => (one.id === 'test' ? { ...one, forecast: false, known: false } : one)) };
  const row = rows(unknown).find(({ id }) => id === 'test');
  assert.deepEqual([row.when, row.what, row.how], ['', 'Test the set', 'not known yet']);
});

test('of a step of which only the least is known no time is shown, and of one that is being done neither', () => {
  const said = (more) => {
    const row = rows({ ...afternoon, steps: afternoon.steps.map((one) => (one.id === 'test' ? { ...one, ...more } : one)) }).find(({ id }) => id === 'test');
    return [row.when, row.what, row.how];
  };
  assert.deepEqual(said({ leastMinutes: 5 }), ['', 'Test the set', 'in more than 5 min']);
  assert.deepEqual(said({ dueT: null, forecast: false, known: false }), ['', 'Test the set', '']);
});

test('a preparation whose time went by stands before its step', () => {
  const past = { ...afternoon, preparations: [{ ...afternoon.preparations[0], state: 'skipped', dueT: null }] };
  const row = rows(past)[3];
  assert.deepEqual([row.id, row.when, row.how], ['plates', '', 'past']);
});

test('clocks in the sentence are the afternoon’s', () => {
  assert.equal(afternoonSaying(afternoon).state, 'Let it rest: until 16:00.');
});

test('jars that are not processed belong in the fridge', () => {
  assert.equal(unprocessed(afternoon), '');
  assert.match(unprocessed({ steps: afternoon.steps.slice(0, 4) }), /fridge/);
});

test('taps and additions become requests', () => {
  assert.deepEqual(request('prepared', 'canner', 'x'), ['POST', 'api/afternoon/preparations/canner/done', { tap: 'x' }]);
  assert.deepEqual(request('skip', 'spirit', 'x'), ['POST', 'api/afternoon/steps/spirit/skip', { tap: 'x' }]);
  assert.deepEqual(addition('Skim', '3', 'after off', 'x')[2], { tap: 'x', name: 'Skim', minutes: 3, after: 'off' });
  assert.deepEqual(places(afternoon)[0], ['after soften', 'After: Soften the peel']);
});
