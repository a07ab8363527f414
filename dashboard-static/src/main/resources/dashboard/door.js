// Phones and tablets: who is let in, a code for the next one, and what this device may do itself.

import { codeWords, deviceWords, fingerprintLines, sentence } from './door-words.js';
import { put, svg } from './elements.js';

/** A device that pairs meanwhile is seen within this time. */
const AGAIN_MS = 2000;

/**
 * Mounts the view and the line that says that this device looks on. Returns update(visible), to be called with every redraw.
 * @param {HTMLElement} section the view @param {HTMLElement} looksOn the line
 */
export function mountDoor(section, looksOn) {
  const state = text('h1', 'door-state');
  state.tabIndex = -1;
  const note = text('p', 'door-note', 'note');
  const error = text('p', 'door-error', 'error');
  error.setAttribute('role', 'status');
  const live = document.createElement('div');
  live.setAttribute('aria-live', 'polite');
  live.append(state, note);
  const codes = document.createElement('div');
  codes.dataset.testid = 'door-codes';
  const list = document.createElement('ul');
  list.dataset.testid = 'door-devices';
  const back = Object.assign(document.createElement('a'), { className: 'way', href: '#pan', textContent: 'Back to the pan' });
  const first = document.createElement('p');
  first.append(back);
  section.replaceChildren(first, live, error, codes, list);

  let door = null;
  let shown = '';
  let visibleNow = false;

  async function ask(method, path, body) {
    try {
      const answer = await fetch(`api/door${path}`, { method, body: body && JSON.stringify(body), headers: body && { 'Content-Type': 'application/json' } });
      const said = await answer.json();
      put(error, answer.ok ? '' : `${said.error.charAt(0).toUpperCase()}${said.error.slice(1)}.`);
      if (answer.ok) {
        door = said;
      }
    } catch {
      put(error, visibleNow ? 'No word from Spoonfall; try again.' : '');
    }
    show();
  }

  function show() {
    document.body.dataset.role = door?.role ?? '';
    const looks = door !== null && door.role === 'viewer';
    looksOn.hidden = !looks;
    put(looksOn, looks ? 'This device looks on. Whoever cooks answers the calls.' : '');
    const says = sentence(door);
    put(state, says.state);
    put(note, says.note);
    const key = JSON.stringify(door && { ...door, code: door.code && { ...door.code, leftS: Math.ceil(door.code.leftS / 60) } });
    if (key !== shown) {
      shown = key;
      codes.replaceChildren(...codeParts());
      list.replaceChildren(...(door?.devices ?? []).map(row));
    }
  }

  function codeParts() {
    if (door === null) {
      return [];
    }
    if (!door.here) {
      const again = Object.assign(document.createElement('a'), { className: 'way', href: 'pair.html#again', textContent: 'Pair it again with another code' });
      const line = document.createElement('p');
      line.append(again);
      return [line];
    }
    if (door.network === null) {
      return [];
    }
    const words = text('p', 'door-code-state', 'note', codeWords(door.code));
    const parts = door.code.state === 'open' ? card(door, words) : [words];
    if (door.code.state === 'open') {
      parts.push(button('Take the code back', 'door-forget', 'plain', () => ask('DELETE', '/code')));
    } else {
      parts.push(
        button('A code to look on', 'door-viewer', 'big', () => ask('POST', '/code', { role: 'viewer' })),
        button('A code to cook', 'door-cook', 'plain', () => ask('POST', '/code', { role: 'cook' })),
      );
    }
    return parts;
  }

  function row(device) {
    const item = document.createElement('li');
    const name = text('strong', 'device-name', '', device.name);
    const words = text('span', 'device-words', '', deviceWords(device));
    const out = button('Shut out', 'device-out', 'quiet', () => ask('DELETE', `/devices/${device.id}`));
    out.setAttribute('aria-label', `Shut out ${device.name}`);
    item.append(name, words, out);
    return item;
  }

  ask('GET', '');
  setInterval(() => visibleNow && ask('GET', ''), AGAIN_MS);

  return function update(visible) {
    if (visible && !visibleNow) {
      ask('GET', '');
    }
    visibleNow = visible;
    section.hidden = !visible;
  };
}

/** The code with its picture, where to open the page, and what to compare. */
function card(door, howLong) {
  const { code, qr, role } = door.code;
  const parts = [text('p', 'door-for', '', role === 'viewer' ? 'For one device that looks on:' : 'For one device that may cook:'), text('p', 'door-code', 'code', code), howLong];
  if (qr) {
    parts.push(picture(qr));
  }
  const address = door.network.addresses[0];
  parts.push(text('p', 'door-way', '', address ? `Point its camera at the picture, or open ${address} and enter the code.` : 'This computer is in no network; connect it first.'));
  if (door.network.fingerprint) {
    parts.push(text('p', 'door-warns', 'basis', 'The browser will warn that it does not know this computer. Go on only if the certificate’s SHA-256 there is:'));
    parts.push(text('pre', 'door-fingerprint', '', fingerprintLines(door.network.fingerprint).join('\n')));
  }
  return parts;
}

function picture({ size, path }) {
  const drawn = svg('svg', {
    viewBox: `0 0 ${size} ${size}`,
    class: 'qr',
    role: 'img',
    'aria-label': 'The address and the code, for a camera',
    'shape-rendering': 'crispEdges',
  });
  drawn.append(svg('path', { d: path }));
  return drawn;
}

function text(tag, testid, className = '', words = '') {
  const element = document.createElement(tag);
  element.dataset.testid = testid;
  element.className = className;
  element.textContent = words;
  return element;
}

function button(words, testid, className, act) {
  const element = text('button', testid, className, words);
  element.type = 'button';
  element.addEventListener('click', act);
  return element;
}
