package spoonfall.cook.probe;

import java.util.OptionalDouble;
import spoonfall.alarm.Condition;
import spoonfall.cook.Stage;
import spoonfall.cook.signal.Signals;
import spoonfall.estimate.standing.Thin;
import spoonfall.series.Track;

/**
 * Tells a probe that left the pan: its reading falls as no pan can cool, towards something far colder. Cold water in the
 * pan makes it fall as fast, but not as far, and the pan warms again at once. The numbers are common practice, no source.
 */
final class OutOfPan {
    /** What is read now is the middle of so many seconds. */
    private static final double NOW_S = 2.5;

    private static final double FALL_WITHIN_S = 30;
    private static final double SURE_FALL_C = 30;
    private static final double LEAST_FALL_C = 4;

    /** A pan that comes off the heat falls too, but not as far in that time. */
    private static final double LEAST_FALL_PAST_THE_SET_C = 10;

    /** The tip near the base is hotter than the pan by so much, and that is nothing. */
    private static final double HOTTER_C = 1.5;

    private static final double DEEP_FALL_C = 6;
    private static final double STAYS_S = 50;

    /** A thin pan falls by 30 °C when its sugar goes in: a probe that is out of it, by so much more than out of another. */
    private static final double SUGAR_FALL_C = 15;

    /** Fruit and water alone boil no higher; into them as much sugar goes, at the kitchen's temperature. */
    private static final double NO_SUGAR_C = 0.6;

    /** As much sugar as fruit takes it down by 21 °C at most, and where the probe is by some more at first. */
    private static final double SUGAR_COOLS_C = 25;

    /**
     * A pan that simmered until just now may be given more, up to a third more than it holds: by a balance of heat at 1.25 and 3.9 kJ/kg/K
     * that takes it down by 24 °C, and by 4 more for the heat that sugar takes up when it dissolves.
     */
    private static final double MUCH_SUGAR_COOLS_C = 30;

    /** So much likelier than something cold the air must be, as a logarithm. */
    private static final double LIKELIER = 1.5;

    /** Where something cold is so much likelier after all and the reading warms by so much in 17 s, it is the pan's. */
    private static final double UNLIKELIER = -6;

    private static final double TURNS_C = 0.3;

    /** What it warmed by is told over so long, by the middle of so many seconds at either end. */
    private static final double WARMED_OVER_S = 17;

    private static final double END_S = 8;

    private static final double LOOKS_FOR_S = 120;
    /** Less than that below a peak that slowly sags, and nothing needs to be looked at. */
    private static final double ROUGH_FALL_C = 2;

    private static final double SAGS_PER_S_C = 0.05;
    private static final double RECOVERS_C = 0.7;
    private static final double WARMS_C = 0.12;

    /** By then a pan on a small flame has turned as well. */
    private static final double TURNED_S = 60;

    /** By then a pan into which very much that is cold went has turned, and the latest thermometer shows it. */
    private static final double COLD_S = 90;

    private static final double BACK_WITHIN_C = 2;
    private static final double BOILS_ABOVE_C = 0.2;
    private static final double STEADY_PER_MIN_C = 1.2;

    /** A pan that was cooled warms evenly for longer than any thermometer takes to come back to it: in three parts of so many seconds. */
    private static final double PART_S = 26;

    private static final int PARTS = 3;

    /** A height is the middle of so many seconds. */
    private static final double AVERAGED_S = 10;

    private static final double LEAST_WARMED_C = 0.5;
    private static final double EVEN_PART = 0.5;

    /** Nothing that anybody puts into a boiling pan takes it down further. */
    private static final double COOLED_C = 35;

    private final double waterBoilC;
    private final Track values = new Track(90);
    private final WaysToFall ways = new WaysToFall();
    private OptionalDouble beforeC = OptionalDouble.empty();
    private double fellT = Double.NaN;
    private double fellFromC;
    private double roughPeakC = Double.NEGATIVE_INFINITY;
    private double lastC;
    private double lastT;
    private double lowestC;
    private double beforeLastT;
    private boolean toComeOff;
    private boolean mayBeSugar;

