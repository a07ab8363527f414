package spoonfall.probe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class ProbesTest {
    @TempDir
    Path folder = Path.of("");

    private static List<Probe> open(String pan, String other) {
        return Probes.openAll(
                List.of(new NamedSpec("pan", ProbeSpec.parse(pan)), new NamedSpec("sugar", ProbeSpec.parse(other))),
                System::nanoTime);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "modbus:/dev/x,register=0,id=1|modbus:/dev/x,register=0,id=2",
                "modbus:/dev/x,register=0|modbus:/dev/x,register=1",
                "modbus:/dev/x,register=0,function=3|modbus:/dev/x,register=0,function=4",
                "modbus:/dev/x,register=0|modbus:/dev/x,register=1,baud=9600,parity=even,databits=8,stopbits=1",
                "modbus:/dev/x,register=0,baud=9600|modbus:/dev/y,register=0,baud=19200",
                "text:/dev/x|scpi:/dev/y"
            })
    void probesThatGoTogether_areOpenedInTheirOrder(String pan, String other) {
        assertThat(open(pan, other)).extracting(Probe::name).containsExactly("pan", "sugar");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "text:/dev/x|text:/dev/x|probes pan and sugar cannot both have the port /dev/x: only probes of kind",
                "text:/dev/x|auto:/dev/x|cannot both have the port /dev/x",
                "json:/dev/x,field=t|modbus:/dev/x,register=0|cannot both have the port /dev/x",
                "modbus:/dev/x,register=0|scpi:/dev/x|cannot both have the port /dev/x",
                "scpi:/dev/x|scpi:/dev/x|cannot both have the port /dev/x",
                "modbus:/dev/x,register=0|modbus:/dev/x,register=1,baud=19200|9600 baud 8E1 and the other at 19200",
                "modbus:/dev/x,register=0|modbus:/dev/x,register=1,parity=none|share /dev/x, but one is at",
                "modbus:/dev/x,register=0,id=3|modbus:/dev/x,register=0,id=3,type=float|read the same register"
            })
    void probesThatDoNotGoTogether_areNamedInOneLine(String pan, String other, String message) {
        assertThatThrownBy(() -> open(pan, other))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(message)
                .hasMessageNotContaining("\n");
    }

    @Test
    void onePortUnderTwoNames_isFoundOut() throws IOException {
        Path port = Files.createFile(folder.resolve("port"));
        Path link = Files.createSymbolicLink(folder.resolve("link"), port);
        assertThatThrownBy(() -> open("text:" + port, "text:" + link))
                .hasMessageContaining("cannot both have the port " + port);
        assertThatThrownBy(() -> open("modbus:" + port + ",register=0", "modbus:" + link + ",register=1"))
                .hasMessageContaining("the same port under two names, " + port + " and " + link);
    }

    @Test
    void oneNameForTwo_isRefused() {
        NamedSpec pan = new NamedSpec("pan", ProbeSpec.parse("text:/dev/x"));
        NamedSpec same = new NamedSpec("pan", ProbeSpec.parse("text:/dev/y"));
        assertThatThrownBy(() -> Probes.openAll(List.of(pan, same), System::nanoTime))
                .hasMessage("two probes are called pan; give each a name of its own");
    }
}
