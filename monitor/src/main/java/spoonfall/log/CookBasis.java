package spoonfall.log;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import spoonfall.cook.CookSettings;
import spoonfall.cook.ProbeTrust;
import spoonfall.cook.WaterBoil;

/**
 * What a cook is measured against, and what that rests on.
 *
 * @param settings what the monitor goes by
 * @param trusts the thermometers in the pan; the cook follows the first
 * @param declared where water boils by what was said of the kitchen
 * @param measured where it boiled by the first thermometer; empty if that was not measured
 */
public record CookBasis(
        CookSettings settings, List<ProbeTrust> trusts, WaterBoil declared, Optional<Measured> measured) {
    /** Keeps a copy of the list, which must name one thermometer at least. */
    public CookBasis {
        trusts = List.copyOf(trusts);
        if (trusts.isEmpty()) {
            throw new IllegalArgumentException("a cook follows a thermometer, and none was named");
        }
    }

    /**
     * A water boil that the first thermometer showed, uncorrected.
     *
     * @param shownC what it showed, in °C
     * @param plateauDoubtC how far that may be off for noise and drift, in °C
     * @param at when
     */
    public record Measured(double shownC, double plateauDoubtC, Instant at) {}

    /** Names of the thermometers, in order. */
    public List<String> probes() {
        return trusts.stream().map(ProbeTrust::name).toList();
    }
}
