package spoonfall.kitchen.afternoon;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import spoonfall.afternoon.Afternoon;
import spoonfall.afternoon.Reminder;
import spoonfall.afternoon.Timeline;
import spoonfall.cook.calm.CalmForecast;
import spoonfall.kitchen.cook.PanCook;
import spoonfall.kitchen.plan.KitchenPlan;
import spoonfall.kitchen.told.AfternoonView;
import spoonfall.log.Recalled;
import spoonfall.words.AfternoonTeller;
import spoonfall.words.NextStep;

/**
 * The afternoon of a pan on the kitchen's clock. It goes on when the probe has left, and so has seconds of its own. Used by
 * the kitchen's thread alone.
 */
public final class AfternoonBook {
    private static final String TEST = "test";

    /** The undo of the new cook itself, in an afternoon in which nothing else is left to take back. */
    private static final long NEW_COOK = 0;

    /** An afternoon that was over when a new cook began; whoever takes that back has it again. */
    private record Kept(Afternoon afternoon, AfternoonClock clock, AfternoonDiary.Kept diary) {}

    private final KitchenPlan plan;
    private final AfternoonDiary diary;
    private final PanCook cook;
    private final AfternoonNews news;
    private Afternoon afternoon;
    private AfternoonClock clock;
    private double followedT = -1;
    private @Nullable Kept before;
    private @Nullable Recall recall;

    /** An afternoon that begins, by the notes of the plan. */
    public AfternoonBook(KitchenPlan plan, long originNanos, AfternoonDiary diary, PanCook cook) {
        this.plan = plan;
        this.diary = diary;
        this.cook = cook;
        afternoon = new Afternoon(plan.notes());
        clock = beginningAt(originNanos);
        diary.begin(plan.notes(), clock.startedAt());
        news = new AfternoonNews(view());
    }

    private AfternoonClock beginningAt(long originNanos) {
        return new AfternoonClock(originNanos, plan.startedAt().orElseGet(Instant::now));
    }

    /** The afternoon itself. */
    public Afternoon afternoon() {
        return afternoon;
    }

    /** How many seconds after the afternoon's beginning something was. */
    public double secondsAt(long atNanos) {
        return clock.secondsAt(atNanos);
    }

    /** A new afternoon, by the notes as the cook has them now; the old one can be had back. */
    public void begin(long atNanos) {
        before = new Kept(afternoon, clock, diary.kept());
        becomes(new Afternoon(afternoon.notes()), beginningAt(atNanos));
        diary.begin(afternoon.notes(), clock.startedAt());
    }

    private void becomes(Afternoon other, AfternoonClock itsClock) {
        afternoon = other;
        clock = itsClock;
        followedT = -1;
        news.moved();
    }

    /** Begins again with a cook that an earlier run left, to be gone through once more. */
    public void goOn(long cookNanos, Instant cookStartedAt) {
        if (recalled()) {
            return;
        }
        before = null;
        becomes(new Afternoon(plan.notes()), new AfternoonClock(cookNanos, cookStartedAt));
        diary.begin(plan.notes(), cookStartedAt);
    }

    /**
     * Takes up the afternoon that an earlier run left, if there is one: it stands at its beginning until it is gone through.
     *
     * @return whether it is known what was left; else it is to be asked again
     */
    public boolean recall(long atNanos) {
        Recalled<AfternoonDiary.Left> earlier = diary.left();
        earlier.found().ifPresent(left -> {
            recall = new Recall(left.lines());
            long originNanos = atNanos - left.nowMillis() * 1_000_000L;
            becomes(new Afternoon(left.notes()), new AfternoonClock(originNanos, left.startedAt()));
        });
        return earlier.known();
    }

    /** Whether an afternoon was taken up that an earlier run left. */
    public boolean recalled() {
        return recall != null;
    }

    /** Whether somebody is in the middle of an afternoon that was taken up. */
    public boolean underWay() {
        return recalled() && timeline().steps().stream().anyMatch(line -> line.state() == Timeline.State.NOW);
    }

    /** Whatever was said before is said again by now. */
    public void caughtUp() {
        sayAgainUntil(Double.POSITIVE_INFINITY);
    }

    private void sayAgainUntil(double untilT) {
        if (recall != null && !recall.isOver()) {
            news.moved();
            recall.sayUntil(untilT, afternoon, clock);
        }
    }

    /** Somebody says something; it is written down. */
    public void say(AfternoonWord word, long atNanos) {
        news.moved();
        double nowT = clock.now(atNanos);
        word.say(afternoon, nowT);
        diary.say(nowT, word);
    }

    /** Another cook begins in the same afternoon. */
    public void forgetThePan() {
        news.moved();
        afternoon.forgetThePan();
        diary.forgetThePan(clock.latestT());
    }

    /** The wall clock was set by so many milliseconds. */
    public void clockSet(long byMillis) {
        news.moved();
        clock.wallSet(byMillis);
        Kept old = before;
        if (old != null) {
            old.clock().wallSet(byMillis);
        }
    }

    /** A set test said that it has set; nothing to do where the notes leave testing out or it was done already. */
    public void testedAndSet(long atNanos) {
        boolean tests = timeline().steps().stream()
                .anyMatch(line -> line.step().id().equals(TEST)
                        && (line.state() == Timeline.State.NOW || line.state() == Timeline.State.LATER));
        if (tests && (recall == null || recall.isOver())) {
            say(AfternoonWord.on(AfternoonWord.What.STEP_DONE, TEST), atNanos);
        }
    }

    /** Takes back; see {@link Afternoon#undo}. */
    public void undo(long mark, long atNanos) {
        Kept old = before;
        if (mark == NEW_COOK && old != null && afternoon.undo().isEmpty()) {
            becomes(old.afternoon(), old.clock());
            diary.goBackTo(old.diary(), clock.now(atNanos));
            before = null;
        } else if (afternoon.undo().filter(one -> one.mark() == mark).isPresent()) {
            news.moved();
            afternoon.undo(mark);
            diary.say(clock.now(atNanos), AfternoonWord.undo());
        }
    }

    /** Looks at the pan, once a second of the afternoon; what is to be said because of it. */
    public List<Reminder> follow(long atNanos) {
        sayAgainUntil(secondsAt(atNanos));
        double nowT = clock.now(atNanos);
        diary.alive(nowT);
        if (Math.floor(nowT) <= followedT) {
            return List.of();
        }
        followedT = Math.floor(nowT);
        news.moved();
        afternoon.follow(nowT, cook.status(), foretold(), cook.goesBack());
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
        return new AfternoonView(clock.startedAt(), timeline, AfternoonTeller.say(timeline));
    }

    /** How it stands, if a page would be wrong without it. */
    public Optional<AfternoonView> news() {
        return news.take(cook.foretold(), this::view);
    }

    /** What is to be prepared now, such as "Put the plates in the freezer". */
    public Optional<String> toPrepare() {
        return AfternoonTeller.toPrepare(timeline());
    }

    /** What comes up, in seconds of a cook that began at {@code cookNanos}. */
    public List<NextStep> comingUp(long cookNanos) {
        return AfternoonTeller.comingUp(timeline(), secondsAt(cookNanos));
    }
}
