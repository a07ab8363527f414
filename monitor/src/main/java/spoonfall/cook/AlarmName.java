package spoonfall.cook;

import java.util.Locale;
import spoonfall.alarm.Delays;
import spoonfall.alarm.Priority;

/**
 * The alarms of a cook. The delays are common practice, no source: long enough that one bad reading never
 * calls the cook, short enough that nothing is lost. Those that follow a stage need no on-delay: the stage has one.
 */
public enum AlarmName {
    /** The test window is open. */
    START_SET_TESTS(Priority.HIGH, new Delays(0, 300)),
    /** The gel point is reached. */
    GEL_POINT(Priority.HIGH, new Delays(0, 20)),
    /** The pan boils on past the gel point. */
    PAST_GEL_POINT(Priority.HIGH, new Delays(0, 20)),
    /** The plate of a set test has stood long enough. */
    PLATE_READY(Priority.HIGH, new Delays(0, 0)),
    /** The climb has stopped short of the gel point. */
    STALLED(Priority.MEDIUM, new Delays(0, 10)),
    /** The reading climbs faster than water could be leaving. */
    SCORCH_RISK(Priority.HIGH, new Delays(10, 45)),
    /** Nothing readable has come from the probe of late. */
    PROBE_SILENT(Priority.HIGH, new Delays(0, 0)),
    /** The reading fell as no pan can cool. */
    PROBE_OUT_OF_PAN(Priority.MEDIUM, new Delays(1, 4)),
    /** The reading stays the same where the pan must be moving. */
    PROBE_STUCK(Priority.MEDIUM, new Delays(0, 5)),
    /** The reading is one that no pan can have, or jumps about. */
    PROBE_IMPLAUSIBLE(Priority.MEDIUM, new Delays(3, 10)),
    /** Two probes in one pan do not agree. */
    PROBES_DISAGREE(Priority.MEDIUM, new Delays(30, 30)),
    /** What happens is not being written down. */
    NOT_RECORDING(Priority.MEDIUM, new Delays(3, 3));

    private final Priority priority;
    private final Delays delays;

    AlarmName(Priority priority, Delays delays) {
        this.priority = priority;
        this.delays = delays;
    }

    /** How soon the cook must act. */
    public Priority priority() {
        return priority;
    }

    /**
     * Whether it calls to the next step of the usual way, rather than tells of something that is wrong: ISA-18.2 keeps such
     * prompts apart from alarms.
     */
    public boolean isPrompt() {
        return this == START_SET_TESTS || this == PLATE_READY || this == GEL_POINT;
    }

    /** How long its condition must last. */
    public Delays delays() {
        return delays;
    }

    /** The name on the wire, such as {@code start-set-tests}. */
    public String wireName() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
