package spoonfall.cook.monitor;

import java.util.ArrayList;
import java.util.List;
import spoonfall.cook.CookEvent;
import spoonfall.cook.settest.SetTests;

/** Words on set tests that are said again to another monitor, each when its time has come. */
public final class Retelling {
    private final List<SetTests.Said> said;
    private final CookMonitor monitor;
    private final long originNanos;
    private int next;

    Retelling(List<SetTests.Said> said, CookMonitor monitor, long originNanos) {
        this.said = said;
        this.monitor = monitor;
        this.originNanos = originNanos;
    }

    /** Says what was said before {@code atNanos}, and returns what came of it. To be called before each reading. */
    public List<CookEvent> until(long atNanos) {
        List<CookEvent> events = new ArrayList<>();
        while (next < said.size() && wordNanos(next) < atNanos) {
            events.addAll(monitor.say(said.get(next).word(), wordNanos(next)));
            next++;
        }
        return events;
    }

    private long wordNanos(int i) {
        return originNanos + said.get(i).atMillis() * 1_000_000L;
    }
}
