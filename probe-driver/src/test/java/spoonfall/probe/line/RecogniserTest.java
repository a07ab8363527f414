package spoonfall.probe.line;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
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

    @Test
    void aUnitThatChangesOnTheDevice_isFollowed() {
        Verdict.Recognised it = recognised("98.4 C", "98.5 C", "98.5 C");
        assertThat(read(it, "212 F")).isEqualTo(100);
        assertThat(read(recognised("208.4 F", "208.6 F"), "212")).isEqualTo(100);
    }

    @Test
    void aUnitInAName_isTakenAndSaid() {
        Verdict.Recognised json = recognised("{\"temp_f\": 68.0}", "{\"temp_f\": 68.0}");
        assertThat(json.why()).contains("°F as its name says");
        assertThat(read(json, "{\"temp_f\": 212}")).isEqualTo(100);
        Verdict.Recognised csv = recognised("n,Temperature (F)", "1,68.0", "2,68.0");
        assertThat(csv.why()).contains("°F as its name says");
        assertThat(read(csv, "3,212")).isEqualTo(100);
    }

    @Test
    void sensorsOnLinesOfTheirOwn_areNotGuessedBetween() {
        assertThat(refused("T1: 98.4 C", "T2: 23.1 C", "T1: 98.5 C", "T2: 23.1 C"))
                .contains("T1 (98.5)", "T2 (23.1)", "text:/dev/ttyUSB0,column=T1");
    }

    @Test
    void theOnlyNamedLineThatSaysItIsATemperature_isTaken() {
        Verdict.Recognised it = recognised("Temp: 98.4", "Hum: 45.0", "Temp: 98.5", "Hum: 45.1");
        assertThat(read(it, "Temp: 98.6")).isEqualTo(98.6);
        assertThat(it.format().parse("Hum: 45.1").temperatureC()).isEmpty();
    }

    @Test
    void namesThatOnlyCount_areNoSensors() {
        assertThat(read(recognised("n1: 98.4", "n2: 98.4", "n3: 98.5", "n4: 98.5", "n5: 98.5"), "n6: 98.6"))
                .isEqualTo(98.6);
    }

    @Test
    void columnsOfOneName_areNotGuessedBetween() {
        assertThat(refused("temp,temp", "98.4,23.1", "98.5,23.1")).contains("1", "(98.5)", "2", "(23.1)", "column=1");
    }

    @Test
    void aBannerOfTwoWords_isNoHeading() {
        assertThat(refused("Temperature logger", "1 98.4", "2 98.5")).contains("column=1");
    }

    @Test
    void headedColumns_areOfferedByNumberForTheirHeadingMayNotComeAgain() {
        assertThat(refused("pan,room", "98.4,23.1", "98.5,23.1")).contains("pan (98.5)", "room (23.1)", "column=1");
    }

    @Test
    void aColumnWithoutHeading_hasItsNumber() {
        assertThat(read(recognised("temp;;", "98.4;23.1;1", "98.5;23.1;1"), "98.6;23.1;1"))
                .isEqualTo(98.6);
        assertThat(refused(";b;c", "98.4;23.1;1", "98.5;23.1;1")).contains("1 (98.5)", "b (23.1)");
    }

    @Test
    void bytesWithoutALine_areNotCalledSilence() {
        Recogniser noisy = new Recogniser("/dev/ttyUSB0", 9600, Optional.empty());
        byte[] strange = {(byte) 0xf3, (byte) 0x81, 7, (byte) 0xf3, 9, (byte) 0x99};
        noisy.hear(strange, strange.length);
        assertThat(((Verdict.Refused) noisy.verdict()).why()).contains("no text at 9600 baud", "baud=115200");
        Recogniser slow = new Recogniser("/dev/ttyUSB0", 9600, Optional.empty());
        slow.hear("98.4 98.4".getBytes(StandardCharsets.UTF_8), 9);
        assertThat(((Verdict.Refused) slow.verdict()).why()).contains("no whole line", "9600 baud");
    }

    @Test
    void aLineThatNeverEnds_isNotCalledUnreadable() {
        Recogniser endless = new Recogniser("/dev/ttyUSB0", 9600, Optional.empty());
        endless.hear(new LineSplitter.Line.TooLong("98.498.4"));
        assertThat(((Verdict.Refused) endless.verdict()).why()).contains("longer than 4096 bytes");
    }
}
