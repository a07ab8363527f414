package spoonfall.cook.forecast;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import spoonfall.cook.CookSettings;
import spoonfall.cook.Forecast;
import spoonfall.cook.Pace;
import spoonfall.cook.Stage;
import spoonfall.cook.WaterBoil;
import spoonfall.cook.signal.Signals;
import spoonfall.estimate.PanEstimator;
import spoonfall.estimate.filter.Ahead;
import spoonfall.estimate.filter.Arrival;
import spoonfall.estimate.warming.PanPrior;

/**
 * Says when the gel point will be reached, and how fast the pan should be climbing: the estimator of {@code
 * spoonfall.estimate} in the terms of one cook.
 */
public final class Forecaster {
    private static final double SETTLE_S = 15;
    private static final double LEAST_RISE_C = 0.7;

    private static final double GROWS_OVER_MIN = 5;
    private static final double BACK_C = 0.3;
    private static final double BACK_PER_MIN_C = 0.1;
    private static final double TOO_FAST_PER_MIN_C = 0.8;
    private static final double TOO_FAST_TIMES = 1.8;

    /** A pace that was seen is known better than to that part, also just after something went in or was tested. */
    private static final double USUAL_DOUBT = 0.4;

    private static final double GUESSED = 4;

    /** So many standard deviations below what is known the pan hardly ever is. */
    private static final double SURE_SIGMAS = 2.6;

    /** Were it to stand, the readings would lie where it is: they may be so many seconds of its climb below the gel point. */
    private static final double SEEN_S = 100;

    private CookSettings settings;
    private final Pace pace;
    private final PanEstimator estimator;

    /** The forecast that was asked for last, and for when: the same second asks for it more than once. */
    private Optional<Forecast> forecast = Optional.empty();

    private double forecastT = Double.NaN;

    /** Of a pan of which nothing is known yet, read at such a pace. */
    public Forecaster(CookSettings settings, Pace pace) {
        this.settings = settings;
        this.pace = pace;
        WaterBoil boil = settings.waterBoil();
        estimator = new PanEstimator(boil.pressurePa(), boil.doubtC(), pace == Pace.BY_HAND);
    }

    /** The gel point is another one from now on. */
    public void aim(CookSettings aim) {
        forecastT = Double.NaN;
        settings = aim;
    }

    /** Takes what a plan says of the pan. */
    public void expect(PanPrior prior) {
        forecastT = Double.NaN;
        estimator.expect(prior);
    }

    /** How many seconds until {@code riseC} is reached, middle estimate; empty when it would be a guess. */
    public OptionalDouble untilS(double t, double riseC) {
        return estimator
                .arrival(t, riseC)
                .map(arrival -> OptionalDouble.of(arrival.s()))
                .orElse(OptionalDouble.empty());
    }

    /** Takes a reading that tells something of the pan. */
    public void accept(double t, double temperatureC) {
        forecastT = Double.NaN;
        estimator.accept(t, temperatureC - settings.waterBoil().temperatureC());
    }

    /** Ends a second; {@code boilingForS} is how long the pan has been boiling, 0 when it is not. */
    public void endSecond(Signals signals, Stage stage, double boilingForS) {
        forecastT = Double.NaN;
        boolean follow = stage.boiling() || stage == Stage.OFF_THE_HEAT;
        if (!follow) {
            warms(signals);
        }
        estimator.endSecond(signals.t(), follow, boilingForS >= SETTLE_S, stage == Stage.OFF_THE_HEAT, signals.stepC());
    }

    /** What was read lately tells nothing of the pan. */
    public void skip() {
        forecastT = Double.NaN;
        estimator.skip();
    }

    /** Sugar goes in, and the pan becomes another one. Instead of {@link #endSecond}. */
    public void anew(Signals signals) {
        forecastT = Double.NaN;
        warms(signals);
        estimator.anew();
    }

