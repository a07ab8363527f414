package spoonfall.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spoonfall.cook.Cooks;
import spoonfall.lab.Scenario;
import spoonfall.probe.trace.Trace;

final class LogTest {
    @TempDir
    private Path folder;

    private String said = "";

    private int run(String... args) {
        StringWriter text = new StringWriter();
        List<String> all = new ArrayList<>(List.of(args));
        all.addAll(
                args[0].equals("log") ? 1 : all.size(),
                List.of("--data", folder.resolve("data").toString()));
        int code = Main.run(new PrintWriter(text), new PrintWriter(text), all.toArray(String[]::new));
        said = text.toString();
        return code;
    }

    @Test
    void aTrace_goesInAndComesOutAgain_theSame() throws IOException {
        Trace trace = Cooks.trace(Scenario.STALL, 4);
        Path in = folder.resolve("in.csv");
        Path out = folder.resolve("out.csv");
        trace.write(in);
        assertThat(run("log", "import", in.toString())).isZero();
        assertThat(run("log", "list")).isZero();
        assertThat(said).contains(trace.size() + " readings").contains("(imported)");
        assertThat(run("log", "show", "1")).isZero();
        assertThat(said)
                .contains("stalled: It is cooling", "rolling boil", "  at the setting point\n")
                .doesNotContain("gel point", "test window");
        assertThat(run("log", "note", "1", "a little", "dark")).isZero();
        assertThat(run("log", "note", "1", "two\nlines")).isEqualTo(2);
        assertThat(said).contains("U+000A").contains("in one line");
        assertThat(run("log", "note", "2", "x")).isOne();
        assertThat(said).contains("there is no cook 2");
        assertThat(run("log", "show", "1")).isZero();
        assertThat(said).contains("note: a little dark");
        assertThat(run("log", "export", "1", out.toString())).isZero();
        assertThat(Files.readString(out)).isEqualTo(Files.readString(in));
        Trace back = Trace.read(out);
        assertThat(back.info().notes()).extracting(note -> note.text()).containsExactly("a little dark");
        assertThat(run("log", "import", out.toString())).isZero();
        assertThat(run("log", "show", "2")).isZero();
        assertThat(said).contains("note: a little dark");
        assertThat(run("log", "delete", "2", "--yes")).isZero();
        assertThat(Cooks.raised(Cooks.events(back.with(trace.info())))).isEqualTo(Cooks.raised(Cooks.events(trace)));
        assertThat(run("log", "export", "1", out.toString())).isOne();
        assertThat(said).contains("is there already");

        Path copy = folder.resolve("copy.db");
        assertThat(run("backup", copy.toString())).isZero();
        assertThat(run("backup", copy.toString())).isOne();
        assertThat(said).contains("is there already");

        assertThat(run("log", "thin", "--older-than", "0", "--yes")).isZero();
        assertThat(said).contains("Thinned out");
        assertThat(run("log", "show", "1")).isZero();
        assertThat(said).contains("stalled: It is cooling");
        assertThat(run("log", "delete", "1", "--yes")).isZero();
        assertThat(run("log", "show", "1")).isOne();
        assertThat(said).contains("there is no cook 1");

        Files.createDirectories(folder.resolve("again"));
        Files.move(copy, folder.resolve("data").resolve("cooks.db"), java.nio.file.StandardCopyOption.REPLACE_EXISTING);
        assertThat(run("log", "list")).isZero();
        assertThat(said).contains(trace.size() + " readings");
    }

