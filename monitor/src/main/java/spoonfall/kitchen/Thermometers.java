package spoonfall.kitchen;

import java.io.UncheckedIOException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import spoonfall.calibration.Correction;
import spoonfall.calibration.Point;
import spoonfall.calibration.Reference;
import spoonfall.cook.CookSettings;
import spoonfall.cook.ProbeTrust;
import spoonfall.cook.WaterBoil;
import spoonfall.log.CalibrationBook;
import spoonfall.log.CookBasis;
import spoonfall.probe.Probe;
import spoonfall.probe.Reading;

/**
 * The thermometers of a kitchen, where water boils in it, and the check that brings both together. Used by the
 * kitchen's thread alone.
 */
final class Thermometers {
    private static final double TWO_SIDES = 1.96;

    private final KitchenPlan plan;
    private final Thermometry thermometry;
    private final List<Thermometer> all = new ArrayList<>();
    private WaterBase base;
    private double riseC;
    private @Nullable Check check;

    Thermometers(KitchenPlan plan, List<Probe> probes, Thermometry thermometry) {
        this.plan = plan;
        this.thermometry = thermometry;
        probes.forEach(probe -> all.add(new Thermometer(probe, thermometry)));
        riseC = plan.settings().riseC();
        WaterBoil given = plan.settings().waterBoil();
        boolean typed = given.from() == WaterBoil.From.MEASURED;
        base = new WaterBase(typed ? thermometry.declared().orElseGet(WaterBoil::standard) : given, Optional.empty());
        if (typed) {
            Instant at = plan.startedAt().orElseGet(thermometry.clock()::instant);
            base = base.measured(Optional.of(new WaterBase.Measured(first().shownC(given.temperatureC()), 0, at)));
        }
    }

    /** The one that the cook follows. */
    Thermometer first() {
        return all.get(0);
    }

    /** The others in the same pan. */
    List<Thermometer> others() {
        return all.subList(1, all.size());
    }

    Thermometer named(String name) {
        return all.stream()
                .filter(one -> one.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new Refusal("no thermometer is called \"" + name + "\"; it can be "
                        + String.join(", ", all.stream().map(Thermometer::name).toList())));
    }

    /** What a cook is measured against now. */
    CookSettings settings() {
        return new CookSettings(waterBoil(), riseC);
    }

    /** The pan is to be boiled to another rise, in °C. */
    void aim(double otherC) {
        riseC = otherC;
    }

    private WaterBoil waterBoil() {
        return base.boil(first());
    }

    /** What a cook is measured against now, with what that rests on. */
    CookBasis cookBasis() {
        return new CookBasis(
                settings(),
                trusts(),
                base.declared(),
                base.measured().map(one -> new CookBasis.Measured(one.shownC(), one.plateauDoubtC(), one.at())));
    }

    /** Where water boils and what is aimed at, as a cook that goes on had it. */
    void restore(CookBasis basis) {
        riseC = basis.settings().riseC();
        base = new WaterBase(
                basis.declared(),
                basis.measured().map(one -> new WaterBase.Measured(one.shownC(), one.plateauDoubtC(), one.at())));
    }

    /** What the gel point rests on. */
    Basis basis() {
        CookSettings settings = settings();
        return base.measured()
                .map(one -> Basis.of(settings, base.declared(), Optional.of(one.at()), OptionalDouble.empty()))
                .orElseGet(() -> Basis.of(
                        settings,
                        base.declared(),
                        Optional.empty(),
                        OptionalDouble.of(first().doubtC(settings.gelPointC()))));
    }

    /** How far each can be trusted. */
    List<ProbeTrust> trusts() {
        double gelPointC = settings().gelPointC();
        return all.stream().map(one -> one.trust(gelPointC)).toList();
    }

    /** How each is. */
    List<ProbeState> states() {
        return all.stream().map(this::state).toList();
    }

    /** How one is. */
    ProbeState state(Thermometer thermometer) {
        double gelPointC = settings().gelPointC();
        Optional<String> due = plan.source() == KitchenPlan.Source.LIVE ? due(thermometer) : Optional.empty();
        return thermometer.view(gelPointC, due);
    }

    private Optional<String> due(Thermometer thermometer) {
        if (thermometer.byHand()) {
            return Optional.empty(); // only a thermometer that speaks by itself is compared here
        }
        double boilC = waterBoil().temperatureC();
        if (thermometer == first() && base.measured().isPresent() && base.known()) {
            Optional<String> contradicted =
                    CalibrationDue.byContradiction(waterBoil(), base.declared(), thermometer.doubtC(boilC));
            if (contradicted.isPresent()) {
                return contradicted;
            }
        }
        if (thermometer == first()
                && base.measured().isPresent()
                && thermometer.calibration().isEmpty()) {
            return Optional.empty(); // today's boiling water cancels what it is off by
        }
        return CalibrationDue.byAge(
                thermometer.calibration(),
                thermometer.doubtC(boilC),
                thermometry.clock().instant());
    }

    /** Where water boils, by what was said of the kitchen. */
    void declare(WaterBoil boil) {
        base = base.declared(boil);
        if (check != null && check.in() == Reference.Kind.BOILING_WATER) {
            check.seek(base.sought());
        }
    }

    /** The measured water boil counts no longer. */
    void forgetMeasured() {
        if (base.measured().isEmpty()) {
            throw new Refusal("no water boil was measured");
        }
        base = base.measured(Optional.empty());
    }

