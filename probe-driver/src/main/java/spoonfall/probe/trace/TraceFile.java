package spoonfall.probe.trace;

import java.io.BufferedReader;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.Reader;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.math.BigDecimal;
import java.nio.charset.MalformedInputException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVPrinter;
import org.apache.commons.csv.CSVRecord;
import org.apache.commons.csv.DuplicateHeaderMode;
import spoonfall.probe.Quality;
import spoonfall.probe.Reading;

/** The CSV half of a trace. */
final class TraceFile {
    private static final long LARGEST_BYTES = 64L * 1024 * 1024;
    private static final int MOST_OF_A_MESSAGE = 200;
    private static final double LONGEST_S = 48 * 3600;
    private static final CSVFormat READ = CSVFormat.RFC4180
            .builder()
            .setHeader()
            .setSkipHeaderRecord(true)
            .setIgnoreSurroundingSpaces(true)
            .setIgnoreEmptyLines(true)
            .setDuplicateHeaderMode(DuplicateHeaderMode.ALLOW_ALL)
            .get();
    private static final CSVFormat WRITE = CSVFormat.RFC4180;

    private TraceFile() {}

    static Trace read(Path csv) {
        try {
            if (Files.isDirectory(csv)) {
                throw new TraceException(csv + " is a folder; name a CSV file in it");
            }
            if (Files.size(csv) > LARGEST_BYTES) {
                throw new TraceException(csv + " is larger than 64 MiB; a cook never is. Cut it in pieces");
            }
            TraceInfo info = TraceMetadata.readBeside(csv);
            try (Reader reader = withoutMark(Files.newBufferedReader(csv, StandardCharsets.UTF_8));
                    CSVParser parser = READ.parse(reader)) {
                return rows(csv, parser).build(info);
            }
        } catch (NoSuchFileException e) {
            throw new TraceException("there is no file " + csv, e);
        } catch (MalformedInputException e) {
            throw new TraceException(csv + " is not UTF-8 text; save it as CSV in UTF-8", e);
        } catch (UncheckedIOException | IOException e) {
            throw new TraceException(csv + " cannot be read: " + oneLine(e), e);
        } catch (IllegalArgumentException e) {
            throw new TraceException(csv + " is not a CSV file with a heading: " + oneLine(e), e);
        }
    }

    /** Passes over a byte order mark, which spreadsheets put at the beginning. */
    private static Reader withoutMark(BufferedReader reader) throws IOException {
        reader.mark(1);
        if (reader.read() != '\ufeff') {
            reader.reset();
        }
        return reader;
    }

    private static Trace.Builder rows(Path csv, CSVParser parser) {
        List<String> names = parser.getHeaderNames();
        int time = column(csv, names, TraceMetadata.TIME);
        int temperature = column(csv, names, TraceMetadata.TEMPERATURE);
        Trace.Builder rows = new Trace.Builder();
        int count = 0;
        boolean told = false;
        Optional<TraceException> wild = Optional.empty();
        for (CSVRecord record : parser) {
            long line = parser.getCurrentLineNumber();
            if (record.size() <= Math.max(time, temperature)) {
                throw at(csv, line, "has too few columns");
            }
            double elapsedS = number(csv, line, TraceMetadata.TIME, record.get(time));
            if (elapsedS > LONGEST_S) {
                throw at(csv, line, "is more than 48 hours after the start; a cook never is");
            }
            String cell = record.get(temperature);
            OptionalDouble temperatureC = temperature(csv, line, cell);
            boolean lost = temperatureC.isEmpty() || Reading.qualityOf(temperatureC.getAsDouble()) != Quality.GOOD;
            if (lost && temperatureC.isPresent() && wild.isEmpty()) {
                wild = Optional.of(at(
                        csv, line, "has a temperature of " + shortened(cell) + " °C, which no pan thermometer shows"));
            }
            told |= !lost;
            try {
                rows.add(elapsedS, lost ? OptionalDouble.empty() : temperatureC);
            } catch (IllegalArgumentException e) {
                throw new TraceException(csv + ", line " + line + ": " + e.getMessage(), e);
            }
            count++;
        }
        if (count == 0) {
            throw new TraceException(csv + " has no rows");
        }
        if (!told && wild.isPresent()) {
            // Now and then a thermometer says such a thing, as one that has just been plugged in; never always.
            throw wild.get();
        }
        return rows;
    }

