package spoonfall.cli.sample;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Set;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import spoonfall.book.After;
import spoonfall.book.Firmness;
import spoonfall.book.Made;
import spoonfall.book.Outcome;
import spoonfall.book.Taste;
import spoonfall.cook.CookSettings;
import spoonfall.kitchen.file.PlanFile;
import spoonfall.lab.PanSettings;
import spoonfall.lab.Scenario;
import spoonfall.lab.Simulator;
import spoonfall.log.CookInput;
import spoonfall.log.CookNote;
import spoonfall.log.DataFolder;
import spoonfall.log.memory.BatchMemory;
import spoonfall.log.planned.PlannedBatch;
import spoonfall.log.store.CookLog;
import spoonfall.log.store.WholeCook;
import spoonfall.plan.BatchPlan;

/**
 * The invented cooks of the Hollin Bank kitchen before the one that the demo shows: simulated when the demo starts, so that its batch book,
 * what its batches teach and its lessons are there to be seen.
 */
public final class SampleCooks {
    /** Its name. */
    public static final String KITCHEN = "Hollin Bank";

    private static final Logger LOG = LoggerFactory.getLogger(SampleCooks.class);
    private static final String SEVILLE = "Seville orange and ginger";
    private static final String DAMSON = "damson";

    /** Older ones, of which only a notebook knows. */
    private static final String NOTEBOOK = String.join(
            "\n",
            "fruit,final_rise,set",
            SEVILLE + ",4.4C,soft",
            SEVILLE + ",4.9C,right",
            DAMSON + ",4.5C,firm",
            SEVILLE + ",4.6C,soft",
            "");

    private final CookSettings settings;
    private final Instant before;
    private final CookLog log;

    private SampleCooks(CookSettings settings, Instant before, CookLog log) {
        this.settings = settings;
        this.before = before;
        this.log = log;
    }

