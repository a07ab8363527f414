package spoonfall.lab;

/** Sugar, water and heat: the true state of a simulated pan, stepped through time. */
final class Pan {
    private static final double ROOM_C = 21;
    private static final double LOSS_KW_PER_K = 0.0022;

    private final double pressurePa;
    private final double waterBoilC;
    private final double sugarKg;
    private double waterKg;
    private double temperatureC;
    private boolean boiling;

    Pan(PanSettings settings) {
        pressurePa = PanPhysics.pressurePa(settings.elevationM());
        waterBoilC = PanPhysics.boilingPointC(pressurePa, 0);
        sugarKg = settings.massKg() * settings.solids();
        waterKg = settings.massKg() - sugarKg;
        temperatureC = settings.startC();
    }

    double temperatureC() {
        return temperatureC;
    }

    boolean boiling() {
        return boiling;
    }

    double solids() {
        return sugarKg / (sugarKg + waterKg);
    }

    double riseC() {
        return temperatureC - waterBoilC;
    }

    /** Lets {@code seconds} pass with {@code netPowerKw} of heat, 0 for a pan that stands off the heat. */
    void step(double seconds, double netPowerKw) {
        double massKg = sugarKg + waterKg;
        double capacity = massKg * PanPhysics.heatCapacity(solids());
        double boilC = PanPhysics.boilingPointC(pressurePa, solids());
        // A boiling pan's losses are taken off its net power already; a cooler one loses less than that.
        double lossKw =
                netPowerKw > 0 ? LOSS_KW_PER_K * (temperatureC - boilC) : LOSS_KW_PER_K * (temperatureC - ROOM_C);
        double heatKj = (netPowerKw - lossKw) * seconds;
        double reachedC = temperatureC + heatKj / capacity;
        boiling = netPowerKw > 0 && reachedC >= boilC;
        if (!boiling) {
            temperatureC = reachedC;
            return;
        }
        double steamKg = (reachedC - boilC) * capacity / PanPhysics.VAPORISATION_KJ_PER_KG;
        waterKg = Math.max(0.02 * sugarKg, waterKg - steamKg);
        temperatureC = boilC; // the next step warms it by what the thicker syrup boils higher
    }

    /** Stirs in cold water. */
    void addWater(double kg, double waterC) {
        double capacity = (sugarKg + waterKg) * PanPhysics.heatCapacity(solids());
        temperatureC = (capacity * temperatureC + 4.187 * kg * waterC) / (capacity + 4.187 * kg);
        waterKg += kg;
    }
}
