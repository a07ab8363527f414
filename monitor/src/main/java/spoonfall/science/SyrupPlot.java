package spoonfall.science;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import spoonfall.physics.Air;
import spoonfall.physics.GelPoint;
import spoonfall.physics.Syrup;

/** Draws the syrup curve with its doubt and the published points. */
final class SyrupPlot {
    private static final double ATM = Air.SEA_LEVEL_PA;
    private static final int WIDTH = 860;
    private static final int HEIGHT = 600;
    private static final double LEFT = 70;
    private static final double RIGHT = 835;
    private static final double TOP = 20;
    private static final double BOTTOM = 535;
    private static final int FROM_PERCENT = 38;
    private static final int LEAST_PERCENT = 40;
    private static final int MOST_PERCENT = 80;
    private static final int TO_PERCENT = 82;
    private static final int TO_RISE_C = 15;
    private static final double LEGEND_X = 100;
    private static final double LEGEND_Y = 50;
    private static final double LEGEND_LINE = 25;

    private static final String TITLE = "How far a syrup boils above water";
    private static final String DESCRIPTION =
            "Rise of the boiling point in °C at sea level against the sugar from 40 to 80"
                    + " percent: the curve of Spoonfall with two of its doubts to either side, the same with a fifth inverted, and"
                    + " published points.";
    private static final String STYLE = ".paper{fill:#fff}text{font:15px sans-serif;fill:#222}"
            + ".grid{stroke:#ddd}.axis{stroke:#222}.band{fill:#1f6fb2;fill-opacity:.18}"
            + ".ours,.part,.gel{fill:none;stroke:#1f6fb2;stroke-width:2.5}.part{stroke-dasharray:8 5}"
            + ".gel{stroke:#222;stroke-width:1.5;stroke-dasharray:2 4}.mark{fill:none;stroke:#a23b00;stroke-width:2}"
            + "@media(prefers-color-scheme:dark){.paper{fill:#16191d}text{fill:#e6e6e6}.grid{stroke:#3a3f45}"
            + ".axis,.gel{stroke:#e6e6e6}.band{fill:#6db3ee;fill-opacity:.25}.ours,.part{stroke:#6db3ee}"
            + ".mark{stroke:#ff9e57}}";

    /** The shapes of the points, one for a source: circle, square, triangle, diamond, cross, plus. */
    private static final List<String> SHAPES = List.of(
            "M-6 0a6 6 0 1 0 12 0a6 6 0 1 0 -12 0",
            "M-5 -5h10v10h-10z",
            "M0 -7l6.5 12h-13z",
            "M0 -7l7 7l-7 7l-7 -7z",
            "M-5 -5l10 10M-5 5l10 -10",
            "M-6 0h12M0 -6v12");

    private final SvgWriter svg = new SvgWriter(WIDTH, HEIGHT, TITLE, DESCRIPTION, STYLE);

    String svg(List<Group> sources) {
        svg.leaf("rect", "class", "paper", "width", String.valueOf(WIDTH), "height", String.valueOf(HEIGHT));
        axes();
        curves();
        points(sources);
        legend(sources);
        return svg.end();
    }

    private void axes() {
        for (int percent = LEAST_PERCENT; percent <= MOST_PERCENT; percent += 5) {
            svg.line("grid", x(percent), TOP, x(percent), BOTTOM);
            svg.text(x(percent), BOTTOM + 22, "middle", percent + " %");
        }
        for (int riseC = 0; riseC <= TO_RISE_C; riseC += 2) {
            svg.line(riseC == 0 ? "axis" : "grid", LEFT, y(riseC), RIGHT, y(riseC));
            svg.text(LEFT - 10, y(riseC) + 5, "end", riseC + " °C");
        }
        svg.text((LEFT + RIGHT) / 2, BOTTOM + 50, "middle", "sugar, by mass");
        svg.line("gel", LEFT, y(GelPoint.DEFAULT_RISE_C), RIGHT, y(GelPoint.DEFAULT_RISE_C));
        svg.text(RIGHT - 5, y(GelPoint.DEFAULT_RISE_C) - 8, "end", "the gel point, 8 °F");
    }

