package spoonfall.kitchen.desk;

import java.util.Optional;
import java.util.function.Function;
import spoonfall.kitchen.pan.Pan;
import spoonfall.kitchen.pan.PanKeeper;
import spoonfall.kitchen.plan.KitchenPlan;
import spoonfall.kitchen.thermometer.ThermometerCheck;
import spoonfall.kitchen.thermometer.Thermometers;
import spoonfall.probe.hand.HandProbe;

/** Where somebody says or asks something of a pan: a desk for each subject. */
public final class Desks {
    private final AlarmDesk alarms;
    private final AfternoonDesk afternoon;
    private final PlanDesk plans;
    private final CheckDesk checks;
    private final HandDesk hands;
    private final TestDesk tests;
    private final TargetDesk targets;
    private final NoteDesk notes;

    /**
     * The desks of a pan.
     *
     * @param plan what is watched
     * @param keeper has its thread answer
     * @param pan the pan
     * @param thermometers its thermometers
     * @param check the check of one of them
     * @param byHand finds the thermometer that somebody reads, by its name
     */
    public Desks(
            KitchenPlan plan,
            PanKeeper keeper,
            Pan pan,
            Thermometers thermometers,
            ThermometerCheck check,
            Function<String, Optional<HandProbe>> byHand) {
        alarms = new AlarmDesk(keeper, pan.alarms());
        afternoon = new AfternoonDesk(keeper, pan);
        plans = new PlanDesk(plan.pan(), keeper, pan);
        checks = new CheckDesk(keeper, thermometers, check, pan);
        hands = new HandDesk(keeper, thermometers, pan, byHand);
        tests = new TestDesk(keeper, pan);
        targets = new TargetDesk(keeper, thermometers, pan);
        notes = new NoteDesk(keeper, pan);
    }

    /** Where its alarms are answered. */
    public AlarmDesk alarms() {
        return alarms;
    }

    /** Where somebody says how far the afternoon is. */
    public AfternoonDesk afternoon() {
        return afternoon;
    }

    /** Where somebody says what batch is in the pan. */
    public PlanDesk plans() {
        return plans;
    }

    /** Where its thermometers are checked, and where somebody says how high it lies. */
    public CheckDesk checks() {
        return checks;
    }

    /** Where readings are typed. */
    public HandDesk hands() {
        return hands;
    }

    /** Where somebody says that they test the set, and what they saw. */
    public TestDesk tests() {
        return tests;
    }

    /** Where somebody takes a target for the pan. */
    public TargetDesk targets() {
        return targets;
    }

    /** Where notes are written. */
    public NoteDesk notes() {
        return notes;
    }
}
