package spoonfall.canner;

import java.util.Locale;
import java.util.OptionalDouble;
import spoonfall.canning.CannerKind;

/** What is said of the jars in the canner. */
final class CannerWords {
    private CannerWords() {}

    /** When the time that runs is up; empty when none runs. */
    static OptionalDouble dueT(CannerBatch batch) {
        return switch (batch.phase()) {
            case PROCESSING -> OptionalDouble.of(batch.dueT());
            case RESTING -> OptionalDouble.of(batch.sinceT() + CannerWatch.REST_S);
            default -> OptionalDouble.empty();
        };
    }

    static Say say(CannerBatch batch, CannerProbe probe) {
        int minutes = batch.load().time().minutes();
        return switch (batch.phase()) {
            case EMPTY -> Say.NOTHING;
            case WAITING -> waiting(batch, probe);
            case PROCESSING -> processing(batch, probe);
            case BOIL_LOST ->
                new Say(
                        steam(batch) ? "The steam fell off." : "The boil stopped.",
                        String.format(Locale.ROOT, "Bring it back: the whole %d minutes start again.", minutes),
                        shown(probe, batch) + "Heat to the highest setting, lid on. Never shorten a tested time.");
            case UNSURE ->
                new Say(
                        batch.run().awayS() > 0
                                ? "The time is up, but " + away(batch) + "."
                                : "The time is up, but the thermometer was silent for a while.",
                        "Did it boil all the while?",
                        "If nobody watched it, start the whole time again: that is the safe way.");
            case STEAM_SPENT ->
                new Say(
                        "The steam fell off, and the water may not last.",
                        "Heat off. Let it cool, add fresh water, and begin again.",
                        String.format(
                                        Locale.ROOT,
                                        "A steam canner's water lasts 45 minutes in all; the whole %d minutes no longer fit. Steam burns: lift the",
                                        minutes)
                                + " lid away from you.");
            case HEAT_OFF ->
                new Say(
                        String.format(
                                Locale.ROOT,
                                "The time is up: %d minutes at the full %s.",
                                minutes,
                                steam(batch) ? "steam" : "boil"),
                        "Heat off, lid off.",
                        "Tilt the lid away from you: steam burns. The jars stay in for five minutes.");
            case RESTING ->
                new Say(
                        "Leave the jars in.",
                        String.format(
                                Locale.ROOT, "Lift them out at {clock:%.0f}.", batch.sinceT() + CannerWatch.REST_S),
                        "");
            case LIFT_OUT ->
                new Say(
                        "Lift the jars out now.",
                        "Straight up, without tilting, onto a towel or a rack.",
                        "Away from draughts, an inch (2.5 cm) apart. Do not tighten the bands, and do not press the lids.");
        };
    }

    private static Say waiting(CannerBatch batch, CannerProbe probe) {
        int minutes = batch.load().time().minutes();
        if (steam(batch)) {
            return new Say(
                    "Waiting for steady steam.",
                    String.format(
                            Locale.ROOT,
                            "The %d minutes start when it streams out, 6 to 8 inches (15 to 20 cm) long.",
                            minutes),
                    shown(probe, batch)
                            + "From then on the canner stays shut. Steam burns: keep your hands out of it.");
        }
        return new Say(
                "Waiting for the boil.",
                String.format(Locale.ROOT, "The %d minutes start at a full rolling boil.", minutes),
                shown(probe, batch) + "Lid on, and at least 1 inch (2.5 cm) of water over the jars.");
    }

    private static Say processing(CannerBatch batch, CannerProbe probe) {
        String keep = steam(batch) ? "Keep the steam up, and the canner shut" : "Keep the boil up, and the lid on";
        String act = String.format(Locale.ROOT, "%s, until {clock:%.0f}.", keep, batch.dueT());
        String again = batch.run().restarts() == 0 ? "" : "The whole time started again. ";
        String away =
                batch.run().awayS() > 0 ? "At its end you are asked whether it boiled: " + away(batch) + ". " : "";
        String watch = switch (probe.state()) {
            case READING -> shown(probe, batch);
            case SILENT ->
                String.format(
                        Locale.ROOT,
                        "No word from the canner's thermometer since {clock:%.0f}. Look whether it boils.",
                        probe.heardT());
            case ODD -> shown(probe, batch) + "Look whether it boils.";
            case NONE, SET_ASIDE -> "Nobody but you watches it: if it stops, say so, and the time starts again.";
        };
        return new Say(steam(batch) ? "Steaming." : "At the boil.", act, (again + away + watch).strip());
    }

    private static String shown(CannerProbe probe, CannerBatch batch) {
        if (probe.temperatureC().isEmpty()) {
            return "";
        }
        double shownC = probe.temperatureC().getAsDouble();
        String boils = String.format(
                Locale.ROOT, "water boils at {temp:%.1f} here.", batch.load().waterBoilC());
        return switch (probe.state()) {
            case READING -> String.format(Locale.ROOT, "The canner is at {temp:%.1f}; %s ", shownC, boils);
            case ODD ->
                String.format(
                        Locale.ROOT,
                        "The canner's thermometer shows {temp:%.1f}, which water cannot have: is its tip in the water? ",
                        shownC);
            default -> "";
        };
    }

    private static boolean steam(CannerBatch batch) {
        return batch.load().batch().canner() == CannerKind.STEAM;
    }

    /** That Spoonfall was away, and for how long. */
    private static String away(CannerBatch batch) {
        long seconds = Math.max(1, Math.round(batch.run().awayS()));
        String howLong = seconds < 120 ? seconds + " s" : hours(batch.run().awayS());
        return "Spoonfall was away for " + howLong + ", and nothing watched the boil";
    }

    /** What an alarm says. */
    static Say call(CannerAlarmName name, CannerBatch batch) {
        int minutes = batch.load().time().minutes();
        return switch (name) {
            case BOIL_LOST ->
                batch.phase() == CannerPhase.STEAM_SPENT
                        ? new Say("The steam canner may run dry.", "Heat off. Let it cool, and add fresh water.", "")
                        : new Say(
                                steam(batch) ? "The steam in the canner fell off." : "The canner stopped boiling.",
                                String.format(Locale.ROOT, "Bring it back: the whole %d minutes start again.", minutes),
                                "");
            case PROCESSED ->
                batch.phase() == CannerPhase.UNSURE
                        ? new Say("The jars' time is up.", "Did the canner boil all the while?", "")
                        : new Say("The jars' time is up.", "Turn the canner off, and take its lid off.", "");
            case LIFT_OUT -> new Say("The jars have rested.", "Lift them out, straight up.", "");
        };
    }

    /** So many seconds as whole minutes, rounded up, such as "3 minutes". */
    static String minutes(double seconds) {
        long minutes = Math.max(1, (long) Math.ceil(seconds / 60));
        return minutes == 1 ? "1 minute" : minutes + " minutes";
    }

    /** So many seconds as hours and minutes, such as "11 h 20 min". */
    static String hours(double seconds) {
        long minutes = Math.max(1, (long) Math.ceil(seconds / 60));
        return minutes < 60 ? minutes + " min" : minutes / 60 + " h " + minutes % 60 + " min";
    }
}
