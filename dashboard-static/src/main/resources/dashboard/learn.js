// The view of what the batches teach: a sentence, one picture, one act; and why a batch set as it did.

import { make, put } from './elements.js';
import { mountLearnPicture } from './learn-picture.js';
import { aimWords, batchWords, learnSaying, recorded, takeWords } from './learn-words.js';
import { fill } from './words.js';

/**
 * Mounts the view into its section; returns update(state, unit).
 * @param {(method: string, path: string, body?: object, heard?: (answer: object) => void) => Promise<string>} ask returns what went
 *   wrong, or '', after it has told what was answered
 */
export function mountLearn(section, ask) {
  const parts = build(section);
  const updatePicture = mountLearnPicture(parts.picture);
  let unit = 'C';
  let loaded = '';
  let all = null;
  let fruit = null;
  let why = null;

  parts.which.addEventListener('change', () => look(parts.which.value));
  parts.take.addEventListener('click', take);
  parts.recook.addEventListener('click', recook);

  async function load() {
    const wrong = await ask('GET', 'api/learn', undefined, (said) => {
      all = said;
      options();
    });
    put(parts.error, wrong);
    if (wrong === '') {
      await look(parts.which.value);
    }
    draw();
  }

  /** The fruits, the one of the latest batch chosen unless another was. */
  function options() {
    const names = [...all.fruits.map((one) => one.fruit), all.another.fruit];
    const chosen = names.includes(parts.which.value) ? parts.which.value : (all.batches[0]?.fruit ?? all.another.fruit);
    parts.which.replaceChildren(...names.map((name) => Object.assign(document.createElement('option'), { value: name, textContent: name })));
    parts.which.value = chosen;
  }

  async function look(name) {
    const wrong = await ask('GET', `api/learn?fruit=${encodeURIComponent(name)}`, undefined, (said) => {
      fruit = said;
    });
    put(parts.error, wrong);
    draw();
  }

  async function take() {
    const riseC = fruit.riseC;
    const wrong = await ask('POST', 'api/learn/target', { riseC }, () => {
      all.riseC = riseC;
    });
    put(parts.error, wrong);
    draw();
    parts.aim.focus();
  }

  async function diagnose(batch) {
    const wrong = await ask('GET', `api/learn/${batch.id}/diagnosis`, undefined, (said) => {
      why = { batch, said };
    });
    put(parts.error, wrong);
    draw();
    if (wrong === '') {
      parts.headline.focus();
    }
  }

  async function recook() {
    const { batch, said } = why;
    let wrong = await ask('POST', 'api/learn/recook', { of: batch.id });
    if (wrong === '') {
      wrong = await ask('POST', 'api/learn/target', { riseC: said.recookToC }, () => {
        all.riseC = said.recookToC;
      });
    }
    put(parts.recooked, wrong === '' ? `The cook in the pan goes on with batch ${batch.id}: their minutes at the boil count together.` : '');
    put(parts.error, wrong);
    draw();
  }

  function draw() {
    const { headline, lines } = learnSaying(fruit, unit);
    put(parts.state, headline);
    fillParagraphs(parts.lines, lines);
    updatePicture(fruit, unit);
    const shown = all !== null && fruit !== null;
    put(parts.aim, shown ? aimWords(fruit, all.riseC, unit) : '');
    const label = shown ? takeWords(fruit, all.riseC, unit) : '';
    parts.take.hidden = label === '';
    put(parts.take, label);
    fillBatches();
    fillWhy();
  }

  function fillBatches() {
    const told = all?.batches ?? [];
    parts.batches.hidden = told.length === 0;
    parts.list.replaceChildren(
      ...told.map((batch) => {
        const li = document.createElement('li');
        const words = batchWords(batch, unit);
        li.append(recorded(batch) ? make('a', { className: 'way', href: `#book/${batch.id}`, textContent: words }) : make('span', { textContent: words }));
        if (recorded(batch)) {
          const asked = make('button', { type: 'button', className: 'quiet', textContent: 'Why?' }, `learn-why-${batch.id}`);
          asked.setAttribute('aria-label', `Why? ${words}`);
          asked.addEventListener('click', () => diagnose(batch));
          li.append(asked);
        }
        return li;
      }),
    );
  }

  function fillWhy() {
    parts.why.hidden = why === null;
    if (why === null) {
      return;
    }
    const { batch, said } = why;
    put(parts.headline, `Cook ${batch.id}. ${fill(said.headline, unit, null)}`);
    parts.findings.replaceChildren(
      ...said.findings.map((finding) => {
        const li = document.createElement('li');
        li.dataset.cause = finding.cause ? 'yes' : 'no';
        li.append(Object.assign(document.createElement('span'), { textContent: fill(finding.text, unit, null) }));
        li.append(Object.assign(document.createElement('span'), { className: 'evidence', textContent: fill(finding.evidence, unit, null) }));
        return li;
      }),
    );
    fillParagraphs(parts.next, [...said.next, ...said.cautions].map((words) => fill(words, unit, null)));
    parts.recook.hidden = said.recookToC === null;
  }

  draw();
  return function update(state, wanted) {
    const about = JSON.stringify([state.connection === 'live', state.pan ?? '', state.cook?.number]);
    if (state.connection === 'live' && about !== loaded) {
      loaded = about;
      load();
    }
    if (wanted !== unit) {
      unit = wanted;
      draw();
    }
    updatePicture(fruit, unit);
  };
}

