package spoonfall.canner;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;

/** What somebody says by one tap. */
public enum CannerTap {
    /** It is at a full rolling boil, or steam comes steadily. */
    BOILS,
    /** It stopped boiling, or the steam fell off. */
    BOIL_LOST,
    /** It boiled all the while, though the thermometer was silent. */
    BOILED,
    /** The canner's thermometer is not to be believed; the cook watches the boil. */
    BY_TAPS,
    /** The canner's thermometer is to be believed again. */
    BY_PROBE,
    /** There is new water in the steam canner: from the start. */
    AGAIN,
    /** Heat and lid are off. */
    HEAT_OFF,
    /** The jars are out. */
    LIFTED,
    /** This batch is over or was a mistake: the canner is empty. */
    CLEAR;

    /** The name on the wire, such as {@code boil-lost}. */
    public String wireName() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** By its name on the wire. */
    public static CannerTap named(String text) {
        return Arrays.stream(values())
                .filter(tap -> tap.wireName().equals(text))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("unknown tap \"" + text + "\"; it can be "
                        + Arrays.stream(values()).map(CannerTap::wireName).collect(Collectors.joining(", "))));
    }
}
