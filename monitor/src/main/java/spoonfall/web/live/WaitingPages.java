package spoonfall.web.live;

import java.util.OptionalLong;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import org.eclipse.jetty.util.thread.Scheduler;

/**
 * Pages whose pan does not answer yet, since a long cook is gone through again after a restart. They are told that they wait, so that
 * neither they nor their connection give up: a thousand that come again every three seconds would only make it longer.
 */
final class WaitingPages {
    private static final String WAITING = "{\"type\":\"waiting\"}";

    /** Before a page takes silence for the end of the service, three seconds after it came. */
    private static final long FIRST_MILLIS = 1500;

    private static final long AGAIN_MILLIS = 1000;

    private final Supplier<Scheduler> scheduler;

    /** Pages that are told by this scheduler. */
    WaitingPages(Supplier<Scheduler> scheduler) {
        this.scheduler = scheduler;
    }

    /** A page waits from now on, until what is returned is run. */
    Runnable begin(LiveClient page) {
        Waiting waiting = new Waiting(page);
        waiting.later(FIRST_MILLIS);
        return () -> waiting.over = true;
    }

    /** One of them. */
    private final class Waiting implements Runnable {
        private final LiveClient page;
        private volatile boolean over;

        private Waiting(LiveClient page) {
            this.page = page;
        }

        private void later(long millis) {
            scheduler.get().schedule(this, millis, TimeUnit.MILLISECONDS);
        }

        @Override
        public void run() {
            if (!over && page.isOpen()) {
                page.status(WAITING, OptionalLong.empty());
                later(AGAIN_MILLIS);
            }
        }
    }
}
