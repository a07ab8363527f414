package spoonfall.lesson;

import java.util.Optional;
import java.util.OptionalDouble;
import spoonfall.cook.Forecast;
import spoonfall.cook.Stage;
import spoonfall.words.Saying;

/**
 * What was seen and said at one second of a cook. What was not known then is empty.
 *
 * @param t seconds of the cook
 * @param temperatureC the pan's temperature in °C
 * @param stage where the cook was
 * @param saying what was said, with marks
 * @param forecast when it was to set
 */
public record Frame(double t, OptionalDouble temperatureC, Stage stage, Saying saying, Optional<Forecast> forecast) {}
