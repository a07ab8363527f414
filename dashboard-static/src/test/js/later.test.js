import assert from 'node:assert/strict';
import { test } from 'node:test';
import { later } from '../../main/resources/dashboard/later.js';

globalThis.requestIdleCallback = () => {}; // this browser is never idle
const settled = () => new Promise((done) => setImmediate(done));

test('what is said before the page is there is said when it is, the last of it only', async () => {
  const said = [];
  let mounts = 0;
  const update = later(
    async () => ({ mountIt: () => (...args) => said.push(args) }),
    ({ mountIt }) => mountIt(),
    () => mounts++,
  );
  update(1, 'C');
  update(2, 'F');
  await settled();
  update(3, 'F');
  assert.deepEqual([said, mounts], [[[2, 'F'], [3, 'F']], 1]);
});

test('a module that could not be had is asked for again with the next word', async () => {
  const said = [];
  let tries = 0;
  const load = async () => {
    tries++;
    if (tries === 1) {
      throw new Error('the service was gone');
    }
    return (words) => said.push(words);
  };
  const update = later(load, (it) => it, () => {});
  update('first');
  await settled();
  update('second');
  await settled();
  assert.deepEqual([tries, said], [2, ['second']]);
});
