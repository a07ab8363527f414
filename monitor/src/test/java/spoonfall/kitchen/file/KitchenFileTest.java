package spoonfall.kitchen.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spoonfall.log.Keep;
import spoonfall.log.KeepRules;
import spoonfall.probe.NamedSpec;

final class KitchenFileTest {
    @TempDir
    Path folder = Path.of("");

    private Path file(String toml) throws IOException {
        return Files.writeString(folder.resolve("kitchen.toml"), toml);
    }

    @Test
    void aWholeKitchen_isRead() throws IOException {
        KitchenFile kitchen = KitchenFile.read(file("""
                name = "Hollin Bank"
                batch = "Seville orange and ginger, batch 14"
                elevation = "1240m"
                rise = "9F"
                port = 8461

                [[probe]]
                name = "pan"
                kind = "text"
                place = "/dev/ttyUSB0"
                baud = 115200
                column = 2
                unit = "F"
                """));
        assertThat(kitchen.name()).contains("Hollin Bank");
        assertThat(kitchen.elevationM()).contains(1240.0);
        assertThat(kitchen.riseC().orElseThrow()).isEqualTo(5, Offset.offset(1e-9));
        assertThat(kitchen.port()).hasValue(8461);
        NamedSpec probe = kitchen.probes().get(0);
        assertThat(probe.name()).isEqualTo("pan");
        assertThat(probe.spec().options()).containsEntry("baud", "115200").containsEntry("column", "2");
    }

    @Test
    void whatAKitchenDoesEachTime_isReadToo_withItsNotesBesideTheFile() throws IOException {
        Path file = file("""
                notes = "notes.toml"
                announce = "espeak-ng -s 140"
                announce-unit = "F"
                keep = "2 years"
                thin = "200 cooks"
                """);
        KitchenHabits habits = KitchenFile.read(file).habits();
        assertThat(habits.notes()).contains(file.resolveSibling("notes.toml"));
        assertThat(habits.announce()).contains("espeak-ng -s 140");
        assertThat(habits.announceUnit()).contains("F");
        assertThat(habits.keep().atAll()).isEqualTo(Keep.parse("2 years"));
        assertThat(habits.keep().whole()).isEqualTo(Keep.parse("200 cooks"));
        assertThat(KitchenFile.empty().habits().keep()).isEqualTo(KeepRules.EVERYTHING);
        for (String wrong : List.of("keep = \"2 weeks\"", "announce-unit = \"F\"", "keep = 2")) {
            assertThatThrownBy(() -> KitchenFile.read(file(wrong))).hasMessageContaining("line 1");
        }
    }

    @Test
    void severalProbes_keepTheirOrderAndGetNames() throws IOException {
        KitchenFile kitchen = KitchenFile.read(file("""
                [[probe]]
                place = "/dev/ttyUSB0"
                class = "t-1"

                [[probe]]
                place = "/dev/ttyUSB1"

                [[probe]]
                name = "clip"
                place = "/dev/ttyUSB2"
                """));
        assertThat(kitchen.probes().stream().map(NamedSpec::name)).containsExactly("pan", "second", "clip");
        assertThat(kitchen.probes().get(0).spec().limitC(100)).isEqualTo(0.5);
    }

    @Test
    void severalPans_haveTheirOwnBatchRiseAndProbes_andTheCannerIsKeptApart() throws IOException {
        KitchenFile kitchen = KitchenFile.read(file("""
                batch = "Seville orange"
                rise = "8F"

                [[pan]]
                name = "big pan"

                [[pan]]
                name = "small pan"
                batch = "Lemon and thyme"
                rise = "9F"

                [[probe]]
                place = "/dev/ttyUSB0"

                [[probe]]
                pan = "small pan"
                place = "/dev/ttyUSB1"

                [[probe]]
                in = "canner"
                place = "/dev/ttyUSB2"

                [[probe]]
                pan = "small pan"
                place = "/dev/ttyUSB3"
                """));
        PanEntry big = kitchen.pans().get(0);
        PanEntry small = kitchen.pans().get(1);
        assertThat(big.name()).isEqualTo("big pan");
        assertThat(big.batch()).contains("Seville orange");
        assertThat(big.riseC()).isEmpty();
        assertThat(big.probes().stream().map(NamedSpec::name)).containsExactly("big pan");
        assertThat(small.batch()).contains("Lemon and thyme");
        assertThat(small.riseC().orElseThrow()).isEqualTo(5, Offset.offset(1e-9));
        assertThat(small.probes().stream().map(NamedSpec::name)).containsExactly("small pan", "small pan 2");
        assertThat(kitchen.canner().orElseThrow().name()).isEqualTo("canner");
        assertThat(kitchen.canner().orElseThrow().spec().place()).isEqualTo("/dev/ttyUSB2");
        assertThat(kitchen.probes()).hasSize(3);
    }

    @Test
    void aFileThatSaysNothingOfPans_hasOne() throws IOException {
        KitchenFile kitchen = KitchenFile.read(file("""
                batch = "Seville orange"
                [[probe]]
                place = "/dev/ttyUSB0"
                """));
        assertThat(kitchen.pans()).hasSize(1);
        assertThat(kitchen.pans().get(0).name()).isEqualTo("pan");
        assertThat(kitchen.pans().get(0).batch()).contains("Seville orange");
        assertThat(kitchen.canner()).isEmpty();
    }

