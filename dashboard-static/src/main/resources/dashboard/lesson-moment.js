// A moment of a lesson: the question, then what was said and done. No score is kept. Returns update(moment, asking, chosen, fillIn, name).

import { make, put } from './elements.js';
import { doneWords } from './lesson-words.js';

/** @param {(words: string) => void} choose is told what somebody would do */
export function mountMoment(place, choose) {
  place.setAttribute('aria-live', 'polite');
  const who = make('p', { className: 'basis' });
  const head = make('h2', { tabIndex: -1 }, 'lesson-question');
  const choices = make('div', { className: 'quieter' }, 'lesson-choices');
  choices.setAttribute('role', 'group');
  choices.setAttribute('aria-label', 'What would you do now?');
  const yours = make('p', {}, 'lesson-yours');
  const said = make('p', {}, 'lesson-said');
  const done = make('p', {}, 'lesson-done');
  place.append(who, head, choices, yours, said, done);
  let shown = '';

  return function update(moment, asking, chosen, fillIn, name) {
    const words = (text) => fillIn(text, moment.who);
    const key = JSON.stringify([moment, asking, chosen, moment && words(moment.title)]);
    place.hidden = moment === null;
    if (key === shown || moment === null) {
      shown = key;
      return;
    }
    shown = key;
    put(who, name ? name(moment.who) : '');
    put(head, asking ? 'What would you do now?' : words(moment.title));
    choices.hidden = !asking;
    choices.replaceChildren(...(asking ? moment.choices.map(offer) : []));
    put(yours, !asking && chosen ? `You would: ${chosen}` : '');
    put(said, !asking && moment.said !== '' ? `Spoonfall said: ${words(moment.said)}` : '');
    put(done, !asking && doneWords(moment) !== '' ? `What was done: ${words(doneWords(moment))}` : '');
  };

  function offer(words) {
    const button = make('button', { type: 'button', className: 'plain', textContent: words });
    button.addEventListener('click', () => {
      choose(words);
      head.focus();
    });
    return button;
  }
}
