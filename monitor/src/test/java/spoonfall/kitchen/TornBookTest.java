package spoonfall.kitchen;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import spoonfall.cook.CookSettings;
import spoonfall.kitchen.canner.Canner;
import spoonfall.kitchen.plan.KitchenPlan;
import spoonfall.kitchen.thermometer.ProbeState;
import spoonfall.kitchen.thermometer.Thermometry;
import spoonfall.log.CalibrationBook;

/** A book of calibrations that is torn while thermometers are watched. */
@Timeout(60)
final class TornBookTest {
    @TempDir
    private Path folder;

    private volatile String identity = "by-id/first";
    private final ToldProbe probe = new ToldProbe("pan", 0);

    private Path file() {
        return folder.resolve("calibrations.json");
    }

    private Thermometry thermometry() {
        return new Thermometry(
                Optional.of(new CalibrationBook(file())),
                name -> Optional.of(identity),
                name -> Optional.empty(),
                Optional.empty(),
                InstantSource.system());
    }

    private void anotherIsPluggedInWhileTheBookIsTorn() throws IOException {
        Files.writeString(file(), "[{\"probe\":");
        identity = "by-id/second";
        probe.lose();
        probe.find("9600 baud");
    }

    @Test
    void aThermometerInThePan_isTakenAtItsWord_andTheCookIsToldWhy() throws IOException {
        KitchenPlan plan = KitchenPlan.live("Hollin Bank", "", CookSettings.defaults(), 1);
        try (Kitchen kitchen = new Kitchen(plan, clock -> List.of(probe), System::nanoTime, thermometry())) {
            kitchen.start();
            kitchen.state().join();
            probe.say(50, 10);
            anotherIsPluggedInWhileTheBookIsTorn();
            probe.say(51, 5);
            // a thread that ended would answer nothing, and nobody could wake a join
            ProbeState after =
                    kitchen.state().orTimeout(30, TimeUnit.SECONDS).join().probe();
            assertThat(kitchen.healthy()).isTrue();
            assertThat(after.state()).isEqualTo(ProbeState.State.READING);
            assertThat(after.calibrationDue().orElseThrow()).contains(file() + ", line 1 is not JSON");
            assertThat(kitchen.record().join().size()).isEqualTo(15);

            Files.delete(file());
            probe.find("9600 baud");
            assertThat(kitchen.state().join().probe().calibrationDue().orElseThrow())
                    .contains("Never checked");
        }
    }

    @Test
    void aThermometerInTheCanner_goesOn_andSaysWhy() throws IOException {
        try (Canner canner = new Canner(clock -> probe, System::nanoTime, thermometry())) {
            canner.start();
            anotherIsPluggedInWhileTheBookIsTorn();
            assertThat(canner.seen().detail()).startsWith("9600 baud").contains("is not JSON");
            probe.say(99, 1);
            assertThat(canner.seen().state()).isEqualTo(ProbeState.State.READING);
        }
    }
}
