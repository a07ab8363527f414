package spoonfall.announce;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * What still waits to be said: few, for old news is no news. The most urgent comes first, and of equals the oldest. When it is
 * full the oldest of the least urgent goes, so that an alarm is never lost to something that can wait.
 */
final class Waiting {
    private static final int MOST = 6;

    /** Of equals the first in the list, which is the oldest, is the least and the greatest alike. */
    private static final Comparator<Announcement> URGENCY = Comparator.comparing(Announcement::priority);

    private final List<Announcement> announcements = new ArrayList<>();
    private long dropped;

    /** Something new; wakes whoever waits in {@link #take}. */
    synchronized void add(Announcement announcement) {
        announcements.removeIf(older -> older.topic().equals(announcement.topic()));
        announcements.add(announcement);
        if (announcements.size() > MOST) {
            Announcement least = announcements.get(0);
            for (Announcement other : announcements) {
                least = URGENCY.compare(other, least) > 0 ? other : least;
            }
            announcements.remove(least);
            dropped++;
        }
        notifyAll();
    }

    /** A topic is over: whatever waits to be said of it need not be. */
    synchronized void forget(String topic) {
        announcements.removeIf(waiting -> waiting.topic().equals(topic));
    }

    /** Takes the next, as soon as there is one. */
    synchronized Announcement take() throws InterruptedException {
        while (announcements.isEmpty()) {
            wait();
        }
        Announcement next = announcements.stream().min(URGENCY).orElseThrow();
        announcements.remove(next);
        return next;
    }

    /** How many were dropped because too much was waiting. */
    synchronized long dropped() {
        return dropped;
    }
}
