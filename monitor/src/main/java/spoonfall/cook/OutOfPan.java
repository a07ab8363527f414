package spoonfall.cook;

import java.util.OptionalDouble;
import spoonfall.alarm.Condition;

/**
 * Tells a probe that left the pan: its reading falls as no pan can cool, towards something far colder. Cold water in the
 * pan makes it fall as fast, but not as far, and the pan warms again at once. The numbers are common practice, no source.
 */
final class OutOfPan {
    private static final double FALL_WITHIN_S = 30;
    private static final double SURE_FALL_C = 30;
    private static final double LEAST_FALL_C = 4;

    /** A cup of cold water takes a pan of a litre down by a dozen degrees. */
    private static final double FAR_BELOW_C = 30;

    private static final double DEEP_FALL_C = 6;
    private static final double STAYS_S = 60;
    private static final double LOOKS_FOR_S = 120;
    private static final double BEGUN_C = 0.5;

    /** Less than that below a peak that slowly sags, and nothing needs to be looked at. */
    private static final double ROUGH_FALL_C = 2;

    private static final double SAGS_PER_S_C = 0.05;
    private static final double RECOVERS_C = 0.7;
    private static final double BACK_WITHIN_C = 2;
    private static final double BOILS_ABOVE_C = 0.2;
    private static final double STEADY_PER_MIN_C = 1.2;

    private final double waterBoilC;
    private final Track values = new Track(90);
    private OptionalDouble beforeC = OptionalDouble.empty();
    private double fellT = Double.NaN;
    private double fellFromC;
    private double roughPeakC = Double.NEGATIVE_INFINITY;
    private double lastC;
    private double lastT;

    OutOfPan(double waterBoilC) {
        this.waterBoilC = waterBoilC;
    }

    /** Takes a reading. */
    void accept(double t, double temperatureC) {
        values.add(t, temperatureC);
        double sagsC = SAGS_PER_S_C * Math.max(0, t - lastT);
        roughPeakC = Math.max(temperatureC, roughPeakC - sagsC);
        lastC = temperatureC;
        lastT = t;
    }

    /** Whether the probe is out at {@code t}. */
    Condition judge(double t, Stage stage, Signals signals) {
        boolean nothingFell = beforeC.isEmpty() && Double.isNaN(fellT) && roughPeakC - lastC < ROUGH_FALL_C;
        if (nothingFell) {
            return Condition.ABSENT;
        }
        OptionalDouble now = values.middleBetween(t - 2.5, t);
        if (now.isEmpty()) {
            return beforeC.isPresent() ? Condition.UNDECIDED : Condition.ABSENT;
        }
        double nowC = now.getAsDouble();
        if (beforeC.isPresent()) {
            return whileOut(nowC, signals);
        }
        if (stage == Stage.WAITING || stage == Stage.WARMING) {
            fellT = Double.NaN;
            return Condition.ABSENT;
        }
        if (Double.isNaN(fellT) && !falls(t, nowC)) {
            return Condition.ABSENT;
        }
        if (isOut(t, nowC)) {
            beforeC = OptionalDouble.of(fellFromC);
            return Condition.PRESENT;
        }
        if (fellFromC - nowC < LEAST_FALL_C || t - fellT > LOOKS_FOR_S) {
            fellT = Double.NaN;
        }
        return Condition.ABSENT;
    }

    private boolean isOut(double t, double nowC) {
        double deepC = fellFromC - nowC;
        if (deepC >= SURE_FALL_C || goesFarBelow(t, nowC)) {
            return true;
        }
        // It fell, but not far: a pan warms again soon; steam does not.
        double earlierC = values.middleBetween(t - 25, t - 20).orElse(nowC);
        boolean recovers = nowC - earlierC >= RECOVERS_C;
        return t - fellT >= STAYS_S && deepC >= DEEP_FALL_C && !recovers;
    }

    /** Whether it begins to fall, and from where. */
    private boolean falls(double t, double nowC) {
        double highestC = values.highestBetween(t - FALL_WITHIN_S, t).orElse(nowC);
        if (highestC - nowC < LEAST_FALL_C) {
            return false; // no need to ask for the peak, which is lower than the highest
        }
        double peakC = peakC(t, nowC);
        if (peakC - nowC < LEAST_FALL_C) {
            return false;
        }
        fellT = t;
        fellFromC = peakC;
        return true;
    }

    private double peakC(double t, double nowC) {
        double peakC = nowC;
        for (double backS = 0; backS < FALL_WITHIN_S; backS += 10) {
            OptionalDouble part = values.middleBetween(t - backS - 10, t - backS);
            peakC = Math.max(peakC, part.orElse(nowC));
        }
        return peakC;
    }

    /** Where the fall will end, if it goes on as falls of thermometers do: Aitken's extrapolation. */
    private boolean goesFarBelow(double t, double nowC) {
        OptionalDouble middle = values.middleBetween(t - 6.5, t - 4);
        OptionalDouble first = values.middleBetween(t - 10.5, t - 8);
        if (middle.isEmpty() || first.isEmpty()) {
            return false;
        }
        double early = first.getAsDouble() - middle.getAsDouble();
        double late = middle.getAsDouble() - nowC;
        if (fellFromC - first.getAsDouble() < BEGUN_C || late < BEGUN_C || early <= late) {
            return false;
        }
        double endC = nowC - late * late / (early - late);
        return fellFromC - endC >= FAR_BELOW_C;
    }

    private Condition whileOut(double nowC, Signals signals) {
        boolean steady = signals.quick()
                .filter(line -> Math.abs(Signals.perMinute(line)) < STEADY_PER_MIN_C)
                .isPresent();
        boolean boilsAgain = steady && nowC > waterBoilC + BOILS_ABOVE_C;
        if (nowC < beforeC.orElseThrow() - BACK_WITHIN_C && !boilsAgain) {
            return Condition.PRESENT;
        }
        beforeC = OptionalDouble.empty();
        fellT = Double.NaN;
        return Condition.ABSENT;
    }
}
