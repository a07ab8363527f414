package spoonfall.cook.pan;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import spoonfall.cook.AlarmName;
import spoonfall.cook.CookEvent;
import spoonfall.cook.CookSettings;
import spoonfall.cook.CookStatus;
import spoonfall.cook.Forecast;
import spoonfall.cook.Pace;
import spoonfall.cook.Stage;
import spoonfall.cook.WentIn;
import spoonfall.cook.alarm.AlarmBoard;
import spoonfall.cook.calm.Reminders;
import spoonfall.cook.forecast.Forecaster;
import spoonfall.cook.forecast.WayBack;
import spoonfall.cook.monitor.PanTalk;
import spoonfall.cook.probe.PanProbe;
import spoonfall.cook.settest.SetTests;
import spoonfall.cook.signal.Signals;
import spoonfall.cook.stage.Stages;
import spoonfall.cook.stage.SugarIn;
import spoonfall.estimate.warming.PanPrior;
import spoonfall.probe.Reading;
import spoonfall.series.Slots;

/**
 * Watches the pan through its probe: what the readings are worth, the stage, the forecast, the alarms of the pan and the
 * reminders. Told of every reading and of the end of every second; the words of a cook reach it through {@link PanTalk}.
 */
public final class PanWatch {
    /** Reminders need no forecast more often than that, in seconds. */
    private static final long REMIND_EVERY_S = 10;

    private final CookSettings settings;
    private final Pace pace;
    private final AlarmBoard board;
    private final PanProbe probe;
    private final Stages stages;
    private final Forecaster forecaster;
    private final SetTests tests;
    private final PanAlarms alarms;
    private final PanHeight height;
    private final WayBack wayBack;
    private final Jumped jumped = new Jumped();
    private final SugarIn sugar;
    private final Reminders reminders = new Reminders();
    private final Slots slots = new Slots();
    private double latestSolids;
    private Stage told = Stage.WAITING;

    /** Of a pan of which nothing was read yet; its alarms are kept by {@code board}. */
    public PanWatch(CookSettings settings, Pace pace, AlarmBoard board) {
        this.settings = settings;
        this.pace = pace;
        this.board = board;
        probe = new PanProbe(settings, pace, board);
        stages = new Stages(settings);
        forecaster = new Forecaster(settings, pace);
        tests = new SetTests(settings);
        sugar = new SugarIn(settings.waterBoil().temperatureC());
        UnseenWindow unseen = new UnseenWindow(board, probe.watch());
        alarms = new PanAlarms(settings, board, stages, forecaster, tests, pace, unseen, sugar);
        height = new PanHeight(settings, pace, stages, forecaster, tests, alarms, sugar);
        wayBack = new WayBack(settings.waterBoil().temperatureC());
    }

    /** What the cook goes by now. */
    public CookSettings settings() {
        return settings;
    }

    /** Whether its probe is to be believed. */
    public PanProbe probe() {
        return probe;
    }

    /** Which stage it is in. */
    public Stages stages() {
        return stages;
    }

    /** When it will set. */
    public Forecaster forecaster() {
        return forecaster;
    }

    /** Its set tests. */
    public SetTests tests() {
        return tests;
    }

    /** When its alarms are so. */
    public PanAlarms alarms() {
        return alarms;
    }

    /** Takes what a plan says of this pan, before it boils. */
    public void expect(PanPrior prior) {
        forecaster.expect(prior);
    }

    /** Takes a reading of {@code t}; a bad one says nothing of the pan. */
    public void accept(double t, Reading reading) {
        if (probe.accept(t, reading, stages.stage().boiling())) {
            forecaster.accept(t, reading.temperatureC().orElseThrow());
        }
    }

    /** Ends a second: what came of it goes to {@code events}. */
    public void endSecond(double t, List<CookEvent> events) {
        probe.endSecond(t).ifPresent(heldC -> forecaster.accept(t, heldC));
        tests.endSecond(t, board, events);
        probe.runAlarms(t, expectedPerMinC(), forecaster::growsPerMin, events);
        Optional<Signals> live = probe.live(t);
        if (live.isPresent() && !tests.set()) {
            look(t, live.get(), events);
        }
        alarms.endSecond(t, events);
    }

    /** How the pan is at {@code t}. */
    public CookStatus status(double t) {
        Optional<Signals> live = probe.live(t);
        boolean boiling = stages.stage().boiling();
        OptionalDouble level = live.map(s -> OptionalDouble.of(s.levelC())).orElse(OptionalDouble.empty());
        OptionalDouble rate = live.flatMap(Signals::steady)
                .map(line -> OptionalDouble.of(Signals.perMinute(line)))
                .orElse(OptionalDouble.empty());
        OptionalDouble solids = live.filter(s -> boiling)
                .map(s -> OptionalDouble.of(
                        forecaster.solids(s.trendC() - settings.waterBoil().temperatureC())))
                .orElse(OptionalDouble.empty());
        return new CookStatus(
                t,
                level,
                probe.quality(t),
                probe.watch().seen(),
                told,
                rate,
                solids,
                forecast(t),
                probe.watch().freshAt(t) ? wentIn() : WentIn.NOTHING,
                stages.wasClose());
    }

