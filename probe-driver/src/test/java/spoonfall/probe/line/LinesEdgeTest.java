package spoonfall.probe.line;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import spoonfall.probe.Quality;
import spoonfall.probe.Reading;

/** Lines and devices that lie just within or just beyond what is taken. */
final class LinesEdgeTest {
    private static List<LineSplitter.Line> split(byte[]... parts) {
        List<LineSplitter.Line> lines = new ArrayList<>();
        LineSplitter splitter = new LineSplitter();
        for (byte[] part : parts) {
            splitter.feed(part, part.length, lines::add);
        }
        return lines;
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.ISO_8859_1);
    }

    private static Recogniser.Verdict verdict(String... lines) {
        Recogniser recogniser = new Recogniser("/dev/ttyUSB0", 9600, Optional.empty());
        for (String line : lines) {
            recogniser.hear(new LineSplitter.Line.Text(line));
        }
        return recogniser.verdict();
    }

    private static String refused(String... lines) {
        assertThat(verdict(lines)).isInstanceOf(Recogniser.Verdict.Refused.class);
        return ((Recogniser.Verdict.Refused) verdict(lines)).why();
    }

    private static Recogniser.Verdict.Recognised recognised(String... lines) {
        assertThat(verdict(lines)).isInstanceOf(Recogniser.Verdict.Recognised.class);
        return (Recogniser.Verdict.Recognised) verdict(lines);
    }

    private static double read(LineFormat format, String line) {
        return format.parse(line).temperatureC().orElseThrow();
    }

    @Test
    void theLongestLine_isALine_andOneByteMoreIsTooLong() {
        String longest = "7".repeat(LineSplitter.LONGEST);
        assertThat(split(bytes("\n" + longest + "\n"))).containsExactly(new LineSplitter.Line.Text(longest));
        assertThat(split(bytes("\n" + longest + "7\n98.4\n")))
                .containsExactly(new LineSplitter.Line.TooLong("7".repeat(60)), new LineSplitter.Line.Text("98.4"));
    }

    @Test
    void noise_isShownByItsFirstBytes_asSoonAsThereAreEnough() {
        byte[] noise = new byte[200];
        Arrays.fill(noise, (byte) 0xf3);
        assertThat(split(bytes("\n"), noise))
                .singleElement()
                .isInstanceOfSatisfying(
                        LineSplitter.Line.NotText.class,
                        line -> assertThat(line.sample()).hasSize(60));
        assertThat(split(bytes("\n"), Arrays.copyOf(noise, 199))).isEmpty();
    }

    @Test
    void aLongLineThatTurnsToNoise_isCutOffThere() {
        assertThat(split(bytes("\n" + "7".repeat(300) + "\0")))
                .singleElement()
                .isInstanceOf(LineSplitter.Line.NotText.class);
        assertThat(split(bytes("\n" + "7".repeat(100) + "\0"))).isEmpty();
    }

    @Test
    void onlyTheDegreeSignsOfLatin1_areTextThatIsNoUtf8() {
        assertThat(split(bytes("\n98.4 \u00b0C\n98.5 \u00baC\n98.6 \u00e9\n")))
                .satisfiesExactly(
                        line -> assertThat(line).isEqualTo(new LineSplitter.Line.Text("98.4 °C")),
                        line -> assertThat(line).isEqualTo(new LineSplitter.Line.Text("98.5 ºC")),
                        line -> assertThat(line).isInstanceOf(LineSplitter.Line.NotText.class));
    }

    @Test
    void afterRestart_nothingIsLeftOfALineThatWasTooLong() {
        List<LineSplitter.Line> lines = new ArrayList<>();
        LineSplitter splitter = new LineSplitter();
        byte[] endless = bytes("\n" + "7".repeat(5000));
        splitter.feed(endless, endless.length, lines::add);
        splitter.restart();
        byte[] again = bytes("7".repeat(5000));
        splitter.feed(again, again.length, lines::add);
        assertThat(lines).hasSize(2).allMatch(line -> line instanceof LineSplitter.Line.TooLong);
    }

    @Test
    void quotedCells_areReadWithoutTheirQuotes() {
        TextLines pan = new TextLines(Optional.of("pan"), Optional.empty(), false);
        assertThat(pan.parse("\"time\",\"pan\"").quality()).isEqualTo(Quality.NO_NUMBER);
        assertThat(read(pan, "\"1\",\"98.4\"")).isEqualTo(98.4);
        TextLines quote = new TextLines(Optional.of("2"), Optional.empty(), false);
        assertThat(quote.parse("1,\"").quality()).isEqualTo(Quality.NO_NUMBER);
        assertThat(read(quote, "1,\"98.4")).isEqualTo(98.4);
    }

    @Test
    void aNameInACellOfItsOwn_hasItsValueInTheNextOne() {
        TextLines pan = new TextLines(Optional.of("pan"), Optional.empty(), false);
        assertThat(read(pan, "room;23.1;pan;98.4")).isEqualTo(98.4);
        assertThat(pan.parse("room;23.1;pan").quality()).isEqualTo(Quality.NO_NUMBER);
        assertThat(read(new TextLines(Optional.of("T1"), Optional.empty(), false), "xT1: 5 T1: 98.4"))
                .isEqualTo(98.4);
    }

    @Test
    void aFormat_saysWhatItReads() {
        assertThat(new TextLines(Optional.of("2"), Optional.of(TemperatureUnit.F), true).description())
                .isEqualTo("column 2, in °F, with a decimal comma");
        assertThat(new TextLines(Optional.empty(), Optional.empty(), false).description())
                .isEqualTo("one number a line, in the unit it names, else °C");
        assertThat(new JsonLines("t.pan", Optional.of(TemperatureUnit.K)).description())
                .isEqualTo("field t.pan of JSON lines, in K");
    }

    @Test
    void manyColumns_areNotAllNamed() {
        String line = String.join(
                ",", IntStream.range(20, 320).mapToObj(String::valueOf).toList());
        assertThat(refused(line, line))
                .contains("1 (20.0), 2 (21.0)", "6 (25.0) and 294 more")
                .doesNotContain("7 (");
        assertThat(refused("20,21,22,23,24,25", "20,21,22,23,24,25"))
                .contains("6 (25.0).")
                .doesNotContain("more");
    }

    @Test
    void manyOrLongFields_areNotAllNamed() {
        String name = "x".repeat(500);
        assertThat(refused("{\"" + name + "a\":98.4,\"" + name + "b\":23.1}"))
                .hasSizeLessThan(400)
                .contains("x".repeat(39) + "…");
        assertThat(Candidates.shortened("y".repeat(40))).isEqualTo("y".repeat(40));
        assertThat(refused("z".repeat(40))).contains("z".repeat(40));
        assertThat(refused("z".repeat(41))).contains("z".repeat(39) + "…\"");
    }

    @Test
    void aFieldWithinAnObject_isFound() {
        assertThat(read(recognised("{\"pan\":{\"temp\":98.4},\"n\":\"x\"}").format(), "{\"pan\":{\"temp\":99.1}}"))
                .isEqualTo(99.1);
    }

    @Test
    void theEndsOfWhatAThermometerShows_areCandidates() {
        assertThat(recognised("0,98.4", "999,98.5").why()).contains("column 2");
        String hottest = String.valueOf(Reading.HIGHEST_C);
        String coldest = String.valueOf(Reading.LOWEST_C);
        assertThat(refused("98.4," + hottest, "98.4," + coldest)).contains("Several columns");
        assertThat(recognised("98.4,nan", "98.4,nan").why()).contains("column 1");
    }

    @Test
    void whatFourOfFiveLinesDo_isTheRule() {
        assertThat(recognised("98.4", "98.5", "98.6", "98.7", "98.8 1").why()).contains("One number a line");
        assertThat(refused("98.4", "98.5", "98.6", "98.7 1", "98.8 1")).contains("without a number that could be");
        String json = "{\"temp\":98.4}";
        assertThat(recognised(json, json, json, json, "ready").why()).contains("JSON lines");
        assertThat(verdict(json, json, json, "ready", "go")).isNotEqualTo(verdict(json, json, json, json, "ready"));
        assertThat(recognised("98,4", "98,5", "98,6", "98,7", "100").why()).contains("decimal comma");
    }

    @Test
    void commasWithDigitsOnBothSides_areNoDecimalSigns_whereThereIsAPointOrTwoCommas() {
        assertThat(refused("98,4.0", "98,5.0")).contains("Several columns");
        assertThat(refused("98,4,55", "98,5,55")).contains("Several columns");
        assertThat(read(recognised("500,1;98,4 C", "500,1;98,5 C").format(), "500,1;98,6 C"))
                .isEqualTo(98.6);
    }

    @Test
    void aLotOfLines_isEnough() {
        Recogniser recogniser = new Recogniser("/dev/ttyUSB0", 9600, Optional.empty());
        IntStream.range(0, 500).forEach(i -> recogniser.hear(new LineSplitter.Line.Text("98.4")));
        IntStream.range(0, 5000).forEach(i -> recogniser.hear(new LineSplitter.Line.Text("ready 1 2 3")));
        assertThat(recogniser.verdict()).isInstanceOf(Recogniser.Verdict.Recognised.class);
    }

    @Test
    void bytesOfText_areNoNoise_andAFewStrangeOnesDoNotMakeIt() {
        for (String text : List.of(" ~\t\r\n98.4", "98.4\0")) {
            Recogniser recogniser = new Recogniser("/dev/ttyUSB0", 9600, Optional.empty());
            recogniser.hear(bytes(text), text.length());
            assertThat(((Recogniser.Verdict.Refused) recogniser.verdict()).why())
                    .contains("no whole line so far");
        }
        Recogniser noise = new Recogniser("/dev/ttyUSB0", 115_200, Optional.empty());
        noise.hear(bytes("98\0\0\0\0"), 6);
        assertThat(((Recogniser.Verdict.Refused) noise.verdict()).why()).contains("no text at 115200", "baud=9600");
    }
}
