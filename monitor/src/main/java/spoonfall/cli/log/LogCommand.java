package spoonfall.cli.log;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import spoonfall.cli.option.CommandException;
import spoonfall.cli.option.DataOption;
import spoonfall.cli.option.FolderMemory;
import spoonfall.cli.option.MisuseException;
import spoonfall.cli.option.Output;
import spoonfall.cli.option.Understood;
import spoonfall.cook.CookSettings;
import spoonfall.kitchen.file.PanEntry;
import spoonfall.log.CookNote;
import spoonfall.log.store.CookLog;
import spoonfall.log.store.book.BatchBook;
import spoonfall.log.store.cook.CookLine;
import spoonfall.log.store.cook.StoredCook;
import spoonfall.log.store.upkeep.UpkeepLine;
import spoonfall.words.Plain;

/** {@code spoonfall log}: the record of all cooks. */
@Command(
        name = "log",
        description = "List, show, note, take out, take in, thin or delete the cooks that were recorded.",
        synopsisSubcommandLabel = "COMMAND",
        subcommands = {
            OutcomeCommand.class,
            PhotoCommand.class,
            PhotosCommand.class,
            LabelsCommand.class,
            ReportCommand.class,
            ExportCommand.class,
            ImportCommand.class
        },
        footer = {
            "",
            "For example:",
            "  spoonfall log list",
            "  spoonfall log note 12 \"a little dark; two minutes less next time\"",
            "  spoonfall log outcome 12 --set firm --taste bitter",
            "  spoonfall log export 12 cook.csv",
            "  spoonfall log thin --older-than 365"
        })
