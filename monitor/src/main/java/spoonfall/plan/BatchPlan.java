package spoonfall.plan;

import java.util.List;
import java.util.Optional;
import spoonfall.food.Ingredient;
import spoonfall.physics.SyrupDensity;

/**
 * What comes of a batch that is boiled down to its setting point.
 *
 * @param ingredients what goes in
 * @param setup where and with what
 * @param balance what that brings
 * @param finishSolids the fraction of the finished syrup that is solids
 * @param finishedKg what is left in the pan at the setting point
 * @param jars how many it fills, after what is skimmed off and left in the pan
 * @param waterOffKg water to drive off; nothing if it is thick enough from the start
 * @param boilMinutes from the first boil to the setting point; empty if the hob's power is not known
 * @param heatMinutes from a kitchen's temperature to the boil, at full power; empty if the hob's power is not known
 * @param contentsL how much room it takes before it boils
 * @param panL how large a pan it wants
 * @param path the way there
 * @param advice what published guidance says of it, warnings first
 */
public record BatchPlan(
        List<Ingredient> ingredients,
        PlanSetup setup,
        MassBalance balance,
        double finishSolids,
        Range finishedKg,
        Range jars,
        Range waterOffKg,
        Optional<Range> boilMinutes,
        Optional<Double> heatMinutes,
        double contentsL,
        double panL,
        List<PathPoint> path,
        List<Advice> advice) {
    /** As many rows fit a plan. */
    public static final int MOST_INGREDIENTS = 40;

    /** The foam climbs: the pan holds four times what goes in (Univ. of Wisconsin Extension). */
    private static final double FOAM = 4;

    /** What is skimmed off and sticks to pan and ladle, and its doubt; common practice, no source. */
    private static final double LOST = 0.02;

    private static final double LOST_DOUBT = 0.01;

    /** Jars of one name differ, and 1/4 inch below the rim is 20 mL of 237 (docs/science.md); a third of that is one deviation. */
    private static final double JAR_DOUBT = 0.04;

    /** A hot syrup takes about a twentieth more room than at 20 °C (from memory). */
    private static final double HOT = 1.05;

    private static final double KITCHEN_C = 20;
    private static final double WATER_KJ_PER_KG_C = 4.19;

    /** Each unit of solids fraction takes so much from the heat capacity of a syrup, in kJ/(kg °C) (from memory). */
    private static final double SOLIDS_KJ_PER_KG_C = 2.35;

    /** Keeps lists as they are. */
    public BatchPlan {
        ingredients = List.copyOf(ingredients);
        path = List.copyOf(path);
        advice = List.copyOf(advice);
    }

    /**
     * Plans a batch.
     *
     * @throws IllegalArgumentException in one line if nothing can come of it
     */
    public static BatchPlan of(List<Ingredient> ingredients, PlanSetup setup) {
        if (ingredients.isEmpty() || ingredients.size() > MOST_INGREDIENTS) {
            throw new IllegalArgumentException("a plan has 1 to " + MOST_INGREDIENTS
                    + " ingredients, such as 1 kg of sugar, not " + ingredients.size());
        }
        MassBalance balance = MassBalance.of(ingredients);
        if (!(balance.solubleKg() > 0.001)) {
            throw new IllegalArgumentException(
                    "there is neither sugar nor fruit in it, so nothing could set; add them");
        }
        if (!(balance.waterKg() > 0.001)) {
            throw new IllegalArgumentException(
                    "there is no water in it, nor anything that brings some; add fruit or water");
        }
        Finish finish = Finish.at(setup.pressurePa(), setup.riseC());
        double solids = finish.solids();
        double finishedKg = balance.solubleKg() / solids + balance.restKg();
        double ofSolids = balance.solubleDoubtKg() / balance.solubleKg();
        double ofFinish = finish.doubt() / solids;
        double finishedDoubt = Math.hypot(ofSolids, ofFinish);
        double hotKgPerL = SyrupDensity.kgPerL(solids) / HOT;
        double jars = finishedKg * (1 - LOST) / hotKgPerL / setup.jar().litres();
        double jarsDoubt = Math.hypot(finishedDoubt, Math.hypot(LOST_DOUBT, JAR_DOUBT));

        double leftKg = balance.solubleKg() * (1 - solids) / solids;
        double offKg = Math.max(0, balance.waterKg() - leftKg);
        double offDoubtKg = Math.hypot(
                balance.waterDoubtKg(), Math.hypot(leftKg * ofSolids, balance.solubleKg() / solids * ofFinish));
        Range waterOffKg = Range.about(offKg, offKg == 0 ? 0 : offDoubtKg);
        double startSolids = Math.min(0.9, balance.solids());
        double contentsL = balance.totalKg() / SyrupDensity.kgPerL(startSolids);
        Measured measured = new Measured(
                balance,
                solids,
                Range.within(finishedKg, finishedDoubt),
                Range.within(jars, jarsDoubt),
                waterOffKg,
                setup.hob().map(hob -> minutes(waterOffKg, offDoubtKg, hob)),
                setup.hob().map(hob -> heatMinutes(balance, startSolids, setup, hob)),
                contentsL);
        return measured.plan(ingredients, setup);
    }

    private static Range minutes(Range waterOffKg, double offDoubtKg, HobPower hob) {
        double minutes = waterOffKg.middle() / hob.waterKgPerMin();
        if (minutes == 0) {
            return new Range(0, 0, 0);
        }
        double relative = Math.min(1, offDoubtKg / waterOffKg.middle());
        return Range.within(minutes, Math.hypot(relative, hob.relativeDoubt()));
    }

    private static double heatMinutes(MassBalance balance, double solids, PlanSetup setup, HobPower hob) {
        double capacity = WATER_KJ_PER_KG_C - SOLIDS_KJ_PER_KG_C * solids;
        return balance.totalKg() * capacity * (setup.waterBoilC() - KITCHEN_C) / (60 * hob.kW());
    }

    /** The figures of a plan, before anything is said of them. */
    private record Measured(
            MassBalance balance,
            double finishSolids,
            Range finishedKg,
            Range jars,
            Range waterOffKg,
            Optional<Range> boilMinutes,
            Optional<Double> heatMinutes,
            double contentsL) {
        BatchPlan plan(List<Ingredient> ingredients, PlanSetup setup) {
            BatchPlan bare = with(ingredients, setup, List.of());
            return with(ingredients, setup, Guidance.on(bare));
        }

        private BatchPlan with(List<Ingredient> ingredients, PlanSetup setup, List<Advice> advice) {
            return new BatchPlan(
                    ingredients,
                    setup,
                    balance,
                    finishSolids,
                    finishedKg,
                    jars,
                    waterOffKg,
                    boilMinutes,
                    heatMinutes,
                    contentsL,
                    FOAM * contentsL,
                    ExpectedPath.of(balance, waterOffKg.middle(), setup),
                    advice);
        }
    }

    /** The same batch so many times as large, in the same pan on the same hob. */
    public BatchPlan times(double factor) {
        if (!(factor >= 0.05 && factor <= 50)) {
            throw new IllegalArgumentException(
                    "a batch can be made 0.05 to 50 times as large, not " + factor + " times");
        }
        return of(ingredients.stream().map(one -> one.times(factor)).toList(), setup);
    }

    /** What the forecast is told; empty if the hob's power is not known, or no water has to leave. */
    public Optional<PlannedPan> pan() {
        return setup.hob()
                .filter(hob -> waterOffKg.middle() > 0)
                .map(hob -> new PlannedPan(
                        balance.syrupKg(), balance.solubleKg(), hob.waterKgPerMin(), hob.relativeDoubt()));
    }
}
