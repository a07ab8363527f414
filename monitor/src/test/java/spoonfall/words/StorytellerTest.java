package spoonfall.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spoonfall.cook.AlarmName;
import spoonfall.cook.CookAlarm;
import spoonfall.cook.CookSettings;
import spoonfall.cook.CookStatus;
import spoonfall.cook.Cooks;
import spoonfall.cook.MadeCook;
import spoonfall.cook.MadePan;
import spoonfall.cook.Pace;
import spoonfall.cook.Stage;
import spoonfall.cook.TestWord;
import spoonfall.cook.WaterBoil;
import spoonfall.cook.WentIn;
import spoonfall.cook.calm.HowLong;
import spoonfall.cook.monitor.CookMonitor;
import spoonfall.cook.settest.SetTestsNow;
import spoonfall.lab.Scenario;
import spoonfall.lab.varied.CookKind;
import spoonfall.lab.varied.VariedCook;
import spoonfall.log.TraceReplay;
import spoonfall.probe.Quality;
import spoonfall.probe.trace.Trace;
import spoonfall.settest.TestAnswer;

final class StorytellerTest {
    /** What was said at a time. */
    private record Said(double t, Outlook outlook) {}

    private static List<Said> story(Scenario scenario) {
        Trace trace = Cooks.trace(scenario, 1);
        return story(trace, Cooks.settings(trace));
    }

    private static List<Said> story(Trace trace, CookSettings settings) {
        TraceReplay replay = new TraceReplay(trace, settings);
        CookMonitor monitor = replay.monitor();
        monitor.foretell();
        Storyteller teller = new Storyteller(Pace.BY_ITSELF);
        List<Said> said = new ArrayList<>();
        while (replay.hasNext()) {
            replay.next();
            Outlook told = teller.tell(monitor.status(), monitor.foretold(), monitor.alarms(), monitor.tests());
            said.add(new Said(monitor.timeS(), told));
        }
        return said;
    }

    private static List<String> sentences(List<Said> story) {
        return story.stream()
                .map(said -> said.outlook().saying())
                .map(saying -> (saying.state() + " " + saying.act())
                        .replaceAll("\\d+", "N")
                        .strip())
                .distinct()
                .toList();
    }

    @Test
    void aCleanCook_isToldInOrder() {
        assertThat(sentences(story(Scenario.CLEAN)))
                .containsSubsequence(
                        "Listening to the probe.",
                        "Warming up.",
                        "Coming to the boil.",
                        "Boiling. Too early to say when it will set.",
                        "Climbing steadily. Set tests in about N minutes.",
                        "Climbing steadily. Set tests in about a minute.",
                        "Close to setting. Test the set.",
                        "At the setting point. Take it off the heat and test the set.",
                        "Off the heat. Test the set.");
    }

    @Test
    void theMinutes_areCalm() {
        List<String> acts = story(Scenario.CLEAN).stream()
                .filter(said -> said.t() > 900)
                .map(said -> said.outlook().saying().act())
                .filter(act -> act.startsWith("Set tests in"))
                .toList();
        int changes = 0;
        for (int i = 1; i < acts.size(); i++) {
            changes += acts.get(i).equals(acts.get(i - 1)) ? 0 : 1;
        }
        // Counting down from about nine minutes takes nine changes; a few more are news.
        assertThat(changes).isBetween(5, 14);
    }

    @Test
    void trouble_isSaidFirst() {
        assertThat(sentences(story(Scenario.STALL)))
                .contains("It is cooling from {temp:N.N}, since {clock:N}. Is the heat on?");
        assertThat(sentences(story(Scenario.SCORCH)))
                .contains("The base may be catching: it climbs {diff:N.N} a minute and jumps about more than before; "
                        + "the water that leaves allows {diff:N.N}. "
                        + "Stir down to the base, and turn the heat down.");
    }

    @Test
    void aPanThatCoolsShortOfTheSet_isNotSentToTheTest() {
        List<Said> stall = story(Scenario.STALL);
        assertThat(sentences(stall)).contains("Off the heat. It is not close to setting yet: put it back?");
        assertThat(stall)
                .filteredOn(said -> (said.outlook().saying().state()
                                + said.outlook().saying().act())
                        .equals("Off the heat.Test the set."))
                .isNotEmpty()
                .allMatch(said -> said.t() > 1800); // the heat goes off half way up, and at the end
    }

