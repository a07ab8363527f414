package spoonfall.lab.varied;

import spoonfall.lab.PanPhysics;

/**
 * Sugar, water and heat of one pan: conserves mass and energy. What heat is left over at the boil drives water
 * off, 26.6 g a minute for each kW; below the boil water leaves by the surface alone. Acid inverts the sugar by
 * Vukov's rate (from memory; checked at 104 °C in the project's science notes).
 */
final class SyrupPan {
    /** Temperature of the kitchen's air, in °C. */
    static final double ROOM_C = 21;

    private static final double SUGAR_CAPACITY = 1.25;
    private static final double WATER_CAPACITY = 4.187;
    /** A mole of water, 18 g, is bound by every mole of sucrose, 342 g, that is inverted. */
    private static final double BOUND_WATER = 18.015 / 342.3;
    /** Vapour pressure grows by that share with each kelvin near 100 °C. */
    private static final double VAPOUR_PER_K = 0.036;

    private final SyrupCurve curve;
    private final double lossKwPerK;
    private final double surfaceKw;
    private final double acidity;
    private double sugarKg;
    private double waterKg;
    private double undissolvedKg;
    private double dissolvesInS = 1;
    private double inverted;
    private double temperatureC;
    private double steamKg;
    private boolean boiling;

    /**
     * A pan at rest.
     *
     * @param lossKwPerK what its sides lose for each kelvin above the room, in kW
     * @param surfaceKw what its still surface loses by evaporation just below the boil, in kW
     */
    SyrupPan(SyrupCurve curve, double sugarKg, double waterKg, Draw.Syrup syrup, double lossKwPerK, double surfaceKw) {
        this.curve = curve;
        this.sugarKg = sugarKg;
        this.waterKg = waterKg;
        this.lossKwPerK = lossKwPerK;
        this.surfaceKw = surfaceKw;
        acidity = syrup.acidity();
        inverted = syrup.inverted();
        temperatureC = syrup.startC();
    }

    double temperatureC() {
        return temperatureC;
    }

    boolean boiling() {
        return boiling;
    }

    /** All that is in the pan, in kg. */
    double massKg() {
        return sugarKg + waterKg + undissolvedKg;
    }

    /** All water that ever left, in kg. */
    double steamKg() {
        return steamKg;
    }

    double inverted() {
        return inverted;
    }

    /** Dissolved solids as a fraction of the syrup. */
    double solids() {
        return sugarKg / (sugarKg + waterKg);
    }

    double boilC() {
        return curve.boilC(solids(), inverted);
    }

    /** Heat it takes to warm it by one kelvin, in kJ. */
    double capacityKjPerK() {
        return (sugarKg + waterKg) * PanPhysics.heatCapacity(solids()) + undissolvedKg * SUGAR_CAPACITY;
    }

    /**
     * Lets time pass.
     *
     * @param kw heat into the pan before losses
     * @param lidReturns the share of the steam that a lid sends back as water, 0 without one
     * @return heat that its sides lost, in kJ
     */
    double step(double seconds, double kw, double lidReturns) {
        dissolve(seconds);
        invert(seconds);
        double capacity = capacityKjPerK();
        double boilC = boilC();
        double lostKj = lossKwPerK * (temperatureC - ROOM_C) * seconds;
        double reachedC = temperatureC + (kw * seconds - lostKj) / capacity;
        boiling = reachedC >= boilC;
        if (boiling) {
            double spareKj = (reachedC - boilC) * capacity;
            leave((1 - lidReturns) * spareKj / PanPhysics.VAPORISATION_KJ_PER_KG);
            temperatureC = boilC;
            return lostKj + lidReturns * spareKj;
        }
        double surfaceKj =
                surfaceKw * Math.exp(VAPOUR_PER_K * (Math.max(ROOM_C, reachedC) - boilC)) * seconds * (1 - lidReturns);
        leave(surfaceKj / PanPhysics.VAPORISATION_KJ_PER_KG);
        temperatureC = reachedC - surfaceKj / capacity;
        return lostKj;
    }

    /** Stirs in something cold: water, or fruit of which {@code sugar} kg are sugar. */
    void add(double water, double sugar, double ofC) {
        double capacity = capacityKjPerK();
        double added = water * WATER_CAPACITY + sugar * SUGAR_CAPACITY;
        temperatureC = (capacity * temperatureC + added * ofC) / (capacity + added);
        waterKg += water;
        sugarKg += sugar;
    }

    /** Pours in dry sugar, which dissolves with a time constant of {@code inS} seconds. */
    void addSugar(double kg, double inS) {
        double capacity = capacityKjPerK();
        double added = kg * SUGAR_CAPACITY;
        temperatureC = (capacity * temperatureC + added * ROOM_C) / (capacity + added);
        undissolvedKg += kg;
        dissolvesInS = inS;
    }

    private void leave(double kg) {
        double leaves = Math.min(kg, Math.max(0, waterKg - 0.12 * sugarKg));
        waterKg -= leaves;
        steamKg += leaves;
    }

    private void dissolve(double seconds) {
        double kg = undissolvedKg * Math.min(1, seconds / dissolvesInS);
        if (kg > 0) {
            inverted = inverted * sugarKg / (sugarKg + kg);
            undissolvedKg -= kg;
            sugarKg += kg;
        }
    }

    private void invert(double seconds) {
        double solids = solids();
        double waterPerLitre = Math.max(0.05, (1 - solids) * (0.96 + 0.48 * solids));
        double perMinute = Math.pow(10, 16.91 + Math.log10(waterPerLitre) - 5670 / (temperatureC + 273.15) - acidity);
        double change = (1 - inverted) * Math.min(1, perMinute * seconds / 60);
        inverted += change;
        double bound = Math.min(waterKg, BOUND_WATER * change * sugarKg);
        waterKg -= bound;
        sugarKg += bound;
    }
}
