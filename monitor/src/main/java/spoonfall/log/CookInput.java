package spoonfall.log;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.OptionalDouble;
import spoonfall.probe.Quality;

/** Something that went into a cook. Going through all of them again in order gives the same cook. */
public sealed interface CookInput {
    /** Milliseconds of the cook at which it was taken. */
    long takenMillis();

    /**
     * A reading.
     *
     * @param probe name of its thermometer
     * @param takenMillis milliseconds of the cook at which it was taken, as far as the cook had got by then
     * @param atMillis its own instant in milliseconds of the cook, which may lie before that
     * @param shownC what the thermometer showed in °C, uncorrected; present exactly when the quality is good
     * @param quality how far to trust it
     */
    record Heard(String probe, long takenMillis, long atMillis, OptionalDouble shownC, Quality quality)
            implements CookInput {
        /** Validates that temperature and quality agree. */
        public Heard {
            if (shownC.isPresent() != (quality == Quality.GOOD)) {
                throw new IllegalArgumentException("a reading has a temperature exactly when it is good: " + quality);
            }
        }
    }

    /**
     * Somebody's word, or a change from outside that the cook goes by.
     *
     * @param takenMillis milliseconds of the cook
     * @param kind what it is, such as {@code acknowledge}
     * @param detail all that is needed to do it again
     */
    record Word(long takenMillis, String kind, ObjectNode detail) implements CookInput {}
}
