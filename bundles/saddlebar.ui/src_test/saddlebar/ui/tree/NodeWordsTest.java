package saddlebar.ui.tree;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

import org.eclipse.core.commands.operations.DefaultOperationHistory;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import saddlebar.model.commission.ArtworkReference;
import saddlebar.model.commission.CommissionFactory;
import saddlebar.model.commission.MakingState;
import saddlebar.model.commission.Panel;
import saddlebar.model.commission.Piece;
import saddlebar.model.commission.Window;
import saddlebar.model.store.CommissionFolder;
import saddlebar.model.store.NewCommission;
import saddlebar.ui.Lengths;
import saddlebar.ui.desk.CommissionDesk;
import saddlebar.ui.desk.OpenCommission;
import saddlebar.ui.easel.RulerScale;

class NodeWordsTest {
    @TempDir
    private Path temp;
    private final CommissionDesk desk = new CommissionDesk(new DefaultOperationHistory());
    private final NodeWords words = new NodeWords(desk::commission, () -> new Lengths(RulerScale.Unit.MM, Locale.ENGLISH), () -> MakingStates.NONE);
    private final CommissionContent content = new CommissionContent(desk::commission);
    private OpenCommission open;

    @BeforeEach
    void make() throws IOException {
        Path folder = temp.resolve("chapel");
        try (CommissionFolder made = CommissionFolder.create(folder, NewCommission.titled("Chapel door"))) {
            Window window = made.addWindow("W01", "Ebb tide");
            Panel panel = CommissionFactory.eINSTANCE.createPanel();
            panel.setName("lower");
            panel.getArtwork().add(artwork());
            for (int i = 1; i <= 3; i++) {
                Piece piece = CommissionFactory.eINSTANCE.createPiece();
                piece.setNumber(4 - i);
                piece.setState(i == 1 ? MakingState.PRINTED : MakingState.DRAWN);
                panel.getPieces().add(piece);
            }
            window.getPanels().add(panel);
            made.addWindow("W02", "");
            made.save();
        }
        open = desk.open(folder);
    }

    private static ArtworkReference artwork() {
        ArtworkReference reference = CommissionFactory.eINSTANCE.createArtworkReference();
        reference.setFile("artwork/a.svg");
        return reference;
    }

    @AfterEach
    void close() throws IOException {
        desk.close();
    }

    @Test
    void windowsComeByNameAndAreNotReadForIt() {
        Object[] children = content.getChildren(open.commission());
        assertEquals(new WindowNode("W01"), children[0]);
        assertEquals("W01", words.name(children[0]));
        assertEquals("", words.state(children[0]));
        assertTrue(content.hasChildren(children[0]));
        assertFalse(open.isLoaded("W01"));
    }

    @Test
    void lookedIntoAWindowHasItsTitleAndSaysHowFarItIs() {
        Panel panel = (Panel) content.getChildren(new WindowNode("W01"))[0];
        assertTrue(open.isLoaded("W01"));
        assertEquals("W01  Ebb tide", words.name(new WindowNode("W01")));
        assertEquals("1 printed, 2 drawn", words.state(new WindowNode("W01")));
        assertEquals("lower", words.name(panel));
        Object[] inPanel = content.getChildren(panel);
        assertEquals(new GroupNode(panel, GroupNode.Kind.PIECES), inPanel[0]);
        assertEquals("3", words.state(inPanel[0]));
        Object[] pieces = content.getChildren(inPanel[0]);
        assertArrayEquals(new String[] {"Piece 1", "Piece 2", "Piece 3"}, List.of(pieces).stream().map(words::name).toArray());
        assertEquals("printed", words.state(pieces[2]));
        assertEquals(inPanel[0], content.getParent(pieces[0]));
        assertEquals(new WindowNode("W01"), content.getParent(panel));
    }

    @Test
    void aWindowWithoutArtworkSaysSo() {
        content.getChildren(new WindowNode("W02"));
        assertEquals("no artwork yet", words.state(new WindowNode("W02")));
    }

    @Test
    void whatCannotBeReadSaysWhyInItsPlace() throws IOException {
        Files.writeString(open.path().resolve("windows/W01.saddlebar"), "torn");
        Object[] why = content.getChildren(new WindowNode("W01"));
        assertEquals(1, why.length);
        assertTrue(((String) why[0]).contains("W01.saddlebar"), (String) why[0]);
    }

    @Test
    void statesOfManyAreOneWordOrCounted() {
        assertEquals("all fired", MakingWords.of(List.of(MakingState.FIRED, MakingState.FIRED)));
        assertEquals("fired", MakingWords.of(List.of(MakingState.FIRED)));
        assertEquals("1 to remake, 1 fired, 2 drawn",
                MakingWords.of(List.of(MakingState.DRAWN, MakingState.FIRED, MakingState.TO_REMAKE, MakingState.DRAWN)));
        assertEquals("", MakingWords.of(List.of()));
    }
}
