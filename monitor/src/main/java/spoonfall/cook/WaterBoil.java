package spoonfall.cook;

import spoonfall.physics.Air;
import spoonfall.physics.Water;

/**
 * The temperature at which plain water boils here, and what that rests on.
 *
 * @param temperatureC boiling point of water in °C
 * @param pressurePa air pressure in pascals
 * @param from what it was worked out from
 * @param detail the same for people, such as "1,240 m above sea level"
 */
public record WaterBoil(double temperatureC, double pressurePa, From from, String detail) {
    /** What a boiling point of water rests on. */
    public enum From {
        /** The elevation of the kitchen, through the standard atmosphere. */
        ELEVATION("elevation"),
        /** A barometer's pressure at the kitchen. */
        PRESSURE("pressure"),
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

    /** The water boil at {@code elevationM} metres above sea level in the standard atmosphere (ISO 2533). */
    public static WaterBoil atElevation(double elevationM) {
        return at(Air.pressurePa(elevationM), From.ELEVATION, "%,.0f m above sea level".formatted(elevationM));
    }

    /** The water boil at {@code pressurePa}, the pressure at the kitchen itself (not reduced to sea level). */
    public static WaterBoil atPressure(double pressurePa) {
        return at(pressurePa, From.PRESSURE, "%,.0f hPa on the barometer".formatted(pressurePa / 100));
    }

    /** The water boil at sea level, for want of anything better. */
    public static WaterBoil standard() {
        return at(Air.pressurePa(0), From.STANDARD, "sea level assumed");
    }

    private static WaterBoil at(double pressurePa, From from, String detail) {
        return new WaterBoil(Water.boilingPointC(pressurePa), pressurePa, from, detail);
    }
}
