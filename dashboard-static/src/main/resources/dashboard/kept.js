// What this browser keeps of the cook's choices. A private window keeps nothing; a choice then lasts as long as the page.

/** What was kept under a name, or null. @param {string} name */
export function remembered(name, store = () => localStorage) {
  try {
    return store().getItem(`spoonfall.${name}`);
  } catch {
    return null;
  }
}

/** Keeps a choice. @param {string} name @param {string} value */
export function remember(name, value, store = () => localStorage) {
  try {
    store().setItem(`spoonfall.${name}`, value);
  } catch {
    // nothing can be kept here
  }
}

/** The unit that was chosen last, °C before any was. @returns {import('./words.js').Unit} */
export function rememberedUnit() {
  return remembered('unit') === 'F' ? 'F' : 'C';
}
