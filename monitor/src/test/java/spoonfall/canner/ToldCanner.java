package spoonfall.canner;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import spoonfall.alarm.AlarmChange;
import spoonfall.canning.CannerKind;
import spoonfall.canning.Food;
import spoonfall.canning.JarBatch;
import spoonfall.canning.JarSize;
import spoonfall.canning.RecipeTime;

/** A canner at 1,240 m that lives through what a test tells it, a second at a time. */
final class ToldCanner {
    /** Where water boils at 1,240 m by the standard atmosphere (ISO 2533) and IAPWS-IF97, in °C. */
    static final double BOIL_C = 95.85;

    final CannerWatch watch = new CannerWatch();
    final List<CannerEvent> events = new ArrayList<>();
    private double t = 1000;
    private int taps;

    static JarLoad load(CannerKind canner, int jars, Optional<RecipeTime> recipe) {
        JarBatch batch = new JarBatch(
                Food.MARMALADE,
                1240,
                JarSize.HALF_PINT,
                false,
                canner,
                recipe,
                OptionalDouble.of(6.35),
                OptionalDouble.of(3.1),
                true);
        return JarLoad.of(batch, jars);
    }

    static ToldCanner boilingWater() {
        return loaded(CannerKind.BOILING_WATER, Optional.empty());
    }

    static ToldCanner steam(double recipeMinutes) {
        return loaded(CannerKind.STEAM, Optional.of(new RecipeTime(recipeMinutes, OptionalDouble.empty())));
    }

    private static ToldCanner loaded(CannerKind kind, Optional<RecipeTime> recipe) {
        ToldCanner told = new ToldCanner();
        told.events.addAll(told.watch.load(told.t, "load", load(kind, 3, recipe)));
        return told;
    }

    double t() {
        return t;
    }

    /** The thermometer says {@code temperatureC} for so many seconds. */
    ToldCanner says(double temperatureC, int seconds) {
        for (int i = 0; i < seconds; i++) {
            t++;
            events.addAll(watch.accept(t, temperatureC + 0.05 * Math.sin(t)));
        }
        return this;
    }

    /** Nobody says anything for so many seconds. */
    ToldCanner passes(double seconds) {
        for (double left = seconds; left > 0; left--) {
            t += Math.min(1, left);
            events.addAll(watch.advanceTo(t));
        }
        return this;
    }

    /** Nobody is there for so many seconds, not even a tick. */
    ToldCanner leaps(double seconds) {
        t += seconds;
        events.addAll(watch.advanceTo(t));
        return this;
    }

    ToldCanner tap(CannerTap tap) {
        taps++;
        return tap("tap-" + taps, tap);
    }

    ToldCanner tap(String id, CannerTap tap) {
        events.addAll(watch.tap(t, id, tap));
        return this;
    }

    ToldCanner undo() {
        events.addAll(watch.undo(t, watch.view().undo().orElseThrow()));
        return this;
    }

    CannerView view() {
        return watch.view();
    }

    CannerPhase phase() {
        return view().phase();
    }

    double remainingS() {
        return view().remainingS().orElseThrow();
    }

    List<CannerPhase> phases() {
        return events.stream()
                .filter(CannerEvent.PhaseEntered.class::isInstance)
                .map(event -> ((CannerEvent.PhaseEntered) event).phase())
                .toList();
    }

    /** Such as "boil-lost raised". */
    List<String> calls() {
        return events.stream()
                .filter(CannerEvent.AlarmChanged.class::isInstance)
                .map(CannerEvent.AlarmChanged.class::cast)
                .filter(event -> event.change() != AlarmChange.CLEARED)
                .map(event -> event.alarm().id() + " " + event.change().wireName())
                .toList();
    }
}
