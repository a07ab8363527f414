package spoonfall.probe.line;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

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

    private static final Pattern IN_NAME = Pattern.compile(".*(?<word>(?i:celsius|fahrenheit|kelvin)).*"
            + "|.*[(\\[°](?<bracketed>[CFKcfk])[)\\]]?"
            + "|.*(?i:temp).*[_ -](?<apart>[CFKcfk])"
            + "|.*(?i:temp|temperature)(?<last>[CFK])");

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

    /** The unit of a letter, a word or a sign, such as {@code F}, {@code fahrenheit} or {@code ℉}. */
    static Optional<TemperatureUnit> written(String text) {
        return switch (text) {
            case "℃" -> Optional.of(C);
            case "℉" -> Optional.of(F);
            default -> of(text.substring(0, 1));
        };
    }

    /** The unit that the name of a column or a field says, as {@code temp_f} or {@code Temperature (°F)} does. */
    public static Optional<TemperatureUnit> inName(String name) {
        Matcher matcher = IN_NAME.matcher(name.strip());
        if (!matcher.matches()) {
            return Optional.empty();
        }
        for (String group : new String[] {"word", "bracketed", "apart", "last"}) {
            if (matcher.group(group) != null) {
                return written(matcher.group(group));
            }
        }
        return Optional.empty();
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
