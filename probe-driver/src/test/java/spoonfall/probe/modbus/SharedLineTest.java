package spoonfall.probe.modbus;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import spoonfall.probe.Hearing;
import spoonfall.probe.Quality;
import spoonfall.probe.Reading;
import spoonfall.probe.serial.PseudoTerminal;
import spoonfall.probe.serial.SharedLine;

/** Several instruments on one line. */
final class SharedLineTest {
    private static final String ONE = "modbus:%s,register=0,id=1,scale=0.01";
    private static final String TWO = "modbus:%s,register=0,id=2,scale=0.01";

    private final Map<String, Hearing> heard = new LinkedHashMap<>();

    private SharedLine line(SharedLine.Instruments instruments, String... specs) {
        Map<String, String> named = new LinkedHashMap<>();
        for (int i = 0; i < specs.length; i++) {
            named.put("p" + (i + 1), specs[i]);
        }
        SharedLine line = new SharedLine(named, instruments);
        for (String name : named.keySet()) {
            line.probe(name).start(heard(name));
        }
        return line;
    }

    private Hearing heard(String name) {
        return heard.computeIfAbsent(name, fresh -> new Hearing());
    }

    private void awaitReadings(String name, int count) {
        Hearing.await(
                count + " readings of " + name, () -> heard(name).readings().size() >= count);
    }

    /** Every instrument has 20 °C and its address in tenths. */
    private static byte[] own(byte[] request) {
        return Registers.answer(request, Registers.hundredths(20 + request[0] / 10.0));
    }

    /** How many of the others came, at the most, between two readings one after the other. */
    private static long mostBetween(List<Reading> readings, List<Reading> others) {
        return IntStream.range(1, readings.size())
                .mapToLong(i -> others.stream()
                        .filter(other -> other.atNanos() > readings.get(i - 1).atNanos()
                                && other.atNanos() < readings.get(i).atNanos())
                        .count())
                .max()
                .orElseThrow();
    }

    @Test
    void twoInstruments_giveEachItsOwnReadings() {
        try (SharedLine line = line((n, request, to) -> to.send(own(request)), ONE, TWO)) {
            awaitReadings("p1", 4);
            awaitReadings("p2", 3);
            assertThat(heard("p1").temperaturesC())
                    .hasSizeGreaterThanOrEqualTo(4)
                    .containsOnly(20.1);
            assertThat(heard("p2").temperaturesC())
                    .hasSizeGreaterThanOrEqualTo(3)
                    .containsOnly(20.2);
            assertThat(heard("p1").readings()).extracting(Reading::probe).containsOnly("p1");
            assertThat(heard("p2").readings()).extracting(Reading::probe).containsOnly("p2");
            assertThat(heard("p2").found())
                    .singleElement()
                    .satisfies(said -> assertThat(said).contains("register 0 of Modbus instrument 2"));
            assertThat(line.asked())
                    .allSatisfy(asked -> assertThat(asked.request()).hasSize(8));
        }
    }

    @Test
    void threeInstruments_areReadByUnitRegisterTypeAndWordOrder() {
        SharedLine.Instruments instruments = (n, request, to) -> to.send(Registers.answer(
                request,
                switch (request[0] << 16 | Registers.register(request)) {
                    case 0x01_0000 -> Registers.hundredths(98.4);
                    case 0x11_006b -> Registers.lowFirst(104.25);
                    case 0x12_006b -> Registers.highFirst(210.5);
                    default -> new byte[0];
                }));
        try (SharedLine line = line(
                instruments,
                "modbus:%s,register=0,id=1,scale=0.01,baud=19200",
                "modbus:%s,register=0x6B,id=17,function=3,type=float,words=low,baud=19200",
                "modbus:%s,register=0x6B,id=18,function=3,type=float,words=high,unit=F,baud=19200")) {
            for (String name : heard.keySet()) {
                awaitReadings(name, 3);
            }
            assertThat(heard("p1").temperaturesC()).containsOnly(98.4);
            assertThat(heard("p2").temperaturesC()).containsOnly(104.25);
            assertThat(heard("p3").temperaturesC())
                    .allSatisfy(c -> assertThat(c).isCloseTo((210.5 - 32) / 1.8, within(1e-6)));
            assertThat(line.asked().stream().map(asked -> (int) asked.request()[0]))
                    .contains(1, 17, 18);
        }
    }

    @Test
    void anAnswerThatComesInAnothersTurn_isNeverTakenByTheOther() {
        AtomicReference<byte[]> late = new AtomicReference<>(new byte[0]);
        SharedLine.Instruments instruments = (n, request, to) -> {
            if (request[0] == 1) {
                late.set(own(request)); // kept until the other is asked
            } else {
                to.send(late.getAndSet(new byte[0]));
                to.send(own(request));
            }
        };
        try (SharedLine line = line(instruments, ONE, TWO)) {
            awaitReadings("p2", 5);
            awaitReadings("p1", 2);
            assertThat(heard("p2").readings()).extracting(Reading::quality).containsOnly(Quality.GOOD);
            assertThat(heard("p2").temperaturesC()).containsOnly(20.2);
            assertThat(heard("p2").lost()).isEmpty();
            assertThat(heard("p1").readings()).extracting(Reading::quality).containsOnly(Quality.NO_ANSWER);
            assertThat(line.askedOf(1)).isPositive();
        }
    }

