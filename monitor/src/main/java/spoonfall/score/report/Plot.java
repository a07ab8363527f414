package spoonfall.score.report;

import java.util.Locale;

/** A rectangle of an SVG picture with scales of its own, and what is drawn in it. */
final class Plot {
    private final StringBuilder svg = new StringBuilder();
    private final double left;
    private final double top;
    private final double width;
    private final double height;
    private final double fromX;
    private final double toX;
    private final double fromY;
    private final double toY;

    /** A plot whose left upper corner is at {@code left}, {@code top}; what lies outside is drawn on its edge. */
    Plot(double left, double top, double width, double height, double fromX, double toX, double fromY, double toY) {
        this.left = left;
        this.top = top;
        this.width = width;
        this.height = height;
        this.fromX = fromX;
        this.toX = toX;
        this.fromY = fromY;
        this.toY = toY;
        svg.append(
                format("<rect class='frame' x='%.1f' y='%.1f' width='%.1f' height='%.1f'/>", left, top, width, height));
    }

    double x(double value) {
        return left + width * Math.max(0, Math.min(1, (value - fromX) / (toX - fromX)));
    }

    double y(double value) {
        return top + height * (1 - Math.max(0, Math.min(1, (value - fromY) / (toY - fromY))));
    }

    void horizontal(double value, String style, String label) {
        svg.append(format(
                "<line class='%s' x1='%.1f' x2='%.1f' y1='%.1f' y2='%.1f'/>",
                style, left, left + width, y(value), y(value)));
        text(left - 4, y(value) + 4, "axis", "end", label);
    }

    void vertical(double value, String style, String label) {
        svg.append(format(
                "<line class='%s' x1='%.1f' x2='%.1f' y1='%.1f' y2='%.1f'/>",
                style, x(value), x(value), top, top + height));
        if (!label.isEmpty()) {
            svg.append(format(
                    "<text class='%s' transform='translate(%.1f %.1f) rotate(-90)' text-anchor='end'>%s</text>",
                    style, x(value) - 3, top + 3, Shown.escaped(label)));
        }
    }

    void below(double value, String label) {
        text(x(value), top + height + 14, "axis", "middle", label);
    }

    void band(double from, double to, String style) {
        svg.append(format(
                "<rect class='%s' x='%.1f' y='%.1f' width='%.1f' height='%.1f'/>",
                style, left, y(to), width, y(from) - y(to)));
    }

    void bar(double atX, double from, double to, String style) {
        svg.append(format(
                "<line class='%s' x1='%.1f' x2='%.1f' y1='%.1f' y2='%.1f'/>", style, x(atX), x(atX), y(from), y(to)));
    }

    void dot(double atX, double value, String style, double radius) {
        svg.append(format("<circle class='%s' cx='%.1f' cy='%.1f' r='%.1f'/>", style, x(atX), y(value), radius));
    }

    void path(Path path, String style) {
        svg.append(format("<path class='%s' d='%s'/>", style, path.d));
    }

    void text(double x, double y, String style, String anchor, String label) {
        svg.append(format(
                "<text class='%s' x='%.1f' y='%.1f' text-anchor='%s'>%s</text>",
                style, x, y, anchor, Shown.escaped(label)));
    }

    String svg() {
        return svg.toString();
    }

    /** A line that may have gaps. */
    final class Path {
        private final StringBuilder d = new StringBuilder();
        private boolean pen;

        void to(double atX, double value) {
            d.append(format(pen ? "L%.1f %.1f" : "M%.1f %.1f", x(atX), y(value)));
            pen = true;
        }

        void gap() {
            pen = false;
        }
    }

    private static String format(String pattern, Object... values) {
        return String.format(Locale.ROOT, pattern, values);
    }
}
