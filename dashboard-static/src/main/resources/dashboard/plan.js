// The plan of a batch: what goes in, what comes of it, and what came of it. It is worked out by the service while it is written.

import { make, put } from './elements.js';
import { remember, remembered } from './kept.js';
import { buildPlanForm, rowsOf } from './plan-form.js';
import { mountPlanPicture } from './plan-picture.js';
import { allAdvice, complete, figures, jarsFilled, planAct, planSentence, rowOf, withoutRow } from './plan-words.js';

/** Nobody wants to be told that half a word is no food. */
const PAUSE_MILLIS = 400;
const KEPT = 'plan';

/** Mounts the view. Returns update(state, unit). @param {HTMLElement} element @param {Function} ask asks the service */
export function mountPlan(element, ask) {
  const parts = build(element);
  const form = buildPlanForm(changed);
  parts.form.append(form.element);
  const updatePicture = mountPlanPicture(parts.picture);
  let plan = null;
  let unit = 'C';
  let loaded = '';
  let cook = '';
  let basis = '';
  let asked = 0;
  let jarsNow = ''; // that many are in the canner and on the shelf
  let timer = 0;

  parts.cook.addEventListener('click', async () => {
    parts.error.textContent = await askOfIt('POST', 'api/plan/cook', request());
  });
  parts.none.addEventListener('click', async () => {
    parts.error.textContent = await askOfIt('DELETE', 'api/plan/cook');
  });
  parts.filled.addEventListener('submit', async (event) => {
    event.preventDefault();
    parts.wrong.textContent = await askOfIt('POST', 'api/plan/filled', { jars: Number(parts.jars.value) });
  });

  function request() {
    const rows = complete(form.rows()).map(({ amount, unit: measure, food }) => ({ amount: amount.trim(), unit: measure, food: food.trim() }));
    return { ingredients: rows, ...form.setup() };
  }

  function changed() {
    remember(KEPT, JSON.stringify({ rows: form.rows(), setup: form.setup() }));
    clearTimeout(timer);
    timer = setTimeout(workOut, PAUSE_MILLIS);
  }

  /** Asks for the plan of what is written; of several answers the last counts. */
  async function workOut() {
    const mine = (asked += 1);
    const rows = complete(form.rows());
    if (rows.length === 0) {
      show(null, '', -1);
      return;
    }
    let answer = null;
    const wrong = await ask('POST', 'api/plan', request(), (said) => (answer = said));
    if (mine !== asked) {
      return;
    }
    const place = rows[rowOf(wrong)]?.place ?? -1;
    show(answer, withoutRow(wrong), place);
    const grams = [];
    rows.forEach((row, i) => (grams[row.place] = answer?.ingredients[i].g));
    form.weigh(grams);
  }

  function show(answer, wrong, place) {
    plan = answer;
    put(parts.error, wrong);
    form.mark(place, wrong);
    draw();
  }

  function draw() {
    put(parts.state, planSentence(plan));
    put(parts.act, planAct(plan));
    parts.cook.hidden = plan === null;
    parts.result.hidden = plan === null;
    updatePicture(plan, unit);
    fillList(parts.figures, plan === null ? [] : figures(plan, unit));
    fillAdvice(parts.advice, plan === null ? [] : allAdvice(plan));
    fillSources(parts.sources, plan?.ingredients ?? []);
  }

  /** Asks of the cook that is shown; what is answered when another is shown by then is not told. */
  function askOfIt(method, path, body, heard = told) {
    const of = cook;
    return ask(method, path, body, (said) => of === cook && heard(said));
  }

  /** What the pan has, and what it filled. */
  function told(said) {
    const has = said.batch !== null;
    put(parts.attached, has ? attachedWords(said) : '');
    parts.none.hidden = !has;
    parts.filled.hidden = !said.countable;
    if (parts.jars.value === '') {
      parts.jars.value = said.filled ?? jarsNow;
    }
    put(parts.yield, said.yield);
    put(parts.cook, has ? 'Cook this instead' : 'Cook this');
  }

  async function load() {
    await ask('GET', 'api/plan/foods', undefined, (said) => form.know(said.foods, said.units));
    await askOfIt('GET', 'api/plan', undefined, (said) => {
      if (form.rows().length === 0) {
        begin(said);
      }
      told(said);
    });
    if (form.rows().length > 0) {
      workOut();
    }
  }

  /** What this device wrote last, else what the pan has, else what the notes say. */
  function begin(said) {
    const kept = readKept();
    if (kept !== null) {
      form.fill(kept.rows, kept.setup);
    } else if (said.batch !== null) {
      form.fill(rowsOf(said.batch.ingredients), said.suggested);
    } else {
      form.fill(rowsOf(said.suggested.ingredients), said.suggested);
    }
  }

  draw();
  return function update(state, wanted) {
    jarsNow = jarsFilled(state.jars, state.cook?.startedAtMs);
    const cookNow = JSON.stringify([state.pan ?? '', state.cook?.number]);
    if (cookNow !== cook) {
      cook = cookNow;
      parts.jars.value = ''; // what another cook filled, or another pan, is no guess for this one
    }
    const about = JSON.stringify([state.connection === 'live', cook, state.status?.stage === 'off-the-heat']);
    if (state.connection === 'live' && about !== loaded) {
      loaded = about;
      load();
    }
    const now = JSON.stringify(state.basis ?? null);
    if (now !== basis) {
      basis = now;
      if (form.rows().length > 0) {
        workOut();
      }
    }
    if (wanted !== unit) {
      unit = wanted;
      draw();
    }
    updatePicture(plan, unit);
  };
}

