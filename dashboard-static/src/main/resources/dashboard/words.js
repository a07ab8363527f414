// Temperatures, differences and clocks as the cook wants to see them. Pure.

/** @typedef {'C' | 'F'} Unit */

/** A temperature such as "98.2 °C". @param {number} celsius @param {Unit} unit */
export function temperature(celsius, unit) {
  return `${degrees(celsius, unit)} °${unit}`;
}

/** The digits of a temperature. @param {number} celsius @param {Unit} unit */
export function degrees(celsius, unit) {
  return (unit === 'F' ? celsius * 1.8 + 32 : celsius).toFixed(1);
}

/** A difference such as "2.1°". @param {number} celsius @param {Unit} unit */
export function difference(celsius, unit) {
  return `${(unit === 'F' ? celsius * 1.8 : celsius).toFixed(1)}°`;
}

/**
 * The time of day at second `t` of the cook, such as "17:33"; minutes of the cook while no clock is known.
 * @param {number} t @param {number | null} startedAtMs
 */
export function clock(t, startedAtMs) {
  if (startedAtMs === null) {
    return `${Math.floor(t / 60)} min`;
  }
  const at = new Date(startedAtMs + 1000 * t);
  return `${String(at.getHours()).padStart(2, '0')}:${String(at.getMinutes()).padStart(2, '0')}`;
}

/** How long until something, such as "in 7 min". @param {number} seconds */
export function inMinutes(seconds) {
  if (seconds < 45) {
    return 'now';
  }
  const whole = Math.max(1, Math.round(seconds / 60));
  const minutes = whole < 60 ? whole : 5 * Math.round(whole / 5);
  return minutes < 120 ? `in ${minutes} min` : `in ${Math.round(minutes / 60)} h`;
}

/**
 * How long until what is known to lie between so many minutes, such as "in 7 min" or "in 10 to 25 min", or "in more than 5 min" without a most.
 * @param {number} least @param {number | undefined} most
 */
export function inMinutesBetween(least, most) {
  if (most === undefined) {
    return least === 0 ? 'not known yet' : `in more than ${least} min`;
  }
  if (least === most) {
    return inMinutes(60 * least);
  }
  return least === 0 ? `within ${most} min` : `in ${least} to ${most} min`;
}

/**
 * A text with its marks {temp:…}, {diff:…} and {clock:…} filled in.
 * @param {string} text @param {Unit} unit @param {number | null} startedAtMs
 */
export function fill(text, unit, startedAtMs) {
  return text.replace(/\{(temp|diff|clock):(-?[0-9.]+)\}/g, (whole, kind, digits) => {
    const value = Number(digits);
    if (!Number.isFinite(value)) {
      return whole;
    }
    switch (kind) {
      case 'temp':
        return temperature(value, unit);
      case 'diff':
        return difference(value, unit);
      default:
        return clock(value, startedAtMs);
    }
  });
}
