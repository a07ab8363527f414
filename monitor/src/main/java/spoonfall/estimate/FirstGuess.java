package spoonfall.estimate;

import java.util.Optional;

/**
 * Where a pan that has just begun to boil is, and how fast it loses water: by what is read, by how fast it warmed, and by
 * its plan.
 *
 * @param u all mass / solids mass
 * @param uDoubt its standard deviation
 * @param v how fast u falls, per minute
 * @param vDoubt its standard deviation
 */
record FirstGuess(double u, double uDoubt, double v, double vDoubt) {
    private static final double U_DOUBT = 1;
    private static final double V_DOUBT = 0.8;

    /** A boiling pan's sides lose that much more than those of one that is twelve degrees cooler. */
    private static final double SIDES_LEAVE = 0.94;

    private static final double LEAST_V = 0.02;
    private static final double SETS_AT_U = 1.55;
    private static final double USUAL_MIN = 18;

    /** A plan that is further off than that, in standard deviations, is of another pan. */
    private static final double CONTRADICTS = 2;

    /** By the reading and, if it was seen to warm, by that. */
    static FirstGuess of(double readU, Warming warming, double t) {
        boolean warmed = warming.known(t);
        double v = warmed ? SIDES_LEAVE * warming.v(readU) : Math.max(LEAST_V, (readU - SETS_AT_U) / USUAL_MIN);
        return new FirstGuess(readU, U_DOUBT, v, v * (warmed ? warming.doubt() : V_DOUBT));
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
        boolean contradicted = Math.abs(prior.u() - u) > CONTRADICTS * Math.hypot(prior.uDoubt(), readDoubt)
                || Math.abs(prior.v() - v) > CONTRADICTS * Math.hypot(prior.vDoubt(), vDoubt);
        if (contradicted) {
            return this;
        }
        double mine = 1 / (vDoubt * vDoubt);
        double planned = 1 / (prior.vDoubt() * prior.vDoubt());
        double bothV = (mine * v + planned * prior.v()) / (mine + planned);
        return new FirstGuess(prior.u(), prior.uDoubt(), bothV, Math.sqrt(1 / (mine + planned)));
    }
}
