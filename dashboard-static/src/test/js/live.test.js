import assert from 'node:assert/strict';
import { test } from 'node:test';
import { listen } from '../../main/resources/dashboard/live.js';

/** A socket that says what the test says; the latest that was opened is the last of `opened`. */
const opened = [];
class ToldSocket extends EventTarget {
  constructor(url) {
    super();
    this.url = url;
    opened.push(this);
  }

  say(message) {
    this.dispatchEvent(Object.assign(new Event('message'), { data: JSON.stringify(message) }));
  }

  close() {}
}

/** Timers of one page, in milliseconds that the test passes. */
function toldTimers() {
  const timers = new Map();
  let nowMs = 0;
  let ids = 0;
  const set = (again) => (act, ms) => timers.set(++ids, { act, ms, again, atMs: nowMs + ms }) && ids;
  Object.assign(globalThis, { setTimeout: set(false), setInterval: set(true), clearTimeout: (id) => timers.delete(id) });
  performance.now = () => nowMs;
  return function pass(ms) {
    for (const endMs = nowMs + ms; nowMs < endMs; nowMs++) {
      for (const [id, timer] of [...timers].filter(([, one]) => one.atMs <= nowMs + 1)) {
        timer.again ? (timer.atMs += timer.ms) : timers.delete(id);
        timer.act();
      }
    }
  };
}

test('a page that is told to wait stays, and is live with the snapshot; one that hears nothing comes again', () => {
  Object.assign(globalThis, {
    WebSocket: ToldSocket,
    location: { protocol: 'http:', host: 'kitchen' },
    addEventListener: () => {},
  });
  const pass = toldTimers();
  const heard = [];
  const connections = [];
  listen('', (message) => heard.push(message.type), (connection) => connections.push(connection), () => {});
  for (let s = 0; s < 60; s++) {
    pass(1000);
    opened[0].say({ type: 'waiting' });
  }
  assert.deepEqual([opened.length, heard, [...new Set(connections)]], [1, [], ['lost']]);
  opened[0].say({ type: 'snapshot' });
  assert.deepEqual([opened.length, heard, connections.at(-1)], [1, ['snapshot'], 'live']);
  pass(2500);
  assert.equal(opened.length, 1);
  pass(1000);
  pass(1000);
  assert.deepEqual([opened.length, connections.at(-1)], [2, 'lost']);
});
