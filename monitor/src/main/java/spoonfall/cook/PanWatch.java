package spoonfall.cook;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import spoonfall.alarm.Condition;
import spoonfall.estimate.PanPrior;
import spoonfall.estimate.Slots;
import spoonfall.probe.Quality;
import spoonfall.probe.Reading;

/**
 * Watches the pan through its probe: what the readings are worth, the stage, the forecast, the alarms of the pan and the
 * reminders. Told of every reading and of the end of every second; the words of a cook reach it through {@link PanTalk}.
 */
final class PanWatch {
    /** What climbs too fast is held back by so much below the gel point until it is seen whether it is real. */
    private static final double NOT_YET_C = 0.05;

    /** Back from a set test it climbs as fast, but only to where it was. */
    private static final double NEW_HEIGHTS_C = 0.3;

    /** The gel point is not called while it may be further away than that, in seconds. */
    private static final double TOO_EARLY_S = 240;

    /** Reminders need no forecast more often than that, in seconds. */
    private static final long REMIND_EVERY_S = 10;

    private final CookSettings settings;
    private final Pace pace;
    private final AlarmBoard board;
    private final Senses senses;
    private final Stages stages;
    private final Forecaster forecaster;
    private final SetTests tests;
    private final PanAlarms alarms;
    private final TooFast tooFast;
    private final Reminders reminders = new Reminders();
    private final Slots slots = new Slots();
    private double solids;
    private final ProbeWatch probe;
    private final OutOfPan leaving;
    private final WayBack wayBack;
    private final Jumped jumped = new Jumped();
    private Optional<Signals> signals = Optional.empty();
    private boolean misledLately;
    private boolean stuckLately;

    PanWatch(CookSettings settings, Pace pace, AlarmBoard board) {
        this.settings = settings;
        this.pace = pace;
        this.board = board;
        senses = new Senses(pace);
        stages = new Stages(settings);
        forecaster = new Forecaster(settings, pace);
        tests = new SetTests(settings);
        probe = new ProbeWatch(settings, pace);
        alarms = new PanAlarms(settings, board, stages, forecaster, tests, pace, new UnseenWindow(board, probe));
        leaving = new OutOfPan(settings.waterBoil().temperatureC());
        tooFast = new TooFast(settings.waterBoil().temperatureC());
        wayBack = new WayBack(settings.waterBoil().temperatureC());
    }

    CookSettings settings() {
        return settings;
    }

    Stages stages() {
        return stages;
    }

    Forecaster forecaster() {
        return forecaster;
    }

    SetTests tests() {
        return tests;
    }

    PanAlarms alarms() {
        return alarms;
    }

    Optional<Signals> signals() {
        return signals;
    }

    void expect(PanPrior prior) {
        forecaster.expect(prior);
    }

    /** Nobody listened before {@code t}, so that the probe was not silent. */
    void listenSince(double t) {
        probe.listenSince(t);
    }

    /** Takes a reading of {@code t}; a bad one says nothing of the pan. */
    void accept(double t, Reading reading) {
        if (reading.quality() != Quality.GOOD) {
            probe.acceptBad(reading.quality());
            return;
        }
        double temperatureC = reading.temperatureC().orElseThrow();
        if (probe.accept(t, temperatureC, stages.stage().boiling() && !outOfPan())) {
            senses.accept(temperatureC);
            leaving.accept(t, temperatureC);
            forecaster.accept(t, temperatureC);
        }
    }

    /** What the readings do from now on does not go on from before. */
    void breakOff() {
        misledLately = true;
    }

    /** Ends a second: what came of it goes to {@code events}. */
    void endSecond(double t, List<CookEvent> events) {
        signals = senses.endSecond(t);
        tests.endSecond(t, board, events);
        double stepC = signals.isPresent() ? signals.get().stepC() : Signals.NOT_SHOWN_C;
        probe.watch(t, board, expectedPerMinC(), forecaster::growsPerMin, stepC, events);
        if (signals.isPresent() && probe.freshAt(t) && !tests.set()) {
            watchPan(t, signals.get(), events);
        }
        alarms.endSecond(t, events);
    }

    /** What the latest reading is known by, unless it is old or does not say where the pan is. */
    Optional<Signals> trusted(double t) {
        return probe.freshAt(t) && !misled() ? signals : Optional.empty();
    }