    @Test
    void instrumentsOnOneLine_mayBeInDifferentPans() throws IOException {
        KitchenFile kitchen = KitchenFile.read(file("""
                [[pan]]
                name = "big"
                [[pan]]
                name = "small"
                [[probe]]
                kind = "modbus"
                place = "/dev/ttyUSB0"
                register = 0
                [[probe]]
                pan = "small"
                kind = "modbus"
                place = "/dev/ttyUSB0"
                register = 1
                """));
        assertThat(kitchen.probes()).hasSize(2);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "[[pan]]\\nbatch = \"x\"|, line 1: pan: needs a name, such as name = \"big pan\"",
                "[[pan]]\\nname = \"a/b\"|, line 2: name: a pan's name is 1 to 40 letters",
                "[[pan]]\\nname = \"a\"\\n[[pan]]\\nname = \"a\"|, line 3: pan: two pans are called a",
                "[[pan]]\\nname = \"a\"\\nbach = \"x\"|, line 3: bach: is not a key of a kitchen file; did you mean batch?",
                "[[pan]]\\nname = \"a\"\\nrise = \"warm\"|, line 3: rise: ",
                "pan = \"a\"|, line 1: pan: must be a table of its own, headed [[pan]]",
                "[[pan]]\\nname = \"a\"\\n[[probe]]\\nplace = \"/dev/x\"\\npan = \"b\"|, line 5: pan: no [[pan]] is called b; there are a",
                "[[probe]]\\nplace = \"/dev/x\"\\npan = \"b\"|, line 3: pan: no [[pan]] is called b; give it a table [[pan]] with name = \"b\"",
                "[[probe]]\\nplace = \"/dev/x\"\\nin = \"jar\"|, line 3: in: must be \"pan\" or \"canner\", not \"jar\"",
                "[[pan]]\\nname = \"a\"\\n[[probe]]\\nplace = \"/dev/x\"\\nin = \"canner\"\\npan = \"a\"|, line 6: pan: a probe in the canner is in no pan",
                "[[probe]]\\nplace = \"/dev/x\"\\n[[probe]]\\nplace = \"/dev/x\"\\nin = \"canner\"|, line 3: probe: probes pan and canner cannot both have the port /dev/x",
                "[[pan]]\\nname = \"a\"\\n[[pan]]\\nname = \"b\"\\n[[probe]]\\nplace = \"/dev/x\"\\n[[probe]]\\nplace = \"/dev/x\"\\npan = \"b\"|, line 7: probe: probes a and b cannot both have the port /dev/x",
                "[[probe]]\\nplace = \"/dev/x\"\\nin = \"canner\"\\n[[probe]]\\nname = \"c\"\\nplace = \"/dev/y\"\\nin = \"canner\"|, line 4: probe: canner is in the canner already"
            })
    void aWrongPan_isNamedByFileLineAndKey(String toml, String message) throws IOException {
        aWrongKitchen_isNamedByFileLineAndKey(toml, message);
    }

    @Test
    void anEmptyFile_isAKitchen() throws IOException {
        assertThat(KitchenFile.read(file(""))).isEqualTo(KitchenFile.empty());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "name = \"x\"\\nelevaton = \"1240m\"|, line 2: elevaton: is not a key of a kitchen file; did you mean elevation?",
                "colour = \"blue\"|, line 1: colour: is not a key of a kitchen file; it can be name, batch",
                "elevation = \"-20000m\"|, line 1: elevation: elevation \"-20000m\" is not where anyone cooks",
                "elevation = 1240|, line 1: elevation: must be a text in quotes",
                "elevation = \"1240m\"\\npressure = \"898hPa\"|, line 2: pressure: give elevation or pressure, not both",
                "port = 99999|, line 1: port: must be a whole number from 0 to 65535",
                "name = |, line 1: Unexpected",
                "[[probe]]\\nkind = \"usb\"\\nplace = \"/dev/ttyUSB0\"|: probe: unknown kind of probe \"usb\"",
                "[[probe]]\\nkind = \"text\"|: probe: needs a place",
                "[[probe]]\\nplace = \"/dev/ttyUSB0\"\\nbuad = 9600|, line 3: buad: is not a key of a kitchen file; did you mean baud?",
                "[[probe]]\\nplace = \"/dev/ttyUSB0\"\\n[[probe]]\\nname = \"pan\"\\nplace = \"/dev/ttyUSB1\"|, line 3: probe: two probes are called pan"
            })
    void aWrongKitchen_isNamedByFileLineAndKey(String toml, String message) throws IOException {
        Path file = file(toml.replace("\\n", "\n"));
        assertThatThrownBy(() -> KitchenFile.read(file))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith(file.toString())
                .hasMessageContaining(message)
                .hasMessageNotContaining("\n");
    }

    @Test
    void aMissingFile_isNamed() {
        assertThatThrownBy(() -> KitchenFile.read(folder.resolve("none.toml")))
                .hasMessageContaining("there is no kitchen file");
    }
}
