// The sentence, the temperature, the header and what comes up. Each mount returns an update.

import { put } from './elements.js';
import { basisWords } from './thermometer-words.js';
import { clock, degrees, difference, fill, inMinutes, inMinutesBetween, temperature } from './words.js';

/** The sentence. Returns update(saying, hidden). */
export function mountSentence(section, state, act, note) {
  return function update(saying, hidden) {
    section.hidden = hidden;
    put(state, saying.state);
    put(act, saying.act);
    put(note, saying.note);
  };
}

/** What to say, whatever is known. */
export function saying(state, unit) {
  const at = state.cook?.startedAtMs ?? null;
  if (!state.heard) {
    return state.connection === 'lost'
      ? { state: 'No word from Spoonfall.', act: 'Is it still running?', note: 'I keep trying.' }
      : { state: 'Waiting for Spoonfall.', act: '', note: '' };
  }
  if (state.connection !== 'live') {
    const status = state.status;
    const seen = status.seenC === null ? '' : `Last seen ${temperature(status.seenC, unit)}.`;
    return { state: `No word from Spoonfall since ${clock(status.t, at)}.`, act: seen, note: 'Watch the pan yourself. I keep trying.' };
  }
  const say = state.status.say;
  return { state: fill(say.state, unit, at), act: together(fill(say.act, unit, at)), note: fill(say.note, unit, at) };
}

/** The same with what says how long on one line: no break within "5 to 15 minutes", and no more, for a narrow screen would break a word. */
export function together(act) {
  return act.replace(/\d+ (?:to \d+ )?(?:minutes?|hours)/, (words) => words.replaceAll(' ', '\u00a0'));
}

/** The temperature in digits, only while it is live. Returns update(state, live, unit). */
export function mountHeat(degreesLine, rise) {
  const digits = degreesLine.querySelector('.digits');
  const sign = degreesLine.querySelector('.unit');

  return function update(state, live, unit) {
    degreesLine.hidden = !live;
    if (!live) {
      put(digits, '');
      put(rise, '');
      return;
    }
    const { temperatureC, riseC, toGoC, stage } = state.status;
    put(digits, degrees(temperatureC, unit));
    put(sign, `°${unit}`);
    const goes = stage !== 'off-the-heat' && !state.status.tests?.open && !called(state, ['scorch-risk']);
    const elsewhere = called(state, ['probe-out-of-pan', 'probe-implausible']);
    put(rise, elsewhere ? 'This is what the probe reads; the pan may be elsewhere.' : riseWords(riseC, goes ? toGoC : null, unit));
  };
}

/** Whether one of these alarms stands, answered or not. */
function called(state, names) {
  return state.alarms.some(({ alarm, state: how }) => names.includes(alarm) && how !== 'returned');
}

/** Such as "2.3° above boiling water, 2.1° to go"; nothing is to go (null) when the pan is off the heat. */
export function riseWords(riseC, toGoC, unit) {
  const where = riseC >= 0 ? 'above' : 'below';
  const place = `${difference(Math.abs(riseC), unit)} ${where} boiling water`;
  if (toGoC === null) {
    return place;
  }
  const go = toGoC > 0.05 ? `${difference(toGoC, unit)} to go` : toGoC < -0.05 ? `${difference(-toGoC, unit)} past setting` : 'at the setting point';
  return `${place}, ${go}`;
}

/** Kitchen, batch, probe and basis. Returns update(state, unit). */
export function mountHeader({ kitchen, batch, probe, basis }) {
  return function update(state, unit) {
    if (!state.heard) {
      return;
    }
    put(kitchen, state.kitchen.name || 'Spoonfall');
    put(batch, state.kitchen.batch);
    put(probe, probeWords(state));
    put(basis, basisWords(state.basis, unit));
    document.title = state.kitchen.name ? `Spoonfall · ${state.kitchen.name}` : 'Spoonfall';
  };
}

function probeWords({ probe, cook, status }) {
  const pace = cook.speed === 1 ? '' : `, ${cook.speed} times as fast`;
  const source = { demo: `simulated demo${pace}`, replay: `replay${pace}` }[cook.source];
  const where = source ?? (status?.hand ? 'thermometer read by hand' : null) ?? `probe on ${probe.place.split('/').pop()}`;
  const trouble = { waiting: 'waiting', silent: 'silent', lost: 'not there', ended: 'over' }[probe.state];
  return trouble ? `${where} · ${trouble}` : where;
}

/** What comes up. Returns update(state). */
export function mountComingUp(list, nothing) {
  let shown = '';

  return function update(state) {
    const steps = state.status?.comingUp ?? [];
    const at = state.cook?.startedAtMs ?? null;
    const rows = steps.map((step) => stepWords(step, state.status.t, at));
    const key = JSON.stringify(rows);
    nothing.hidden = steps.length > 0;
    if (key === shown) {
      return;
    }
    shown = key;
    list.replaceChildren(...rows.map(row));
  };
}

/** A line of what comes up at second `now`: [state, when, what, in how long]. @param {number | null} at when the cook began, in ms */
export function stepWords(step, now, at) {
  const [from, until] = [step.fromT, step.untilT].map((t) => (t === undefined ? '' : clock(t, at)));
  const range = from === until ? '' : `, ${from} to ${until}`;
  if (step.known === false) {
    return [step.state, '', step.text, 'not known yet'];
  }
  if (step.leastMinutes !== undefined && step.mostMinutes === undefined) {
    return [step.state, '', step.text, inMinutesBetween(step.leastMinutes, undefined)];
  }
  const how = step.leastMinutes === undefined ? inMinutes(step.t - now) : inMinutesBetween(step.leastMinutes, step.mostMinutes);
  return [step.state, clock(step.t, at), step.text + range, step.state === 'done' ? 'done' : how];
}

function row([state, when, what, how]) {
  const li = document.createElement('li');
  li.dataset.state = state;
  for (const words of [when, what, how]) {
    const span = document.createElement('span');
    span.textContent = words;
    li.append(span);
  }
  return li;
}
