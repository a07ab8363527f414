import assert from 'node:assert/strict';
import { test } from 'node:test';
import { mustInterrupt, nextSaying, quiet, withoutTopic, withSaying } from '../../main/resources/dashboard/speech-queue.js';

const saying = (topic, priority, text = topic) => ({ topic, priority, text });
const filled = (...all) => all.reduce((queue, each) => withSaying(queue, each, 0), quiet());

function spoken(queue, nowMs = 0) {
  const texts = [];
  for (let step = nextSaying(queue, nowMs); step.next !== null; step = nextSaying(step.queue, nowMs)) {
    texts.push(step.next.text);
  }
  return texts;
}

test('the most urgent comes first, and calls outlive lesser news', () => {
  const low = [1, 2, 3, 4, 5, 6].map((i) => saying(`low ${i}`, 'low'));
  const queue = filled(saying('gel', 'high'), ...low, saying('stalled', 'medium'), saying('scorch', 'high'));
  assert.deepEqual(spoken(queue), ['gel', 'scorch', 'stalled', 'low 6']);
});

test('newer news of a topic takes the place of what still waits', () => {
  assert.deepEqual(spoken(filled(saying('sentence', 'low', 'Warming up.'), saying('sentence', 'low', 'Boiling.'))), ['Boiling.']);
  assert.deepEqual(spoken(withoutTopic(filled(saying('stir', 'low')), 'stir')), []);
});

test('the same sentence is not said twice in a minute', () => {
  const first = nextSaying(filled(saying('a', 'high', 'Stir.')), 0);
  assert.equal(first.next.text, 'Stir.');
  assert.equal(nextSaying(withSaying(first.queue, saying('b', 'high', 'Stir.'), 59_000), 59_000).next, null);
  assert.equal(nextSaying(withSaying(first.queue, saying('b', 'high', 'Stir.'), 61_000), 61_000).next.text, 'Stir.');
});

test('old news is not said any more, an urgent call is', () => {
  assert.deepEqual(spoken(filled(saying('stir', 'low'), saying('gel', 'high')), 40_000), ['gel']);
});

test('an urgent call interrupts what can wait, and nothing interrupts an urgent call', () => {
  const queue = filled(saying('gel', 'high'));
  assert.equal(mustInterrupt(queue, saying('stir', 'low')), true);
  assert.equal(mustInterrupt(queue, saying('scorch', 'high')), false);
  assert.equal(mustInterrupt(queue, null), false);
  assert.equal(mustInterrupt(filled(saying('stir', 'low')), saying('stalled', 'medium')), false);
});
