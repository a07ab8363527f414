package spoonfall.kitchen.thermometer;

import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import spoonfall.calibration.Correction;
import spoonfall.calibration.Point;
import spoonfall.calibration.Reference;
import spoonfall.kitchen.ask.Refusal;
import spoonfall.kitchen.plan.KitchenPlan;
import spoonfall.log.CalibrationBook;
import spoonfall.probe.Reading;

/** The check of a thermometer in boiling water or ice, one at a time, and what is kept of it. Used by the kitchen's thread alone. */
public final class ThermometerCheck {
    private static final double TWO_SIDES = 1.96;

    private final KitchenPlan plan;
    private final Thermometry thermometry;
    private final Thermometers thermometers;
    private @Nullable Check check;

    /** No check is running yet. */
    public ThermometerCheck(KitchenPlan plan, Thermometry thermometry, Thermometers thermometers) {
        this.plan = plan;
        this.thermometry = thermometry;
        this.thermometers = thermometers;
    }

    /** Where water boils here was said anew: a check in boiling water compares with that. */
    public void boilChanged() {
        if (check != null && check.in() == Reference.Kind.BOILING_WATER) {
            check.seek(thermometers.base().sought());
        }
    }

    /** Begins a check; another one that was running is abandoned. */
    public void start(String name, Reference.Kind in) {
        if (plan.source() != KitchenPlan.Source.LIVE || thermometry.book().isEmpty()) {
            throw new Refusal("a recorded cook has no thermometer to check; start Spoonfall with \"serve\"");
        }
        Thermometer thermometer = thermometers.named(name);
        if (thermometer.byHand()) {
            throw new Refusal(
                    "a thermometer that you read yourself cannot be compared here. Hold it in boiling water: what"
                            + " it shows more than where water boils here, take off whatever you type");
        }
        Optional<Point> boiled = boiledBefore(name);
        if (in == Reference.Kind.BOILING_WATER) {
            check = new Check(thermometer.name(), thermometers.base().sought(), Optional.empty());
        } else {
            check = new Check(thermometer.name(), Reference.ice(), boiled);
        }
    }

    /** The plateau in boiling water that the running check of a thermometer has found. */
    public Optional<Point> boiledBefore(String name) {
        if (check == null || !check.probe().equals(name)) {
            return Optional.empty();
        }
        return check.in() == Reference.Kind.BOILING_WATER ? check.found() : check.boiled();
    }

    /** Ends a check without a result; false if none was running. */
    public boolean abandon() {
        boolean running = check != null;
        check = null;
        return running;
    }

    /** Whether the followed thermometer lies in ice. */
    public boolean firstInIce() {
        return check != null
                && check.in() == Reference.Kind.ICE
                && check.probe().equals(thermometers.first().name());
    }

    /** A reading for the check, before it is corrected. */
    public void heard(Reading raw) {
        if (check != null && check.probe().equals(raw.probe())) {
            check.accept(raw);
        }
    }

    /** Keeps what the check found as today's water boil. */
    public void keepWaterBoil() {
        Check running = running();
        if (running.in() != Reference.Kind.BOILING_WATER) {
            throw new Refusal("ice is no water boil; check it in boiling water");
        }
        if (!running.probe().equals(thermometers.first().name())) {
            throw new Refusal(
                    "the cook follows " + thermometers.first().name() + ": measure today's water boil with that one");
        }
        Point point = found(running);
        WaterBase.Measured next = new WaterBase.Measured(
                point.shownC(),
                TWO_SIDES * point.shownUncertaintyC(),
                thermometry.clock().instant());
        try {
            next.by(thermometers.first());
        } catch (IllegalArgumentException e) {
            throw new Refusal(String.valueOf(e.getMessage()), e);
        }
        thermometers.measured(next);
        check = null;
    }

    /** Keeps what the check found as the thermometer's correction. */
    public void keepCalibration() {
        Check running = running();
        Thermometer thermometer = thermometers.named(running.probe());
        Point point = found(running);
        cannotCorrect(running).ifPresent(why -> {
            throw new Refusal(why);
        });
        List<Point> points = new ArrayList<>();
        String conditions = thermometers.base().declared().detail();
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
        return point.with(thermometers.base().sought());
    }

    /** Takes the latest correction of a thermometer back. */
    public void undo(String name) {
        Thermometer thermometer = thermometers.named(name);
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
        if (!byWater || thermometers.base().known()) {
            return Optional.empty();
        }
        return Optional.of("Nobody said how high the kitchen is, so how far the thermometer is off is not known. Say"
                + " the elevation or the air pressure below, or use it as today's water boil.");
    }

    /** How the check stands; empty if none is running. */
    public Optional<CheckView> view() {
        if (check == null) {
            return Optional.empty();
        }
        Check running = check;
        boolean boils = running.in() == Reference.Kind.BOILING_WATER
                && running.probe().equals(thermometers.first().name());
        OptionalDouble waterBoilC = running.found()
                .filter(point -> boils)
                .map(point -> OptionalDouble.of(thermometers.first().trueC(point.shownC())))
                .orElse(OptionalDouble.empty());
        return Optional.of(
                running.view(thermometers.base().reference(running.in()), waterBoilC, cannotCorrect(running)));
    }
}
