// The one owner of the socket: connects, listens, notices silence, connects again.

const SILENT_AFTER_MS = 3000;
const FIRST_RETRY_MS = 400;
const LAST_RETRY_MS = 4000;

/**
 * Listens to the live channel for as long as the page lives.
 * @param {(message: object) => void} onMessage
 * @param {(connection: 'live' | 'lost') => void} onConnection
 */
export function listen(onMessage, onConnection) {
  let socket = null;
  let retryMs = FIRST_RETRY_MS;
  let heardAt = performance.now();
  let retryTimer = 0;

  function connect() {
    clearTimeout(retryTimer);
    const scheme = location.protocol === 'https:' ? 'wss:' : 'ws:';
    const mine = new WebSocket(`${scheme}//${location.host}/live`);
    socket = mine;
    heardAt = performance.now();
    mine.addEventListener('message', (event) => {
      if (socket !== mine) {
        return;
      }
      heardAt = performance.now();
      retryMs = FIRST_RETRY_MS;
      const message = parsed(event.data);
      if (message !== null) {
        onMessage(message);
        onConnection('live');
      }
    });
    mine.addEventListener('close', () => {
      if (socket === mine) {
        lose();
      }
    });
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
}

function parsed(data) {
  try {
    const message = JSON.parse(data);
    return message && typeof message === 'object' ? message : null;
  } catch {
    return null;
  }
}
