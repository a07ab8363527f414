// Hears and is heard: sound, voice, screen, notices and pedal, with one small place that says how they stand.

import { keepAwake } from './awake.js';
import { put } from './elements.js';
import { noticeWords, pedalWords, screenWords, soundWords, troubles, voiceWords } from './hands-words.js';
import { remember, remembered } from './kept.js';
import { openNotices } from './notices.js';
import { listenToKeys } from './one-act.js';
import { openSound } from './sound.js';
import { spokenWords, untold, worthSaying } from './spoken.js';
import { reminders } from './store.js';
import { openVoice } from './voice.js';
import { fill } from './words.js';

const HELLO = 'Spoonfall speaks here.';

/**
 * Mounts it; returns update(state, calls, unit), to be called with every change, for a page in the background draws nothing.
 * @param {{ sound: HTMLElement, voice: HTMLElement, place: HTMLElement }} parts the two buttons and the place, a details element
 * @param {(id: string) => void} answer answers a call by a key
 */
export function mountHands(parts, answer) {
  let now = { of: '', live: false, saying: null, calls: [], reminders: [], missed: 0 };
  let memory = untold();
  let aloud = (text) => text;
  let filled = (calls) => calls;
  let wanted = remembered('sound') === 'on';
  let refused = false;
  let voiceOn = remembered('voice') !== 'off';
  let trouble = '';
  let screen = '';
  const sound = openSound();
  const notices = openNotices();
  const voice = openVoice((next) => show((trouble = next)));
  const keys = listenToKeys(() => (now.live ? now.calls[0] : undefined), answer);
  const place = mountPlace(parts.place, { hear, speak, askForNotices, learn, forget: () => show(keys.forget()) });

  function show() {
    const [soundNow, voiceNow] = [{ on: sound.on(), wanted, refused }, { on: voiceOn, sound: sound.on(), trouble }];
    const [ofSound, ofVoice] = [soundWords(soundNow), voiceWords(voiceNow)];
    put(parts.sound, ofSound.button);
    parts.sound.setAttribute('aria-pressed', String(sound.on()));
    put(parts.voice, ofVoice.button);
    parts.voice.setAttribute('aria-pressed', String(voiceOn));
    parts.voice.hidden = !sound.on();
    place({
      trouble: troubles({ sound: soundNow, voice: voiceNow, screen }),
      sound: ofSound.line,
      voice: ofVoice.line,
      screen: screenWords(screen),
      notices: noticeWords(notices.can()),
      pedal: pedalWords(keys.learnt()),
      on: sound.on(),
      speaks: sound.on() && voiceOn,
      askable: notices.can() === 'ask',
      learnt: keys.learnt() !== '',
    });
  }

  async function turnOn() {
    refused = !(await sound.turnOn());
    wanted = !refused;
    remember('sound', wanted ? 'on' : 'off');
    if (!refused) {
      speak();
      sound.update(now.calls);
    }
    show();
  }

  function turnOff() {
    wanted = false;
    remember('sound', 'off');
    sound.turnOff();
    voice.hush();
    show();
  }

  function speak() {
    if (sound.on() && voiceOn) {
      const call = now.live ? now.calls[0] : undefined;
      voice.say([call ? { topic: call.id, priority: call.priority, text: aloud(`${call.title} ${call.act}`) } : { topic: 'hello', priority: 'low', text: HELLO }]);
    }
  }

  /** Lets the three sounds be heard, the calmest first. */
  function hear() {
    ['low', 'medium', 'high'].forEach((priority, i) => setTimeout(() => sound.taste(priority), 1600 * i));
  }

  async function askForNotices() {
    await notices.ask();
    show();
  }

  function learn(done) {
    keys.learn((key) => {
      done(key);
      show();
    });
  }

  function tell() {
    const told = worthSaying(memory, now, aloud, performance.now());
    memory = told.memory;
    if (sound.on() && voiceOn && (told.say.length > 0 || told.over.length > 0)) {
      voice.say(told.say, told.over);
    }
  }

  parts.sound.addEventListener('click', () => (sound.on() ? turnOff() : turnOn()));
  parts.voice.addEventListener('click', () => {
    voiceOn = !voiceOn;
    remember('voice', voiceOn ? 'on' : 'off');
    voiceOn ? speak() : voice.hush();
    show();
  });
  for (const kind of ['pointerup', 'keyup']) {
    addEventListener(kind, (event) => wanted && !sound.on() && !parts.sound.contains(event.target) && turnOn(), { capture: true });
  }
  document.addEventListener('visibilitychange', () => {
    sound.wake();
    notices.update(filled(now.calls));
  });
  keepAwake((next) => show((screen = next)));
  setInterval(tell, 1000);
  show();

  return function update(state, calls, unit) {
    const at = state.cook?.startedAtMs ?? null;
    aloud = (text) => spokenWords(text, unit, at);
    filled = (all) => all.map((call) => ({ ...call, title: fill(call.title, unit, at), act: fill(call.act, unit, at) }));
    now = {
      of: `${state.run}/${state.pan}/${state.cook?.number}`,
      live: state.connection === 'live',
      saying: state.status?.say ?? null,
      calls,
      reminders: state.heard ? reminders(state) : [],
      missed: state.missed.length,
    };
    sound.update(calls);
    notices.update(filled(calls));
    tell();
  };
}

/** The small place; returns update(words). */
function mountPlace(details, { hear, speak, askForNotices, learn, forget }) {
  const summary = document.createElement('summary');
  const lines = Object.fromEntries(['sound', 'voice', 'screen', 'notices', 'pedal'].map((name) => [name, document.createElement('p')]));
  Object.entries(lines).forEach(([name, p]) => (p.dataset.testid = `hands-${name}`));
  const learning = Object.assign(document.createElement('p'), { hidden: true });
  learning.setAttribute('role', 'status');
  learning.dataset.testid = 'hands-learning';
  const [three, word, ask, teach, unlearn] = [
    button('Hear the three sounds', hear),
    button('Say something', speak),
    button('Show calls as notices too', askForNotices),
    button('Learn my pedal', () => {
      learning.hidden = false;
      put(learning, 'Press the pedal now. Escape leaves it as it was.');
      learn((key) => put(learning, key === '' ? 'Nothing was changed.' : 'Learnt.'));
    }),
    button('Forget my pedal', () => {
      learning.hidden = true;
      forget();
    }),
  ];
  details.replaceChildren(summary, lines.sound, three, lines.voice, word, lines.screen, lines.notices, ask, lines.pedal, learning, teach, unlearn);

  return function update(words) {
    put(summary, words.trouble === '' ? 'Sound and voice' : `Sound and voice: ${words.trouble}`);
    Object.entries(lines).forEach(([name, p]) => put(p, words[name]));
    three.hidden = !words.on;
    word.hidden = !words.speaks;
    ask.hidden = !words.askable;
    unlearn.hidden = !words.learnt;
  };
}

function button(words, act) {
  const element = Object.assign(document.createElement('button'), { type: 'button', className: 'quiet', textContent: words });
  element.addEventListener('click', act);
  return element;
}
