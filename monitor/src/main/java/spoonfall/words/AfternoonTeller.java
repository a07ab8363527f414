package spoonfall.words;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import spoonfall.afternoon.Sight;
import spoonfall.afternoon.Step;
import spoonfall.afternoon.Timeline;
import spoonfall.afternoon.Timeline.Moment;
import spoonfall.afternoon.Timeline.PreparationLine;
import spoonfall.afternoon.Timeline.State;
import spoonfall.afternoon.Timeline.StepLine;
import spoonfall.words.AfternoonSaying.Act;

/** Says how an afternoon stands: what comes next and when, and the one thing to tap. */
public final class AfternoonTeller {
    private static final int MOST_LINES = 5;
    private static final double SOON_S = 40;

    private AfternoonTeller() {}

    /** What is said of the afternoon; clocks in it are in seconds of the afternoon. */
    public static AfternoonSaying say(Timeline timeline) {
        if (timeline.over()) {
            return new AfternoonSaying(
                    new Saying(
                            "The afternoon is over.",
                            "Check the seal of every jar.",
                            "A jar that did not seal goes into the fridge, or is processed again within 24 hours."),
                    Optional.empty(),
                    Optional.empty());
        }
        Optional<StepLine> now = timeline.now();
        if (now.isEmpty()) {
            Step first = timeline.next().orElseThrow().step();
            Saying saying =
                    new Saying("First: " + small(first.name()) + ".", "", "The pan on the heat begins it, or a tap.");
            return new AfternoonSaying(
                    saying, Optional.of(new Act("begin", first.id(), "I have begun")), Optional.empty());
        }
        Optional<PreparationLine> due = due(timeline);
        String headline = headline(timeline, now.get());
        Saying saying = new Saying(
                headline, due.map(line -> line.preparation().name() + " now.").orElse(""), note(headline, now.get()));
        Act step = new Act("done", now.get().step().id(), now.get().step().doneLabel());
        Optional<Act> prepared = due.map(line ->
                new Act("prepared", line.preparation().id(), line.preparation().doneLabel()));
        boolean first = due.filter(line -> !line.late()).isPresent();
        return first
                ? new AfternoonSaying(saying, prepared, Optional.of(step))
                : new AfternoonSaying(saying, Optional.of(step), prepared);
    }

    /** What is to be prepared now. */
    public static Optional<String> toPrepare(Timeline timeline) {
        return due(timeline).map(line -> line.preparation().name());
    }

    private static Optional<PreparationLine> due(Timeline timeline) {
        return timeline.preparations().stream()
                .filter(line -> line.state() == State.NOW)
                .findFirst();
    }

    private static String headline(Timeline timeline, StepLine now) {
        Optional<StepLine> next = timeline.next();
        boolean comesByItself = now.step().kind() == Step.Kind.TIMED
                || next.filter(line -> line.step().begunBy().isPresent()).isPresent();
        if (next.isEmpty() || !comesByItself) {
            return now.step().kind() == Step.Kind.TIMED
                    ? now.step().name() + ": until "
                            + clock(now.ends().orElseThrow().t()) + "."
                    : "Now: " + small(now.step().name()) + ".";
        }
        String what = "Next: " + small(next.get().step().name());
        Moment ends = now.ends().orElseThrow();
        boolean overdue = !ends.forecast()
                && ends.t() - timeline.t() < SOON_S
                && now.step().kind() != Step.Kind.TIMED;
        return overdue || timeline.onlyThePanKnows(next.get())
                ? what + "."
                : what + ", " + ends.howLong().map(Minutes::in).orElse(Minutes.in(ends.t() - timeline.t())) + ".";
    }

    private static String note(String headline, StepLine now) {
        String what = headline.startsWith("Now") ? "Since " : now.step().name() + ": since ";
        String since = what + clock(now.begunT().orElseThrow()) + ".";
        return now.step().note().isEmpty() ? since : since + " " + now.step().note();
    }

    /**
     * The lines of what comes up, for the pan's own page: what was done last, what is now, what is due next; at most five.
     *
     * @param laterS how many seconds after the afternoon's beginning the cook's seconds are counted from
     */
    public static List<NextStep> comingUp(Timeline timeline, double laterS) {
        List<NextStep> ahead = new ArrayList<>();
        Optional<NextStep> nextStep = Optional.empty();
        for (StepLine line : timeline.steps()) {
            String name = line.step().name();
            if (line.state() == State.NOW) {
                ahead.add(later(line.begunT().orElseThrow() - laterS, name));
            } else if (line.state() == State.LATER && !timeline.isBeingDone(line)) {
                Moment begins = line.begins().orElseThrow();
                NextStep step = new NextStep(
                        begins.t() - laterS,
                        range(line, begins, laterS),
                        begins.howLong(),
                        !timeline.onlyThePanKnows(line),
                        name,
                        NextStep.State.LATER);
                nextStep = nextStep.or(() -> Optional.of(step));
                ahead.add(step);
            }
        }
        for (PreparationLine line : timeline.preparations()) {
            line.due()
                    .ifPresent(due ->
                            ahead.add(later(due.t() - laterS, line.preparation().name())));
        }
        ahead.sort(Comparator.comparingDouble(NextStep::t));
        List<NextStep> lines = new ArrayList<>(ahead.subList(0, Math.min(ahead.size(), MOST_LINES)));
        // What must be prepared does not crowd out what it is prepared for.
        nextStep.filter(step -> !lines.contains(step)).ifPresent(step -> lines.set(MOST_LINES - 1, step));
        if (!lines.isEmpty()) {
            NextStep first = lines.get(0);
            lines.set(
                    0,
                    new NextStep(
                            first.t(),
                            first.range(),
                            first.howLong(),
                            first.known(),
                            first.text(),
                            NextStep.State.NEXT));
        }
        boolean room = lines.size() < MOST_LINES
                || nextStep.filter(lines.get(MOST_LINES - 1)::equals).isEmpty();
        if (room) {
            lastDone(timeline, laterS).ifPresent(done -> lines.add(0, done));
        }
        return List.copyOf(lines.subList(0, Math.min(lines.size(), MOST_LINES)));
    }

    private static Optional<NextStep> lastDone(Timeline timeline, double laterS) {
        return timeline.steps().stream()
                .filter(line -> line.state() == State.DONE)
                .reduce((earlier, later) -> later)
                .map(line -> new NextStep(
                        line.endedT().orElseThrow() - laterS,
                        Optional.empty(),
                        Optional.empty(),
                        true,
                        line.step().name(),
                        NextStep.State.DONE));
    }

    private static NextStep later(double t, String text) {
        return new NextStep(t, Optional.empty(), Optional.empty(), true, text, NextStep.State.LATER);
    }

    /** The moment of the set is the one of which the interval is worth reading. */
    private static Optional<NextStep.Range> range(StepLine line, Moment begins, double laterS) {
        boolean sets = begins.forecast()
                && line.beginsInMoreThan().isEmpty()
                && line.step().endedBy().filter(Sight.OFF::equals).isPresent();
        return sets
                ? Optional.of(new NextStep.Range(begins.fromT() - laterS, begins.untilT() - laterS))
                : Optional.empty();
    }

    private static String clock(double t) {
        return String.format(Locale.ROOT, "{clock:%.0f}", t);
    }

    /** A name within a sentence: its first letter small, unless it is a name that is written large. */
    private static String small(String name) {
        boolean word = name.length() < 2 || !Character.isUpperCase(name.charAt(1));
        return word ? name.substring(0, 1).toLowerCase(Locale.ROOT) + name.substring(1) : name;
    }
}
