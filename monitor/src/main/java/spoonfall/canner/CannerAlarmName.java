package spoonfall.canner;

import java.util.Locale;
import java.util.Set;
import spoonfall.alarm.Priority;

/** What the canner calls the cook for. */
public enum CannerAlarmName {
    /** The boil or the steam stopped while the time ran. */
    BOIL_LOST(Priority.HIGH, CannerPhase.BOIL_LOST, CannerPhase.STEAM_SPENT),
    /** The time is up: heat off; or somebody must say whether it boiled. */
    PROCESSED(Priority.MEDIUM, CannerPhase.HEAT_OFF, CannerPhase.UNSURE),
    /** The five minutes are over: lift the jars out. */
    LIFT_OUT(Priority.LOW, CannerPhase.LIFT_OUT);

    private final Priority priority;
    private final Set<CannerPhase> phases;

    CannerAlarmName(Priority priority, CannerPhase... phases) {
        this.priority = priority;
        this.phases = Set.of(phases);
    }

    /** Whether what it warns of is so. */
    boolean isSo(CannerBatch batch) {
        return phases.contains(batch.phase());
    }

    /** The name on the wire, such as {@code boil-lost}. */
    public String wireName() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** How soon the cook must act. */
    public Priority priority() {
        return priority;
    }
}
