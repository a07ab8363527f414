package spoonfall.kitchen.typed;

import java.util.Optional;
import java.util.function.Function;
import spoonfall.cook.WaterBoil;
import spoonfall.kitchen.ask.Refusal;
import spoonfall.units.Quantities;

/** Where water boils, as somebody typed it: an elevation, a barometer, or a weather report with the elevation. */
public final class TypedBase {
    private TypedBase() {}

    /**
     * The water boil by what was typed.
     *
     * @param elevation such as {@code 1240m}
     * @param pressure such as {@code 898hPa}
     * @param where whose pressure it is: {@code kitchen} or {@code sea-level}; needed with a pressure, for weather
     *     reports give it for sea level
     * @throws Refusal with one line that says what is missing or not understood
     */
    public static WaterBoil waterBoil(Optional<String> elevation, Optional<String> pressure, Optional<String> where) {
        if (pressure.isEmpty()) {
            String height = elevation.orElseThrow(
                    () -> new Refusal("give an elevation, such as 1240m, or an air pressure, such as 898hPa"));
            return WaterBoil.atElevation(read(Quantities::elevationM, height));
        }
        double pressurePa = read(Quantities::pressurePa, pressure.get());
        return switch (where.orElse("")) {
            case "kitchen" -> WaterBoil.atPressure(pressurePa);
            case "sea-level" ->
                WaterBoil.atSeaLevelPressure(
                        pressurePa,
                        read(
                                Quantities::elevationM,
                                elevation.orElseThrow(() -> new Refusal(
                                        "a pressure for sea level needs the kitchen's elevation too, such as 1240m"))));
            default ->
                throw new Refusal("say where the pressure was measured: \"kitchen\" (on a barometer there) or"
                        + " \"sea-level\" (from a weather report)");
        };
    }

    private static double read(Function<String, Double> parse, String text) {
        try {
            return parse.apply(text);
        } catch (IllegalArgumentException e) {
            throw new Refusal(String.valueOf(e.getMessage()), e);
        }
    }
}
