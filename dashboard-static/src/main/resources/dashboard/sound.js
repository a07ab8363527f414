// The sound of a call: tones made here, repeated while a call stands. Browsers want one tap first.

const PATTERNS = {
  high: { everyMs: 3500, tones: [880, 1174.7, 880] },
  medium: { everyMs: 7000, tones: [659.3, 880] },
  low: { everyMs: 20000, tones: [523.3] },
};

/** Owns the button; returns update(calls). */
export function mountSound(button) {
  let context = null;
  let on = false;
  let timer = 0;
  let playing = '';

  function show() {
    const words = on ? 'Sound is on' : 'Turn the sound on';
    button.textContent = words;
    button.setAttribute('aria-pressed', String(on));
  }

  async function toggle() {
    if (on) {
      on = false;
      stop();
      show();
      return;
    }
    try {
      context ??= new AudioContext();
      await context.resume();
      on = context.state === 'running';
    } catch {
      on = false;
    }
    show();
    if (on) {
      play([659.3, 880]);
    } else {
      button.textContent = 'This browser allows no sound';
    }
  }

  function play(tones) {
    tones.forEach((hertz, i) => {
      const at = context.currentTime + 0.02 + 0.22 * i;
      const tone = context.createOscillator();
      const gain = context.createGain();
      tone.type = 'triangle';
      tone.frequency.value = hertz;
      gain.gain.setValueAtTime(0, at);
      gain.gain.linearRampToValueAtTime(0.6, at + 0.02);
      gain.gain.exponentialRampToValueAtTime(0.001, at + 0.2);
      tone.connect(gain).connect(context.destination);
      tone.start(at);
      tone.stop(at + 0.21);
    });
  }

  function stop() {
    clearInterval(timer);
    playing = '';
  }

  button.addEventListener('click', toggle);
  show();

  return function update(calls) {
    const wanted = on && calls.length > 0 ? calls[0].priority : '';
    if (wanted === playing) {
      return;
    }
    stop();
    if (wanted !== '') {
      const pattern = PATTERNS[wanted] ?? PATTERNS.low;
      playing = wanted;
      play(pattern.tones);
      timer = setInterval(() => play(pattern.tones), pattern.everyMs);
    }
  };
}
