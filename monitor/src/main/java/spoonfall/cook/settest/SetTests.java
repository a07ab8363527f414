package spoonfall.cook.settest;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import spoonfall.alarm.Condition;
import spoonfall.cook.AlarmName;
import spoonfall.cook.CookEvent;
import spoonfall.cook.CookSettings;
import spoonfall.cook.SetTest;
import spoonfall.cook.Stage;
import spoonfall.cook.TestChange;
import spoonfall.cook.TestWord;
import spoonfall.cook.alarm.AlarmBoard;
import spoonfall.cook.alarm.AlarmText;
import spoonfall.settest.SetTestPlan;

/** The set tests of one cook, what they taught, and what must not be called because of them. */
public final class SetTests {
    /** So long after an answer the pan is on its way back to the boil, in seconds; what cools on is not on the heat. */
    private static final double BACK_S = 120;

    /** So long after an answer nobody can test again, in seconds. */
    private static final double SETTLE_S = 30;

    /** A pan that has not fallen below its boil for so long, in seconds, is on the heat. */
    private static final double BOILS_ON_S = 45;

    /** A pan that is not back at the boil so long after an answer, in seconds, is not coming back by itself. */
    private static final double NEVER_BACK_S = 240;

    /** The next call comes so long before the next test is due, in seconds: somebody must hear it and come. */
    private static final double CALL_AHEAD_S = 27;

    private static final double LEAST_AHEAD_C = 0.05;
    private static final double MOST_AHEAD_C = 0.4;

    private final CookSettings settings;
    private final List<SetTest> tests = new ArrayList<>();
    private final List<Said> said = new ArrayList<>();
    private final Set<String> undone = new HashSet<>();
    private SetTestPlan plan;
    private boolean paused;
    private double backSinceT = Double.NaN;

    /** It boiled again since the latest answer. */
    private boolean wentBack;

    private double aheadC = LEAST_AHEAD_C;

    /** A word and when it was said, in milliseconds of the cook. */
    public record Said(long atMillis, TestWord word) {}

    /** What the pan is at one instant, and how fast it climbs while it boils; empty where it is not known. */
    public record Pan(OptionalDouble temperatureC, OptionalDouble solids, OptionalDouble perMinC) {}

    /** With none taken yet, aimed at what the settings say. */
    public SetTests(CookSettings settings) {
        this.settings = settings;
        plan = SetTestPlan.of(settings.riseC());
    }

    /** Takes note of a word; says what it changed, if anything. */
    public Optional<CookEvent.TestChanged> say(double t, long atMillis, TestWord word, Pan pan) {
        said.add(new Said(atMillis, word));
        Optional<CookEvent.TestChanged> changed = switch (word.says()) {
            case BEGUN -> begin(t, word, pan);
            case SEEN -> seen(t, word, pan);
            case UNSEEN -> takeBackTheAnswer(t, word);
            case UNDONE -> undo(t, word);
        };
        plan = learnt();
        return changed;
    }

    private Optional<CookEvent.TestChanged> begin(double t, TestWord word, Pan pan) {
        if (now().isPresent() || set() || known(word.id())) {
            return Optional.empty();
        }
        double boilC = settings.waterBoil().temperatureC();
        OptionalDouble riseC = pan.temperatureC().isPresent()
                ? OptionalDouble.of(pan.temperatureC().getAsDouble() - boilC)
                : OptionalDouble.empty();
        SetTest test =
                new SetTest(word.id(), t, word.plateS(), pan.temperatureC(), riseC, pan.solids(), Optional.empty());
        tests.add(test);
        paused = true;
        return Optional.of(new CookEvent.TestChanged(t, TestChange.BEGUN, test));
    }

    /** An answer is to the test that goes on, whatever its name; without one it is to a test that took no time. */
    private Optional<CookEvent.TestChanged> seen(double t, TestWord word, Pan pan) {
        if (set() || (known(word.id()) && !isOpen(word.id()))) {
            return Optional.empty();
        }
        begin(t, word, pan);
        SetTest open = now().orElseThrow();
        wentBack = false;
        aheadC = Math.min(MOST_AHEAD_C, Math.max(LEAST_AHEAD_C, pan.perMinC().orElse(0) * CALL_AHEAD_S / 60));
        return replace(open.with(word.answer().map(answer -> new SetTest.Seen(t, answer))), t, TestChange.SEEN);
    }

    private Optional<CookEvent.TestChanged> takeBackTheAnswer(double t, TestWord word) {
        Optional<SetTest> last = last().filter(test -> test.id().equals(word.id()));
        return last.filter(test -> test.seen().isPresent())
                .flatMap(test -> replace(test.with(Optional.empty()), t, TestChange.UNSEEN));
    }

