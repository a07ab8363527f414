package spoonfall.probe.serial;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

final class NativeCacheTest {
    private static final Path UNIT = Path.of("../docs/spoonfall.service");

    /** What the unit sets, the last of each. */
    private static Map<String, String> unit() throws IOException {
        Map<String, String> settings = new HashMap<>();
        for (String line : Files.readAllLines(UNIT)) {
            int equals = line.indexOf('=');
            if (equals > 0 && !line.startsWith("#")) {
                settings.put(line.substring(0, equals), line.substring(equals + 1));
            }
        }
        return settings;
    }

    @Test
    void theServiceUnit_namesACacheThatItsUserCanWrite() throws IOException {
        Map<String, String> unit = unit();
        String[] environment = unit.getOrDefault("Environment", "=").split("=", 2);
        Map<String, String> variables = Map.of(environment[0], environment[1]);
        Path folder = NativeCache.folder(variables::get, "/"); // the home of a user that systemd makes up
        assertThat(folder).startsWithRaw(Path.of("/var/cache", unit.get("CacheDirectory")));
    }

    @Test
    void theServiceUnit_hidesNothingThatIsRead() throws IOException {
        assertThat(unit()).as("/proc/uptime tells of a sleep").doesNotContainKey("ProcSubset");
    }

    @Test
    void withoutACacheOfItsOwn_aUserHasOneInTheHome() {
        assertThat(NativeCache.folder(name -> null, "/home/cook"))
                .isEqualTo(Path.of("/home/cook/.cache/spoonfall/native"));
    }
}
