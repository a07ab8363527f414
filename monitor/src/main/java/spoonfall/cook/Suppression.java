package spoonfall.cook;

import java.util.Locale;

/** Why an alarm means nothing just now, by design (ISA-18.2 / IEC 62682). */
public enum Suppression {
    /** The gel point has been called, which says more than the call to the set tests. */
    GEL_POINT,
    /** It is past the gel point, which says more than the gel point. */
    PAST_GEL_POINT,
    /** The probe is silent, so nothing is known of the pan. */
    PROBE_SILENT,
    /** The probe is out of the pan, so what it says is not of the pan. */
    PROBE_OUT_OF_PAN,
    /** The pan stands off the heat for a set test: of course it does not climb. */
    SET_TEST,
    /** The preserve was found set: the boil is over. */
    SET,
    /** Something cold, or the sugar, went in and the pan warms again: of course it is below where it was. */
    COLD_ADDED;

    /** The name on the wire, such as {@code set-test}. */
    public String wireName() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
