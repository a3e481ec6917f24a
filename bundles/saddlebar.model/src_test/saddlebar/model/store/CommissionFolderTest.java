package saddlebar.model.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import saddlebar.model.art.OutlineMm;
import saddlebar.model.commission.CommissionFactory;
import saddlebar.model.commission.DesignLayer;
import saddlebar.model.commission.GlassChoice;
import saddlebar.model.commission.Paint;
import saddlebar.model.commission.Piece;
import saddlebar.model.commission.Placement;
import saddlebar.model.commission.Stencil;
import saddlebar.model.commission.StencilPiece;
import saddlebar.model.commission.UnitSystem;
import saddlebar.model.commission.Window;
import saddlebar.model.problem.LockedException;
import saddlebar.model.problem.Refusal;

class CommissionFolderTest {
    static final Path SHARED = Path.of("../../shared");

    @TempDir
    Path temp;
    Path place;

    @BeforeEach
    void oddName() {
        place = temp.resolve("Lesesaal Süd #3 (100% klar)");
    }

    static NewCommission settings() throws IOException {
        return NewCommission.titled("Estuary reading room").forClient("Reading room trust").withNumber("26-07").inUnits(UnitSystem.INCH)
                .onPapers(List.of("letter", "tabloid")).stockedFrom(StudioLibrary.of(SHARED));
    }

    @Test
    void aNewCommissionIsAFolderThatAPersonCanRead() throws IOException {
        try (CommissionFolder made = CommissionFolder.create(place, settings())) {
            assertEquals("Estuary reading room", made.commission().getTitle());
            assertTrue(made.hasOwnStudio());
        }
        assertEquals(List.of(".lock", "artwork", "commission.saddlebar", "photos", "records", "studio", "windows"), names(place));
        assertEquals(List.of("records", "studio.saddlebar"), names(place.resolve("studio")));
        String text = Files.readString(place.resolve("commission.saddlebar"));
        assertTrue(text.contains("href=\"studio/studio.saddlebar#"), text);
        assertFalse(text.contains(temp.getFileName().toString()), "an absolute path stands in the file");
        try (CommissionFolder read = CommissionFolder.open(place, Access.READ)) {
            assertEquals("Reading room trust", read.commission().getClient().getName());
            assertEquals("26-07", read.commission().getNumber());
            assertEquals(UnitSystem.INCH, read.commission().getUnits());
            assertEquals(List.of("letter", "tabloid"), read.commission().getPapers());
            assertEquals(16, read.studio().getFrames().size());
            assertEquals("156-64", read.studio().getFrames().get(0).getMesh().getName());
        }
        try (Stream<Path> beside = Files.list(temp)) {
            assertEquals(1, beside.count(), "nothing is left beside the new folder");
        }
    }

    @Test
    void whatIsSavedIsReadAndWindowsAreLoadedOnlyWhenAskedFor() throws IOException {
        try (CommissionFolder made = CommissionFolder.create(place, settings())) {
            Specimen.window(made, "W01", 3);
            Specimen.window(made, "W02", 2);
            made.save();
            assertFalse(made.isModified());
        }
        try (CommissionFolder read = CommissionFolder.open(place, Access.READ)) {
            assertEquals(List.of("W01", "W02"), read.windowNames());
            assertEquals(1, read.resourceSet().getResources().size(), "only commission.saddlebar is loaded");
            assertFalse(read.isLoaded("W01"));
            Window second = read.window("W02").orElseThrow();
            assertTrue(read.isLoaded("W02"));
            assertFalse(read.isLoaded("W01"));
            assertSame(read.commission(), second.getCommission());
            assertSame(second, read.commission().getWindows().get(1));
            DesignLayer layer = second.getPanels().get(0).getLayers().get(0);
            assertEquals("pale matt", layer.getPaint().getName(), "a link into the studio is followed");
            assertSame(read.studio(), layer.getPaint().getStudio());
            assertFalse(read.isLoaded("W01"));
            Window first = read.windows().get(0);
            assertEquals(3, first.getPanels().get(0).getPieces().size());
            Piece piece = first.getPanels().get(0).getPieces().get(1);
            assertEquals(OutlineMm.rectangle(100, 0, 100, 200), piece.getFace());
            assertEquals("sea green", first.getColourways().get(0).getChoices().get(1).getGlass().getName());
            assertSame(piece, first.getColourways().get(0).getChoices().get(1).getPiece());
            assertSame(first.getColourways().get(0).getChoices().get(1), piece.getChoices().get(0));
            assertEquals(List.of(), read.links().broken());
        }
    }

