// The one owner of the browser's voice: says one thing at a time, and knows when nothing could be heard.

import { mustInterrupt, nextSaying, quiet, withoutTopic, withSaying } from './speech-queue.js';

/** A voice that has not begun after so long is none. */
const BEGINS_WITHIN_MS = 5_000;

/** Some browsers never say that they are done. */
const LONGEST_MS = 25_000;

/**
 * Returns { say(sayings, over), hush() }.
 * @param {(trouble: '' | 'none' | 'mute' | 'tap') => void} onTrouble the voice is well, is not there, was not heard, or wants a tap first
 */
export function openVoice(onTrouble) {
  const synthesis = globalThis.speechSynthesis;
  let queue = quiet();
  let speaking = null;
  let timer = 0;

  function goOn() {
    if (speaking !== null) {
      return;
    }
    const { next, queue: rest } = nextSaying(queue, performance.now());
    queue = rest;
    if (next !== null) {
      speak(next);
    }
  }

  function speak(saying) {
    const words = new SpeechSynthesisUtterance(saying.text);
    words.lang = document.documentElement.lang;
    const mine = { ...saying, words };
    speaking = mine;
    const done = (trouble) => {
      if (speaking === mine) {
        speaking = null;
        clearTimeout(timer);
        if (trouble !== null) {
          onTrouble(trouble);
        }
        goOn();
      }
    };
    words.addEventListener('start', () => {
      if (speaking === mine) {
        onTrouble('');
        wait(LONGEST_MS, () => stop(done, null));
      }
    });
    words.addEventListener('end', () => done(''));
    words.addEventListener('error', (event) => done(troubleOf(event.error)));
    wait(BEGINS_WITHIN_MS, () => stop(done, 'mute'));
    synthesis.resume();
    synthesis.speak(words);
  }

  function stop(done, trouble) {
    synthesis.cancel();
    done(trouble);
  }

  function wait(ms, act) {
    clearTimeout(timer);
    timer = setTimeout(act, ms);
  }

  function hush() {
    queue = { ...queue, waiting: [] };
    clearTimeout(timer);
    speaking = null;
    synthesis?.cancel();
  }

  return {
    say(sayings, over = []) {
      if (!synthesis || !globalThis.SpeechSynthesisUtterance) {
        onTrouble('none');
        return;
      }
      queue = over.reduce(withoutTopic, queue);
      queue = sayings.reduce((all, saying) => withSaying(all, saying, performance.now()), queue);
      if (mustInterrupt(queue, speaking)) {
        speaking = null;
        synthesis.cancel();
      }
      goOn();
    },
    hush,
  };
}

/** Being interrupted is no trouble. */
function troubleOf(error) {
  if (error === 'interrupted' || error === 'canceled') {
    return null;
  }
  return error === 'not-allowed' ? 'tap' : 'mute';
}
