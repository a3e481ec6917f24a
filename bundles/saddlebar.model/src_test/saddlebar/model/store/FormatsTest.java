package saddlebar.model.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;

import saddlebar.model.commission.OpeningKind;
import saddlebar.model.commission.Window;
import saddlebar.model.problem.Refusal;

/** Samples of older formats stay among the tests for ever. */
class FormatsTest {
    @TempDir
    Path temp;
    Path place;

    @BeforeEach
    void copySample() throws IOException {
        Path sample = Path.of("src_test/saddlebar/model/store/format-0");
        place = temp.resolve("format-0");
        try (Stream<Path> files = Files.walk(sample)) {
            for (Path file : files.toList()) {
                Files.copy(file, place.resolve(sample.relativize(file).toString()));
            }
        }
    }

    @Test
    void aSampleOfFormat0IsReadAndSavedAsTheCurrentOne() throws IOException {
        byte[] before = Files.readAllBytes(place.resolve("windows/W01.saddlebar"));
        try (CommissionFolder read = CommissionFolder.open(place, Access.READ)) {
            requireMigrated(read);
        }
        assertEquals(new String(before, java.nio.charset.StandardCharsets.UTF_8), Files.readString(place.resolve("windows/W01.saddlebar")),
                "reading changes no file");
        try (CommissionFolder open = CommissionFolder.open(place, Access.WRITE)) {
            requireMigrated(open);
            assertTrue(open.isModified(), "a save is due");
            open.save();
            assertEquals(1, open.generations("windows/W01.saddlebar").size(), "the old file is kept");
        }
        for (String file : List.of("commission.saddlebar", "windows/W01.saddlebar", "studio/studio.saddlebar")) {
            String text = Files.readString(place.resolve(file));
            assertTrue(text.contains("formatVersion=\"1\"") && text.contains("urn:saddlebar:commission:1"), text);
        }
        try (CommissionFolder again = CommissionFolder.open(place, Access.WRITE)) {
            requireMigrated(again);
            assertTrue(!again.isModified());
        }
    }

    private static void requireMigrated(CommissionFolder open) {
        assertEquals("Boathouse door", open.commission().getTitle());
        assertEquals(1.75, open.commission().getGapMm());
        Window window = open.window("W01").orElseThrow();
        assertEquals(OpeningKind.ROUNDEL, window.getOpening().getKind());
        assertEquals(412.5, window.getOpening().getSightWidthMm());
        assertEquals(424.5, window.getOpening().getTightHeightMm());
        assertEquals(2.0, window.getPanels().get(0).getLayers().get(0).getBleedMm());
        assertEquals(206.25, window.getPanels().get(0).getPieces().get(0).getLabelXMm());
        assertEquals("tracing black", window.getPanels().get(0).getLayers().get(0).getPaint().getName());
        assertEquals(List.of(), open.links().broken());
    }

    @Test
    void aNewerFormatIsRefusedInAnyFile() throws IOException {
        for (String file : List.of("windows/W01.saddlebar", "studio/studio.saddlebar", "commission.saddlebar")) {
            String text = Files.readString(place.resolve(file));
            Files.writeString(place.resolve(file), text.replace("formatVersion=\"0\"", "formatVersion=\"" + (Formats.current().version() + 1) + "\""));
            try (CommissionFolder open = CommissionFolder.open(place, Access.WRITE)) {
                Refusal refusal = assertThrows(Refusal.class, () -> {
                    open.studio();
                    open.windows();
                });
                assertTrue(refusal.getMessage().contains("newer program"), refusal.getMessage());
                assertTrue(refusal.where().endsWith(Path.of(file).getFileName().toString()));
            } catch (Refusal refusal) {
                assertTrue(file.startsWith("commission") && refusal.getMessage().contains("newer program"), refusal.getMessage());
            }
            Files.writeString(place.resolve(file), text);
        }
        for (String odd : List.of("one", "-1", "")) {
            String text = Files.readString(place.resolve("commission.saddlebar"));
            Files.writeString(place.resolve("commission.saddlebar"), text.replace("formatVersion=\"0\"", "formatVersion=\"" + odd + "\""));
            assertThrows(Refusal.class, () -> CommissionFolder.open(place, Access.READ).close());
            Files.writeString(place.resolve("commission.saddlebar"), text);
        }
    }

    @Test
    void stepsFollowEachOtherWithoutAGap() throws IOException {
        FormatStep first = step(0, "a", "b");
        FormatStep second = step(1, "b", "c");
        Formats formats = new Formats(2, List.of(second, first));
        byte[] old = "<r formatVersion=\"0\" a=\"7\"/>".getBytes(java.nio.charset.StandardCharsets.UTF_8);
        assertEquals(0, formats.versionOf("f", old));
        String current = new String(formats.broughtUpToDate("f", old, 0), java.nio.charset.StandardCharsets.UTF_8);
        assertTrue(current.contains("formatVersion=\"2\"") && current.contains("c=\"7\"") && !current.contains("a="), current);
        assertThrows(IllegalArgumentException.class, () -> new Formats(2, List.of(first)));
    }

    private static FormatStep step(int from, String old, String renamed) {
        return new FormatStep() {
            @Override
            public int from() {
                return from;
            }

            @Override
            public void apply(Document document) {
                document.getDocumentElement().setAttribute(renamed, document.getDocumentElement().getAttribute(old));
                document.getDocumentElement().removeAttribute(old);
            }
        };
    }
}