    private static OptionalDouble temperature(Path csv, long line, String cell) {
        return cell.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(number(csv, line, TraceMetadata.TEMPERATURE, cell));
    }

    private static int column(Path csv, List<String> names, String wanted) {
        int[] places = IntStream.range(0, names.size())
                .filter(i -> names.get(i).equalsIgnoreCase(wanted))
                .toArray();
        if (places.length > 1) {
            throw new TraceException(csv + " has several columns " + wanted + "; keep one of them");
        }
        if (places.length == 1) {
            return places[0];
        }
        throw new TraceException(csv + " has no column " + wanted + "; a trace needs the heading " + TraceMetadata.TIME
                + "," + TraceMetadata.TEMPERATURE);
    }

    private static double number(Path csv, long line, String column, String cell) {
        try {
            double value = Double.parseDouble(cell);
            if (Double.isFinite(value) && !isJavaOnly(cell)) {
                return value;
            }
            if (Double.isFinite(value)) {
                throw new NumberFormatException(cell);
            }
        } catch (NumberFormatException e) {
            throw new TraceException(
                    csv + ", line " + line + ": " + column + " is \"" + shortened(cell) + "\", not a number", e);
        }
        throw at(csv, line, "has " + shortened(cell) + " as " + column + "; leave it empty for a lost reading");
    }

    /** Java reads hexadecimal numbers and a final d or f, so 209.1F would become a temperature in °C. */
    private static boolean isJavaOnly(String cell) {
        char last = cell.charAt(cell.length() - 1);
        return (last != '.' && !Character.isDigit(last)) || cell.indexOf('x') >= 0 || cell.indexOf('X') >= 0;
    }

    private static TraceException at(Path csv, long line, String what) {
        return new TraceException(csv + ", line " + line + " " + what);
    }

    private static String shortened(String cell) {
        return shortened(cell, 30);
    }

    private static String shortened(String text, int most) {
        String line = text.replaceAll("\\p{Cntrl}", "·");
        return line.length() > most ? line.substring(0, most - 1) + "…" : line;
    }

    /** What a library complains of may hold the whole heading. */
    private static String oneLine(Exception e) {
        String message = e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
        return shortened(message.lines().findFirst().orElse(""), MOST_OF_A_MESSAGE);
    }

    static void write(Trace trace, Path csv) {
        try {
            try (BufferedWriter writer = Files.newBufferedWriter(csv, StandardCharsets.UTF_8)) {
                writeRows(trace, writer);
            }
            TraceMetadata.writeBeside(trace, csv);
        } catch (IOException e) {
            throw new TraceException(csv + " cannot be written: " + oneLine(e), e);
        }
    }

    static String csv(Trace trace) {
        StringWriter text = new StringWriter();
        try {
            writeRows(trace, text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    private static void writeRows(Trace trace, Writer writer) throws IOException {
        CSVPrinter printer = new CSVPrinter(writer, WRITE);
        printer.printRecord(TraceMetadata.TIME, TraceMetadata.TEMPERATURE);
        for (int i = 0; i < trace.size(); i++) {
            OptionalDouble temperatureC = trace.temperatureC(i);
            printer.printRecord(
                    decimal(Math.round(trace.elapsedS(i) * 1000) / 1000.0),
                    temperatureC.isPresent() ? decimal(temperatureC.getAsDouble()) : "");
        }
        printer.flush();
    }

    /** The shortest decimal that reads back as the same number, never with an exponent. */
    private static String decimal(double value) {
        return new BigDecimal(Double.toString(value)).stripTrailingZeros().toPlainString();
    }
}
