package saddlebar.model.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import saddlebar.model.problem.Refusal;

class InnerPathsTest {
    @TempDir
    Path temp;
    Path root;

    @BeforeEach
    void folders() throws IOException {
        root = Files.createDirectory(temp.resolve("commission"));
        Files.createDirectory(root.resolve("artwork"));
        Files.writeString(temp.resolve("secret.txt"), "secret");
    }

    @ParameterizedTest
    @ValueSource(strings = {"../secret.txt", "artwork/../../secret.txt", "..", "artwork/..", ".", "/etc/passwd", "//server/share", "C:\\x", "c:x",
            "artwork\\..\\..\\secret.txt", "a\0b", "artwork/../x", "file:///etc/passwd"})
    void nothingLeadsOut(String path) throws IOException {
        InnerPaths paths = new InnerPaths(root);
        assertThrows(Refusal.class, () -> paths.resolve(path));
    }

    @Test
    void noLinkLeadsOut() throws IOException {
        Files.createSymbolicLink(root.resolve("file-link.txt"), temp.resolve("secret.txt"));
        Files.createSymbolicLink(root.resolve("folder-link"), temp);
        Files.createSymbolicLink(root.resolve("nowhere"), temp.resolve("not-there"));
        Files.createSymbolicLink(root.resolve("inner"), root.resolve("artwork"));
        InnerPaths paths = new InnerPaths(root);
        assertThrows(Refusal.class, () -> paths.resolve("file-link.txt"));
        assertThrows(Refusal.class, () -> paths.resolve("folder-link/secret.txt"));
        assertThrows(Refusal.class, () -> paths.resolve("folder-link/new.txt"));
        assertThrows(Refusal.class, () -> paths.resolve("nowhere"));
        assertThrows(Refusal.class, () -> paths.resolve("nowhere/new.txt"));
        assertEquals(paths.root().resolve("inner/a.svg"), paths.resolve("inner/a.svg"));
        assertThrows(Refusal.class, () -> paths.relative(temp.resolve("secret.txt")));
    }

    @Test
    void innerPathsAreWrittenWithSlashes() throws IOException {
        InnerPaths paths = new InnerPaths(root);
        assertEquals("artwork/a b.svg", paths.relative(root.resolve("artwork").resolve("a b.svg")));
        assertEquals("artwork", paths.relative(root.resolve("artwork/../artwork")));
        Files.createSymbolicLink(temp.resolve("other-name"), root);
        assertEquals("artwork", paths.relative(temp.resolve("other-name/artwork")));
        assertThrows(Refusal.class, () -> paths.relative(root));
    }

    @Property(tries = 200)
    void whateverIsWrittenStaysInsideOrIsRefused(@ForAll String text) throws IOException {
        Path folder = Path.of(System.getProperty("java.io.tmpdir"));
        InnerPaths paths = new InnerPaths(folder);
        try {
            assertTrue(paths.resolve(text).startsWith(paths.root()));
        } catch (Refusal | IllegalArgumentException e) {
            assertTrue(!e.getMessage().isEmpty());
        }
    }
}