    @Test
    void savingWithoutAChangeWritesNothingAndAChangeWritesOneFile() throws IOException {
        try (CommissionFolder made = CommissionFolder.create(place, settings())) {
            Specimen.window(made, "W01", 3);
            Specimen.window(made, "W02", 2);
            made.save();
        }
        try (CommissionFolder open = CommissionFolder.open(place, Access.WRITE)) {
            open.windows();
            open.studio();
            assertFalse(open.isModified(), "loading changes nothing");
            open.save();
            assertEquals(List.of(), open.generations("windows/W01.saddlebar"));
            open.window("W01").orElseThrow().setTitle("Ebb tide");
            open.save();
            assertEquals(1, open.generations("windows/W01.saddlebar").size());
            assertEquals(List.of(), open.generations("windows/W02.saddlebar"));
        }
    }

    @Test
    void savingTwiceTheSameModelGivesTheSameBytes() throws IOException {
        for (String name : List.of("one", "two")) {
            try (CommissionFolder made = CommissionFolder.create(temp.resolve(name), settings(), Desk.ofAnna())) {
                Specimen.window(made, "W01", 5);
                made.save();
            }
        }
        for (String file : List.of("commission.saddlebar", "windows/W01.saddlebar", "studio/studio.saddlebar")) {
            assertEquals(-1, Files.mismatch(temp.resolve("one").resolve(file), temp.resolve("two").resolve(file)), file);
        }
    }

    @Test
    void fiveGenerationsAreKept() throws IOException {
        try (CommissionFolder made = CommissionFolder.create(place, settings())) {
            Window window = Specimen.window(made, "W01", 1);
            for (int i = 1; i <= 9; i++) {
                window.setTitle("title " + i);
                made.save();
            }
            List<Path> generations = made.generations("windows/W01.saddlebar");
            assertEquals(5, generations.size());
            for (int i = 0; i < 5; i++) {
                assertTrue(Files.readString(generations.get(i)).contains("title " + (i + 4)), generations.get(i).toString());
            }
            assertTrue(generations.get(0).startsWith(made.path().resolve(".generations").resolve("windows")));
        }
    }

    @Test
    void aRemovedWindowStaysAmongTheGenerations() throws IOException {
        try (CommissionFolder made = CommissionFolder.create(place, settings())) {
            Specimen.window(made, "W01", 1);
            Specimen.window(made, "W02", 1);
            made.save();
            made.removeWindow(made.window("W01").orElseThrow());
            assertTrue(Files.exists(made.resolve("windows/W01.saddlebar")), "not before the save");
            made.save();
            assertFalse(Files.exists(made.resolve("windows/W01.saddlebar")));
            assertEquals(1, made.generations("windows/W01.saddlebar").size());
            made.addWindow("W01", "again");
            made.save();
        }
        try (CommissionFolder read = CommissionFolder.open(place, Access.READ)) {
            assertEquals(List.of("W02", "W01"), read.windowNames());
            assertEquals("again", read.windows().get(1).getTitle());
        }
    }

    @Test
    void linksAreFollowedBackFromTheFilesThatPoint() throws IOException {
        try (CommissionFolder made = CommissionFolder.create(place, settings())) {
            Specimen.window(made, "W01", 3);
            Specimen.window(made, "W02", 2);
            Specimen.sheet(made);
            made.save();
        }
        try (CommissionFolder read = CommissionFolder.open(place, Access.READ)) {
            Paint paint = read.studio().getPaints().stream().filter(p -> p.getName().equals("pale matt")).findFirst().orElseThrow();
            assertEquals(2, read.links().users(paint, DesignLayer.class).size());
            Window window = read.window("W01").orElseThrow();
            Stencil stencil = window.getPanels().get(0).getLayers().get(0).getStencils().get(0);
            assertEquals(1, read.links().users(stencil, Placement.class).size());
            assertEquals(1, read.links().users(stencil, Placement.class).get(0).getSheet().getNumber());
            Piece piece = window.getPanels().get(0).getPieces().get(0);
            assertEquals(1, read.links().users(piece, StencilPiece.class).size());
            assertSame(piece, read.links().byId(piece.getId()).orElseThrow());
            assertTrue(read.links().byId("no such id").isEmpty());
        }
    }

