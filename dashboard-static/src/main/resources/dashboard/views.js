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

/** Shows the pan or a quiet page; a call stays on top of each, and the door shows itself. */
export function showView(view) {
  for (const section of document.querySelectorAll('.heat, .picture, .next')) {
    section.hidden = view !== 'pan';
  }
  if (view !== 'pan') {
    document.querySelector('[data-testid="sentence"]').hidden = true;
  }
  for (const section of document.querySelectorAll('main > .view')) {
    section.hidden = section.dataset.testid !== view;
  }
}
