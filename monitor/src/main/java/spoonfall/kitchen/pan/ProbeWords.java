package spoonfall.kitchen.pan;

import java.util.List;
import spoonfall.kitchen.thermometer.ProbeState;
import spoonfall.words.Outlook;
import spoonfall.words.Saying;

/** What is said when there is no probe to speak of. */
final class ProbeWords {
    private ProbeWords() {}

    /** Before the first reading. */
    static Outlook waiting(ProbeState probe) {
        boolean lost = probe.state() == ProbeState.State.LOST;
        Saying saying = lost
                ? new Saying("No thermometer yet.", "I keep looking for it.", probe.detail())
                : new Saying("Waiting for the thermometer.", "", probe.detail());
        return new Outlook(saying, List.of(), List.of());
    }

    /** Before the first reading of a thermometer that somebody reads. */
    static Outlook waitingForTyped() {
        String note = "Stir, read it in the middle of the pan, clear of the base, and type it every minute or two.";
        return new Outlook(new Saying("Type what the thermometer shows.", "", note), List.of(), List.of());
    }

    /** While the followed thermometer lies in ice. */
    static Outlook inIce() {
        Saying saying = new Saying("Checking the thermometer in ice.", "", "The pan is not watched meanwhile.");
        return new Outlook(saying, List.of(), List.of());
    }

    /** When the device is lost or the recording is over. */
    static Outlook gone(ProbeState probe, Outlook outlook) {
        Saying last = outlook.saying();
        Saying saying = probe.state() == ProbeState.State.ENDED
                ? new Saying("The recording is over.", last.act(), "")
                : new Saying(last.state(), last.act(), probe.detail());
        return new Outlook(saying, outlook.comingUp(), List.of());
    }
}