    private void curves() {
        List<String> band = new ArrayList<>(line(solids -> riseC(solids) + 2 * Syrup.doubtC(ATM, solids, 0)));
        List<String> low = line(solids -> riseC(solids) - 2 * Syrup.doubtC(ATM, solids, 0));
        for (int i = low.size() - 1; i >= 0; i--) {
            band.add(low.get(i));
        }
        svg.leaf("polygon", "class", "band", "points", String.join(" ", band));
        svg.leaf("polyline", "class", "ours", "points", String.join(" ", line(SyrupPlot::riseC)));
        svg.leaf("polyline", "class", "part", "points", String.join(" ", line(SyrupPlot::invertedRiseC)));
    }

    private void points(List<Group> sources) {
        for (int i = 0; i < sources.size(); i++) {
            for (Row row : sources.get(i).rows()) {
                double percent = row.curve().orElseThrow().solids() * 100;
                if (percent <= MOST_PERCENT) {
                    mark(i, x(percent), y(row.publishedValue()));
                }
            }
        }
    }

    private void legend(List<Group> sources) {
        String height = Row.fixed(LEGEND_LINE * (sources.size() + 2), 1);
        svg.leaf(
                "rect",
                "class",
                "paper",
                "x",
                Row.fixed(LEGEND_X - 10, 1),
                "y",
                Row.fixed(LEGEND_Y - LEGEND_LINE / 2, 1),
                "width",
                "440",
                "height",
                height);
        svg.leaf(
                "polyline",
                "class",
                "ours",
                "points",
                point(LEGEND_X, legendY(0)) + " " + point(LEGEND_X + 30, legendY(0)));
        svg.text(LEGEND_X + 40, legendY(0) + 5, "start", "Spoonfall, sucrose; the band is two doubts to either side");
        svg.leaf(
                "polyline",
                "class",
                "part",
                "points",
                point(LEGEND_X, legendY(1)) + " " + point(LEGEND_X + 30, legendY(1)));
        svg.text(LEGEND_X + 40, legendY(1) + 5, "start", "Spoonfall, a fifth inverted");
        for (int i = 0; i < sources.size(); i++) {
            mark(i, LEGEND_X + 15, legendY(i + 2));
            svg.text(LEGEND_X + 40, legendY(i + 2) + 5, "start", sources.get(i).name());
        }
    }

    private void mark(int source, double x, double y) {
        String move = "translate(" + Row.fixed(x, 1) + " " + Row.fixed(y, 1) + ")";
        svg.leaf("path", "class", "mark", "transform", move, "d", SHAPES.get(source));
    }

    private static List<String> line(DoubleUnaryOperator riseC) {
        List<String> points = new ArrayList<>();
        for (int half = 2 * LEAST_PERCENT; half <= 2 * MOST_PERCENT; half++) {
            points.add(point(x(half / 2.0), y(riseC.applyAsDouble(half / 200.0))));
        }
        return points;
    }

    private static double riseC(double solids) {
        return Syrup.riseC(ATM, solids, 0);
    }

    private static double invertedRiseC(double solids) {
        return Syrup.riseC(ATM, solids, Syrup.TYPICAL_INVERTED);
    }

    private static String point(double x, double y) {
        return Row.fixed(x, 1) + "," + Row.fixed(y, 1);
    }

    private static double legendY(int line) {
        return LEGEND_Y + line * LEGEND_LINE;
    }

    private static double x(double percent) {
        return LEFT + (percent - FROM_PERCENT) / (TO_PERCENT - FROM_PERCENT) * (RIGHT - LEFT);
    }

    private static double y(double riseC) {
        return BOTTOM - riseC / TO_RISE_C * (BOTTOM - TOP);
    }
}
