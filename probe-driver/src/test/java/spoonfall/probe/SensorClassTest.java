package spoonfall.probe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class SensorClassTest {
    @TempDir
    Path folder = Path.of("");

    @ParameterizedTest
    @CsvSource({"pt-a,0.35", "pt-b,0.80", "k-2,2.5", "t-1,0.5", "k-1,1.5", "t-2,1.0", "j-1,1.5", "j-2,2.5"})
    void theLimitAtAHundredDegrees_isTheStandards(String name, double limitC) {
        // The first four: the project's science notes, section 6 (IEC 60751, IEC 60584-1). The others: from memory.
        ProbeSpec spec = ProbeSpec.parse("text:/dev/ttyUSB0,class=" + name);
        assertThat(spec.sensorClass().orElseThrow().limitC(100)).isEqualTo(limitC, Offset.offset(1e-9));
        assertThat(spec.limitC(100)).isEqualTo(limitC, Offset.offset(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"auto:/dev/x", "json:/dev/x;field=t", "modbus:/dev/x;register=0", "scpi:/dev/x"})
    void everySerialKind_mayHaveAClass(String spec) {
        assertThat(ProbeSpec.parse(spec.replace(';', ',') + ",class=k-1").sensorClass())
                .contains(SensorClass.K_1);
        assertThat(ProbeSpec.parse(spec.replace(';', ',')).limitC(100)).isEqualTo(2.5);
    }

    @Test
    void anotherClass_isRefusedWithTheOnesThereAre() {
        assertThatThrownBy(() -> ProbeSpec.parse("text:/dev/x,class=gold"))
                .hasMessage("class must be pt-a, pt-b, k-1, k-2, t-1, t-2, j-1, j-2, not \"gold\"");
    }

    @Test
    void theIdentity_isTheStableNameWhereThereIsOne() throws IOException {
        Path device = Files.createFile(folder.resolve("ttyUSB0"));
        Path links = Files.createDirectory(folder.resolve("by-id"));
        Path stable = Files.createSymbolicLink(links.resolve("usb-thermometer-7-if00"), device);
        assertThat(ProbeSpec.parse("text:" + device).identity(links)).isEqualTo(stable.toString());
        assertThat(ProbeSpec.parse("text:" + stable).identity(links)).isEqualTo(stable.toString());
        assertThat(ProbeSpec.parse("modbus:" + device + ",register=0,id=3").identity(links))
                .isEqualTo(stable + "#3");
        assertThat(ProbeSpec.parse("text:/dev/none").identity(links)).isEqualTo("/dev/none");
        assertThat(ProbeSpec.parse("text:/dev/none").identity(folder.resolve("no folder")))
                .isEqualTo("/dev/none");
    }
}
