package spoonfall.canner;

import java.util.Locale;

/** How far the jars in the canner are. */
public enum CannerPhase {
    /** No jars are in the canner. */
    EMPTY,
    /** The jars are in, and the water or the steam is on its way to the boil. */
    WAITING,
    /** At the full boil or in steady steam: the time runs. */
    PROCESSING,
    /** The boil stopped; the whole time starts again when it is back. */
    BOIL_LOST,
    /** The time is up, but the thermometer was silent meanwhile: somebody must say that it boiled. */
    UNSURE,
    /** A steam canner that might run dry before the whole time could pass once more. */
    STEAM_SPENT,
    /** The time is up: heat off, lid off. */
    HEAT_OFF,
    /** Heat and lid are off; the jars stay in for five minutes. */
    RESTING,
    /** The jars may be lifted out. */
    LIFT_OUT;

    /** The name on the wire, such as {@code boil-lost}. */
    public String wireName() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
