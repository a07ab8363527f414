package spoonfall.kitchen.plan;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import spoonfall.log.planned.PlannedBatch;

/**
 * What was planned for a pan, and what came of it.
 *
 * @param batch the batch of this cook, or of the next if there is one for it; empty if nothing was planned
 * @param next whether it is for the cook that has yet to begin
 * @param countable whether this cook was planned and is off the heat, so that its jars can be counted
 * @param filled how many jars this cook filled, if somebody said so
 * @param yield that beside what was planned, in words
 * @param waterKgPerMin the water that left in a minute of this boil; empty if the climb does not show it
 */
public record PlanState(
        Optional<PlannedBatch> batch,
        boolean next,
        boolean countable,
        OptionalInt filled,
        Optional<String> yield,
        OptionalDouble waterKgPerMin) {}