    private void warms(Signals signals) {
        double riseC = signals.levelC() - settings.waterBoil().temperatureC();
        signals.quick().ifPresent(line -> estimator.warms(signals.t(), riseC, Signals.perMinute(line)));
    }

    /**
     * The pan stands off the heat for a test, or is not yet known to be back at the boil. Instead of {@link #endSecond}.
     *
     * @param back whether it seems to be: then time counts again, for what it boils away
     */
    public void pause(double t, boolean back) {
        forecastT = Double.NaN;
        if (back) {
            estimator.skip();
        } else {
            estimator.pause(t);
        }
    }

    /** Whether the pan is back at the boil it was taken from: no water left meanwhile. */
    public boolean back(Signals signals) {
        double riseC = signals.levelC() - settings.waterBoil().temperatureC();
        boolean falls = signals.fallingFasterThan(BACK_PER_MIN_C);
        return estimator.knows() && !falls && riseC > estimator.riseC(signals.t()) - BACK_C;
    }

    /** The forecast at {@code t}; empty when it would be a guess. */
    public Optional<Forecast> forecast(double t) {
        if (t != forecastT) {
            forecast = foreseen(riseC -> estimator.arrival(t, riseC));
            forecastT = t;
        }
        return forecast;
    }

    /** The same for a pan that has fallen from its boil, as if it were back there; empty when it would be a guess. */
    public Optional<Forecast> forecastOnceBack() {
        return foreseen(estimator::arrivalOnceBack);
    }

    private Optional<Forecast> foreseen(DoubleFunction<Optional<Arrival>> arrival) {
        Optional<Arrival> gel = arrival.apply(settings.riseC());
        if (gel.isEmpty()) {
            return Optional.empty();
        }
        Arrival at = gel.get();
        Optional<Arrival> window = arrival.apply(settings.riseC() - settings.windowC());
        double windowS = Math.min(at.s(), window.map(Arrival::s).orElse(0.0));
        return Optional.of(new Forecast(windowS, at.s(), at.lowS(), at.highS(), estimator.perMinute()));
    }

    /** Where a pan that has fallen from its boil will boil again, in °C; empty when it has not, or nothing is known of it. */
    public OptionalDouble fellFromC() {
        OptionalDouble fromC = estimator.fellFromC();
        return fromC.isPresent() ? OptionalDouble.of(settings.waterBoil().temperatureC() + fromC.getAsDouble()) : fromC;
    }

    /** How fast such a pan will warm again once it has its heat back, in °C a minute. */
    public double warmsPerMinC() {
        return estimator.warmsPerMinC();
    }

    /**
     * The pan's temperature in °C by all that is known of it: what the readings say when they agree with the water
     * that left, and never more than that water allows.
     */
    public double temperatureC(double t, double trendC) {
        double knownC = settings.waterBoil().temperatureC() + estimator.riseC(t + pace.noticesS());
        double belowC = knownC - trendC;
        if (estimator.follows() && belowC > -pace.agreesC() && belowC < pace.agreesC() + estimator.dipsC()) {
            return knownC;
        }
        return estimator.misledUpwards() || (pace.shows() && estimator.knows()) ? Math.min(trendC, knownC) : trendC;
    }

    /** The temperature in °C at which the pan boiled until just now, where {@code seenC} was the height that was seen. */
    public double boiledAtC(double t, double seenC) {
        double knownC = settings.waterBoil().temperatureC() + estimator.riseC(t);
        return estimator.knows() && Math.abs(knownC - seenC) < pace.agreesC() ? knownC : seenC;
    }

    /** Whether anything is known of the pan's climb. */
    public boolean knows() {
        return estimator.knows();
    }

    /** How hot the pan is by what is known of its water, whatever is read; {@code otherwiseC} while nothing is known. */
    public double panC(double t, double otherwiseC) {
        return estimator.knows() ? settings.waterBoil().temperatureC() + estimator.riseC(t) : otherwiseC;
    }

