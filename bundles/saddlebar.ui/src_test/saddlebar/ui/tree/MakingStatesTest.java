package saddlebar.ui.tree;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import org.eclipse.core.commands.operations.DefaultOperationHistory;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import saddlebar.model.commission.ArtworkReference;
import saddlebar.model.commission.CommissionFactory;
import saddlebar.model.commission.DesignLayer;
import saddlebar.model.commission.LayerRole;
import saddlebar.model.commission.MakingState;
import saddlebar.model.commission.Panel;
import saddlebar.model.commission.Piece;
import saddlebar.model.commission.Placement;
import saddlebar.model.commission.Sheet;
import saddlebar.model.commission.Stencil;
import saddlebar.model.commission.StencilPiece;
import saddlebar.model.commission.Window;
import saddlebar.model.store.Access;
import saddlebar.model.store.CommissionFolder;
import saddlebar.model.store.NewCommission;
import saddlebar.model.store.RecordDraft;
import saddlebar.model.store.RecordKind;
import saddlebar.ui.Lengths;
import saddlebar.ui.desk.CommissionDesk;
import saddlebar.ui.easel.RulerScale;

/** Four pieces: two of them painted, their stencils on a sheet, one more on a stencil that lies on none, one bare. */
class MakingStatesTest {
    private static final CommissionFactory NEW = CommissionFactory.eINSTANCE;

    @TempDir
    private Path temp;
    private Path folder;
    private CommissionFolder made;
    private final Panel panel = NEW.createPanel();
    private final DesignLayer matt = NEW.createDesignLayer();
    private final DesignLayer trace = NEW.createDesignLayer();

    @BeforeEach
    void make() throws IOException {
        folder = temp.resolve("chapel");
        made = CommissionFolder.create(folder, NewCommission.titled("Chapel door"));
        Window window = made.addWindow("W01", "Ebb tide");
        window.getPanels().add(panel);
        ArtworkReference art = NEW.createArtworkReference();
        art.setFile("artwork/a.svg");
        panel.getArtwork().add(art);
        DesignLayer cutline = NEW.createDesignLayer();
        cutline.setRole(LayerRole.CUTLINE);
        matt.setRole(LayerRole.MATT);
        matt.setName("Matt");
        trace.setRole(LayerRole.TRACE);
        trace.setName("Trace");
        panel.getLayers().addAll(List.of(cutline, matt, trace));
        for (int number : new int[] {4, 2, 1, 3}) {
            Piece piece = NEW.createPiece();
            piece.setNumber(number);
            panel.getPieces().add(piece);
        }
        Stencil laid = stencil(matt, 1, 2);
        stencil(trace, 3);
        Sheet sheet = NEW.createSheet();
        sheet.setNumber(1);
        Placement placement = NEW.createPlacement();
        placement.setStencil(laid);
        sheet.getPlacements().add(placement);
        made.commission().getSheets().add(sheet);
        made.save();
    }

    @AfterEach
    void close() throws IOException {
        made.close();
    }

    private Piece piece(int number) {
        return panel.getPieces().stream().filter(piece -> piece.getNumber() == number).findFirst().orElseThrow();
    }

    private Stencil stencil(DesignLayer layer, int... numbers) {
        Stencil stencil = NEW.createStencil();
        stencil.setNumber(1);
        for (int number : numbers) {
            StencilPiece entry = NEW.createStencilPiece();
            entry.setPiece(piece(number));
            stencil.getPieces().add(entry);
        }
        layer.getStencils().add(stencil);
        return stencil;
    }

    private MakingStates read() throws IOException {
        try (CommissionFolder reader = CommissionFolder.open(folder, Access.READ)) {
            return MakingStates.of(reader);
        }
    }

    @Test
    void whatLiesOnASheetIsOnSheet() throws IOException {
        MakingStates states = read();
        assertEquals(MakingState.ON_SHEET, states.of(piece(1)));
        assertEquals(MakingState.ON_SHEET, states.of(piece(2)));
        assertEquals(MakingState.DRAWN, states.of(piece(3)));
        assertEquals(MakingState.DRAWN, states.of(piece(4)));
        assertEquals(MakingState.ON_SHEET, states.of(matt));
        assertEquals(MakingState.DRAWN, states.of(trace));
        assertEquals(3, states.painted().size());
    }

    @Test
    void whatWasPulledIsPrinted() throws IOException {
        made.records().append(RecordDraft.of(RecordKind.PULL).with(Map.of("layerId", matt.getId(), "pieceIds", List.of(piece(2).getId()))));
        MakingStates states = read();
        assertEquals(MakingState.PRINTED, states.of(piece(2)));
        assertEquals(MakingState.ON_SHEET, states.of(piece(1)));
        assertEquals(MakingState.ON_SHEET, states.of(matt), "a layer is as far as the piece that is farthest behind");
    }

    @Test
    void theTreeSaysHowFarTheWindowIs() throws IOException {
        made.close();
        CommissionDesk desk = new CommissionDesk(new DefaultOperationHistory());
        desk.open(folder).window("W01");
        MakingStates states = read();
        NodeWords words = new NodeWords(desk::commission, () -> new Lengths(RulerScale.Unit.MM, Locale.ENGLISH), () -> states);
        assertEquals("2 on sheet, 1 drawn", words.state(new WindowNode("W01")), "the bare piece waits for nothing");
        assertEquals("on sheet", words.state(piece(1)));
        desk.close();
    }

    @Test
    void whatIsNotKnownYetIsAsTheModelSays() {
        assertEquals(MakingState.DRAWN, MakingStates.NONE.of(piece(1)));
        assertEquals(MakingState.DRAWN, MakingStates.NONE.of(matt));
    }
}
