// One big act at a time: a tap anywhere on a call, the space bar or a foot pedal answers it, once.

import { remember, remembered } from './kept.js';

/** What arrives so soon after an answer is the same tap again, or the same foot. */
const TWICE_MS = 800;

/** What pedals and page turners type unless they were taught otherwise. */
const USUAL = [' ', 'Enter', 'PageDown', 'PageUp', 'ArrowRight', 'ArrowDown'];

const CONTROLS = 'a, button, summary';

/** Keys that belong to the control that has the keyboard's focus. */
const OF_CONTROLS = [' ', 'Enter'];

/** Keys that no pedal can be, for they lead around the page or are held with others. */
const NO_PEDAL = ['Tab', 'Shift', 'Control', 'Alt', 'Meta', 'AltGraph', 'CapsLock', 'Dead', 'Process', 'Unidentified'];

/** Returns once(act): the act, but for a tap that arrives twice, which would answer the next call unseen. */
export function oncePerTap(nowMs = () => performance.now()) {
  let actedAtMs = -Infinity;
  return (act) => (id) => {
    if (nowMs() - actedAtMs >= TWICE_MS) {
      actedAtMs = nowMs();
      act(id);
    }
  };
}

/**
 * Guards an act on a call against being done twice for the same call at once, whichever ways lead to it; another call is acted on.
 * @param {(id: string) => void} act @param {() => number} nowMs
 */
export function oncePerCall(act, nowMs = () => performance.now()) {
  let lastId = '';
  let actedAtMs = -Infinity;
  return (id) => {
    if (id !== lastId || nowMs() - actedAtMs >= TWICE_MS) {
      lastId = id;
      actedAtMs = nowMs();
      act(id);
    }
  };
}

/** Whether a key answers a call: a usual one, or the one that was learnt. @param {string} key @param {string} learnt '' for none */
export function answers(key, learnt) {
  return USUAL.includes(key) || (learnt !== '' && key === learnt);
}

/** Whether a key can be a pedal's. */
export function canBePedal(key) {
  return !NO_PEDAL.includes(key) && key !== 'Escape';
}

/** How a key is called. */
export function keyName(key) {
  return { ' ': 'Space', PageDown: 'Page Down', PageUp: 'Page Up', ArrowRight: 'Arrow Right', ArrowDown: 'Arrow Down' }[key] ?? key;
}

/**
 * Listens to the keys. Returns { learnt(), learn(done), forget() }; done(key) is told the key, or '' when Escape ended it.
 * @param {() => object | undefined} topCall the call that stands on top, if any
 * @param {(id: string) => void} answer
 */
export function listenToKeys(topCall, answer) {
  let learnt = remembered('pedal') ?? '';
  const once = oncePerTap();
  const [answerOnce, press] = [once(answer), once((button) => button.click())];
  let learning = null;
  let taken = '';

  function learn(event) {
    event.preventDefault();
    if (event.key !== 'Escape' && !canBePedal(event.key)) {
      return;
    }
    if (event.key !== 'Escape') {
      learnt = event.key;
      remember('pedal', learnt);
    }
    const done = learning;
    learning = null;
    done(event.key === 'Escape' ? '' : learnt);
  }

  addEventListener('keydown', (event) => {
    if (event.ctrlKey || event.altKey || event.metaKey) {
      return;
    }
    if (learning !== null) {
      learn(event);
      return;
    }
    const call = topCall();
    if (!answers(event.key, learnt) || wantedElsewhere(event.key)) {
      return;
    }
    if (call) {
      event.preventDefault();
      taken = event.key;
      if (!event.repeat) {
        answerOnce(call.id);
      }
    } else if ((event.key === learnt || OF_CONTROLS.includes(event.key)) && !event.repeat) {
      const button = theOneAct();
      if (button) {
        event.preventDefault();
        taken = event.key;
        press(button);
      }
    }
  });

  // Some browsers press a button when the space bar comes up again, whatever became of its going down.
  addEventListener('keyup', (event) => {
    if (event.key === taken) {
      event.preventDefault();
    }
    taken = '';
  });

  // After a tap the keys are for calls again; whoever goes by the keyboard stays where they are.
  addEventListener('click', (event) => event.detail > 0 && event.target.closest(CONTROLS)?.blur());

  return {
    learnt: () => learnt,
    learn(done) {
      learning = done;
    },
    forget() {
      learning = null;
      learnt = '';
      remember('pedal', '');
    },
  };
}

/** Without a call a key does the one big act of the view, which is marked as such. */
function theOneAct() {
  return [...document.querySelectorAll('[data-one-act]')].find((each) => !each.disabled && each.offsetParent !== null);
}

/** Whether something else has the keyboard: a field to type in, or a control that was reached by the keyboard. */
function wantedElsewhere(key) {
  const element = document.activeElement;
  if (!element || element === document.body || element.matches('[data-testid="acknowledge"]')) {
    return false;
  }
  if (element.matches('input, select, textarea, [contenteditable]')) {
    return true;
  }
  return OF_CONTROLS.includes(key) && element.matches(CONTROLS);
}
