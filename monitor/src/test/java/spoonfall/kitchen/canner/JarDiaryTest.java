package spoonfall.kitchen.canner;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import spoonfall.alarm.AlarmState;
import spoonfall.canner.CannerMemory;
import spoonfall.canner.CannerPhase;
import spoonfall.canner.CannerTap;
import spoonfall.canner.CannerView;
import spoonfall.canner.CannerWatch;
import spoonfall.canner.JarLoad;
import spoonfall.canner.NotNow;
import spoonfall.canner.Seal;
import spoonfall.canner.ShelfLoad;
import spoonfall.canning.CannerKind;
import spoonfall.canning.Food;
import spoonfall.canning.JarBatch;
import spoonfall.canning.JarSize;
import spoonfall.kitchen.KeptDiary;
import spoonfall.kitchen.clock.AwakeClock;
import spoonfall.log.CookJson;
import spoonfall.log.Diary;
import spoonfall.probe.Hearing;
import spoonfall.probe.Reading;

/** Jars that are watched by a service that was killed and began again. */
@Timeout(60)
final class JarDiaryTest {
    private static final List<CannerTap> TAPS = List.of(CannerTap.values());

    private final KeptDiary diary = new KeptDiary();

    /** Far from 0, as the monotonic clock of another run may be. */
    private final AtomicLong nanos = new AtomicLong(7_000_000_000_000L);

    private static JarLoad load(CannerKind canner) {
        return JarLoad.of(
                new JarBatch(
                        Food.MARMALADE,
                        1240,
                        JarSize.HALF_PINT,
                        false,
                        canner,
                        Optional.empty(),
                        OptionalDouble.of(6.35),
                        OptionalDouble.of(3.1),
                        true),
                3);
    }

    private CannerDesk desk() {
        return new CannerDesk(nanos::get, () -> Instant.EPOCH, diary, 1);
    }

    private CannerView view(CannerDesk desk) {
        return desk.state().join().view();
    }

    private void pass(double seconds) {
        nanos.addAndGet(Math.round(seconds * 1e9));
    }

    /** The service is killed, and another run begins with a monotonic clock of its own. */
    private CannerDesk killed(CannerDesk desk, Duration away) {
        view(desk);
        desk.close();
        diary.away = away;
        nanos.set(3_000_000_000L);
        CannerDesk next = desk();
        view(next);
        return next;
    }

    private void atTheBoil(CannerDesk desk) {
        desk.load("x-1", load(CannerKind.BOILING_WATER)).join();
        pass(120);
        desk.tap("x-2", CannerTap.BOILS).join();
    }

    @Test
    void aTimeThatRanWhileNobodyWatched_isAskedAtItsEnd_withHowLongThatWas() {
        CannerDesk first = desk();
        atTheBoil(first);
        pass(300);
        double dueInS = view(first).remainingS().orElseThrow();
        CannerDesk second = killed(first, Duration.ofSeconds(70));
        CannerView after = view(second);
        assertThat(after.phase()).isEqualTo(CannerPhase.PROCESSING);
        assertThat(after.remainingS().orElseThrow()).isCloseTo(dueInS - 70, within(1.0));
        assertThat(after.say().note()).contains("Spoonfall was away for 70 s");
        second.tap("x-3", CannerTap.BOILS).join(); // what boils now need not have boiled then
        pass(dueInS - 70 + 1);
        assertThat(view(second).phase()).isEqualTo(CannerPhase.UNSURE);
        assertThat(view(second).say().state()).contains("Spoonfall was away for 70 s");
        second.tap("x-4", CannerTap.BOILED).join();
        assertThat(view(second).phase()).isEqualTo(CannerPhase.HEAT_OFF);
        second.close();
    }

    @Test
    void aComputerThatSlept_endsNoTimeEarly_butAsks() {
        AtomicLong asleepNanos = new AtomicLong();
        AwakeClock clock = new AwakeClock(
                nanos::get,
                () -> OptionalDouble.of((nanos.get() + asleepNanos.get()) / 1e9),
                () -> Instant.ofEpochMilli((nanos.get() + asleepNanos.get()) / 1_000_000));
        CannerDesk desk = new CannerDesk(clock, () -> Instant.EPOCH, diary, 1);
        atTheBoil(desk);
        pass(60);
        asleepNanos.addAndGet(Duration.ofHours(1).toNanos());
        assertThat(view(desk).phase()).isEqualTo(CannerPhase.UNSURE);
        assertThat(view(desk).say().state()).contains("Spoonfall was away for 1 h");
        desk.close();
    }

