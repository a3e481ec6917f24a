package saddlebar.ui.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.commands.operations.DefaultOperationHistory;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.resource.impl.ResourceImpl;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import saddlebar.model.commission.CommissionFactory;
import saddlebar.model.commission.Panel;
import saddlebar.model.commission.Window;

class EditsTest {
    private final DefaultOperationHistory history = new DefaultOperationHistory();
    private final Edits edits = new Edits(history, "test");
    private final Window window = CommissionFactory.eINSTANCE.createWindow();
    private int told;

    @BeforeEach
    void putInAFile() {
        window.setTitle("Ebb tide");
        new ResourceImpl(URI.createURI("memory:/W01")).getContents().add(window);
        edits.whenChanged(() -> told++);
    }

    private void undo() throws ExecutionException {
        history.undo(edits.context(), null, null);
    }

    private void redo() throws ExecutionException {
        history.redo(edits.context(), null, null);
    }

    @Test
    void thereBackAndThereAgain() throws ExecutionException {
        edits.perform("Title", window, () -> window.setTitle("Flood"));
        edits.perform("Title", window, () -> window.setTitle("Slack water"));
        undo();
        assertEquals("Flood", window.getTitle());
        undo();
        assertEquals("Ebb tide", window.getTitle());
        assertFalse(history.canUndo(edits.context()));
        redo();
        redo();
        assertEquals("Slack water", window.getTitle());
        assertEquals(6, told);
    }

    @Test
    void severalChangesAreOneStep() throws ExecutionException {
        edits.perform("Panels", window, () -> {
            Panel panel = CommissionFactory.eINSTANCE.createPanel();
            panel.setName("left");
            window.getPanels().add(panel);
            window.setNote("two lights");
        });
        assertEquals("left", window.getPanels().get(0).getName());
        undo();
        assertTrue(window.getPanels().isEmpty());
        assertNull(window.getNote());
        redo();
        assertEquals("left", window.getPanels().get(0).getName());
    }

    @Test
    void whatChangesNothingIsNoStep() {
        edits.perform("Title", window, () -> window.setTitle("Ebb tide"));
        assertFalse(history.canUndo(edits.context()));
        assertEquals(0, told);
    }

    @Test
    void dirtyUntilSavedAndAgainAfterTakingBack() throws ExecutionException {
        assertFalse(edits.isDirty());
        edits.perform("Title", window, () -> window.setTitle("Flood"));
        assertTrue(edits.isDirty());
        edits.saved();
        assertFalse(edits.isDirty());
        undo();
        assertTrue(edits.isDirty(), "the disk holds what has been taken back");
        redo();
        assertFalse(edits.isDirty());
    }

    @Test
    void whoIsToldFindsItAsItIs() throws ExecutionException {
        List<Boolean> dirty = new ArrayList<>();
        edits.whenChanged(() -> dirty.add(edits.isDirty()));
        edits.perform("Title", window, () -> window.setTitle("Flood"));
        undo();
        redo();
        edits.saved();
        undo();
        assertEquals(List.of(true, false, true, false, true), dirty);
    }

    @Test
    void theLabelIsWhatTheMenuSays() {
        edits.perform("Title of the Window", window, () -> window.setTitle("Flood"));
        assertEquals("Title of the Window", history.getUndoOperation(edits.context()).getLabel());
    }

    @Test
    void whatLiesInNoFileCannotBeEdited() {
        Window loose = CommissionFactory.eINSTANCE.createWindow();
        assertThrows(IllegalArgumentException.class, () -> edits.perform("Title", loose, () -> loose.setTitle("x")));
    }
}
