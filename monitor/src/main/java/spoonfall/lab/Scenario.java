package spoonfall.lab;

import java.util.Locale;

/** What happens to a simulated cook. */
public enum Scenario {
    /** Nothing goes wrong. */
    CLEAN("A cook in which nothing goes wrong"),
    /** The heat goes off for six minutes halfway up. */
    STALL("The heat goes off for six minutes halfway up the climb"),
    /** The base begins to catch two thirds of the way up. */
    SCORCH("The base begins to catch two thirds of the way up"),
    /** The heat is turned down by a third, later up again. */
    HEAT_CHANGE("The heat is turned down by a third, and up again later"),
    /** The probe is out of the pan for a minute and a half. */
    PROBE_OUT("The probe is out of the pan for a minute and a half"),
    /** The probe says nothing for two and a half minutes. */
    GAP("The probe says nothing for two and a half minutes"),
    /** It is boiled two degrees past the gel point. */
    PAST("It is boiled two degrees past the gel point"),
    /** A thin start: half an hour at the boil in which the thermometer hardly moves. */
    DILUTE("A thin start, in which the thermometer hardly moves for half an hour"),
    /** A cup of cold water goes in halfway up. */
    COLD_WATER("A cup of cold water goes in halfway up the climb"),
    /** The pan is taken off the heat for a set test, twice. */
    SET_TESTS("The pan is taken off the heat for a set test, twice"),
    /** A coarse thermometer: half a degree, every five seconds. */
    COARSE("A coarse thermometer that shows half degrees, every five seconds");

    private final String title;

    Scenario(String title) {
        this.title = title;
    }

    /** What happens, in one sentence without its stop. */
    public String title() {
        return title;
    }

    /** The name on the command line and of its file, such as {@code heat-change}. */
    public String wireName() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The pan it needs, made from one that the cook chose. */
    PanSettings adapt(PanSettings pan) {
        return switch (this) {
            case DILUTE ->
                new PanSettings(
                        pan.massKg() * 1.5,
                        Math.max(0.05, pan.solids() * 0.62),
                        pan.startC(),
                        pan.netPowerKw(),
                        pan.elevationM(),
                        pan.riseC(),
                        pan.periodS(),
                        pan.lagS(),
                        pan.noiseC(),
                        pan.resolutionC());
            case COARSE ->
                new PanSettings(
                        pan.massKg(),
                        pan.solids(),
                        pan.startC(),
                        pan.netPowerKw(),
                        pan.elevationM(),
                        pan.riseC(),
                        5,
                        pan.lagS(),
                        pan.noiseC(),
                        0.5);
            default -> pan;
        };
    }
}