    /** How far the latest reading can be trusted, with what the alarms know. */
    Quality quality(double t) {
        Quality latest = probe.latest(t);
        if (latest != Quality.GOOD) {
            return latest;
        }
        if (outOfPan()) {
            return Quality.OUT_OF_PAN;
        }
        return board.present(AlarmName.PROBE_STUCK) ? Quality.STUCK : Quality.GOOD;
    }

    /** How the pan is at {@code t}. */
    CookStatus status(double t) {
        boolean fresh = probe.freshAt(t);
        Optional<Signals> live = fresh ? signals : Optional.empty();
        boolean boiling = stages.stage().boiling();
        OptionalDouble level = live.map(s -> OptionalDouble.of(s.levelC())).orElse(OptionalDouble.empty());
        OptionalDouble rate = live.flatMap(Signals::steady)
                .map(line -> OptionalDouble.of(Signals.perMinute(line)))
                .orElse(OptionalDouble.empty());
        OptionalDouble solids = live.filter(s -> boiling)
                .map(s -> OptionalDouble.of(
                        forecaster.solids(s.trendC() - settings.waterBoil().temperatureC())))
                .orElse(OptionalDouble.empty());
        boolean seen = !misled() || outOfPan(); // the pan goes on meanwhile
        boolean climbing = boiling && fresh && !tests.paused() && !board.present(AlarmName.STALLED) && seen;
        Optional<Forecast> forecast = climbing ? forecaster.forecast(t) : Optional.empty();
        if (outOfPan()) {
            forecast = forecast.filter(then -> then.highS() > 0); // nobody saw whether it has come to pass
        }
        boolean tells = wayBack.warms() || (wayBack.tells() && !alarms.gelCalled());
        if (fresh && tells && !tests.paused() && !misled()) {
            Optional<Forecast> back = wayBack.forecast(t, forecaster.forecastOnceBack());
            forecast = wayBack.warms() || forecast.isEmpty() ? back : forecast;
        }
        return new CookStatus(
                t,
                level,
                quality(t),
                probe.seen(),
                stages.stage(),
                rate,
                solids,
                forecast,
                fresh && alarms.coldAdded());
    }

    /** How fast the pan should be moving just now, whatever the reading does. */
    private OptionalDouble expectedPerMinC() {
        if (signals.isEmpty() || !stages.stage().boiling()) {
            return OptionalDouble.empty();
        }
        if (board.present(AlarmName.STALLED)) {
            return OptionalDouble.of(0);
        }
        double levelC = signals.get().levelC();
        double panC = forecaster.panC(signals.get().t(), levelC);
        if (Math.abs(levelC - panC) > pace.agreesC() + Math.min(1, signals.get().stepC())) {
            return OptionalDouble.empty(); // the pan is not where it is thought to be
        }
        double riseC = levelC - settings.waterBoil().temperatureC();
        return forecaster.duePerMinC(riseC);
    }

    private void watchPan(double t, Signals now, List<CookEvent> events) {
        double panC = forecaster.panC(t, Double.POSITIVE_INFINITY);
        Condition out = pace.shows() ? leaving.judge(t, stages.stage(), now, panC) : Condition.ABSENT;
        board.update(t, AlarmName.PROBE_OUT_OF_PAN, out, () -> AlarmText.probeOutOfPan(now), events);
        if (out == Condition.PRESENT || misled()) {
            misledLately = true;
            stuckLately |= board.present(AlarmName.PROBE_STUCK);
            if (out == Condition.PRESENT || elsewhere()) {
                forecaster.skip();
            }
            return;
        }
        if (misledLately) {
            if (stuckLately && probe.wentOn()) {
                forecaster.stood(t);
            } else if (stuckLately) {
                forecaster.skip();
            }
            stuckLately = false;
            misledLately = false;
            senses.restart();
            alarms.restart();
            reminders.restart();
            tooFast.restart(t);
            wayBack.restart();
            jumped.restart();
            return;
        }
        if (pace.shows() && jumped.endSecond(now)) {
            forecaster.jumped();
            alarms.jumped(now);
        }
        if (probe.caughtUp() && !leaptPast(t, now)) {
            forecaster.skip();
        }
        double knownC = knownC(t, now);
        if (pace.shows()) {
            knownC = Math.min(knownC, tooFast.atMostC(now, stages.boilingForS(t), pace.noticesS(), forecaster));
        }
        boolean misleads = alarms.misledByTheBase(t);
        boolean early = !stages.stage().atOrPastGelPoint() && (misleads || tooEarly(t, now, knownC));
        boolean far = alarms.misledIntoTheWindow(t);
        double mostC = far ? tests.aim().windowFromC() : tests.aim().gelPointC();
        Signals known = now.withTrend(early ? Math.min(knownC, mostC - NOT_YET_C) : knownC);
        if (forecaster.misledUpwards()) {
            known = known.withoutPeak();
            senses.forgetPeak(t);
        }
        boolean boiled = stages.stage().boiling();
        if (stages.follow(known)) {
            if (!pace.shows() && !boiled && stages.stage().boiling()) {
                senses.newRegime(); // its lines are minutes long, and would hold the way up to the boil
            }
            events.add(new CookEvent.StageEntered(t, stages.stage()));
        }
        probe.follow(stages.stage(), t);
        if (now.steady().isPresent()) {
            probe.climbs(Signals.perMinute(now.steady().get()));
        }
        boolean back = forecaster.back(now);
        if (tests.paused(t, back)) {
            forecaster.pause(t, back);
        } else {
            forecaster.endSecond(now, stages.stage(), stages.boilingForS(t));
        }
        wayBack.endSecond(
                now,
                alarms.coldAdded() || !pace.shows() ? OptionalDouble.empty() : forecaster.fellFromC(),
                forecaster::warmsPerMinC);
        alarms.endSecond(t, known, probe.suspectStuck(), wayBack.warms(), events);
        remind(t, now, events);
    }

