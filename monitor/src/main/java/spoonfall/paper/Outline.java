package spoonfall.paper;

/** The line of a climb, and what lies between it and the base, as paths of an SVG. Coordinates are 0 or more, to a tenth. */
final class Outline {
    private static final int TENTHS = 10;

    private final double baseY;
    private final StringBuilder stroke = new StringBuilder();
    private final StringBuilder fill = new StringBuilder();
    private double beganX;
    private double lastX;
    private boolean pen;

    /** An empty line over a base at that height. */
    Outline(double baseY) {
        this.baseY = baseY;
    }

    /** Goes on to a point, or begins there. */
    void to(double x, double y) {
        beganX = pen ? beganX : x;
        lastX = x;
        point(stroke, pen ? 'L' : 'M', x, y);
        point(fill, pen ? 'L' : 'M', x, y);
        pen = true;
    }

    /** The line breaks. */
    void lift() {
        if (pen) {
            point(fill, 'L', lastX, baseY);
            point(fill, 'L', beganX, baseY);
            fill.append('Z');
        }
        pen = false;
    }

    /** The line. */
    String stroke() {
        return stroke.toString();
    }

    /** What lies below it, as far as it was lifted. */
    String fill() {
        return fill.toString();
    }

    private static void point(StringBuilder path, char how, double x, double y) {
        path.append(how);
        number(path, x);
        path.append(' ');
        number(path, y);
    }

    private static void number(StringBuilder path, double value) {
        long tenths = Math.round(TENTHS * value);
        path.append(tenths / TENTHS);
        if (tenths % TENTHS != 0) {
            path.append('.').append(tenths % TENTHS);
        }
    }
}
