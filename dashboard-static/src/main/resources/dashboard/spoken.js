// What is worth saying aloud, and when. Pure: (memory, what is so now) -> what to say, and the memory afterwards.

import { clock } from './words.js';

const MARK = /\{(temp|diff|clock):(-?[0-9.]+)\}/g;
const WHEN = /in about (?:a|(\d+)) minutes?|(?:in (\d+) to|within) (\d+) minutes|in (more) than \d+ minutes|any moment now/;
const WORTH_SAYING = [2, 5, 10];

/** An urgent call that nobody answers is said again after so long. */
const AGAIN_MS = 65_000;

/** A connection that is gone for so long is worth a word. */
const LOST_FOR_MS = 5_000;

/** After so long without a word the page was asleep, or alone. */
const ASLEEP_MS = 10_000;

/**
 * A text for a voice: "{temp:100.4}" becomes "100.4 degrees".
 * @param {string} text @param {'C' | 'F'} unit @param {number | null} startedAtMs
 */
export function spokenWords(text, unit, startedAtMs) {
  const filled = text.replace(MARK, (whole, kind, digits) => {
    const value = Number(digits);
    if (!Number.isFinite(value)) {
      return whole;
    }
    switch (kind) {
      case 'temp':
        return degreesAloud(unit === 'F' ? value * 1.8 + 32 : value);
      case 'diff':
        return degreesAloud(unit === 'F' ? value * 1.8 : value);
      default:
        return clock(value, startedAtMs);
    }
  });
  return filled.replace(/(-?\d+(?:\.\d+)?) ?°[CF]?/g, (whole, digits) => degreesAloud(Number(digits)));
}

function degreesAloud(value) {
  const digits = value.toFixed(1).replace(/\.0$/, '');
  return `${digits} ${digits === '1' ? 'degree' : 'degrees'}`;
}

/** Nothing was said or heard yet. */
export function untold() {
  return { of: null, heardAtMs: -Infinity, lostAtMs: null, live: false, called: {}, reminded: [], what: null, leftMinutes: Infinity };
}

/**
 * What to say now: { memory, say: [{ text, topic, priority }], over: [topic] }. After a time away (asleep, not connected) it is one sentence,
 * whatever was missed.
 * @param {{ of: string, live: boolean, saying: object | null, calls: object[], reminders: object[], missed: number }} now `of` names pan and cook, of which what stands already is no
 *   news; texts have marks
 * @param {(text: string) => string} aloud makes words of a text
 * @param {number} nowMs a clock that never jumps
 */
export function worthSaying(memory, now, aloud, nowMs) {
  if (!now.live || now.saying === null) {
    return lost(memory, nowMs);
  }
  const away = nowMs - memory.heardAtMs > ASLEEP_MS;
  const calls = calling(memory, now.calls, aloud, nowMs);
  const sentence = newSentence(memory, now.saying);
  const another = memory.of !== now.of;
  const reminders = another ? [] : now.reminders.filter((reminder) => !memory.reminded.includes(keyOf(reminder)));
  const next = {
    of: now.of,
    heardAtMs: nowMs,
    lostAtMs: null,
    live: true,
    called: calls.called,
    reminded: now.reminders.map(keyOf),
    what: sentence.what,
    leftMinutes: sentence.leftMinutes,
  };
  const over = ['connection', ...Object.keys(memory.called).filter((id) => !(id in calls.called))];
  if (away) {
    return { memory: next, say: summary(memory, now, aloud), over };
  }
  const say = [...calls.say, ...reminders.map((reminder) => ({ topic: reminder.reminder, priority: 'low', text: aloud(reminder.text) }))];
  if (now.calls.length > 0) {
    over.push('sentence');
  } else if (sentence.news && !another) {
    say.push({ topic: 'sentence', priority: 'low', text: aloud(wholeSentence(now.saying)) });
  }
  return { memory: next, say, over };
}

/** Said once, and only when it is no mere blink. */
function lost(memory, nowMs) {
  const lostAtMs = memory.live ? nowMs : memory.lostAtMs;
  const said = lostAtMs !== null && nowMs - lostAtMs >= LOST_FOR_MS;
  const say = said ? [{ topic: 'connection', priority: 'high', text: 'No word from Spoonfall. Watch the pan yourself.' }] : [];
  return { memory: { ...memory, live: false, lostAtMs: said ? null : lostAtMs }, say, over: ['sentence', ...Object.keys(memory.called)] };
}

function calling(memory, calls, aloud, nowMs) {
  const called = {};
  const say = [];
  for (const call of calls) {
    const before = memory.called[call.id];
    const again = call.priority === 'high' && nowMs - before >= AGAIN_MS;
    called[call.id] = before === undefined || again ? nowMs : before;
    if (before === undefined || again) {
      say.push({ topic: call.id, priority: call.priority, text: aloud(callText(call)) });
    }
  }
  return { called, say };
}

/** One sentence for a page that comes back, or opens: the call that stands, or else what was missed, or what to do. */
function summary(memory, now, aloud) {
  const more = now.calls.length - 1;
  if (more >= 0) {
    const others = more === 0 ? '' : more === 1 ? ' One more call waits on the page.' : ` ${more} more calls wait on the page.`;
    return [{ topic: now.calls[0].id, priority: now.calls[0].priority, text: aloud(callText(now.calls[0])) + others }];
  }
  if (memory.heardAtMs === -Infinity) {
    return [];
  }
  const missed = now.missed > 0 ? 'Something was called while this page was away; the page says what. ' : '';
  return [{ topic: 'sentence', priority: 'low', text: missed + aloud(wholeSentence(now.saying)) }];
}

/** The sentence is news when what to do changes, and when ten, five and two minutes are left. */
function newSentence(memory, saying) {
  const matters = saying.act || saying.state;
  const what = matters.replace(WHEN, '…');
  const left = minutesLeft(matters);
  const same = what === memory.what;
  const leftMinutes = same ? Math.min(left, memory.leftMinutes) : left;
  return { what, leftMinutes, news: !same || left < memory.leftMinutes };
}

/** The least of the minutes worth saying that are not below those of the sentence; of a range its middle counts. */
function minutesLeft(matters) {
  const [found, about, low, high, open] = WHEN.exec(matters) ?? [];
  if (found === undefined || open !== undefined) {
    return Infinity;
  }
  const minutes = high === undefined ? Number(about ?? 1) : (Number(low ?? 0) + Number(high)) / 2;
  return WORTH_SAYING.find((worth) => minutes <= worth) ?? Infinity;
}

function callText(call) {
  return `${call.title} ${call.act}`.trim();
}

function wholeSentence(saying) {
  return `${saying.state} ${saying.act}`.trim();
}

function keyOf(reminder) {
  return `${reminder.reminder} ${reminder.t}`;
}
