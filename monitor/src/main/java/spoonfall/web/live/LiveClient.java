package spoonfall.web.live;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.OptionalLong;
import java.util.concurrent.TimeUnit;
import org.eclipse.jetty.websocket.api.Callback;
import org.eclipse.jetty.websocket.api.Session;
import org.jspecify.annotations.Nullable;

/**
 * One page on the live channel. At most one message is under way; a newer status takes the place of one that
 * waits, changes queue; a page that takes too long is cut off, so that it never slows the pan or fills memory.
 */
final class LiveClient {
    private static final int MOST_WAITING = 500;
    private static final long LONGEST_SEND_NANOS = TimeUnit.SECONDS.toNanos(10);

    private final Session session;
    private final LiveCounts counts;
    private final Deque<String> changes = new ArrayDeque<>();
    private @Nullable Status status;
    private boolean sending;
    private boolean draining;
    private long sendingSinceNanos;
    private boolean cut;

    /** A status that waits for its turn, and when the reading behind it was heard. */
    private record Status(String text, OptionalLong heardNanos) {}

    LiveClient(Session session, LiveCounts counts) {
        this.session = session;
        this.counts = counts;
    }

    /** Whether its connection is still there. */
    boolean isOpen() {
        return session.isOpen();
    }

    /** Sends something that must not be lost: a snapshot or a change. */
    synchronized void change(String text) {
        if (changes.size() >= MOST_WAITING) {
            cutOff();
            return;
        }
        changes.add(text);
        sendNext();
    }

    /** Sends a status, unless a newer one comes first. */
    synchronized void status(String text, OptionalLong heardNanos) {
        if (status != null) {
            counts.countReplaced();
        }
        status = new Status(text, heardNanos);
        if (sending && System.nanoTime() - sendingSinceNanos > LONGEST_SEND_NANOS) {
            cutOff();
        }
        sendNext();
    }

    /** A send may end before it returns; the loop, and not the stack, then takes the next one. */
    private void sendNext() {
        if (draining) {
            return;
        }
        draining = true;
        while (!sending && !cut && (!changes.isEmpty() || status != null)) {
            String change = changes.poll();
            if (change != null) {
                send(change, OptionalLong.empty());
            } else if (status != null) {
                Status next = status;
                status = null;
                send(next.text(), next.heardNanos());
            }
        }
        draining = false;
    }

    private void send(String text, OptionalLong heardNanos) {
        sending = true;
        sendingSinceNanos = System.nanoTime();
        try {
            session.sendText(text, Callback.from(() -> sent(heardNanos), this::failed));
        } catch (RuntimeException e) {
            failed(e); // a page that goes at this very moment must not trouble the pan
        }
    }

    private synchronized void sent(OptionalLong heardNanos) {
        sending = false;
        heardNanos.ifPresent(counts::countSent);
        sendNext();
    }

    private synchronized void failed(Throwable cause) {
        cut = true; // the page is gone; its own close tells the hub
    }

    private void cutOff() {
        if (!cut) {
            cut = true;
            counts.countCut();
            changes.clear();
            session.disconnect();
        }
    }
}