    /** As an instrument that takes its time. */
    private static void sendAfter(int millis, PseudoTerminal to, byte[] frame) {
        CompletableFuture.delayedExecutor(millis, TimeUnit.MILLISECONDS).execute(() -> to.send(frame));
    }

    @Test
    void aLateAnswerAboutOneRegister_isNeverTakenForAnotherOfTheSameInstrument() {
        // Both answers look alike: an answer does not name its register.
        SharedLine.Instruments instruments = (n, request, to) -> {
            boolean first = Registers.register(request) == 0;
            byte[] answer = Registers.answer(request, Registers.hundredths(first ? 50 : 60));
            sendAfter(first ? 900 : 300, to, answer);
        };
        try (SharedLine line = line(instruments, ONE, "modbus:%s,register=1,id=1,scale=0.01")) {
            awaitReadings("p1", 2);
            awaitReadings("p2", 2);
            assertThat(heard("p1").readings()).extracting(Reading::quality).containsOnly(Quality.NO_ANSWER);
            assertThat(heard("p2").readings()).extracting(Reading::quality).containsOnly(Quality.GOOD);
            assertThat(heard("p2").temperaturesC()).containsOnly(60.0);
            assertThat(line.askedOf(1)).isGreaterThanOrEqualTo(4);
        }
    }

    @Test
    void aSlowInstrumentThatIsAlone_isWaitedFor() {
        SharedLine.Instruments slow = (n, request, to) -> sendAfter(800, to, own(request));
        try (SharedLine line = line(slow, ONE)) {
            awaitReadings("p1", 2);
            assertThat(heard("p1").temperaturesC()).containsOnly(20.1).hasSizeGreaterThanOrEqualTo(2);
            assertThat(line.askedOf(1)).isBetween(2, 3);
        }
    }

    @Test
    void anInstrumentThatAnswersForAnother_spoilsOnlyTheOther() {
        SharedLine.Instruments instruments = (n, request, to) -> {
            byte[] asIfFor = request.clone();
            asIfFor[0] = 2;
            to.send(own(asIfFor));
        };
        try (SharedLine line = line(instruments, ONE, TWO)) {
            awaitReadings("p1", 2);
            awaitReadings("p2", 2);
            assertThat(heard("p1").readings()).extracting(Reading::quality).containsOnly(Quality.BAD_FRAME);
            assertThat(heard("p1").lost())
                    .singleElement()
                    .satisfies(
                            said -> assertThat(said).contains("instrument 1 does not answer, but instrument 2 does"));
            assertThat(heard("p2").temperaturesC()).containsOnly(20.2);
            assertThat(line.askedOf(2)).isPositive();
        }
    }

    @Test
    void aSilentInstrument_isAskedMoreSeldomAndTheOthersKeepTheirPace() {
        SharedLine.Instruments twoIsSilent = (n, request, to) -> {
            if (request[0] != 2) {
                to.send(own(request));
            }
        };
        try (SharedLine line = line(twoIsSilent, ONE, TWO, "modbus:%s,register=0,id=3,scale=0.01")) {
            awaitReadings("p2", 4);
            awaitReadings("p1", 8);
            awaitReadings("p3", 8);
            for (String name : List.of("p1", "p3")) {
                assertThat(heard(name).readings()).extracting(Reading::quality).containsOnly(Quality.GOOD);
            }
            List<Reading> silent = heard("p2").readings();
            for (String name : List.of("p1", "p3")) {
                // However slow the machine is: whoever answers is not held up by more than its turn.
                assertThat(mostBetween(heard(name).readings(), silent)).isLessThanOrEqualTo(2);
            }
            assertThat(silent).extracting(Reading::quality).containsOnly(Quality.NO_ANSWER);
            assertThat(heard("p2").lost()).hasSize(1);
            assertThat(Duration.ofNanos(silent.get(3).atNanos() - silent.get(2).atNanos()))
                    .as("the pause after three in vain")
                    .isGreaterThan(Duration.ofMillis(1800));
            assertThat(heard("p1").lost()).isEmpty();

            line.answer((n, request, to) -> to.send(own(request)));
            int before = silent.size();
            Hearing.await("its answers", () -> heard("p2").temperaturesC().size() >= 3);
            assertThat(heard("p2").found()).hasSize(1);
            List<Reading> back = silent.subList(before, silent.size()).stream()
                    .filter(reading -> reading.quality() == Quality.GOOD)
                    .toList();
            assertThat(mostBetween(back, heard("p1").readings()))
                    .as("at full pace again")
                    .isLessThanOrEqualTo(2);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"damaged", "cut", "interleaved", "noise"})
    void aBrokenAnswer_isAskedForOnceMoreAndNobodyElseIsSpoilt(String how) {
        SharedLine.Instruments instruments = (n, request, to) -> {
            byte[] answer = own(request);
            if (request[0] == 2 || n % 2 == 1) {
                to.send(answer);
                return;
            }
            to.send(
                    switch (how) {
                        case "damaged" -> Registers.damaged(answer);
                        case "cut" -> Arrays.copyOf(answer, 4);
                        case "interleaved" -> new byte[] {1, 2, 4, 4, 2, 2, 4, 0x26, 0x1a, 0x70, 0x3a, 0x11, 0x3b};
                        default -> new byte[300];
                    });
        };
        try (SharedLine line = line(instruments, ONE, TWO)) {
            awaitReadings("p1", 3);
            awaitReadings("p2", 3);
            assertThat(heard("p1").readings()).extracting(Reading::quality).containsOnly(Quality.GOOD);
            assertThat(heard("p1").temperaturesC()).containsOnly(20.1);
            assertThat(heard("p2").temperaturesC()).containsOnly(20.2);
            assertThat(line.askedOf(1)).isGreaterThanOrEqualTo(6);
        }
    }

