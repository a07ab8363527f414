package spoonfall.cli.plan;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import spoonfall.food.Ingredient;
import spoonfall.plan.Advice;
import spoonfall.plan.BatchPlan;
import spoonfall.plan.HobPower;
import spoonfall.plan.PathPoint;
import spoonfall.plan.Range;
import spoonfall.plan.Scaling;

/** A plan for the terminal. */
final class PlanText {
    private static final double POUND_KG = 0.45359237;
    private static final int PATH_ROWS = 6;

    private final PrintWriter out;

    PlanText(PrintWriter out) {
        this.out = out;
    }

    /** Prints a plan. */
    void print(BatchPlan plan) {
        ingredients(plan.ingredients());
        out.println();
        line(
                "goes in",
                "%s: %.2f kg of water, %.2f kg that dissolves (%.0f %%), %.2f kg of neither",
                kg(plan.balance().totalKg()),
                plan.balance().waterKg(),
                plan.balance().solubleKg(),
                100 * plan.balance().solids(),
                plan.balance().restKg());
        line(
                "sets at",
                "%s, %.1f °C above boiling water, with %.0f %% solids",
                degrees(plan.setup().gelPointC()),
                plan.setup().riseC(),
                100 * plan.finishSolids());
        line("comes out", "%s; %s kg", kg(plan.finishedKg().middle()), span(plan.finishedKg(), 2));
        line(
                "fills",
                "%.1f %s (%s); have %.0f ready",
                plan.jars().middle(),
                plan.setup().jar().many(),
                span(plan.jars(), 1),
                Math.ceil(plan.jars().high()));
        line("drives off", "%.2f kg of water (%s)", plan.waterOffKg().middle(), span(plan.waterOffKg(), 2));
        plan.boilMinutes()
                .ifPresentOrElse(
                        minutes -> minutes(plan, minutes),
                        () -> line(
                                "boils",
                                "for as long as the hob takes: give --kettle, the minutes of a litre, or --power"));
        line("pan", "%.1f L or more: four times the %.1f L that go in", plan.panL(), plan.contentsL());
        out.println();
        out.println("  Nine batches in ten lie within the figures in brackets.");
        path(plan.path());
        advice("Take care", plan.advice().stream().filter(Advice::warns).toList());
        advice(
                "Keep in mind",
                plan.advice().stream().filter(one -> !one.warns()).toList());
    }

    private void minutes(BatchPlan plan, Range minutes) {
        double heat = plan.heatMinutes().orElse(0.0);
        HobPower hob = plan.setup().hob().orElseThrow();
        String from = switch (hob.from()) {
            case GIVEN -> "as you gave it";
            case LITRE -> "by your litre of water";
            case LEARNT -> "by your earlier cooks";
        };
        line(
                "boils",
                "for about %.0f minutes (%s) with %.1f kW in the pan, %s; cold, it takes %.0f minutes to the boil",
                minutes.middle(),
                span(minutes, 0),
                hob.kW(),
                from,
                heat);
    }

    private void ingredients(List<Ingredient> ingredients) {
        for (Ingredient one : ingredients) {
            out.println(String.format(
                    Locale.ROOT,
                    "  %-16s %-22s %6.0f g",
                    one.amount().words(),
                    one.food().name(),
                    one.grams()));
        }
    }

    private void path(List<PathPoint> path) {
        if (path.isEmpty()) {
            return;
        }
        out.println();
        out.println("The way there:");
        int step = Math.max(1, (path.size() - 1) / PATH_ROWS);
        for (int i = 0; i < path.size(); i += step) {
            PathPoint point = path.get(i);
            String when = point.minutes().isPresent()
                    ? String.format(Locale.ROOT, "%3.0f min", point.minutes().getAsDouble())
                    : String.format(Locale.ROOT, "%.2f kg off", point.waterOffKg());
            out.println(String.format(
                    Locale.ROOT,
                    "  %s  %2.0f %% solids  %s",
                    when,
                    100 * point.solids(),
                    degrees(point.temperatureC())));
        }
    }

    private void advice(String title, List<Advice> advice) {
        if (advice.isEmpty()) {
            return;
        }
        out.println();
        out.println(title + ":");
        advice.forEach(one -> out.println("  " + one.text() + " [" + one.source() + "]"));
    }

    /** Prints what a batch of another size does, and what does not scale. */
    void print(Scaling scaling) {
        print(scaling.scaled());
        out.println();
        out.println(String.format(
                Locale.ROOT, "%s times the batch, and what does not scale with it:", number(scaling.factor())));
        scaling.notes().forEach(note -> out.println("  " + note));
    }

    private void line(String what, String form, Object... values) {
        out.println(String.format(Locale.ROOT, "  %-11s ", what) + String.format(Locale.ROOT, form, values));
    }

    private static String number(double value) {
        return value == Math.rint(value) ? String.format(Locale.ROOT, "%.0f", value) : Double.toString(value);
    }

    private static String kg(double kg) {
        return String.format(Locale.ROOT, "%.2f kg (%.1f lb)", kg, kg / POUND_KG);
    }

    private static String degrees(double c) {
        return String.format(Locale.ROOT, "%.1f °C (%.1f °F)", c, c * 1.8 + 32);
    }

    private static String span(Range range, int decimals) {
        String form = "%." + decimals + "f";
        return String.format(Locale.ROOT, form + " to " + form, range.low(), range.high());
    }
}
