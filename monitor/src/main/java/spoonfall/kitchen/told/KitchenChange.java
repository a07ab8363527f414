package spoonfall.kitchen.told;

import spoonfall.cook.CookEvent;
import spoonfall.kitchen.thermometer.ProbeState;
import spoonfall.log.CookNote;

/** Something that every listener must hear of, in order and without a gap. */
public sealed interface KitchenChange {
    /** Counts changes, one by one, from the start of the service. */
    long seq();

    /**
     * A stage or an alarm changed, or the cook was reminded of something.
     *
     * @param seq number of the change
     * @param event what happened; never a status
     */
    record Cook(long seq, CookEvent event) implements KitchenChange {}

    /**
     * The probe changed.
     *
     * @param seq number of the change
     * @param t seconds of the cook; 0 before the first reading
     * @param probe the probe afterwards
     */
    record Probe(long seq, double t, ProbeState probe) implements KitchenChange {}

    /**
     * The afternoon stands otherwise.
     *
     * @param seq number of the change
     * @param afternoon how it stands now
     */
    record Afternoon(long seq, AfternoonView afternoon) implements KitchenChange {}

    /**
     * Somebody wrote a note.
     *
     * @param seq number of the change
     * @param note the note
     */
    record Noted(long seq, CookNote note) implements KitchenChange {}

    /**
     * The afternoon reminds of something.
     *
     * @param seq number of the change
     * @param t seconds of the cook; 0 before the first reading
     * @param name of what: the id of a preparation, or of the step that begins
     * @param text one or two sentences, with marks
     */
    record Reminded(long seq, double t, String name, String text) implements KitchenChange {}
}
