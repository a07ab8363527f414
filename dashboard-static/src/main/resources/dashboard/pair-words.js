// What a device knows when it comes to be paired. Pure.

const CODE = /^[0-9A-Z]{8}$/;

/** A code as it is sent: capitals, without blanks and hyphens. @param {string} typed */
export function tidy(typed) {
  return typed.replace(/[\s-]/g, '').toUpperCase();
}

/** The code that the picture put behind the address, or ''. @param {string} hash */
export function codeIn(hash) {
  const code = tidy(hash.slice(1));
  return CODE.test(code) ? `${code.slice(0, 4)}-${code.slice(4)}` : '';
}

/** What is missing before it can be sent, or ''. @param {string} code @param {string} name */
export function missing(code, name) {
  if (!CODE.test(tidy(code))) {
    return 'The code has eight letters and digits.';
  }
  return name.trim() === '' ? 'Give this device a name.' : '';
}
