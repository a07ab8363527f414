package spoonfall.lab.varied;

import java.util.SplittableRandom;
import spoonfall.lab.PanPhysics;

/**
 * All that chance decides about one cook before it begins; docs/evaluation.md lists the ranges.
 *
 * @param massKg all that is in the pan once the sugar is in
 * @param solids fraction of it that is sugar
 * @param netKw heat left for boiling at first
 * @param lossKwPerK loss of the sides for each kelvin above the room
 * @param surfaceKw loss of a still surface just below the boil
 * @param riseC how far above boiling water it sets
 * @param air the kitchen's air
 * @param syrup what it is made of
 * @param hob the burner
 * @param sensor the thermometer
 */
record Draw(
        double massKg,
        double solids,
        double netKw,
        double lossKwPerK,
        double surfaceKw,
        double riseC,
        Air air,
        Syrup syrup,
        Hob.Settings hob,
        Sensor.Settings sensor) {

    private static final double SHORTEST_MIN = 9;
    private static final double LONGEST_MIN = 80;
    private static final double SET_SOLIDS = 0.65;

    /**
     * Air of the kitchen.
     *
     * @param elevationM height above sea level
     * @param pressurePa its true pressure, weather and all
     * @param statedPressure whether the cook knows that pressure; else only the elevation is known
     */
    record Air(double elevationM, double pressurePa, boolean statedPressure) {
        /** Where water truly boils, in °C. */
        double waterBoilC() {
            return PanPhysics.boilingPointC(pressurePa, 0);
        }

        /** Where water boils by what the cook knows, in °C. */
        double statedWaterBoilC() {
            double stated = statedPressure ? pressurePa : PanPhysics.pressurePa(elevationM);
            return PanPhysics.boilingPointC(stated, 0);
        }
    }

    /**
     * The syrup.
     *
     * @param browneShare how far its curve follows Browne's table
     * @param scale what its rise is multiplied by
     * @param acidity its pH
     * @param inverted share of its sugar that is inverted at first
     * @param startC its temperature at first
     */
    record Syrup(double browneShare, double scale, double acidity, double inverted, double startC) {}

    static Draw of(SplittableRandom random) {
        SplittableRandom pans = random.split();
        SplittableRandom kitchens = random.split();
        SplittableRandom syrups = random.split();
        SplittableRandom hobs = random.split();
        SplittableRandom sensors = random.split();
        double mass;
        double solids;
        double kw;
        double minutes;
        do {
            mass = pans.nextDouble(1, 5);
            solids = pans.nextDouble(0.30, 0.52);
            kw = pans.nextDouble(0.8, 2.5);
            minutes = climbMinutes(mass, solids, kw);
        } while (minutes < SHORTEST_MIN || minutes > LONGEST_MIN);
        double size = Math.pow(mass / 2, 2.0 / 3);
        return new Draw(
                mass,
                solids,
                kw,
                size * pans.nextDouble(0.0015, 0.003),
                size * pans.nextDouble(0.06, 0.2),
                rise(pans),
                air(kitchens),
                syrup(syrups),
                Hob.Settings.draw(hobs),
                Sensor.Settings.draw(sensors));
    }

    /** Heat into the pan before losses, at full heat, in kW. */
    double grossKw() {
        return netKw + lossKwPerK * (air.waterBoilC() + 2 - SyrupPan.ROOM_C);
    }

    /** How many seconds the climb takes if nothing happens, roughly. */
    double climbS() {
        return 60 * climbMinutes(massKg, solids, netKw);
    }

    private static double climbMinutes(double massKg, double solids, double netKw) {
        return massKg * (1 - solids / SET_SOLIDS) / (26.6e-3 * netKw);
    }

    private static double rise(SplittableRandom random) {
        double dice = random.nextDouble();
        double fahrenheit = dice < 0.7 ? 8 : dice < 0.88 ? 9 : random.nextDouble(7, 10);
        return Math.round(fahrenheit / 1.8 * 1e4) / 1e4;
    }

    private static Air air(SplittableRandom random) {
        double dice = random.nextDouble();
        double elevationM = Math.rint(dice < 0.5 ? random.nextDouble(0, 400) : random.nextDouble(0, 2500));
        double weatherPa = 100 * Math.max(-15, Math.min(15, 8 * random.nextGaussian()));
        double sea = 101_325 + weatherPa;
        double pressurePa = PanPhysics.pressurePa(elevationM) * sea / 101_325;
        return new Air(elevationM, Math.rint(pressurePa / 10) * 10, random.nextBoolean());
    }

    private static Syrup syrup(SplittableRandom random) {
        double off = Math.max(-0.1, Math.min(0.1, 0.04 * random.nextGaussian()));
        return new Syrup(
                random.nextDouble(0, 0.25),
                1 + off,
                random.nextDouble(2.8, 3.4),
                random.nextDouble(0, 0.15),
                random.nextDouble(25, 75));
    }
}
