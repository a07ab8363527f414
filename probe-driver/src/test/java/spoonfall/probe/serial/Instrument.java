package spoonfall.probe.serial;

import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BiFunction;
import spoonfall.probe.Probe;
import spoonfall.probe.ProbeSpec;

/** An instrument at the other end of a pseudo-terminal, that answers each request as it is told to. */
public final class Instrument implements AutoCloseable {
    private final PseudoTerminal line = PseudoTerminal.open();
    private final Probe probe;
    private final AtomicInteger asked = new AtomicInteger();
    private volatile BiFunction<Integer, byte[], byte[]> answers;

    /**
     * Plugs it in.
     *
     * @param spec of the probe, with {@code %s} for the port
     * @param answers given how often it was asked before and the request; nothing for no answer
     */
    public Instrument(String spec, BiFunction<Integer, byte[], byte[]> answers) {
        this.answers = answers;
        probe = ProbeSpec.parse(spec.formatted(line.path())).open("pan", System::nanoTime);
        Thread thread = new Thread(this::run, "instrument");
        thread.setDaemon(true);
        thread.start();
    }

    private void run() {
        for (byte[] request = line.receive(); request.length > 0; request = line.receive()) {
            byte[] answer = answers.apply(asked.getAndIncrement(), request);
            if (answer.length > 0) {
                line.send(answer);
            }
        }
    }

    /** The probe that asks it. */
    public Probe probe() {
        return probe;
    }

    /** How often it was asked. */
    public int asked() {
        return asked.get();
    }

    /** Tells it to answer otherwise from now on. */
    public void answer(BiFunction<Integer, byte[], byte[]> newAnswers) {
        answers = newAnswers;
    }

    @Override
    public void close() {
        probe.close();
        line.close();
    }
}
