package spoonfall.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every test that docs/security.md names is there, and every threat in its table names one. */
final class SecurityPageTest {
    private static final Path PAGE = Path.of("../docs/security.md");
    private static final Pattern NAMED = Pattern.compile("`([A-Z]\\w+Test)\\.(\\w+)`");

    private static Map<String, String> sources() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("src/test/java"))) {
            return files.filter(file -> file.toString().endsWith("Test.java"))
                    .collect(Collectors.toMap(
                            file -> file.getFileName().toString().replace(".java", ""),
                            SecurityPageTest::text,
                            String::concat,
                            LinkedHashMap::new));
        }
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<String> threats() throws IOException {
        return Files.readAllLines(PAGE).stream()
                .filter(line -> line.matches("\\| [STRIDE] \\|.*"))
                .toList();
    }

    @Test
    void everyTestThatIsNamed_isThere() throws IOException {
        Map<String, String> sources = sources();
        int named = 0;
        for (Matcher test = NAMED.matcher(text(PAGE)); test.find(); named++) {
            assertThat(sources.getOrDefault(test.group(1), ""))
                    .as(test.group(1))
                    .contains("void " + test.group(2) + "(");
        }
        assertThat(named).isGreaterThan(20);
    }

    @Test
    void everyThreat_namesWhatHoldsItsAnswer() throws IOException {
        assertThat(threats())
                .hasSizeGreaterThan(20)
                .allMatch(line -> NAMED.matcher(line).find() || line.contains("by hand:"));
        assertThat(threats().stream().map(line -> line.charAt(2)).distinct())
                .containsOnly('S', 'T', 'R', 'I', 'D', 'E');
    }
}
