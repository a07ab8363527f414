package spoonfall.afternoon;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import spoonfall.afternoon.Timeline.Moment;
import spoonfall.afternoon.Timeline.PreparationLine;
import spoonfall.afternoon.Timeline.State;
import spoonfall.afternoon.Timeline.StepLine;
import spoonfall.cook.calm.CalmForecast;

/**
 * When what is expected: forwards from the step that is now, by the forecast where there is one and by the usual minutes
 * elsewhere, and back from the steps to what must be ready for them.
 */
final class Schedule {
    private final Progress progress;
    private final double t;
    private final Map<String, Moment> begins = new HashMap<>();
    private Optional<Moment> nowEnds = Optional.empty();

    private Schedule(Progress progress, double t) {
        this.progress = progress;
        this.t = t;
    }

    static Schedule of(Progress progress, double t, Optional<CalmForecast.Shown> foretold) {
        Schedule schedule = new Schedule(progress, t);
        schedule.plan(foretold);
        return schedule;
    }

    private void plan(Optional<CalmForecast.Shown> foretold) {
        Moment at = Moment.usual(t);
        boolean first = true;
        List<Step> open = progress.notes().steps().stream()
                .filter(step -> !progress.way(step).over())
                .toList();
        for (int i = 0; i < open.size(); i++) {
            Step step = open.get(i);
            OptionalDouble begunT = progress.way(step).begunT();
            if (begunT.isEmpty()) {
                begins.put(step.id(), at);
            }
            double takesS = step.kind() == Step.Kind.OPTIONAL ? 0 : step.usualS();
            double sinceT = begunT.orElse(t);
            Moment ends = first ? Moment.usual(sinceT).plus(takesS) : at.plus(takesS);
            ends = anchored(step, i + 1 < open.size() ? Optional.of(open.get(i + 1)) : Optional.empty(), ends, foretold)
                    .notBefore(t);
            if (first && begunT.isPresent()) {
                nowEnds = Optional.of(ends);
            }
            first = false;
            at = ends;
        }
    }

    /** The end of a step that the forecast knows better than the notes. */
    private static Moment anchored(Step step, Optional<Step> next, Moment ends, Optional<CalmForecast.Shown> foretold) {
        if (foretold.isEmpty()) {
            return ends;
        }
        if (next.filter(one -> sees(one.begunBy(), Sight.WINDOW)).isPresent()) {
            return Moment.foretold(foretold.get().window());
        }
        boolean untilTheSet = next.filter(one -> sees(one.endedBy(), Sight.OFF)).isPresent();
        return untilTheSet || sees(step.begunBy(), Sight.WINDOW)
                ? Moment.foretold(foretold.get().gel())
                : ends;
    }

    private static boolean sees(Optional<Sight> by, Sight sight) {
        return by.filter(sight::equals).isPresent();
    }

    Optional<Moment> begins(String step) {
        return Optional.ofNullable(begins.get(step));
    }

    List<StepLine> steps() {
        return progress.notes().steps().stream().map(this::line).toList();
    }

    private StepLine line(Step step) {
        Progress.Way way = progress.way(step);
        boolean now = !way.over() && way.begunT().isPresent();
        State state = way.skipped() ? State.SKIPPED : way.over() ? State.DONE : now ? State.NOW : State.LATER;
        return new StepLine(
                step, state, way.begunT(), way.endedT(), way.by(), begins(step.id()), now ? nowEnds : Optional.empty());
    }

    List<PreparationLine> preparations() {
        return progress.notes().preparations().stream().map(this::line).toList();
    }

    private PreparationLine line(Preparation preparation) {
        OptionalDouble doneT = progress.preparedT(preparation);
        if (doneT.isPresent()) {
            return new PreparationLine(preparation, State.DONE, doneT, Optional.empty(), false);
        }
        Optional<Moment> due = begins(preparation.before()).map(moment -> moment.plus(-preparation.leadS()));
        if (due.isEmpty()) {
            Optional<Moment> since = late(preparation);
            State state = since.isPresent() ? State.NOW : State.SKIPPED;
            return new PreparationLine(preparation, state, doneT, since, since.isPresent());
        }
        State state = due.get().t() <= t ? State.NOW : State.LATER;
        return new PreparationLine(preparation, state, doneT, due.map(moment -> moment.notBefore(t)), false);
    }

    /** Since when the step that it was for goes on, where it is still to be done. */
    private Optional<Moment> late(Preparation preparation) {
        BatchNotes notes = progress.notes();
        return preparation
                .until()
                .flatMap(notes::step)
                .filter(until -> !progress.way(until).over())
                .flatMap(until -> notes.step(preparation.before()))
                .map(progress::way)
                .flatMap(Progress.Way::since)
                .map(Moment::usual);
    }
}