    /**
     * Writes them into a folder of their own; what cannot be written is gone without.
     *
     * @param settings the demo's
     * @param before when the demo's own cook began
     */
    public static void write(DataFolder folder, CookSettings settings, Instant before) {
        try {
            Files.write(folder.notebook(), NOTEBOOK.getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            LOG.warn("the notebook of the demo cannot be written: {}", e.getMessage());
        }
        try (CookLog log = CookLog.openOrMake(folder.cooks())) {
            new SampleCooks(settings, before, log).writeAll();
        } catch (IllegalArgumentException e) {
            LOG.warn("the book of the demo stays empty: {}", e.getMessage());
        }
    }

    private void writeAll() {
        take(new Told("Damson, batch 9", DAMSON, 49, Scenario.CLEAN, 4.1, 4)
                .day(Firmness.RIGHT, "", Taste.BRIGHT)
                .month(Firmness.RIGHT)
                .note(21, "stones skimmed off as they rose"));
        take(new Told(SEVILLE + ", batch 10", SEVILLE, 42, Scenario.SET_TESTS, 4.9, 4)
                .planned()
                .day(Firmness.RIGHT, "clear, peel evenly spread", Taste.BRIGHT, Taste.BITTER)
                .month(Firmness.RIGHT)
                .note(12, "peel simmered for two hours the day before"));
        long soft = take(new Told(SEVILLE + ", batch 11", SEVILLE, 35, Scenario.STALL, 3.3, 5)
                .planned()
                .day(Firmness.SOFT, "runs off the spoon")
                .note(18, "the gas bottle was empty, six minutes until the next one")
                .note(31, "visitors came; took it off early"));
        take(new Told(SEVILLE + ", batch 11 again", SEVILLE, 34, Scenario.CLEAN, 4.5, 4)
                .recooking(soft)
                .day(Firmness.RIGHT, "", Taste.BITTER)
                .month(Firmness.RIGHT));
        take(new Told(SEVILLE + ", batch 12", SEVILLE, 14, Scenario.PAST, 4.4, 3)
                .planned()
                .day(Firmness.STIFF, "dark; the spoon stands in it", Taste.BITTER, Taste.CARAMEL)
                .note(30, "labelled the jars of batch 11 meanwhile, and forgot the pan"));
        take(new Told(SEVILLE + ", batch 13", SEVILLE, 7, Scenario.HEAT_CHANGE, 4.6, 4)
                .planned()
                .day(Firmness.RIGHT, "", Taste.BRIGHT)
                .note(20, "heat down, it spat; stirred to the base"));
    }

    /** One of them, as it is told. */
    private static final class Told {
        final String batch;
        final String fruit;
        final int daysBefore;
        final Scenario scenario;
        final double riseC;
        final int jars;
        final List<Outcome> outcomes = new ArrayList<>();
        final List<CookNote> notes = new ArrayList<>();
        boolean planned;
        OptionalLong of = OptionalLong.empty();

        Told(String batch, String fruit, int daysBefore, Scenario scenario, double riseC, int jars) {
            this.batch = batch;
            this.fruit = fruit;
            this.daysBefore = daysBefore;
            this.scenario = scenario;
            this.riseC = riseC;
            this.jars = jars;
        }

        Told planned() {
            planned = true;
            return this;
        }

        Told recooking(long earlier) {
            of = OptionalLong.of(earlier);
            return this;
        }

        Told day(Firmness set, String words, Taste... taste) {
            Set<Taste> tastes = EnumSet.noneOf(Taste.class);
            tastes.addAll(List.of(taste));
            outcomes.add(new Outcome(After.DAY, Optional.of(set), tastes, words));
            return this;
        }

        Told month(Firmness set) {
            outcomes.add(new Outcome(After.MONTH, Optional.of(set), Set.of(), ""));
            return this;
        }

        Told note(int minute, String text) {
            long atMillis = Duration.ofMinutes(minute).toMillis();
            notes.add(new CookNote("note-" + notes.size(), atMillis, Instant.EPOCH.plusMillis(atMillis), text));
            return this;
        }
    }

    private long take(Told told) {
        Instant startedAt = before.minus(Duration.ofDays(told.daysBefore)).plus(Duration.ofMinutes(told.jars * 7L));
        List<CookInput.Word> first = new ArrayList<>();
        if (told.planned) {
            first.add(new CookInput.Word(0, PlannedBatch.WORD, PlannedBatch.detail(Optional.of(plan()))));
        }
        told.of.ifPresent(of -> first.add(new CookInput.Word(0, BatchMemory.RECOOK, BatchMemory.recook(of))));
        WholeCook cook = SampleCook.of(
                Simulator.cook(told.scenario, pan(told), told.daysBefore), settings, told.batch, startedAt, first);
        List<CookNote> notes = told.notes.stream()
                .map(note ->
                        new CookNote(note.key(), note.atMillis(), startedAt.plusMillis(note.atMillis()), note.text()))
                .toList();
        Made made = new Made(told.fruit, OptionalInt.of(told.jars));
        return log.take(new WholeCook(
                cook.header(),
                cook.inputs(),
                cook.events(),
                notes,
                cook.aliveMillis(),
                cook.endedMillis(),
                made,
                told.outcomes,
                List.of()));
    }

    /** The usual pan; what was cooked once before is thicker when it is cooked again, and has lost some. */
    private PanSettings pan(Told told) {
        PanSettings usual = PanSettings.defaults();
        boolean again = told.of.isPresent();
        return new PanSettings(
                again ? 1.3 : usual.massKg(),
                again ? 0.58 : usual.solids(),
                again ? 25 : usual.startC(),
                usual.netPowerKw(),
                usual.elevationM(),
                told.riseC,
                usual.periodS(),
                usual.lagS(),
                usual.noiseC(),
                usual.resolutionC());
    }

    private PlannedBatch plan() {
        PlanFile notes = SampleBatch.notes();
        return PlannedBatch.of(BatchPlan.of(
                notes.ingredients(),
                notes.setup()
                        .setup(
                                settings.waterBoil().pressurePa(),
                                settings.waterBoil().temperatureC(),
                                settings.riseC(),
                                Optional.empty())));
    }
}