function attachedWords({ batch, next }) {
  const { low, high, many } = batch.jars;
  return `${next ? 'The next cook' : 'The pan'} has a plan: ${batch.ingredients.length} ingredients, ${low.toFixed(1)} to ${high.toFixed(1)} ${many}.`;
}

function readKept() {
  try {
    const kept = JSON.parse(remembered(KEPT) ?? '');
    const sound = Array.isArray(kept.rows) && kept.rows.every((row) => [row.amount, row.unit, row.food].every((one) => typeof one === 'string'));
    return sound && complete(kept.rows).length > 0 ? { rows: kept.rows, setup: kept.setup ?? {} } : null;
  } catch {
    return null; // nothing was kept, or by another version
  }
}

function build(element) {
  const parts = {
    state: make('h1', {}, 'plan-state'),
    act: make('p', { className: 'due' }, 'plan-act'),
    error: make('p', { className: 'error' }, 'plan-error'),
    form: make('div', {}, 'plan-batch'),
    result: make('div', {}, 'plan-result'),
    picture: make('div', { className: 'plan-picture' }, 'plan-picture'),
    figures: make('dl', {}, 'plan-figures'),
    advice: make('ul', {}, 'plan-advice'),
    sources: make('ul', {}, 'plan-sources'),
    cook: make('button', { className: 'big' }, 'plan-cook'),
    attached: make('p', {}, 'plan-attached'),
    none: make('button', { className: 'plain' }, 'plan-none'),
    filled: make('form', {}, 'plan-filled'),
    jars: make('input', {}, 'plan-jars'),
    wrong: make('p', { className: 'error' }, 'plan-wrong'),
    yield: make('p', { className: 'due' }, 'plan-yield'),
  };
  const back = Object.assign(document.createElement('a'), { className: 'way', href: '#pan', textContent: 'Back to the pan' });
  const said = document.createElement('div');
  said.setAttribute('aria-live', 'polite');
  said.append(parts.state, parts.act);
  parts.state.tabIndex = -1;
  parts.error.setAttribute('role', 'status');
  parts.wrong.setAttribute('role', 'status');
  parts.yield.setAttribute('role', 'status');
  parts.picture.setAttribute('role', 'img');
  parts.picture.hidden = true;
  Object.assign(parts.cook, { type: 'button', textContent: 'Cook this' });
  Object.assign(parts.none, { type: 'button', textContent: 'Take the plan away', hidden: true });
  Object.assign(parts.jars, { type: 'number', min: 0, max: 500, step: 1, inputMode: 'numeric', required: true });
  const count = document.createElement('label');
  count.append(Object.assign(document.createElement('span'), { textContent: 'How many jars did you fill?' }), parts.jars);
  const say = make('button', { type: 'submit', className: 'plain', textContent: 'That many' }, 'plan-say');
  parts.filled.hidden = true;
  parts.filled.append(count, say, parts.wrong);
  const why = make('details', {}, 'plan-why');
  why.append(Object.assign(document.createElement('summary'), { textContent: 'Where the numbers come from' }), parts.sources);
  parts.result.append(parts.picture, parts.figures, parts.advice, why);
  const no = make('p', { className: 'basis' }, 'plan-no');
  no.textContent = 'Nine batches in ten lie within the ranges. This plans your own recipe. It makes none up, and it knows no processing time: your tested recipe and the jars page do.';
  const wrap = document.createElement('p');
  wrap.append(back);
  const batch = document.createElement('div');
  batch.append(parts.form, parts.cook);
  const both = make('div', { className: 'plan-both' }, 'plan-both');
  both.append(batch, parts.result);
  element.append(wrap, said, parts.yield, parts.filled, parts.attached, parts.none, parts.error, both, no);
  return parts;
}

function fillList(list, rows) {
  list.replaceChildren(
    ...rows.flatMap(([what, words]) => [
      Object.assign(document.createElement('dt'), { textContent: what }),
      Object.assign(document.createElement('dd'), { textContent: words }),
    ]),
  );
}

function fillAdvice(list, advice) {
  list.replaceChildren(
    ...advice.map(({ id, warns, text, source }) => {
      const li = document.createElement('li');
      li.dataset.id = id;
      li.dataset.warns = warns ? 'yes' : 'no';
      const by = Object.assign(document.createElement('span'), { className: 'source', textContent: source });
      li.append(Object.assign(document.createElement('span'), { textContent: warns ? `Take care. ${text}` : text }), by);
      return li;
    }),
  );
}

function fillSources(list, ingredients) {
  list.replaceChildren(
    ...ingredients.map(({ amount, food, g, waterG, solidsG, source }) =>
      Object.assign(document.createElement('li'), {
        textContent: `${amount} ${food}: ${Math.round(g)} g, ${Math.round(waterG)} g of it water, ${Math.round(solidsG)} g dissolves. ${source}`,
      }),
    ),
  );
}
