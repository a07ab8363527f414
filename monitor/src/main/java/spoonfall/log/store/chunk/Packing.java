package spoonfall.log.store.chunk;

import spoonfall.log.CookInput;

/**
 * What the next reading of a thermometer is packed against: the one before it.
 *
 * @param takenMillis when it was taken
 * @param stepMillis how long after the one before
 * @param mode how its value was packed
 * @param units its value in units of that mode
 */
record Packing(long takenMillis, long stepMillis, int mode, long units) {
    /** Of the bytes of a chunk. */
    static final int VERSION = 1;

    /** Of the bytes of a chunk that was packed again. */
    static final int PACKED = 2;

    /** Bits of a tag that hold the mode; the others hold the thermometer. */
    static final int MODE_BITS = 3;

    /** A thermometer with this index or a greater one has a number of its own after the tag. */
    static final int MANY_PROBES = 31;

    /** A value that no decimal of the other modes gives back exactly. */
    static final int EXACT = 4;

    /** No value: its quality follows. */
    static final int BAD = 5;

    /** Tenths and hundredths of °F. */
    private static final int TENTH_F = 6;

    private static final int HUNDREDTH_F = 7;

    /** Before the first reading. */
    static final Packing NOTHING = new Packing(0, 0, 1, 0);

    /**
     * A value in units of a mode.
     *
     * @param mode how it is packed
     * @param units how many units; 0 where the mode has none
     */
    record Value(int mode, long units) {}

    long expectedMillis() {
        return takenMillis + stepMillis;
    }

    Packing next(long atMillis, Value value) {
        boolean counted = value.mode() != BAD && value.mode() != EXACT;
        return new Packing(
                atMillis, atMillis - takenMillis, counted ? value.mode() : mode, counted ? value.units() : units);
    }

    /** The value of a reading, in the mode of the one before if that gives it back exactly. */
    static Value value(CookInput.Heard heard, int modeBefore) {
        if (heard.shownC().isEmpty()) {
            return new Value(BAD, 0);
        }
        double shownC = heard.shownC().getAsDouble();
        int[] modes = {modeBefore, 0, 1, 2, 3, TENTH_F, HUNDREDTH_F};
        for (int mode : modes) {
            long units = Math.round(scaled(shownC, mode));
            if (Double.compare(temperatureC(mode, units), shownC) == 0) {
                return new Value(mode, units);
            }
        }
        return new Value(EXACT, 0);
    }

    private static double scaled(double temperatureC, int mode) {
        return switch (mode) {
            case TENTH_F -> (temperatureC * 1.8 + 32) * 10;
            case HUNDREDTH_F -> (temperatureC * 1.8 + 32) * 100;
            default -> temperatureC * Math.pow(10, mode);
        };
    }

    /** The temperature in °C of so many units. */
    static double temperatureC(int mode, long units) {
        return switch (mode) {
            case TENTH_F -> (units / 10.0 - 32) / 1.8;
            case HUNDREDTH_F -> (units / 100.0 - 32) / 1.8;
            default -> units / Math.pow(10, mode);
        };
    }
}
