package spoonfall.log;

import java.time.Instant;
import java.util.Map;
import spoonfall.calibration.Correction;
import spoonfall.cook.CookSettings;

/**
 * What is known of a cook at its first reading.
 *
 * @param number counts the cooks of its pan from 1
 * @param pan which pan; empty where there is one only
 * @param kitchen the kitchen's name; may be empty
 * @param batch what is made; may be empty
 * @param source where the readings come from, such as {@code live}
 * @param speed how many seconds of the cook pass in one of ours
 * @param startedAt the wall clock at the first reading
 * @param asked what was asked for when the service started
 * @param basis what it is measured against
 * @param corrections what makes the readings of a thermometer true, by its name; none for one that is taken at its word
 */
public record CookHeader(
        int number,
        String pan,
        String kitchen,
        String batch,
        String source,
        double speed,
        Instant startedAt,
        CookSettings asked,
        CookBasis basis,
        Map<String, Correction> corrections) {
    /** Keeps a copy of the corrections. */
    public CookHeader {
        corrections = Map.copyOf(corrections);
    }
}
