package spoonfall.estimate;

import spoonfall.estimate.burner.Cycling;
import spoonfall.estimate.filter.FilterBank;
import spoonfall.estimate.filter.SyrupCurve;
import spoonfall.estimate.points.Astray;
import spoonfall.estimate.points.Fineness;
import spoonfall.estimate.points.Points;
import spoonfall.estimate.standing.StallWatch;
import spoonfall.estimate.warming.Beginning;

/**
 * A pan while it boils, from one point of its readings to the next: begins the bank with the first of them, lets it believe those that
 * come after, sits out what is astray, sees where the pan stands still, and ends with all that was known kept for the next.
 */
final class BoilingPan {
    /** A pan that turns out to boil so much higher between its dips was not begun where it boils. */
    private static final double HIGHER_C = 0.45;

    /** Nor one that is further below than so many times their depth, smoothed as that is. */
    private static final double MOST_DEPTHS = 3;

    private final boolean byHand;
    private final FilterBank bank;
    private final Points points = new Points();
    private final StallWatch stall;
    private final Cycling cycling = new Cycling();
    private final Astray astray = new Astray();
    private final LastBoil lastBoil = new LastBoil();
    private final Beginning beginning;
    private final Hindsight hindsight;
    private final Fineness fineness;
    private final SitOut sitOut;
    private boolean begun;
    private double lastT;
    private boolean offTheHeat;

    /** A pan that does not boil yet; the arguments are those of {@link PanEstimator}. */
    BoilingPan(SyrupCurve curve, double baseDoubtC, boolean byHand) {
        this.byHand = byHand;
        stall = new StallWatch(byHand);
        bank = new FilterBank(curve);
        beginning = new Beginning(curve, baseDoubtC);
        hindsight = new Hindsight(curve);
        fineness = new Fineness(byHand);
        sitOut = new SitOut(curve, bank, astray, points, fineness);
    }

    /** What is known of the pan's water. */
    FilterBank bank() {
        return bank;
    }

    /** Whether it stands still. */
    StallWatch stall() {
        return stall;
    }

    /** Whether its burner switches. */
    Cycling cycling() {
        return cycling;
    }

    /** Whether the readings lie where the pan must be. */
    Astray astray() {
        return astray;
    }

    /** Where it begins. */
    Beginning beginning() {
        return beginning;
    }

    /** What was known of it before now. */
    Hindsight hindsight() {
        return hindsight;
    }

    /** How finely it is read. */
    Fineness fineness() {
        return fineness;
    }

    /** Whether it has begun, so that something is known of the pan. */
    boolean begun() {
        return begun;
    }

    /** Of when the latest is that is known of it. */
    double lastT() {
        return lastT;
    }

    /** Whether the pan has fallen from its boil, of which the bank still knows. */
    boolean fell() {
        return begun ? astray.away() && astray.low() : lastBoil.knows(bank);
    }

    /** Takes a reading. */
    void accept(double t, double riseC) {
        points.accept(t, riseC);
    }

    /** Ends a second, as {@link PanEstimator#endSecond}. */
    void endSecond(double t, boolean follow, boolean settled, boolean cooling, double thermometerStepC) {
        fineness.step(thermometerStepC);
        if (offTheHeat && !cooling) {
            stall.begin(); // nothing left it meanwhile
        }
        offTheHeat = cooling;
        if (!follow) {
            forget();
        } else if (points.take(t)) {
            take(settled, cooling);
        }
    }

    /** What was read lately tells nothing of it. */
    void skip() {
        points.clear();
        stall.begin();
    }

    /** No water leaves until {@code t}. */
    void pause(double t) {
        skip();
        if (begun) {
            lastT = t;
            resume();
        }
    }

    /** It ends. */
    void forget() {
        if (begun) {
            if (astray.away() && astray.low()) {
                hindsight.restorePace(bank);
            }
            lastBoil.ends(lastT);
        }
        skip();
        begun = false;
    }

    /** It is another pan from now on. */
    void anew() {
        forget();
        lastBoil.forget();
    }

    /** The readings of the last minute were hotter than the pan. */
    void doubtTheLastMinute() {
        if (begun && (hindsight.restore(lastT, bank) || astray.misledUpwards())) {
            astray.doubt(lastT);
        }
    }

    private void take(boolean settled, boolean cooling) {
        boolean arrived = (!begun || beginning.tooSoon()) && settled && !points.warms();
        if (begun && !arrived) {
            goOn(points.latestT(), points.latestC());
        } else if (arrived || (!byHand && !cooling)) {
            begin(points.latestT(), points.latestC(), arrived);
        }
    }

    private void begin(double t, double riseC, boolean arrived) {
        if (lastBoil.knows(bank) && (!arrived || lastBoil.comesBack(riseC, points, bank))) {
            return; // that is worth more than what a creeping thermometer says
        }
        if (!lastBoil.goOn(t, riseC, fineness.variance(), bank)) {
            begun = beginning.begin(t, riseC, arrived, bank);
            if (!begun) {
                return;
            }
            lastBoil.begins(t);
            sitOut.begin();
            fineness.begin();
            stall.anotherPan();
        }
        begun = true;
        lastT = t;
        resume();
        stall.begin();
        hindsight.begin();
        cycling.forget();
        fineness.believe(bank, points);
    }

    private void goOn(double t, double riseC) {
        double minutes = Math.max(0, t - lastT) / 60;
        boolean frozen = astray.away() && astray.low();
        if (!frozen) {
            bank.predict(minutes);
        }
        lastT = t;
        sitOut.point(t, riseC);
        if (!byHand && cycling.point(t, riseC, bank.climbPerMinC())) {
            beginDips();
        }
        if (!astray.away() && cycling.dips()) {
            astray.notLow();
            return;
        }
        fineness.pass(riseC);
        followStall(t, riseC);
        judge(t, riseC);
    }

    /**
     * Until now the dips were taken for noise, and for a pan that does not climb. Begun in one of them it lies about as far below
     * their top as they are deep: what lies much further was misled, not begun too low.
     */
    private void beginDips() {
        fineness.begin();
        stall.begin();
        double higherC = cycling.topC() - bank.riseC();
        if (higherC > HIGHER_C && higherC < MOST_DEPTHS * cycling.depthC()) {
            bank.reanchor(cycling.topC(), fineness.variance());
            resume();
        }
    }

    private void followStall(double t, double riseC) {
        boolean stood = stall.still();
        stall.point(t, riseC, bank, fineness.variance(), fineness.stepsC(), astray.lowForS(t));
        if (stall.heatBack() || (stood && !stall.still() && !stall.stoppedByFalling())) {
            bank.goOn(riseC, fineness.variance(), stall.climbBefore());
            hindsight.forget(); // it stood, and its pace of a while ago is no heat that it has
            resume();
        }
    }

    /** Whether a point is believed or sat out. */
    private void judge(double t, double riseC) {
        double expectedVariance = bank.riseVariance();
        double offC = riseC - bank.riseC();
        double sigmaC = Math.sqrt(expectedVariance + fineness.variance());
        if (astray.away()) {
            switch (sitOut.end(t, riseC, offC, sigmaC)) {
                case BACK -> resume();
                case ANOTHER_PAN -> forget();
                case AWAY -> {}
            }
        } else if (!astray.look(t, offC, sigmaC, offTheHeat, points, bank.climbPerMinC())) {
            fineness.observe(offC, expectedVariance);
            fineness.believe(bank, points);
            hindsight.follow(t, bank);
        }
    }

    private void resume() {
        stall.lookAfresh();
        hindsight.breakOff();
        astray.end();
    }
}
