package spoonfall.cli.option;

import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import spoonfall.cook.CookSettings;
import spoonfall.cook.WaterBoil;
import spoonfall.kitchen.file.KitchenFile;
import spoonfall.physics.GelPoint;
import spoonfall.probe.trace.TraceInfo;
import spoonfall.units.Quantities;

/** The options that say what a cook is measured against. */
public final class CookOptions {
    @Option(
            names = "--elevation",
            paramLabel = "HEIGHT",
            description = "Height of the kitchen above sea level, such as 1240m or 4068ft.")
    private @Nullable String elevation;

    @Option(
            names = "--pressure",
            paramLabel = "PRESSURE",
            description = "Air pressure in the kitchen itself, such as 898hPa or 26.5inHg; better than the elevation.")
    private @Nullable String pressure;

    @Option(
            names = "--sea-level-pressure",
            paramLabel = "PRESSURE",
            description = "Air pressure as weather reports give it, reduced to sea level, such as 1016hPa; "
                    + "needs --elevation too.")
    private @Nullable String seaLevelPressure;

    @Option(
            names = "--water-boil",
            paramLabel = "TEMPERATURE",
            description = "What this thermometer showed in plain boiling water today, such as 95.6C; best of all. "
                    + "Give --elevation or --pressure too, and the two are compared.")
    private @Nullable String waterBoil;

    @Option(
            names = "--rise",
            paramLabel = "RISE",
            description = "How far above boiling water it sets, such as 8F (usual), 9F (firmer) or 4.4C.")
    private @Nullable String rise;

    /** The settings by these options, else by the kitchen file, else the defaults. */
    public CookSettings settings(KitchenFile file) {
        return settings(file, Optional.empty());
    }

    /** The same for a pan for which the file wants a rise of its own. */
    public CookSettings settings(KitchenFile file, Optional<Double> panRiseC) {
        return settings(
                OptionalDouble.empty(),
                known(file.elevationM()),
                known(file.pressurePa()),
                known(panRiseC.or(file::riseC)));
    }

    /** Whether what a thermometer showed in boiling water was given. */
    public boolean measured() {
        return waterBoil != null;
    }

    /** Where water boils by what was said of the kitchen, whether it was measured or not; empty if nothing was said. */
    public Optional<WaterBoil> declared(KitchenFile file) {
        return Optional.of(declared(known(file.elevationM()), known(file.pressurePa())))
                .filter(boil -> boil.from() != WaterBoil.From.STANDARD);
    }

    /** The settings by these options, else by what a trace says of itself, else the defaults. */
    public CookSettings settings(TraceInfo info) {
        return settings(info.waterBoilC(), info.elevationM(), info.pressurePa(), info.riseC());
    }

    private CookSettings settings(
            OptionalDouble otherWaterBoilC,
            OptionalDouble otherElevationM,
            OptionalDouble otherPressurePa,
            OptionalDouble otherRiseC) {
        if (pressure != null && (elevation != null || seaLevelPressure != null)) {
            throw new MisuseException("give --pressure alone: it is the kitchen's own, whatever its elevation");
        }
        if (seaLevelPressure != null && elevation == null) {
            throw new MisuseException("--sea-level-pressure needs --elevation too, such as --elevation 1240m");
        }
        WaterBoil boil = boil(otherWaterBoilC, otherElevationM, otherPressurePa);
        return rise == null
                ? new CookSettings(boil, otherRiseC.orElse(GelPoint.DEFAULT_RISE_C))
                : Understood.value(rise, text -> new CookSettings(boil, Quantities.differenceC(text)));
    }

    private WaterBoil boil(
            OptionalDouble otherWaterBoilC, OptionalDouble otherElevationM, OptionalDouble otherPressurePa) {
        if (waterBoil != null) {
            return Understood.value(waterBoil, text -> WaterBoil.measured(Quantities.temperatureC(text), 0));
        }
        boolean said = elevation != null || pressure != null;
        return said
                ? declared(otherElevationM, otherPressurePa)
                : WaterBoil.known(otherWaterBoilC, otherPressurePa, otherElevationM);
    }

    private WaterBoil declared(OptionalDouble otherElevationM, OptionalDouble otherPressurePa) {
        if (elevation != null && seaLevelPressure != null) {
            double aboveM = Understood.value(elevation, Quantities::elevationM);
            return Understood.value(
                    seaLevelPressure, text -> WaterBoil.atSeaLevelPressure(Quantities.pressurePa(text), aboveM));
        }
        if (elevation != null) {
            return WaterBoil.atElevation(Understood.value(elevation, Quantities::elevationM));
        }
        if (pressure != null) {
            return WaterBoil.atPressure(Understood.value(pressure, Quantities::pressurePa));
        }
        return WaterBoil.known(OptionalDouble.empty(), otherPressurePa, otherElevationM);
    }

    private static OptionalDouble known(Optional<Double> value) {
        return value.isPresent() ? OptionalDouble.of(value.get()) : OptionalDouble.empty();
    }
}
