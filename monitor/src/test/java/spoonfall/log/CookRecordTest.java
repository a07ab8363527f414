package spoonfall.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CookRecordTest {
    private static final int MILLION = 1_000_000;

    /** Readings of a probe that shows so many parts of a degree, a few milliseconds early or late. */
    private static double[][] climb(int count, double partsOfDegree, double offsetC, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double[][] readings = new double[count][];
        for (int i = 0; i < count; i++) {
            double t = (100L * i + random.nextInt(20)) / 1000.0;
            double shownC =
                    Math.round((95 + 0.0001 * i % 10 + 0.1 * random.nextDouble()) * partsOfDegree) / partsOfDegree;
            readings[i] = new double[] {t, shownC + offsetC};
        }
        return readings;
    }

    private static CookRecord of(double[][] readings) {
        CookRecord record = new CookRecord();
        for (double[] reading : readings) {
            record.add(reading[0], reading[1]);
        }
        return record;
    }

    private static void assertHolds(CookRecord record, double[][] readings) {
        assertThat(record.size()).isEqualTo(readings.length);
        for (int i = 0; i < readings.length; i++) {
            if (record.t(i) != readings[i][0] || record.temperatureC(i) != readings[i][1]) {
                assertThat(new double[] {record.t(i), record.temperatureC(i)})
                        .as("reading %d", i)
                        .containsExactly(readings[i]);
            }
        }
    }

    @Test
    void aMillionReadings_takeLittleRoom_andAreReadBackExactly() {
        double[][] readings = climb(MILLION, 10, 0, 7);
        CookRecord record = of(readings);
        assertHolds(record, readings);
        assertThat(record.bytes()).as("16 million unpacked").isLessThan(2_100_000);
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 4, 10, 16, 100, 1000, 18, 1e7})
    void whateverAThermometerShows_isReadBackExactly(double partsOfDegree) {
        double[][] shown = climb(5000, partsOfDegree, 0, 11);
        assertHolds(of(shown), shown);
        double[][] corrected = climb(5000, partsOfDegree, 0.45 / 7, 12); // no decimal any more
        assertHolds(of(corrected), corrected);
    }

    @Test
    void numbersThatNoThermometerShows_areReadBackBitByBit() {
        double[] odd = {-0.0, 0.0, Double.MAX_VALUE, -Double.MAX_VALUE, Double.MIN_VALUE, 1e17, 0.1 + 0.2, -40};
        CookRecord record = new CookRecord();
        for (int i = 0; i < 3000; i++) {
            record.add(i, odd[i % odd.length]);
        }
        for (int i = 0; i < 3000; i++) {
            assertThat(Double.doubleToRawLongBits(record.temperatureC(i)))
                    .isEqualTo(Double.doubleToRawLongBits(odd[i % odd.length]));
        }
    }

    @Test
    void beyondAMillion_theOlderHalfIsThinned_andTheRestIsAsItWas() {
        double[][] readings = climb(MILLION + 1, 10, 0, 3);
        CookRecord record = of(readings);
        assertThat(record.size()).isEqualTo(750_001);
        for (int i = 0; i < 250_000; i++) {
            assertThat(record.t(i) == readings[2 * i][0]).isTrue();
        }
        for (int i = 250_000; i < record.size(); i++) {
            assertThat(record.t(i) == readings[i + 250_000][0]).isTrue();
            assertThat(record.temperatureC(i) == readings[i + 250_000][1]).isTrue();
        }
    }

    @Test
    void readingsTakenAway_makeRoomForOthers_downToTheFirst() {
        double[][] readings = climb(2500, 10, 0, 5);
        CookRecord record = of(readings);
        assertThat(record.t(1500)).isEqualTo(readings[1500][0]); // unpacks what is then taken away
        for (int i = 2500; i > 1024; i--) {
            record.removeLast();
        }
        record.add(200, 50);
        assertThat(record.size()).isEqualTo(1025);
        assertThat(record.t(1023)).isEqualTo(readings[1023][0]);
        assertThat(record.temperatureC(1024)).isEqualTo(50);
        while (record.size() > 0) {
            record.removeLast();
        }
        assertThatThrownBy(record::removeLast).hasMessageContaining("no reading");
        assertThatThrownBy(() -> record.t(0)).isInstanceOf(IndexOutOfBoundsException.class);
    }

    @Test
    void aCopy_staysAsItIs_whileTheRecordGoesOn() {
        double[][] readings = climb(3000, 10, 0, 9);
        CookRecord record = of(readings);
        CookRecord copy = record.copy();
        for (int i = 0; i < 2500; i++) {
            record.removeLast();
        }
        record.add(1000, 20);
        assertHolds(copy, readings);
    }
}
