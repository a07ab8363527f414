package spoonfall.estimate.warming;

import java.util.Optional;

/**
 * Where a pan that has just begun to boil is, and how fast it loses water: by what is read, by how fast it warmed, and by
 * its plan.
 *
 * @param u all mass / solids mass
 * @param uDoubt its standard deviation
 * @param v how fast u falls, per minute
 * @param vDoubt its standard deviation if u were known
 * @param vPerU how much larger v is where u is larger by one: what warmed says how much heat there is for each kg of the pan, so
 *     that whoever takes the pan for too thin, as when weather puts the water boil off, takes it for too quick as well
 */
record FirstGuess(double u, double uDoubt, double v, double vDoubt, double vPerU) {
    private static final double U_DOUBT = 1;
    private static final double V_DOUBT = 0.8;

    private static final double LEAST_V = 0.02;
    private static final double SETS_AT_U = 1.55;
    private static final double USUAL_MIN = 18;

    /** A plan that is further off than that, in standard deviations, is of another pan. */
    private static final double CONTRADICTS = 2;

    /** By the reading and, if it was seen to warm, by that. */
    static FirstGuess of(double readU, Warming warming, double t) {
        return warming.promise(t).map(promise -> of(readU, promise)).orElseGet(() -> {
            double v = Math.max(LEAST_V, (readU - SETS_AT_U) / USUAL_MIN);
            return new FirstGuess(readU, U_DOUBT, v, v * V_DOUBT, 0);
        });
    }

    private static FirstGuess of(double readU, Warming.Promise promise) {
        double v = promise.v(readU);
        return new FirstGuess(readU, U_DOUBT, v, v * promise.doubt(), promise.vPerU());
    }

    /** Whether the warming told the pace. */
    boolean byWarming() {
        return vPerU > 0;
    }

    /**
     * The same with what a plan says.
     *
     * @param readDoubt standard deviation of u by the reading alone
     */
    FirstGuess with(Optional<PanPrior> plan, double readDoubt) {
        if (plan.isEmpty()) {
            return this;
        }
        PanPrior prior = plan.get();
        double readVDoubt = Math.hypot(vDoubt, vPerU * readDoubt);
        boolean contradicted = Math.abs(prior.u() - u) > CONTRADICTS * Math.hypot(prior.uDoubt(), readDoubt)
                || Math.abs(prior.v() - v) > CONTRADICTS * Math.hypot(prior.vDoubt(), readVDoubt);
        return contradicted ? this : joinedBy(prior);
    }

    /** Two normal distributions of u and v, multiplied. */
    private FirstGuess joinedBy(PanPrior prior) {
        double mine = 1 / (vDoubt * vDoubt);
        double planned = 1 / (prior.vDoubt() * prior.vDoubt());
        double share = mine / (mine + planned);
        double wouldBeV = v + vPerU * (prior.u() - u);
        double told = vPerU * vPerU / (vDoubt * vDoubt + prior.vDoubt() * prior.vDoubt());
        double sure = 1 / (prior.uDoubt() * prior.uDoubt()) + told;
        double fromU = vPerU == 0 ? 0 : told / sure * (prior.v() - wouldBeV) / vPerU;
        double bothV = share * (wouldBeV + vPerU * fromU) + (1 - share) * prior.v();
        return new FirstGuess(
                prior.u() + fromU, Math.sqrt(1 / sure), bothV, Math.sqrt(1 / (mine + planned)), share * vPerU);
    }
}
