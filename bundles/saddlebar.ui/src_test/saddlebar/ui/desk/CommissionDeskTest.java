package saddlebar.ui.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.core.commands.operations.DefaultOperationHistory;
import org.eclipse.jface.preference.PreferenceStore;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import saddlebar.model.commission.Window;
import saddlebar.model.problem.Refusal;
import saddlebar.model.store.Access;
import saddlebar.model.store.CommissionFolder;
import saddlebar.model.store.NewCommission;

class CommissionDeskTest {
    @TempDir
    private Path temp;
    private Path folder;
    private final CommissionDesk desk = new CommissionDesk(new DefaultOperationHistory());
    private final List<String> told = new ArrayList<>();

    @BeforeEach
    void make() throws IOException {
        folder = temp.resolve("chapel");
        try (CommissionFolder made = CommissionFolder.create(folder, NewCommission.titled("Chapel door"))) {
            made.addWindow("W01", "Ebb tide");
            made.addWindow("W02", "");
            made.save();
        }
        desk.addListener(new CommissionDesk.Listener() {
            @Override
            public void opened(OpenCommission commission) {
                told.add("opened " + commission.title());
            }

            @Override
            public void closing(OpenCommission commission) {
                told.add("closing " + commission.title());
            }

            @Override
            public void changed(OpenCommission commission) {
                told.add("changed");
            }
        });
    }

    @AfterEach
    void close() throws IOException {
        desk.close();
    }

    private static void rename(OpenCommission open, String title) {
        Window window = open.window("W01").orElseThrow();
        open.edits().perform("Title", window, () -> window.setTitle(title));
    }

    @Test
    void opensEditsSavesAndFindsItAgain() throws IOException {
        OpenCommission open = desk.open(folder);
        assertEquals(List.of("W01", "W02"), open.windowNames());
        assertFalse(open.isLoaded("W01"), "a window is read when it is first looked into");
        rename(open, "Flood");
        assertTrue(open.isDirty());
        open.save();
        assertFalse(open.isDirty());
        desk.close();
        assertEquals("Flood", desk.open(folder).window("W01").orElseThrow().getTitle());
        assertEquals(List.of("opened Chapel door", "changed", "changed", "closing Chapel door", "opened Chapel door"), told);
    }

    @Test
    void revertBringsBackWhatIsOnTheDisk() throws IOException {
        rename(desk.open(folder), "Flood");
        desk.reopen();
        assertEquals("Ebb tide", desk.commission().orElseThrow().window("W01").orElseThrow().getTitle());
        assertFalse(desk.commission().orElseThrow().isDirty());
    }

    @Test
    void whereSomebodyElseIsWritingOneMayLook() throws IOException {
        try (CommissionFolder other = CommissionFolder.open(folder, Access.WRITE)) {
            assertTrue(other.isWritable());
            OpenCommission open = desk.open(folder);
            assertTrue(open.isReadOnly());
            assertFalse(desk.canEdit());
            assertEquals("Ebb tide", open.window("W01").orElseThrow().getTitle());
        }
    }

    @Test
    void whatCannotBeOpenedLeavesWhatIsOpen() throws IOException {
        desk.open(folder);
        Files.createDirectories(temp.resolve("nothing"));
        assertThrows(Refusal.class, () -> desk.open(temp.resolve("nothing")));
        assertEquals("Chapel door", desk.commission().orElseThrow().title());
        assertTrue(desk.canEdit());
    }

    @Test
    void productionTakesItOverAndGivesItBack() throws IOException {
        desk.open(folder);
        Path handed = desk.handOver();
        assertFalse(desk.canEdit());
        assertTrue(desk.isMaking());
        assertEquals("Ebb tide", desk.commission().orElseThrow().window("W01").orElseThrow().getTitle(), "one may look on meanwhile");
        try (CommissionFolder maker = CommissionFolder.open(handed, Access.WRITE)) { // the lock is free
            maker.window("W01").orElseThrow().setTitle("made");
            maker.save();
        }
        desk.takeBack(handed);
        assertTrue(desk.canEdit());
        assertEquals("made", desk.commission().orElseThrow().window("W01").orElseThrow().getTitle());
    }

    @Test
    void unsavedWorkIsNotHandedOver() throws IOException {
        rename(desk.open(folder), "Flood");
        assertThrows(IllegalStateException.class, desk::handOver);
        assertTrue(desk.canEdit());
    }

    @Test
    void theLastOnesAreRememberedTheLatestFirst() {
        RecentCommissions recent = new RecentCommissions(new PreferenceStore());
        assertEquals(List.of(), recent.all());
        for (int i = 0; i < 12; i++) {
            recent.opened(Path.of("/work/c" + i));
        }
        recent.opened(Path.of("/work/c9"));
        recent.forget(Path.of("/work/c11"));
        assertEquals(List.of("/work/c9", "/work/c10", "/work/c8", "/work/c7", "/work/c6", "/work/c5", "/work/c4"),
                recent.all().stream().map(path -> path.toString().replace('\\', '/')).toList());
    }

    @Test
    void theFirstArgumentThatIsNoOptionIsTheCommission() {
        assertEquals(Optional.of(Path.of("estuary")), StartArgument.commission(List.of("-x", "estuary", "other")));
        assertEquals(Optional.of(Path.of("estuary")), StartArgument.commission(List.of("-cssTheme", "dark", "estuary")));
        assertEquals(Optional.empty(), StartArgument.commission(List.of("-x", "")));
    }
}
