package spoonfall.lab.varied;

import java.util.OptionalDouble;

/** What holds for one step of a cook: heat, lid, and what the probe meets. Episodes change it; each step begins anew. */
final class Moment {
    /** Where the knob stands, 1 for full heat. */
    double knob = 1;

    /** The pan stands beside the hob. */
    boolean besideTheHob;

    /** The share of the steam that a lid sends back. */
    double lidReturns;

    /** What surrounds the sensor, in °C, when it is not in the syrup. */
    OptionalDouble aroundC = OptionalDouble.empty();

    /** How many times slower than in the syrup the sensor is. */
    double lagTimes = 1;

    /** How noisy the sensor is, 1 for a boiling pan. */
    double noisy = 1;

    /** How much hotter than the syrup the sensor's place is, in °C. */
    double hotterC;

    /** What the instrument adds to the reading, in °C. */
    double shiftC;

    /** The instrument repeats its last value. */
    boolean stuck;

    /** The instrument sends nothing. */
    boolean silent;
}
