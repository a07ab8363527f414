package spoonfall.probe.serial;

import java.util.List;
import java.util.function.Function;
import spoonfall.probe.Probe;
import spoonfall.probe.ProbeContract;
import spoonfall.probe.ProbeSpec;

/** A serial probe on a pseudo-terminal. */
final class SerialRig implements ProbeContract.Rig {
    private final PseudoTerminal line = PseudoTerminal.open();
    private final Probe probe;
    private final Function<Double, String> format;
    private volatile boolean closed;

    /** A probe opened by a spec like {@code text:%s,baud=9600}, that is sent lines made by {@code format}. */
    SerialRig(String spec, Function<Double, String> format) {
        this.format = format;
        probe = ProbeSpec.parse(spec.formatted(line.path())).open("pan", System::nanoTime);
    }

    @Override
    public Probe probe() {
        return probe;
    }

    @Override
    public void play(List<Double> temperaturesC) {
        Thread player = new Thread(
                () -> {
                    // The first line end tells the probe that what follows is whole.
                    for (int i = 0; i < 20 && !closed; i++) {
                        line.send(i == 0 ? "half 9\n" : "");
                        temperaturesC.forEach(c -> line.send(format.apply(c)));
                        pause();
                    }
                },
                "player");
        player.setDaemon(true);
        player.start();
    }

    private static void pause() {
        try {
            Thread.sleep(300);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    @Override
    public void close() {
        closed = true;
        probe.close();
        line.close();
    }
}
