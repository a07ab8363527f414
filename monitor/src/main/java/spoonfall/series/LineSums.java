package spoonfall.series;

/** What a straight line by least squares needs to know of its points; sums of two stretches may be added. */
public final class LineSums {
    /** Fewer points do not tell how far they miss their line. */
    private static final int LEAST_POINTS = 8;

    private int count;
    private double sumX;
    private double sumY;
    private double sumXx;
    private double sumXy;
    private double sumYy;

    /** Takes a point. */
    public void add(double x, double y) {
        count++;
        sumX += x;
        sumY += y;
        sumXx += x * x;
        sumXy += x * y;
        sumYy += y * y;
    }

    /** Takes the points of another stretch. */
    public void add(LineSums other) {
        count += other.count;
        sumX += other.sumX;
        sumY += other.sumY;
        sumXx += other.sumXx;
        sumXy += other.sumXy;
        sumYy += other.sumYy;
    }

    /** How many points it has. */
    public int count() {
        return count;
    }

    /** How steep the line is. */
    public double slope() {
        return spreadXy() / spreadX();
    }

    /** How high the line lies where x is 0. */
    public double atZero() {
        return (sumY - slope() * sumX) / count;
    }

    /** The sum of the squares by which the points miss the line. */
    public double misses() {
        double spreadXy = spreadXy();
        return Math.max(0, sumYy - sumY * sumY / count - spreadXy * spreadXy / spreadX());
    }

    /** How far the slope may be off, by how the points miss the line: a standard deviation. */
    public double slopeError() {
        return Math.sqrt(misses() / (count - 2) / spreadX());
    }

    /** The slope less so many times what it may be off by; no number is below that of a line through too few points. */
    public double leastSlope(double errors) {
        boolean tells = count >= LEAST_POINTS && spreadX() > 0;
        return tells ? slope() - errors * slopeError() : Double.NEGATIVE_INFINITY;
    }

    /** The sum of the squares of the points' distances from their middle. */
    public double spreadX() {
        return sumXx - sumX * sumX / count;
    }

    private double spreadXy() {
        return sumXy - sumX * sumY / count;
    }
}
