package spoonfall.words;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import spoonfall.cook.AlarmName;
import spoonfall.cook.CookAlarm;
import spoonfall.cook.CookSettings;
import spoonfall.cook.CookStatus;
import spoonfall.cook.Stage;
import spoonfall.cook.calm.Lasting;
import spoonfall.probe.Quality;

/** The sentence: what the pan is doing, then what to do and when. */
final class Sentences {
    private static final String LESS_SURE =
            "Less sure than with a probe that speaks by itself. Stir the base now and then.";
    private static final String STIR = "Stir the base now and then.";
    private static final String MORE_READINGS = "A reading every minute or two will tell. Stir the base now and then.";

    /** So far below the boil of water, in °C, what comes off the heat has been let rest and is for the jars. */
    private static final double RESTED_C = 10;

    private final CookSettings settings;
    private final boolean byHand;
    private final String prepare;

    /** Of a pan for which something is to be prepared now, or nothing. */
    Sentences(CookSettings settings, boolean byHand, Optional<String> toPrepare) {
        this.byHand = byHand;
        this.settings = settings;
        prepare = toPrepare.map(name -> name + " now. ").orElse("");
    }

    Saying say(CookStatus status, List<CookAlarm> alarms, Optional<Expected> expected, Way way) {
        Optional<CookAlarm> trouble = alarms.stream()
                .filter(alarm -> alarm.state().active() && tellsMoreThanTheStage(alarm.name()))
                .findFirst();
        boolean speaksNonsense = trouble.isPresent() && trouble.get().name() == AlarmName.PROBE_IMPLAUSIBLE;
        // nothing is judged before the first second has ended
        boolean justBegun = status.stage() == Stage.WAITING && status.quality() == Quality.GOOD;
        if (!status.fresh() && !speaksNonsense && !justBegun) {
            return silent(status);
        }
        if (trouble.isPresent()) {
            return trouble(trouble.get(), status);
        }
        return switch (status.wentIn()) {
            case SUGAR ->
                new Saying("Sugar is going in, it seems.", "Stir until it has melted.", "Then bring it to the boil.");
            case SOMETHING_COLD -> Saying.of("Something cold went in.", "It will come back to the boil.");
            case NOTHING -> byStage(status, expected, way);
        };
    }

    private Saying byStage(CookStatus status, Optional<Expected> expected, Way way) {
        return switch (status.stage()) {
            case WAITING ->
                byHand
                        ? new Saying("The first reading is in.", "", MORE_READINGS)
                        : Saying.of("Listening to the probe.", "");
            case WARMING ->
                new Saying(
                        "Warming up.",
                        "",
                        status.wasClose()
                                ? "Hot sugar sticks and burns."
                                : "Nothing to do yet. If its sugar is in, stir until it has melted.");
            case SIMMERING -> new Saying("Simmering.", "", "When the sugar goes in, stir until it has melted.");
            case COMING_TO_THE_BOIL -> new Saying("Coming to the boil.", "", "Stir the base now and then.");
            case ROLLING_BOIL -> boiling(expected, way);
            case TEST_WINDOW ->
                new Saying(
                        "Close to setting.",
                        "Test the set.",
                        toGo(status) + "Take the pan off the heat for each test.");
            case AT_GEL_POINT ->
                new Saying(
                        "At the setting point.",
                        "Take it off the heat and test the set.",
                        "Past here it turns bitter.");
            case PAST_GEL_POINT -> Saying.of("Past the setting point.", "Off the heat now, or it turns bitter.");
            case OFF_THE_HEAT -> off(status);
        };
    }

    private Saying off(CookStatus status) {
        if (!status.wasClose()) {
            return new Saying(
                    "Off the heat.", "It is not close to setting yet: put it back?", "Hot sugar sticks and burns.");
        }
        double restedC = settings.waterBoil().temperatureC() - RESTED_C;
        return status.temperatureC().orElse(restedC) < restedC
                ? new Saying("Off the heat.", "", "Hot sugar sticks and burns: fill the jars with care.")
                : new Saying("Off the heat.", "Test the set.", "Then let it rest. Hot sugar sticks and burns.");
    }

    static boolean tellsMoreThanTheStage(AlarmName name) {
        return switch (name) {
            case STALLED, SCORCH_RISK, PROBE_OUT_OF_PAN, PROBE_STUCK, PROBE_IMPLAUSIBLE -> true;
            case START_SET_TESTS,
                    PLATE_READY,
                    GEL_POINT,
                    PAST_GEL_POINT,
                    PROBE_SILENT,
                    PROBES_DISAGREE,
                    NOT_RECORDING -> false;
        };
    }

    private static Saying trouble(CookAlarm alarm, CookStatus status) {
        double lastedS = status.t() - alarm.raisedT();
        String note = lastedS < 60 ? "" : "For " + Lasting.minutes(lastedS) + " now.";
        return new Saying(alarm.title(), alarm.act(), note);
    }

    private Saying silent(CookStatus status) {
        return status.seen()
                .map(seen -> new Saying(
                        mark(
                                byHand
                                        ? "No reading was typed since {clock:%.0f}."
                                        : "No word from the probe since {clock:%.0f}.",
                                seen.t()),
                        mark("Last seen {temp:%.1f}.", seen.temperatureC()),
                        byHand
                                ? "Read the thermometer, type what it shows, and watch the pan yourself."
                                : "Check its cable, and watch the pan yourself."))
                .orElse(Saying.of("Waiting for the probe.", ""));
    }

    private Saying boiling(Optional<Expected> expected, Way way) {
        if (way == Way.FALLS) {
            return new Saying("The reading falls.", "Is the pan off the heat?", STIR);
        }
        if (expected.isEmpty()) {
            String note = byHand ? MORE_READINGS : STIR;
            return new Saying("Boiling.", "Too early to say when it will set.", prepare + note);
        }
        String later = prepare + (byHand ? LESS_SURE : STIR);
        String soon = prepare.isEmpty() ? "Have the cold plates and a spoon to hand." : prepare.strip();
        String note = expected.get().windowS() > 180 ? later : soon;
        return new Saying(
                way == Way.SLOWLY ? "Climbing slowly." : "Climbing steadily.",
                "Set tests " + expected.get().when() + ".",
                note);
    }

    private String toGo(CookStatus status) {
        double toGoC = settings.gelPointC() - status.temperatureC().orElse(settings.gelPointC());
        return toGoC < 0.05 ? "" : mark("{diff:%.1f} to go. ", toGoC);
    }

    private static String mark(String pattern, double value) {
        return String.format(Locale.ROOT, pattern, value);
    }
}
