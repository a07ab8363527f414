package spoonfall.afternoon;

import java.util.Locale;
import java.util.OptionalDouble;

/**
 * Something that is to be said because its moment has come; nothing is wrong, and nobody is called.
 *
 * @param t seconds of the afternoon at which it is said
 * @param name the id of the preparation, or of the step that begins
 * @param text one sentence
 * @param why what goes before the clock in a second sentence, such as "\"Process the jars\" comes at about"; may be empty
 * @param forT the moment that it is said for, in seconds of the afternoon
 */
public record Reminder(double t, String name, String text, String why, OptionalDouble forT) {
    /** A step begins. */
    static Reminder now(double t, String step, String stepName) {
        return new Reminder(t, step, stepName + " now.", "", OptionalDouble.empty());
    }

    /** Something must be ready for a step that comes. */
    static Reminder ahead(double t, String preparation, String name, String stepName, double forT) {
        String why = "\"" + stepName + "\" comes at about";
        return new Reminder(t, preparation, name + " now.", why, OptionalDouble.of(forT));
    }

    /** The whole of it, with a mark for the clock, in seconds counted from {@code laterS} seconds after the afternoon's. */
    public String marked(double laterS) {
        return forT.isEmpty()
                ? text
                : String.format(Locale.ROOT, "%s %s {clock:%.0f}.", text, why, forT.getAsDouble() - laterS);
    }
}
