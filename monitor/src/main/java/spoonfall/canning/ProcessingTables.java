package spoonfall.canning;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The published processing times of filled jars. Everything that they do not cover is refused, with whom to ask.
 * Elevations are compared in feet, as the tables are written: what lies between two rows belongs to the longer one.
 */
public final class ProcessingTables {
    /** The highest elevation for which times are given, in feet; the last row has no end of its own. */
    public static final double HIGHEST_FT = 10_000;

    /** The longest that jars may be in an atmospheric steam canner, in minutes, elevation included. */
    public static final int MOST_STEAM_MINUTES = 45;

    /** The least acid that a preserve may be, as pH. */
    public static final double HIGHEST_PH = 4.6;

    /** The clean, hot, not sterilised jar needs that long to be sterile itself, in minutes. */
    private static final int UNSTERILISED_MINUTES = 10;

    private static final double M_PER_FT = 0.3048;
    private static final double ROUNDING_FT = 1e-6;

    /** A quarter of an inch is 6.35 mm; recipes in millimetres round it. */
    private static final double LEAST_HEADSPACE_MM = 6;

    private static final double MOST_HEADSPACE_MM = 6.5;

    private static final String ASK =
            "Ask the source of your recipe, your local extension service or your food-safety authority.";

    /**
     * A row of the table for jams, jellies and marmalade, hot pack, half-pints or pints.
     *
     * @param uptoFt the highest elevation in it, in feet
     * @param minutes time in boiling water, in minutes
     * @param where its elevations in words
     */
    public record Row(double uptoFt, int minutes, String where) {}

    /**
     * The rows: USDA Complete Guide to Home Canning (AIB 539), Guide 7; the same in Oklahoma State University
     * Extension, citing NCHFP. The 5 minutes are for jars that were sterilised.
     */
    public static final List<Row> ROWS = List.of(
            new Row(1000, 5, "up to 1,000 ft (305 m)"),
            new Row(6000, 10, "from 1,001 to 6,000 ft (305 to 1,829 m)"),
            new Row(HIGHEST_FT, 15, "above 6,000 ft (1,829 m)"));

    private ProcessingTables() {}

    /** How long jars like these are processed, or why no time is published. */
    public static ProcessingAnswer answer(JarBatch batch) {
        return refusal(batch).<ProcessingAnswer>map(answer -> answer).orElseGet(() -> time(batch));
    }

    /** How long empty jars are boiled to sterilise them: 10 min, and 1 min for every 1,000 ft (Michigan State Univ.). */
    public static int steriliseMinutes(double elevationM) {
        return 10 + (int) Math.floor((Math.max(0, feet(elevationM)) + ROUNDING_FT) / 1000);
    }

    private static ProcessingAnswer time(JarBatch batch) {
        Row row = row(batch.elevationM());
        int published = publishedMinutes(row, batch.sterilised());
        Optional<Integer> recipe = batch.recipe().map(time -> (int) Math.ceil(time.minutes()));
        if (batch.recipe().filter(time -> mustGrow(time, row)).isPresent()) {
            return none(String.format(
                            Locale.ROOT,
                            "The recipe's %d min is for a lower place, where water boils hotter, and no table says how much",
                            recipe.orElseThrow())
                    + " longer it must be at " + elevation(batch.elevationM()) + ".");
        }
        int minutes = Math.max(published, recipe.orElse(0));
        if (batch.canner() == CannerKind.STEAM && minutes > MOST_STEAM_MINUTES) {
            return none(String.format(
                    Locale.ROOT,
                    "The time is %d min, and an atmospheric steam canner holds water for %d min at most, elevation"
                            + " included; use a boiling-water canner.",
                    minutes,
                    MOST_STEAM_MINUTES));
        }
        return new ProcessingAnswer.Time(
                minutes,
                steriliseMinutes(batch.elevationM()),
                reasons(batch, row, published, recipe),
                ProcessingWords.cautions(batch),
                ProcessingWords.sources(batch));
    }

    /** A time for a place further down than this row's holds here only if it is no longer than what the table has. */
    private static boolean mustGrow(RecipeTime time, Row here) {
        if (time.forElevationM().isEmpty()) {
            return false;
        }
        Row its = row(Math.min(time.forElevationM().getAsDouble(), HIGHEST_FT * M_PER_FT));
        return its.uptoFt() < here.uptoFt() && time.minutes() > publishedMinutes(its, false);
    }

