package spoonfall.afternoon;

import java.util.Optional;
import spoonfall.cook.ReminderName;

/**
 * Something to be done some time before a step begins.
 *
 * @param id what it is called on the wire and in the notes, such as {@code canner}
 * @param name what is to be done, such as "Heat the canner"
 * @param minutes how long before the step
 * @param before the id of the step that it must be ready for
 * @param until the id of the step up to whose end it is better done late than never; empty if it is of no use once {@code before} has
 *     begun
 * @param saidBy the cook's reminder that says it; empty when the afternoon says it itself
 * @param doneLabel what somebody says who has done it
 */
public record Preparation(
        String id,
        String name,
        int minutes,
        String before,
        Optional<String> until,
        Optional<ReminderName> saidBy,
        String doneLabel) {
    /** Validates id, name and minutes. */
    public Preparation {
        NoteChecks.id("preparation", id);
        NoteChecks.name(id, name);
        NoteChecks.minutes(id, minutes);
        saidBy.ifPresent(reminder -> {
            if (Math.round(reminder.leadS() / 60) != minutes) {
                throw new IllegalArgumentException("the cook is reminded of \"" + id + "\" "
                        + Math.round(reminder.leadS() / 60) + " minutes ahead; that cannot be changed here");
            }
        });
    }

    /** A preparation that the cook added. */
    public static Preparation own(String id, String name, int minutes, String before) {
        return new Preparation(id, name, minutes, before, Optional.empty(), Optional.empty(), "Done: " + name);
    }

    /** How long before the step, in seconds. */
    double leadS() {
        return minutes * 60.0;
    }

    Preparation with(String newName, int newMinutes) {
        boolean own = doneLabel.equals("Done: " + name);
        return new Preparation(id, newName, newMinutes, before, until, saidBy, own ? "Done: " + newName : doneLabel);
    }
}
