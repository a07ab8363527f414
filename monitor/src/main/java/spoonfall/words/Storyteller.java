package spoonfall.words;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spoonfall.cook.CookAlarm;
import spoonfall.cook.CookSettings;
import spoonfall.cook.CookStatus;
import spoonfall.cook.Forecast;
import spoonfall.cook.Stage;

/**
 * Tells the story of one cook: feed it every status, and it says what to show. Remembers when stages began
 * and which minutes it last named, so that they stay calm.
 *
 * <p>Not safe for use by several threads.
 */
public final class Storyteller {
    private static final double PLATES_BEFORE_S = 15 * 60;
    private static final double JARS_BEFORE_S = 10 * 60;
    private static final int MOST_STEPS = 5;

    private final Fan fan;
    private final Sentences sentences;
    private final CalmTime window = new CalmTime();
    private final CalmTime gel = new CalmTime();
    private final Map<Stage, Double> beganT = new EnumMap<>(Stage.class);

    /** The story of a cook that is measured against {@code settings}. */
    public Storyteller(CookSettings settings) {
        this(settings, false);
    }

    private Storyteller(CookSettings settings, boolean byHand) {
        fan = new Fan(settings);
        sentences = new Sentences(settings, byHand);
    }

    /** The story of a cook whose thermometer somebody reads by hand. */
    public static Storyteller byHand(CookSettings settings) {
        return new Storyteller(settings, true);
    }

    /**
     * What to show now.
     *
     * @param status how the pan is; not older than the last one
     * @param alarms those that stand, most urgent first
     */
    public Outlook tell(CookStatus status, List<CookAlarm> alarms) {
        beganT.putIfAbsent(status.stage(), status.t());
        Optional<Expected> expected = status.forecast().map(forecast -> expect(status.t(), forecast));
        if (expected.isEmpty()) {
            window.forget();
            gel.forget();
        }
        return new Outlook(
                sentences.say(status, alarms, expected),
                comingUp(status, expected),
                status.forecast().map(forecast -> fan.of(status, forecast)).orElse(List.of()));
    }

    private Expected expect(double t, Forecast forecast) {
        double windowT = window.settle(t, forecast.windowS());
        double gelT = gel.settle(t, forecast.etaS());
        double moved = gelT - (t + forecast.etaS());
        return new Expected(windowT, gelT, t + forecast.lowS() + moved, t + forecast.highS() + moved);
    }

    private List<NextStep> comingUp(CookStatus status, Optional<Expected> expected) {
        List<NextStep> steps = new ArrayList<>();
        addDone(steps, Stage.ROLLING_BOIL, "Came to the boil");
        addDone(steps, Stage.TEST_WINDOW, "Set tests");
        addDone(steps, Stage.AT_GEL_POINT, "Reached the setting point");
        expected.ifPresent(times -> addAhead(steps, status, times));
        for (int i = 0; i < steps.size(); i++) {
            NextStep step = steps.get(i);
            if (step.state() == NextStep.State.LATER) {
                steps.set(i, new NextStep(step.t(), step.range(), step.text(), NextStep.State.NEXT));
                break;
            }
        }
        return List.copyOf(steps.subList(Math.max(0, steps.size() - MOST_STEPS), steps.size()));
    }

    private void addDone(List<NextStep> steps, Stage stage, String text) {
        Double began = beganT.get(stage);
        if (began != null) {
            steps.add(new NextStep(began, Optional.empty(), text, NextStep.State.DONE));
        }
    }

    private void addAhead(List<NextStep> steps, CookStatus status, Expected times) {
        addLater(steps, status.t(), times.windowT() - PLATES_BEFORE_S, "Plates in the freezer");
        addLater(steps, status.t(), times.gelT() - JARS_BEFORE_S, "Jars warm and ready");
        if (!beganT.containsKey(Stage.TEST_WINDOW)) {
            addLater(steps, status.t(), times.windowT(), "Set tests");
        }
        if (!beganT.containsKey(Stage.AT_GEL_POINT)) {
            double fromT = Math.max(status.t(), times.lowT());
            NextStep.Range range = new NextStep.Range(fromT, Math.max(fromT, times.highT()));
            steps.add(
                    new NextStep(Math.max(status.t(), times.gelT()), Optional.of(range), "Sets", NextStep.State.LATER));
        }
    }

    private static void addLater(List<NextStep> steps, double nowT, double t, String text) {
        if (t > nowT) {
            steps.add(new NextStep(t, Optional.empty(), text, NextStep.State.LATER));
        }
    }
}
