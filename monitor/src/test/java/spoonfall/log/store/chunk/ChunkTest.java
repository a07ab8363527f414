package spoonfall.log.store.chunk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import spoonfall.log.CookInput;
import spoonfall.probe.Quality;

final class ChunkTest {
    private static final List<String> PROBES =
            IntStream.range(0, 40).mapToObj(i -> "probe " + i).toList();

    private static final List<Quality> BAD =
            Stream.of(Quality.values()).filter(one -> one != Quality.GOOD).toList();

    private static CookInput.Heard good(int probe, long takenMillis, long atMillis, double shownC) {
        return new CookInput.Heard(PROBES.get(probe), takenMillis, atMillis, OptionalDouble.of(shownC), Quality.GOOD);
    }

    private static ChunkWriter packed(List<CookInput.Heard> readings) {
        ChunkWriter writer = new ChunkWriter(PROBES.size());
        readings.forEach(heard -> writer.add(PROBES.indexOf(heard.probe()), heard));
        return writer;
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void anyReadings_comeBackAsTheyWere(long seed) {
        Random random = new Random(seed);
        List<CookInput.Heard> readings = new ArrayList<>();
        long t = random.nextInt(10_000_000);
        for (int i = 0; i < 500; i++) {
            t += random.nextInt(3000);
            int probe = random.nextInt(PROBES.size());
            long at = probe == 0 ? t : t - random.nextInt(5000) + 1000;
            double c = -50 + 450 * random.nextDouble();
            double rounded = Math.rint(c * 100) / 100;
            double shownC = switch (random.nextInt(4)) {
                case 0 -> c;
                case 1 -> rounded;
                case 2 -> Math.rint(c);
                default -> (Math.rint(c * 10) / 10 - 32) / 1.8;
            };
            readings.add(
                    random.nextInt(10) == 0
                            ? new CookInput.Heard(
                                    PROBES.get(probe),
                                    t,
                                    at,
                                    OptionalDouble.empty(),
                                    BAD.get(random.nextInt(BAD.size())))
                            : good(probe, t, at, Math.max(-50, shownC)));
        }
        ChunkWriter writer = packed(readings);
        assertThat(ChunkReader.read(writer.toBytes(), PROBES)).isEqualTo(readings);
        ChunkWriter copy = writer.copy();
        CookInput.Heard next = good(3, t + 1000, t + 990, 98.2);
        copy.add(3, next);
        assertThat(ChunkReader.read(copy.toBytes(), PROBES)).endsWith(next).hasSize(501);
        assertThat(ChunkReader.read(writer.toBytes(), PROBES)).hasSize(500);
    }

    @ParameterizedTest(name = "{0} decimals")
    @ValueSource(ints = {1, 2})
    void aUsualThermometer_takesThreeBytesAReading(int decimals) {
        Random random = new Random(decimals);
        List<CookInput.Heard> readings = new ArrayList<>();
        double scale = Math.pow(10, decimals);
        for (int i = 0; i < 60; i++) {
            double shownC = Math.rint((95 + 0.003 * i + 0.1 * random.nextGaussian()) * scale) / scale;
            long t = 1000L * i + random.nextInt(40);
            readings.add(good(0, t, t, shownC));
        }
        int bytes = packed(readings).toBytes().length;
        System.out.println(
                decimals + " decimals: " + bytes / 60.0 + " bytes a reading, the chunk's own five among them");
        assertThat(bytes / 60.0).isLessThan(3.3);
    }

    @Test
    void aDamagedChunk_isRefusedWhereverTheDamageIs() {
        byte[] bytes = packed(List.of(good(0, 0, 0, 20.5), good(0, 1000, 1000, 20.6), good(1, 1000, 900, 20)))
                .toBytes();
        for (int i = 0; i < bytes.length; i++) {
            byte[] damaged = bytes.clone();
            damaged[i] ^= 0x10;
            assertThatThrownBy(() -> ChunkReader.read(damaged, PROBES))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("damaged");
        }
        assertThatThrownBy(() -> ChunkReader.read(new byte[3], PROBES)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void aPackedChunkThatWasDamaged_isRefused() {
        byte[] packed = PackedChunk.of(new ChunkWriter(1).toBytes());
        assertThat(ChunkReader.read(packed, List.of("pan"))).isEmpty();
        byte[] huge = packed.clone();
        huge[1] = 0x7F;
        assertThatThrownBy(() -> PackedChunk.unpacked(huge)).hasMessageContaining("cannot hold");
        huge[1] = 0;
        huge[3] = 9;
        assertThatThrownBy(() -> PackedChunk.unpacked(huge)).hasMessageContaining("too early");
        assertThatThrownBy(() -> ChunkReader.read(huge, List.of("pan"))).hasMessageContaining("damaged");
    }
}
