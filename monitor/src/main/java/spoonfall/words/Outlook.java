package spoonfall.words;

import java.util.List;

/**
 * Everything that is said about a pan at one instant.
 *
 * @param saying the sentence
 * @param comingUp what comes next, at most five lines
 * @param fan the forecast climb
 */
public record Outlook(Saying saying, List<NextStep> comingUp, List<FanPoint> fan) {
    /**
     * Where the climb is expected to be.
     *
     * @param t seconds of the cook
     * @param lowC rise above the water boil in °C that 95 % of such cooks exceed
     * @param midC middle estimate
     * @param highC rise that 5 % exceed
     */
    public record FanPoint(double t, double lowC, double midC, double highC) {}

    /** The same with what comes up. */
    public Outlook with(List<NextStep> steps) {
        return new Outlook(saying, steps, fan);
    }
}
