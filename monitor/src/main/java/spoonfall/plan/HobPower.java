package spoonfall.plan;

import java.util.Arrays;
import java.util.Locale;

/**
 * What really heats the pan, after what the hob and the pan's sides lose.
 *
 * @param kW kilowatts, 0.05 to 20
 * @param relativeDoubt how far that may be off, as a share; one standard deviation
 * @param from what it rests on
 */
public record HobPower(double kW, double relativeDoubt, From from) {
    /** Grams of water that a kilowatt drives off in a minute: 60 s over 2,256.5 kJ/kg, at 100 °C (IAPWS-95). */
    public static final double G_PER_MIN_KW = 60 * 1000 / 2256.5;

    private static final double TAP_C = 15;
    private static final double WATER_KJ_PER_KG_C = 4.19;
    private static final double GIVEN_DOUBT = 0.15;

    /** Tap water is 5 to 25 °C, and nobody stops the clock to the second; common practice, no source. */
    private static final double KETTLE_DOUBT = 0.12;

    private static final double LEARNT_LEAST_DOUBT = 0.08;

    /** What a power rests on. */
    public enum From {
        /** Somebody said so. */
        GIVEN,
        /** A litre of water that was brought to the boil. */
        LITRE,
        /** Earlier cooks. */
        LEARNT;

        /** The name on the wire. */
        public String wireName() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** Refuses what is no hob. */
    public HobPower {
        if (!(kW >= 0.05 && kW <= 20)) {
            throw new IllegalArgumentException(
                    String.format(Locale.ROOT, "what heats a pan is 0.05 to 20 kW, not %.3f kW", kW));
        }
        if (!(relativeDoubt >= 0 && relativeDoubt <= 2)) {
            throw new IllegalArgumentException(
                    "the doubt of a power must be a share from 0 to 2, not " + relativeDoubt);
        }
    }

    /** A power that reaches the pan, as somebody gave it. */
    public static HobPower given(double kW) {
        return new HobPower(kW, GIVEN_DOUBT, From.GIVEN);
    }

    /**
     * The power by which a litre of cold tap water comes to the boil, in this pan on this hob.
     *
     * @param minutes how long that took, above 0
     * @param waterBoilC where water boils here
     */
    public static HobPower ofLitre(double minutes, double waterBoilC) {
        if (!(minutes > 0.5 && minutes <= 60)) {
            throw new IllegalArgumentException(
                    "a litre takes more than half a minute and up to an hour, such as 4min, not " + minutes + " min");
        }
        double kJ = WATER_KJ_PER_KG_C * (waterBoilC - TAP_C);
        return new HobPower(kJ / (60 * minutes), KETTLE_DOUBT, From.LITRE);
    }

    /**
     * The power that earlier cooks showed.
     *
     * @param waterKgPerMin what each drove off at its boil; at least one
     */
    public static HobPower learnt(double... waterKgPerMin) {
        double[] sorted = Arrays.stream(waterKgPerMin).sorted().toArray();
        if (sorted.length == 0) {
            throw new IllegalArgumentException("nothing was cooked yet to learn a power from");
        }
        double middle = (sorted[(sorted.length - 1) / 2] + sorted[sorted.length / 2]) / 2;
        double mean = Arrays.stream(sorted).average().orElse(middle);
        double spread = Math.sqrt(
                Arrays.stream(sorted).map(one -> (one - mean) * (one - mean)).sum() / Math.max(1, sorted.length - 1));
        double doubt = sorted.length == 1 ? GIVEN_DOUBT : Math.max(LEARNT_LEAST_DOUBT, spread / middle);
        return new HobPower(middle * 1000 / G_PER_MIN_KW, Math.min(2, doubt), From.LEARNT);
    }

    /** Kilograms of water that leave in a minute of boiling. */
    public double waterKgPerMin() {
        return kW * G_PER_MIN_KW / 1000;
    }
}