    /** Whether the pan may yet be far from the gel point, though it seems to be there or climbs as if it were. */
    private boolean tooEarly(double t, Signals now, double knownC) {
        boolean there = knownC > tests.aim().gelPointC() - NOT_YET_C;
        return pace.shows()
                && ((forecaster.climbsTooFast(now) && now.levelC() > now.earlierPeakC() + NEW_HEIGHTS_C)
                        || (there && forecaster.mayTakeLongerThan(TOO_EARLY_S, t, now.trendC())));
    }

    /** Whether the reading lies far above the pan, so that it did not leap up to it. */
    private boolean leaptPast(double t, Signals now) {
        double panC = forecaster.panC(t, Double.POSITIVE_INFINITY);
        double readC = probe.seen().map(CookStatus.Seen::temperatureC).orElse(now.levelC());
        return readC > panC + pace.agreesC() + now.knownStepC();
    }

    /**
     * Where the pan is by all that is known. That it went on too far must be read, not only foreseen, where readings are minutes
     * apart; and so must the window be while nothing is known of its climb: a line through the way to the boil leads past that.
     */
    private double knownC(double t, Signals now) {
        double readT = probe.seen().isPresent() ? probe.seen().get().t() : t;
        double knownC = forecaster.temperatureC(pace.carriedT(t, readT), now.trendC());
        double mostC = settings.gelPointC() + PastGelPoint.MARGIN_C - NOT_YET_C;
        if (pace.shows()) {
            mostC = forecaster.knows() ? knownC : tests.aim().windowFromC() - NOT_YET_C;
        }
        return Math.min(knownC, Math.max(now.levelC(), mostC));
    }

    private void remind(double t, Signals now, List<CookEvent> events) {
        Stage stage = stages.stage();
        boolean climbs = stage.boiling() && !stage.atOrPastGelPoint() && !board.present(AlarmName.STALLED);
        boolean due = (long) t % REMIND_EVERY_S == 0;
        if (climbs && slots.begins(t)) {
            solids = forecaster.solids(now.trendC() - settings.waterBoil().temperatureC());
        }
        Optional<Forecast> forecast = climbs && due ? forecaster.forecast(t) : Optional.empty();
        reminders.endSecond(now, stage, climbs ? solids : 0, forecast, events);
        if (due) {
            alarms.foresee(t, tests.paused() ? Optional.empty() : forecast);
        }
    }

    private boolean outOfPan() {
        return board.present(AlarmName.PROBE_OUT_OF_PAN);
    }

    /** What the probe says is not the pan's temperature. */
    private boolean misled() {
        return elsewhere() || board.present(AlarmName.PROBE_STUCK);
    }

    /** What it says cannot be the pan's; one that is stuck may yet turn out to have told where the pan stood. */
    private boolean elsewhere() {
        return outOfPan() || board.present(AlarmName.PROBE_IMPLAUSIBLE);
    }
}
