package spoonfall.afternoon;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import spoonfall.cook.calm.CalmTime;
import spoonfall.cook.calm.HowLong;

/**
 * An afternoon as it stands, in seconds of the afternoon.
 *
 * @param t when
 * @param steps all steps in order
 * @param preparations what is to be prepared
 * @param isOff whether the pan is off the heat
 * @param undo what can be taken back; empty when nothing can
 */
public record Timeline(
        double t, List<StepLine> steps, List<PreparationLine> preparations, boolean isOff, Optional<Undo> undo) {
    /** Keeps copies of the lists. */
    public Timeline {
        steps = List.copyOf(steps);
        preparations = List.copyOf(preparations);
    }

    /** Where a step or a preparation stands. */
    public enum State {
        /** It was done. */
        DONE,
        /** It was left out, or its time went by. */
        SKIPPED,
        /** It is to be done now. */
        NOW,
        /** It comes later. */
        LATER;

        /** The name on the wire, such as {@code now}. */
        public String wireName() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /**
     * A moment ahead.
     *
     * @param t its middle estimate
     * @param fromT early end of its 90 % interval; the same as {@code t} when it rests on habit and not on a forecast
     * @param untilT late end of it
     * @param forecast whether it rests on the forecast; else on the usual minutes
     * @param howLong how long until then, calmed; only of what the forecast itself is of
     */
    public record Moment(double t, double fromT, double untilT, boolean forecast, Optional<HowLong> howLong) {
        /** One that rests on the usual minutes. */
        static Moment usual(double t) {
            return new Moment(t, t, t, false, Optional.empty());
        }

        /** One that rests on the forecast. */
        static Moment foretold(CalmTime.Shown shown) {
            return new Moment(shown.t(), shown.fromT(), shown.untilT(), true, Optional.of(shown.howLong()));
        }

        /** The moment so many seconds later. */
        Moment plus(double s) {
            return new Moment(t + s, fromT + s, untilT + s, forecast, Optional.empty());
        }

        /** The moment, or now if it is over. */
        Moment notBefore(double nowT) {
            return new Moment(Math.max(t, nowT), Math.max(fromT, nowT), Math.max(untilT, nowT), forecast, howLong);
        }
    }

    /**
     * One step.
     *
     * @param step as the notes have it
     * @param state where it stands
     * @param begunT when it began; empty when it has not, or nobody saw
     * @param endedT when it was done or left out
     * @param by who or what moved it last
     * @param begins when it is expected to begin; empty once it has
     * @param ends when the step that is now is expected to end
     */
    public record StepLine(
            Step step,
            State state,
            OptionalDouble begunT,
            OptionalDouble endedT,
            By by,
            Optional<Moment> begins,
            Optional<Moment> ends) {
        /** How long until it begins where no more than the least of that is known; empty where more is, or nothing is foreseen. */
        public Optional<HowLong> beginsInMoreThan() {
            return begins.flatMap(Moment::howLong).filter(HowLong::isOpen);
        }
    }

    /**
     * One preparation.
     *
     * @param preparation as the notes have it
     * @param state where it stands
     * @param doneT when it was done
     * @param due when it is to be done; empty once it was, or when it is too late for it
     * @param late whether it is still to be done though its step has begun
     */
    public record PreparationLine(
            Preparation preparation, State state, OptionalDouble doneT, Optional<Moment> due, boolean late) {}

    /**
     * What can be taken back.
     *
     * @param mark its number, which says that this and nothing newer is meant
     * @param words what it was, such as "the jars are full"
     */
    public record Undo(long mark, String words) {}

    /** The step that is now. */
    public Optional<StepLine> now() {
        return steps.stream().filter(line -> line.state() == State.NOW).findFirst();
    }

    /** The first step that is yet to come. */
    public Optional<StepLine> next() {
        return steps.stream().filter(line -> line.state() == State.LATER).findFirst();
    }

    /**
     * Whether nobody can say yet when a step begins: the test window and the set come when the pan is there, whatever is usual, and
     * nothing is foreseen of them.
     */
    public boolean onlyThePanKnows(StepLine line) {
        boolean foreseen = line.begins()
                .filter(Moment::forecast)
                .filter(begins -> begins.howLong().filter(HowLong::isUnknown).isEmpty())
                .isPresent();
        return !foreseen
                && isThePans(line)
                && next().filter(Timeline::isThePans).isPresent();
    }

    /** Whether a step is being done though nobody said so: the pan is off the heat already, for a test or for good. */
    public boolean isBeingDone(StepLine line) {
        return isOff
                && line.state() == State.LATER
                && line.step().endedBy().filter(Sight.OFF::equals).isPresent();
    }

    private static boolean isThePans(StepLine line) {
        Step step = line.step();
        return step.begunBy().filter(Sight.WINDOW::equals).isPresent()
                || step.endedBy().filter(Sight.OFF::equals).isPresent();
    }

    /** Whether every step is done or left out. */
    public boolean over() {
        return now().isEmpty() && next().isEmpty();
    }
}
