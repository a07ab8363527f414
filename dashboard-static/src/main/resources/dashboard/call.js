// Calls: the one that needs the cook takes the top of the page; the others are quiet lines.

import { fill } from './words.js';

/** Returns update(calls, unit, startedAtMs). @param {(id: string) => void} acknowledge */
export function mountCall(section, acknowledge) {
  const title = document.createElement('h1');
  title.dataset.testid = 'call-title';
  const act = document.createElement('p');
  act.dataset.testid = 'call-act';
  const button = document.createElement('button');
  button.type = 'button';
  button.dataset.testid = 'acknowledge';
  button.textContent = 'On my way';
  let shownId = '';
  button.addEventListener('click', () => acknowledge(shownId));

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
      section.replaceChildren(title, act, button);
      if (document.activeElement === document.body) {
        button.focus({ preventScroll: true });
      }
    }
    put(title, fill(call.title, unit, startedAtMs));
    put(act, fill(call.act, unit, startedAtMs));
  };
}

/** Quiet lines for what stands without calling, and for what was missed. Returns update(standing, missed, …). */
export function mountOthers(element, acknowledge, forgetMissed) {
  let shown = '';

  return function update(standing, missed, unit, startedAtMs) {
    const key = JSON.stringify([standing, missed.map((alarm) => alarm.id), unit]);
    if (key === shown) {
      return;
    }
    shown = key;
    const lines = standing.map((alarm) =>
      alarm.state === 'acknowledged'
        ? line(`${fill(alarm.title, unit, startedAtMs)} You know.`)
        : line(`Over, unseen: ${fill(alarm.title, unit, startedAtMs)}`, 'Seen', () => acknowledge(alarm.id)),
    );
    for (const alarm of missed) {
      lines.push(line(`While this page was away: ${fill(alarm.title, unit, startedAtMs)}`, 'Seen', forgetMissed));
    }
    element.replaceChildren(...lines);
  };
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

function put(element, words) {
  if (element.textContent !== words) {
    element.textContent = words;
  }
}