    private WentIn wentIn() {
        if (sugar.going() && !sweet()) {
            return WentIn.SUGAR;
        }
        return alarms.coldAdded() ? WentIn.SOMETHING_COLD : WentIn.NOTHING;
    }

    /** Whether the sugar is in, whatever it seemed to be on the way there. */
    private boolean sweet() {
        return stages.reachedWindow() || tests.set();
    }

    /** When it will set, as it is told at {@code t}; empty while nobody can know. */
    public Optional<Forecast> forecast(double t) {
        return probe.watch().freshAt(t) && !tests.paused() ? foreseen(t) : Optional.empty();
    }

    private Optional<Forecast> foreseen(double t) {
        boolean seen = !probe.misled() || probe.outOfPan(); // the pan goes on meanwhile
        boolean climbing = stages.stage().boiling() && !board.present(AlarmName.STALLED) && seen;
        Optional<Forecast> forecast = climbing ? forecaster.forecast(t) : Optional.empty();
        if (probe.outOfPan()) {
            forecast = forecast.filter(then -> then.highS() > 0); // nobody saw whether it has come to pass
        }
        boolean tells = wayBack.warms() || (wayBack.tells() && !alarms.gelCalled());
        if (tells && !probe.misled()) {
            Optional<Forecast> back = wayBack.forecast(t, forecaster.forecastOnceBack());
            forecast = wayBack.warms() || forecast.isEmpty() ? back : forecast;
        }
        return forecast;
    }

    /** How fast the pan should be moving at least just now, whatever the reading does. */
    private OptionalDouble expectedPerMinC() {
        Optional<Signals> signals = probe.signals();
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
        return forecaster.leastPerMinC(riseC);
    }

    private void look(double t, Signals now, List<CookEvent> events) {
        double panC = forecaster.panC(t, Double.POSITIVE_INFINITY);
        switch (probe.judge(t, stages.stage(), now, panC, sugar.mayGo(t), events)) {
            case PAN -> watchPan(t, now, events);
            case BACK -> beginAfresh(t);
            case BACK_FROM_STUCK -> {
                forecaster.skip();
                beginAfresh(t);
            }
            case STUCK -> {}
            case ELSEWHERE -> forecaster.skip();
        }
    }

    private void beginAfresh(double t) {
        alarms.restart();
        reminders.restart();
        height.restart(t);
        wayBack.restart();
        jumped.restart();
        sugar.restart();
    }

    private void watchPan(double t, Signals now, List<CookEvent> events) {
        if (pace.shows() && jumped.endSecond(now)) {
            forecaster.jumped();
            alarms.jumped(now, jumped.shift());
        }
        if (pace.shows()) {
            sugar.endSecond(now);
        }
        Signals known = now.withTrend(height.knownC(probe.watch().seenT(), now));
        if (forecaster.misledUpwards()) {
            known = known.withoutPeak();
            probe.senses().forgetPeak(t);
        }
        followStage(t, now, known, events);
        boolean back = forecaster.back(now);
        if (sugar.going()) {
            forecaster.anew(now);
        } else if (tests.paused(t, back)) {
            forecaster.pause(t, back);
        } else {
            forecaster.endSecond(now, stages.stage(), stages.boilingForS(t));
        }
        wayBack.endSecond(
                now,
                alarms.coldAdded() || !pace.shows() ? OptionalDouble.empty() : forecaster.fellFromC(),
                forecaster::warmsPerMinC);
        alarms.endSecond(t, known, probe.watch().suspectStuck(), wayBack.warms(), events);
        remind(t, now, events);
    }

    /** Tells the stage when it is another one than was told last. */
    public void tellStage(double t, List<CookEvent> events) {
        Stage now = sweet() ? stages.stage() : sugar.told(stages.stage(), t);
        if (now != told) {
            told = now;
            events.add(new CookEvent.StageEntered(t, told));
        }
    }

    private void followStage(double t, Signals now, Signals known, List<CookEvent> events) {
        boolean boiled = stages.stage().boiling();
        if (stages.follow(known) && !pace.shows() && !boiled && stages.stage().boiling()) {
            probe.senses().newRegime(); // its lines are minutes long, and would hold the way up to the boil
        }
        tellStage(t, events);
        probe.watch().follow(stages.stage(), t);
        if (now.steady().isPresent()) {
            probe.watch().climbs(Signals.perMinute(now.steady().get()));
        }
    }

    private void remind(double t, Signals now, List<CookEvent> events) {
        Stage stage = stages.stage();
        boolean climbs = stage.boiling() && !stage.atOrPastGelPoint() && !board.present(AlarmName.STALLED);
        boolean due = (long) t % REMIND_EVERY_S == 0;
        if (climbs && slots.begins(t)) {
            latestSolids = forecaster.solids(now.trendC() - settings.waterBoil().temperatureC());
        }
        Optional<Forecast> forecast = climbs && due && !sugar.mayGo(t) ? forecaster.forecast(t) : Optional.empty();
        reminders.endSecond(now, stage, climbs ? latestSolids : 0, forecast, events);
        if (due) {
            alarms.foresee(t, tests.paused() ? Optional.empty() : forecast);
        }
    }
}
