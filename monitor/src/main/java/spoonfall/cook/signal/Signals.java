package spoonfall.cook.signal;

import java.util.Optional;
import spoonfall.series.RobustLine;

/**
 * What the readings say at one instant, single wild ones taken out.
 *
 * @param t seconds of the cook
 * @param levelC mean of the middle half of the last few seconds, in °C
 * @param trendC the end of a line through the last two minutes, or the level when the pan just jumped, in °C
 * @param quick line through the last 45 s; slopes are °C per second
 * @param steady line through the last two minutes
 * @param peakC highest level of the last ten minutes, in °C
 * @param earlierPeakC the same without the last 45 s, in °C
 * @param stepC smallest step that the thermometer has shown, in °C
 */
public record Signals(
        double t,
        double levelC,
        double trendC,
        Optional<RobustLine> quick,
        Optional<RobustLine> steady,
        double peakC,
        double earlierPeakC,
        double stepC) {

    private static final double COARSE_C = 0.2;

    /** What {@link Senses} begins with: no thermometer of a kitchen steps further. */
    public static final double NOT_SHOWN_C = 1;

    /** Whether the thermometer's steps are so large that bubbles do not fill the space between them. */
    public static boolean coarse(double stepC) {
        return stepC > COARSE_C;
    }

    /** The smallest step that the thermometer has shown; 0 while it has shown none. */
    public double knownStepC() {
        return stepC < NOT_SHOWN_C ? stepC : 0;
    }

    /** The same with another trend, from one who knows more. */
    public Signals withTrend(double otherC) {
        return new Signals(t, levelC, otherC, quick, steady, peakC, earlierPeakC, stepC);
    }

    /** The same without a height to fall from, when that was not the pan's. */
    public Signals withoutPeak() {
        return new Signals(t, levelC, trendC, quick, steady, levelC, earlierPeakC, stepC);
    }

    /** The slope of a line in °C per minute. */
    public static double perMinute(RobustLine line) {
        return line.slope() * 60;
    }

    /** Whether the last 45 s fell faster than {@code perMinuteC} °C a minute. */
    public boolean fallingFasterThan(double perMinuteC) {
        return quick.isPresent() && perMinute(quick.get()) < -perMinuteC;
    }
}
