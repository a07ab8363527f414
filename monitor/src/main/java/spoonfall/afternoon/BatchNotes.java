package spoonfall.afternoon;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;

/**
 * The cook's own notes on how a batch goes: its steps in order, and what is to be prepared for them. Never a recipe:
 * neither amounts nor safe times are in it.
 *
 * @param steps 1 to {@value #MOST} steps, differently named
 * @param preparations each for one of the steps
 */
public record BatchNotes(List<Step> steps, List<Preparation> preparations) {
    /** As many steps, and as many preparations, fit. */
    public static final int MOST = 30;

    /** Validates that ids are unique and that every preparation has its step. */
    public BatchNotes {
        steps = List.copyOf(steps);
        preparations = List.copyOf(preparations);
        if (steps.isEmpty() || steps.size() > MOST || preparations.size() > MOST) {
            throw new IllegalArgumentException("batch notes have 1 to " + MOST + " steps, and as many preparations");
        }
        Set<String> ids = new HashSet<>();
        for (Step step : steps) {
            refuseTwice(ids, step.id());
        }
        Set<String> stepIds = Set.copyOf(ids);
        for (Preparation preparation : preparations) {
            refuseTwice(ids, preparation.id());
            if (!stepIds.contains(preparation.before())) {
                throw new IllegalArgumentException("\"" + preparation.id() + "\" is for a step \""
                        + preparation.before() + "\" that is not there; it can be "
                        + String.join(", ", stepIds.stream().sorted().toList()));
            }
        }
    }

    private static void refuseTwice(Set<String> ids, String id) {
        if (!ids.add(id)) {
            throw new IllegalArgumentException("two of the notes are called \"" + id + "\"");
        }
    }

    /** The step of that id. */
    public Optional<Step> step(String id) {
        return steps.stream().filter(step -> step.id().equals(id)).findFirst();
    }

    /** The preparation of that id. */
    public Optional<Preparation> preparation(String id) {
        return preparations.stream().filter(one -> one.id().equals(id)).findFirst();
    }

    /** The notes with another name or time for a step or a preparation. */
    public BatchNotes changed(String id, Optional<String> name, Optional<Integer> minutes) {
        requireKnown(id);
        return new BatchNotes(
                mapped(
                        steps,
                        step -> step.id().equals(id)
                                ? step.with(name.orElse(step.name()), minutes.orElse(step.minutes()))
                                : step),
                mapped(
                        preparations,
                        one -> one.id().equals(id)
                                ? one.with(name.orElse(one.name()), minutes.orElse(one.minutes()))
                                : one));
    }

    /** The notes without a step and what is prepared for it, or without a preparation. */
    public BatchNotes without(String id) {
        requireKnown(id);
        if (steps.size() == 1 && steps.get(0).id().equals(id)) {
            throw new IllegalArgumentException("\"" + id + "\" is the only step left; keep it");
        }
        return new BatchNotes(
                steps.stream().filter(step -> !step.id().equals(id)).toList(),
                preparations.stream()
                        .filter(one -> !one.id().equals(id) && !one.before().equals(id))
                        .toList());
    }

    /** The notes with another step behind the step {@code after}. */
    public BatchNotes with(Step added, String after) {
        List<Step> longer = new ArrayList<>();
        for (Step step : steps) {
            longer.add(step);
            if (step.id().equals(after)) {
                longer.add(added);
            }
        }
        if (longer.size() == steps.size()) {
            throw new IllegalArgumentException("there is no step \"" + after + "\" to come after");
        }
        return new BatchNotes(longer, preparations);
    }

    /** The notes with another preparation. */
    public BatchNotes with(Preparation added) {
        List<Preparation> longer = new ArrayList<>(preparations);
        longer.add(added);
        return new BatchNotes(steps, longer);
    }

    private void requireKnown(String id) {
        if (step(id).isEmpty() && preparation(id).isEmpty()) {
            throw new IllegalArgumentException("the notes have nothing called \"" + id + "\"");
        }
    }

    private static <T> List<T> mapped(List<T> list, UnaryOperator<T> change) {
        return list.stream().map(change).toList();
    }
}
