package spoonfall.calibration;

/**
 * What a thermometer is compared with.
 *
 * @param kind boiling water or ice
 * @param temperatureC its true temperature in °C
 * @param limitC how far it may be off at most, in °C; anything within is as likely
 */
public record Reference(Kind kind, double temperatureC, double limitC) {
    /** A kitchen's slush of clean ice (ASTM E563 makes it far better than that); common practice, no source. */
    private static final double ICE_C = 0.1;

    /** What a thermometer is compared with. */
    public enum Kind {
        /** Plain water at a rolling boil. */
        BOILING_WATER,
        /** A well-stirred slush of clean crushed ice and water. */
        ICE
    }

    /** Validates the numbers. */
    public Reference {
        if (!Double.isFinite(temperatureC) || !(limitC >= 0)) {
            throw new IllegalArgumentException("no reference: " + temperatureC + " °C ± " + limitC);
        }
    }

    /** Plain water that boils at {@code temperatureC}, known to {@code limitC}. */
    public static Reference boilingWater(double temperatureC, double limitC) {
        return new Reference(Kind.BOILING_WATER, temperatureC, limitC);
    }

    /**
     * Plain water that boils wherever people cook: 79 °C at 450 hPa to 102 °C at 1085 hPa, and the thermometer may be
     * off by 3 °C.
     */
    public static Reference boilingWaterAnywhere() {
        return new Reference(Kind.BOILING_WATER, 90.5, 14.5);
    }

    /** The ice point, 0 °C (ASTM E563). */
    public static Reference ice() {
        return new Reference(Kind.ICE, 0, ICE_C);
    }
}
