// Keeps the screen on while the page is to be seen.

/**
 * Keeps it on from now, for as long as the page lives.
 * @param {(trouble: '' | 'none' | 'refused') => void} onChange it stays on; this browser cannot; it would not just now
 */
export function keepAwake(onChange) {
  let lock = null;

  async function ask() {
    if (!navigator.wakeLock) {
      onChange('none');
      return;
    }
    if (document.visibilityState !== 'visible' || (lock && !lock.released)) {
      return;
    }
    try {
      lock = await navigator.wakeLock.request('screen');
      onChange('');
      lock.addEventListener('release', () => document.visibilityState === 'visible' && onChange('refused'));
    } catch {
      onChange('refused'); // the battery is low, or the browser's settings say no
    }
  }

  document.addEventListener('visibilitychange', ask);
  addEventListener('pointerdown', ask); // some browsers want a tap first
  ask();
}
