// The one owner of the socket: connects, listens, notices silence, connects again.

const SILENT_AFTER_MS = 3000;
const FIRST_RETRY_MS = 400;
const LAST_RETRY_MS = 4000;

/** The service closes the channel of a pan that is not there with this code. */
const NO_SUCH_PAN = 4404;

/** ... and that of a device that was shut out. */
const SHUT_OUT = 4403;

/**
 * Listens to the live channel for as long as the page lives. Returns follow(pan), which goes over to another pan.
 * @param {string} pan the pan to begin with; '' for the first
 * @param {(message: object) => void} onMessage
 * @param {(connection: 'live' | 'lost') => void} onConnection
 * @param {(pan: string) => void} onUnknown there is no such pan; the first is followed instead
 */
export function listen(pan, onMessage, onConnection, onUnknown) {
  let followed = pan;
  let socket = null;
  let retryMs = FIRST_RETRY_MS;
  let heardAt = performance.now();
  let retryTimer = 0;

  function connect() {
    clearTimeout(retryTimer);
    const scheme = location.protocol === 'https:' ? 'wss:' : 'ws:';
    const mine = new WebSocket(`${scheme}//${location.host}/live${followed && `?pan=${encodeURIComponent(followed)}`}`);
    socket = mine;
    heardAt = performance.now();
    mine.addEventListener('message', (event) => {
      if (socket !== mine) {
        return;
      }
      heardAt = performance.now();
      retryMs = FIRST_RETRY_MS;
      const message = parsed(event.data);
      if (message?.type === 'waiting') {
        onConnection('lost'); // as long as nobody watches the pan; to come again would not help
      } else if (message !== null) {
        onMessage(message);
        onConnection('live');
      }
    });
    mine.addEventListener('close', (event) => {
      if (socket === mine && event.code === NO_SUCH_PAN && followed) {
        onUnknown(followed);
        follow('');
      } else if (socket === mine && event.code === SHUT_OUT) {
        location.reload(); // leads to the page on which a device is let in
      } else if (socket === mine) {
        lose();
      }
    });
  }

  function follow(other) {
    if (other !== followed) {
      followed = other;
      const old = socket;
      connect();
      old?.close();
    }
  }

  function lose() {
    socket = null;
    onConnection('lost');
    clearTimeout(retryTimer);
    retryTimer = setTimeout(connect, retryMs * (0.7 + 0.6 * Math.random()));
    retryMs = Math.min(LAST_RETRY_MS, retryMs * 1.6);
  }

  setInterval(() => {
    if (socket !== null && performance.now() - heardAt > SILENT_AFTER_MS) {
      const silent = socket;
      lose();
      silent.close();
    }
  }, 500);
  addEventListener('online', () => {
    if (socket === null) {
      connect();
    }
  });
  connect();
  return follow;
}

function parsed(data) {
  try {
    const message = JSON.parse(data);
    return message && typeof message === 'object' ? message : null;
  } catch {
    return null;
  }
}
