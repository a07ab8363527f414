package spoonfall.canning;

import java.util.ArrayList;
import java.util.List;

/** What is said beside a processing time: what must be so for it to hold, and where it is published. */
final class ProcessingWords {
    private ProcessingWords() {}

    static List<String> cautions(JarBatch batch) {
        List<String> cautions = new ArrayList<>();
        cautions.add("Never shorten a tested time. If your recipe or your local food-safety authority asks for more,"
                + " they decide.");
        cautions.add(
                "Fill the jars while the preserve is boiling hot, to 1/4 inch (6 mm) below the rim, and wipe the rims.");
        if (batch.canner() == CannerKind.STEAM) {
            cautions.add(
                    "The time starts when pure steam streams out steadily, a column of 6 to 8 inches (15 to 20 cm),"
                            + " and the canner stays shut until it is over.");
            cautions.add("If the temperature falls, the whole time starts again; the water lasts 45 min in all.");
        } else {
            cautions.add(
                    "The time starts at a full rolling boil, the lid on, with at least 1 inch (2.5 cm) of water over"
                            + " the jars.");
            cautions.add("If the boil stops, bring it back; then the whole time starts again.");
        }
        cautions.add("Steam and boiling water burn: tilt the lid away from you, and lift the jars straight up.");
        return cautions;
    }

    static List<String> sources(JarBatch batch) {
        List<String> sources = new ArrayList<>();
        sources.add("Times by elevation: USDA Complete Guide to Home Canning (Agriculture Information Bulletin 539),"
                + " jams and jellies, hot pack, half-pints or pints; Oklahoma State University Extension.");
        sources.add("10 min for jars that were not sterilised, 1/4 inch of headspace, timing from a full boil:"
                + " National Center for Home Food Preservation.");
        sources.add(
                "Sterilising empty jars, 10 min and 1 min for every 1,000 ft: Michigan State University Extension.");
        if (batch.canner() == CannerKind.STEAM) {
            sources.add(
                    "Steam: National Center for Home Food Preservation and University of Wisconsin (pH 4.6 or below,"
                            + " a tested recipe, pure steam at the boiling temperature, 45 min at most).");
        }
        return sources;
    }
}
