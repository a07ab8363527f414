package spoonfall.afternoon;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** How far an afternoon is: what its marks, taken in order, make of its notes. */
final class Progress {
    /** One step's way: begun, then ended or left out. */
    record Way(OptionalDouble begunT, OptionalDouble endedT, boolean skipped, By by) {
        static final Way AHEAD = new Way(OptionalDouble.empty(), OptionalDouble.empty(), false, By.CLOCK);

        boolean over() {
            return endedT.isPresent();
        }

        /** When it began, or was passed over. */
        Optional<Double> since() {
            return Stream.of(begunT, endedT)
                    .flatMapToDouble(OptionalDouble::stream)
                    .boxed()
                    .findFirst();
        }

        Way begun(double t, By by) {
            return new Way(OptionalDouble.of(t), endedT, skipped, by);
        }

        Way ended(double t, boolean leftOut, By by) {
            return new Way(begunT, OptionalDouble.of(t), leftOut, by);
        }
    }

    private final Map<String, Way> ways = new HashMap<>();
    private final Map<String, Double> preparedT = new HashMap<>();
    private BatchNotes notes;
    private double t;

    Progress(BatchNotes notes) {
        this.notes = notes;
    }

    BatchNotes notes() {
        return notes;
    }

    Way way(Step step) {
        return ways.getOrDefault(step.id(), Way.AHEAD);
    }

    OptionalDouble preparedT(Preparation preparation) {
        Double at = preparedT.get(preparation.id());
        return at == null ? OptionalDouble.empty() : OptionalDouble.of(at);
    }

    /** The step at which the afternoon is; empty before the first began and after the last. */
    Optional<Step> current() {
        return firstOpen().filter(step -> way(step).begunT().isPresent());
    }

    /** The first step that is neither done nor left out. */
    Optional<Step> firstOpen() {
        return notes.steps().stream().filter(step -> !way(step).over()).findFirst();
    }

    /** Lets time pass: what ends by itself does. */
    void advance(double nowT) {
        t = Math.max(t, nowT);
        for (Optional<Step> now = current(); now.isPresent() && lapses(now.get()); now = current()) {
            Step step = now.get();
            double begunT = way(step).begunT().orElseThrow();
            boolean leftOut = step.kind() == Step.Kind.OPTIONAL;
            end(step, begunT + step.usualS(), leftOut, By.CLOCK);
            beginNext(leftOut ? begunT : begunT + step.usualS(), By.CLOCK);
        }
    }

    private boolean lapses(Step step) {
        return step.kind() != Step.Kind.TOLD && t >= way(step).begunT().orElseThrow() + step.usualS();
    }

    /** Takes a mark; whether it changed anything. */
    boolean take(Mark mark) {
        advance(mark.t());
        if (mark instanceof Mark.Seen seen) {
            return see(seen.t(), seen.sight());
        }
        if (mark instanceof Mark.Begun begun) {
            return notes.step(begun.step())
                    .filter(step -> begin(step, begun.t(), begun.by()))
                    .isPresent();
        }
        if (mark instanceof Mark.Ended ended) {
            return notes.step(ended.step())
                    .filter(step -> finish(step, ended.t(), ended.by()))
                    .isPresent();
        }
        if (mark instanceof Mark.Skipped skipped) {
            return notes.step(skipped.step())
                    .filter(step -> skip(step, skipped.t()))
                    .isPresent();
        }
        if (mark instanceof Mark.Prepared prepared) {
            return preparedT.putIfAbsent(prepared.preparation(), prepared.t()) == null;
        }
        if (mark instanceof Mark.Edited edited) {
            boolean changed = !notes.equals(edited.notes());
            notes = edited.notes();
            beginAfterGap(edited.t());
            return changed;
        }
        return false;
    }

    private boolean see(double seenT, Sight sight) {
        return switch (sight) {
            case PAN_ON -> seePanOn(seenT);
            case BACK_TO_BOIL -> back(Sight.BOIL);
            case BACK_TO_TEST, NOT_SET -> back(Sight.WINDOW);
            case COOLING ->
                current()
                        .filter(step -> step.endedBy().filter(Sight.OFF::equals).isPresent())
                        .filter(step -> finish(step, seenT, By.PROBE))
                        .isPresent();
            default ->
                notes.steps().stream()
                        .filter(step -> step.begunBy().filter(sight::equals).isPresent())
                        .findFirst()
                        .map(step -> begin(step, seenT, By.PROBE))
                        .orElseGet(() -> notes.steps().stream()
                                .filter(step ->
                                        step.endedBy().filter(sight::equals).isPresent())
                                .findFirst()
                                .filter(step -> finish(step, seenT, By.PROBE))
                                .isPresent());
        };
    }

