// What the page says of its sound, its voice, the screen, its notices and the pedal, and of what it could not do. Pure.

import { keyName } from './one-act.js';

/** @param {{ on: boolean, wanted: boolean, refused: boolean }} sound */
export function soundWords({ on, wanted, refused }) {
  if (on) {
    return { button: 'Sound is on', line: 'A call sounds until you answer it: six quick tones when seconds count, two when minutes do, one low tone else.' };
  }
  if (refused) {
    return { button: 'This browser allows no sound', line: 'This browser allows no sound: look at the page now and then.' };
  }
  return wanted
    ? { button: 'Sound starts with a tap', line: 'Browsers want one tap before a page may sound: tap anywhere.' }
    : { button: 'Turn the sound on', line: 'The sound and the voice are off.' };
}

/** @param {{ on: boolean, sound: boolean, trouble: '' | 'none' | 'mute' | 'tap' }} voice */
export function voiceWords({ on, sound, trouble }) {
  const button = on ? 'Voice is on' : 'Voice is off';
  if (trouble === 'none') {
    return { button, line: 'This browser has no voice; its sounds call you all the same.' };
  }
  if (!sound) {
    return { button, line: on ? 'The voice comes with the sound.' : 'The voice stays off when the sound is on.' };
  }
  if (!on) {
    return { button, line: 'The voice is off; only the sounds call you.' };
  }
  return {
    button,
    line: {
      '': 'The voice says every call, and what to do when that changes.',
      mute: 'This device spoke no word just now: it may have no voice. The sounds call you all the same.',
      tap: 'The browser wants a tap before it speaks: tap anywhere.',
    }[trouble],
  };
}

/** @param {'' | 'none' | 'refused'} trouble */
export function screenWords(trouble) {
  return {
    '': 'The screen stays on while this page is in front.',
    none: 'The screen may go dark: this browser cannot keep it on. Set the device to its longest time.',
    refused: 'The screen may go dark: the browser would not keep it on just now. A low battery does that; a tap tries again.',
  }[trouble];
}

/** @param {'yes' | 'ask' | 'denied' | 'none'} can */
export function noticeWords(can) {
  return {
    yes: 'While this page is in the background, its calls come as notices of the system too.',
    ask: 'While this page is in the background, only its sound and voice can call you.',
    denied: 'Notices are refused in this browser’s settings: in the background only the sound and the voice can call you.',
    none: 'This browser shows no notices for this page: keep it in front.',
  }[can];
}

/** @param {string} learnt the key that was learnt, or '' */
export function pedalWords(learnt) {
  const also = learnt === '' ? '' : ` Your pedal types ${keyName(learnt)}.`;
  return `A tap anywhere on a call answers it; so do Space, Enter, Page Down and the arrows right and down.${also}`;
}

/** In a few words, what does not work here though it is wanted; '' if all does. */
export function troubles({ sound, voice, screen }) {
  const words = [];
  if (sound.refused) {
    words.push('no sound here');
  }
  if (sound.on && voice.on && voice.trouble !== '') {
    words.push(voice.trouble === 'tap' ? 'the voice waits for a tap' : 'no voice here');
  }
  if (screen !== '') {
    words.push('the screen may go dark');
  }
  return words.join('; ');
}