    @Test
    void aTimeThatWasUpBeforeTheServiceCameBack_isAskedAtOnce_andStartsAgainWhole() {
        CannerDesk first = desk();
        atTheBoil(first);
        CannerDesk second = killed(first, Duration.ofHours(2));
        assertThat(view(second).phase()).isEqualTo(CannerPhase.UNSURE);
        second.tap("y-1", CannerTap.BOIL_LOST).join();
        second.tap("y-2", CannerTap.BOILS).join();
        assertThat(view(second).remainingS().orElseThrow())
                .isCloseTo(load(CannerKind.BOILING_WATER).processS(), within(1.0));
        assertThat(view(second).say().note()).doesNotContain("away");
        second.close();
    }

    @Test
    void aThermometerThatIsBackAfterwards_doesNotVouchForTheTimeAway() {
        CannerDesk first = desk();
        first.load("x-1", load(CannerKind.BOILING_WATER)).join();
        boils(first, 60);
        assertThat(view(first).phase()).isEqualTo(CannerPhase.PROCESSING);
        CannerDesk second = killed(first, Duration.ofSeconds(20));
        boils(second, (int) load(CannerKind.BOILING_WATER).processS());
        assertThat(view(second).phase()).isEqualTo(CannerPhase.UNSURE);
        second.close();
    }

    private void boils(CannerDesk desk, int seconds) {
        double boilC = load(CannerKind.BOILING_WATER).waterBoilC();
        for (int i = 0; i < seconds; i++) {
            pass(1);
            desk.reading(Reading.good("canner", nanos.get(), boilC, ""));
        }
        view(desk);
    }

    @Test
    void jarsThatTheRecordCannotTellOfAtFirst_areNotForgotten() {
        CannerDesk first = desk();
        atTheBoil(first);
        double dueInS = view(first).remainingS().orElseThrow();
        diary.silentFor = Integer.MAX_VALUE;
        CannerDesk second = killed(first, Duration.ofSeconds(70));
        assertThat(view(second).phase()).isEqualTo(CannerPhase.EMPTY);
        diary.silentFor = 0;
        Hearing.await("the jars that were left", () -> view(second).phase() == CannerPhase.PROCESSING);
        assertThat(view(second).remainingS().orElseThrow()).isCloseTo(dueInS - 70, within(1.0));
        second.close();
    }

    @Test
    void jarsThatAreToldOfBeforeTheRecordAnswers_goOn() {
        CannerDesk first = desk();
        atTheBoil(first);
        diary.silentFor = Integer.MAX_VALUE;
        CannerDesk second = killed(first, Duration.ofSeconds(70));
        second.load("y-1", load(CannerKind.STEAM)).join();
        diary.silentFor = 0;
        CannerDesk third = killed(second, Duration.ofSeconds(1));
        assertThat(view(third).phase()).isEqualTo(CannerPhase.WAITING);
        third.close();
    }

    @Test
    void aThreadThatEndsWithAnError_isNotHealthy() {
        CannerDesk desk = desk();
        view(desk);
        assertThat(desk.healthy()).isTrue();
        desk.listen(news -> {
            throw new AssertionError("told on purpose");
        });
        Hearing.await("the end of the thread", () -> !desk.healthy());
        desk.close();
    }

    @Test
    void rest_cooling_andSeals_goOnByTheClock() {
        CannerDesk first = desk();
        atTheBoil(first);
        pass(load(CannerKind.BOILING_WATER).processS() + 1);
        first.tap("x-3", CannerTap.HEAT_OFF).join();
        pass(60);
        CannerDesk second = killed(first, Duration.ofSeconds(100));
        assertThat(view(second).phase()).isEqualTo(CannerPhase.RESTING);
        assertThat(view(second).remainingS().orElseThrow()).isCloseTo(140, within(1.0));
        CannerDesk third = killed(second, Duration.ofSeconds(200));
        assertThat(view(third).phase()).isEqualTo(CannerPhase.LIFT_OUT);
        third.tap("x-4", CannerTap.LIFTED).join();
        pass(3600);
        view(third);
        CannerDesk fourth = killed(third, Duration.ofHours(10));
        CannerView.OnShelf cooling = view(fourth).shelf().get(0);
        assertThat(cooling.phase()).isEqualTo(ShelfLoad.Phase.COOLING);
        assertThat(cooling.jars().checkT() - view(fourth).t()).isCloseTo(3600, within(2.0));
        pass(3601);
        fourth.seal("x-5", 1, 2, Seal.UNSEALED).join();
        CannerDesk fifth = killed(fourth, Duration.ofHours(2));
        assertThat(view(fifth).shelf().get(0).jars().seals())
                .containsExactly(Seal.UNKNOWN, Seal.UNSEALED, Seal.UNKNOWN);
        fifth.putAway("x-6", 1).join();
        CannerDesk sixth = killed(fifth, Duration.ofMinutes(1));
        assertThat(view(sixth).shelf()).isEmpty();
        assertThat(view(sixth).phase()).isEqualTo(CannerPhase.EMPTY);
        sixth.close();
    }

