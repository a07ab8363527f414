package spoonfall.canner;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;

/**
 * How the jars stand at one instant, for whoever shows it.
 *
 * @param t that instant, in seconds on the watch's scale
 * @param phase how far the jars in the canner are
 * @param load the jars in the canner; empty when there are none
 * @param remainingS how long the time that runs still takes, in seconds; empty when none runs
 * @param dueT when it is up; empty when none runs
 * @param restarts how often the whole processing time started again
 * @param probe what the canner's thermometer says
 * @param say what is said
 * @param offers what a tap can say now
 * @param shelf the loads that came out, the oldest first
 * @param undo the mark of the tap that can be taken back; empty if none can
 * @param alarms those that can be seen, the most urgent first
 */
public record CannerView(
        double t,
        CannerPhase phase,
        Optional<JarLoad> load,
        OptionalDouble remainingS,
        OptionalDouble dueT,
        int restarts,
        CannerProbe probe,
        Say say,
        List<CannerOffer> offers,
        List<OnShelf> shelf,
        OptionalLong undo,
        List<CannerAlarm> alarms) {
    /**
     * A load that came out.
     *
     * @param jars the load
     * @param phase how far it is
     * @param text what is said of it
     */
    public record OnShelf(ShelfLoad jars, ShelfLoad.Phase phase, String text) {}

    /** Copies the lists. */
    public CannerView {
        offers = List.copyOf(offers);
        shelf = List.copyOf(shelf);
        alarms = List.copyOf(alarms);
    }
}
