package spoonfall.probe.line;

import java.util.Locale;
import java.util.Optional;

/** The unit in which a probe speaks. */
public enum TemperatureUnit {
    /** Degrees Celsius. */
    C("°C") {
        @Override
        public double toC(double value) {
            return value;
        }
    },
    /** Degrees Fahrenheit. */
    F("°F") {
        @Override
        public double toC(double value) {
            return (value - 32) / 1.8;
        }
    },
    /** Kelvin. */
    K("K") {
        @Override
        public double toC(double value) {
            return value - 273.15;
        }
    };

    private final String sign;

    TemperatureUnit(String sign) {
        this.sign = sign;
    }

    /** A temperature in this unit, in °C. */
    public abstract double toC(double value);

    /** How the unit is written. */
    public String sign() {
        return sign;
    }

    /** The unit of a letter, in either case. */
    public static Optional<TemperatureUnit> of(String letter) {
        return switch (letter.toUpperCase(Locale.ROOT)) {
            case "C" -> Optional.of(C);
            case "F" -> Optional.of(F);
            case "K" -> Optional.of(K);
            default -> Optional.empty();
        };
    }
}