    OutOfPan(double waterBoilC) {
        this.waterBoilC = waterBoilC;
    }

    /** Takes a reading. */
    void accept(double t, double temperatureC) {
        values.add(t, temperatureC);
        double sagsC = SAGS_PER_S_C * Math.max(0, t - lastT);
        roughPeakC = Math.max(temperatureC, roughPeakC - sagsC);
        lastC = temperatureC;
        beforeLastT = lastT;
        lastT = t;
    }

    /**
     * Whether the probe is out at {@code t}.
     *
     * @param panC how hot the pan is by what is known of its water, so that a base that was hotter is no height to fall from;
     *     infinite while nothing is known
     * @param sugarMayGo whether the pan simmered without sugar until just now, so that it may be that which goes in
     */
    Condition judge(double t, Stage stage, Signals signals, double panC, boolean sugarMayGo) {
        // a pan past its set was called off the heat: what falls then is most likely the pan, unless it falls as
        // none can
        toComeOff = stage == Stage.PAST_GEL_POINT || (toComeOff && stage == Stage.OFF_THE_HEAT);
        boolean nothingFell = beforeC.isEmpty() && Double.isNaN(fellT) && roughPeakC - lastC < ROUGH_FALL_C;
        if (nothingFell) {
            return Condition.ABSENT;
        }
        OptionalDouble now = values.middleBetween(t - NOW_S, t);
        if (now.isEmpty()) {
            return beforeC.isPresent() ? Condition.UNDECIDED : Condition.ABSENT;
        }
        double nowC = now.getAsDouble();
        lowestC = Math.min(lowestC, nowC);
        if (beforeC.isPresent()) {
            return whileOut(t, nowC, signals);
        }
        if (Double.isNaN(fellT) && (stage == Stage.WAITING || !falls(t, nowC, panC))) {
            return Condition.ABSENT;
        }
        mayBeSugar |= sugarMayGo;
        ways.read(values, fellFromC, signals.stepC());
        if (stage == Stage.WARMING ? t - fellT >= COLD_S && staysDown(t, nowC) : isOut(t, nowC)) {
            beforeC = OptionalDouble.of(fellFromC);
            return Condition.PRESENT;
        }
        if (fellFromC - nowC < LEAST_FALL_C || t - fellT > LOOKS_FOR_S) {
            fellT = Double.NaN;
        }
        return Condition.ABSENT;
    }

    private boolean isOut(double t, double nowC) {
        return fellFromC - nowC >= SURE_FALL_C + sugarC()
                || staysDown(t, nowC)
                || (deep(nowC) && ways.tells(lastT) && ways.airOverCold(sugarC()) >= LIKELIER);
    }

    private double sugarC() {
        return fellFromC < waterBoilC + Thin.READ_C ? SUGAR_FALL_C : 0;
    }

    /** Whether it fell further than sugar takes a pan in which there is none, or than some cold water another. */
    private boolean deep(double nowC) {
        double nearWaterC = fellFromC < waterBoilC + NO_SUGAR_C ? SUGAR_COOLS_C : DEEP_FALL_C;
        return fellFromC - nowC >= (mayBeSugar ? MUCH_SUGAR_COOLS_C : nearWaterC);
    }

    /**
     * Whether it fell and stays there: a pan warms again soon, however slowly; steam does not. A pan that only warms tells nothing
     * else, for into a little that is hot may go much that is cold, as the fruit.
     */
    private boolean staysDown(double t, double nowC) {
        if (t - fellT < STAYS_S || !deep(nowC) || nowC - lowestC >= RECOVERS_C) {
            return false;
        }
        double warmedC = warmedC(t, nowC);
        return warmedC <= -WARMS_C || (warmedC < WARMS_C && t - fellT >= TURNED_S);
    }

