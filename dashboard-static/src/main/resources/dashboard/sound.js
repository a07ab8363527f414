// The sound of a call: tones made here, repeated while a call stands. Browsers want one tap first.

import { patternOf, WORKS } from './sound-patterns.js';

/**
 * The sound. Returns { on(), turnOn(), turnOff(), update(calls), wake(), taste(priority) }; turnOn answers whether the browser allowed it.
 */
export function openSound() {
  let context = null;
  let on = false;
  let timer = 0;
  let playing = '';

  function play({ wave, loud, tones }) {
    for (const { hertz, atS, forS } of tones) {
      const at = context.currentTime + 0.02 + atS;
      const tone = context.createOscillator();
      const gain = context.createGain();
      tone.type = wave;
      tone.frequency.value = hertz;
      gain.gain.setValueAtTime(0, at);
      gain.gain.linearRampToValueAtTime(loud, at + 0.015);
      gain.gain.setValueAtTime(loud, at + forS * 0.6);
      gain.gain.linearRampToValueAtTime(0.001, at + forS);
      tone.connect(gain).connect(context.destination);
      tone.start(at);
      tone.stop(at + forS + 0.01);
    }
  }

  function stop() {
    clearInterval(timer);
    playing = '';
  }

  return {
    on: () => on,

    async turnOn() {
      try {
        context ??= new AudioContext();
        await context.resume();
        on = context.state === 'running';
      } catch {
        on = false;
      }
      if (on) {
        play(WORKS);
      }
      return on;
    },

    turnOff() {
      on = false;
      stop();
    },

    /** A tablet that slept may have put the sound to sleep as well. */
    wake() {
      if (on && context.state !== 'running') {
        context.resume().catch(() => {});
      }
    },

    /** Lets one be heard. */
    taste(priority) {
      if (on) {
        play(patternOf(priority));
      }
    },

    update(calls) {
      const wanted = on && calls.length > 0 ? calls[0].priority : '';
      if (wanted === playing) {
        return;
      }
      stop();
      if (wanted !== '') {
        const pattern = patternOf(wanted);
        playing = wanted;
        play(pattern);
        timer = setInterval(() => play(pattern), pattern.everyMs);
      }
    },
  };
}
