package spoonfall.paper;

import java.util.Locale;
import java.util.OptionalDouble;
import spoonfall.book.RiseLine;
import spoonfall.cook.CookSettings;
import spoonfall.log.store.book.BookPage;
import spoonfall.log.store.book.BookTest;
import spoonfall.words.Plain;

/** The climb of a cook as an SVG that stands by itself: height is the rise above the water boil. */
final class ClimbSvg {
    private static final double WIDTH = 900;
    private static final double HEIGHT = 420;
    private static final double LEFT = 60;
    private static final double BOTTOM = 40;
    private static final double RIGHT = 16;
    private static final double TOP = 12;
    private static final double ABOVE_C = 1.2;
    private static final int MOST_POINTS = 1200;
    private static final double BEFORE_BOIL_S = 300;
    private static final int[] STEPS_MIN = {1, 2, 5, 10, 15, 30, 60, 120, 240, 480};
    private static final int MOST_STEPS = 10;

    private final BookPage page;
    private final double fromS;
    private final double toS;
    private final double topC;
    private final Markup svg = new Markup();

    private ClimbSvg(BookPage page) {
        this.page = page;
        OptionalDouble boilS = page.marks().boilS();
        fromS = boilS.isPresent() ? Math.max(0, boilS.getAsDouble() - BEFORE_BOIL_S) : 0;
        toS = Math.max(fromS + 60, page.line().lastT());
        topC = Math.max(page.settings().riseC(), page.marks().finalRiseC().orElse(0)) + ABOVE_C;
    }

    static String of(BookPage page) {
        return new ClimbSvg(page).drawn();
    }

    private String drawn() {
        CookSettings settings = page.settings();
        svg.raw(format(
                "<svg viewBox=\"0 0 %.0f %.0f\" role=\"img\" aria-labelledby=\"climb-title\">\n", WIDTH, HEIGHT));
        svg.raw("<title id=\"climb-title\">").text(title()).raw("</title>\n");
        double gelY = y(settings.riseC());
        double windowY = y(settings.windowFromC() - settings.waterBoil().temperatureC());
        svg.raw(format(
                "<rect class=\"window\" x=\"%.1f\" y=\"%.1f\" width=\"%.1f\" height=\"%.1f\"/>\n",
                LEFT, gelY, WIDTH - LEFT - RIGHT, windowY - gelY));
        line();
        rule(gelY, "gel");
        rule(y(0), "base");
        words(LEFT + 8, gelY - 7, "start", "was to set here: " + celsius(settings.gelPointC()));
        words(
                LEFT + 8,
                y(0) - 8,
                "start",
                "water boils: " + celsius(settings.waterBoil().temperatureC()));
        axes();
        for (BookTest test : page.tests()) {
            test.riseC()
                    .ifPresent(riseC -> svg.raw(format(
                            "<path class=\"%s\" d=\"M%.1f %.1fl8 8l-8 8l-8 -8z\"/>\n",
                            test.set() ? "set" : "test", x(test.t()), y(riseC) - 8)));
        }
        return svg.raw("</svg>\n").toString();
    }

    private String title() {
        String highest = page.marks().finalRiseC().isPresent()
                ? format(
                        "It rose to %.1f °C above boiling water. ",
                        page.marks().finalRiseC().getAsDouble())
                : "";
        return format(
                "The climb. %sIt was to set %.1f °C above it.",
                highest, page.settings().riseC());
    }

    private void line() {
        Outline outline = new Outline(y(0));
        for (RiseLine.Point point : page.line().thinned(MOST_POINTS)) {
            if (point.t() < fromS) {
                continue;
            }
            point.riseC().ifPresentOrElse(riseC -> outline.to(x(point.t()), y(riseC)), outline::lift);
        }
        outline.lift();
        svg.raw("<path class=\"syrup\" d=\"" + outline.fill() + "\"/>\n<path class=\"climb\" d=\"" + outline.stroke()
                + "\"/>\n");
    }

    private void axes() {
        for (int riseC = 1; riseC < topC; riseC++) {
            words(LEFT - 8, y(riseC) + 5, "end", "+" + riseC + "°");
        }
        double minutes = (toS - fromS) / 60;
        int step = Steps.of(STEPS_MIN, each -> minutes / each <= MOST_STEPS);
        for (double t = Math.ceil(fromS / (60.0 * step)) * 60 * step; t <= toS; t += 60 * step) {
            words(x(t), HEIGHT - BOTTOM + 24, "middle", Plain.clock(t));
        }
    }

    private void rule(double y, String style) {
        svg.raw(format(
                "<line class=\"%s\" x1=\"%.1f\" x2=\"%.1f\" y1=\"%.1f\" y2=\"%.1f\"/>\n",
                style, LEFT, WIDTH - RIGHT, y, y));
    }

    private void words(double x, double y, String anchor, String words) {
        svg.raw(format("<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"%s\">", x, y, anchor))
                .text(words)
                .raw("</text>\n");
    }

    private double x(double t) {
        return LEFT + (WIDTH - LEFT - RIGHT) * Math.max(0, Math.min(1, (t - fromS) / (toS - fromS)));
    }

    private double y(double riseC) {
        return TOP + (HEIGHT - TOP - BOTTOM) * (1 - Math.max(0, Math.min(1, riseC / topC)));
    }

    private static String celsius(double temperatureC) {
        return format("%.1f °C", temperatureC);
    }

    private static String format(String pattern, Object... values) {
        return String.format(Locale.ROOT, pattern, values);
    }
}
