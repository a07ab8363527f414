package spoonfall.paper;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import spoonfall.book.RiseLine;
import spoonfall.cook.CookSettings;
import spoonfall.log.store.book.BookPage;
import spoonfall.log.store.book.BookTest;
import spoonfall.physics.Syrup;

/**
 * The climb of a cook, or of two lined up, as an SVG of no size of its own: what the page shows until its scripts have drawn the same
 * (book-climb.js), and in its place and colours. Height is the rise above the water boil.
 */
public final class FirstPicture {
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);
    private static final int MOST_POINTS = 1000;
    private static final double SYRUP_STEP_C = 0.5;
    private static final double FAHRENHEIT = 1.8;

    /** The lines are drawn in a square of that side, which the browser stretches. */
    private static final int SIDE = 10_000;

    private static final int MOST_HEIGHTS = 10;
    private static final int[] STEPS = {1, 2, 5};
    private static final int[] STEPS_MIN = {1, 2, 5, 10, 15, 30, 60, 120};
    private static final double STEP_PX = 84;

    /** Pictures narrower than that have fewer times below them: the least width of each kind of picture, and its name. */
    private static final List<Width> WIDTHS =
            List.of(new Width(220, "narrow"), new Width(500, "middling"), new Width(800, "wide"));

    private static final String STYLE = """
            <style>
            text{font:14px system-ui,"Segoe UI",Roboto,"Liberation Sans",Arial,sans-serif;fill:#51607a}.aim{font-weight:bold;fill:#152238}
            .plot{width:calc(100% - 76px);height:calc(100% - 40px);overflow:visible}.whole{display:block;width:100%;height:100%;overflow:visible}.window{fill:#dbe7fb}.rule{stroke:#1d3f7a;stroke-width:2}
            .syrup{fill:url(#light)}.climb{fill:none;stroke:#152238;stroke-width:2.5}.beside{fill:none;stroke:#1d3f7a;stroke-width:3;stroke-dasharray:9 6}
            path{vector-effect:non-scaling-stroke}.test{fill:#fff;stroke:#1d3f7a;stroke-width:2.5}.set{fill:#1d3f7a}
            .middling,.wide{display:none}
            @media (min-width:576px){.narrow,.wide{display:none}.middling{display:inline}}
            @media (min-width:876px){.narrow,.middling{display:none}.wide{display:inline}}
            @media (prefers-color-scheme:dark){text{fill:#a9b7cf}.aim{fill:#eef3fb}.window{fill:#1c3158}.rule,.beside,.test{stroke:#7fa6e8}.climb{stroke:#eef3fb}
            .syrup{fill:url(#dark)}.test{fill:#131e33}.set{fill:#7fa6e8}}
            </style>
            """;
    private static final List<int[]> LIGHT =
            List.of(new int[] {0xff, 0xe9, 0xb8}, new int[] {0xf5, 0xa6, 0x23}, new int[] {0xc2, 0x56, 0x0b});
    private static final List<int[]> DARK =
            List.of(new int[] {0x5b, 0x3a, 0x10}, new int[] {0xc9, 0x7a, 0x16}, new int[] {0xf2, 0xa0, 0x3d});

    private final Lineup lineup;
    private final BookPage page;
    private final boolean fahrenheit;
    private final ZoneId zone;
    private final double topC;
    private final double fromMin;
    private final double toMin;
    private final Markup svg = new Markup();

    private record Width(double px, String name) {}

    private FirstPicture(BookPage page, Optional<BookPage> beside, boolean fahrenheit, ZoneId zone) {
        lineup = Lineup.of(page, beside);
        this.page = page;
        this.fahrenheit = fahrenheit;
        this.zone = zone;
        topC = lineup.topC();
        fromMin = lineup.fromMin();
        toMin = lineup.toMin();
    }

    /**
     * Draws it.
     *
     * @param beside another cook, dashed
     * @param fahrenheit whether temperatures are in °F rather than °C
     * @param zone of the clock below it
     */
    public static String of(BookPage page, Optional<BookPage> beside, boolean fahrenheit, ZoneId zone) {
        return new FirstPicture(page, beside, fahrenheit, zone).drawn();
    }

    private String drawn() {
        CookSettings settings = page.settings();
        svg.raw("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"100%\" height=\"100%\">\n")
                .raw(STYLE);
        gradient("light", LIGHT);
        gradient("dark", DARK);
        svg.raw(
                "<foreignObject class=\"plot\" x=\"50\" y=\"10\">\n<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"whole\">\n");
        double windowC = settings.windowFromC() - settings.waterBoil().temperatureC();
        svg.raw(format(
                "<rect class=\"window\" width=\"100%%\" y=\"%.2f%%\" height=\"%.2f%%\"/>\n",
                heightPart(settings.riseC()), heightPart(windowC) - heightPart(settings.riseC())));
        svg.raw(format(
                "<svg width=\"100%%\" height=\"100%%\" viewBox=\"0 0 %d %d\" preserveAspectRatio=\"none\">\n",
                SIDE, SIDE));
        line(page, "climb", true);
        lineup.beside().ifPresent(other -> line(other, "beside", false));
        svg.raw("</svg>\n");
        rule(heightPart(settings.riseC()));
        rule(100);
        double gelPoint = fahrenheit ? settings.gelPointC() * FAHRENHEIT + 32 : settings.gelPointC();
        svg.raw(format(
                "<text class=\"aim\" x=\"8\" y=\"%.2f%%\" dy=\"-7\">was to set here · %.1f °%s</text>\n",
                heightPart(settings.riseC()), gelPoint, fahrenheit ? "F" : "C"));
        heights();
        WIDTHS.forEach(this::times);
        page.tests().forEach(this::test);
        return svg.raw("</svg>\n</foreignObject>\n</svg>\n").toString();
    }

    /** From the bottom to the top, as thick as the syrup is at that height. */
    private void gradient(String name, List<int[]> colours) {
        svg.raw(format(
                "<linearGradient id=\"%s\" gradientUnits=\"userSpaceOnUse\" x1=\"0\" x2=\"0\" y1=\"%d\" y2=\"0\">",
                name, SIDE));
        CookSettings settings = page.settings();
        double mostC = Math.min(topC, settings.riseC() + 2);
        for (double riseC = 0; riseC <= mostC; riseC += SYRUP_STEP_C) {
            double solids = Syrup.solids(settings.waterBoil().pressurePa(), riseC, Syrup.TYPICAL_INVERTED);
            double thick = solids <= 0.6 ? Math.max(0, (solids - 0.3) / 0.3) : Math.min(2, 1 + (solids - 0.6) / 0.08);
            int[] thin = colours.get(thick <= 1 ? 0 : 1);
            int[] thicker = colours.get(thick <= 1 ? 1 : 2);
            double part = thick <= 1 ? thick : thick - 1;
            svg.raw(format(
                    "<stop offset=\"%.3f\" stop-color=\"#%02x%02x%02x\"/>",
                    riseC / topC,
                    mixed(thin, thicker, part, 0),
                    mixed(thin, thicker, part, 1),
                    mixed(thin, thicker, part, 2)));
        }
        svg.raw("</linearGradient>\n");
    }

    private static int mixed(int[] one, int[] other, double part, int at) {
        return (int) Math.round(one[at] + (other[at] - one[at]) * part);
    }

    private void line(BookPage one, String style, boolean filled) {
        Outline outline = new Outline(SIDE);
        for (RiseLine.Point point : one.line().thinned(MOST_POINTS)) {
            double minutes = lineup.minutes(one, point.t());
            if (minutes < fromMin) {
                continue;
            }
            if (point.riseC().isEmpty()) {
                outline.lift();
                continue;
            }
            double x = SIDE * (minutes - fromMin) / (toMin - fromMin);
            outline.to(Math.rint(x), Math.rint(SIDE * heightPart(point.riseC().getAsDouble()) / 100));
        }
        outline.lift();
        if (filled) {
            svg.raw("<path class=\"syrup\" d=\"" + outline.fill() + "\"/>\n");
        }
        svg.raw("<path class=\"" + style + "\" d=\"" + outline.stroke() + "\"/>\n");
    }

    private void heights() {
        double top = topC * (fahrenheit ? FAHRENHEIT : 1);
        int step = Steps.of(STEPS, degrees -> top / degrees <= MOST_HEIGHTS + 1);
        for (int rise = step; rise < top; rise += step) {
            svg.raw(format(
                    "<text x=\"-8\" y=\"%.2f%%\" dy=\"5\" text-anchor=\"end\">+%d°</text>\n",
                    100 * (1 - rise / top), rise));
        }
    }

    private void times(Width width) {
        int step = Steps.of(STEPS_MIN, minutes -> minutes * width.px() >= STEP_PX * (toMin - fromMin));
        svg.raw("<g class=\"" + width.name() + "\">");
        for (double at = Math.ceil(fromMin / step) * step; at <= toMin; at += step) {
            svg.raw(format(
                            "<text x=\"%.2f%%\" y=\"100%%\" dy=\"20\" text-anchor=\"middle\">",
                            100 * (at - fromMin) / (toMin - fromMin)))
                    .text(time(at))
                    .raw("</text>");
        }
        svg.raw("</g>\n");
    }

    private String time(double minutes) {
        if (lineup.mark().isPresent()) {
            return format(minutes > 0 ? "+%.0f min" : "%.0f min", minutes);
        }
        Instant at = page.cook().header().startedAt().plusMillis(Math.round(minutes * 60_000));
        return CLOCK.format(at.atZone(zone));
    }

    private void test(BookTest test) {
        test.riseC()
                .ifPresent(riseC -> svg.raw(format(
                        "<svg overflow=\"visible\" x=\"%.2f%%\" y=\"%.2f%%\"><path class=\"%s\" d=\"M0-8L8 0L0 8L-8 0z\"/></svg>\n",
                        100 * (lineup.minutes(page, test.t()) - fromMin) / (toMin - fromMin),
                        heightPart(riseC),
                        test.set() ? "test set" : "test")));
    }

    private void rule(double part) {
        svg.raw(format("<line class=\"rule\" x1=\"0\" x2=\"100%%\" y1=\"%.2f%%\" y2=\"%.2f%%\"/>\n", part, part));
    }

    /** How far below the top, in per cent of the height. */
    private double heightPart(double riseC) {
        return 100 * (1 - Math.max(0, Math.min(1, riseC / topC)));
    }

    private static String format(String pattern, Object... values) {
        return String.format(Locale.ROOT, pattern, values);
    }
}
