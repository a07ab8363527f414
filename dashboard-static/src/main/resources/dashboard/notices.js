// Notices of the system, for calls that come while the page is in the background.

/**
 * Returns { can(), ask(), update(calls) }; can is 'yes', 'ask', 'denied' or 'none'. A call is a { id, title, act, priority } with its texts
 * filled in.
 */
export function openNotices() {
  const shown = new Map();

  function can() {
    if (!('Notification' in globalThis) || !isSecureContext) {
      return 'none';
    }
    return { granted: 'yes', denied: 'denied' }[Notification.permission] ?? 'ask';
  }

  async function show(call) {
    const options = { body: call.act, tag: call.id, icon: 'icons/icon-192.png', requireInteraction: call.priority === 'high' };
    try {
      const worker = await navigator.serviceWorker?.getRegistration();
      if (worker) {
        await worker.showNotification(call.title, options); // the only way on most phones
      } else {
        const notice = new Notification(call.title, options);
        notice.addEventListener('click', () => window.focus());
        shown.set(call.id, notice);
      }
    } catch {
      shown.delete(call.id); // it can be tried with the next call
    }
  }

  async function take(id) {
    shown.get(id)?.close?.();
    shown.delete(id);
    try {
      const worker = await navigator.serviceWorker?.getRegistration();
      (await worker?.getNotifications({ tag: id }))?.forEach((notice) => notice.close());
    } catch {
      // it goes by itself
    }
  }

  return {
    can,

    async ask() {
      try {
        await Notification.requestPermission();
      } catch {
        // the answer is in can()
      }
    },

    update(calls) {
      const standing = new Set(calls.map((call) => call.id));
      [...shown.keys()].filter((id) => !standing.has(id) || !document.hidden).forEach(take);
      if (document.hidden && can() === 'yes') {
        for (const call of calls.filter(({ id }) => !shown.has(id))) {
          shown.set(call.id, null);
          show(call);
        }
      }
    },
  };
}
