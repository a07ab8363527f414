package spoonfall.afternoon;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import spoonfall.afternoon.Step.Kind;
import spoonfall.cook.ReminderName;

/**
 * How an afternoon of marmalade usually goes, until the cook's own notes say otherwise. The minutes are common practice, no
 * source, but for the five minutes of rest after processing and the 12 to 24 hours of cooling (USDA Complete Guide to Home
 * Canning, AIB 539). The minutes of processing only plan the afternoon: the tested recipe and the jars' timer decide.
 */
public final class UsualAfternoon {
    private static final String SPIRIT = "Only if you use one: off the heat, away from flames.";

    private UsualAfternoon() {}

    /** The notes of an afternoon that nobody changed. */
    public static BatchNotes notes() {
        return new BatchNotes(
                List.of(
                        step("soften", "Soften the peel", 90, Kind.TOLD, Sight.PAN_ON, null, "The peel is soft", ""),
                        step(
                                "sugar",
                                "Stir the sugar in",
                                10,
                                Kind.TOLD,
                                Sight.SUGAR,
                                null,
                                "The sugar has melted",
                                "Hot sugar sticks and burns: long sleeves, nobody leaning over it."),
                        step("boil", "Boil it hard", 25, Kind.TOLD, Sight.BOIL, null, "It is time to test", ""),
                        step(
                                "test",
                                "Test the set",
                                10,
                                Kind.TOLD,
                                Sight.WINDOW,
                                null,
                                "It has set",
                                "Take the pan off the heat for each test."),
                        step("off", "Take it off the heat", 1, Kind.TOLD, null, Sight.OFF, "It is off the heat", ""),
                        step(
                                "spirit",
                                "Stir a spirit in, if you like",
                                2,
                                Kind.OPTIONAL,
                                null,
                                null,
                                "It is in",
                                SPIRIT),
                        step(
                                "rest",
                                "Let it rest",
                                10,
                                Kind.TIMED,
                                null,
                                null,
                                "It has rested",
                                "It thickens a little, so that the peel does not float."),
                        step(
                                "fill",
                                "Fill the jars",
                                10,
                                Kind.TOLD,
                                null,
                                null,
                                "The jars are full",
                                "It still burns: hot jars, a funnel, and the headspace of your recipe."),
                        step("wipe", "Wipe the rims", 2, Kind.TOLD, null, null, "The rims are clean", ""),
                        step(
                                "lid",
                                "Put the lids on",
                                2,
                                Kind.TOLD,
                                null,
                                null,
                                "The lids are on",
                                "As tight as fingertips make them."),
                        step(
                                "process",
                                "Process the jars",
                                10,
                                Kind.TOLD,
                                null,
                                null,
                                "They are processed",
                                "Your tested recipe and the jars' timer say how long; these minutes only plan the afternoon."),
                        step(
                                "rest-jars",
                                "Heat off, lid off, and wait",
                                5,
                                Kind.TIMED,
                                null,
                                null,
                                "They have waited",
                                "Steam burns: open the lid away from you."),
                        step(
                                "cool",
                                "Lift the jars out to cool",
                                12 * 60,
                                Kind.TIMED,
                                null,
                                null,
                                "They are cool",
                                "12 to 24 hours, apart and out of the draught. Do not tighten the lids again.")),
                List.of(
                        reminded(
                                "plates",
                                "Put the plates in the freezer",
                                ReminderName.CHILL_PLATES,
                                "test",
                                null,
                                "The plates are in"),
                        // jars that are still cold when it has set must be hot when it is ladled into them
                        reminded(
                                "jars", "Warm the jars", ReminderName.WARM_JARS, "off", "fill", "The jars are warming"),
                        new Preparation(
                                "canner",
                                "Heat the canner",
                                30,
                                "process",
                                Optional.empty(),
                                Optional.empty(),
                                "The canner is on")));
    }

    private static Step step(
            String id,
            String name,
            int minutes,
            Kind kind,
            @Nullable Sight begunBy,
            @Nullable Sight endedBy,
            String doneLabel,
            String note) {
        return new Step(
                id, name, minutes, kind, Optional.ofNullable(begunBy), Optional.ofNullable(endedBy), doneLabel, note);
    }

    private static Preparation reminded(
            String id, String name, ReminderName by, String before, @Nullable String until, String doneLabel) {
        int minutes = (int) Math.round(by.leadS() / 60);
        return new Preparation(id, name, minutes, before, Optional.ofNullable(until), Optional.of(by), doneLabel);
    }
}
