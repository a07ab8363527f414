package spoonfall.lab.varied;

import java.util.Locale;
import java.util.SplittableRandom;

/** What befalls a cook drawn at random. */
public enum CookKind {
    /** Nothing but noise, lag, a burner's cycling, stirring, weather and a syrup that follows no table exactly. */
    CLEAN("Nothing goes wrong", 11),
    /** The water stops leaving: heat off, heat very low, or a lid on. */
    STALL("It stalls", 3),
    /** The base catches: the reading climbs faster than water could leave, and grows noisy. */
    SCORCH("The base catches", 2),
    /** The probe is out of the pan, in air or over the steam. */
    PROBE_OUT("The probe is out of the pan for a while", 2),
    /** The probe repeats one value while the pan moves. */
    STUCK("The probe repeats one value for a while", 2),
    /** The probe says nothing. */
    SILENT("The probe is silent for a while", 2),
    /** Single wild values. */
    SPIKES("The probe sends single wild values", 1),
    /** The reading shifts by a degree or more, and back. */
    JUMP("The reading shifts for a while", 1),
    /** The cook turns the heat down or up. */
    HEAT("The cook turns the heat down or up", 3),
    /** The pan comes off the heat for set tests. */
    SET_TESTS("The pan comes off the heat for set tests", 2),
    /** Cold water or fruit goes in. */
    WATER("Cold water or fruit goes in", 2),
    /** Fruit simmers first; the sugar goes in later. */
    LATE_SUGAR("The fruit simmers before the sugar goes in", 2);

    private final String title;
    private final int weight;

    CookKind(String title, int weight) {
        this.title = title;
        this.weight = weight;
    }

    /** What happens, in one sentence without its stop. */
    public String title() {
        return title;
    }

    /** The name on the command line, such as {@code set-tests}. */
    public String wireName() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Draws one; a third of all are clean. */
    static CookKind draw(SplittableRandom random) {
        int all = 0;
        for (CookKind kind : values()) {
            all += kind.weight;
        }
        int left = random.nextInt(all);
        for (CookKind kind : values()) {
            left -= kind.weight;
            if (left < 0) {
                return kind;
            }
        }
        throw new IllegalStateException("weights do not add up");
    }
}
