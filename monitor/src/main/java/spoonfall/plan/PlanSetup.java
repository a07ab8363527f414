package spoonfall.plan;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Where and with what a batch is to be cooked.
 *
 * @param pressurePa air pressure at the pan
 * @param waterBoilC where water boils there
 * @param riseC how far above that it is to set, 1 to 12
 * @param hob what heats the pan; empty if nobody knows
 * @param panL what the pan holds, in litres; empty if nobody said
 * @param ph how acid the preserve is; empty if nobody measured it
 * @param jar what it is filled into
 */
public record PlanSetup(
        double pressurePa,
        double waterBoilC,
        double riseC,
        Optional<HobPower> hob,
        OptionalDouble panL,
        OptionalDouble ph,
        Jar jar) {
    /** Refuses what no preserve is cooked to. */
    public PlanSetup {
        if (!(riseC >= 1 && riseC <= 12)) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "a preserve sets 1 to 12 °C above boiling water, usually 4.4 (8 °F), not %.1f",
                    riseC));
        }
        if (ph.isPresent() && !(ph.getAsDouble() >= 1 && ph.getAsDouble() <= 7)) {
            throw new IllegalArgumentException("pH must be 1 to 7, such as 3.2, not " + ph.getAsDouble());
        }
    }

    /** The temperature at which it sets. */
    public double gelPointC() {
        return waterBoilC + riseC;
    }
}
