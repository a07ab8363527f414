package spoonfall.kitchen.told;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import spoonfall.kitchen.plan.KitchenPlan;
import spoonfall.kitchen.thermometer.ProbeState;
import spoonfall.log.CookNote;

/**
 * Everything a page needs to begin with.
 *
 * @param plan what the kitchen watches
 * @param cookNumber counts cooks from 1
 * @param startedAt the wall clock at the cook's first reading; empty before it
 * @param probes how the probes are; the cook follows the first
 * @param pan how the pan is
 * @param changes the latest changes of this cook, oldest first
 * @param climb the cook so far, thinned
 * @param notes what somebody wrote of this cook, in order
 * @param afternoon how the afternoon stands
 */
public record KitchenState(
        KitchenPlan plan,
        int cookNumber,
        Optional<Instant> startedAt,
        List<ProbeState> probes,
        PanView pan,
        List<KitchenChange> changes,
        List<Climb.Point> climb,
        List<CookNote> notes,
        AfternoonView afternoon) {

    /** How the probe is that the cook follows. */
    public ProbeState probe() {
        return probes.get(0);
    }
}
