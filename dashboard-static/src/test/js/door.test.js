import assert from 'node:assert/strict';
import { test } from 'node:test';
import { codeWords, deviceWords, fingerprintLines, sentence } from '../../main/resources/dashboard/door-words.js';
import { codeIn, missing, tidy } from '../../main/resources/dashboard/pair-words.js';

test('the view says who is let in, whether this machine or a device asks', () => {
  const here = (network, devices) => sentence({ here: true, role: 'cook', network, devices }).state;
  assert.match(sentence(null).state, /Looking/);
  assert.match(sentence({ here: true, network: null, devices: [] }).note, /: spoonfall serve … --lan$/);
  assert.match(here({ secure: true }, []), /^No phone or tablet/);
  assert.match(here({ secure: true }, [{}]), /^One device is/);
  assert.match(here({ secure: true }, [{}, {}]), /^2 devices are/);
  assert.match(sentence({ here: true, network: { secure: false }, devices: [] }).note, /can read/);
  assert.match(sentence({ here: false, name: 'Hall phone', role: 'viewer' }).state, /Hall phone/);
  assert.match(sentence({ here: false, name: 'Hall phone', role: 'viewer' }).note, /changes nothing/);
});

test('a code says how long it works, and why it works no more', () => {
  assert.match(codeWords({ state: 'open', leftS: 541 }), /10 minutes, once/);
  assert.match(codeWords({ state: 'open', leftS: 59 }), /less than a minute/);
  assert.match(codeWords({ state: 'guessed' }), /guessing/);
  assert.equal(codeWords({ state: 'none' }), '');
});

test('a device says what it may do and since when', () => {
  const words = deviceWords({ role: 'viewer', pairedAtMs: Date.UTC(2026, 10, 25, 12) }, 'en-GB');
  assert.equal(words, 'looks on, since 25 Nov');
});

test('a fingerprint is compared in four lines', () => {
  const pairs = Array.from({ length: 32 }, (each, i) => (i % 10).toString().repeat(2));
  assert.equal(fingerprintLines(pairs.join(':')).length, 4);
  assert.equal(fingerprintLines(pairs.join(':')).join(':'), pairs.join(':'));
});

test('a code is understood however it is typed, and taken from the address', () => {
  assert.equal(tidy(' k3f9-7xwm '), 'K3F97XWM');
  assert.equal(codeIn('#K3F97XWM'), 'K3F9-7XWM');
  for (const hash of ['', '#', '#again', '#K3F9<b>', '#K3F97XWM9']) {
    assert.equal(codeIn(hash), '');
  }
  assert.match(missing('K3F9', 'Phone'), /eight/);
  assert.match(missing('K3F9 7xwm', ' '), /name/);
  assert.equal(missing('K3F9 7xwm', 'Phone'), '');
});
