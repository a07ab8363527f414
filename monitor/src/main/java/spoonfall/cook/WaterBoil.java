package spoonfall.cook;

import java.util.Locale;
import java.util.OptionalDouble;
import spoonfall.physics.Air;
import spoonfall.physics.Water;

/**
 * The temperature at which plain water boils here, and what that rests on.
 *
 * @param temperatureC boiling point of water in °C
 * @param pressurePa air pressure in pascals
 * @param from what it was worked out from
 * @param detail the same for people, such as "1,240 m above sea level"
 * @param doubtC how far the temperature may be off, in °C
 */
public record WaterBoil(double temperatureC, double pressurePa, From from, String detail, double doubtC) {
    /** Weather: ±15 hPa about the standard atmosphere move the boiling point by that much. */
    private static final double WEATHER_C = 0.4;

    /** A barometer that is 3 hPa off, at 0.028 °C each. */
    private static final double BAROMETER_C = 0.1;

    /** A report from some way off, and air that is warmer or colder than the standard's on the way up. */
    private static final double REPORT_C = 0.2;

    /** Nobody said how high the kitchen is: 1,000 m would make it 3.3 °C. */
    private static final double UNKNOWN_C = 3;

    /** A pan of boiling water colder than that is none, however high the kitchen. */
    private static final double LEAST_MEASURED_C = 75;

    /** Hotter than that water does not boil anywhere, and a thermometer is not off by so much. */
    private static final double MOST_MEASURED_C = 105;

    /** The weather moves on by some 3 hPa while a cook lasts; common practice, no source. */
    private static final double SINCE_MEASURED_C = 0.1;

    /** What a boiling point of water rests on. */
    public enum From {
        /** Boiling water in this kitchen, by the thermometer that is in the pan. */
        MEASURED("measured"),
        /** The elevation of the kitchen, through the standard atmosphere. */
        ELEVATION("elevation"),
        /** A barometer's pressure at the kitchen. */
        PRESSURE("pressure"),
        /** A weather report's pressure, reduced to sea level, and the elevation. */
        SEA_LEVEL_PRESSURE("sea-level-pressure"),
        /** Nothing was given: sea level is assumed. */
        STANDARD("standard");

        private final String wireName;

        From(String wireName) {
            this.wireName = wireName;
        }

        /** The name on the wire. */
        public String wireName() {
            return wireName;
        }
    }

    /** How high the kitchen is, in metres; empty when something else was said of it. */
    public OptionalDouble elevationM() {
        return from == From.ELEVATION ? OptionalDouble.of(Air.elevationM(pressurePa)) : OptionalDouble.empty();
    }

    /** The water boil at {@code elevationM} metres above sea level in the standard atmosphere (ISO 2533). */
    public static WaterBoil atElevation(double elevationM) {
        return at(
                Air.pressurePa(elevationM),
                From.ELEVATION,
                String.format(Locale.ROOT, "%,.0f m above sea level", elevationM),
                WEATHER_C);
    }

    /** The water boil at {@code pressurePa}, the pressure at the kitchen itself (not reduced to sea level). */
    public static WaterBoil atPressure(double pressurePa) {
        return at(
                pressurePa,
                From.PRESSURE,
                String.format(Locale.ROOT, "%,.0f hPa on the barometer", pressurePa / 100),
                BAROMETER_C);
    }

    /**
     * The water boil where a weather report gives {@code seaLevelPa}, reduced to sea level as reports are, and the
     * kitchen lies at {@code elevationM}: the standard atmosphere's share of it is left at that height.
     */
    public static WaterBoil atSeaLevelPressure(double seaLevelPa, double elevationM) {
        double pressurePa = seaLevelPa * Air.pressurePa(elevationM) / Air.SEA_LEVEL_PA;
        String detail = String.format(
                Locale.ROOT, "a report of %,.0f hPa at sea level, at %,.0f m", seaLevelPa / 100, elevationM);
        return at(pressurePa, From.SEA_LEVEL_PRESSURE, detail, REPORT_C);
    }

    /**
     * The water boil as the thermometer in the pan showed it in plain boiling water: weather and the thermometer's own
     * error are both in it, and both are in every reading of the cook, so both cancel.
     *
     * @param temperatureC what it showed in °C, corrected as its later readings are; 75 to 105
     * @param plateauDoubtC how far that may be off for noise and drift, in °C
     */
    public static WaterBoil measured(double temperatureC, double plateauDoubtC) {
        if (!(temperatureC >= LEAST_MEASURED_C && temperatureC <= MOST_MEASURED_C)) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "water does not boil at %.1f °C in any kitchen; it must be 75 to 105 °C (167 to 221 °F)",
                    temperatureC));
        }
        return new WaterBoil(
                temperatureC,
                Water.saturationPressurePa(temperatureC),
                From.MEASURED,
                "boiling water by this thermometer",
                Math.hypot(plateauDoubtC, SINCE_MEASURED_C));
    }

    /**
     * The best of what is known of a kitchen: what boiling water was measured to be there, else a barometer's pressure, else the
     * elevation, else sea level.
     *
     * @param measuredC in °C, as {@link #measured} takes it
     * @param pressurePa in the kitchen itself
     * @param elevationM metres above sea level
     */
    public static WaterBoil known(OptionalDouble measuredC, OptionalDouble pressurePa, OptionalDouble elevationM) {
        if (measuredC.isPresent()) {
            return measured(measuredC.getAsDouble(), 0);
        }
        if (pressurePa.isPresent()) {
            return atPressure(pressurePa.getAsDouble());
        }
        return elevationM.isPresent() ? atElevation(elevationM.getAsDouble()) : standard();
    }

    /** The water boil at sea level, for want of anything better. */
    public static WaterBoil standard() {
        return at(Air.pressurePa(0), From.STANDARD, "sea level assumed", UNKNOWN_C);
    }

    private static WaterBoil at(double pressurePa, From from, String detail, double doubtC) {
        return new WaterBoil(Water.boilingPointC(pressurePa), pressurePa, from, detail, doubtC);
    }
}
