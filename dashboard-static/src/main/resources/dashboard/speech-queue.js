// What still waits to be spoken: few, for old news is no news. Pure.

const MOST = 4;
const URGENCY = { high: 0, medium: 1, low: 2 };

/** The same sentence is not said again within this time. */
const SAME_MS = 60_000;

/** What waited longer than this is not said any more, unless it is urgent. */
const STALE_MS = 30_000;

/** Nothing waits and nothing was said. */
export function quiet() {
  return { waiting: [], said: {} };
}

/** With something more to say: { topic, priority, text }. What waits of the same topic goes; when full, the oldest of the least urgent. */
export function withSaying(queue, saying, nowMs) {
  const waiting = [...queue.waiting.filter((other) => other.topic !== saying.topic), { ...saying, sinceMs: nowMs }];
  if (waiting.length > MOST) {
    const least = waiting.reduce((a, b) => (URGENCY[b.priority] > URGENCY[a.priority] ? b : a));
    waiting.splice(waiting.indexOf(least), 1);
  }
  return { ...queue, waiting };
}

/** Without what waits of a topic that is over. */
export function withoutTopic(queue, topic) {
  return { ...queue, waiting: queue.waiting.filter((other) => other.topic !== topic) };
}

/** The next to be said, or null, and the queue without it: { next, queue }. */
export function nextSaying(queue, nowMs) {
  const said = Object.fromEntries(Object.entries(queue.said).filter(([, at]) => nowMs - at < SAME_MS));
  const waiting = queue.waiting
    .filter((saying) => !(saying.text in said) && (saying.priority === 'high' || nowMs - saying.sinceMs < STALE_MS))
    .sort((a, b) => URGENCY[a.priority] - URGENCY[b.priority]);
  const [next = null, ...rest] = waiting;
  return { next, queue: { waiting: rest, said: next ? { ...said, [next.text]: nowMs } : said } };
}

/** Whether something that waits is more urgent than what is being said. */
export function mustInterrupt(queue, speaking) {
  return speaking !== null && queue.waiting.some((saying) => saying.priority === 'high' && speaking.priority !== 'high');
}