    /** Begins a check; another one that was running is abandoned. */
    void start(String name, Reference.Kind in) {
        if (plan.source() != KitchenPlan.Source.LIVE || thermometry.book().isEmpty()) {
            throw new Refusal("a recorded cook has no thermometer to check; start Spoonfall with \"serve\"");
        }
        Thermometer thermometer = named(name);
        if (thermometer.byHand()) {
            throw new Refusal(
                    "a thermometer that you read yourself cannot be compared here. Hold it in boiling water: what"
                            + " it shows more than where water boils here, take off whatever you type");
        }
        Optional<Point> boiled = boiledBefore(name);
        if (in == Reference.Kind.BOILING_WATER) {
            check = new Check(thermometer.name(), base.sought(), Optional.empty());
        } else {
            check = new Check(thermometer.name(), Reference.ice(), boiled);
        }
    }

    /** The plateau in boiling water that the running check of a thermometer has found. */
    Optional<Point> boiledBefore(String name) {
        if (check == null || !check.probe().equals(name)) {
            return Optional.empty();
        }
        return check.in() == Reference.Kind.BOILING_WATER ? check.found() : check.boiled();
    }

    /** Ends a check without a result; false if none was running. */
    boolean abandon() {
        boolean running = check != null;
        check = null;
        return running;
    }

    /** Whether the followed thermometer lies in ice. */
    boolean firstInIce() {
        return check != null
                && check.in() == Reference.Kind.ICE
                && check.probe().equals(first().name());
    }

    /** A reading for the check, before it is corrected. */
    void heard(Reading raw) {
        if (check != null && check.probe().equals(raw.probe())) {
            check.accept(raw);
        }
    }

    /** Keeps what the check found as today's water boil. */
    void keepWaterBoil() {
        Check running = running();
        if (running.in() != Reference.Kind.BOILING_WATER) {
            throw new Refusal("ice is no water boil; check it in boiling water");
        }
        if (!running.probe().equals(first().name())) {
            throw new Refusal("the cook follows " + first().name() + ": measure today's water boil with that one");
        }
        Point point = found(running);
        WaterBase.Measured next = new WaterBase.Measured(
                point.shownC(),
                TWO_SIDES * point.shownUncertaintyC(),
                thermometry.clock().instant());
        try {
            next.by(first());
        } catch (IllegalArgumentException e) {
            throw new Refusal(String.valueOf(e.getMessage()), e);
        }
        base = base.measured(Optional.of(next));
        check = null;
    }

    /** Keeps what the check found as the thermometer's correction. */
    void keepCalibration() {
        Check running = running();
        Thermometer thermometer = named(running.probe());
        Point point = found(running);
        cannotCorrect(running).ifPresent(why -> {
            throw new Refusal(why);
        });
        List<Point> points = new ArrayList<>();
        String conditions = base.declared().detail();
        if (running.in() == Reference.Kind.ICE) {
            Optional<CalibrationBook.Entry> before = thermometer.calibration();
            points.add(running.boiled()
                    .map(this::compared)
                    .or(() -> before.map(entry -> entry.correction().points().get(0)))
                    .orElseThrow(() -> new Refusal("check it in boiling water first: ice alone says little of a pan")));
            conditions = running.boiled().isPresent() || before.isEmpty()
                    ? conditions
                    : before.get().conditions();
            points.add(point);
        } else {
            points.add(compared(point));
        }
        String under = conditions;
        book(book -> {
            Correction correction = new Correction(points);
            book.add(new CalibrationBook.Entry(
                    thermometer.identity(),
                    thermometer.place(),
                    thermometry.clock().instant(),
                    under,
                    false,
                    correction));
            return true;
        });
        thermometer.readBook();
        check = null;
    }

    private Point compared(Point point) {
        return point.with(base.sought());
    }

    /** Takes the latest correction of a thermometer back. */
    void undo(String name) {
        Thermometer thermometer = named(name);
        book(book -> book.undo(thermometer.identity())
                .orElseThrow(() -> new Refusal(name + " has no correction to take back")));
        thermometer.readBook();
    }

    private <T> T book(Function<CalibrationBook, T> act) {
        CalibrationBook book =
                thermometry.book().orElseThrow(() -> new Refusal("a recorded cook has no thermometer to correct"));
        try {
            return act.apply(book);
        } catch (IllegalArgumentException | UncheckedIOException e) {
            throw new Refusal(String.valueOf(e.getMessage()), e);
        }
    }

    private Check running() {
        if (check == null) {
            throw new Refusal("no check is running; begin one first");
        }
        return check;
    }

    private static Point found(Check running) {
        return running.found().orElseThrow(() -> new Refusal("there is nothing to keep yet: " + running.why()));
    }

    private Optional<String> cannotCorrect(Check running) {
        boolean byWater =
                running.in() == Reference.Kind.BOILING_WATER || running.boiled().isPresent();
        if (!byWater || base.known()) {
            return Optional.empty();
        }
        return Optional.of("Nobody said how high the kitchen is, so how far the thermometer is off is not known. Say"
                + " the elevation or the air pressure below, or use it as today's water boil.");
    }

    /** How the check stands; empty if none is running. */
    Optional<CheckView> view() {
        if (check == null) {
            return Optional.empty();
        }
        Check running = check;
        boolean boils =
                running.in() == Reference.Kind.BOILING_WATER && running.probe().equals(first().name());
        OptionalDouble waterBoilC = running.found()
                .filter(point -> boils)
                .map(point -> OptionalDouble.of(first().trueC(point.shownC())))
                .orElse(OptionalDouble.empty());
        return Optional.of(running.view(base.reference(running.in()), waterBoilC, cannotCorrect(running)));
    }
}
