// The rows of a recipe and what it is cooked with.

import { input, labelled, make } from './elements.js';
import { parts } from './plan-words.js';

const SETUP = [
  ['times', 'How much of it', [['1', 'As written'], ['1/2', 'Half'], ['1.5', 'One and a half times'], ['2', 'Twice'], ['3', 'Three times']]],
  ['jar', 'Jars', [['half-pint', 'Half-pint (237 mL)'], ['quarter-pint', 'Quarter-pint (118 mL)'], ['pint', 'Pint (473 mL)'], ['250mL', '250 mL'], ['370mL', '370 mL']]],
  ['pan', 'What the pan holds, such as 8L or 8qt'],
  ['kettle', 'How long a litre of cold water takes to boil in it, such as 4min'],
  ['power', 'Or the power that reaches the pan, such as 1.8kW'],
  ['ph', 'Its pH, such as 3.2, if it was measured'],
];
const BLANK = { amount: '', unit: 'g', food: '' };

/**
 * Builds the form. Returns { element, rows(), setup(), fill(rows, setup), know(foods, units), mark(place, wrong), weigh(grams) }.
 * @param {() => void} changed is told of every change
 */
export function buildPlanForm(changed) {
  const element = make('form', {}, 'plan-form');
  const list = make('ol', {}, 'plan-rows');
  const foods = make('datalist', { id: 'plan-foods' }, 'plan-foods');
  const add = make('button', { type: 'button', className: 'plain', textContent: 'Another ingredient' }, 'plan-add');
  const inputs = Object.fromEntries(SETUP.map(([name, , choices]) => [name, input(`plan-${name}`, choices)]));
  const setupTitle = Object.assign(document.createElement('h2'), { textContent: 'What it is cooked with' });
  element.append(list, add, setupTitle, ...SETUP.map(([name, words]) => labelled(words, inputs[name])), foods);
  let units = ['g', 'kg', 'cup', 'piece'];

  element.addEventListener('submit', (event) => event.preventDefault());
  element.addEventListener('input', changed);
  add.addEventListener('click', () => {
    const row = addRow(BLANK);
    row.amount.focus();
  });

  function addRow({ amount, unit, food }) {
    const li = document.createElement('li');
    const row = { amount: input('plan-amount'), unit: input('plan-unit', units.map((one) => [one, one])), food: input('plan-food') };
    Object.assign(row.amount, { value: amount, inputMode: 'decimal' });
    row.unit.value = unit;
    row.food.value = food;
    row.food.setAttribute('list', foods.id);
    const grams = make('span', {}, 'plan-grams');
    const away = make('button', { type: 'button', className: 'quiet', textContent: 'Take out' }, 'plan-away');
    li.append(labelled('Amount', row.amount), labelled('Unit', row.unit), labelled('Food', row.food), grams, away);
    li.row = row;
    away.addEventListener('click', () => {
      const next = li.nextElementSibling ?? li.previousElementSibling;
      li.remove();
      if (next) {
        next.row.amount.focus();
      } else {
        add.focus();
      }
      number();
      changed();
    });
    list.append(li);
    number();
    return row;
  }

  /** Says which row is which to those who do not see them. */
  function number() {
    [...list.children].forEach((li, i) => {
      const about = li.row.food.value.trim() || `row ${i + 1}`;
      li.querySelector('button').setAttribute('aria-label', `Take out ${about}`);
    });
  }

  list.addEventListener('input', number);

  return {
    element,
    rows: () => [...list.children].map(({ row }) => ({ amount: row.amount.value, unit: row.unit.value, food: row.food.value })),
    setup: () => Object.fromEntries(Object.entries(inputs).map(([name, one]) => [name, one.value.trim()])),
    fill(rows, setup) {
      list.replaceChildren();
      rows.forEach(addRow);
      if (rows.length === 0) {
        addRow(BLANK);
        addRow({ ...BLANK, food: 'sugar' });
      }
      for (const [name, value] of Object.entries(setup)) {
        if (name in inputs && value !== '') {
          offer(inputs[name], value);
        }
      }
    },
    know(known, knownUnits) {
      units = knownUnits;
      foods.replaceChildren(...known.map((food) => new Option('', food.food)));
    },
    mark(place, wrong) {
      [...list.children].forEach((li, i) => {
        for (const field of [li.row.amount, li.row.food]) {
          if (i === place && wrong !== '') {
            field.setAttribute('aria-invalid', 'true');
          } else {
            field.removeAttribute('aria-invalid');
          }
        }
      });
    },
    weigh(grams) {
      [...list.children].forEach((li, i) => {
        const words = grams[i] === undefined ? '' : `${Math.round(grams[i])} g`;
        const shown = li.querySelector('span[data-testid="plan-grams"]');
        if (shown.textContent !== words) {
          shown.textContent = words;
        }
      });
    },
  };
}

/** Rows from what the service keeps, whose amounts are one text. @param {{amount: string, food: string}[]} kept */
export function rowsOf(kept) {
  return kept.map(({ amount, food }) => ({ ...parts(amount), food }));
}

/** Chooses a value, and offers it if it was not among the choices. */
function offer(field, value) {
  if (field instanceof HTMLSelectElement && ![...field.options].some((option) => option.value === value)) {
    field.append(new Option(value, value));
  }
  field.value = value;
}
