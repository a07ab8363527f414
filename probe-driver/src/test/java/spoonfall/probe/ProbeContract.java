package spoonfall.probe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What every kind of probe must do. A kind's test extends this and says how to feed it. */
public abstract class ProbeContract {
    /** A probe of the kind, with the device or the file behind it ready to be played. */
    public interface Rig extends AutoCloseable {
        /** The probe, named {@code pan}, not started. */
        Probe probe();

        /** Makes it say these temperatures in °C, and then a line without one where the kind can. */
        void play(List<Double> temperaturesC);

        @Override
        void close();
    }

    /** A new rig that will be asked to play {@code temperaturesC}. */
    protected abstract Rig rig(List<Double> temperaturesC);

    private static final List<Double> CLIMB = List.of(95.8, 96.25, 97.0, 98.5, 100.3);

    @Test
    void readings_comeInOrderWithTheirTextAndTheirTime() {
        try (Rig rig = rig(CLIMB)) {
            Hearing hearing = new Hearing();
            rig.probe().start(hearing);
            rig.play(CLIMB);
            Hearing.await("five readings", () -> hearing.temperaturesC().size() >= 5);
            assertThat(hearing.temperaturesC()).startsWith(95.8, 96.25, 97.0, 98.5, 100.3);
            assertThat(hearing.readings()).isSortedAccordingTo((a, b) -> Long.compare(a.atNanos(), b.atNanos()));
            assertThat(hearing.readings()).allSatisfy(reading -> {
                assertThat(reading.probe()).isEqualTo("pan");
                assertThat(reading.raw()).isNotBlank();
            });
        }
    }

    @Test
    void aProbe_saysWhereItIsAndHowItIsRead() {
        try (Rig rig = rig(CLIMB)) {
            Hearing hearing = new Hearing();
            rig.probe().start(hearing);
            rig.play(CLIMB);
            Hearing.await("being found", () -> !hearing.found().isEmpty());
            assertThat(hearing.found().get(0)).contains(rig.probe().place());
        }
    }

    @Test
    void aProbe_startsOnceOnly() {
        try (Rig rig = rig(CLIMB)) {
            rig.probe().start(new Hearing());
            assertThatThrownBy(() -> rig.probe().start(new Hearing())).isInstanceOf(IllegalStateException.class);
        }
    }

    @Test
    void close_endsTheThreadAndMayBeCalledAgain() {
        try (Rig rig = rig(CLIMB)) {
            rig.probe().start(new Hearing());
            Hearing.await("its thread", () -> threads() >= 1);
            rig.probe().close();
            rig.probe().close();
            assertThat(threads()).isZero();
        }
    }

    @Test
    void aClosedProbe_doesNotStart() {
        try (Rig rig = rig(CLIMB)) {
            rig.probe().close();
            assertThatThrownBy(() -> rig.probe().start(new Hearing())).isInstanceOf(IllegalStateException.class);
        }
    }

    private static long threads() {
        return Thread.getAllStackTraces().keySet().stream()
                .filter(thread -> thread.getName().matches("probe-(.*\\+)?pan(\\+.*)?"))
                .count();
    }
}
