package saddlebar.production.light;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import saddlebar.model.art.OutlineMm;
import saddlebar.model.commission.ArtworkReference;
import saddlebar.model.commission.Colourway;
import saddlebar.model.commission.Commission;
import saddlebar.model.commission.CommissionFactory;
import saddlebar.model.commission.DesignLayer;
import saddlebar.model.commission.GlassChoice;
import saddlebar.model.commission.GlassStock;
import saddlebar.model.commission.JoinKind;
import saddlebar.model.commission.JoinStock;
import saddlebar.model.commission.LayerRole;
import saddlebar.model.commission.Paint;
import saddlebar.model.commission.Panel;
import saddlebar.model.commission.Piece;
import saddlebar.model.commission.RoleAssignment;
import saddlebar.model.commission.Window;
import saddlebar.production.light.WindowSketch.LayerSketch;
import saddlebar.production.light.WindowSketch.PanelSketch;
import saddlebar.production.light.WindowSketch.PieceSketch;

class WindowSketcherTest {
    private static final CommissionFactory NEW = CommissionFactory.eINSTANCE;
    private final Commission commission = NEW.createCommission();
    private final Window window = NEW.createWindow();
    private final Panel panel = NEW.createPanel();

    @BeforeEach
    void setUp() {
        window.setId("w1");
        window.setName("W01");
        window.getPanels().add(panel);
        commission.getWindows().add(window);
    }

    private PanelSketch sketch() {
        return new WindowSketcher(Path.of("/c"), commission).sketch(window).panels().get(0);
    }

    private static GlassStock glass(String name, String colour) {
        GlassStock glass = NEW.createGlassStock();
        glass.setName(name);
        glass.setColour(colour);
        return glass;
    }

    private Piece piece(int number, GlassStock usual) {
        Piece piece = NEW.createPiece();
        piece.setId("p" + number);
        piece.setNumber(number);
        piece.setNet(OutlineMm.rectangle(0, 0, 10, 10));
        piece.setGlass(usual);
        panel.getPieces().add(piece);
        return piece;
    }

    @Test
    void aColourwaysChoiceGoesBeforeTheUsualGlass() {
        Piece piece = piece(1, glass("clear", "#ffffff"));
        for (String name : List.of("Neap", "Spring")) {
            Colourway colourway = NEW.createColourway();
            colourway.setName(name);
            window.getColourways().add(colourway);
        }
        GlassChoice choice = NEW.createGlassChoice();
        choice.setPiece(piece);
        choice.setGlass(glass("amber", "#E9A33C"));
        window.getColourways().get(1).getChoices().add(choice);
        PieceSketch sketched = sketch().pieces().get(0);
        assertEquals(List.of("clear", "amber"), sketched.looks().stream().map(look -> look.name()).toList());
        assertEquals(0xE9A33C, sketched.looks().get(1).rgb());
        assertEquals(List.of("Neap", "Spring"), new WindowSketcher(Path.of("/c"), commission).sketch(window).colourways());
    }

    @Test
    void retiredPiecesAreLeftOutAndTheRestStandsByNumber() {
        piece(3, null);
        piece(1, null);
        piece(2, null).setRetired(true);
        assertEquals(List.of(1, 3), sketch().pieces().stream().map(PieceSketch::number).toList());
    }

    @Test
    void theLatestArtworkCountsWithItsCutline() {
        for (int revision : new int[] {2, 1}) {
            ArtworkReference art = NEW.createArtworkReference();
            art.setRevision(revision);
            art.setFile("artwork/a.r" + revision + ".svg");
            art.setWidthMm(560);
            RoleAssignment role = NEW.createRoleAssignment();
            role.setRole(LayerRole.CUTLINE);
            role.setArtLayer("cut" + revision);
            art.getRoles().add(role);
            panel.getArtwork().add(art);
        }
        assertEquals(Optional.of(new WindowSketch.ArtPlace(Path.of("/c/artwork/a.r2.svg"), 560)), sketch().art());
        assertEquals("cut2", sketch().cutline());
    }

    @Test
    void layersStandInTheOrderOfFiringWithTheirPaint() {
        Paint brown = NEW.createPaint();
        brown.setColour("#402010");
        Paint pale = NEW.createPaint();
        pale.setSolidTransmittance(0.4);
        layer(LayerRole.STAIN, 3, null);
        layer(LayerRole.MATT, 2, pale);
        layer(LayerRole.TRACE, 1, brown);
        layer(LayerRole.CUTLINE, 1, null);
        List<LayerSketch> layers = sketch().layers();
        assertEquals(List.of("trace", "matt", "stain"), layers.stream().map(LayerSketch::name).toList());
        assertEquals(PaintLook.ofRgb(0x402010), layers.get(0).paint());
        assertEquals(new PaintLook(0.4, 0.4, 0.4), layers.get(1).paint());
        PaintLook stain = layers.get(2).paint();
        assertTrue(stain.red() > stain.green() && stain.green() > stain.blue(), "stain is amber where nobody said otherwise");
    }

    private void layer(LayerRole role, int firing, Paint paint) {
        DesignLayer layer = NEW.createDesignLayer();
        layer.setRole(role);
        layer.setArtLayer(role.getLiteral());
        layer.setFiringOrder(firing);
        layer.setPaint(paint);
        panel.getLayers().add(layer);
    }

    /** Came of 6 mm face over a gap of 1.7 mm covers 2.15 mm of each rim; foil of 7/32 in folded about 3 mm glass covers 1.28 mm. */
    @Test
    void metalCoversTheRimsByWhatItIs() {
        commission.setJoin(JoinKind.FOIL);
        JoinStock foil = NEW.createJoinStock();
        foil.setWidthMm(7.0 / 32 * 25.4);
        panel.setGapMm(1.7);
        panel.setJoinStock(foil);
        assertFalse(sketch().lead());
        assertEquals(1.278, sketch().coverMm(), 1e-3);
        panel.setJoin(JoinKind.LEAD);
        JoinStock came = NEW.createJoinStock();
        came.setFaceMm(6);
        panel.setJoinStock(came);
        assertTrue(sketch().lead(), "the panel's own word goes before the commission's");
        assertEquals(2.15, sketch().coverMm(), 1e-9);
    }
}
