// The form that says what the jars are: first the published time is looked up and shown, then the jars go in.

import { input, labelled, make } from './elements.js';
import { steriliseWords } from './jars-words.js';

const FIELDS = [
  ['food', 'What is in the jars', [['marmalade', 'Marmalade'], ['jam', 'Jam'], ['jelly', 'Jelly'], ['other', 'Something else']]],
  ['elevation', 'How high the kitchen is, such as 1240m or 4068ft'],
  ['jar', 'Size of the jars', [
    ['half-pint', 'Half-pint (237 mL)'], ['pint', 'Pint (473 mL), or between the two'], ['smaller', 'Smaller than a half-pint'],
    ['larger', 'Larger than a pint']]],
  ['headspace', 'From the preserve to the rim', [
    ['', 'Nobody measured it'], ['1/4in', '1/4 inch (6 mm)'], ['1/8in', '1/8 inch (3 mm)'], ['1/2in', '1/2 inch (13 mm)']]],
  ['sterilised', 'Were the empty jars boiled to sterilise them?', [['no', 'No: clean and hot'], ['yes', 'Yes']]],
  ['canner', 'What they are processed in', [['boiling-water', 'Boiling water over the jars'], ['steam', 'Steam (atmospheric steam canner)']]],
  ['ph', 'How acid the preserve is: its pH, such as 3.2'],
  ['tested', 'Was the recipe tested for a boiling-water canner?', [['', 'Not known'], ['yes', 'Yes'], ['no', 'No']]],
  ['recipeTime', 'Processing time in your tested recipe, such as 10min, if it gives one'],
  ['recipeFor', 'The recipe gives that time for', [['here', 'this elevation'], ['low', 'up to 1,000 ft (305 m)']]],
];
const STEAM_ONLY = ['ph', 'tested'];

/**
 * Builds the form. Returns { element, suggest(elevation) }.
 * @param {(values: object) => Promise<{wrong: string, time: object | null}>} lookUp @param {(values: object) => Promise<string>} put
 * @param {(time: object) => HTMLElement} why shows the reasons
 */
export function buildForm(lookUp, put, why) {
  const element = make('form', {}, 'jars-form');
  const inputs = Object.fromEntries(FIELDS.map(([name, , choices]) => [name, input(`jars-${name}`, choices)]));
  const look = make('button', { type: 'submit', className: 'plain', textContent: 'Look the time up' }, 'jars-look');
  const answer = make('div', {}, 'jars-answer');
  answer.setAttribute('role', 'status');
  const count = make('input', { type: 'number', min: 1, max: 48, step: 1, value: 6, inputMode: 'numeric' }, 'jars-count');
  const counted = labelled('How many jars go in', count);
  const load = make('button', { type: 'button', className: 'big', textContent: 'The jars are in the canner' }, 'jars-put');
  const wrong = make('p', {}, 'jars-wrong');
  wrong.className = 'error';
  wrong.setAttribute('role', 'status');
  const title = Object.assign(document.createElement('h2'), { textContent: 'What goes into the canner' });
  element.append(title, ...FIELDS.map(([name, words]) => labelled(words, inputs[name])), look, wrong, answer, counted, load);

  const values = () => ({
    ...Object.fromEntries(Object.entries(inputs).map(([name, one]) => [name, one.value.trim()])),
    jars: count.value,
  });

  function forget() {
    answer.replaceChildren();
    wrong.textContent = '';
    counted.hidden = true;
    load.hidden = true;
    for (const name of STEAM_ONLY) {
      inputs[name].closest('label').hidden = inputs.canner.value !== 'steam';
    }
    inputs.recipeFor.closest('label').hidden = inputs.recipeTime.value.trim() === '';
  }

  element.addEventListener('input', (event) => event.target !== count && forget());
  element.addEventListener('submit', async (event) => {
    event.preventDefault();
    forget();
    const found = await lookUp(values());
    wrong.textContent = found.wrong;
    if (found.time) {
      const minutes = Object.assign(document.createElement('p'), { className: 'minutes', textContent: `${found.time.minutes} minutes` });
      const sterilise = Object.assign(document.createElement('p'), { textContent: steriliseWords(found.time, inputs.sterilised.value) });
      answer.append(minutes, sterilise, why(found.time));
      counted.hidden = false;
      load.hidden = false;
    }
  });
  load.addEventListener('click', async () => {
    wrong.textContent = await put(values());
    if (wrong.textContent === '') {
      forget();
    }
  });
  forget();

  return {
    element,
    suggest(elevation) {
      if (inputs.elevation.value === '') {
        inputs.elevation.value = elevation;
      }
    },
  };
}
