package spoonfall.probe.serial;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import spoonfall.probe.Hearing;
import spoonfall.probe.Probe;
import spoonfall.probe.ProbeContract;
import spoonfall.probe.ProbeSpec;

final class AutoProbeTest extends ProbeContract {
    @Override
    protected Rig rig(List<Double> temperaturesC) {
        return new SerialRig("auto:%s", c -> String.format(Locale.ROOT, "%+07.2f\n", c));
    }

    @Test
    void twoColumns_areRefusedWithTheWayOut() {
        try (PseudoTerminal line = PseudoTerminal.open();
                Probe probe = ProbeSpec.parse("auto:" + line.path()).open("pan", System::nanoTime)) {
            Hearing hearing = new Hearing();
            probe.start(hearing);
            line.send("x\n98.4 23.1\n98.5 23.1\n98.6 23.1\n");
            Hearing.await("a refusal", () -> !hearing.lost().isEmpty());
            assertThat(hearing.lost().get(0)).contains("1 (98.6)", "2 (23.1)", "text:" + line.path() + ",column=1");
            assertThat(hearing.readings()).isEmpty();
        }
    }

    @Test
    void aSilentDevice_isSaidToBeSilentAndIsRecognisedLater() {
        try (PseudoTerminal line = PseudoTerminal.open();
                Probe probe = ProbeSpec.parse("auto:" + line.path()).open("pan", System::nanoTime)) {
            Hearing hearing = new Hearing();
            probe.start(hearing);
            Hearing.await("word of silence", () -> !hearing.lost().isEmpty());
            assertThat(hearing.lost().get(0)).contains("sends nothing");
            line.send("x\n98.4 °C\n98.5 °C\n");
            Hearing.await("the readings", () -> hearing.temperaturesC().size() == 2);
            assertThat(hearing.found().get(0)).contains("One number a line", "as it says");
        }
    }
}
