package spoonfall.plan;

import java.util.Optional;
import java.util.OptionalDouble;
import spoonfall.physics.Air;
import spoonfall.physics.GelPoint;
import spoonfall.units.Quantities;

/**
 * What a batch is cooked with, as somebody typed it; whatever is empty was not said.
 *
 * @param pan what the pan holds, such as {@code 8L}
 * @param power what reaches the pan, such as {@code 1.8kW}
 * @param kettle how long a litre of cold water takes to boil on this hob, such as {@code 4min}
 * @param acidity the preserve's pH, such as {@code 3.2}
 * @param jar such as {@code half-pint} or {@code 250mL}
 */
public record TypedSetup(
        Optional<String> pan,
        Optional<String> power,
        Optional<String> kettle,
        Optional<String> acidity,
        Optional<String> jar) {
    private static final double SEA_LEVEL_BOIL_C = 100;
    private static final TypedSetup NOTHING =
            new TypedSetup(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

    /** These words, and those of {@code others} for whatever these leave open; a power and a kettle are one thing. */
    public TypedSetup or(TypedSetup others) {
        boolean saidPower = power.isPresent() || kettle.isPresent();
        return new TypedSetup(
                pan.or(others::pan),
                saidPower ? power : others.power,
                saidPower ? kettle : others.kettle,
                acidity.or(others::acidity),
                jar.or(others::jar));
    }

    /**
     * The setup that was meant.
     *
     * @param pressurePa air pressure at the pan
     * @param waterBoilC where water boils there
     * @param riseC how far above it the batch is to set
     * @param learnt what earlier cooks say of the hob, for want of anything else
     * @throws IllegalArgumentException in one line that says which is not understood, and the way out
     */
    public PlanSetup setup(double pressurePa, double waterBoilC, double riseC, Optional<HobPower> learnt) {
        if (power.isPresent() && kettle.isPresent()) {
            throw new IllegalArgumentException("give the power or the minutes of a litre, not both");
        }
        Optional<HobPower> hob = power.map(text -> HobPower.given(Quantities.powerKw(text)))
                .or(() -> kettle.map(text -> HobPower.ofLitre(Quantities.durationS(text) / 60, waterBoilC)))
                .or(() -> learnt);
        return new PlanSetup(
                pressurePa,
                waterBoilC,
                riseC,
                hob,
                pan.map(text -> OptionalDouble.of(Quantities.volumeL(text))).orElse(OptionalDouble.empty()),
                acidity.map(text -> OptionalDouble.of(ph(text))).orElse(OptionalDouble.empty()),
                jar.map(Jar::of).orElse(Jar.HALF_PINT));
    }

    /**
     * These words, when a setup can be meant by them wherever the kitchen is.
     *
     * @throws IllegalArgumentException as {@link #setup} does
     */
    public TypedSetup checked() {
        setup(Air.SEA_LEVEL_PA, SEA_LEVEL_BOIL_C, GelPoint.DEFAULT_RISE_C, Optional.empty());
        return this;
    }

    /**
     * How far above boiling water a batch is to set, such as {@code 8F}; returns °C.
     *
     * @throws IllegalArgumentException in one line if that is not understood, or no preserve sets there
     */
    public static double riseC(String text) {
        double riseC = Quantities.differenceC(text);
        return NOTHING.setup(Air.SEA_LEVEL_PA, SEA_LEVEL_BOIL_C, riseC, Optional.empty())
                .riseC();
    }

    private static double ph(String text) {
        if (!text.strip().matches("\\d{1,2}(\\.\\d{1,3})?")) {
            throw new IllegalArgumentException("pH \"" + text + "\" is not understood; write it like 3.2");
        }
        return Double.parseDouble(text.strip());
    }
}