    @Test
    void deletingAPieceTakesTheLinksToItAlong() throws IOException {
        try (CommissionFolder made = CommissionFolder.create(place, settings())) {
            Window window = Specimen.window(made, "W01", 3);
            made.save();
            Piece piece = window.getPanels().get(0).getPieces().get(0);
            made.links().delete(piece);
            assertEquals(2, window.getPanels().get(0).getPieces().size());
            assertTrue(window.getColourways().get(0).getChoices().stream().map(GlassChoice::getPiece).noneMatch(piece::equals));
            made.save();
            assertEquals(List.of(), made.links().broken());
        }
    }

    @Test
    void aLinkToNothingIsTold() throws IOException {
        try (CommissionFolder made = CommissionFolder.create(place, settings())) {
            Specimen.window(made, "W01", 1);
            made.save();
        }
        Path studio = place.resolve("studio/studio.saddlebar");
        try (CommissionFolder read = CommissionFolder.open(place, Access.READ)) {
            Paint paint = read.window("W01").orElseThrow().getPanels().get(0).getLayers().get(0).getPaint();
            Files.writeString(studio, Files.readString(studio).replace(paint.getId(), "00000000-0000-0000-0000-000000000000"));
        }
        try (CommissionFolder read = CommissionFolder.open(place, Access.READ)) {
            assertEquals("broken-link", read.links().broken().get(0).code());
        }
    }

    @Test
    void everyIdentifiableObjectGetsAnIdWhenItJoins() throws IOException {
        try (CommissionFolder made = CommissionFolder.create(place, settings())) {
            Window window = Specimen.window(made, "W01", 4);
            for (EObject object : List.of(window, window.getPanels().get(0), window.getPanels().get(0).getPieces().get(3), made.commission(),
                    made.studio(), made.studio().getPaints().get(0))) {
                String id = EcoreUtil.getID(object);
                assertNotNull(id);
                assertEquals(id, java.util.UUID.fromString(id).toString());
            }
        }
    }

    @Test
    void namesThatAreNoFileNamesAreRefused() throws IOException {
        try (CommissionFolder made = CommissionFolder.create(place, settings())) {
            made.addWindow("W01", "");
            for (String bad : List.of("", "../W02", "a/b", "W 1", ".hidden", "w01", "CON", "x".repeat(40), "C:evil")) {
                assertThrows(Refusal.class, () -> made.addWindow(bad, ""), bad);
            }
        }
    }

    @Test
    void aFolderWithSomethingInItIsNotOverwritten() throws IOException {
        Files.createDirectories(place);
        Files.writeString(place.resolve("letter.txt"), "keep me");
        assertThrows(Refusal.class, () -> CommissionFolder.create(place, settings()));
        assertEquals(List.of("letter.txt"), names(place));
        Path file = temp.resolve("file");
        Files.writeString(file, "keep me");
        assertThrows(Refusal.class, () -> CommissionFolder.create(file, settings()));
        Files.delete(place.resolve("letter.txt"));
        CommissionFolder.create(place, settings()).close();
        assertTrue(Files.exists(place.resolve("commission.saddlebar")));
    }

    @Test
    void whatIsNoCommissionIsRefused() throws IOException {
        Refusal none = assertThrows(Refusal.class, () -> CommissionFolder.open(temp, Access.READ));
        assertTrue(none.getMessage().contains("is no commission"), none.getMessage());
        CommissionFolder.create(place, settings()).close();
        Files.copy(place.resolve("studio/studio.saddlebar"), place.resolve("commission.saddlebar"),
                java.nio.file.StandardCopyOption.REPLACE_EXISTING);
        Refusal studio = assertThrows(Refusal.class, () -> CommissionFolder.open(place, Access.READ));
        assertTrue(studio.getMessage().contains("instead of a commission"), studio.getMessage());
    }

