import assert from 'node:assert/strict';
import { test } from 'node:test';
import { spokenWords, untold, worthSaying } from '../../main/resources/dashboard/spoken.js';

const startedAtMs = new Date(2026, 0, 17, 15, 0).getTime();
const aloud = (text) => spokenWords(text, 'C', startedAtMs);
const boiling = { state: 'Climbing steadily.', act: 'Set tests in about 12 minutes.', note: '' };
const call = (id, priority = 'high') => ({ id, priority, title: 'It has reached the setting point, {temp:100.4}.', act: 'Take it off the heat.' });

/** Plays a story of [seconds since the last, what changed] and returns what was said at each. */
function told(story) {
  let memory = untold();
  let now = { of: 'pan/1', live: true, saying: boiling, calls: [], reminders: [], missed: 0 };
  let ms = 0;
  return story.map(([seconds, changed]) => {
    for (let i = 0; i < seconds - 1; i++) {
      memory = worthSaying(memory, now, aloud, (ms += 1000)).memory;
    }
    now = { ...now, ...changed };
    const result = worthSaying(memory, now, aloud, (ms += 1000));
    memory = result.memory;
    return result.say.map((saying) => saying.text);
  });
}

test('numbers are spoken as words, in the unit of the cook', () => {
  assert.equal(aloud('At {temp:100.4}, {diff:1.0} past since {clock:1320}.'), 'At 100.4 degrees, 1 degree past since 15:22.');
  assert.equal(spokenWords('At {temp:100.0}, {diff:2.0} up.', 'F', startedAtMs), 'At 212 degrees, 3.6 degrees up.');
  assert.equal(aloud('Small pan: 100.4 °C, 2.1° down.'), 'Small pan: 100.4 degrees, 2.1 degrees down.');
});

test('a page that opens on a quiet pan says nothing, and on a call says the call', () => {
  assert.deepEqual(told([[1, {}]]), [[]]);
  assert.deepEqual(told([[1, { calls: [call('a'), call('b')] }]]), [
    ['It has reached the setting point, 100.4 degrees. Take it off the heat. One more call waits on the page.'],
  ]);
});

test('minutes that count down are said at ten, five and two', () => {
  const act = (minutes) => [20, { saying: { ...boiling, act: `Set tests in about ${minutes} minutes.` } }];
  const said = told([[1, {}], act(11), act(10), act(9), act(12), act(10), act(6), act(4), act(3), act(2)]).map((all) => all.length);
  assert.deepEqual(said, [0, 0, 1, 0, 0, 0, 0, 1, 0, 1]);
});

test('of a range its middle counts', () => {
  const act = (when) => [20, { saying: { ...boiling, act: `Set tests ${when}.` } }];
  const said = told([[1, {}], act('in 5 to 40 minutes'), act('in 5 to 15 minutes'), act('within 15 minutes'), act('within 10 minutes')]);
  assert.deepEqual(said.map((all) => all.length), [0, 0, 1, 0, 1]);
});

test('what is only more than so much is no news', () => {
  const act = (when) => [20, { saying: { ...boiling, act: `Set tests ${when}.` } }];
  const said = told([[1, {}], act('in more than 5 minutes'), act('in about 10 minutes'), act('in more than 5 minutes')]);
  assert.deepEqual(said.map((all) => all.length), [0, 0, 1, 0]);
});

test('what to do is said when it changes, and a state only when there is nothing to do', () => {
  const said = told([
    [1, {}],
    [5, { saying: { ...boiling, state: 'Climbing slowly.' } }],
    [5, { saying: { state: 'Close to setting.', act: 'Test the set.', note: '' } }],
    [5, { saying: { state: 'Off the heat.', act: '', note: 'Hot sugar sticks and burns.' } }],
  ]);
  assert.deepEqual(said, [[], [], ['Close to setting. Test the set.'], ['Off the heat.']]);
});

test('a call is said at once, instead of the sentence, and an urgent one again after a minute', () => {
  const testing = { saying: { state: 'Close to setting.', act: 'Test the set.', note: '' } };
  const said = told([
    [1, {}],
    [5, { calls: [call('gel-1')], ...testing }],
    [30, {}],
    [35, {}],
    [60, {}],
    [2, { calls: [] }],
  ]).map((all) => all.length);
  assert.deepEqual(said, [0, 1, 0, 1, 0, 0]);
});

test('a call that can wait is said once', () => {
  const said = told([[1, {}], [5, { calls: [call('stalled-1', 'medium')] }], [300, {}]]).map((all) => all.length);
  assert.deepEqual(said, [0, 1, 0]);
});

test('a reminder is said once, and those that stood before the page came are not', () => {
  const stir = { reminder: 'stir', t: 900, text: 'Stir down to the base.' };
  const jars = { reminder: 'warm-jars', t: 1000, text: 'Warm the jars: it sets at about {clock:1800}.' };
  const said = told([[1, { reminders: [stir] }], [5, {}], [5, { reminders: [jars, stir] }], [5, {}]]);
  assert.deepEqual(said, [[], [], ['Warm the jars: it sets at about 15:30.'], []]);
});

test('a tablet that slept for twenty minutes says one sentence, whatever it missed', () => {
  let memory = untold();
  const before = { of: 'pan/1', live: true, saying: boiling, calls: [], reminders: [], missed: 0 };
  memory = worthSaying(memory, before, aloud, 1000).memory;
  const after = {
    ...before,
    saying: { state: 'Past the setting point.', act: 'Off the heat now.', note: '' },
    calls: [call('past-1'), call('gel-1'), call('stalled-1', 'medium')],
    reminders: [1, 2, 3].map((t) => ({ reminder: `r${t}`, t, text: 'Stir.' })),
    missed: 4,
  };
  const woken = worthSaying(memory, after, aloud, 1000 + 20 * 60_000);
  assert.equal(woken.say.length, 1);
  assert.match(woken.say[0].text, /2 more calls wait on the page\.$/);
  assert.deepEqual(worthSaying(woken.memory, after, aloud, 2000 + 20 * 60_000).say, []);
});

test('what was missed and is over is mentioned in one sentence', () => {
  const memory = worthSaying(untold(), { of: 'pan/1', live: true, saying: boiling, calls: [], reminders: [], missed: 0 }, aloud, 0).memory;
  const woken = worthSaying(memory, { of: 'pan/1', live: true, saying: boiling, calls: [], reminders: [], missed: 2 }, aloud, 60_000);
  assert.deepEqual(
    woken.say.map((saying) => saying.text),
    ['Something was called while this page was away; the page says what. Climbing steadily. Set tests in about 12 minutes.'],
  );
});

test('what stands in another pan that is looked at is no news', () => {
  const stir = { reminder: 'stir', t: 900, text: 'Stir.' };
  const said = told([[1, {}], [5, { of: 'small pan/1', saying: { state: 'Simmering.', act: '', note: '' }, reminders: [stir] }], [5, {}]]);
  assert.deepEqual(said, [[], [], []]);
});

test('a service that is gone is said once, and not for a blink', () => {
  const said = told([[1, {}], [1, { live: false }], [2, { live: true }], [5, {}], [1, { live: false }], [5, {}], [60, {}]]).map((all) => all[0] ?? '');
  assert.deepEqual(said, ['', '', '', '', '', 'No word from Spoonfall. Watch the pan yourself.', '']);
});
