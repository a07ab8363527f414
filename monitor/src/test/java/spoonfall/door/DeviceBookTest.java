package spoonfall.door;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class DeviceBookTest {
    private static final Instant NOW = Instant.parse("2026-11-25T18:00:00Z");

    @TempDir
    private Path folder;

    private Path file = Path.of("");

    @BeforeEach
    void name() {
        file = folder.resolve("data/devices.json");
    }

    @Test
    void aToken_isKnownAgainAfterARestart_andNotInTheFile() throws IOException {
        DeviceBook.Paired paired = DeviceBook.open(file).add(" Küchentablett ", Role.COOK, NOW);
        DeviceBook again = DeviceBook.open(file);
        assertThat(again.withToken(paired.token())).contains(paired.device());
        assertThat(again.withToken(paired.token() + "x")).isEmpty();
        assertThat(again.withToken(paired.device().tokenHash())).isEmpty();
        assertThat(again.withToken("")).isEmpty();
        assertThat(paired.device().name()).isEqualTo("Küchentablett");
        assertThat(Files.readString(file)).doesNotContain(paired.token());
        assertThat(paired.toString()).doesNotContain(paired.token());
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
                .isEqualTo("rw-------");
    }

    @Test
    void aRevokedDevice_isGoneFromTheFileAndTold() {
        DeviceBook book = DeviceBook.open(file);
        List<String> told = new ArrayList<>();
        book.listen(gone -> told.add(gone.name()));
        DeviceBook.Paired one = book.add("One", Role.COOK, NOW);
        DeviceBook.Paired two = book.add("Two", Role.VIEWER, NOW);
        assertThat(book.revoke(one.device().id())).contains(one.device());
        assertThat(book.revoke(one.device().id())).isEmpty();
        assertThat(told).containsExactly("One");
        assertThat(DeviceBook.open(file).all()).containsExactly(two.device());
        assertThat(book.withToken(one.token())).isEmpty();
    }

    @Test
    void whatAnotherProgramRevokes_countsAndIsTold() {
        DeviceBook book = DeviceBook.open(file);
        DeviceBook.Paired one = book.add("One", Role.COOK, NOW);
        List<String> told = new ArrayList<>();
        book.listen(gone -> told.add(gone.name()));
        book.refresh();
        assertThat(told).isEmpty();
        DeviceBook.open(file).revoke(one.device().id());
        book.refresh();
        assertThat(told).containsExactly("One");
        assertThat(book.withToken(one.token())).isEmpty();
    }

    @Test
    void whatAnotherProgramRevoked_staysOut_whenADeviceIsPairedBeforeTheNextLook() {
        DeviceBook book = DeviceBook.open(file);
        DeviceBook.Paired one = book.add("One", Role.COOK, NOW);
        List<String> told = new ArrayList<>();
        book.listen(gone -> told.add(gone.name()));
        DeviceBook.open(file).revoke(one.device().id());
        DeviceBook.Paired two = book.add("Two", Role.VIEWER, NOW);
        assertThat(book.withToken(one.token())).isEmpty();
        assertThat(told).containsExactly("One");
        assertThat(DeviceBook.open(file).all()).containsExactly(two.device());
    }

    @Test
    void aRevoke_keepsWhatAnotherProgramPairedMeanwhile() {
        DeviceBook book = DeviceBook.open(file);
        DeviceBook.Paired one = book.add("One", Role.COOK, NOW);
        DeviceBook other = DeviceBook.open(file);
        DeviceBook.Paired two = book.add("Two", Role.VIEWER, NOW);
        assertThat(other.revoke(one.device().id())).contains(one.device());
        assertThat(DeviceBook.open(file).all()).containsExactly(two.device());
    }

    @Test
    void twoWhoPairAtOnce_loseNoDeviceOfEachOther() {
        List<CompletableFuture<Void>> pairing = new ArrayList<>();
        for (DeviceBook book : List.of(DeviceBook.open(file), DeviceBook.open(file))) {
            pairing.add(CompletableFuture.runAsync(() -> {
                for (int i = 0; i < DeviceBook.MOST / 2; i++) {
                    book.add("Device " + i, Role.VIEWER, NOW);
                }
            }));
        }
        pairing.forEach(CompletableFuture::join);
        assertThat(DeviceBook.open(file).all()).hasSize(DeviceBook.MOST);
    }

    @Test
    void aLookThatFailed_isTriedAgain() throws IOException {
        DeviceBook book = DeviceBook.open(file);
        DeviceBook.Paired one = book.add("One", Role.COOK, NOW);
        Files.delete(file);
        Files.createDirectories(file);
        for (int look = 0; look < 3; look++) {
            assertThatThrownBy(book::refresh).hasMessageContaining("cannot be read");
            assertThat(book.withToken(one.token())).isPresent();
        }
        Files.delete(file);
        book.refresh();
        assertThat(book.withToken(one.token())).isEmpty();
    }

    @Test
    void whoseEndCouldNotBeWrittenDown_isNotLetInByALaterLook() throws IOException {
        DeviceBook book = DeviceBook.open(file);
        DeviceBook.Paired one = book.add("One", Role.COOK, NOW);
        Path aside = folder.resolve("aside.json");
        Files.move(file, aside);
        Files.createDirectories(file);
        assertThatThrownBy(() -> book.revoke(one.device().id())).hasMessageContaining("cannot be written down");
        Files.delete(file);
        Files.move(aside, file);
        book.refresh();
        assertThat(book.withToken(one.token())).isEmpty();
        DeviceBook.Paired two = book.add("Two", Role.VIEWER, NOW);
        assertThat(DeviceBook.open(file).all()).containsExactly(two.device());
    }

    @Test
    void aRevokedDevice_isShutOutEvenIfThatCannotBeWrittenDown() throws IOException {
        DeviceBook book = DeviceBook.open(file);
        DeviceBook.Paired one = book.add("One", Role.COOK, NOW);
        Files.delete(file);
        Files.createDirectories(file.resolve("in the way"));
        assertThatThrownBy(() -> book.revoke(one.device().id())).hasMessageContaining("cannot be written down");
        assertThat(book.withToken(one.token())).isEmpty();
        assertThatThrownBy(() -> book.add("Two", Role.COOK, NOW)).hasMessageContaining("cannot be written down");
        assertThat(book.all()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "{",
                "{}",
                "[{}]",
                "[1]",
                "[{\"id\":\"abcdef\",\"name\":\"x\",\"role\":\"owner\",\"tokenSha256\":\"00\",\"pairedAt\":\"now\"}]",
            })
    void aFileThatIsNotUnderstood_letsNobodyIn_andIsSetAside(String text) throws IOException {
        Files.createDirectories(folder.resolve("data"));
        Files.writeString(file, text);
        DeviceBook book = DeviceBook.open(file);
        assertThat(book.all()).isEmpty();
        assertThat(book.withToken("")).isEmpty();
        assertThat(Files.readString(folder.resolve("data/devices.json.not-understood")))
                .isEqualTo(text);
        book.add("New", Role.VIEWER, NOW);
        assertThat(DeviceBook.open(file).all()).hasSize(1);
    }

    @Test
    void thereIsAnEndToDevices() {
        DeviceBook book = DeviceBook.open(file);
        for (int i = 0; i < DeviceBook.MOST; i++) {
            book.add("Device " + i, Role.VIEWER, NOW);
        }
        assertThatThrownBy(() -> book.add("One more", Role.VIEWER, NOW)).hasMessageContaining("revoke one first");
        assertThat(DeviceBook.open(file).all()).hasSize(DeviceBook.MOST);
        List<String> told = new ArrayList<>();
        book.listen(gone -> told.add(gone.name()));
        DeviceBook.Paired again = book.replace(book.all().get(7), "Device 7 as a cook", Role.COOK, NOW);
        assertThat(told).containsExactly("Device 7");
        assertThat(book.withToken(again.token())).contains(again.device());
        assertThat(DeviceBook.open(file).all()).hasSize(DeviceBook.MOST).contains(again.device());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "  ",
                "a\u0000b",
                "a\nb",
                "\u202eevil",
                "\u200b",
                "\ud800",
                "0123456789012345678901234567890123456789x"
            })
    void aNameThatCannotBeShown_isRefused(String name) {
        assertThatThrownBy(() -> Device.checkedName(name)).isInstanceOf(IllegalArgumentException.class);
    }
}