    private static int publishedMinutes(Row row, boolean sterilised) {
        return sterilised ? row.minutes() : Math.max(row.minutes(), UNSTERILISED_MINUTES);
    }

    private static List<String> reasons(JarBatch batch, Row row, int published, Optional<Integer> recipe) {
        List<String> reasons = new ArrayList<>();
        reasons.add(String.format(
                Locale.ROOT,
                "%s in %s, filled hot: %d min in %s %s; your kitchen is at %s.",
                batch.food().title(),
                batch.jar().words(),
                row.minutes(),
                batch.canner().medium(),
                row.where(),
                elevation(batch.elevationM())));
        if (published > row.minutes()) {
            reasons.add("The 5 min are for jars that were sterilised; clean, hot jars that were not need 10 min.");
        } else if (!batch.sterilised()) {
            reasons.add(String.format(
                    Locale.ROOT, "%d min sterilise the jars too, so they need only be clean and hot.", published));
        }
        recipe.ifPresent(own -> {
            if (own > published) {
                reasons.add(String.format(
                        Locale.ROOT,
                        "The recipe's own tested time of %d min is longer than the table's %d min, so it counts.",
                        own,
                        published));
                if (batch.recipe()
                        .filter(time -> time.forElevationM().isEmpty())
                        .isPresent()) {
                    reasons.add(
                            "It is taken to be for this elevation. If the recipe gives it for a lower place, it must"
                                    + " be longer here: ask the recipe's source.");
                }
            } else {
                reasons.add(String.format(
                        Locale.ROOT,
                        "The recipe's own tested time of %d min is no longer, so the table's %d min count.",
                        own,
                        published));
            }
        });
        return reasons;
    }

    private static Optional<ProcessingAnswer.None> refusal(JarBatch batch) {
        if (batch.food() == Food.OTHER) {
            return Optional.of(none("The table here is for jams, jellies and marmalade, and for no other food."));
        }
        if (batch.acidity().isPresent() && batch.acidity().getAsDouble() > HIGHEST_PH) {
            return Optional.of(none(String.format(
                    Locale.ROOT,
                    "At pH %.1f it is not acid enough: neither boiling water nor steam makes it safe above pH 4.6.",
                    batch.acidity().getAsDouble())));
        }
        if (batch.jar() == JarSize.LARGER) {
            return Optional.of(none(
                    "No time is published for jams, jellies or marmalade in jars larger than a pint" + " (473 mL)."));
        }
        if (batch.headspaceMm().isEmpty()) {
            return Optional.of(none(
                    "Nobody said how much headspace the jars have; the published times are for 1/4 inch" + " (6 mm)."));
        }
        double headspaceMm = batch.headspaceMm().getAsDouble();
        if (headspaceMm < LEAST_HEADSPACE_MM || headspaceMm > MOST_HEADSPACE_MM) {
            return Optional.of(none(String.format(
                    Locale.ROOT,
                    "The published times are for a headspace of 1/4 inch (6 mm), not %.1f mm.",
                    headspaceMm)));
        }
        if (feet(batch.elevationM()) > HIGHEST_FT + ROUNDING_FT) {
            return Optional.of(none("No time is given above 10,000 ft (3,048 m), and this kitchen is at "
                    + elevation(batch.elevationM()) + "."));
        }
        return batch.canner() == CannerKind.STEAM ? steamRefusal(batch) : Optional.empty();
    }

    private static Optional<ProcessingAnswer.None> steamRefusal(JarBatch batch) {
        if (batch.acidity().isEmpty()) {
            return Optional.of(none("An atmospheric steam canner is only for preserves that are known to have pH 4.6 or"
                    + " below, and nobody said how acid this one is."));
        }
        if (!batch.testedForBoilingWater()) {
            return Optional.of(none("An atmospheric steam canner is only for recipes that were tested for a"
                    + " boiling-water canner, and nobody said that this one was."));
        }
        return Optional.empty();
    }

    private static ProcessingAnswer.None none(String why) {
        return new ProcessingAnswer.None(why, ASK);
    }

    private static Row row(double elevationM) {
        double feet = feet(elevationM);
        return ROWS.stream()
                .filter(row -> feet <= row.uptoFt() + ROUNDING_FT)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no row for " + elevationM + " m"));
    }

    private static double feet(double elevationM) {
        return elevationM / M_PER_FT;
    }

    private static String elevation(double elevationM) {
        return String.format(Locale.ROOT, "%,.0f m (%,.0f ft)", elevationM, feet(elevationM));
    }
}
