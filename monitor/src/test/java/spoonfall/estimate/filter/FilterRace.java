package spoonfall.estimate.filter;

import java.util.Arrays;
import spoonfall.probe.trace.Trace;

/** Ours and Hipparchus' extended Kalman filter on the same boil, one after the other; for the benchmark. */
public final class FilterRace {
    private final Boil boil;

    /** A race on the boiling part of {@code trace}. */
    public FilterRace(Trace trace) {
        boil = Boil.of(trace);
    }

    /** Readings of one run. */
    public int readings() {
        return boil.points().size() - 1;
    }

    /** Ours over the whole boil; returns the u it ends at. */
    public double ours() {
        Model model = new Model(boil.pressurePa());
        PanFilter filter = new PanFilter(model.curve);
        Boil.Point first = boil.points().get(0);
        filter.begin(model.guesses(first.riseC()), model.doubts());
        double lastT = first.t();
        for (int i = 1; i < boil.points().size(); i++) {
            Boil.Point point = boil.points().get(i);
            double minutes = (point.t() - lastT) / 60;
            lastT = point.t();
            double growth = model.growth(minutes, filter.u(), filter.state[4]);
            filter.predict(minutes, model.slopeWander(filter.v()), Model.OFFSET_WANDER, Model.SCALE_WANDER, growth);
            filter.look(point.riseC(), Model.VARIANCE);
            filter.believe();
        }
        return filter.u();
    }

    /** Theirs; returns the u it ends at. */
    public double hipparchus() {
        Model model = new Model(boil.pressurePa());
        Boil.Point first = boil.points().get(0);
        HipparchusPan theirs = new HipparchusPan(model, first.t(), model.guesses(first.riseC()), model.doubts());
        for (int i = 1; i < boil.points().size(); i++) {
            Boil.Point point = boil.points().get(i);
            theirs.accept(point.t(), point.riseC());
        }
        return theirs.state()[0];
    }

    /** The model alone, without a filter: the curve, its slope and the inversion, which both ask for the same. */
    public double modelOnly() {
        Model model = new Model(boil.pressurePa());
        double[] at = model.guesses(boil.points().get(0).riseC());
        double lastT = boil.points().get(0).t();
        double sum = 0;
        for (int i = 1; i < boil.points().size(); i++) {
            double minutes = (boil.points().get(i).t() - lastT) / 60;
            lastT = boil.points().get(i).t();
            double u = Math.max(1.5, at[0] -= 0.001);
            sum += model.growth(minutes, u, 0.6) + model.curve.riseC(u) + model.curve.riseSlopeC(u);
        }
        return sum + Arrays.stream(at).sum();
    }
}
