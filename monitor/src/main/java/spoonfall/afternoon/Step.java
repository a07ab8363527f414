package spoonfall.afternoon;

import java.util.Optional;

/**
 * A step of the afternoon, as the batch notes have it.
 *
 * @param id what it is called on the wire and in the notes, such as {@code fill}
 * @param name what is to be done, such as "Fill the jars"
 * @param minutes how long it usually takes; only a habit, never a safe time
 * @param kind how it comes to its end
 * @param begunBy what the probe sees when it begins
 * @param endedBy what the probe sees when it ends
 * @param doneLabel what somebody says who ends it, such as "The jars are full"
 * @param note a quiet line while it lasts; may be empty
 */
public record Step(
        String id,
        String name,
        int minutes,
        Kind kind,
        Optional<Sight> begunBy,
        Optional<Sight> endedBy,
        String doneLabel,
        String note) {

    /** How a step comes to its end. */
    public enum Kind {
        /** When somebody, the probe or a timer says so. */
        TOLD,
        /** By itself, when its minutes are over. */
        TIMED,
        /** As {@link #TOLD}; when nobody does it in its minutes, it is passed over. */
        OPTIONAL
    }

    /** Validates id, name and minutes. */
    public Step {
        NoteChecks.id("step", id);
        NoteChecks.name(id, name);
        NoteChecks.minutes(id, minutes);
    }

    /** A step that the cook added: ended by a word, unknown to the probe. */
    public static Step own(String id, String name, int minutes) {
        return new Step(id, name, minutes, Kind.TOLD, Optional.empty(), Optional.empty(), "Done: " + name, "");
    }

    /** Its usual time in seconds. */
    double usualS() {
        return minutes * 60.0;
    }

    Step with(String newName, int newMinutes) {
        boolean own = doneLabel.equals("Done: " + name);
        String label = own ? "Done: " + newName : doneLabel;
        return new Step(id, newName, newMinutes, kind, begunBy, endedBy, label, note);
    }
}
