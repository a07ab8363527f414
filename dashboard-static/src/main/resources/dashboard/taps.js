// Taps of sticky fingers on a page that moves: a line that grows by a word between a finger's going down and its coming up again
// must not take the button away from beneath it, or nothing is tapped, or its neighbour.

/** What strays further while it is down is no tap. */
const STRAYS_PX = 30;

/** A click so soon after a finger came up is what the browser makes of that tap, by whatever lies there now. */
const SAME_TAP_MS = 500;

/**
 * Acts on what a finger, a pen or a mouse went down on, once it comes up again, and on clicks that none of them made.
 * @param {HTMLElement} area whose buttons these are @param {(button: HTMLButtonElement) => void} act
 */
export function onTaps(area, act) {
  const downs = new Map();
  let upAt = Number.NEGATIVE_INFINITY;

  // Whose coming up was never heard of (another window took it) is not down any more when it goes down again.
  addEventListener('pointerdown', (event) => downs.delete(event.pointerId), true);
  area.addEventListener('pointerdown', (event) => {
    const button = event.target.closest('button');
    if (button && !button.disabled && event.button === 0 && !event.ctrlKey) {
      downs.set(event.pointerId, { button, x: event.clientX, y: event.clientY });
    }
  });
  addEventListener('pointercancel', (event) => downs.delete(event.pointerId));
  addEventListener('pointerup', (event) => {
    const down = downs.get(event.pointerId);
    downs.delete(event.pointerId);
    if (down) {
      upAt = event.timeStamp;
      const strays = Math.hypot(event.clientX - down.x, event.clientY - down.y) > STRAYS_PX;
      if (!strays && down.button.isConnected && !down.button.disabled) {
        act(down.button);
      }
    }
  });
  area.addEventListener('click', (event) => {
    const button = event.target.closest('button');
    if (button && (event.detail === 0 || event.timeStamp - upAt > SAME_TAP_MS)) {
      act(button);
    }
  });
}