    @Test
    void aBrokenAnswer_isAskedForOnceMoreOnly() {
        SharedLine.Instruments instruments =
                (n, request, to) -> to.send(request[0] == 1 ? Registers.damaged(own(request)) : own(request));
        try (SharedLine line = line(instruments, ONE, TWO)) {
            awaitReadings("p1", 3);
            line.probe("p1").close();
            assertThat(heard("p1").readings()).extracting(Reading::quality).containsOnly(Quality.BAD_FRAME);
            assertThat(line.askedOf(1)).isBetween(6, 8); // two a reading, and those of a turn that closing cut off
            assertThat(heard("p1").lost()).hasSize(1);
        }
    }

    @Test
    void theLine_isSilentBetweenAnAnswerAndTheNextQuestion() {
        List<Long> sentNanos = new CopyOnWriteArrayList<>();
        SharedLine.Instruments instruments = (n, request, to) -> {
            sentNanos.add(System.nanoTime());
            to.send(own(request));
        };
        try (SharedLine line = line(instruments, ONE, TWO, "modbus:%s,register=0,id=3,scale=0.01")) {
            awaitReadings("p3", 3);
            for (int i = 1; i < 9; i++) {
                // "MODBUS over Serial Line" 1.02, 2.5.1.1: 3.5 characters of 11 bits at 9600 baud, 4.010 ms.
                assertThat(line.asked().get(i).atNanos() - sentNanos.get(i - 1)).isGreaterThan(4_010_000);
            }
        }
    }

    @Test
    void closingOne_leavesTheOthersAndTheLastFreesThePort() {
        try (SharedLine line = line((n, request, to) -> to.send(own(request)), ONE, TWO)) {
            awaitReadings("p1", 1);
            line.probe("p1").close();
            int readings = heard("p1").readings().size();
            int others = heard("p2").readings().size();
            awaitReadings("p2", others + 2);
            assertThat(heard("p1").readings()).hasSize(readings);
            line.probe("p2").close();
            assertThat(Thread.getAllStackTraces().keySet())
                    .extracting(Thread::getName)
                    .doesNotContain("probe-p1+p2");
        }
    }

    @Test
    void anUnpluggedLine_isSaidOnceForEachOfItsProbesAndFoundAgain() {
        try (SharedLine line = line((n, request, to) -> to.send(own(request)), ONE, TWO)) {
            awaitReadings("p1", 1);
            awaitReadings("p2", 1);
            line.replug();
            long backNanos = System.nanoTime();
            for (Hearing hearing : heard.values()) {
                Hearing.await("finding it again", () -> hearing.found().size() == 2);
                assertThat(hearing.lost())
                        .singleElement()
                        .satisfies(said -> assertThat(said).contains("was unplugged"));
            }
            assertThat(Duration.ofNanos(System.nanoTime() - backNanos)).isLessThan(Duration.ofSeconds(2));
            assertThat(heard("p1").temperaturesC()).containsOnly(20.1);
            assertThat(heard("p2").temperaturesC()).containsOnly(20.2);
        }
    }

    @Test
    void whatComesWhileNobodyIsAsked_isThrownAwayBeforeTheNextQuestion() {
        try (SharedLine line = line((n, request, to) -> to.send(own(request)), ONE, TWO)) {
            for (int i = 1; i <= 3; i++) {
                awaitReadings("p1", i);
                awaitReadings("p2", i);
                byte[] stale = Registers.answer(new byte[] {1, 4}, Registers.hundredths(77));
                line.send(i == 2 ? Arrays.copyOf(stale, 4) : stale);
            }
            awaitReadings("p1", 4);
            assertThat(heard("p1").readings()).extracting(Reading::quality).containsOnly(Quality.GOOD);
            assertThat(heard("p1").temperaturesC()).containsOnly(20.1);
        }
    }
}