    @Test
    void anAlarmThatWasAnswered_staysAnswered_andATapThatArrivesAgainCountsOnce() {
        CannerDesk first = desk();
        atTheBoil(first);
        pass(load(CannerKind.BOILING_WATER).processS() + 1);
        String id = view(first).alarms().get(0).id();
        first.acknowledge(id).join();
        CannerDesk second = killed(first, Duration.ofSeconds(5));
        assertThat(view(second).alarms()).hasSize(1).allSatisfy(alarm -> {
            assertThat(alarm.id()).isEqualTo(id);
            assertThat(alarm.state()).isEqualTo(AlarmState.ACKNOWLEDGED);
        });
        second.load("x-1", load(CannerKind.BOILING_WATER)).join();
        second.tap("x-3", CannerTap.HEAT_OFF).join();
        CannerDesk third = killed(second, Duration.ofSeconds(5));
        third.tap("x-3", CannerTap.HEAT_OFF).join();
        assertThat(view(third).phase()).isEqualTo(CannerPhase.RESTING);
        third.close();
    }

    @Test
    void whatCannotBeRead_isLeft_andJarsCanBeSaidAnew() {
        diary.began(CookJson.object());
        diary.line(new Diary.Line(0, "stands", CookJson.object().put("t", "torn")));
        CannerDesk desk = desk();
        assertThat(view(desk).phase()).isEqualTo(CannerPhase.EMPTY);
        desk.load("x-1", load(CannerKind.STEAM)).join();
        assertThat(desk.healthy()).isTrue();
        desk.close();
    }

    @Test
    void howeverTheJarsStand_theyComeBackTheSame() {
        long seed = Long.getLong("spoonfall.seed", System.nanoTime() & 0xFFFF);
        System.out.println("seed " + seed);
        Random random = new Random(seed);
        CannerWatch watch = new CannerWatch();
        double t = 0;
        for (int i = 0; i < 500; i++) {
            t += random.nextInt(4) == 0 ? random.nextDouble() * 50_000 : random.nextDouble() * 400;
            act(watch, random, t, i);
            CannerMemory memory = watch.memory();
            ObjectNode kept = CookJson.parse(CookJson.text(JarsJson.of(memory)));
            assertThat(JarsJson.memory(kept)).isEqualTo(memory);
            CannerView again = new CannerWatch(memory, 0).view();
            CannerView before = watch.view();
            assertThat(again.phase()).isEqualTo(before.phase());
            assertThat(again.shelf()).isEqualTo(before.shelf());
            assertThat(again.alarms()).isEqualTo(before.alarms());
            assertThat(again.dueT()).isEqualTo(before.dueT());
        }
    }

    private static void act(CannerWatch watch, Random random, double t, int i) {
        try {
            String id = "t" + i;
            switch (random.nextInt(6)) {
                case 0 -> watch.load(t, id, load(random.nextBoolean() ? CannerKind.STEAM : CannerKind.BOILING_WATER));
                case 1 -> watch.seal(t, id, 1 + random.nextInt(20), 1 + random.nextInt(3), Seal.SEALED);
                case 2 -> watch.putAway(t, id, 1 + random.nextInt(20));
                case 3 -> {
                    List<spoonfall.canner.CannerAlarm> alarms = watch.view().alarms();
                    if (!alarms.isEmpty()) {
                        watch.acknowledge(t, alarms.get(0).id(), new java.util.ArrayList<>());
                    }
                }
                default -> watch.tap(t, id, TAPS.get(random.nextInt(TAPS.size())));
            }
        } catch (NotNow e) {
            watch.advanceTo(t);
        }
    }
}
