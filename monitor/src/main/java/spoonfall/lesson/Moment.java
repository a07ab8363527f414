package spoonfall.lesson;

import java.util.List;
import java.util.Locale;

/**
 * A moment of a cook worth stopping at. Texts have marks.
 *
 * @param t seconds of the cook
 * @param kind what happened
 * @param title what was so, one sentence
 * @param said what was said to do; may be empty
 * @param done what was done about it by the record, a sentence each, in order; empty if it tells of nothing
 * @param choices what somebody could have done; empty where there is nothing to ask
 */
public record Moment(double t, Kind kind, String title, String said, List<String> done, List<Choice> choices) {
    /** Keeps copies of the lists. */
    public Moment {
        done = List.copyOf(done);
        choices = List.copyOf(choices);
    }

    /** What happened. */
    public enum Kind {
        /** Spoonfall called. */
        ALARM,
        /** The pan came off the heat for a set test. */
        TEST,
        /** The cook entered another stage. */
        STAGE;

        /** The name on the wire, such as {@code alarm}. */
        public String wireName() {
            return name().toLowerCase(Locale.ROOT);
        }
    }
}
