// Lets the page be installed, and opened when Spoonfall cannot be reached: a worker keeps a page that says so, and nothing else.

/** Registers the worker where browsers allow one: on this machine, or over https. Elsewhere nothing is missing but that. */
export function keepShell() {
  if (isSecureContext && navigator.serviceWorker) {
    navigator.serviceWorker.register('sw.js', { updateViaCache: 'none' }).catch(() => {
      // a private window may refuse it; the page works without
    });
  }
}
