package spoonfall.science;

import java.util.List;
import java.util.Optional;
import spoonfall.physics.Air;
import spoonfall.physics.GelPoint;
import spoonfall.physics.Inversion;
import spoonfall.physics.Syrup;
import spoonfall.physics.SyrupDensity;

/** Published boiling points of syrup, their inverse, rates of inversion and densities. */
final class SyrupFigures {
    private static final double ATM = Air.SEA_LEVEL_PA;

    private SyrupFigures() {}

    /** Published rises of sucrose syrups at sea level, which the curve and its doubt are judged by; °C. */
    static List<Group> published() {
        return List.of(
                new Group(
                        "Browne (1912)",
                        Origin.READ,
                        "°C",
                        rises("40 1.5, 50 2.0, 60 3.0, 62 3.4, 64 4.0, 66 4.8, 68 5.6, 70 6.5, 80 12.0")),
                new Group("Cruess and McNair, in Lowe, Experimental Cookery", Origin.READ, "°C", rises("65 3.9")),
                new Group("Maple syrup", Origin.READ, "°C", List.of(rise("66 %, 7.1 °F above water", 66, 0, "3.944"))),
                new Group(
                        "Practical Action",
                        Origin.READ,
                        "°C",
                        List.of(rise("68 %, 105 °C less water's 99.974", 68, 0, "5.026"))),
                new Group(
                        "Sugar stages, the middle of each",
                        Origin.READ,
                        "°C",
                        List.of(
                                rise("thread, 80 %, 230 to 234 °F", 80, 0, "11.137"),
                                rise("soft ball, 85 %, 234 to 241 °F", 85, 0, "14.193"),
                                rise("firm ball, 87 %, 244 to 248 °F", 87, 0, "18.915"))),
                new Group(
                        "Starzak and Peacock (1997), their formula",
                        Origin.MEMORY,
                        "°C",
                        rises(
                                "40 1.15, 50 1.82, 60 2.94, 62 3.25, 64 3.60, 65 3.79, 66 4.00, 68 4.46, 70 4.99, 75 6.74,"
                                        + " 80 9.46")));
    }

    /** What holds the curve's own numbers still, and what else is known of syrup. */
    static List<Group> others() {
        return List.of(
                new Group(
                        "Norrish on IF97, for the project's notes",
                        Origin.COMPUTED,
                        "°C",
                        rises(
                                "40 1.18, 50 1.90, 60 3.13, 62 3.48, 64 3.88, 65 4.10, 66 4.34, 68 4.88, 70 5.51, 75 7.65,"
                                        + " 80 11.21")),
                new Group(
                        "The same with part inverted",
                        Origin.COMPUTED,
                        "°C",
                        List.of(
                                inverted(60, 0.2, "3.52"),
                                inverted(60, 0.35, "3.82"),
                                inverted(60, 0.5, "4.11"),
                                inverted(65, 0.2, "4.58"),
                                inverted(65, 0.35, "4.94"),
                                inverted(65, 0.5, "5.29"),
                                inverted(68, 0.2, "5.42"),
                                inverted(68, 0.35, "5.82"),
                                inverted(68, 0.5, "6.21"))),
                new Group(
                        "The same at 697 hPa",
                        Origin.COMPUTED,
                        "°C",
                        List.of(Row.of("65 %", "3.85", Syrup.riseC(69_700, 0.65, 0)))),
                new Group(
                        "Sugar at 8 °F above water, for the project's notes",
                        Origin.COMPUTED,
                        "%",
                        List.of(set(0, "66.4"), set(0.2, "64.4"), set(0.3, "63.5"))),
                new Group(
                        "Vukov's rate of inversion at 104 °C and 65 %",
                        Origin.MEMORY,
                        "/min",
                        List.of(vukov("2.8", "0.052"), vukov("3.0", "0.033"), vukov("3.2", "0.021"))),
                new Group(
                        "CRC Handbook: density at 20 °C",
                        Origin.READ,
                        "kg/L",
                        WaterFigures.pairs(
                                (percent, kgPerL) -> Row.of(
                                        percent + " %", kgPerL, SyrupDensity.kgPerL(Double.parseDouble(percent) / 100)),
                                "0 0.9982, 10 1.0381, 20 1.0810, 30 1.1270, 40 1.1765, 50 1.2295, 60 1.2864, 64 1.3103,"
                                        + " 66 1.3224, 68 1.3348, 70 1.3472, 74 1.3726, 80 1.4117, 84 1.4383")));
    }

    private static List<Row> rises(String list) {
        return WaterFigures.pairs(
                (percent, riseC) -> rise(percent + " %", Double.parseDouble(percent), 0, riseC), list);
    }

    private static Row inverted(double percent, double share, String riseC) {
        return rise(Row.fixed(percent, 0) + " %, " + share + " inverted", percent, share, riseC);
    }

    private static Row rise(String point, double percent, double share, String riseC) {
        double solids = percent / 100;
        Row.OnCurve place = new Row.OnCurve(solids, Syrup.doubtC(ATM, solids, share));
        return new Row(point, riseC, Syrup.riseC(ATM, solids, share), Optional.of(place));
    }

    private static Row set(double share, String percent) {
        return Row.of(share + " inverted", percent, Syrup.solids(ATM, GelPoint.DEFAULT_RISE_C, share) * 100);
    }

    private static Row vukov(String ph, String perMin) {
        return Row.of("pH " + ph, perMin, Inversion.ratePerMin(104, 0.65, Double.parseDouble(ph)));
    }
}
