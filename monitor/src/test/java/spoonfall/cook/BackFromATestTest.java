package spoonfall.cook;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** A pan that climbs steeply back to its boil is neither where the line through the way there leads, nor misled by it. */
final class BackFromATestTest {
    /**
     * A pan that boils 101.5 °C hot at first and stands off the heat from {@code offT} for {@code forS} seconds.
     *
     * @param climbsPerMinC how fast it climbs while it boils
     * @param fallsPerMinC how fast it falls off the heat
     * @param risesPerMinC how fast it comes back
     */
    private record Tested(double climbsPerMinC, double offT, double forS, double fallsPerMinC, double risesPerMinC) {
        double backT() {
            return offT + forS * (1 + fallsPerMinC / risesPerMinC);
        }

        /** When it boils at {@code c}, which it does only after it is back. */
        double reachesT(double c) {
            return backT() - offT + (c - 101.5) / climbsPerMinC * 60;
        }

        double readC(double t) {
            if (t < offT) {
                return boilsC(t);
            }
            double lowC = boilsC(offT) - fallsPerMinC * Math.min(forS, t - offT) / 60;
            return t < backT() ? lowC + risesPerMinC * Math.max(0, t - offT - forS) / 60 : boilsC(offT + t - backT());
        }

        private double boilsC(double t) {
            return 101.5 + climbsPerMinC * t / 60 + 0.02 * Math.sin(1.7 * t);
        }
    }

    /** Before, the steep way back held the call up until it was three quarters of a minute old. */
    @Test
    void theGelPointIsCalled_whenAPanThatIsJustBackReachesIt() {
        Tested pan = new Tested(0.2, 723, 60, 3, 8);
        MadeCook cook = MadeCook.begun().watch(900, pan::readC);
        double reachesT = pan.reachesT(104);
        assertThat(Cooks.raisedT(cook.events(), AlarmName.GEL_POINT).orElseThrow())
                .isBetween(reachesT - 18, reachesT + 15);
    }

    /** Nothing is known of a pan that was below the boil until it boils again. Before, this one was called 220 s early. */
    @Test
    void theSetTestsAreNotCalled_whereALineThroughTheWayBackLeads() {
        Tested pan = new Tested(0.1, 660, 100, 2.5, 2.5);
        MadeCook cook = MadeCook.begun().watch(1200, pan::readC);
        double opensT = pan.reachesT(103);
        assertThat(Cooks.raisedT(cook.events(), AlarmName.START_SET_TESTS).orElseThrow())
                .isBetween(opensT - 20, opensT + 20);
    }

    /** The steps of a coarse thermometer hide for half a minute that it still climbs. Before, it was taken for a pan that boils lower. */
    @Test
    void theForecastGoesOn_whereACoarseThermometerCreepsBack() {
        Tested pan = new Tested(0.1, 720, 120, 3, 1.5);
        MadeCook cook = MadeCook.begun().watch(720, MadeCook.coarse(pan::readC));
        double setsT = etaS(cook) + pan.backT();
        cook.watch(340, MadeCook.coarse(pan::readC));
        assertThat(cook.t() + etaS(cook)).isBetween(setsT - 120, setsT + 120);
    }

    private static double etaS(MadeCook cook) {
        return cook.status().forecast().orElseThrow().etaS();
    }
}
