package spoonfall.physics;

/**
 * Boiling water: the saturation line of IAPWS R7-97 (IF97), region 4, equations 30 and 31, which are exact
 * inverses of each other. Valid from 611.213 Pa to 22.064 MPa.
 */
public final class Water {
    private static final double[] N = {
        0.11670521452767e4,
        -0.72421316703206e6,
        -0.17073846940092e2,
        0.12020824702470e5,
        -0.32325550322333e7,
        0.14915108613530e2,
        -0.48232657361591e4,
        0.40511340542057e6,
        -0.23855557567849,
        0.65017534844798e3
    };
    private static final double ZERO_C_K = 273.15;
    private static final double LOWEST_PA = 611.2;
    private static final double HIGHEST_PA = 22.064e6;
    private static final double LOWEST_K = 273.15;
    private static final double HIGHEST_K = 647.096;

    private Water() {}

    /**
     * The temperature at which plain water boils.
     *
     * @param pressurePa air pressure at the pan, 611.2 Pa to 22.064 MPa
     * @return °C
     */
    public static double boilingPointC(double pressurePa) {
        if (!(pressurePa >= LOWEST_PA && pressurePa <= HIGHEST_PA)) {
            throw new IllegalArgumentException(
                    "pressure must be 611.2 Pa to 22.064 MPa for water to boil, not " + pressurePa + " Pa");
        }
        double theta = theta(pressurePa);
        double sum = N[9] + theta;
        return (sum - Math.sqrt(sum * sum - 4 * (N[8] + N[9] * theta))) / 2 - ZERO_C_K;
    }

    /**
     * How much the boiling point grows with the pressure: the exact derivative of {@link #boilingPointC}.
     *
     * @param pressurePa air pressure at the pan, 611.2 Pa to 22.064 MPa
     * @return °C per pascal
     */
    public static double boilingSlopeCPerPa(double pressurePa) {
        double kelvin = boilingPointC(pressurePa) + ZERO_C_K;
        double beta = beta(pressurePa);
        double theta = theta(pressurePa);
        double byBeta = theta * theta * (2 * beta + N[2]) + theta * (2 * N[0] * beta + N[3]) + 2 * N[1] * beta + N[4];
        double byTheta = 2 * theta * (beta * beta + N[2] * beta + N[5]) + N[0] * beta * beta + N[3] * beta + N[6];
        double thetaByPa = -byBeta / byTheta * beta / (4 * pressurePa);
        return thetaByPa * (kelvin - N[9]) / (2 * kelvin - N[9] - theta);
    }

    private static double beta(double pressurePa) {
        return Math.sqrt(Math.sqrt(pressurePa / 1e6));
    }

    private static double theta(double pressurePa) {
        double beta = beta(pressurePa);
        double e = beta * beta + N[2] * beta + N[5];
        double f = N[0] * beta * beta + N[3] * beta + N[6];
        double g = N[1] * beta * beta + N[4] * beta + N[7];
        return 2 * g / (-f - Math.sqrt(f * f - 4 * e * g));
    }

    /**
     * The pressure at which plain water boils.
     *
     * @param temperatureC 0 to 373.946 °C
     * @return pascals
     */
    public static double saturationPressurePa(double temperatureC) {
        double kelvin = temperatureC + ZERO_C_K;
        if (!(kelvin >= LOWEST_K && kelvin <= HIGHEST_K)) {
            throw new IllegalArgumentException(
                    "temperature must be 0 to 373.946 °C for water to boil, not " + temperatureC + " °C");
        }
        double theta = kelvin + N[8] / (kelvin - N[9]);
        double a = theta * theta + N[0] * theta + N[1];
        double b = N[2] * theta * theta + N[3] * theta + N[4];
        double c = N[5] * theta * theta + N[6] * theta + N[7];
        double root = 2 * c / (-b + Math.sqrt(b * b - 4 * a * c));
        return root * root * root * root * 1e6;
    }
}
