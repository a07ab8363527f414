package spoonfall.score;

/**
 * A stretch of a cook.
 *
 * @param fromT seconds of the cook at which it begins
 * @param toT seconds at which it ends
 */
record Span(double fromT, double toT) {
    boolean holds(double t) {
        return t >= fromT && t <= toT;
    }

    boolean touches(Span other) {
        return fromT <= other.toT && other.fromT <= toT;
    }

    Span longerBy(double seconds) {
        return new Span(fromT, toT + seconds);
    }
}
