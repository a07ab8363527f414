package spoonfall.probe.line;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import spoonfall.fuzz.Cut;
import spoonfall.fuzz.Must;
import spoonfall.probe.Quality;
import spoonfall.probe.Reading;
import spoonfall.probe.sensor.Platinum;
import spoonfall.probe.sensor.Thermistor;
import spoonfall.probe.sensor.Thermocouple;

/** Bytes to lines, lines to temperatures, and which kind of lines they are. */
public final class LinesFuzz {
    private static final int SAMPLE = 60;

    private LinesFuzz() {}

    /** Lines of text: cut however they come, read twice alike, and written and read again. */
    public static void text(byte[] input) {
        Cut cut = new Cut(input);
        Supplier<LineFormat> format = textFormat(cut);
        int parcel = 1 + cut.next();
        byte[] bytes = cut.rest();
        List<LineSplitter.Line> lines = lines(bytes, bytes.length + 1);
        Must.equal(lines, lines(bytes, parcel), "parcels of " + parcel + " bytes make other lines");
        Must.hold(lines.size() <= bytes.length, "more lines than bytes");
        readTwice(lines, format);
    }

    /** Lines of JSON objects. */
    public static void json(byte[] input) {
        Cut cut = new Cut(input);
        String field = cut.oneOf("temp", "t.pan", "a.b", "");
        Optional<TemperatureUnit> unit = unit(cut);
        String text = cut.text();
        LineFormat format = new JsonLines(field, unit);
        for (String line : text.split("\n", -1)) {
            LineFormat.Parsed parsed = sound(format.parse(line), line);
            if (unit.isEmpty() && parsed.temperatureC().isPresent() && field.equals("temp")) {
                String written = "{\"temp\": " + parsed.temperatureC().getAsDouble() + "}";
                Must.equal(format.parse(written), parsed, "written and read again, " + written);
            }
        }
    }

    /** Which kind of lines a device sends: a sentence of bounded length, and a format that reads them. */
    public static void recogniser(byte[] input) {
        Cut cut = new Cut(input);
        Optional<TemperatureUnit> given = unit(cut);
        byte[] bytes = cut.rest();
        Recogniser recogniser = new Recogniser("/dev/ttyUSB0", 9600, given);
        recogniser.hear(bytes, bytes.length);
        List<LineSplitter.Line> lines = lines(bytes, bytes.length + 1);
        lines.forEach(recogniser::hear);
        Recogniser.Verdict verdict = recogniser.verdict();
        Must.equal(verdict.getClass(), recogniser.verdict().getClass(), "asked twice, the recogniser changes its mind");
        if (verdict instanceof Recogniser.Verdict.Refused refused) {
            Must.beOneLine(refused.why());
        } else if (verdict instanceof Recogniser.Verdict.Recognised recognised) {
            Must.beOneLine(recognised.why());
            readTwice(lines, recognised::format);
        }
    }

    private static List<LineSplitter.Line> lines(byte[] bytes, int parcel) {
        List<LineSplitter.Line> lines = new ArrayList<>();
        LineSplitter splitter = new LineSplitter();
        for (int at = 0; at < bytes.length; at += parcel) {
            byte[] part = Arrays.copyOfRange(bytes, at, Math.min(bytes.length, at + parcel));
            splitter.feed(part, part.length, lines::add);
        }
        for (LineSplitter.Line line : lines) {
            if (line instanceof LineSplitter.Line.Text text) {
                Must.hold(!text.text().isBlank(), "a blank line");
                Must.hold(text.text().length() <= LineSplitter.LONGEST, "a line that is too long");
            } else if (line instanceof LineSplitter.Line.NotText noise) {
                Must.hold(noise.sample().length() <= SAMPLE, "a sample that is too long");
            }
        }
        return lines;
    }

    private static void readTwice(List<LineSplitter.Line> lines, Supplier<LineFormat> format) {
        LineFormat one = format.get();
        LineFormat other = format.get();
        Must.beOneLine(one.description());
        for (LineSplitter.Line line : lines) {
            if (line instanceof LineSplitter.Line.Text text) {
                LineFormat.Parsed parsed = sound(one.parse(text.text()), text.text());
                Must.equal(parsed, other.parse(text.text()), "the same line, read twice");
            }
        }
    }

    /** A temperature exactly when it is good, one that a thermometer shows, and the same when it is written and read. */
    private static LineFormat.Parsed sound(LineFormat.Parsed parsed, String line) {
        boolean good = parsed.quality() == Quality.GOOD;
        Must.hold(good == parsed.temperatureC().isPresent(), "good and its temperature disagree: " + line);
        if (good) {
            double temperatureC = parsed.temperatureC().getAsDouble();
            Must.hold(
                    temperatureC >= Reading.LOWEST_C && temperatureC <= Reading.HIGHEST_C,
                    "a temperature of " + temperatureC + " from " + line);
            LineFormat plain = new TextLines(Optional.empty(), Optional.empty(), false);
            Must.equal(plain.parse("T = " + temperatureC + " C"), parsed, "written and read again");
        }
        return parsed;
    }

    private static Optional<TemperatureUnit> unit(Cut cut) {
        return cut.oneOf(
                Optional.empty(),
                Optional.of(TemperatureUnit.C),
                Optional.of(TemperatureUnit.F),
                Optional.of(TemperatureUnit.K));
    }

    private static Supplier<LineFormat> textFormat(Cut cut) {
        Optional<TemperatureUnit> unit = unit(cut);
        Meaning meaning = cut.oneOf(
                Meaning.temperature(unit),
                Meaning.temperature(unit),
                Meaning.temperatureElse(TemperatureUnit.F),
                Meaning.platinum(new Platinum(100), "Pt100"),
                Meaning.thermocouple(Thermocouple.K, "2"),
                Meaning.thermocouple(Thermocouple.J, "junction"),
                Meaning.thermistor(Thermistor.ofBeta(10_000, 3950)),
                Meaning.counts(Thermistor.ofBeta(10_000, 3950), 1023, 10_000));
        Optional<String> column =
                cut.oneOf(Optional.empty(), Optional.of("1"), Optional.of("2"), Optional.of("T1"), Optional.of("pan"));
        boolean comma = cut.next() % 2 == 1;
        return () -> new TextLines(column, meaning, comma);
    }
}
