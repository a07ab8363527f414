package spoonfall.cli.probe;

import java.io.PrintWriter;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import spoonfall.calibration.Correction;
import spoonfall.calibration.Point;
import spoonfall.calibration.Reference;
import spoonfall.cli.option.CommandException;
import spoonfall.cli.option.CookOptions;
import spoonfall.cli.option.DataOption;
import spoonfall.cli.option.MisuseException;
import spoonfall.cli.option.Output;
import spoonfall.cli.option.Understood;
import spoonfall.cook.WaterBoil;
import spoonfall.kitchen.file.KitchenFile;
import spoonfall.log.CalibrationBook;
import spoonfall.probe.ProbeSpec;
import spoonfall.units.Quantities;

/** {@code spoonfall calibrate}: compares a thermometer with boiling water, and with ice, and keeps the correction. */
@Command(
        name = "calibrate",
        description = "Compare a thermometer with boiling water (and ice), and keep the correction.",
        footer = {
            "",
            "For example:",
            "  spoonfall calibrate --probe auto:/dev/ttyUSB0 --elevation 1240m",
            "  spoonfall calibrate --probe auto:/dev/ttyUSB0 --pressure 898hPa --ice",
            "  spoonfall calibrate --probe auto:/dev/ttyUSB0 --undo",
            "  spoonfall calibrate --list"
        })
public final class CalibrateCommand implements Callable<Integer> {
    @Spec
    private @Nullable CommandSpec spec;

    @Option(
            names = "--probe",
            paramLabel = "PROBE",
            description = "The thermometer, as for serve; only --list can do without.")
    private @Nullable String probe;

    @Option(names = "--ice", description = "Compare it with ice too, after the boiling water.")
    private boolean ice;

    @Option(names = "--undo", description = "Take its latest calibration back; the one before counts again.")
    private boolean undo;

    @Option(names = "--list", description = "List its calibrations, or without --probe those of all thermometers.")
    private boolean list;

    @Option(names = "--minutes", paramLabel = "N", description = "How long to wait for each plateau; 20 unless given.")
    private double minutes = 20;

    @Option(names = "--speed", hidden = true, description = "How fast time passes; for a thermometer played at speed.")
    private String speed = "1";

    @Mixin
    private DataOption data = new DataOption();

    @Mixin
    private CookOptions cook = new CookOptions();

    @Override
    public Integer call() throws InterruptedException {
        PrintWriter out = Output.of(spec);
        CalibrationBook book = data.folder().calibrations();
        if (probe == null) {
            listAll(book, out);
            return 0;
        }
        ProbeSpec thermometer = Understood.value(probe, ProbeSpec::parse);
        String identity = thermometer.identity();
        if (undo) {
            CalibrationBook.Entry entry = book.undo(identity)
                    .orElseThrow(() -> new CommandException(thermometer.place() + " has no calibration to take back"));
            out.println("Took back: " + words(entry, thermometer));
            return 0;
        }
        if (list) {
            List<CalibrationBook.Entry> entries = book.entries().stream()
                    .filter(entry -> entry.probe().equals(identity))
                    .toList();
            entries.forEach(entry -> out.println(words(entry, thermometer) + (entry.undone() ? " (taken back)" : "")));
            if (entries.isEmpty()) {
                out.println(thermometer.place() + " was never calibrated.");
            }
            return 0;
        }
        book.latest(identity); // a book that cannot be read is found out now, not after the boil
        measure(thermometer, book, out);
        return 0;
    }

    private void listAll(CalibrationBook book, PrintWriter out) {
        if (undo || !list) {
            throw new MisuseException("which thermometer? Give --probe auto:/dev/ttyUSB0, as for serve; "
                    + "\"spoonfall calibrate --list\" shows those that were calibrated");
        }
        List<CalibrationBook.Entry> entries = book.entries();
        for (CalibrationBook.Entry entry : entries) {
            String place = entry.place().equals(entry.probe()) ? "" : " (" + entry.place() + ")";
            out.println(entry.probe() + place + ": " + words(entry) + (entry.undone() ? " (taken back)" : ""));
        }
        if (entries.isEmpty()) {
            out.println("No thermometer was calibrated yet.");
        }
    }

    private void measure(ProbeSpec thermometer, CalibrationBook book, PrintWriter out) throws InterruptedException {
        if (cook.settings(KitchenFile.empty()).waterBoil().from() == WaterBoil.From.MEASURED) {
            throw new MisuseException("a water boil that this thermometer measured cannot correct it; "
                    + "give --elevation 1240m or --pressure 898hPa instead of --water-boil");
        }
        WaterBoil boil = cook.declared(KitchenFile.empty())
                .orElseThrow(() ->
                        new MisuseException("where does water boil here? Give --elevation 1240m or --pressure 898hPa"));
        out.printf(
                Locale.ROOT,
                "Water boils at %.2f °C here (%s, true to ±%.1f °C).%n",
                boil.temperatureC(),
                boil.detail(),
                boil.doubtC());
        out.println("Put the tip into plain water at a rolling boil, clear of the base. Hot steam burns.");
        double times = Understood.value(speed, Quantities::factor);
        List<Point> points = new ArrayList<>();
        try (PlateauWatch watch = PlateauWatch.open(thermometer, minutes, times, out)) {
            points.add(watch.await(Reference.boilingWater(boil.temperatureC(), boil.doubtC())));
            if (ice) {
                out.println("Now into a well-stirred slush of clean crushed ice and water.");
                points.add(watch.await(Reference.ice()));
            }
        }
        Correction correction = new Correction(points);
        String identity = thermometer.identity();
        CalibrationBook.Entry entry = new CalibrationBook.Entry(
                identity, thermometer.place(), Instant.now(), boil.detail(), false, correction);
        Optional<CalibrationBook.Entry> before = book.latest(identity);
        book.add(entry);
        out.println("Kept: " + words(entry, thermometer));
        before.ifPresent(old -> out.println("Before: " + words(old, thermometer)));
    }

    private static String words(CalibrationBook.Entry entry, ProbeSpec thermometer) {
        List<Point> points = entry.correction().points();
        if (points.size() > 1) {
            return words(entry);
        }
        double perDegreeC = thermometer.limitC(points.get(0).reference().temperatureC()) / 100;
        return words(entry) + String.format(Locale.ROOT, ", and ±%.3f °C more a degree away", perDegreeC);
    }

    private static String words(CalibrationBook.Entry entry) {
        StringBuilder text =
                new StringBuilder(entry.at().toString().substring(0, 16).replace('T', ' '));
        text.append(", ").append(entry.conditions()).append(':');
        for (Point point : entry.correction().points()) {
            text.append(String.format(
                    Locale.ROOT,
                    " at %.1f °C add %+.2f °C (±%.2f, 19 times of 20; noise %.2f, drift %.2f, reference ±%.2f)",
                    point.reference().temperatureC(),
                    point.correctionC(),
                    point.half95C(),
                    point.noiseC(),
                    point.driftC(),
                    point.reference().limitC()));
        }
        return text.toString();
    }
}
