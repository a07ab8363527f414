package spoonfall.kitchen.thermometer;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import spoonfall.cook.CookSettings;
import spoonfall.cook.ProbeTrust;
import spoonfall.cook.WaterBoil;
import spoonfall.kitchen.ask.Refusal;
import spoonfall.kitchen.plan.KitchenPlan;
import spoonfall.log.CookBasis;
import spoonfall.probe.Probe;

/** The thermometers of a kitchen, and where water boils in it. Used by the kitchen's thread alone. */
public final class Thermometers {
    private final KitchenPlan plan;
    private final Thermometry thermometry;
    private final List<Thermometer> all = new ArrayList<>();
    private WaterBase base;
    private double riseC;

    /** The thermometers of those probes, at least one; the cook follows the first. */
    public Thermometers(KitchenPlan plan, List<Probe> probes, Thermometry thermometry) {
        this.plan = plan;
        this.thermometry = thermometry;
        probes.forEach(probe -> all.add(new Thermometer(probe, thermometry)));
        riseC = plan.settings().riseC();
        WaterBoil given = plan.settings().waterBoil();
        boolean typed = given.from() == WaterBoil.From.MEASURED;
        base = new WaterBase(typed ? thermometry.declared().orElseGet(WaterBoil::standard) : given, Optional.empty());
        if (typed) {
            Instant at = plan.startedAt().orElseGet(thermometry.clock()::instant);
            base = base.measured(Optional.of(new WaterBase.Measured(first().shownC(given.temperatureC()), 0, at)));
        }
    }

    /** The one that the cook follows. */
    public Thermometer first() {
        return all.get(0);
    }

    /** The others in the same pan. */
    public List<Thermometer> others() {
        return all.subList(1, all.size());
    }

    /** The one of that name; a {@link Refusal} if there is none. */
    public Thermometer named(String name) {
        return all.stream()
                .filter(one -> one.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new Refusal("no thermometer is called \"" + name + "\"; it can be "
                        + String.join(", ", all.stream().map(Thermometer::name).toList())));
    }

    /** What a cook is measured against now. */
    public CookSettings settings() {
        return new CookSettings(waterBoil(), riseC);
    }

    /** The pan is to be boiled to another rise, in °C. */
    public void aim(double otherC) {
        riseC = otherC;
    }

    private WaterBoil waterBoil() {
        return base.boil(first());
    }

    /** What a cook is measured against now, with what that rests on. */
    public CookBasis cookBasis() {
        return new CookBasis(
                settings(),
                trusts(),
                base.declared(),
                base.measured().map(one -> new CookBasis.Measured(one.shownC(), one.plateauDoubtC(), one.at())));
    }

    /** Where water boils and what is aimed at, as a cook that goes on had it. */
    public void restore(CookBasis basis) {
        riseC = basis.settings().riseC();
        base = new WaterBase(
                basis.declared(),
                basis.measured().map(one -> new WaterBase.Measured(one.shownC(), one.plateauDoubtC(), one.at())));
    }

    /** What the gel point rests on. */
    public Basis basis() {
        CookSettings settings = settings();
        return base.measured()
                .map(one -> Basis.of(settings, base.declared(), Optional.of(one.at()), OptionalDouble.empty()))
                .orElseGet(() -> Basis.of(
                        settings,
                        base.declared(),
                        Optional.empty(),
                        OptionalDouble.of(first().doubtC(settings.gelPointC()))));
    }

    /** How far each can be trusted. */
    public List<ProbeTrust> trusts() {
        double gelPointC = settings().gelPointC();
        return all.stream().map(one -> one.trust(gelPointC)).toList();
    }

    /** How each is. */
    public List<ProbeState> states() {
        return all.stream().map(this::state).toList();
    }

    /** How one is. */
    public ProbeState state(Thermometer thermometer) {
        double gelPointC = settings().gelPointC();
        Optional<String> due = plan.source() == KitchenPlan.Source.LIVE ? due(thermometer) : Optional.empty();
        return thermometer.view(gelPointC, due);
    }

    private Optional<String> due(Thermometer thermometer) {
        if (thermometer.byHand()) {
            return Optional.empty(); // only a thermometer that speaks by itself is compared here
        }
        if (thermometer.bookTrouble().isPresent()) {
            return thermometer.bookTrouble();
        }
        double boilC = waterBoil().temperatureC();
        if (thermometer == first() && base.measured().isPresent() && base.known()) {
            Optional<String> contradicted =
                    CalibrationDue.byContradiction(waterBoil(), base.declared(), thermometer.doubtC(boilC));
            if (contradicted.isPresent()) {
                return contradicted;
            }
        }
        if (thermometer == first()
                && base.measured().isPresent()
                && thermometer.calibration().isEmpty()) {
            return Optional.empty(); // today's boiling water cancels what it is off by
        }
        return CalibrationDue.byAge(
                thermometer.calibration(),
                thermometer.doubtC(boilC),
                thermometry.clock().instant());
    }

    /** Where water boils, by what was said of the kitchen. */
    public void declare(WaterBoil boil) {
        base = base.declared(boil);
    }

    /** Where water boils, and how that is known. */
    WaterBase base() {
        return base;
    }

    /** Water was seen to boil at a reading of the first. */
    void measured(WaterBase.Measured boil) {
        base = base.measured(Optional.of(boil));
    }

    /** The measured water boil counts no longer. */
    public void forgetMeasured() {
        if (base.measured().isEmpty()) {
            throw new Refusal("no water boil was measured");
        }
        base = base.measured(Optional.empty());
    }
}
