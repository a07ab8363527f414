// Calls: the most urgent takes the top of the page, and says what else calls; what does not call is a quiet line.

import { put } from './elements.js';
import { clock, fill } from './words.js';

/**
 * Returns update(calls, unit, startedAtMs). What must be acted upon within seconds cannot be put aside here.
 * @param {(id: string) => void} acknowledge @param {(id: string) => void} putAside
 */
export function mountCall(section, acknowledge, putAside) {
  const title = document.createElement('h1');
  title.dataset.testid = 'call-title';
  const act = document.createElement('p');
  act.dataset.testid = 'call-act';
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
      section.replaceChildren(title, act, also, button, ...(call.priority === 'high' || call.canWait === false ? [] : [later]));
      if (document.activeElement === document.body) {
        button.focus({ preventScroll: true });
      }
    }
    put(title, fill(call.title, unit, startedAtMs));
    put(act, fill(call.act, unit, startedAtMs));
    const lines = calls.slice(1).map((other) => alsoWords(other, unit, startedAtMs));
    if (lines.join('\n') !== shownAlso) {
      shownAlso = lines.join('\n');
      also.replaceChildren(...lines.map((words) => line(words)));
    }
  };
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
