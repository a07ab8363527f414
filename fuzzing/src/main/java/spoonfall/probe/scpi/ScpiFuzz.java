package spoonfall.probe.scpi;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import spoonfall.fuzz.Cut;
import spoonfall.fuzz.Must;
import spoonfall.probe.Quality;
import spoonfall.probe.Reading;
import spoonfall.probe.line.LineSplitter;
import spoonfall.probe.line.TemperatureUnit;
import spoonfall.probe.line.TextLines;
import spoonfall.probe.serial.Question;

/** Answers to SCPI queries. */
public final class ScpiFuzz {
    private ScpiFuzz() {}

    /** A line as an answer: an outcome that agrees with itself, and the same when an instrument writes it. */
    public static void answers(byte[] input) {
        Cut cut = new Cut(input);
        Optional<TemperatureUnit> unit = cut.oneOf(
                Optional.of(TemperatureUnit.C), Optional.of(TemperatureUnit.F), Optional.<TemperatureUnit>empty());
        Optional<String> column = cut.oneOf(Optional.empty(), Optional.of("2"));
        byte[] bytes = cut.rest();
        List<String> lines = new ArrayList<>();
        LineSplitter splitter = new LineSplitter();
        splitter.feed(new byte[] {'\n'}, 1, line -> {});
        splitter.feed(bytes, bytes.length, line -> {
            if (line instanceof LineSplitter.Line.Text text) {
                lines.add(text.text());
            }
        });
        for (String line : lines) {
            Question.Outcome outcome = question(column, unit).read(line);
            boolean good = outcome.quality() == Quality.GOOD;
            Must.hold(good == outcome.temperatureC().isPresent(), "good and its temperature disagree: " + line);
            if (!outcome.trouble().isEmpty()) {
                Must.beOneLine(outcome.trouble());
            }
            if (good) {
                double temperatureC = outcome.temperatureC().getAsDouble();
                Must.hold(
                        temperatureC >= Reading.LOWEST_C && temperatureC <= Reading.HIGHEST_C,
                        "a temperature of " + temperatureC);
                Must.hold(!line.endsWith("9.9E37") || line.length() > 7, "an overload that is a temperature: " + line);
                String plain = new BigDecimal(temperatureC)
                        .setScale(9, RoundingMode.HALF_EVEN)
                        .toPlainString();
                String written = (temperatureC < 0 ? "" : "+") + plain + "E+00";
                OptionalDouble again = question(Optional.empty(), Optional.of(TemperatureUnit.C))
                        .read(written)
                        .temperatureC();
                Must.equal(again, OptionalDouble.of(Double.parseDouble(written)), "written and read again");
            }
        }
    }

    private static ScpiQuestion question(Optional<String> column, Optional<TemperatureUnit> unit) {
        return new ScpiQuestion("MEASure:TEMPerature?", new TextLines(column, unit, false));
    }
}
