package spoonfall.kitchen.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.tomlj.TomlArray;
import org.tomlj.TomlPosition;
import org.tomlj.TomlTable;
import spoonfall.probe.NamedSpec;
import spoonfall.probe.ProbeSpec;
import spoonfall.probe.Probes;
import spoonfall.probe.hand.HandProbe;
import spoonfall.units.Quantities;

/** The pans and probes of a kitchen file: what each is called, and which probe is where. */
final class PanTables {
    private static final List<String> PROBE_KEYS = Stream.concat(
                    Stream.of("name", "kind", "place", "pan", "in"), ProbeSpec.optionNames().stream())
            .toList();
    private static final List<String> PAN_KEYS = List.of("name", "batch", "rise");

    private final KitchenToml keys;
    private final List<PanEntry> pans;
    private final List<Placed> probes;

    /** Reads them. */
    PanTables(KitchenToml keys) {
        this.keys = keys;
        List<PanEntry> named = named();
        probes = probes(named);
        pans = filled(named);
    }

    /** The pans with their thermometers; one if there are thermometers and nothing is said of pans. */
    List<PanEntry> pans() {
        return pans;
    }

    /** The thermometer in the canner. */
    Optional<NamedSpec> canner() {
        return probes.stream().filter(Placed::inCanner).map(Placed::probe).findFirst();
    }

    /**
     * A probe and where it is.
     *
     * @param where the pan's name; empty in the canner
     */
    private record Placed(NamedSpec probe, String where) {
        boolean inCanner() {
            return where.isEmpty();
        }
    }

    /** The pans that have tables, with no thermometer in them yet. */
    private List<PanEntry> named() {
        TomlArray tables = keys.tables("pan");
        List<PanEntry> pans = new ArrayList<>();
        for (int i = 0; i < tables.size(); i++) {
            TomlTable table = tables.getTable(i);
            TomlPosition at = tables.inputPositionOf(i);
            keys.refuseUnknown(table, PAN_KEYS);
            String name = keys.text(table, "name")
                    .orElseThrow(() -> keys.complaint(at, "pan", "needs a name, such as name = \"big pan\""));
            if (pans.stream().anyMatch(other -> other.name().equals(name))) {
                throw keys.complaint(at, "pan", "two pans are called " + name + "; give each a name of its own");
            }
            Optional<String> batch = keys.text(table, "batch").or(() -> keys.text(keys.toml(), "batch"));
            Optional<Double> riseC = keys.quantity(table, "rise", Quantities::differenceC);
            try {
                pans.add(new PanEntry(name, batch, riseC, List.of()));
            } catch (IllegalArgumentException e) {
                throw keys.complaint(table, "name", e.getMessage());
            }
        }
        return pans;
    }

    /** Which pan a probe is in; empty for the canner. */
    private String where(TomlTable probe, List<PanEntry> pans) {
        String in = keys.text(probe, "in").orElse("pan");
        Optional<String> pan = keys.text(probe, "pan");
        if (in.equals("canner") && pan.isPresent()) {
            throw keys.complaint(probe, "pan", "a probe in the canner is in no pan; leave one of the two out");
        }
        if (!in.equals("canner") && !in.equals("pan")) {
            throw keys.complaint(probe, "in", "must be \"pan\" or \"canner\", not \"" + in + "\"");
        }
        if (in.equals("canner")) {
            return "";
        }
        List<String> names = pans.stream().map(PanEntry::name).toList();
        String usual = names.isEmpty() ? PanEntry.ONLY : names.get(0);
        if (pan.isPresent() && !names.contains(pan.get())) {
            String hint = names.isEmpty()
                    ? "give it a table [[pan]] with name = \"" + pan.get() + "\""
                    : "there are " + String.join(", ", names);
            throw keys.complaint(probe, "pan", "no [[pan]] is called " + pan.get() + "; " + hint);
        }
        return pan.orElse(usual);
    }

    /** A probe to which nobody gave a name is called after the place where it is. */
    private static String usualName(String where, List<Placed> before, boolean pansHaveNames) {
        if (where.isEmpty()) {
            return "canner";
        }
        if (!pansHaveNames) {
            return KitchenFile.nameOf(
                    (int) before.stream().filter(one -> !one.inCanner()).count());
        }
        long there = before.stream().filter(one -> one.where().equals(where)).count();
        return there == 0 ? where : where + " " + (there + 1);
    }

    private void refuseBoth(Placed one, Placed other, @Nullable TomlPosition at) {
        String name = other.probe().name();
        if (one.probe().name().equals(name)) {
            throw keys.complaint(at, "probe", "two probes are called " + name + "; give each a name of its own");
        }
        if (one.inCanner() && other.inCanner()) {
            throw keys.complaint(at, "probe", one.probe().name() + " is in the canner already; it takes one probe");
        }
        Probes.clash(one.probe(), other.probe()).ifPresent(clash -> {
            throw keys.complaint(at, "probe", clash);
        });
    }

    private List<PanEntry> filled(List<PanEntry> named) {
        boolean bare = named.isEmpty() && probes.stream().anyMatch(probe -> !probe.inCanner());
        PanEntry only = new PanEntry(PanEntry.ONLY, keys.text(keys.toml(), "batch"), Optional.empty(), List.of());
        List<PanEntry> pans = new ArrayList<>(bare ? List.of(only) : named);
        pans.replaceAll(pan -> {
            PanEntry filled = pan;
            for (Placed probe : probes) {
                filled = probe.where().equals(pan.name()) ? filled.with(probe.probe()) : filled;
            }
            return filled;
        });
        return pans;
    }

    private List<Placed> probes(List<PanEntry> pans) {
        TomlArray tables = keys.tables("probe");
        List<Placed> probes = new ArrayList<>();
        for (int i = 0; i < tables.size(); i++) {
            TomlPosition at = tables.inputPositionOf(i);
            TomlTable table = tables.getTable(i);
            String where = where(table, pans);
            NamedSpec probe = probe(table, at, usualName(where, probes, !pans.isEmpty()));
            for (Placed other : probes) {
                refuseBoth(other, new Placed(probe, where), at);
            }
            probes.add(new Placed(probe, where));
        }
        return probes;
    }

    private NamedSpec probe(TomlTable probe, TomlPosition at, String usualName) {
        keys.refuseUnknown(probe, PROBE_KEYS);
        Map<String, String> options = new LinkedHashMap<>();
        for (String key : ProbeSpec.optionNames()) {
            Object option = probe.get(key);
            if (option instanceof TomlArray || option instanceof TomlTable) {
                throw keys.complaint(probe, key, "must be a single value");
            }
            if (option != null) {
                options.put(key, option.toString());
            }
        }
        String kind = keys.text(probe, "kind").orElse("auto");
        String place = keys.text(probe, "place")
                .or(() -> kind.equals("hand") ? Optional.of(HandProbe.PLACE) : Optional.empty())
                .orElseThrow(() -> keys.complaint(at, "probe", "needs a place, such as place = \"/dev/ttyUSB0\""));
        String name = keys.text(probe, "name").orElse(usualName);
        try {
            return new NamedSpec(name, ProbeSpec.of(kind, place, options));
        } catch (IllegalArgumentException e) {
            throw keys.complaint(at, "probe", e.getMessage());
        }
    }
}
