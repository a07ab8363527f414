package spoonfall.afternoon;

import java.util.Optional;
import java.util.OptionalDouble;
import spoonfall.afternoon.Timeline.PreparationLine;
import spoonfall.afternoon.Timeline.StepLine;
import spoonfall.cook.CookStatus;
import spoonfall.cook.Forecast;
import spoonfall.cook.Stage;
import spoonfall.cook.WentIn;
import spoonfall.cook.calm.CalmForecast;
import spoonfall.probe.Quality;

/** An afternoon whose pan does what the test says, second by second. */
final class Told {
    final Afternoon afternoon;
    private final CalmForecast calm = new CalmForecast();
    private Optional<CalmForecast.Shown> foretold = Optional.empty();
    private double t;
    private boolean notSet;

    Told(BatchNotes notes) {
        afternoon = new Afternoon(notes);
    }

    double t() {
        return t;
    }

    static CookStatus pan(Stage stage, double solids, Optional<Forecast> forecast, WentIn wentIn) {
        return new CookStatus(
                0,
                OptionalDouble.of(100),
                Quality.GOOD,
                Optional.empty(),
                stage,
                OptionalDouble.empty(),
                OptionalDouble.of(solids),
                forecast,
                wentIn,
                false);
    }

    /** From now on a test is said to have found it not set yet, or not. */
    Told notSet(boolean so) {
        notSet = so;
        return this;
    }

    /** The pan is in that stage for so many minutes. */
    Told pan(Stage stage, double solids, double minutes) {
        return pan(pan(stage, solids, Optional.empty(), WentIn.NOTHING), minutes);
    }

    Told pan(CookStatus status, double minutes) {
        for (double until = t + minutes * 60; t < until; t++) {
            follow(status);
        }
        return this;
    }

    private void follow(CookStatus status) {
        foretold = calm.settle(t, status.forecast(), OptionalDouble.empty());
        afternoon.follow(t, Optional.of(status), foretold, notSet);
    }

    Timeline timeline() {
        return afternoon.timeline(foretold);
    }

    /** It boils for so many minutes towards a set that is then still {@code leftMinutes} ahead. */
    Told climb(double minutes, double leftMinutes) {
        double setT = t + (minutes + leftMinutes) * 60;
        for (double until = t + minutes * 60; t < until; t++) {
            double leftS = setT - t;
            Forecast forecast = new Forecast(Math.max(0, leftS - 300), leftS, 0.8 * leftS, 1.3 * leftS, 0.01);
            follow(pan(Stage.ROLLING_BOIL, 0.5, Optional.of(forecast), WentIn.NOTHING));
        }
        return this;
    }

    /** Nobody watches for so many minutes. */
    Told later(double minutes) {
        for (double until = t + minutes * 60; t < until; t++) {
            foretold = Optional.empty();
            afternoon.follow(t, Optional.empty(), foretold, false);
        }
        return this;
    }

    Told tap(String step) {
        afternoon.tap(step, t);
        return this;
    }

    String now() {
        return timeline().now().map(line -> line.step().id()).orElse("");
    }

    StepLine step(String id) {
        return timeline().steps().stream()
                .filter(line -> line.step().id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    PreparationLine preparation(String id) {
        return timeline().preparations().stream()
                .filter(line -> line.preparation().id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    void undo() {
        afternoon.undo().ifPresent(undo -> afternoon.undo(undo.mark()));
    }
}