    /** When it had fallen by a degree, at the latest. */
    private double begunT() {
        double aboveT = values.latestAtLeast(fellFromC - 1).orElse(lastT);
        return Math.min(lastT, values.nextAfter(aboveT));
    }

    /** By how much it warmed lately. */
    private double warmedC(double t, double nowC) {
        double earlyT = t - WARMED_OVER_S;
        double lateC = values.middleBetween(t - END_S, t).orElse(nowC);
        double earlyC = values.middleBetween(earlyT - END_S, earlyT).orElse(nowC);
        return lateC - earlyC;
    }

    /** Whether it begins to fall, and from where. */
    private boolean falls(double t, double nowC, double panC) {
        double sinceT = Math.min(t - FALL_WITHIN_S, beforeLatestT());
        double highestC = values.highestBetween(sinceT, t).orElse(nowC);
        double leastC = toComeOff ? LEAST_FALL_PAST_THE_SET_C : LEAST_FALL_C;
        if (highestC - nowC < leastC) {
            return false; // no need to ask for the peak, which is lower than the highest
        }
        double peakC = Math.min(peakC(t, sinceT, nowC), panC + HOTTER_C);
        if (peakC - nowC < leastC) {
            return false;
        }
        fellT = t;
        fellFromC = peakC;
        lowestC = nowC;
        mayBeSugar = false;
        ways.begin(begunT());
        return true;
    }

    /** When it was last heard before the latest readings, which may have been far apart or too far off to be believed. */
    private double beforeLatestT() {
        return Math.max(lastT - LOOKS_FOR_S / 2, beforeLastT - 1);
    }

    private double peakC(double t, double sinceT, double nowC) {
        double peakC = nowC;
        for (double backS = 0; backS < t - sinceT; backS += AVERAGED_S) {
            OptionalDouble part = values.middleBetween(t - backS - AVERAGED_S, t - backS);
            peakC = Math.max(peakC, part.orElse(nowC));
        }
        return peakC;
    }

    /** Whether it warms as only a pan does, into which something cold went. */
    private boolean warmsEvenly(double nowC) {
        double laterC = nowC;
        double least = Double.POSITIVE_INFINITY;
        double most = LEAST_WARMED_C / EVEN_PART;
        for (int part = 0; part <= PARTS; part++) {
            double t = lastT - part * PART_S;
            double levelC = values.middleBetween(t - AVERAGED_S, t).orElse(laterC);
            if (part > 0) {
                least = Math.min(least, laterC - levelC);
                most = Math.max(most, laterC - levelC);
            }
            laterC = levelC;
        }
        return least >= EVEN_PART * most && nowC > waterBoilC - COOLED_C;
    }

    /** Where it fell from, in °C; to be asked while it is out. */
    double fromC() {
        return fellFromC;
    }

    /** Whether it was something cold after all: it fell as a pan does, and warms already. */
    private boolean turns(double t, double nowC, Signals signals) {
        ways.read(values, fellFromC, signals.stepC());
        return t - fellT < STAYS_S && warmedC(t, nowC) >= TURNS_C && ways.airOverCold(sugarC()) < UNLIKELIER;
    }

    private Condition whileOut(double t, double nowC, Signals signals) {
        boolean steady = signals.quick()
                .filter(line -> Math.abs(Signals.perMinute(line)) < STEADY_PER_MIN_C)
                .isPresent();
        boolean boilsAgain = steady && nowC > waterBoilC + BOILS_ABOVE_C;
        if (nowC < beforeC.orElseThrow() - BACK_WITHIN_C
                && !boilsAgain
                && !warmsEvenly(nowC)
                && !turns(t, nowC, signals)) {
            return Condition.PRESENT;
        }
        beforeC = OptionalDouble.empty();
        fellT = Double.NaN;
        return Condition.ABSENT;
    }
}
