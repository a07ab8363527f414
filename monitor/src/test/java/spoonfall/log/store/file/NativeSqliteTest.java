package spoonfall.log.store.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class NativeSqliteTest {
    private static final byte[] LIBRARY = {1, 2, 3};

    @TempDir
    private Path home;

    @Test
    void theLibrary_isUnpackedIntoTheCache() throws IOException {
        Path cache = home.resolve("cache");
        assertThat(NativeSqlite.unpacked(cache, LIBRARY)).isEqualTo(cache);
        assertThat(cache.resolve("libsqlitejdbc.so")).hasBinaryContent(LIBRARY);
    }

    @Test
    void aUserWithoutAHome_hasItUnpackedForThisRun_whereNobodyElseCanWrite() throws IOException {
        Path noFolder = Files.writeString(home.resolve("file"), "not a folder");
        Path folder = NativeSqlite.unpacked(noFolder.resolve("cache"), LIBRARY);
        assertThat(folder.resolve("libsqlitejdbc.so")).hasBinaryContent(LIBRARY);
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(folder)))
                .isEqualTo("rwx------");
    }

    @Test
    void aLibraryThatCanBePutNowhere_isNotTakenForAFileThatCannotBeWritten() {
        Exception thrown = new NativeSqlite.NotUnpackedException(new java.nio.file.AccessDeniedException("/.cache"));
        assertThat(thrown).hasMessageContaining("XDG_CACHE_HOME");
        assertThat(Fault.of(thrown).words(home).act()).contains("XDG_CACHE_HOME");
    }
}
