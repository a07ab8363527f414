package spoonfall.cook;

import java.util.Optional;

/**
 * What the readings say at one instant, single wild ones taken out.
 *
 * @param t seconds of the cook
 * @param levelC median of the last few seconds, in °C
 * @param trendC the end of a line through the last two minutes, or the level when the pan just jumped, in °C
 * @param quick line through the last 45 s; slopes are °C per second
 * @param steady line through the last two minutes
 * @param slow line through the last three minutes
 * @param peakC highest level of the last ten minutes, in °C
 * @param fallC how far the level fell within the last 20 s, in °C; 0 when it did not
 */
record Signals(
        double t,
        double levelC,
        double trendC,
        Optional<RobustLine> quick,
        Optional<RobustLine> steady,
        Optional<RobustLine> slow,
        double peakC,
        double fallC) {

    /** The slope of a line in °C per minute. */
    static double perMinute(RobustLine line) {
        return line.slope() * 60;
    }

    /** Whether the last 45 s fell faster than {@code perMinuteC} °C a minute. */
    boolean fallingFasterThan(double perMinuteC) {
        return quick.isPresent() && perMinute(quick.get()) < -perMinuteC;
    }
}