function build(section) {
  const parts = {
    state: make('h1', {}, 'learn-state'),
    lines: make('div', {}, 'learn-lines'),
    error: make('p', { className: 'error' }, 'learn-error'),
    picture: make('div', {}, 'learn-picture'),
    which: make('select', {}, 'learn-which'),
    aim: make('p', { className: 'due' }, 'learn-aim'),
    take: make('button', { className: 'big' }, 'learn-take'),
    batches: make('div', {}, 'learn-batches'),
    list: make('ul', {}, 'learn-list'),
    why: make('div', {}, 'learn-why'),
    headline: make('h2', {}, 'learn-headline'),
    findings: make('ul', {}, 'learn-findings'),
    next: make('div', {}, 'learn-next'),
    recook: make('button', { className: 'plain' }, 'learn-recook'),
    recooked: make('p', {}, 'learn-recooked'),
  };
  const back = document.createElement('p');
  back.append(Object.assign(document.createElement('a'), { className: 'way', href: '#pan', textContent: 'Back to the pan' }));
  const said = document.createElement('div');
  said.setAttribute('aria-live', 'polite');
  said.append(parts.state, parts.lines);
  for (const heading of [parts.state, parts.headline, parts.aim]) {
    heading.tabIndex = -1;
  }
  parts.error.setAttribute('role', 'status');
  parts.recooked.setAttribute('role', 'status');
  parts.picture.setAttribute('role', 'img');
  parts.picture.hidden = true;
  parts.take.type = 'button';
  parts.recook.type = 'button';
  parts.recook.textContent = 'It is in the pan again: go on with it';
  const label = document.createElement('label');
  label.append(Object.assign(document.createElement('span'), { textContent: 'Which fruit?' }), parts.which);
  const basis = make('p', { className: 'basis' }, 'learn-basis');
  basis.textContent =
    'Nothing goes by a proposal until you take it, and a set test has the last word. A target that you take counts for this pan until Spoonfall is started again; "rise" in the kitchen file keeps it.';
  parts.batches.append(Object.assign(document.createElement('h2'), { textContent: 'Your batches' }), parts.list);
  parts.why.append(parts.headline, parts.findings, parts.next, parts.recook, parts.recooked);
  section.append(back, said, label, parts.picture, parts.aim, parts.take, parts.error, parts.why, parts.batches, basis);
  return parts;
}

function fillParagraphs(element, lines) {
  element.replaceChildren(...lines.map((line) => Object.assign(document.createElement('p'), { textContent: line })));
}