    private Optional<CookEvent.TestChanged> undo(double t, TestWord word) {
        Optional<SetTest> last = last().filter(test -> test.id().equals(word.id()));
        last.ifPresent(test -> {
            tests.remove(test);
            undone.add(test.id());
        });
        return last.map(test -> new CookEvent.TestChanged(t, TestChange.UNDONE, test));
    }

    private Optional<CookEvent.TestChanged> replace(SetTest test, double t, TestChange change) {
        tests.set(tests.size() - 1, test);
        return Optional.of(new CookEvent.TestChanged(t, change, test));
    }

    private boolean known(String id) {
        return undone.contains(id) || tests.stream().anyMatch(test -> test.id().equals(id));
    }

    private boolean isOpen(String id) {
        return now().filter(test -> test.id().equals(id)).isPresent();
    }

    /** What the answers teach; "set" leaves nothing to aim at, so that what was aimed at stays to be seen. */
    private SetTestPlan learnt() {
        SetTestPlan next = SetTestPlan.of(settings.riseC());
        for (SetTest test : tests) {
            if (test.seen().isPresent() && test.riseC().isPresent() && !test.set()) {
                next = next.tested(
                        test.riseC().getAsDouble(), test.seen().get().answer().step());
            }
        }
        return next;
    }

    /** All of them, oldest first. */
    public List<SetTest> all() {
        return List.copyOf(tests);
    }

    /** Every word that was said, in order. */
    public List<Said> said() {
        return List.copyOf(said);
    }

    /** The rise in °C at which to test next. */
    public double nextRiseC() {
        return plan.nextRiseC();
    }

    /** What the cook is measured against by what was learnt so far. */
    public CookSettings aim() {
        return plan.tests() == 0 ? settings : settings.aimedAt(plan.nextRiseC(), aheadC);
    }

    /** The test that goes on. */
    Optional<SetTest> now() {
        return last().filter(test -> test.seen().isEmpty());
    }

    private Optional<SetTest> last() {
        return tests.isEmpty() ? Optional.empty() : Optional.of(tests.get(tests.size() - 1));
    }

    /** Whether it was found set, which ends the boil. */
    public boolean set() {
        return last().filter(SetTest::set).isPresent();
    }

    /** Whether the latest word is that it is not set. */
    public boolean notYet() {
        return last().filter(test -> test.seen().isPresent() && !test.set()).isPresent();
    }

    /** Whether it was found not set and is not back at the boil since: it goes back on the heat, and is not done. */
    public boolean goesBack() {
        return notYet() && !wentBack;
    }

    /** Whether the pan stands off the heat because of a test, or is on its way back. */
    public boolean away(double t, Stage stage) {
        return standsOff(t, stage) || answeredWithin(t, BACK_S);
    }

    /** Whether the pan is being tested, or was just now, so that nobody need be called to test it. */
    public boolean testing(double t, Stage stage) {
        return standsOff(t, stage) || answeredWithin(t, SETTLE_S);
    }

    /**
     * Takes note, once a second, of whether the pan is at the boil it was taken from, and says whether no water leaves: it stands
     * off the heat for a test, or is not back at the boil.
     */
    public boolean paused(double t, boolean back) {
        backSinceT = !back ? Double.NaN : Double.isNaN(backSinceT) ? t : backSinceT;
        boolean over = now().isPresent() ? boilsOn(t) : back || !answeredWithin(t, NEVER_BACK_S);
        paused &= !over;
        wentBack |= back;
        return paused;
    }

    /** The same as of the second that ended last. */
    public boolean paused() {
        return paused;
    }

    private boolean standsOff(double t, Stage stage) {
        return now().isPresent() && (stage == Stage.OFF_THE_HEAT || !boilsOn(t));
    }

    /** It boils whatever was said: it was never taken off the heat, or went back without an answer. */
    private boolean boilsOn(double t) {
        return t - Math.max(backSinceT, now().map(SetTest::beganT).orElse(t)) >= BOILS_ON_S;
    }

    private boolean answeredWithin(double t, double s) {
        return last().flatMap(SetTest::seen).filter(seen -> t - seen.t() < s).isPresent();
    }

    /** Calls when the plate has stood long enough; to be called every second. */
    public void endSecond(double t, AlarmBoard board, List<CookEvent> events) {
        Optional<SetTest> now = now();
        if (now.isPresent() && t >= now.get().plateDueT()) {
            board.update(t, AlarmName.PLATE_READY, Condition.PRESENT, this::plateReady, events);
        } else {
            board.over(t, AlarmName.PLATE_READY, events);
        }
    }

    private AlarmText plateReady() {
        double stoodS = now().map(SetTest::plateS).orElse(TestWord.USUAL_PLATE_S);
        return new AlarmText(
                String.format(Locale.ROOT, "The plate has had its %.0f seconds.", stoodS),
                "Push it with a finger and say what you see.");
    }
}
