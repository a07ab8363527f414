package spoonfall.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class ScienceTest {
    private static final Path DOCS = Path.of("../docs");
    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @TempDir
    Path folder = Path.of("");

    private int science() {
        return Main.run(new PrintWriter(out, true), new PrintWriter(err, true), "science", "--into", folder.toString());
    }

    @Test
    void thePageAndThePlot_areWhatTheProgramGivesNow() throws IOException {
        Files.copy(DOCS.resolve("science.md"), folder.resolve("science.md"));
        assertThat(science()).isZero();
        String hint = "run: ./spoonfall science --into docs";
        assertThat(folder.resolve("science.md"))
                .as(hint)
                .content()
                .isEqualTo(Files.readString(DOCS.resolve("science.md")));
        assertThat(folder.resolve("science-syrup.svg"))
                .as(hint)
                .content()
                .isEqualTo(Files.readString(DOCS.resolve("science-syrup.svg")));
    }

    @Test
    void oldFigures_areReplacedAndTheProseIsKept() throws IOException {
        String page = Files.readString(DOCS.resolve("science.md"));
        Files.writeString(folder.resolve("science.md"), page.replace("| Browne (1912) | 66 % | 4.8 |", "| old |"));
        assertThat(science()).isZero();
        assertThat(folder.resolve("science.md")).content().isEqualTo(page);
    }

    @Test
    void aPageWithoutAPlaceForFigures_isLeftAlone() throws IOException {
        Path page = Files.writeString(folder.resolve("science.md"), "# The science\n");
        assertThat(science()).isEqualTo(1);
        assertThat(err.toString()).contains("has no place for figures", "science.md");
        assertThat(page).content().isEqualTo("# The science\n");
    }

    @Test
    void aFolderWithoutThePage_isNamed() {
        assertThat(science()).isEqualTo(1);
        assertThat(err.toString()).contains("there is no file", "science.md", "--into");
    }
}
