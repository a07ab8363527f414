package spoonfall.kitchen;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * Everything a page needs to begin with.
 *
 * @param plan what the kitchen watches
 * @param cookNumber counts cooks from 1
 * @param startedAt the wall clock at the cook's first reading; empty before it
 * @param probe how the probe is
 * @param pan how the pan is
 * @param changes the latest changes of this cook, oldest first
 * @param climb the cook so far, thinned
 */
public record KitchenState(
        KitchenPlan plan,
        int cookNumber,
        Optional<Instant> startedAt,
        ProbeState probe,
        PanView pan,
        List<KitchenChange> changes,
        List<Climb.Point> climb) {}
