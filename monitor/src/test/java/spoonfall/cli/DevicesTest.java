package spoonfall.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spoonfall.door.DeviceBook;
import spoonfall.door.Role;
import spoonfall.log.DataFolder;

final class DevicesTest {
    @TempDir
    private Path folder;

    private String said = "";

    private int run(String... args) {
        StringWriter text = new StringWriter();
        List<String> all = new ArrayList<>(List.of(args));
        all.addAll(1, List.of("--data", folder.toString()));
        int code = Main.run(new PrintWriter(text), new PrintWriter(text), all.toArray(String[]::new));
        said = text.toString();
        return code;
    }

    @Test
    void devices_areListedAndShutOut() {
        assertThat(run("devices", "list")).isZero();
        assertThat(said).contains("No device was let in yet");
        DeviceBook book = DeviceBook.open(new DataFolder(folder).devices());
        String id = book.add("Hall phone", Role.VIEWER, Instant.EPOCH).device().id();
        assertThat(run("devices", "list")).isZero();
        assertThat(said).contains(id, "viewer", "Hall phone");
        assertThat(run("devices", "revoke", id)).isZero();
        assertThat(said).contains("\"Hall phone\" is shut out.");
        assertThat(run("devices", "revoke", id)).isOne();
        assertThat(said).contains("no device has the id");
    }

    @Test
    void aCode_needsAServiceAndARole() throws IOException {
        int free;
        try (ServerSocket socket = new ServerSocket(0)) {
            free = socket.getLocalPort();
        }
        assertThat(run("devices", "code", "--port", Integer.toString(free))).isOne();
        assertThat(said).contains("does not run at port " + free).contains("serve --lan");
        assertThat(run("devices", "code", "--role", "owner")).isEqualTo(2);
        assertThat(said).contains("a role is viewer or cook");
    }

    @ParameterizedTest
    @CsvSource({
        "--plain, add --lan",
        "--host-name kitchen.home, add --lan",
        "--lan --tls other, --tls can only be self",
        "--lan --plain --tls self, give one of",
        "--lan --tls-cert a.pem, belong together",
        "--lan --tls-cert a.pem --tls-key b.pem, there is no file a.pem",
        "--lan --host-name a/b, a host name has letters",
        "--lan --port 9000 --lan-port 9000, another than the page's own",
    })
    void optionsThatContradict_areRefusedWithTheWayOut(String options, String words) {
        List<String> args = new ArrayList<>(List.of("serve", "--hand"));
        args.addAll(List.of(options.split(" ", -1)));
        assertThat(run(args.toArray(String[]::new))).isEqualTo(words.startsWith("there is no file") ? 1 : 2);
        assertThat(said).contains(words);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "lan = 1 | must be true or false",
                "port = 70000 | must be a whole number from 0 to 65535",
                "names = \"kitchen\" | must be a list of names",
                "plain = true\\ncertificate = \"a\"\\nkey = \"b\" | not both",
                "certificate = \"a.pem\" | belong together",
                "lam = true | did you mean lan?",
            })
    void aKitchenFilesNetwork_isCheckedLikeTheRest(String lines, String words) throws IOException {
        Path file =
                Files.writeString(folder.resolve("kitchen.toml"), "[network]\n" + lines.replace("\\n", "\n") + "\n");
        assertThat(run("serve", file.toString(), "--hand")).isOne();
        assertThat(said).contains("kitchen.toml, line ").contains(words);
    }
}
