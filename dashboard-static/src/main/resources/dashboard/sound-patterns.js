// How a call sounds: what differs is the number of tones, their height, their pace and their colour, so that one tells them apart
// from another room. Pure.

/** A tone: hertz, when it begins and how long it lasts, both in seconds. */
const tone = (hertz, atS, forS) => ({ hertz, atS, forS });

/** By priority: the colour of the tones, the tones of one call, and after how long it sounds again. */
export const PATTERNS = {
  high: {
    wave: 'square',
    loud: 0.35,
    everyMs: 3500,
    tones: [0, 1, 2, 3, 4, 5].map((i) => tone(i % 2 === 0 ? 1174.7 : 880, 0.13 * i, 0.11)),
  },
  medium: { wave: 'triangle', loud: 0.6, everyMs: 7000, tones: [tone(659.3, 0, 0.35), tone(880, 0.4, 0.35)] },
  low: { wave: 'sine', loud: 0.6, everyMs: 20000, tones: [tone(392, 0, 1.1)] },
};

/** What says that the sound works. */
export const WORKS = { ...PATTERNS.medium, tones: [tone(659.3, 0, 0.18), tone(880, 0.22, 0.18)] };

/** The pattern of a priority; one that is not known is taken for the calmest. */
export function patternOf(priority) {
  return PATTERNS[priority] ?? PATTERNS.low;
}
