package spoonfall.kitchen.file;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import spoonfall.afternoon.BatchNotes;
import spoonfall.fuzz.Must;
import spoonfall.fuzz.Scratch;
import spoonfall.probe.NamedSpec;

/** Kitchen files and batch notes. */
public final class TomlFuzz {
    private TomlFuzz() {}

    /** A kitchen file is refused in one line that names it, or says the same when it is written and read again. */
    public static void kitchenFile(byte[] input) {
        Path file = Scratch.holding("kitchen.toml", input);
        KitchenFile kitchen;
        try {
            kitchen = KitchenFile.read(file);
        } catch (IllegalArgumentException e) {
            complaint(e, file);
            return;
        }
        Set<String> pans = new HashSet<>();
        Set<String> probes = new HashSet<>();
        kitchen.pans().forEach(pan -> Must.hold(pans.add(pan.name()), "two pans called " + pan.name()));
        kitchen.probes().forEach(probe -> Must.hold(probes.add(probe.name()), "two probes called " + probe.name()));
        finite(kitchen.elevationM());
        finite(kitchen.pressurePa());
        finite(kitchen.riseC());
        kitchen.pans().forEach(pan -> finite(pan.riseC()));
        String written = written(kitchen);
        byte[] bytes = written.getBytes(StandardCharsets.UTF_8);
        if (bytes.length < 60_000) {
            KitchenFile again = KitchenFile.read(Scratch.holding("again.toml", bytes));
            Must.equal(written(again), written, "written and read again");
        }
    }

    /** Batch notes are refused in one line that names them, or are the same when they are written and read again. */
    public static void batchNotes(byte[] input) {
        Path file = Scratch.holding("notes.toml", input);
        BatchNotes notes;
        try {
            notes = NotesFile.read(file);
        } catch (IllegalArgumentException e) {
            complaint(e, file);
            return;
        }
        byte[] written = NotesText.of(notes).getBytes(StandardCharsets.UTF_8);
        Must.equal(NotesFile.read(Scratch.holding("again.toml", written)), notes, "written and read again");
    }

    private static void complaint(IllegalArgumentException e, Path file) {
        String message = String.valueOf(e.getMessage());
        Must.hold(message.contains(file.toString()), "a complaint does not name the file: " + message);
        Must.beOneLine(message);
    }

    private static void finite(Optional<Double> value) {
        Must.hold(value.isEmpty() || Double.isFinite(value.get()), "a quantity of " + value);
    }

    /** Only here: nothing but this test writes kitchen files. */
    private static String written(KitchenFile kitchen) {
        StringBuilder toml = new StringBuilder();
        kitchen.name().ifPresent(name -> line(toml, "name", name));
        kitchen.batch().ifPresent(batch -> line(toml, "batch", batch));
        kitchen.elevationM().ifPresent(value -> line(toml, "elevation", number(value) + "m"));
        kitchen.pressurePa().ifPresent(value -> line(toml, "pressure", number(value) + "Pa"));
        kitchen.riseC().ifPresent(value -> line(toml, "rise", number(value) + "C"));
        kitchen.port().ifPresent(port -> toml.append("port = ").append(port).append('\n'));
        for (PanEntry pan : kitchen.pans()) {
            toml.append("[[pan]]\n");
            line(toml, "name", pan.name());
            pan.batch().ifPresent(batch -> line(toml, "batch", batch));
            pan.riseC().ifPresent(value -> line(toml, "rise", number(value) + "C"));
            pan.probes().forEach(probe -> {
                probe(toml, probe);
                line(toml, "pan", pan.name());
            });
        }
        kitchen.canner().ifPresent(probe -> {
            probe(toml, probe);
            line(toml, "in", "canner");
        });
        return toml.toString();
    }

    /** Every digit that counts and none behind the twelfth, which is as far as quantities go. */
    private static String number(double value) {
        return new BigDecimal(value).setScale(12, RoundingMode.HALF_EVEN).toPlainString();
    }

    private static void probe(StringBuilder toml, NamedSpec probe) {
        toml.append("[[probe]]\n");
        line(toml, "name", probe.name());
        line(toml, "kind", probe.spec().kind().wireName());
        line(toml, "place", probe.spec().place());
        probe.spec().options().forEach((key, value) -> line(toml, key, value));
    }

    private static void line(StringBuilder toml, String key, String text) {
        toml.append(key).append(" = \"");
        text.chars().forEach(c -> {
            if (c == '"' || c == '\\') {
                toml.append('\\').append((char) c);
            } else if (c < ' ' || c == 0x7f) {
                toml.append(String.format(Locale.ROOT, "\\u%04x", c));
            } else {
                toml.append((char) c);
            }
        });
        toml.append("\"\n");
    }
}
