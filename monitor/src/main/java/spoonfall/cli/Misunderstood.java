package spoonfall.cli;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.TypeConversionException;
import picocli.CommandLine.UnmatchedArgumentException;
import spoonfall.units.Spelling;

/** What is said of a command line that is not understood, with the nearest that would be. */
final class Misunderstood {
    private static final int MISSPELT_LETTERS = 2;

    private Misunderstood() {}

    /** Has numbers that are none refused in a cook's words. */
    static void refuseNumbers(CommandLine line) {
        line.registerConverter(int.class, whole(Integer::valueOf));
        line.registerConverter(Integer.class, whole(Integer::valueOf));
        line.registerConverter(long.class, whole(Long::valueOf));
        line.registerConverter(double.class, number("a number", Double::valueOf));
    }

    private static <T> ITypeConverter<T> whole(ITypeConverter<T> read) {
        ITypeConverter<T> number = number("a whole number", read);
        return text -> {
            try {
                return number.convert(text);
            } catch (TypeConversionException e) {
                throw text.matches("[+-]?\\d+") ? new TypeConversionException("'" + text + "' is far too large") : e;
            }
        };
    }

    private static <T> ITypeConverter<T> number(String what, ITypeConverter<T> read) {
        return text -> {
            try {
                return read.convert(text);
            } catch (NumberFormatException e) {
                throw new TypeConversionException("'" + text + "' is not " + what);
            }
        };
    }

    /** What is wrong with a command line. */
    static String words(ParameterException e) {
        if (e instanceof UnmatchedArgumentException unmatched
                && !unmatched.getUnmatched().isEmpty()) {
            String typed = unmatched.getUnmatched().get(0);
            return typed.startsWith("-") ? option(typed, e) : word(typed, e.getCommandLine());
        }
        return String.valueOf(e.getMessage()).replaceFirst("positional parameter at index \\d+ \\((.*?)\\)", "$1");
    }

    private static String word(String typed, CommandLine at) {
        List<String> commands = shown(at).map(CommandLine::getCommandName).toList();
        return commands.isEmpty()
                ? "\"" + typed + "\" is one too many"
                : "there is no command \"" + typed + "\"" + didYouMean(typed, commands);
    }

    private static String option(String typed, ParameterException e) {
        String name = typed.replaceFirst("=.*", "");
        CommandLine at = e.getCommandLine();
        CommandLine program = at;
        while (program.getParent() != null) {
            program = program.getParent();
        }
        String others = all(program)
                .filter(command -> names(command).anyMatch(name::equals))
                .map(command -> command.getCommandSpec().qualifiedName().replaceFirst("^\\S+ ", ""))
                .collect(Collectors.joining(", "));
        String hint = others.isEmpty() ? didYouMean(name, names(at).toList()) : "; it goes with " + others;
        return "Unknown option: '" + name + "'" + hint;
    }

    private static String didYouMean(String typed, List<String> known) {
        Optional<String> nearest = known.stream()
                .min(Comparator.comparingInt(one -> Spelling.distance(typed, one)))
                .filter(one -> Spelling.distance(typed, one) <= MISSPELT_LETTERS);
        return nearest.map(one -> "; did you mean " + one + "?").orElse("");
    }

    /** The long names of a command's options. */
    private static Stream<String> names(CommandLine command) {
        return command.getCommandSpec().options().stream()
                .filter(option -> !option.hidden())
                .map(OptionSpec::longestName)
                .filter(name -> name.startsWith("--"));
    }

    private static Stream<CommandLine> shown(CommandLine command) {
        return command.getSubcommands().values().stream()
                .distinct()
                .filter(one -> !one.getCommandSpec().usageMessage().hidden());
    }

    private static Stream<CommandLine> all(CommandLine program) {
        return shown(program).flatMap(command -> Stream.concat(Stream.of(command), all(command)));
    }
}