    @Test
    void anOutcome_isSaidAndSeen_andABatchGoesOutOnPaper() throws IOException {
        Path in = folder.resolve("in.csv");
        Cooks.trace(Scenario.CLEAN, 4).write(in);
        assertThat(run("log", "import", in.toString())).isZero();
        assertThat(run("log", "outcome", "1")).isZero();
        assertThat(said).contains("Nobody said how it came out yet");
        assertThat(run("log", "outcome", "1", "--set", "firm", "--taste", "bright,bitter", "--jars", "6"))
                .isZero();
        assertThat(run("log", "outcome", "1", "--after", "month", "--fruit", "Quince", "--words", "keeps well"))
                .isZero();
        assertThat(said)
                .contains("Cook 1, Quince, 6 jars.")
                .contains("after a day: firm; tastes bright and bitter")
                .contains("after a month: not said how it set; keeps well");
        assertThat(run("log", "outcome", "1", "--taste", "none")).isZero();
        assertThat(said).contains("after a day: firm\n");
        assertThat(run("log", "outcome", "1", "--set", "hard")).isEqualTo(2);
        assertThat(said).contains("runny, soft, right, firm, stiff");
        Path labels = folder.resolve("labels.pdf");
        assertThat(run("log", "labels", "1", labels.toString())).isZero();
        assertThat(said).contains("Wrote 6 labels on 1 page");
        assertThat(run("log", "labels", "1", labels.toString())).isOne();
        assertThat(said).contains("is there already");
        assertThat(run("log", "labels", "1", folder.resolve("labels.doc").toString()))
                .isEqualTo(2);
        Path report = folder.resolve("report.html");
        assertThat(run("log", "report", "1", report.toString())).isZero();
        assertThat(report).content().contains("After a day").doesNotContain("keeps well");
        Path whole = folder.resolve("cook.json");
        assertThat(run("log", "export", "1", whole.toString())).isZero();
        Path letter = folder.resolve("cook.txt");
        assertThat(run("log", "export", "1", letter.toString())).isEqualTo(2);
        assertThat(said).contains("call it cook.csv or cook.json");
        assertThat(letter).doesNotExist();
        assertThat(run("log", "import", whole.toString())).isZero();
        assertThat(run("log", "outcome", "2")).isZero();
        assertThat(said).contains("Cook 2, Quince, 6 jars.").contains("after a month: not said how it set; keeps well");
        assertThat(run("log", "photo", "1", whole.toString())).isOne();
        assertThat(said).contains("neither a JPEG nor a PNG");
        photosComeOutAsTheyAreKept();
        assertThat(run("log", "outcome", "4", "--set", "firm")).isOne();
        assertThat(said).contains("there is no cook 4");
    }

    private void photosComeOutAsTheyAreKept() throws IOException {
        Path png = folder.resolve("jar.png");
        ImageIO.write(new BufferedImage(40, 30, BufferedImage.TYPE_INT_RGB), "png", png.toFile());
        assertThat(run("log", "photo", "1", png.toString())).isZero();
        assertThat(run("log", "photos", "1", folder.toString())).isZero();
        assertThat(said).contains("Wrote 1 photo of cook 1 into");
        BufferedImage out = ImageIO.read(folder.resolve("cook-1-photo-1.jpg").toFile());
        assertThat(out.getWidth()).isEqualTo(40);
        assertThat(run("log", "photos", "1", folder.toString())).isOne();
        assertThat(said).contains("is there already");
        Path all = folder.resolve("with-photos.json");
        assertThat(run("log", "export", "1", all.toString())).isZero();
        assertThat(said).contains("its photos too");
        assertThat(run("log", "import", all.toString())).isZero();
        assertThat(run("log", "photos", "3", folder.toString())).isZero();
        assertThat(folder.resolve("cook-3-photo-2.jpg")).hasSameBinaryContentAs(folder.resolve("cook-1-photo-1.jpg"));
        Path spoilt = folder.resolve("spoilt.json");
        Files.writeString(spoilt, Files.readString(all).replaceFirst("\"jpeg\":\"[^\"]{40}", "\"jpeg\":\""));
        assertThat(run("log", "import", spoilt.toString())).isOne();
        assertThat(said).contains("spoilt.json is no cook: one of its photos: that is neither a JPEG nor a PNG");
    }

    @Test
    void whatIsNotThere_isSaidWithTheWayOut() {
        assertThat(run("log", "list")).isOne();
        assertThat(said).contains("nothing was recorded yet").contains("spoonfall serve");
        assertThat(run("backup", folder.resolve("copy.db").toString())).isOne();
    }
}
