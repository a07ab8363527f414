package spoonfall.canner;

import java.util.ArrayList;
import java.util.List;
import spoonfall.canning.CannerKind;

/** What a tap can say, phase by phase. */
final class CannerOffers {
    private CannerOffers() {}

    static List<CannerOffer> of(CannerBatch batch, CannerProbe probe) {
        boolean steam = batch.load().batch().canner() == CannerKind.STEAM;
        List<CannerOffer> offers = new ArrayList<>();
        switch (batch.phase()) {
            case WAITING -> offers.add(main(CannerTap.BOILS, steam ? "It steams steadily" : "It is at a full boil"));
            case PROCESSING -> {
                if (probe.state() == CannerProbe.State.SILENT || probe.state() == CannerProbe.State.ODD) {
                    offers.add(main(CannerTap.BOILS, steam ? "It still steams" : "It still boils"));
                }
                offers.add(quiet(CannerTap.BOIL_LOST, steam ? "The steam fell off" : "It stopped boiling"));
            }
            case BOIL_LOST ->
                offers.add(main(CannerTap.BOILS, steam ? "It steams steadily again" : "It is at a full boil again"));
            case UNSURE -> {
                offers.add(main(CannerTap.BOILED, "Yes, it boiled all the while"));
                offers.add(quiet(CannerTap.BOIL_LOST, "No, or not sure: start the time again"));
            }
            case STEAM_SPENT -> offers.add(main(CannerTap.AGAIN, "Fresh water is in: begin again"));
            case HEAT_OFF -> offers.add(main(CannerTap.HEAT_OFF, "Heat and lid are off"));
            case LIFT_OUT -> offers.add(main(CannerTap.LIFTED, "They are out"));
            case EMPTY, RESTING -> {}
        }
        if (watched(batch.phase())) {
            if (probe.state() == CannerProbe.State.SET_ASIDE) {
                offers.add(quiet(CannerTap.BY_PROBE, "Let the thermometer watch it again"));
            } else if (probe.state() != CannerProbe.State.NONE) {
                offers.add(quiet(CannerTap.BY_TAPS, "Go by what I see, not by the thermometer"));
            }
        }
        offers.add(quiet(CannerTap.CLEAR, "Give up this load"));
        return offers;
    }

    private static boolean watched(CannerPhase phase) {
        return phase == CannerPhase.WAITING || phase == CannerPhase.PROCESSING || phase == CannerPhase.BOIL_LOST;
    }

    private static CannerOffer main(CannerTap tap, String label) {
        return new CannerOffer(tap, label, true);
    }

    private static CannerOffer quiet(CannerTap tap, String label) {
        return new CannerOffer(tap, label, false);
    }
}
