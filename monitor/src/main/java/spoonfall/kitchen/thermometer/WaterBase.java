package spoonfall.kitchen.thermometer;

import java.time.Instant;
import java.util.Optional;
import spoonfall.calibration.Reference;
import spoonfall.cook.WaterBoil;

/**
 * Where water boils in a kitchen: by what was said of it, and by what its first thermometer showed in boiling water.
 * What was measured wins.
 *
 * @param declared by what was said
 * @param measured by the thermometer
 */
record WaterBase(WaterBoil declared, Optional<Measured> measured) {
    /**
     * A water boil that the first thermometer showed. It is kept uncorrected, so that it stays true to the readings
     * when the thermometer is corrected.
     *
     * @param shownC what it showed, in °C
     * @param plateauDoubtC how far that may be off for noise and drift, in °C
     * @param at when
     */
    record Measured(double shownC, double plateauDoubtC, Instant at) {
        WaterBoil by(Thermometer thermometer) {
            return WaterBoil.measured(thermometer.trueC(shownC), plateauDoubtC);
        }
    }

    WaterBase declared(WaterBoil boil) {
        return new WaterBase(boil, measured);
    }

    WaterBase measured(Optional<Measured> boil) {
        return new WaterBase(declared, boil);
    }

    /** The water boil that counts, for readings of {@code thermometer}. */
    WaterBoil boil(Thermometer thermometer) {
        return measured.map(one -> one.by(thermometer)).orElse(declared);
    }

    /** Whether somebody said where the kitchen is, or its pressure. */
    boolean known() {
        return declared.from() != WaterBoil.From.STANDARD;
    }

    /** What is true in boiling water or ice; empty for water when nobody said how high the kitchen is. */
    Optional<Reference> reference(Reference.Kind in) {
        if (in == Reference.Kind.ICE) {
            return Optional.of(Reference.ice());
        }
        return known()
                ? Optional.of(Reference.boilingWater(declared.temperatureC(), declared.doubtC()))
                : Optional.empty();
    }

    /** What boiling water is expected to show; anywhere people cook when nobody said where this is. */
    Reference sought() {
        return reference(Reference.Kind.BOILING_WATER).orElseGet(Reference::boilingWaterAnywhere);
    }
}
