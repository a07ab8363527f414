package spoonfall.kitchen.afternoon;

import java.time.Instant;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import spoonfall.afternoon.Afternoon;
import spoonfall.afternoon.Reminder;
import spoonfall.afternoon.Timeline;
import spoonfall.cook.calm.CalmForecast;
import spoonfall.kitchen.cook.PanCook;
import spoonfall.kitchen.plan.KitchenPlan;
import spoonfall.kitchen.told.AfternoonView;
import spoonfall.log.Diary;
import spoonfall.log.Recalled;
import spoonfall.words.AfternoonTeller;
import spoonfall.words.NextStep;

/**
 * The afternoon of a pan on the kitchen's clock. It goes on when the probe has left, and so has seconds of its own. Used by
 * the kitchen's thread alone.
 */
public final class AfternoonBook {
    /** The undo of the new cook itself, in an afternoon in which nothing else is left to take back. */
    private static final String TEST = "test";

    private static final long NEW_COOK = 0;

    private static final Logger LOG = LoggerFactory.getLogger(AfternoonBook.class);

    private final KitchenPlan plan;
    private final AfternoonDiary diary;
    private final PanCook cook;
    private final Deque<Diary.Line> unsaid = new ArrayDeque<>();
    private boolean recalled;
    private @Nullable AfternoonBook before;
    private Afternoon afternoon;
    private long originNanos;
    private Instant startedAt;
    private double t;
    private double followedT = -1;
    private boolean moved;
    private Optional<CalmForecast.Shown> lastForetold = Optional.empty();
    private AfternoonView told;

    /** An afternoon that begins, by the notes of the plan. */
    public AfternoonBook(KitchenPlan plan, long originNanos, AfternoonDiary diary, PanCook cook) {
        this.plan = plan;
        this.originNanos = originNanos;
        this.diary = diary;
        this.cook = cook;
        afternoon = new Afternoon(plan.notes());
        startedAt = plan.startedAt().orElseGet(Instant::now);
        diary.begin(plan.notes(), startedAt);
        told = view();
    }

    /** The afternoon itself. */
    public Afternoon afternoon() {
        return afternoon;
    }

    /** Now, in seconds of the afternoon. */
    double now(long atNanos) {
        t = Math.max(t, secondsAt(atNanos));
        return t;
    }

    /** How many seconds after the afternoon's beginning something was. */
    public double secondsAt(long atNanos) {
        return (atNanos - originNanos) / 1e9;
    }

    /** A new afternoon, by the notes as the cook has them now; the old one can be had back. */
    public void begin(long atNanos) {
        AfternoonBook old = new AfternoonBook(plan, originNanos, diary.copy(), cook);
        old.afternoon = afternoon;
        old.startedAt = startedAt;
        before = old;
        afternoon = new Afternoon(afternoon.notes());
        originNanos = atNanos;
        startedAt = plan.startedAt().orElseGet(Instant::now);
        diary.begin(afternoon.notes(), startedAt);
        fromItsBeginning();
    }

    private void fromItsBeginning() {
        moved = true;
        t = 0;
        followedT = -1;
    }

    /** Begins again with a cook that an earlier run left, to be gone through once more. */
    public void goOn(long cookNanos, Instant cookStartedAt) {
        if (recalled) {
            return;
        }
        before = null;
        afternoon = new Afternoon(plan.notes());
        originNanos = cookNanos;
        startedAt = cookStartedAt;
        diary.begin(plan.notes(), startedAt);
        fromItsBeginning();
    }

    /**
     * Takes up the afternoon that an earlier run left, if there is one: it stands at its beginning until it is gone through.
     *
     * @return whether it is known what was left; else it is to be asked again
     */
    public boolean recall(long atNanos) {
        Recalled<AfternoonDiary.Left> earlier = diary.left();
        earlier.found().ifPresent(left -> {
            recalled = true;
            afternoon = new Afternoon(left.notes());
            originNanos = atNanos - left.nowMillis() * 1_000_000L;
            startedAt = left.startedAt();
            unsaid.addAll(left.lines());
            fromItsBeginning();
        });
        return earlier.known();
    }

    /** Whether an afternoon was taken up that an earlier run left. */
    public boolean recalled() {
        return recalled;
    }

    /** Whether somebody is in the middle of an afternoon that was taken up. */
    public boolean underWay() {
        return recalled && timeline().steps().stream().anyMatch(line -> line.state() == Timeline.State.NOW);
    }