    /** Whatever the notes begin with has begun, but for a boil that is still to come. */
    private boolean seePanOn(double seenT) {
        return ways.isEmpty()
                && firstOpen()
                        .filter(step -> step.begunBy()
                                .filter(by -> by.compareTo(Sight.SUGAR) > 0)
                                .isEmpty())
                        .filter(step -> begin(step, seenT, By.PROBE))
                        .isPresent();
    }

    private boolean begin(Step step, double at, By by) {
        Way way = way(step);
        boolean laterOver = after(step).stream()
                .anyMatch(later -> way(later).over() && !way(later).skipped());
        boolean laterBegun =
                after(step).stream().anyMatch(later -> way(later).begunT().isPresent());
        if (way.over() || way.begunT().isPresent() || laterOver || laterBegun) {
            return false;
        }
        endAllBefore(step, at, by);
        ways.put(step.id(), way.begun(at, by));
        return true;
    }

    private boolean finish(Step step, double at, By by) {
        if (way(step).over()) {
            return false;
        }
        endAllBefore(step, at, by);
        end(step, at, false, by);
        beginNext(at, by);
        return true;
    }

    private boolean skip(Step step, double at) {
        Way way = way(step);
        if (way.over()) {
            return false;
        }
        boolean wasCurrent = current().filter(step::equals).isPresent();
        end(step, at, true, By.HAND);
        if (wasCurrent) {
            boolean optional = step.kind() == Step.Kind.OPTIONAL;
            beginNext(optional ? way.begunT().orElse(at) : at, By.HAND);
        }
        return true;
    }

    private void end(Step step, double at, boolean leftOut, By by) {
        ways.put(step.id(), way(step).ended(at, leftOut, by));
    }

    /** The probe or the cook is ahead: what came before counts as done at that time, and what was optional as left out. */
    private void endAllBefore(Step step, double at, By by) {
        for (Step earlier : notes.steps()) {
            if (earlier.equals(step)) {
                return;
            }
            if (!way(earlier).over()) {
                end(earlier, at, earlier.kind() == Step.Kind.OPTIONAL, by);
            }
        }
    }

    private void beginNext(double at, By by) {
        firstOpen()
                .filter(next -> way(next).begunT().isEmpty())
                .ifPresent(next -> ways.put(next.id(), way(next).begun(at, by)));
    }

    /** A step that was removed while it lasted leaves the next one to begin. */
    private void beginAfterGap(double at) {
        boolean underWay = !ways.isEmpty() && current().isEmpty();
        if (underWay) {
            beginNext(at, By.HAND);
        }
    }

    /** It boils again: what was done since is taken back, unless somebody has gone on to the jars. */
    private boolean back(Sight to) {
        Optional<Step> target = notes.steps().stream()
                .filter(step -> step.begunBy().filter(to::equals).isPresent())
                .findFirst();
        if (target.isEmpty() || !way(target.get()).over()) {
            return false;
        }
        List<Step> since = after(target.get());
        Optional<Step> off = notes.steps().stream()
                .filter(step -> step.endedBy().filter(Sight.OFF::equals).isPresent())
                .findFirst();
        boolean cooled = off.isPresent() && way(off.get()).over();
        boolean atTheJars = off.isPresent()
                && after(off.get()).stream()
                        .anyMatch(step -> step.kind() == Step.Kind.TOLD
                                && way(step).over()
                                && !way(step).skipped());
        if (!cooled || atTheJars) {
            return false;
        }
        Way way = way(target.get());
        ways.put(target.get().id(), new Way(way.begunT(), OptionalDouble.empty(), false, By.PROBE));
        since.stream()
                .filter(step -> !(way(step).skipped() && way(step).by() == By.HAND))
                .forEach(step -> ways.remove(step.id()));
        return true;
    }

    private List<Step> after(Step step) {
        return notes.steps()
                .subList(notes.steps().indexOf(step) + 1, notes.steps().size());
    }
}
