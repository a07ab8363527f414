package spoonfall.probe.line;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import spoonfall.probe.line.LineSplitter.Line;

final class LineSplitterTest {
    private static List<Line> split(byte[] bytes) {
        List<Line> lines = new ArrayList<>();
        new LineSplitter().feed(bytes, bytes.length, lines::add);
        return lines;
    }

    private static List<Line> split(String text) {
        return split(text.getBytes(StandardCharsets.UTF_8));
    }

    @ParameterizedTest
    @ValueSource(strings = {"\n", "\r", "\r\n"})
    void everyLineEnd_endsALine(String end) {
        assertThat(split("x" + end + "98.4" + end + "98.5" + end))
                .containsExactly(new Line.Text("98.4"), new Line.Text("98.5"));
    }

    @Test
    void aPauseWithinALine_isTheEndOfIt_unlessItsEndComesNext() {
        List<LineSplitter.Line> lines = new ArrayList<>();
        LineSplitter splitter = new LineSplitter();
        feed(splitter, "\n98.4", lines);
        splitter.pause();
        feed(splitter, "\n98.5\n1", lines);
        splitter.pause();
        feed(splitter, "98.6\n98.7\n", lines);
        splitter.pause();
        feed(splitter, "98.8\n", lines);
        assertThat(lines)
                .extracting(line -> ((LineSplitter.Line.Text) line).text())
                .containsExactly("98.4", "98.5", "98.7", "98.8");
    }

    private static void feed(LineSplitter splitter, String text, List<LineSplitter.Line> lines) {
        byte[] bytes = text.getBytes(StandardCharsets.US_ASCII);
        splitter.feed(bytes, bytes.length, lines::add);
    }

    @Test
    void whatComesBeforeTheFirstLineEnd_isThrownAway() {
        assertThat(split("8.4\n98.5\n")).containsExactly(new Line.Text("98.5"));
    }

    @Test
    void afterRestart_theFirstPieceIsThrownAwayAgain() {
        List<Line> lines = new ArrayList<>();
        LineSplitter splitter = new LineSplitter();
        byte[] begun = "\n98.4\n98.".getBytes(StandardCharsets.UTF_8);
        splitter.feed(begun, begun.length, lines::add);
        splitter.restart();
        byte[] next = "7\n99.1\n".getBytes(StandardCharsets.UTF_8);
        splitter.feed(next, next.length, lines::add);
        assertThat(lines).containsExactly(new Line.Text("98.4"), new Line.Text("99.1"));
    }

    @Test
    void degreeSigns_areReadInUtf8AndInLatin1() {
        assertThat(split("\n98.4 °C\n")).containsExactly(new Line.Text("98.4 °C"));
        assertThat(split("\n98.4 °C\n".getBytes(StandardCharsets.ISO_8859_1)))
                .containsExactly(new Line.Text("98.4 °C"));
    }

    @Test
    void aLineOfAMegabyte_isReportedOnceAndTheNextOneIsRead() {
        List<Line> lines = split("\n" + "7".repeat(1_000_000) + "\n98.4\n");
        assertThat(lines).hasSize(2);
        assertThat(lines.get(0)).isInstanceOf(Line.TooLong.class);
        assertThat(lines.get(1)).isEqualTo(new Line.Text("98.4"));
    }

    @Test
    void nulBytes_areNoText() {
        assertThat(split("\n98\0.4\n")).singleElement().isInstanceOf(Line.NotText.class);
    }

    @Test
    void endlessNoiseWithoutALineEnd_isReportedAsItComes() {
        byte[] noise = new byte[5000];
        Arrays.fill(noise, (byte) 0xf3);
        assertThat(split(noise)).hasSizeGreaterThan(5).allMatch(line -> line instanceof Line.NotText);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void anyWayOfCuttingTheBytes_givesTheSameLines(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        byte[] bytes = new byte[20_000];
        for (int i = 0; i < bytes.length; i++) {
            int kind = random.nextInt(20);
            bytes[i] = kind == 0
                    ? (byte) '\n'
                    : kind == 1 ? (byte) random.nextInt(256) : (byte) ('0' + random.nextInt(10));
        }
        List<Line> pieces = new ArrayList<>();
        LineSplitter splitter = new LineSplitter();
        for (int at = 0; at < bytes.length; ) {
            int count = Math.min(bytes.length - at, 1 + random.nextInt(700));
            splitter.feed(Arrays.copyOfRange(bytes, at, at + count), count, pieces::add);
            at += count;
        }
        assertThat(pieces).as("seed %d", seed).isEqualTo(split(bytes));
    }

    @Test
    void whatIsGluedToNoise_isNotTakenForAWholeLine() {
        byte[] noise = new byte[199];
        Arrays.fill(noise, (byte) 0xf3);
        List<Line> lines = new ArrayList<>();
        LineSplitter splitter = new LineSplitter();
        for (byte[] part : List.of(bytes("\n"), noise, bytes("98.4\n99.1\n"))) {
            splitter.feed(part, part.length, lines::add);
        }
        assertThat(lines).hasSize(2);
        assertThat(lines.get(0)).isInstanceOf(Line.NotText.class);
        assertThat(lines.get(1)).isEqualTo(new Line.Text("99.1"));
    }

    @Test
    void aLineWithoutEnd_isReportedOnceWhileItGoesOn() {
        assertThat(split("\n" + "7".repeat(100_000))).singleElement().isInstanceOf(Line.TooLong.class);
        assertThat(split("7".repeat(100_000))).singleElement().isInstanceOf(Line.TooLong.class);
    }

    @ParameterizedTest
    @ValueSource(ints = {195, 196, 197, 198, 199, 200, 201})
    void aLongLine_isTextWhereverItsDegreeSignStands(int before) {
        String line = "a".repeat(before) + "°C 98.4";
        assertThat(split("\n" + line + "\n")).containsExactly(new Line.Text(line));
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
