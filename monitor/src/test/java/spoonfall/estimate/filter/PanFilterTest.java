package spoonfall.estimate.filter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import spoonfall.lab.PanSettings;
import spoonfall.lab.Scenario;
import spoonfall.lab.Simulator;

/** The filter gives what other people's arithmetic gives on the same pan and the same readings. */
final class PanFilterTest {
    private static final double CLOSE = 1e-9;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void aWholeCook_isFollowedAsByHipparchus(long seed) {
        Boil boil = boil(seed);
        Ours ours = new Ours(boil);
        Model model = new Model(boil.pressurePa());
        Boil.Point first = boil.points().get(0);
        HipparchusPan theirs = new HipparchusPan(model, first.t(), model.guesses(first.riseC()), model.doubts());
        for (Boil.Point point : boil.points().subList(1, boil.points().size())) {
            ours.accept(point);
            theirs.accept(point.t(), point.riseC());
            assertSame(seed, point, ours.filter, theirs.state(), theirs.covariance());
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void aWholeCook_isFollowedAsByTheTextbook(long seed) {
        Boil boil = boil(seed);
        Ours ours = new Ours(boil);
        Model model = new Model(boil.pressurePa());
        Boil.Point first = boil.points().get(0);
        DensePan theirs = new DensePan(model, first.t(), model.guesses(first.riseC()), model.doubts());
        for (Boil.Point point : boil.points().subList(1, boil.points().size())) {
            ours.accept(point);
            theirs.accept(point.t(), point.riseC());
            assertSame(seed, point, ours.filter, theirs.state(), theirs.covariance());
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void theCovariance_staysSymmetricAndPositive(long seed) {
        Boil boil = boil(seed);
        Ours ours = new Ours(boil);
        for (Boil.Point point : boil.points().subList(1, boil.points().size())) {
            ours.accept(point);
            double[] p = ours.filter.covariance;
            for (int i = 0; i < PanFilter.SIZE; i++) {
                assertThat(p[i * PanFilter.SIZE + i])
                        .as("seed %d, part %d", seed, i)
                        .isPositive();
                for (int j = 0; j < i; j++) {
                    double one = p[i * PanFilter.SIZE + j];
                    double other = p[j * PanFilter.SIZE + i];
                    assertThat(one).as("seed %d, %d and %d", seed, i, j).isCloseTo(other, within(1e-12));
                }
            }
        }
    }

    private static Boil boil(long seed) {
        Boil boil = Boil.of(Simulator.cook(Scenario.CLEAN, PanSettings.defaults(), seed));
        assertThat(boil.points()).as("seed %d", seed).hasSizeGreaterThan(1000);
        return boil;
    }

    private static void assertSame(long seed, Boil.Point at, PanFilter ours, double[] state, double[][] covariance) {
        for (int i = 0; i < PanFilter.SIZE; i++) {
            double their = state[i];
            assertThat(ours.state[i])
                    .as("seed %d, %s, state %d", seed, at, i)
                    .isCloseTo(their, within(CLOSE * Math.max(1, Math.abs(their))));
            for (int j = 0; j < PanFilter.SIZE; j++) {
                double theirs = covariance[i][j];
                assertThat(ours.covariance[i * PanFilter.SIZE + j])
                        .as("seed %d, %s, covariance %d, %d", seed, at, i, j)
                        .isCloseTo(theirs, within(CLOSE * Math.max(1, Math.abs(theirs))));
            }
        }
    }

    /** Our filter, fed as the bank feeds it. */
    private static final class Ours {
        private final Model model;
        private final PanFilter filter;
        private double lastT;

        private Ours(Boil boil) {
            model = new Model(boil.pressurePa());
            filter = new PanFilter(model.curve);
            Boil.Point first = boil.points().get(0);
            filter.begin(model.guesses(first.riseC()), model.doubts());
            lastT = first.t();
        }

        private void accept(Boil.Point point) {
            double minutes = (point.t() - lastT) / 60;
            lastT = point.t();
            double growth = model.growth(minutes, filter.u(), filter.state[4]);
            filter.predict(minutes, model.slopeWander(filter.v()), Model.OFFSET_WANDER, Model.SCALE_WANDER, growth);
            filter.look(point.riseC(), Model.VARIANCE);
            filter.believe();
        }
    }
}
