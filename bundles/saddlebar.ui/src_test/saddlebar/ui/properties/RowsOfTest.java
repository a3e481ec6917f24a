package saddlebar.ui.properties;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.commands.operations.DefaultOperationHistory;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.resource.impl.ResourceImpl;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import saddlebar.model.art.OutlineMm;
import saddlebar.model.commission.Commission;
import saddlebar.model.commission.CommissionFactory;
import saddlebar.model.commission.Panel;
import saddlebar.model.commission.Piece;
import saddlebar.model.commission.Window;
import saddlebar.model.problem.Refusal;
import saddlebar.ui.Lengths;
import saddlebar.ui.desk.Edits;
import saddlebar.ui.easel.RulerScale;
import saddlebar.ui.tree.MakingStates;

class RowsOfTest {
    private final DefaultOperationHistory history = new DefaultOperationHistory();
    private final Edits edits = new Edits(history, "test");
    private final RowsOf rows = new RowsOf(new Lengths(RulerScale.Unit.MM, Locale.ENGLISH), Optional.of(edits), MakingStates.NONE);
    private final Commission commission = CommissionFactory.eINSTANCE.createCommission();
    private final Window window = CommissionFactory.eINSTANCE.createWindow();

    @BeforeEach
    void putInFiles() {
        new ResourceImpl(URI.createURI("memory:/c")).getContents().add(commission);
        new ResourceImpl(URI.createURI("memory:/W01")).getContents().add(window);
        window.setName("W01");
        window.setTitle("Ebb tide");
    }

    private static Row row(List<Row> rows, String label) {
        return rows.stream().filter(row -> row.label().equals(label)).findFirst().orElseThrow();
    }

    @Test
    void aTitleIsEditedAndTakenBack() throws ExecutionException {
        row(rows.general(window), "Title").edit().orElseThrow().accept("Flood");
        assertEquals("Flood", window.getTitle());
        assertEquals("Title of the Window", history.getUndoOperation(edits.context()).getLabel());
        history.undo(edits.context(), null, null);
        assertEquals("Ebb tide", row(rows.general(window), "Title").value());
    }

    @Test
    void anEmptiedFieldIsNoText() {
        row(rows.general(window), "Title").edit().orElseThrow().accept("");
        assertNull(window.getTitle());
    }

    @Test
    void aClientIsMadeWhenFirstNamed() throws ExecutionException {
        row(rows.general(commission), "Client").edit().orElseThrow().accept("The parish");
        assertEquals("The parish", commission.getClient().getName());
        history.undo(edits.context(), null, null);
        assertNull(commission.getClient());
    }

    @Test
    void aWindowsNameIsItsFilesNameAndStays() {
        assertTrue(row(rows.general(window), "Name").edit().isEmpty());
    }

    @Test
    void whereNothingMayBeChangedNothingCanBe() {
        RowsOf looking = new RowsOf(new Lengths(RulerScale.Unit.MM, Locale.ENGLISH), Optional.empty(), MakingStates.NONE);
        assertTrue(looking.general(window).stream().allMatch(row -> row.edit().isEmpty()));
        assertTrue(looking.general(commission).stream().allMatch(row -> row.edit().isEmpty()));
    }

    @Test
    void aPieceTellsItsMeasures() {
        Piece piece = CommissionFactory.eINSTANCE.createPiece();
        piece.setNumber(12);
        piece.setNet(OutlineMm.of(0, 0, 40, 0, 40, 25.5));
        piece.setNetAreaMm2(510);
        piece.setPerimeterMm(112.9);
        List<Row> told = rows.general(piece);
        assertEquals("12", row(told, "Number").value());
        assertEquals("40 × 25.5 mm", row(told, "Size").value());
        assertEquals("5.1 cm²", row(told, "Area").value());
        assertEquals("no glass chosen yet", row(told, "Glass").value());
        assertEquals("drawn", row(told, "State").value());
    }

    @Test
    void aNumberGivenByHandStaysAndOneThatIsTakenIsRefused() throws ExecutionException {
        Panel panel = CommissionFactory.eINSTANCE.createPanel();
        window.getPanels().add(panel);
        for (int number = 1; number <= 2; number++) {
            Piece piece = CommissionFactory.eINSTANCE.createPiece();
            piece.setNumber(number);
            panel.getPieces().add(piece);
        }
        Piece first = panel.getPieces().get(0);
        row(rows.general(first), "Number").edit().orElseThrow().accept("30");
        assertEquals(30, first.getNumber());
        assertTrue(first.isNumberedByHand());
        Refusal taken = assertThrows(Refusal.class, () -> row(rows.general(first), "Number").edit().orElseThrow().accept("2"));
        assertTrue(taken.getMessage().contains("2 is the number of another piece"), taken.getMessage());
        assertThrows(Refusal.class, () -> row(rows.general(first), "Number").edit().orElseThrow().accept("twelve"));
        row(rows.general(first), "Group").edit().orElseThrow().accept("sky");
        history.undo(edits.context(), null, null);
        history.undo(edits.context(), null, null);
        assertEquals(1, first.getNumber());
        assertNull(first.getGroup());
    }
}
