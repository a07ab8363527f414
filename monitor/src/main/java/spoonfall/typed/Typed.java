package spoonfall.typed;

import java.math.BigDecimal;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import spoonfall.probe.line.TemperatureUnit;

/**
 * A temperature as somebody typed it.
 *
 * @param value the number, as it was typed
 * @param unit the unit that it was typed in: °C or °F
 */
public record Typed(double value, TemperatureUnit unit) {
    private static final Pattern FORM =
            Pattern.compile("\\s*(?<number>[+-]?\\d{1,6}(?:[.,]\\d{1,3})?)\\s*°?\\s*(?<unit>[CcFf])\\s*");

    /** Validates the number and the unit. */
    public Typed {
        if (!Double.isFinite(value) || Math.abs(value) > 1e6) {
            throw new IllegalArgumentException("not a temperature: " + value);
        }
        if (unit == TemperatureUnit.K) {
            throw new IllegalArgumentException("a pan thermometer shows °C or °F");
        }
        value += 0.0; // there is no zero below zero
    }

    /**
     * Reads what was typed, such as {@code 100.4C} or {@code 212,7 °F}.
     *
     * @throws IllegalArgumentException with one line that gives a good one
     */
    public static Typed parse(String text) {
        Matcher matcher = FORM.matcher(text);
        if (!matcher.matches()) {
            throw new IllegalArgumentException(
                    "\"" + text + "\" is not a temperature with its unit; write it like 100.4C or 212.7F");
        }
        double value = Double.parseDouble(matcher.group("number").replace(',', '.'));
        return new Typed(value, TemperatureUnit.of(matcher.group("unit")).orElseThrow());
    }

    /** In °C. */
    public double temperatureC() {
        return unit.toC(value);
    }

    /** The same digits with the point so many places further right. */
    Typed shifted(int places) {
        return new Typed(BigDecimal.valueOf(value).movePointRight(places).doubleValue(), unit);
    }

    /** As people write it, such as {@code 212.7 °F}. */
    public String text() {
        return number() + " " + unit.sign();
    }

    /** As {@link #parse} reads it, such as {@code 212.7F}. */
    public String wire() {
        return number() + unit;
    }

    private String number() {
        BigDecimal plain = BigDecimal.valueOf(value).stripTrailingZeros();
        return (plain.scale() < 0 ? plain.setScale(0) : plain).toPlainString();
    }
}
