package spoonfall.learn;

import java.util.Optional;
import java.util.OptionalDouble;

/** What a plan of the batch knows that the thermometer does not. What is not known is empty. */
public interface Evidence {
    /** How well the fruit sets by itself. */
    enum Setting {
        /** It has enough pectin and acid. */
        ENOUGH,
        /** It may need some. */
        PERHAPS,
        /** It always needs acid, pectin or both. */
        NEEDS
    }

    /** Grams of sugar to a gram of fruit. */
    OptionalDouble sugarToFruit();

    /** How well most of the fruit sets by itself. */
    Optional<Setting> setting();

    /** The pH of the batch. */
    OptionalDouble ph();
}