    /** Who was never told of a set is sent to the test first, and to the jars once it has rested. */
    @Test
    void aPanThatComesOffAtTheSettingPoint_isTested_beforeItGoesIntoTheJars() {
        double offC = MadePan.SETTINGS.gelPointC();
        MadeCook cook = MadeCook.boiling(1520);
        Telling story = new Telling(cook);
        assertThat(story.cooling(100, offC))
                .isEqualTo("Off the heat. Test the set. Then let it rest. Hot sugar sticks and burns.");
        assertThat(story.cooling(300, offC))
                .isEqualTo("Off the heat.  Hot sugar sticks and burns: fill the jars with care.");
    }

    @Test
    void aPanThatWasNotSet_isToBePutBack_forAsLongAsItIsOff() {
        MadeCook cook = MadeCook.boiling(1000).say(TestWord.begun("a", 90));
        Telling story = new Telling(cook);
        story.cooling(60, 103.1);
        cook.say(TestWord.seen("a", TestAnswer.THICKENS));
        assertThat(story.cooling(90, 103.1)).startsWith("Not yet. Back on the heat. The next test is at");
        assertThat(story.cooling(240, 103.1))
                .startsWith("It is cooling from {temp:103.2}, since {clock:")
                .contains("The last test was not set: back on the heat?");
        assertThat(cook.monitor().alarms())
                .extracting(CookAlarm::name)
                .doesNotContain(AlarmName.START_SET_TESTS, AlarmName.GEL_POINT);
    }

    @Test
    void whatIsToBePreparedNow_goesBeforeWhatMayBeDoneAnyTime() {
        Telling story = new Telling(MadeCook.boiling(300));
        assertThat(story.told(Optional.of("Warm the jars")))
                .endsWith(". Warm the jars now. Stir the base now and then.");
        story.cook.say(TestWord.begun("a", 90)).watch(1, MadeCook::boilsC);
        assertThat(story.told(Optional.of("Warm the jars")))
                .startsWith("Testing the set.")
                .doesNotContain("jars");
    }

    /** It went back after the test, and is done by now for all that anybody knows. */
    @Test
    void aPanThatWentBackAndCameToItsSettingPoint_isNotSentBackOnceMore() {
        MadeCook cook =
                MadeCook.boiling(1000).say(TestWord.begun("a", 90)).say(TestWord.seen("a", TestAnswer.THICKENS));
        cook.watch(620, MadeCook::boilsC);
        assertThat(cook.raised()).contains(AlarmName.GEL_POINT);
        Telling story = new Telling(cook);
        assertThat(story.cooling(100, 104.2)).startsWith("Off the heat. Test the set.");
    }

    @Test
    void aPanThatFalls_isNotSaidToClimb() {
        MadeCook cook = MadeCook.boiling(600);
        Telling story = new Telling(cook);
        assertThat(story.cooling(1, MadeCook.boilsC(600))).startsWith("Climbing steadily.");
        assertThat(story.cooling(45, MadeCook.boilsC(600))).startsWith("The reading falls. Is the pan off the heat?");
    }

    /** What is told of a cook whose pan cools by 3 °C a minute. */
    private static final class Telling {
        private final MadeCook cook;
        private final Storyteller teller = new Storyteller(Pace.BY_ITSELF);
        private final double offT;

        Telling(MadeCook cook) {
            this.cook = cook;
            offT = cook.status().t();
            cook.monitor().foretell();
        }

        String cooling(int seconds, double offC) {
            for (int s = 0; s < seconds; s++) {
                cook.watch(1, t -> offC - (t - offT) * 3 / 60);
                teller.follow(cook.status());
            }
            return told(Optional.empty());
        }

        String told(Optional<String> toPrepare) {
            CookMonitor monitor = cook.monitor();
            Saying saying = teller.tell(
                            monitor.status(), monitor.foretold(), monitor.alarms(), monitor.tests(), toPrepare)
                    .saying();
            return saying.state() + " " + saying.act() + " " + saying.note();
        }
    }

    @Test
    void sugarThatGoesIntoTheFruit_isSaid_andWhatToDo() {
        Trace trace = VariedCook.cook(CookKind.LATE_SUGAR, 1241);
        double sugarT = trace.info().firstT("sugar-added").orElseThrow();
        CookSettings settings = new CookSettings(
                WaterBoil.known(
                        trace.info().waterBoilC(),
                        trace.info().pressurePa(),
                        trace.info().elevationM()),
                trace.info().riseC().orElseThrow());
        List<Said> story = story(trace, settings);
        assertThat(sentences(story))
                .containsSubsequence(
                        "Simmering.",
                        "Sugar is going in, it seems. Stir until it has melted.",
                        "Climbing steadily. Set tests in N to N minutes.");
        assertThat(story)
                .filteredOn(said -> said.outlook().saying().state().startsWith("Sugar"))
                .allMatch(said -> said.t() > sugarT && said.t() < sugarT + 240);
    }

