package spoonfall.probe.line;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import spoonfall.probe.line.Recogniser.Verdict;

final class RecogniserTest {
    private static Verdict verdict(String... lines) {
        Recogniser recogniser = new Recogniser("/dev/ttyUSB0", 9600, Optional.empty());
        for (String line : lines) {
            recogniser.hear(new LineSplitter.Line.Text(line));
        }
        return recogniser.verdict();
    }

    private static Verdict.Recognised recognised(String... lines) {
        assertThat(verdict(lines)).isInstanceOf(Verdict.Recognised.class);
        return (Verdict.Recognised) verdict(lines);
    }

    private static String refused(String... lines) {
        assertThat(verdict(lines)).isInstanceOf(Verdict.Refused.class);
        return ((Verdict.Refused) verdict(lines)).why();
    }

    private static double read(Verdict.Recognised recognised, String line) {
        return recognised.format().parse(line).temperatureC().orElseThrow();
    }

    @Test
    void oneNumberALine_isRecognised() {
        Verdict.Recognised it = recognised("98.4", "98.5", "98.5");
        assertThat(it.why()).contains("One number a line", "°C", "unit=F");
        assertThat(read(it, "98.6")).isEqualTo(98.6);
    }

    @Test
    void aUnitThatIsWritten_isTaken() {
        assertThat(read(recognised("208.4 F", "208.6 F"), "212 F")).isEqualTo(100);
    }

    @Test
    void numbersThatNoPanReachesInCelsius_areTakenForFahrenheitOrKelvin() {
        assertThat(recognised("208.4", "208.6").why()).contains("°F");
        assertThat(recognised("371.5", "371.6").why()).contains("K");
    }

    @Test
    void aDecimalComma_isRecognised() {
        Verdict.Recognised it = recognised("98,4", "98,5", "98,4");
        assertThat(it.why()).contains("decimal comma");
        assertThat(read(it, "98,6")).isEqualTo(98.6);
    }

    @Test
    void aBannerBeforeTheReadings_doesNotMatter() {
        assertThat(read(recognised("thermometer ready", "98.4", "98.5"), "98.6"))
                .isEqualTo(98.6);
    }

    @Test
    void twoColumns_areNotGuessedBetween() {
        assertThat(refused("98.4 23.1", "98.5 23.1")).contains("1 (98.5)", "2 (23.1)", "text:/dev/ttyUSB0,column=1");
    }

    @Test
    void oneColumnThatSaysItIsATemperature_isTakenAndSaid() {
        Verdict.Recognised it = recognised("elapsed_s,temp_c", "1,98.4", "2,98.5");
        assertThat(it.why()).contains("column temp_c", "only one that says it is a temperature");
        assertThat(read(recognised("1 98.4C", "2 98.5C"), "3 98.6C")).isEqualTo(98.6);
    }

    @Test
    void aColumnThatCannotBeATemperature_isPassedOver() {
        assertThat(read(recognised("120100 98.4", "120200 98.5"), "120300 98.6"))
                .isEqualTo(98.6);
    }

    @Test
    void jsonWithOneNumber_isRecognised() {
        assertThat(read(recognised("{\"t\": 98.4}", "{\"t\": 98.5}"), "{\"t\": 98.6}"))
                .isEqualTo(98.6);
    }

    @Test
    void jsonWithTwoCandidates_isNotGuessedBetween() {
        assertThat(refused("{\"a\": 98.4, \"b\": 23.1}")).contains("a (98.4)", "b (23.1)", "json:/dev/ttyUSB0,field=a");
    }

    @Test
    void silenceAndNoise_areToldApart() {
        assertThat(refused()).contains("sends nothing");
        Recogniser noisy = new Recogniser("/dev/ttyUSB0", 9600, Optional.empty());
        noisy.hear(new LineSplitter.Line.NotText("???"));
        assertThat(((Verdict.Refused) noisy.verdict()).why()).contains("no text at 9600 baud", "baud=115200");
    }

    @Test
    void wordsAlone_areRefusedWithAnExample() {
        assertThat(refused("hello", "world")).contains("\"world\"");
    }
}
