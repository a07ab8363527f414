package spoonfall.kitchen;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import spoonfall.afternoon.Afternoon;
import spoonfall.afternoon.Reminder;
import spoonfall.afternoon.Timeline;
import spoonfall.cook.CookStatus;
import spoonfall.words.AfternoonTeller;
import spoonfall.words.NextStep;

/**
 * The afternoon of a pan on the kitchen's clock. It goes on when the probe has left, and so has seconds of its own. Used by
 * the kitchen's thread alone.
 */
final class AfternoonBook {
    /** The undo of the new cook itself, in an afternoon in which nothing else is left to take back. */
    private static final String TEST = "test";

    private static final long NEW_COOK = 0;

    private final KitchenPlan plan;
    private @Nullable AfternoonBook before;
    private Afternoon afternoon;
    private long originNanos;
    private Instant startedAt;
    private double t;
    private double followedT = -1;
    private AfternoonView told;

    AfternoonBook(KitchenPlan plan, long originNanos) {
        this.plan = plan;
        this.originNanos = originNanos;
        afternoon = new Afternoon(plan.notes());
        startedAt = plan.startedAt().orElseGet(Instant::now);
        told = view();
    }

    /** The afternoon itself, for who wants to say something of it. */
    Afternoon afternoon() {
        return afternoon;
    }

    /** Now, in seconds of the afternoon. */
    double now(long atNanos) {
        t = Math.max(t, secondsAt(atNanos));
        return t;
    }

    /** How many seconds after the afternoon's beginning something was. */
    double secondsAt(long atNanos) {
        return (atNanos - originNanos) / 1e9;
    }

    /** A new afternoon, by the notes as the cook has them now; the old one can be had back. */
    void begin(long atNanos) {
        AfternoonBook old = new AfternoonBook(plan, originNanos);
        old.afternoon = afternoon;
        old.startedAt = startedAt;
        before = old;
        afternoon = new Afternoon(afternoon.notes());
        originNanos = atNanos;
        startedAt = plan.startedAt().orElseGet(Instant::now);
        t = 0;
        followedT = -1;
    }

    /** Begins again with a cook that an earlier run left, to be gone through once more. */
    void goOn(long cookNanos, Instant cookStartedAt) {
        before = null;
        afternoon = new Afternoon(plan.notes());
        originNanos = cookNanos;
        startedAt = cookStartedAt;
        t = 0;
        followedT = -1;
    }

    /** A set test said that it has set; nothing to do where the notes leave testing out or it was done already. */
    void testedAndSet(long atNanos) {
        boolean tests = afternoon.timeline().steps().stream()
                .anyMatch(line -> line.step().id().equals(TEST)
                        && (line.state() == Timeline.State.NOW || line.state() == Timeline.State.LATER));
        if (tests) {
            afternoon.stepDone(TEST, now(atNanos));
        }
    }

    /** Takes back; see {@link Afternoon#undo}. */
    void undo(long mark, long atNanos) {
        AfternoonBook old = before;
        if (mark == NEW_COOK && old != null && afternoon.timeline().undo().isEmpty()) {
            afternoon = old.afternoon;
            originNanos = old.originNanos;
            startedAt = old.startedAt;
            before = null;
            t = 0;
            followedT = -1;
            now(atNanos);
        } else {
            afternoon.undo(mark);
        }
    }

    /** Looks at the pan, once a second of the afternoon; what is to be said because of it. */
    List<Reminder> follow(long atNanos, Optional<CookStatus> status) {
        double nowT = now(atNanos);
        if (Math.floor(nowT) <= followedT) {
            return List.of();
        }
        followedT = Math.floor(nowT);
        afternoon.follow(nowT, status);
        return afternoon.takeReminders();
    }

    /** How it stands. */
    AfternoonView view() {
        Timeline timeline = afternoon.timeline();
        if (timeline.undo().isEmpty() && before != null) {
            Optional<Timeline.Undo> undo = Optional.of(new Timeline.Undo(NEW_COOK, "A new cook"));
            timeline = new Timeline(timeline.t(), timeline.steps(), timeline.preparations(), undo);
        }
        return new AfternoonView(startedAt, timeline, AfternoonTeller.say(timeline));
    }

    /** How it stands, if a page would be wrong without it. */
    Optional<AfternoonView> news() {
        AfternoonView now = view();
        if (!now.isNewsAfter(told)) {
            return Optional.empty();
        }
        told = now;
        return Optional.of(now);
    }

    /** What comes up, in seconds of a cook that began at {@code cookNanos}. */
    List<NextStep> comingUp(long cookNanos) {
        return AfternoonTeller.comingUp(afternoon.timeline(), secondsAt(cookNanos));
    }
}
