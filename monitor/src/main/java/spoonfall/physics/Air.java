package spoonfall.physics;

/** The standard atmosphere (ISO 2533, the same as ISA) up to 11 km. */
public final class Air {
    /** Pressure at sea level, in pascals. */
    public static final double SEA_LEVEL_PA = 101_325;

    private static final double LAPSE_K_PER_M = 0.0065;
    private static final double SEA_LEVEL_K = 288.15;
    private static final double EXPONENT = 5.25588;
    private static final double LOWEST_M = -1_000;
    private static final double HIGHEST_M = 11_000;

    private Air() {}

    /**
     * Pressure of the standard atmosphere.
     *
     * @param elevationM metres above sea level, from -1,000 to 11,000
     * @return pascals
     */
    public static double pressurePa(double elevationM) {
        if (!(elevationM >= LOWEST_M && elevationM <= HIGHEST_M)) {
            throw new IllegalArgumentException(
                    "elevation must be -1,000 to 11,000 m for the standard atmosphere, not " + elevationM + " m");
        }
        return SEA_LEVEL_PA * Math.pow(1 - LAPSE_K_PER_M * elevationM / SEA_LEVEL_K, EXPONENT);
    }

    /**
     * The elevation at which the standard atmosphere has that pressure: the inverse of {@link #pressurePa}.
     *
     * @param pressurePa in pascals
     * @return metres above sea level
     */
    public static double elevationM(double pressurePa) {
        if (!(pressurePa >= pressurePa(HIGHEST_M) && pressurePa <= pressurePa(LOWEST_M))) {
            throw new IllegalArgumentException("no elevation has a pressure of " + pressurePa + " Pa");
        }
        return (1 - Math.pow(pressurePa / SEA_LEVEL_PA, 1 / EXPONENT)) * SEA_LEVEL_K / LAPSE_K_PER_M;
    }
}
