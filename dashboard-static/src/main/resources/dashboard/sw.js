// The worker of the installed page. It keeps one page, which says that Spoonfall cannot be reached; never a temperature, and never
// the page itself, so that a new build is seen at once. BUILD is put in front of this file by the service.

const SHELL = `shell-${BUILD}`;
const PAGE = '/offline.html';
const KEPT = [PAGE, '/offline.js', '/offline.css', '/mark.svg'];

addEventListener('install', (event) => {
  event.waitUntil(
    caches
      .open(SHELL)
      .then((shell) => shell.addAll(KEPT.map((path) => new Request(path, { cache: 'reload' }))))
      .then(() => skipWaiting()),
  );
});

addEventListener('activate', (event) => {
  event.waitUntil(
    caches
      .keys()
      .then((names) => Promise.all(names.filter((name) => name.startsWith('shell-') && name !== SHELL).map((name) => caches.delete(name))))
      .then(() => clients.claim()),
  );
});

addEventListener('fetch', (event) => {
  const { pathname } = new URL(event.request.url);
  if (event.request.mode === 'navigate') {
    event.respondWith(fetch(event.request).catch(() => kept(PAGE)));
  } else if (event.request.method === 'GET' && KEPT.includes(pathname)) {
    event.respondWith(fetch(event.request).catch(() => kept(pathname)));
  }
});

async function kept(path) {
  const shell = await caches.open(SHELL);
  return (await shell.match(path)) ?? Response.error();
}

// A tap on a notice brings the page to the front, or opens it.
addEventListener('notificationclick', (event) => {
  event.notification.close();
  event.waitUntil(
    clients.matchAll({ type: 'window' }).then((pages) => (pages.length > 0 ? pages[0].focus() : clients.openWindow('/'))),
  );
});
