package spoonfall.kitchen.afternoon;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import java.util.Optional;
import spoonfall.afternoon.Afternoon;
import spoonfall.afternoon.BatchNotes;
import spoonfall.afternoon.Preparation;
import spoonfall.afternoon.Step;
import spoonfall.afternoon.Timeline;
import spoonfall.log.CookJson;

/**
 * Something that somebody says of the afternoon, as it can be written down and said again.
 *
 * @param what what is said
 * @param on id of the step or preparation that it is about, or of the one beside which another is put; empty for an undo
 * @param name a name, where one is given
 * @param minutes a time, where one is given
 */
public record AfternoonWord(What what, String on, Optional<String> name, Optional<Integer> minutes) {
    /** What is said. */
    public enum What {
        TAP,
        BEGIN,
        SKIP,
        PREPARE,
        STEP_STARTED,
        STEP_DONE,
        PREPARED,
        CHANGE,
        REMOVE,
        ADD_STEP,
        ADD_PREPARATION,
        UNDO
    }

    /** A word on that step or preparation, with nothing more to say. */
    public static AfternoonWord on(What what, String id) {
        return new AfternoonWord(what, id, Optional.empty(), Optional.empty());
    }

    static AfternoonWord undo() {
        return on(What.UNDO, "");
    }

    /** Says it at {@code t} seconds of an afternoon. */
    void say(Afternoon afternoon, double t) {
        switch (what) {
            case TAP -> afternoon.tap(on, t);
            case BEGIN -> afternoon.begin(on, t);
            case SKIP -> afternoon.skip(on, t);
            case PREPARE -> afternoon.prepare(on, t);
            case STEP_STARTED -> afternoon.stepStarted(on, t);
            case STEP_DONE -> afternoon.stepDone(on, t);
            case PREPARED -> afternoon.prepared(on, t);
            case CHANGE -> afternoon.edit(notes -> notes.changed(on, name, minutes), "A change of the notes", t);
            case REMOVE -> afternoon.edit(notes -> notes.without(on), "One taken out of the notes", t);
            case ADD_STEP -> afternoon.edit(this::withStep, "Added: " + name.orElseThrow(), t);
            case ADD_PREPARATION -> afternoon.edit(this::withPreparation, "Added: " + name.orElseThrow(), t);
            case UNDO -> afternoon.undo().map(Timeline.Undo::mark).ifPresent(afternoon::undo);
        }
    }

    private BatchNotes withStep(BatchNotes notes) {
        String called = name.orElseThrow();
        return notes.with(Step.own(idFor(notes, called), called, minutes.orElseThrow()), on);
    }

    private BatchNotes withPreparation(BatchNotes notes) {
        String called = name.orElseThrow();
        return notes.with(Preparation.own(idFor(notes, called), called, minutes.orElseThrow(), on));
    }

    /** An id made of a name that none of the notes has. */
    private static String idFor(BatchNotes notes, String name) {
        String plain =
                name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^[-0-9]+|-+$", "");
        String stem = plain.isEmpty() ? "own" : plain.substring(0, Math.min(plain.length(), 24));
        String id = stem;
        for (int i = 2; notes.step(id).isPresent() || notes.preparation(id).isPresent(); i++) {
            id = stem + "-" + i;
        }
        return id;
    }

    /** All that is needed to say it again. */
    public ObjectNode detail() {
        ObjectNode detail = CookJson.object()
                .put("what", what.name().toLowerCase(Locale.ROOT))
                .put("on", on);
        name.ifPresent(value -> detail.put("name", value));
        minutes.ifPresent(value -> detail.put("minutes", value));
        return detail;
    }

    /** The word that {@link #detail} kept. */
    public static AfternoonWord of(ObjectNode detail) {
        return new AfternoonWord(
                What.valueOf(CookJson.text(detail, "what").toUpperCase(Locale.ROOT)),
                CookJson.text(detail, "on"),
                detail.has("name") ? Optional.of(CookJson.text(detail, "name")) : Optional.empty(),
                detail.has("minutes") ? Optional.of((int) CookJson.number(detail, "minutes")) : Optional.empty());
    }
}
