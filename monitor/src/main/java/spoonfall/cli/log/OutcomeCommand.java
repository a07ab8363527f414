package spoonfall.cli.log;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import spoonfall.book.Firmness;
import spoonfall.book.Outcome;
import spoonfall.book.OutcomeWords;
import spoonfall.book.Taste;
import spoonfall.cli.option.Understood;
import spoonfall.log.store.book.BookSaid;

/** {@code spoonfall log outcome}: says how a batch came out. */
@Command(
        name = "outcome",
        description = "Say how a batch came out, after a day and after a month; or see what was said.",
        footer = {
            "",
            "What is not given stays as it was said before. For example:",
            "  spoonfall log outcome 12 --set firm --after day --taste bitter,bright --jars 6 --fruit \"Seville orange\""
        })
final class OutcomeCommand extends CookCommand {
    @Option(names = "--after", paramLabel = "TIME", description = "day or month; day unless given.")
    private String after = "day";

    @Option(names = "--set", paramLabel = "SET", description = "runny, soft, right, firm or stiff.")
    private @Nullable String set;

    @Option(
            names = "--taste",
            paramLabel = "TASTE",
            split = ",",
            description = "bright, bitter, caramel; several behind commas, or none.")
    private @Nullable List<String> taste;

    @Option(names = "--words", paramLabel = "TEXT", description = "What else there is to say.")
    private @Nullable String words;

    @Option(names = "--fruit", paramLabel = "NAME", description = "What was made, by a short name.")
    private @Nullable String fruit;

    @Option(names = "--jars", paramLabel = "N", description = "How many jars were filled.")
    private @Nullable Integer jars;

    @Override
    public Integer call() {
        OutcomeWords said = Understood.value(() -> OutcomeWords.of(
                after,
                Optional.ofNullable(set),
                Optional.ofNullable(taste).map(OutcomeCommand::tastes),
                Optional.ofNullable(words),
                Optional.ofNullable(fruit),
                jars == null ? OptionalInt.empty() : OptionalInt.of(jars)));
        print(log().book().say(id(), said));
        return 0;
    }

    private static List<String> tastes(List<String> names) {
        return names.equals(List.of("none")) ? List.of() : names;
    }

    private void print(BookSaid said) {
        PrintWriter out = out();
        String name = said.made().fruit().isEmpty() ? "" : ", " + said.made().fruit();
        OptionalInt filled = said.made().jars();
        String jarsFilled =
                filled.isEmpty() ? "" : ", " + filled.getAsInt() + (filled.getAsInt() == 1 ? " jar" : " jars");
        out.println("Cook " + id() + name + jarsFilled + ".");
        said.outcomes().forEach(outcome -> out.println("  after a " + words(outcome)));
        if (said.outcomes().isEmpty()) {
            out.println("  Nobody said how it came out yet: --set right, for example.");
        }
    }

    private static String words(Outcome outcome) {
        String taste = outcome.taste().stream().map(Taste::wireName).collect(Collectors.joining(" and "));
        String how = outcome.set().map(Firmness::wireName).orElse("not said how it set");
        return String.format(
                Locale.ROOT,
                "%s: %s%s%s",
                outcome.after().wireName(),
                how,
                taste.isEmpty() ? "" : "; tastes " + taste,
                outcome.words().isEmpty() ? "" : "; " + outcome.words());
    }
}
