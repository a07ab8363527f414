// What the page says of notes. Pure.

import { clock } from './words.js';

/** As many characters fit into a note. */
export const LONGEST = 500;

/** The notes with one more; one that is there already is not added again. */
export function withNote(notes, note) {
  return notes.some((one) => one.id === note.id) ? notes : [...notes, note];
}

/** What the folded box is called. @param {object[]} notes */
export function heading(notes) {
  return notes.length === 0 ? 'Write a note' : notes.length === 1 ? '1 note' : `${notes.length} notes`;
}

/** A note as a line, such as "17:33  skimmed twice". @param {number | null} startedAtMs */
export function line(note, startedAtMs) {
  return `${clock(note.t, startedAtMs)}  ${note.text}`;
}
