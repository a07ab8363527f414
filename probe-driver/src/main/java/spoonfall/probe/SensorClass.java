package spoonfall.probe;

import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * How far a new sensor of a class may be off by its standard, before anybody compares it with anything. The limits at
 * 100 °C of PT_A, PT_B, K_2 and T_1 are in the project's science notes; the others are from memory. Those of
 * thermocouples are the constant part, which rules up to 125 °C and more.
 */
public enum SensorClass {
    /** Platinum, IEC 60751 class A. */
    PT_A(0.15, 0.002),
    /** Platinum, IEC 60751 class B. */
    PT_B(0.3, 0.005),
    /** Thermocouple K, IEC 60584-1 class 1. */
    K_1(1.5, 0),
    /** Thermocouple K, IEC 60584-1 class 2. */
    K_2(2.5, 0),
    /** Thermocouple T, IEC 60584-1 class 1. */
    T_1(0.5, 0),
    /** Thermocouple T, IEC 60584-1 class 2. */
    T_2(1.0, 0),
    /** Thermocouple J, IEC 60584-1 class 1. */
    J_1(1.5, 0),
    /** Thermocouple J, IEC 60584-1 class 2. */
    J_2(2.5, 0);

    private final double limitAtZeroC;
    private final double perDegree;

    SensorClass(double limitAtZeroC, double perDegree) {
        this.limitAtZeroC = limitAtZeroC;
        this.perDegree = perDegree;
    }

    /** How far it may be off, in °C, at {@code temperatureC}. */
    public double limitC(double temperatureC) {
        return limitAtZeroC + perDegree * Math.abs(temperatureC);
    }

    /** The name in a spec, such as {@code pt-a}. */
    public String wireName() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    static SensorClass named(String text) {
        return Arrays.stream(values())
                .filter(one -> one.wireName().equals(text))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("class must be "
                        + Arrays.stream(values()).map(SensorClass::wireName).collect(Collectors.joining(", "))
                        + ", not \"" + text + "\""));
    }

    static Optional<SensorClass> in(Map<String, String> options) {
        return Optional.ofNullable(options.get("class")).map(SensorClass::named);
    }
}
