// Which page the address leads to: the pan, or one of the quiet ones.

import { routeOf } from './book-words.js';
import { lessonOf } from './lesson-words.js';

/** The quiet pages, with the heading of each that is focused when it opens. */
export const HEADINGS = {
  thermometer: 'check-state',
  afternoon: 'afternoon-state',
  jars: 'jars-state',
  book: 'book-state',
  plan: 'plan-state',
  devices: 'door-state',
  learn: 'learn-state',
  lesson: 'lesson-state',
};

/** What is shown now. */
export function viewNow() {
  const named = routeOf(location.hash).book ? 'book' : lessonOf(location.hash).name;
  return named in HEADINGS ? named : 'pan';
}