    @Test
    void aMissingOrDamagedWindowIsRefusedByName() throws IOException {
        try (CommissionFolder made = CommissionFolder.create(place, settings())) {
            Specimen.window(made, "W01", 1);
            Specimen.window(made, "W02", 1);
            made.save();
        }
        Files.delete(place.resolve("windows/W01.saddlebar"));
        Files.writeString(place.resolve("windows/W02.saddlebar"), "half a fi");
        try (CommissionFolder read = CommissionFolder.open(place, Access.READ)) {
            for (int i = 0; i < 2; i++) { // the second time too: no empty window stays behind
                Refusal missing = assertThrows(Refusal.class, () -> read.window("W01"));
                assertTrue(missing.getMessage().contains("W01.saddlebar: is missing"), missing.getMessage());
                Refusal damaged = assertThrows(Refusal.class, () -> read.window("W02"));
                assertTrue(damaged.getMessage().contains("W02.saddlebar:1: is not well-formed"), damaged.getMessage());
            }
        }
    }

    @Test
    void aFileThatSomebodyElseChangedIsNotOverwritten() throws IOException {
        try (CommissionFolder made = CommissionFolder.create(place, settings())) {
            Window window = Specimen.window(made, "W01", 1);
            made.save();
            Path file = made.resolve("windows/W01.saddlebar");
            String theirs = Files.readString(file).replace("W01 drawn", "W01 synced");
            Files.writeString(file, theirs);
            window.setTitle("mine");
            made.commission().setTitle("mine too");
            assertThrows(LockedException.class, made::save);
            assertEquals(theirs, Files.readString(file));
            assertFalse(Files.readString(made.resolve("commission.saddlebar")).contains("mine too"), "all or nothing");
            assertTrue(made.isModified());
        }
    }

    @Test
    void readersDoNotWrite() throws IOException {
        CommissionFolder.create(place, settings()).close();
        try (CommissionFolder read = CommissionFolder.open(place, Access.READ)) {
            assertThrows(IllegalStateException.class, () -> read.addWindow("W09", ""));
            assertThrows(IllegalStateException.class, read::save);
            assertThrows(IllegalStateException.class, () -> read.importArtwork(place.resolve("commission.saddlebar")));
            assertThrows(IllegalStateException.class, () -> read.records().append(RecordDraft.of(RecordKind.NOTE)));
        }
    }

    @Test
    void artworkIsCopiedAndNeverChanged() throws IOException {
        Path art = temp.resolve("heron.svg");
        Files.writeString(art, "<svg>1</svg>");
        try (CommissionFolder made = CommissionFolder.create(place, settings())) {
            BroughtArtwork first = made.importArtwork(art);
            assertEquals(new BroughtArtwork("artwork/heron.svg", "heron.svg", first.sha256(), 1, true), first);
            assertEquals(saddlebar.model.file.Hashes.sha256("<svg>1</svg>".getBytes(StandardCharsets.UTF_8)), first.sha256());
            Files.writeString(art, "<svg>2</svg>");
            BroughtArtwork second = made.importArtwork(art);
            assertEquals("artwork/heron.r2.svg", second.file());
            assertEquals(2, second.revision());
            assertEquals("<svg>1</svg>", Files.readString(made.resolve("artwork/heron.svg")));
            Files.writeString(art, "<svg>1</svg>");
            BroughtArtwork again = made.importArtwork(art);
            assertEquals("artwork/heron.svg", again.file());
            assertFalse(again.isNew());
            assertEquals(List.of("heron.r2.svg", "heron.svg"), names(made.resolve("artwork")));
            assertThrows(Refusal.class, () -> made.importArtwork(temp));
            assertThrows(Refusal.class, () -> made.importArtwork(temp.resolve("nothing.svg")));
        }
    }

    @Test
    void aDetachedThingInTheModelIsOurFaultAndSavesNothing() throws IOException {
        try (CommissionFolder made = CommissionFolder.create(place, settings())) {
            Window window = Specimen.window(made, "W01", 1);
            made.save();
            window.getPanels().get(0).getLayers().get(0).setPaint(CommissionFactory.eINSTANCE.createPaint());
            byte[] before = Files.readAllBytes(made.resolve("windows/W01.saddlebar"));
            assertThrows(Exception.class, made::save);
            assertEquals(new String(before, StandardCharsets.UTF_8), Files.readString(made.resolve("windows/W01.saddlebar")));
        }
    }

    static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }
}
