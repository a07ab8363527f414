// What the view of the phones and tablets says. Pure.

/** Below this a code has hardly a minute left. */
const LAST_S = 60;

const MAY = { viewer: 'looks on', cook: 'may do what this page does' };

/** The sentence of the view: { state, note }. @param {object | null} door what GET api/door said; null before it was heard */
export function sentence(door) {
  if (door === null) {
    return { state: 'Looking who is let in.', note: '' };
  }
  if (!door.here) {
    const note = door.role === 'viewer' ? 'It looks on: it sees and hears all, and changes nothing.' : 'It may do what the page on the kitchen’s computer does.';
    return { state: `This device is “${door.name}”.`, note };
  }
  if (door.network === null) {
    return { state: 'Only this computer sees Spoonfall.', note: 'To let phones and tablets in, start it with: spoonfall serve … --lan' };
  }
  const count = door.devices.length;
  const state = count === 0 ? 'No phone or tablet is let in yet.' : count === 1 ? 'One device is let in.' : `${count} devices are let in.`;
  return { state, note: door.network.secure ? '' : 'Without TLS everybody in this network can read what they see, and take their place.' };
}

/** How the code stands, in one sentence; '' while there is none. @param {object} code the code of the door */
export function codeWords(code) {
  switch (code.state) {
    case 'open':
      return code.leftS < LAST_S ? 'It works for less than a minute, once.' : `It works for ${Math.ceil(code.leftS / 60)} minutes, once.`;
    case 'used':
      return 'The code was used, and works no more.';
    case 'expired':
      return 'The code’s time is up. Make a new one when the device is at hand.';
    case 'guessed':
      return 'The code was entered wrongly ten times and works no more. If that was not you, somebody in this network is guessing.';
    default:
      return '';
  }
}

/** What a device may do and since when, such as "looks on, since 25 Nov". @param {object} device */
export function deviceWords(device, locale) {
  const day = new Date(device.pairedAtMs).toLocaleDateString(locale, { day: 'numeric', month: 'short' });
  return `${MAY[device.role]}, since ${day}`;
}

/** The fingerprint in lines of eight pairs, as people compare it. @param {string} fingerprint */
export function fingerprintLines(fingerprint) {
  const pairs = fingerprint.split(':');
  return [0, 8, 16, 24].map((from) => pairs.slice(from, from + 8).join(':')).filter((line) => line !== '');
}
