package spoonfall.kitchen.thermometer;

import java.time.Instant;
import java.util.Optional;
import java.util.OptionalDouble;
import spoonfall.cook.CookSettings;
import spoonfall.cook.WaterBoil;

/**
 * What the gel point rests on just now.
 *
 * @param settings what the cook is measured against
 * @param declared where water boils by what was said of the kitchen, whether it was measured or not
 * @param measuredAt when the water boil was measured; empty if it was not
 * @param probeDoubtC how far the followed thermometer may be off, in °C; empty where that cancels because the same
 *     thermometer measured the water boil
 * @param totalDoubtC how far the gel point may be off by both, in °C
 */
public record Basis(
        CookSettings settings,
        WaterBoil declared,
        Optional<Instant> measuredAt,
        OptionalDouble probeDoubtC,
        double totalDoubtC) {

    /** A basis with a doubt of the thermometer or, if it cancels, without. */
    static Basis of(
            CookSettings settings, WaterBoil declared, Optional<Instant> measuredAt, OptionalDouble probeDoubtC) {
        double total = Math.hypot(settings.waterBoil().doubtC(), probeDoubtC.orElse(0));
        return new Basis(settings, declared, measuredAt, probeDoubtC, total);
    }
}
