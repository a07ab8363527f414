import assert from 'node:assert/strict';
import { test } from 'node:test';
import { noticeWords, pedalWords, screenWords, soundWords, troubles, voiceWords } from '../../main/resources/dashboard/hands-words.js';
import { answers, canBePedal, oncePerCall, oncePerTap } from '../../main/resources/dashboard/one-act.js';
import { PATTERNS, patternOf } from '../../main/resources/dashboard/sound-patterns.js';

test('the three sounds differ in number, height, pace and colour', () => {
  const all = Object.values(PATTERNS);
  for (const trait of [
    (p) => p.tones.length,
    (p) => p.tones[0].hertz,
    (p) => p.tones[0].forS,
    (p) => p.everyMs,
    (p) => p.wave,
  ]) {
    assert.equal(new Set(all.map(trait)).size, 3);
  }
  assert.ok(PATTERNS.high.everyMs < PATTERNS.medium.everyMs && PATTERNS.medium.everyMs < PATTERNS.low.everyMs);
  assert.equal(patternOf('unheard of'), PATTERNS.low);
});

test('no tone of a pattern is cut off by the next round', () => {
  for (const { tones, everyMs } of Object.values(PATTERNS)) {
    assert.ok(Math.max(...tones.map(({ atS, forS }) => atS + forS)) * 1000 < everyMs);
  }
});

test('a tap that arrives twice acts once, whichever button it meets', () => {
  let now = 0;
  const done = [];
  const once = oncePerTap(() => now);
  const [answer, later] = [once((id) => done.push(`answer ${id}`)), once((id) => done.push(`later ${id}`))];
  answer('gel-1');
  now = 300;
  answer('stalled-1');
  later('stalled-1');
  now = 900;
  answer('stalled-1');
  assert.deepEqual(done, ['answer gel-1', 'answer stalled-1']);
});

test('a call is answered once by whichever ways lead to it, and the next one at once', () => {
  let now = 0;
  const done = [];
  const answer = oncePerCall((id) => done.push(id), () => now);
  answer('gel-1');
  now = 10;
  answer('gel-1');
  answer('stalled-1');
  now = 900;
  answer('stalled-1');
  assert.deepEqual(done, ['gel-1', 'stalled-1', 'stalled-1']);
});

test('the usual keys answer, and the learnt one', () => {
  assert.ok([' ', 'Enter', 'PageDown', 'ArrowRight'].every((key) => answers(key, '')));
  assert.equal(answers('b', ''), false);
  assert.equal(answers('b', 'b'), true);
  assert.equal(answers('', ''), false);
  assert.equal(canBePedal('Tab'), false);
  assert.equal(canBePedal('F13'), true);
});

test('what could not be done is said in words', () => {
  const fine = { sound: { on: true, wanted: true, refused: false }, voice: { on: true, sound: true, trouble: '' }, screen: '' };
  assert.equal(troubles(fine), '');
  assert.equal(troubles({ ...fine, voice: { ...fine.voice, trouble: 'none' }, screen: 'refused' }), 'no voice here; the screen may go dark');
  assert.equal(troubles({ ...fine, sound: { on: false, wanted: false, refused: true } }), 'no sound here');
  assert.match(voiceWords({ on: true, sound: true, trouble: 'mute' }).line, /spoke no word/);
  assert.match(soundWords({ on: false, wanted: false, refused: true }).line, /allows no sound/);
  assert.match(screenWords('none'), /may go dark/);
  assert.match(noticeWords('denied'), /refused/);
  assert.match(pedalWords('F13'), /Your pedal types F13\./);
});
