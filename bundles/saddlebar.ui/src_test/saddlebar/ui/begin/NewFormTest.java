package saddlebar.ui.begin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import saddlebar.model.commission.UnitSystem;
import saddlebar.model.store.Access;
import saddlebar.model.store.CommissionFolder;
import saddlebar.ui.Messages;

class NewFormTest {
    @TempDir
    private Path temp;

    private static NewForm own(String title, Object folder) {
        return new NewForm(title, folder.toString(), false, "", UnitSystem.MM);
    }

    private NewForm shared(Object studio) {
        return new NewForm("Porch", temp.resolve("porch").toString(), true, studio.toString(), UnitSystem.MM);
    }

    private static void make(NewForm form) throws IOException {
        NewChoice choice = form.choice().orElseThrow();
        CommissionFolder.create(choice.folder(), choice.settings(Optional.empty())).close();
    }

    @Test
    void aFolderIsNamedAfterTheTitle() {
        assertEquals("estuary-reading-room", NewChoice.folderName("  Estuary: reading room! "));
        assertEquals("kirche-sankt-aegidius-strasse-3", NewChoice.folderName("Kirche Sankt Aegidius, Straße 3"));
        assertEquals("eglise", NewChoice.folderName("Église"));
        assertEquals("", NewChoice.folderName("…"));
        assertEquals(60, NewChoice.folderName("x".repeat(200)).length());
    }

    @Test
    void whatIsRightIsMadeAsChosen() throws IOException {
        NewForm form = new NewForm(" Porch ", temp.resolve("work/porch").toString(), false, "", UnitSystem.INCH);
        assertEquals(NewForm.Words.hint(Messages.New_folderHint), form.aboutFolder());
        make(form);
        try (CommissionFolder made = CommissionFolder.open(temp.resolve("work/porch"), Access.READ)) {
            assertEquals("Porch", made.commission().getTitle());
            assertEquals(UnitSystem.INCH, made.commission().getUnits());
            assertEquals(List.of("letter", "tabloid"), made.commission().getPapers());
            assertTrue(made.hasOwnStudio());
        }
    }

    @Test
    void aSharedStudioIsMadeAndThenJoined() throws IOException {
        Path studio = temp.resolve("our-studio");
        assertEquals(NewForm.Words.hint(Messages.New_studioMade), shared(studio).aboutStudio());
        make(shared(studio));
        NewForm second = new NewForm("Door", temp.resolve("door").toString(), true, studio.toString(), UnitSystem.MM);
        assertEquals(NewForm.Words.hint(Messages.New_studioJoined), second.aboutStudio());
        make(second);
        try (CommissionFolder made = CommissionFolder.open(temp.resolve("door"), Access.READ)) {
            assertFalse(made.hasOwnStudio());
            assertEquals(2, made.studioFolder().commissions().size());
        }
    }

    @Test
    void whatIsWrongIsSaidWhereItIs() throws IOException {
        assertEquals(NewForm.Words.wrong(Messages.New_noTitle), own(" ", temp.resolve("a")).aboutTitle());
        assertEquals(NewForm.Words.wrong(Messages.New_noFolder), own("Porch", "").aboutFolder());
        assertEquals(NewForm.Words.wrong(Messages.New_notAbsolute), own("Porch", "porch").aboutFolder());
        assertEquals(NewForm.Words.wrong(Messages.New_noPath), own("Porch", "/porch\0").aboutFolder());
        Path file = Files.writeString(temp.resolve("file"), "x");
        assertEquals(NewForm.Words.wrong(Messages.New_isFile), own("Porch", file).aboutFolder());
        assertEquals(NewForm.Words.wrong(Messages.New_taken), own("Porch", temp).aboutFolder());
        assertEquals(NewForm.Words.hint(Messages.New_folderThere), own("Porch", Files.createDirectory(temp.resolve("empty"))).aboutFolder());
        assertTrue(own("Porch", file.resolve("porch")).aboutFolder().text().contains(file.toString()), "nothing lies in a file");
        make(own("Porch", temp.resolve("porch")));
        assertTrue(own("Door", temp.resolve("porch/made/door")).aboutFolder().wrong());
        assertTrue(own("Door", temp.resolve("porch/made/door")).choice().isEmpty());
    }

    @Test
    void aStudioLiesBesideItsCommissions() throws IOException {
        assertEquals(NewForm.Words.wrong(Messages.New_noStudio), shared(" ").aboutStudio());
        assertEquals(NewForm.Words.wrong(Messages.New_notAbsolute), shared("our-studio").aboutStudio());
        assertEquals(NewForm.Words.wrong(Messages.New_studioInside), shared(temp).aboutStudio());
        assertEquals(NewForm.Words.wrong(Messages.New_studioInside), shared(temp.resolve("porch/studio")).aboutStudio());
        Files.createDirectories(temp.resolve("letters/2026"));
        assertEquals(NewForm.Words.wrong(Messages.New_studioTaken), shared(temp.resolve("letters")).aboutStudio());
        assertTrue(shared(temp.resolve("letters")).choice().isEmpty());
    }
}
