package spoonfall.kitchen.thermometer;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import spoonfall.calibration.Reference;
import spoonfall.kitchen.ask.Refusal;

/**
 * How the check of a thermometer stands.
 *
 * @param probe which thermometer
 * @param in what it is compared with
 * @param why in one sentence what is so; carries marks for units
 * @param shownC what it showed last, uncorrected, in °C
 * @param points its last two minutes, uncorrected; at most 120
 * @param referenceC what is true there, in °C; empty when nobody said how high the kitchen is
 * @param pointC what it showed on the plateau, in °C; empty while that is waited for
 * @param correctionC what must be added to it, in °C; empty when that is not known
 * @param half95C how far that may be off, in °C, 19 times of 20
 * @param waterBoilC what today's water boil would be by it, in °C
 * @param cannotCorrect why the thermometer cannot be corrected by it, with the way out
 * @param boiledToo whether boiling water was found before, in the same check
 */
public record CheckView(
        String probe,
        In in,
        String why,
        OptionalDouble shownC,
        List<Shown> points,
        OptionalDouble referenceC,
        OptionalDouble pointC,
        OptionalDouble correctionC,
        OptionalDouble half95C,
        OptionalDouble waterBoilC,
        Optional<String> cannotCorrect,
        boolean boiledToo) {

    /** What a thermometer is compared with. */
    public enum In {
        /** Plain water at a rolling boil. */
        BOILING_WATER("boiling-water", Reference.Kind.BOILING_WATER),
        /** A well-stirred slush of ice and water. */
        ICE("ice", Reference.Kind.ICE);

        private final String wireName;
        private final Reference.Kind kind;

        In(String wireName, Reference.Kind kind) {
            this.wireName = wireName;
            this.kind = kind;
        }

        /** The name on the wire, such as {@code boiling-water}. */
        public String wireName() {
            return wireName;
        }

        /** The kind of reference that it is. */
        public Reference.Kind kind() {
            return kind;
        }

        static In of(Reference.Kind kind) {
            return kind == Reference.Kind.ICE ? ICE : BOILING_WATER;
        }

        /** By its name on the wire; a {@link Refusal} if there is none such. */
        public static In named(String text) {
            for (In in : values()) {
                if (in.wireName.equals(text)) {
                    return in;
                }
            }
            throw new Refusal("\"in\" must be boiling-water or ice, not \"" + text + "\"");
        }
    }

    /**
     * What it showed.
     *
     * @param s seconds since the check began
     * @param temperatureC in °C, uncorrected
     */
    public record Shown(double s, double temperatureC) {}
}