    /** Says again what was said until then. */
    private void sayAgainUntil(double untilT) {
        while (!unsaid.isEmpty() && unsaid.getFirst().atMillis() <= untilT * 1000) {
            moved = true;
            Diary.Line line = unsaid.removeFirst();
            double lineT = line.atMillis() / 1000.0;
            t = Math.max(t, lineT);
            try {
                if (line.kind().equals(AfternoonDiary.SAID)) {
                    AfternoonWord.of(line.detail()).say(afternoon, lineT);
                } else if (line.kind().equals(AfternoonDiary.PAN_FORGOTTEN)) {
                    afternoon.forgetThePan();
                }
            } catch (IllegalArgumentException e) {
                LOG.warn("a word on the afternoon is passed over: {}", e.getMessage());
            }
        }
    }

    /** Whatever was said before is said again by now. */
    public void caughtUp() {
        sayAgainUntil(Double.POSITIVE_INFINITY);
    }

    /** Somebody says something; it is written down. */
    public void say(AfternoonWord word, long atNanos) {
        moved = true;
        word.say(afternoon, now(atNanos));
        diary.say(t, word);
    }

    /** Another cook begins in the same afternoon. */
    public void forgetThePan() {
        moved = true;
        afternoon.forgetThePan();
        diary.forgetThePan(t);
    }

    /** The wall clock was set by so many milliseconds. */
    public void clockSet(long byMillis) {
        moved = true;
        startedAt = startedAt.plusMillis(byMillis);
    }

    /** A set test said that it has set; nothing to do where the notes leave testing out or it was done already. */
    public void testedAndSet(long atNanos) {
        boolean tests = timeline().steps().stream()
                .anyMatch(line -> line.step().id().equals(TEST)
                        && (line.state() == Timeline.State.NOW || line.state() == Timeline.State.LATER));
        if (tests && unsaid.isEmpty()) {
            say(AfternoonWord.on(AfternoonWord.What.STEP_DONE, TEST), atNanos);
        }
    }

    /** Takes back; see {@link Afternoon#undo}. */
    public void undo(long mark, long atNanos) {
        AfternoonBook old = before;
        if (mark == NEW_COOK && old != null && afternoon.undo().isEmpty()) {
            afternoon = old.afternoon;
            originNanos = old.originNanos;
            startedAt = old.startedAt;
            diary.goBackTo(old.diary);
            before = null;
            fromItsBeginning();
            now(atNanos);
        } else if (afternoon.undo().filter(one -> one.mark() == mark).isPresent()) {
            moved = true;
            afternoon.undo(mark);
            diary.say(now(atNanos), AfternoonWord.undo());
        }
    }

    /** Looks at the pan, once a second of the afternoon; what is to be said because of it. */
    public List<Reminder> follow(long atNanos) {
        sayAgainUntil(secondsAt(atNanos));
        double nowT = now(atNanos);
        diary.alive(nowT);
        if (Math.floor(nowT) <= followedT) {
            return List.of();
        }
        followedT = Math.floor(nowT);
        moved = true;
        afternoon.follow(nowT, cook.status(), foretold());
        return afternoon.takeReminders();
    }

    private Timeline timeline() {
        return afternoon.timeline(foretold());
    }

    private Optional<CalmForecast.Shown> foretold() {
        return cook.foretold()
                .map(shown -> shown.later(secondsAt(cook.now().orElseThrow().originNanos())));
    }

    /** How it stands. */
    public AfternoonView view() {
        Timeline timeline = timeline();
        if (timeline.undo().isEmpty() && before != null) {
            Optional<Timeline.Undo> undo = Optional.of(new Timeline.Undo(NEW_COOK, "A new cook"));
            timeline = new Timeline(timeline.t(), timeline.steps(), timeline.preparations(), timeline.isOff(), undo);
        }
        return new AfternoonView(startedAt, timeline, AfternoonTeller.say(timeline));
    }

    /** How it stands, if a page would be wrong without it. */
    public Optional<AfternoonView> news() {
        Optional<CalmForecast.Shown> foretold = cook.foretold();
        if (!moved && foretold.equals(lastForetold)) {
            return Optional.empty(); // it is asked with every reading, and to compare all costs more than a reading
        }
        moved = false;
        lastForetold = foretold;
        AfternoonView now = view();
        if (!now.isNewsAfter(told)) {
            return Optional.empty();
        }
        told = now;
        return Optional.of(now);
    }

    /** What comes up, in seconds of a cook that began at {@code cookNanos}. */
    public List<NextStep> comingUp(long cookNanos) {
        return AfternoonTeller.comingUp(timeline(), secondsAt(cookNanos));
    }
}
