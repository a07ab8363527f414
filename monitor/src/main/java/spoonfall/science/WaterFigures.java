package spoonfall.science;

import java.util.ArrayList;
import java.util.List;
import spoonfall.physics.Air;
import spoonfall.physics.GelPoint;
import spoonfall.physics.Water;

/** Published boiling points of water, pressures of the air, and gel points by altitude. */
final class WaterFigures {
    private static final double ZERO_C_K = 273.15;
    private static final double M_PER_FT = 0.3048;
    private static final double PA_PER_INHG = 3386.389;
    private static final int OUTLIER = 11;

    /** J. D. Forbes (1857), °F and inHg: the data set forbes of the R package MASS. */
    private static final String[][] FORBES = {
        {"194.5", "20.79"}, {"194.3", "20.79"}, {"197.9", "22.4"}, {"198.4", "22.67"}, {"199.4", "23.15"},
        {"199.9", "23.35"}, {"200.9", "23.89"}, {"201.1", "23.99"}, {"201.4", "24.02"}, {"201.3", "24.01"},
        {"203.6", "25.14"}, {"204.6", "26.57"}, {"209.5", "28.49"}, {"208.6", "27.76"}, {"210.7", "29.04"},
        {"211.9", "29.88"}, {"212.2", "30.06"}
    };

    private WaterFigures() {}

    static List<Group> groups() {
        return List.of(
                new Group(
                        "IAPWS R7-97, table 36: boiling point",
                        Origin.READ,
                        "K",
                        List.of(boiling("0.1", "372.755919"), boiling("1", "453.035632"), boiling("10", "584.149488"))),
                new Group(
                        "IAPWS R7-97, table 35: vapour pressure",
                        Origin.READ,
                        "MPa",
                        List.of(
                                vapour("300", "0.00353658941"),
                                vapour("500", "2.63889776"),
                                vapour("600", "12.3443146"))),
                new Group(
                        "Boiling point by pressure, from IF97 for the project's notes",
                        Origin.COMPUTED,
                        "°C",
                        pairs(
                                (hectopascals, celsius) -> Row.of(
                                        hectopascals + " hPa",
                                        celsius,
                                        Water.boilingPointC(number(hectopascals) * 100)),
                                "1030 100.434, 1013.25 99.974, 1000 99.606, 980 99.042, 950 98.178, 900 96.687,"
                                        + " 850 95.125, 800 93.485, 700 89.932")),
                new Group(
                        "ISO 2533: pressure of the air",
                        Origin.MEMORY,
                        "hPa",
                        pairs(
                                (metres, hectopascals) ->
                                        Row.of(metres + " m", hectopascals, Air.pressurePa(number(metres)) / 100),
                                "0 1013.25, 500 954.61, 1000 898.75, 2000 794.95, 3000 701.09, 5000 540.20")),
                new Group(
                        "USDA: boiling water by altitude",
                        Origin.READ,
                        "°F",
                        pairs(
                                (feet, fahrenheit) -> Row.of(feet + " ft", fahrenheit, fahrenheit(boilC(feet))),
                                "0 212.0, 1000 210.2, 2000 208.5, 3000 206.7, 4000 204.9")),
                new Group("J. D. Forbes (1857), observed, by barometer", Origin.READ, "°F", forbes(false)),
                new Group("The same, row 12: the set's known outlier", Origin.READ, "°F", forbes(true)),
                new Group(
                        "NCHFP: gel point by altitude",
                        Origin.READ,
                        "°F",
                        pairs(
                                (feet, fahrenheit) -> Row.of(
                                        feet + " ft", fahrenheit, fahrenheit(boilC(feet) + GelPoint.DEFAULT_RISE_C)),
                                "0 220, 1000 218, 2000 216, 3000 214, 4000 212, 5000 211, 6000 209, 7000 207,"
                                        + " 8000 205")));
    }

    /** Makes a row of where it holds and the published value. */
    interface Pair {
        Row row(String at, String published);
    }

    /** Rows of a list such as {@code "0 220, 1000 218"}. */
    static List<Row> pairs(Pair pair, String list) {
        List<Row> rows = new ArrayList<>();
        for (String each : list.split(", *", -1)) {
            int gap = each.indexOf(' ');
            rows.add(pair.row(each.substring(0, gap), each.substring(gap + 1)));
        }
        return rows;
    }

    private static Row boiling(String megapascals, String kelvin) {
        return Row.of(megapascals + " MPa", kelvin, Water.boilingPointC(number(megapascals) * 1e6) + ZERO_C_K);
    }

    private static Row vapour(String kelvin, String megapascals) {
        return Row.of(kelvin + " K", megapascals, Water.saturationPressurePa(number(kelvin) - ZERO_C_K) / 1e6);
    }

    private static List<Row> forbes(boolean outlier) {
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < FORBES.length; i++) {
            if (outlier == (i == OUTLIER)) {
                double pressurePa = number(FORBES[i][1]) * PA_PER_INHG;
                rows.add(Row.of(FORBES[i][1] + " inHg", FORBES[i][0], fahrenheit(Water.boilingPointC(pressurePa))));
            }
        }
        return rows;
    }

    private static double boilC(String feet) {
        return Water.boilingPointC(Air.pressurePa(number(feet) * M_PER_FT));
    }

    private static double fahrenheit(double celsius) {
        return celsius * 1.8 + 32;
    }

    private static double number(String text) {
        return Double.parseDouble(text);
    }
}
