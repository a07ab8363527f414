package spoonfall.cook.alarm;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spoonfall.cook.CookSettings;
import spoonfall.cook.Pace;
import spoonfall.cook.Stage;
import spoonfall.cook.Unrecorded;
import spoonfall.cook.WaterBoil;
import spoonfall.cook.alarm.AlarmText.Cooling;

/** What the alarms say, with marks for what is shown in the cook's own units. */
final class AlarmTextTest {
    @Test
    void theCallsToTest_sayWhatIsReachedAndWhatToDo() {
        assertThat(AlarmText.startSetTests().title()).isEqualTo("Start the set tests now.");
        assertThat(AlarmText.startSetTests().act()).startsWith("Take the pan off the heat");
        assertThat(AlarmText.gelPoint(new CookSettings(WaterBoil.measured(100, 0), 4.44)))
                .isEqualTo(new AlarmText(
                        "It has reached the setting point, {temp:104.4}.", "Take it off the heat and test the set."));
        assertThat(AlarmText.pastGelPoint(1.04).title())
                .isEqualTo("It is more than {diff:1.0} past the setting point.");
        assertThat(AlarmText.pastGelPoint(-0.3).title())
                .isEqualTo("It is more than {diff:0.0} past the setting point.");
    }

    @Test
    void whatCools_isAskedForItsHeat_orWhetherItIsSet() {
        assertThat(AlarmText.cooling(103.26, 900.4, Cooling.HEAT_IS_OFF))
                .isEqualTo(new AlarmText("It is cooling from {temp:103.3}, since {clock:900}.", "Is the heat on?"));
        assertThat(AlarmText.cooling(103, 900, Cooling.MAY_BE_SET).act())
                .isEqualTo("Is it set, or should it be back on the heat?");
        assertThat(AlarmText.cooling(103, 900, Cooling.WAS_NOT_SET).act())
                .isEqualTo("The last test was not set: back on the heat?");
    }

    @Test
    void whatStandsStill_hasDoneSoSinceSomeTime() {
        assertThat(AlarmText.standingStill(899.6).title()).isEqualTo("No water has left since {clock:900}.");
    }

    @Test
    void whatSomethingColdWentInto_isSaidWithWhenItBoils_orByHowMuchItIsShort() {
        String title = "Something cold went in at {clock:600}, and the pan still does not boil.";
        assertThat(AlarmText.coldAndSlow(600, 1020))
                .isEqualTo(new AlarmText(title, "At this pace it takes until about {clock:1020}: turn the heat up?"));
        assertThat(AlarmText.coldAndNoWarmer(600, 5.52))
                .isEqualTo(new AlarmText(title, "It is {diff:5.5} short and warms no further: turn the heat up?"));
    }

    @ParameterizedTest(name = "{0} allowed: {1}")
    @CsvSource({"0.23, 0.2", "0.01, 0.1", "-1, 0.1"})
    void whatMayBeCatching_isSaidWithItsClimbAndWithWhatWaterAllows(double allowedPerMinC, String said) {
        assertThat(AlarmText.scorchRisk(1.96, allowedPerMinC, false).title())
                .isEqualTo("The base may be catching: it climbs {diff:2.0} a minute; the water that leaves allows "
                        + "{diff:" + said + "}.");
    }

    @Test
    void whoIsSilent_isAProbe_orSomebodyWhoTypes() {
        assertThat(AlarmText.probeSilent(12.4, Pace.BY_ITSELF))
                .isEqualTo(new AlarmText(
                        "No word from the probe since {clock:12}.", "Check its cable, and watch the pan yourself."));
        assertThat(AlarmText.probeSilent(12.4, Pace.BY_HAND))
                .isEqualTo(new AlarmText(
                        "No reading was typed since {clock:12}.", "Read the thermometer, and type what it shows."));
    }

    @Test
    void aProbeOutOfThePan_fellInAFewSeconds() {
        assertThat(AlarmText.probeOutOfPan(101.64))
                .isEqualTo(new AlarmText(
                        "The reading fell from {temp:101.6} faster than a pan can cool.",
                        "Is the probe still in the pan? Or did something cold go in?"));
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({"ROLLING_BOIL, though the pan boils", "WARMING, though the pan is on its way"})
    void aStuckProbe_staysTheSameWhereThePanMoves(Stage stage, String pan) {
        assertThat(AlarmText.probeStuck(61.2, stage).title())
                .isEqualTo("The reading has stayed exactly the same since {clock:61}, " + pan + ".");
    }

    @Test
    void anImplausibleReading_jumpedUp_orJumpsAbout() {
        assertThat(AlarmText.probeImplausible(OptionalDouble.empty()).title()).startsWith("The reading jumps about");
        assertThat(AlarmText.probeImplausible(OptionalDouble.of(20)).title())
                .isEqualTo("The reading jumped up {diff:20} at once; no pan heats so fast.");
    }

    @Test
    void probesThatDisagree_areSaidWithWhatTheyShow() {
        assertThat(AlarmText.probesDisagree("one", 102.04, "other", 104.51, "Believe one."))
                .isEqualTo(new AlarmText(
                        "Two thermometers in one pan differ by {diff:2.5}: one shows {temp:102.0}, other shows {temp:104.5}.",
                        "Believe one."));
    }

    @Test
    void whatIsNotRecorded_isSaidWithItsReason() {
        assertThat(AlarmText.notRecording(new Unrecorded("the disk is full", "Make room.")))
                .isEqualTo(new AlarmText("This cook is not being recorded: the disk is full.", "Make room."));
    }
}