public final class LogCommand implements Runnable {
    private static final DateTimeFormatter TIME =
            DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT).withZone(ZoneId.systemDefault());
    private static final int SECONDS_KEPT = 10;

    @Spec
    private @Nullable CommandSpec spec;

    @Mixin
    private DataOption data = new DataOption();

    @Override
    public void run() {
        if (spec != null) {
            spec.commandLine().usage(spec.commandLine().getOut());
        }
    }

    @Command(name = "list", description = "Every cook, the latest first.")
    int list() {
        PrintWriter out = Output.of(spec);
        try (CookLog log = open()) {
            List<CookLine> cooks = log.list();
            for (CookLine cook : cooks) {
                out.println(words(cook));
            }
            if (cooks.isEmpty()) {
                out.println("No cook was recorded yet.");
            }
            int went = log.upkeep().size();
            if (went > 0) {
                out.println(went + (went == 1 ? " went or was" : " went or were")
                        + " thinned out so far; \"spoonfall log upkeep\" says which and why.");
            }
        }
        return 0;
    }

    private static String words(CookLine cook) {
        String pan = cook.pan().equals(PanEntry.ONLY) ? "" : cook.pan();
        String name = (pan + " " + cook.batch()).strip();
        String thinned = cook.thinned() == 0 ? "" : ", " + cook.thinned() + " thinned out";
        return String.format(
                Locale.ROOT,
                "%5d  %s  %6s  %d readings, %d events%s%s%s",
                cook.id(),
                TIME.format(cook.startedAt()),
                Plain.clock(cook.lastedMillis() / 1000.0),
                cook.readings(),
                cook.events(),
                thinned,
                cook.ended() ? "" : ", not ended",
                name.isEmpty() ? "" : "  " + name);
    }

    @Command(name = "upkeep", description = "Which cooks were thinned out or went, and why, the latest first.")
    int upkeep() {
        PrintWriter out = Output.of(spec);
        try (CookLog log = open()) {
            List<UpkeepLine> lines = log.upkeep();
            for (UpkeepLine line : lines) {
                out.println(TIME.format(line.at()) + "  cook " + line.cook() + " of " + TIME.format(line.startedAt())
                        + (line.batch().isEmpty() ? "" : ", " + line.batch())
                        + (line.whole() ? " went with " : " was thinned out by ") + line.readings() + " readings: "
                        + line.why());
            }
            if (lines.isEmpty()) {
                out.println("Nothing went: everything that was recorded is here.");
            }
        }
        return 0;
    }

    @Command(name = "show", description = "What happened in a cook.")
    int show(@Parameters(paramLabel = "ID", description = "Its number in the list.") long id) {
        PrintWriter out = Output.of(spec);
        try (CookLog log = open()) {
            StoredCook cook = log.cook(id);
            CookSettings settings = cook.header().basis().settings();
            out.printf(
                    Locale.ROOT,
                    "Cook %d, begun %s%s. Sets at %.1f °C (%s).%n",
                    id,
                    TIME.format(cook.header().startedAt()),
                    cook.header().batch().isEmpty() ? "" : ", " + cook.header().batch(),
                    settings.gelPointC(),
                    settings.waterBoil().detail());
            EventLines.print(cook, out);
            if (cook.damaged() > 0) {
                out.println(cook.damaged() + " minutes of readings were damaged and are lost.");
            }
        }
        return 0;
    }

    @Command(name = "recook", description = "Say that a cook went on with an earlier one: it was boiled again.")
    int recook(
            @Parameters(paramLabel = "ID", description = "The number of the later cook in the list.") long id,
            @Option(names = "--of", paramLabel = "ID", required = true, description = "The number of the earlier one.")
                    long of) {
        FolderMemory.of(data.folder()).recooks(id, of);
        Output.of(spec)
                .println("Cook " + id + " goes on with cook " + of + ": their minutes at the boil count together.");
        return 0;
    }

    @Command(name = "note", description = "Write a line of a cook, running or over.")
    int note(
            @Parameters(paramLabel = "ID", description = "Its number in the list.") long id,
            @Parameters(paramLabel = "TEXT", arity = "1..*", description = "The line.") List<String> words) {
        String text = Understood.value(() -> CookNote.checked(String.join(" ", words)));
        try (CookLog log = open()) {
            CookNote note = log.note(id, text);
            Output.of(spec).println("Cook " + id + ": " + note.text());
        }
        return 0;
    }

    @Command(name = "delete", description = "Delete a cook for good, after a question.")
    int delete(
            @Parameters(paramLabel = "ID", description = "Its number in the list.") long id,
            @Option(names = "--yes", description = "Do not ask.") boolean yes) {
        try (CookLog log = open()) {
            CookLine line = log.list().stream()
                    .filter(one -> one.id() == id)
                    .findFirst()
                    .orElseThrow(() ->
                            new CommandException("there is no cook " + id + "; \"spoonfall log list\" lists them"));
            if (agreed(yes, "Delete for good: " + words(line).strip() + "?")) {
                log.delete(id);
                Output.of(spec).println("Deleted cook " + id + ".");
            }
        }
        return 0;
    }

    @Command(
            name = "thin",
            description = "Keep one reading in " + SECONDS_KEPT + " s of old cooks, after a question. Events stay.")
    int thin(
            @Option(names = "--older-than", paramLabel = "DAYS", required = true, description = "How old, in days.")
                    int days,
            @Option(names = "--yes", description = "Do not ask.") boolean yes) {
        if (days < 0) {
            throw new MisuseException("--older-than must be a number of days, such as 365, not " + days);
        }
        Instant before = Instant.now().minus(Duration.ofDays(days));
        try (CookLog log = open()) {
            long cooks = log.list().stream()
                    .filter(line -> line.ended() && line.startedAt().isBefore(before))
                    .count();
            if (cooks > 0 && agreed(yes, "Thin out " + cooks + " cooks for good?")) {
                long readings = log.thin(before);
                log.compact();
                Output.of(spec).println("Thinned out " + readings + " readings of " + cooks + " cooks.");
            } else if (cooks == 0) {
                Output.of(spec).println("No cook is that old.");
            }
        }
        return 0;
    }

    /** The command that a part of it belongs to. */
    static LogCommand of(@Nullable LogCommand parent) {
        if (parent == null) {
            throw new IllegalStateException("the command was not started by the command line");
        }
        return parent;
    }

    /** The record, open, and made if it is not there. */
    CookLog openOrMake() {
        return CookLog.openOrMake(data.folder().cooks());
    }

    /** The book of all cooks. */
    BatchBook book() {
        return new BatchBook(data.folder().cooks());
    }

    /** The record, open. */
    CookLog open() {
        return CookLog.open(data.folder().cooks());
    }

    private boolean agreed(boolean yes, String question) {
        if (yes) {
            return true;
        }
        PrintWriter out = Output.of(spec);
        out.print(question + " Type yes: ");
        out.flush();
        try {
            BufferedReader in = new BufferedReader(new InputStreamReader(System.in, Charset.defaultCharset()));
            boolean agreed = Optional.ofNullable(in.readLine())
                    .map(answer -> answer.strip().equalsIgnoreCase("yes"))
                    .orElse(false);
            if (!agreed) {
                out.println("Nothing was changed.");
            }
            return agreed;
        } catch (IOException e) {
            throw new CommandException("nobody can be asked here; --yes does it without a question", e);
        }
    }
}
