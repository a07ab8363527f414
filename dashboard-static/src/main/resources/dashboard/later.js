// A quiet page's module is fetched when the page is first shown, or when the browser has nothing else to do: what is looked at first is there first.

/**
 * @param {() => Promise<object>} load fetches the module
 * @param {(module: object) => (...args: unknown[]) => void} mount mounts it, once, and gives its update
 * @param {() => void} [mounted] is told when it was mounted
 * @returns {(...args: unknown[]) => void} its update; what was last said before it was there is said when it is
 */
export function later(load, mount, mounted = () => {}) {
  let update = null;
  let waiting = null;
  let coming = false;

  async function come() {
    coming = true;
    try {
      update = mount(await load());
    } catch {
      coming = false; // the service was gone just then; the next draw asks again
      return;
    }
    mounted();
    if (waiting !== null) {
      update(...waiting);
    }
  }

  (globalThis.requestIdleCallback ?? ((then) => setTimeout(then, 500)))(() => coming || come());

  return function updateLater(...args) {
    if (update !== null) {
      update(...args);
      return;
    }
    waiting = args;
    if (!coming) {
      come();
    }
  };
}
