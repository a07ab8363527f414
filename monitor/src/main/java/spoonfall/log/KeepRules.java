package spoonfall.log;

/**
 * What is kept of old cooks. Both are for good unless a kitchen says otherwise.
 *
 * @param whole how long every reading is; later one in ten seconds of each thermometer, with all words, notes and events
 * @param atAll how long anything is
 */
public record KeepRules(Keep whole, Keep atAll) {
    /** Everything is kept. */
    public static final KeepRules EVERYTHING = new KeepRules(Keep.EVERYTHING, Keep.EVERYTHING);
}
