package spoonfall.plan;

import java.util.OptionalDouble;

/**
 * Where the pan is to be after some of its water has left.
 *
 * @param waterOffKg water driven off since the boil began
 * @param minutes since then; empty if the hob's power is not known
 * @param solids the fraction of the syrup that is solids
 * @param temperatureC where it boils
 */
public record PathPoint(double waterOffKg, OptionalDouble minutes, double solids, double temperatureC) {}
