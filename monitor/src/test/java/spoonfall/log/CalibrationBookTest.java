package spoonfall.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spoonfall.calibration.Correction;
import spoonfall.calibration.Point;
import spoonfall.calibration.Reference;

final class CalibrationBookTest {
    @TempDir
    Path folder = Path.of("");

    private CalibrationBook book() {
        return new CalibrationBook(folder.resolve("new").resolve("calibrations.json"));
    }

    private static CalibrationBook.Entry entry(String probe, double shownC) {
        Correction correction = new Correction(List.of(
                new Point(Reference.boilingWater(95.8, 0.4), shownC, 0.02), new Point(Reference.ice(), 0.1, 0.01)));
        return new CalibrationBook.Entry(
                probe, probe, Instant.parse("2026-11-25T18:00:00Z"), "1,240 m above sea level", false, correction);
    }

    @Test
    void aCalibration_isKeptForItsThermometer() {
        book().add(entry("/dev/a", 95.2));
        book().add(entry("/dev/b", 96.2));
        assertThat(book().latest("/dev/a")).contains(entry("/dev/a", 95.2));
        assertThat(book().latest("/dev/c")).isEmpty();
    }

    @Test
    void undoing_bringsTheOneBeforeBackAndForgetsNone() {
        book().add(entry("/dev/a", 95.2));
        book().add(entry("/dev/a", 95.4));
        assertThat(book().undo("/dev/a")).contains(entry("/dev/a", 95.4));
        assertThat(book().latest("/dev/a")).contains(entry("/dev/a", 95.2));
        assertThat(book().entries()).hasSize(2);
        book().undo("/dev/a");
        assertThat(book().undo("/dev/a")).isEmpty();
    }

    @Test
    void aBookOfTheFirstVersion_isStillRead() throws IOException {
        Path file = folder.resolve("new").resolve("calibrations.json");
        Files.createDirectories(folder.resolve("new"));
        Files.writeString(file, """
                [{"probe":"/dev/a","at":"2026-11-25T18:00:00Z","conditions":"1,240 m above sea level","points":[
                  {"reference":"boiling-water","referenceC":95.8,"referenceLimitC":0.4,"shownC":95.2,"shownUncertaintyC":0.02}]}]
                """);
        CalibrationBook.Entry old = book().latest("/dev/a").orElseThrow();
        assertThat(old.place()).isEqualTo("/dev/a");
        assertThat(old.correction().points().get(0).shownUncertaintyC()).isEqualTo(0.02);
    }

    @Test
    void aBrokenBook_isNamedAndLeftAsItIs() throws IOException {
        book().add(entry("/dev/a", 95.2));
        Path file = folder.resolve("new").resolve("calibrations.json");
        Files.writeString(file, "[\n{oops");
        assertThatThrownBy(() -> book().add(entry("/dev/a", 95.4))).hasMessageContaining(file + ", line 2 is not JSON");
        assertThat(file).hasContent("[\n{oops");
        Files.writeString(file, "[{\"probe\":\"/dev/a\",\"at\":\"2026-11-25T18:00:00Z\",\"points\":[]}]");
        assertThatThrownBy(() -> book().latest("/dev/a"))
                .hasMessageContaining("cannot be: a calibration has one point");
    }

    @Test
    void aBookThatCannotBeWritten_leavesNoPartsBehind() throws IOException {
        Path taken = Files.createDirectories(folder.resolve("data").resolve("calibrations.json"));
        Files.writeString(taken.resolve("in the way"), "");
        JsonList list = new JsonList(taken, "calibrations", 1);
        assertThatThrownBy(() -> list.write(CookJson.object().putArray("none")))
                .isInstanceOf(UncheckedIOException.class);
        try (Stream<Path> left = Files.list(folder.resolve("data"))) {
            assertThat(left).containsExactly(taken);
        }
    }
}