    /**
     * Whether it may well take longer than {@code s} seconds until the gel point: by the doubt of the pan's height, or because
     * the readings of the last minutes, {@code trendC}, lie that far below.
     */
    public boolean mayTakeLongerThan(double s, double t, double trendC) {
        if (!estimator.knows()) {
            return false;
        }
        double lowestC = estimator.riseC(t) - SURE_SIGMAS * estimator.riseDoubtC(t);
        double seenC = trendC - settings.waterBoil().temperatureC() + estimator.lastingDipsC();
        double perS = estimator.slowestPerMinC() / 60;
        return settings.riseC() - lowestC > perS * s || settings.riseC() - seenC > perS * SEEN_S;
    }

    /** Where the pan will be in some minutes if it goes on; empty when that is not known. */
    public Optional<Ahead> ahead(double minutes) {
        return knowsTheClimb() ? Optional.of(estimator.ahead(minutes)) : Optional.empty();
    }

    /** By what part of itself the climb grows each minute, since syrup's curve steepens; 0 while that is not known. */
    public double growsPerMin() {
        if (!knowsTheClimb()) {
            return 0;
        }
        double thenPerMinC = estimator.ahead(GROWS_OVER_MIN).climbPerMinC();
        return Math.log(thenPerMinC / estimator.climbPerMinC()) / GROWS_OVER_MIN;
    }

    private boolean knowsTheClimb() {
        return estimator.knows() && estimator.climbPerMinC() > 0;
    }

    /** How far readings of some seconds are usually off, in °C. */
    public double noiseC() {
        return estimator.noiseC();
    }

    /** Whether the readings are hotter than the pan can be. */
    public boolean misledUpwards() {
        return estimator.misledUpwards();
    }

    /** Whether it climbs so much faster than it should that it cannot be trusted to be where it seems. */
    public boolean climbsTooFast(Signals signals) {
        return signals.quick().isPresent()
                && estimator.knows()
                && Signals.perMinute(signals.quick().get())
                        > Math.max(TOO_FAST_PER_MIN_C, TOO_FAST_TIMES * estimator.climbPerMinC());
    }

    /** The readings of the last minute were hotter than the pan. */
    public void doubtTheLastMinute() {
        forecastT = Double.NaN;
        estimator.doubtTheLastMinute();
    }

    /** The reading jumped: that it lies elsewhere since does not say that the pan stands or cools. */
    public void jumped() {
        estimator.jumped();
    }

    /** Whether the pan has stopped climbing. */
    public boolean still() {
        return estimator.still();
    }

    /** Whether it has stopped climbing because it cools. */
    public boolean cools() {
        return estimator.cools();
    }

    /** How fast the temperature should climb, in °C per minute, by the water that leaves: not at all while little but water boils. */
    public OptionalDouble expectedPerMinC(double riseC) {
        if (riseC < LEAST_RISE_C) {
            return OptionalDouble.of(0); // it boils like water
        }
        return knowsTheClimb() ? OptionalDouble.of(estimator.climbPerMinC()) : OptionalDouble.empty();
    }

    /** The same less what is in doubt of a pace that is only guessed, as where the pan was not seen to warm. */
    public OptionalDouble leastPerMinC(double riseC) {
        OptionalDouble perMinC = expectedPerMinC(riseC);
        double guessed = estimator.paceDoubt() - USUAL_DOUBT;
        return perMinC.isPresent() && guessed > 0
                ? OptionalDouble.of(perMinC.getAsDouble() / (1 + GUESSED * guessed))
                : perMinC;
    }

    /** How fast the pan should be climbing by what is known of it, in °C per minute; 0 while nothing is known. */
    public double climbPerMinC() {
        return estimator.knows() ? Math.max(0, estimator.climbPerMinC()) : 0;
    }

    /** Dissolved solids at {@code riseC} above the water boil, as a fraction by mass. */
    public double solids(double riseC) {
        return estimator.solids(riseC);
    }
}
