// Calls: the most urgent takes the top of the page, and says what else calls; what does not call is a quiet line.

import { put } from './elements.js';
import { clock, fill } from './words.js';

/** Beyond so many letters the numbers of a title are not written large, and no act is. */
const LONG_TITLE = 60;
const LONG_ACT = 90;

/**
 * Returns update(calls, unit, startedAtMs). What must be acted upon within seconds cannot be put aside here.
 * @param {(id: string) => void} acknowledge @param {(id: string) => void} putAside
 */
export function mountCall(section, acknowledge, putAside) {
  const title = document.createElement('h1');
  title.dataset.testid = 'call-title';
  const act = document.createElement('p');
  act.dataset.testid = 'call-act';
  const why = document.createElement('p');
  why.dataset.testid = 'call-why';
  const also = document.createElement('div');
  also.dataset.testid = 'call-also';
  const button = document.createElement('button');
  button.type = 'button';
  button.dataset.testid = 'acknowledge';
  button.textContent = 'On my way';
  const later = document.createElement('button');
  later.type = 'button';
  later.className = 'later';
  later.dataset.testid = 'not-now';
  later.textContent = 'Not now';
  later.title = 'Asks again in five minutes';
  let shownId = '';
  let shownAlso = '';
  later.addEventListener('click', () => putAside(shownId));
  button.addEventListener('click', () => acknowledge(shownId));
  section.addEventListener('click', (event) => {
    if (shownId !== '' && !event.target.closest('button')) {
      acknowledge(shownId);
    }
  });

  return function update(calls, unit, startedAtMs) {
    const call = calls[0];
    if (!call) {
      shownId = '';
      section.hidden = true;
      section.replaceChildren();
      return;
    }
    if (shownId !== call.id) {
      shownId = call.id;
      section.hidden = false;
      section.replaceChildren(title, act, why, also, button, ...(call.priority === 'high' || call.canWait === false ? [] : [later]));
      if (document.activeElement === document.body) {
        button.focus({ preventScroll: true });
      }
    }
    const words = titleWords(fill(call.title, unit, startedAtMs));
    put(title, words.what);
    put(why, words.why);
    const toDo = fill(call.act, unit, startedAtMs);
    put(act, toDo);
    act.dataset.length = toDo.length > LONG_ACT ? 'long' : 'short';
    const lines = calls.slice(1).map((other) => alsoWords(other, unit, startedAtMs));
    if (lines.join('\n') !== shownAlso) {
      shownAlso = lines.join('\n');
      also.replaceChildren(...lines.map((words) => line(words)));
    }
  };
}

/** A title in two where it is long: what is so, to be read from across the kitchen, and the numbers behind it. @param {string} title */
export function titleWords(title) {
  const [what, why] = title.length > LONG_TITLE ? title.split(/: (.*)/) : [title];
  return why === undefined ? { what: title, why: '' } : { what: `${what}.`, why: `${why.charAt(0).toUpperCase()}${why.slice(1)}` };
}

/** What calls as well: it must not wait unseen behind the call on top. */
export function alsoWords(call, unit, startedAtMs) {
  return `Also: ${fill(`${call.title} ${call.act}`.trim(), unit, startedAtMs)}`;
}

/**
 * Quiet lines for reminders, what stands without calling, what was put aside and what was missed. Returns update(lines,
 * unit, startedAtMs), where lines are { reminders, standing, aside, missed }.
 */
export function mountOthers(element, { acknowledge, takeBack, forgetMissed }) {
  let shown = '';

  return function update({ reminders, standing, aside, missed }, unit, startedAtMs) {
    const key = JSON.stringify([reminders, standing, aside, missed.map((alarm) => alarm.id), unit, startedAtMs]);
    if (key === shown) {
      return;
    }
    shown = key;
    const lines = reminders.map((reminder) => line(fill(reminder.text, unit, startedAtMs)));
    for (const alarm of standing) {
      const words = fill(alarm.title, unit, startedAtMs);
      const known = alarm.state === 'acknowledged';
      lines.push(known ? line(`${words} You know.`) : line(`Over, unseen: ${words}`, 'Seen', () => acknowledge(alarm.id)));
    }
    for (const alarm of aside) {
      lines.push(line(asideWords(alarm, unit, startedAtMs), 'Take back', () => takeBack(alarm.id)));
    }
    for (const alarm of missed) {
      lines.push(line(`While this page was away: ${fill(alarm.title, unit, startedAtMs)}`, 'Seen', forgetMissed));
    }
    element.replaceChildren(...lines);
  };
}

/** Such as "Put aside until 15:20: No water has left for 3 minutes." */
export function asideWords(alarm, unit, startedAtMs) {
  return `Put aside until ${clock(alarm.shelvedUntilT, startedAtMs)}: ${fill(alarm.title, unit, startedAtMs)}`;
}

function line(words, action, act) {
  const p = document.createElement('p');
  p.textContent = words;
  if (action) {
    const button = document.createElement('button');
    button.type = 'button';
    button.className = 'quiet';
    button.textContent = action;
    button.addEventListener('click', act);
    p.append(button);
  }
  return p;
}
