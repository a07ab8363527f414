package spoonfall.probe.serial;

import java.util.List;
import java.util.function.Function;
import spoonfall.probe.Probe;
import spoonfall.probe.ProbeContract;

/** An instrument that answers one temperature after another, for the contract. */
public final class InstrumentRig implements ProbeContract.Rig {
    private final Instrument instrument;

    /** An instrument that answers {@code temperaturesC}, then the last of them, each in the frame that is given. */
    public InstrumentRig(String spec, Function<Double, byte[]> frame, List<Double> temperaturesC) {
        instrument = new Instrument(
                spec, (n, request) -> frame.apply(temperaturesC.get(Math.min(n, temperaturesC.size() - 1))));
    }

    @Override
    public Probe probe() {
        return instrument.probe();
    }

    @Override
    public void play(List<Double> temperaturesC) {
        // it is asked
    }

    @Override
    public void close() {
        instrument.close();
    }
}
