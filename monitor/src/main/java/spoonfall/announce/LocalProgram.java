package spoonfall.announce;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** A program of this machine that is given a text as its last argument. No shell is in between: the text arrives as it is. */
public final class LocalProgram {
    private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|'([^']*)'|([^\\s\"']+)");

    private final List<String> command;
    private final long longestMillis;

    private LocalProgram(List<String> command, long longestMillis) {
        this.command = command;
        this.longestMillis = longestMillis;
    }

    /**
     * The program that a command line names.
     *
     * @param line its name or path, and arguments that are always given; words end at spaces, quotes keep one together
     * @param path where to look for it, as in the variable PATH
     * @param longestMillis how long it may take before it is ended
     * @throws IllegalArgumentException if there is no such program, with the way out
     */
    public static LocalProgram of(String line, String path, long longestMillis) {
        List<String> words = words(line);
        if (words.isEmpty()) {
            throw new IllegalArgumentException("which program? Give its name, such as --announce espeak-ng");
        }
        Path program = find(words.get(0), path)
                .orElseThrow(
                        () -> new IllegalArgumentException(
                                "there is no program " + words.get(0)
                                        + " to announce with; install it, or give the path of one that takes a text as its last argument"));
        List<String> command = new ArrayList<>(words);
        command.set(0, program.toString());
        return new LocalProgram(List.copyOf(command), longestMillis);
    }

    private static List<String> words(String line) {
        Matcher matcher = WORD.matcher(line);
        List<String> words = new ArrayList<>();
        int end = 0;
        while (matcher.find()) {
            requireBlank(line, end, matcher.start());
            words.add(Stream.of(1, 2, 3)
                    .map(matcher::group)
                    .flatMap(Stream::ofNullable)
                    .findFirst()
                    .orElseThrow());
            end = matcher.end();
        }
        requireBlank(line, end, line.length());
        return words;
    }

    private static void requireBlank(String line, int from, int to) {
        if (!line.substring(from, to).isBlank()) {
            throw new IllegalArgumentException("--announce " + line + ": a quote is not closed");
        }
    }

    private static Optional<Path> find(String name, String path) {
        try {
            if (name.contains(File.separator)) {
                return Optional.of(Path.of(name).toAbsolutePath()).filter(LocalProgram::runs);
            }
            return Stream.of(path.split(Pattern.quote(File.pathSeparator)))
                    .filter(folder -> !folder.isEmpty())
                    .map(folder -> Path.of(folder, name).toAbsolutePath())
                    .filter(LocalProgram::runs)
                    .findFirst();
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }

    private static boolean runs(Path file) {
        return Files.isRegularFile(file) && Files.isExecutable(file);
    }

    /**
     * Runs it with {@code text} and waits until it has ended.
     *
     * @throws IOException if it cannot be started, ends with an error, or takes too long and is ended
     */
    void say(String text) throws IOException, InterruptedException {
        List<String> whole = new ArrayList<>(command);
        whole.add(text);
        Process process = new ProcessBuilder(whole)
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        try {
            process.getOutputStream().close();
            if (!process.waitFor(longestMillis, TimeUnit.MILLISECONDS)) {
                throw new IOException("took longer than " + longestMillis / 1000 + " s and was ended");
            }
            if (process.exitValue() != 0) {
                throw new IOException("ended with the error code " + process.exitValue());
            }
        } finally {
            end(process);
        }
    }

    private static void end(Process process) {
        if (process.isAlive()) {
            process.descendants().forEach(ProcessHandle::destroyForcibly);
            process.destroyForcibly();
        }
    }

    @Override
    public String toString() {
        return command.get(0);
    }
}
