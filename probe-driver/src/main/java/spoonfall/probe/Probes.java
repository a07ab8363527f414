package spoonfall.probe;

import java.io.IOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.LongSupplier;
import spoonfall.probe.serial.AskingLine;

/** Opens several probes together. Modbus instruments on one serial line share its port and are asked in turn. */
public final class Probes {
    private Probes() {}

    /**
     * Makes the probes, not yet started, in the order of {@code specs}.
     *
     * @param specs differently named
     * @param nanoClock the monotonic clock that stamps readings
     * @throws IllegalArgumentException with one line, if two of them cannot be open at once
     * @throws spoonfall.probe.trace.TraceException if a trace cannot be read
     */
    public static List<Probe> openAll(List<NamedSpec> specs, LongSupplier nanoClock) {
        Map<String, List<NamedSpec>> lines = lines(specs);
        Map<String, Probe> opened = new HashMap<>();
        lines.values().forEach(line -> openLine(line, nanoClock).forEach(probe -> opened.put(probe.name(), probe)));
        List<Probe> probes = new ArrayList<>();
        for (NamedSpec named : specs) {
            Probe shared = opened.get(named.name());
            probes.add(shared != null ? shared : named.spec().open(named.name(), nanoClock));
        }
        return List.copyOf(probes);
    }

    /** Why two probes cannot be open at once, in one line; empty if they can. */
    public static Optional<String> clash(NamedSpec one, NamedSpec other) {
        boolean apart = one.spec().kind() == ProbeSpec.Kind.TRACE
                || other.spec().kind() == ProbeSpec.Kind.TRACE
                || !device(one.spec().place()).equals(device(other.spec().place()));
        return apart ? Optional.empty() : clashOnOneLine(one, other);
    }

    /** Who is on which line, checked. */
    private static Map<String, List<NamedSpec>> lines(List<NamedSpec> specs) {
        Map<String, List<NamedSpec>> lines = new LinkedHashMap<>();
        Set<String> names = new HashSet<>();
        for (NamedSpec named : specs) {
            if (!names.add(named.name())) {
                throw new IllegalArgumentException(
                        "two probes are called " + named.name() + "; give each a name of its own");
            }
            if (named.spec().kind() != ProbeSpec.Kind.TRACE && named.spec().kind() != ProbeSpec.Kind.HAND) {
                List<NamedSpec> line = lines.computeIfAbsent(device(named.spec().place()), place -> new ArrayList<>());
                line.forEach(other -> clashOnOneLine(other, named).ifPresent(clash -> {
                    throw new IllegalArgumentException(clash);
                }));
                line.add(named);
            }
        }
        return lines;
    }

    private static List<Probe> openLine(List<NamedSpec> line, LongSupplier nanoClock) {
        ProbeSpec first = line.get(0).spec();
        if (line.size() == 1) {
            return List.of(first.open(line.get(0).name(), nanoClock));
        }
        List<AskingLine.Asked> asked = line.stream()
                .map(named -> new AskingLine.Asked(named.name(), named.spec().question(false)))
                .toList();
        return AskingLine.open(first.serial(), asked, nanoClock);
    }

    /** The device behind a link, so that two names of one port are known for what they are. */
    private static String device(String place) {
        try {
            return Path.of(place).toRealPath().toString();
        } catch (IOException | InvalidPathException e) {
            return place; // not there now, or no file in this system: its name is all there is
        }
    }

    private static Optional<String> clashOnOneLine(NamedSpec one, NamedSpec other) {
        String both = "probes " + one.name() + " and " + other.name();
        String place = one.spec().place();
        if (one.spec().kind() != ProbeSpec.Kind.MODBUS || other.spec().kind() != ProbeSpec.Kind.MODBUS) {
            return Optional.of(both + " cannot both have the port " + place
                    + ": only probes of kind modbus share one; give each its own");
        }
        if (!place.equals(other.spec().place())) {
            return Optional.of(both + " have the same port under two names, " + place + " and "
                    + other.spec().place() + "; use one of them for both");
        }
        String settings = one.spec().serial().description();
        String otherSettings = other.spec().serial().description();
        if (!settings.equals(otherSettings)) {
            return Optional.of(both + " share " + place + ", but one is at " + settings + " and the other at "
                    + otherSettings + "; set both to what the instruments are set to");
        }
        if (ModbusOptions.register(one.spec().options())
                .sameAs(ModbusOptions.register(other.spec().options()))) {
            return Optional.of(both + " read the same register of the same instrument at " + place
                    + "; give one of them another id or register");
        }
        return Optional.empty();
    }
}
