package spoonfall.fuzz;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The committed inputs: the usual ones, and every one that was a finding once. */
final class CorpusTest {
    private static final Path CORPUS = Path.of("corpus");

    @ParameterizedTest
    @EnumSource
    void theCorpus_holds(Target target) throws IOException {
        List<Path> inputs;
        try (Stream<Path> files = Files.list(CORPUS.resolve(target.wireName()))) {
            inputs = files.sorted().toList();
        }
        assertThat(inputs).hasSizeGreaterThanOrEqualTo(3);
        for (Path input : inputs) {
            byte[] bytes = Files.readAllBytes(input);
            assertThatCode(() -> target.hold(bytes)).as(input.toString()).doesNotThrowAnyException();
        }
    }

    @ParameterizedTest
    @EnumSource
    void nothingAtAll_holds(Target target) {
        assertThatCode(() -> target.hold(new byte[0])).doesNotThrowAnyException();
    }
}
