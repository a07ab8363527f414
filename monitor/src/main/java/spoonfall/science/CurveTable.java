package spoonfall.science;

import java.util.Arrays;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import spoonfall.physics.Air;
import spoonfall.physics.Syrup;
import spoonfall.physics.SyrupDensity;

/** Writes the syrup curve itself as a Markdown table: rise, slope, doubt and density by sugar. */
final class CurveTable {
    private static final double ATM = Air.SEA_LEVEL_PA;
    private static final int[] PERCENTS = {40, 50, 60, 62, 64, 65, 66, 68, 70, 75, 80, 85};

    private CurveTable() {}

    static String markdown() {
        return row("sugar, %", String::valueOf)
                + row("---", percent -> "---")
                + row("rise, °C", percent -> Row.fixed(Syrup.riseC(ATM, percent / 100.0, 0), 2))
                + row(
                        "rise with a fifth inverted, °C",
                        percent -> Row.fixed(Syrup.riseC(ATM, percent / 100.0, Syrup.TYPICAL_INVERTED), 2))
                + row(
                        "slope, °C a point of sugar",
                        percent -> Row.fixed(Syrup.riseSlopeC(ATM, percent / 100.0, 0) / 100, 2))
                + row(
                        "a tenth more inverted, °C",
                        percent -> Row.fixed(Syrup.riseByInvertedC(ATM, percent / 100.0, 0) / 10, 2))
                + row("doubt of the rise, °C", percent -> Row.fixed(Syrup.doubtC(ATM, percent / 100.0, 0), 2))
                + row(
                        "doubt of the sugar, points",
                        percent -> Row.fixed(Syrup.solidsDoubt(ATM, percent / 100.0, 0) * 100, 1))
                + row("density at 20 °C, kg/L", percent -> Row.fixed(SyrupDensity.kgPerL(percent / 100.0), 3));
    }

    private static String row(String name, IntFunction<String> cell) {
        return Arrays.stream(PERCENTS).mapToObj(cell).collect(Collectors.joining(" | ", "| " + name + " | ", " |\n"));
    }
}
