// The page on which a device is let in: a code, a name, one tap.

import { codeIn, missing, tidy } from './pair-words.js';

const part = (name) => document.querySelector(`[data-testid="${name}"]`);
const [form, code, name, answer, act] = ['form', 'code', 'name', 'answer', 'act'].map((each) => part(`pair-${each}`));

/** Behind the address when a device that is let in wants another code. */
const AGAIN = '#again';

async function enter() {
  answer.textContent = missing(code.value, name.value);
  if (answer.textContent !== '') {
    return;
  }
  act.disabled = true;
  try {
    const body = JSON.stringify({ code: tidy(code.value), name: name.value });
    const said = await fetch('/api/door/pair', { method: 'POST', headers: { 'Content-Type': 'application/json' }, body });
    if (said.ok) {
      location.replace('/');
      return;
    }
    const words = String((await said.json()).error);
    answer.textContent = `${words.charAt(0).toUpperCase()}${words.slice(1)}.`;
  } catch {
    answer.textContent = 'No word from Spoonfall; try again.';
  }
  act.disabled = false;
}

/** A browser that came from another site brings its cookie only now: who is let in goes on. */
async function goOnIfLetIn() {
  const asked = await fetch('/api/door').catch(() => null);
  if (asked?.ok) {
    location.replace('/');
  }
}

form.addEventListener('submit', (event) => {
  event.preventDefault();
  enter();
});
code.value = codeIn(location.hash);
if (code.value === '' && location.hash !== AGAIN) {
  goOnIfLetIn();
}
history.replaceState(null, '', location.pathname); // the code is nothing for the browser's history
(code.value === '' ? code : name).focus();
