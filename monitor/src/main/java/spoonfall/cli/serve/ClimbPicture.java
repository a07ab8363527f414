package spoonfall.cli.serve;

import java.io.PrintWriter;
import java.util.Arrays;
import java.util.Locale;
import java.util.OptionalDouble;
import spoonfall.cook.CookSettings;
import spoonfall.probe.trace.Trace;

/** The climb of a cook in characters: height is the rise above the water boil. */
final class ClimbPicture {
    private static final int WIDTH = 72;
    private static final int HEIGHT = 15;
    private static final double ABOVE_C = 1.2;

    private ClimbPicture() {}

    static void print(PrintWriter out, Trace trace, CookSettings settings) {
        double waterBoilC = settings.waterBoil().temperatureC();
        double topC = settings.riseC() + ABOVE_C;
        double[] rises = rises(trace, waterBoilC);
        out.println();
        for (int row = HEIGHT; row >= 0; row--) {
            double riseC = topC * row / HEIGHT;
            double stepC = topC / HEIGHT;
            char ground = covers(riseC, stepC, settings.riseC()) ? '-' : inWindow(riseC, settings) ? '.' : ' ';
            char[] cells = new char[WIDTH];
            Arrays.fill(cells, ground);
            for (int column = 0; column < WIDTH; column++) {
                if (!Double.isNaN(rises[column]) && rises[column] >= riseC) {
                    cells[column] = rises[column] < riseC + stepC ? '#' : ':';
                }
            }
            out.printf(Locale.ROOT, "%+6.1f° |%s%s%n", riseC, new String(cells), label(riseC, stepC, settings));
        }
        out.printf(Locale.ROOT, "        +%s%n", "-".repeat(WIDTH));
        out.printf(Locale.ROOT, "         0%" + (WIDTH - 5) + ".0f min%n", trace.lastS() / 60);
        out.printf(
                Locale.ROOT,
                "Water boils at %.1f °C (%s); it sets at %.1f °C.%n",
                waterBoilC,
                settings.waterBoil().detail(),
                settings.gelPointC());
    }

    private static String label(double riseC, double stepC, CookSettings settings) {
        return covers(riseC, stepC, settings.riseC()) ? " sets here" : "";
    }

    private static boolean covers(double riseC, double stepC, double ofC) {
        return ofC >= riseC && ofC < riseC + stepC;
    }

    private static boolean inWindow(double riseC, CookSettings settings) {
        double fromC = settings.windowFromC() - settings.waterBoil().temperatureC();
        return riseC >= fromC && riseC <= settings.riseC();
    }

    /** The rise in each column; NaN, here alone, where the trace has nothing. */
    private static double[] rises(Trace trace, double waterBoilC) {
        double[] rises = new double[WIDTH];
        Arrays.fill(rises, Double.NaN);
        for (int i = 0; i < trace.size(); i++) {
            OptionalDouble temperatureC = trace.temperatureC(i);
            int column = (int) Math.min(WIDTH - 1, WIDTH * trace.elapsedS(i) / Math.max(1, trace.lastS()));
            if (temperatureC.isPresent()) {
                rises[column] = temperatureC.getAsDouble() - waterBoilC;
            }
        }
        return rises;
    }
}