    @ParameterizedTest(name = "was close {0}: {1}")
    @CsvSource({
        "false, 'Nothing to do yet. If its sugar is in, stir until it has melted.'",
        "true, Hot sugar sticks and burns."
    })
    void aPanThatWarmsAfterItWasClose_isNotAskedForSugar(boolean wasClose, String note) {
        CookStatus warming = new CookStatus(
                100,
                OptionalDouble.of(88.2),
                Quality.GOOD,
                Optional.of(new CookStatus.Seen(100, 88.2)),
                Stage.WARMING,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                WentIn.NOTHING,
                wasClose);
        CookSettings settings = CookSettings.defaults();
        SetTestsNow untested = new SetTestsNow(List.of(), settings, settings.riseC(), OptionalDouble.empty(), false);
        Saying saying = new Storyteller(Pace.BY_ITSELF)
                .tell(warming, Optional.empty(), List.of(), untested)
                .saying();
        assertThat(saying.state()).isEqualTo("Warming up.");
        assertThat(saying.note()).isEqualTo(note);
    }

    @Test
    void aSilentProbe_isSaidWithWhatWasLastSeen() {
        CookStatus silent = new CookStatus(
                        100,
                        OptionalDouble.of(98.2),
                        Quality.GOOD,
                        Optional.of(new CookStatus.Seen(60, 98.2)),
                        Stage.ROLLING_BOIL,
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        Optional.empty(),
                        WentIn.NOTHING,
                        false)
                .stale();
        CookSettings settings = CookSettings.defaults();
        SetTestsNow untested = new SetTestsNow(List.of(), settings, settings.riseC(), OptionalDouble.empty(), false);
        Saying saying = new Storyteller(Pace.BY_ITSELF)
                .tell(silent, Optional.empty(), List.of(), untested)
                .saying();
        assertThat(saying.state()).isEqualTo("No word from the probe since {clock:60}.");
        assertThat(saying.act()).isEqualTo("Last seen {temp:98.2}.");
    }

    @Test
    void theFan_opensFromNowAndHoldsItsMiddle() {
        List<Said> withFan = story(Scenario.CLEAN).stream()
                .filter(said -> !said.outlook().fan().isEmpty())
                .toList();
        assertThat(withFan).hasSizeGreaterThan(300);
        for (Said said : withFan) {
            List<Outlook.FanPoint> fan = said.outlook().fan();
            assertThat(fan.get(0).t()).isEqualTo(said.t());
            assertThat(fan)
                    .allMatch(point -> point.lowC() <= point.midC() + 1e-9 && point.midC() <= point.highC() + 1e-9);
        }
    }

    @Test
    void theFan_isAsCalmAsTheWords() {
        List<Double> setsAt = story(Scenario.CLEAN).stream()
                .filter(said -> said.t() > 900 && !said.outlook().fan().isEmpty())
                .map(said -> {
                    List<Outlook.FanPoint> fan = said.outlook().fan();
                    return said.t()
                            + (fan.get(fan.size() - 1).t() - said.t()) / 1.3; // it ends a little past the gel point
                })
                .toList();
        long moves = IntStream.range(1, setsAt.size())
                .filter(i -> Math.abs(setsAt.get(i) - setsAt.get(i - 1)) > 1)
                .count();
        assertThat(setsAt).hasSizeGreaterThan(300);
        assertThat(moves).isLessThan(15);
    }

    @ParameterizedTest
    @CsvSource({
        "0,0,any moment now",
        "1,1,in about a minute",
        "9,9,in about 9 minutes",
        "15,30,in 15 to 30 minutes",
        "0,10,within 10 minutes",
        "170,170,in about 3 hours"
    })
    void aTimeAhead_isSaidAsItIsTold(long least, long most, String words) {
        assertThat(Minutes.in(new HowLong(least, most))).isEqualTo(words);
    }

    @Test
    void marks_areFilledInForTheTerminal() {
        assertThat(Plain.text("No word since {clock:1530}. Last seen {temp:98.2}, {diff:2.1} to go."))
                .isEqualTo("No word since 25:30. Last seen 98.2 °C, 2.1 °C to go.");
    }
}
