package spoonfall.lesson;

import java.util.Optional;
import java.util.OptionalDouble;
import spoonfall.cook.Stage;
import spoonfall.cook.calm.CalmTime;
import spoonfall.words.Saying;

/**
 * What was seen and said at one second of a cook. What was not known then is empty.
 *
 * @param t seconds of the cook
 * @param temperatureC the pan's temperature in °C
 * @param stage where the cook was
 * @param saying what was said, with marks
 * @param sets when it was to set, as it was told
 */
public record Frame(double t, OptionalDouble temperatureC, Stage stage, Saying saying, Optional<CalmTime.Shown> sets) {}
