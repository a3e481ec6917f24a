package saddlebar.model.store;

import java.io.IOException;

import saddlebar.model.art.OutlineMm;
import saddlebar.model.commission.Colourway;
import saddlebar.model.commission.CommissionFactory;
import saddlebar.model.commission.DesignLayer;
import saddlebar.model.commission.GlassChoice;
import saddlebar.model.commission.LayerRole;
import saddlebar.model.commission.Panel;
import saddlebar.model.commission.Piece;
import saddlebar.model.commission.Placement;
import saddlebar.model.commission.Sheet;
import saddlebar.model.commission.Stencil;
import saddlebar.model.commission.StencilPiece;
import saddlebar.model.commission.Window;

/** Small invented windows for tests. */
final class Specimen {
    private static final CommissionFactory NEW = CommissionFactory.eINSTANCE;

    private Specimen() {
    }

    /** A window of one panel, its pieces in a row, a matt layer with one stencil over them all, and a colourway. */
    static Window window(CommissionFolder folder, String name, int pieces) throws IOException {
        Window window = folder.addWindow(name, name + " drawn");
        Panel panel = NEW.createPanel();
        panel.setName("A");
        window.getPanels().add(panel);
        Colourway colourway = NEW.createColourway();
        window.getColourways().add(colourway);
        window.setChosen(colourway);
        DesignLayer layer = NEW.createDesignLayer();
        layer.setRole(LayerRole.MATT);
        layer.setName("shading");
        folder.studio().getPaints().stream().filter(paint -> paint.getName().equals("pale matt")).forEach(layer::setPaint);
        layer.setRecipe(NEW.createStencilRecipe());
        panel.getLayers().add(layer);
        Stencil stencil = NEW.createStencil();
        stencil.setNumber(1);
        layer.getStencils().add(stencil);
        for (int i = 0; i < pieces; i++) {
            Piece piece = NEW.createPiece();
            piece.setNumber(i + 1);
            piece.setFace(OutlineMm.rectangle(100 * i, 0, 100, 200));
            piece.setNet(OutlineMm.rectangle(100 * i + 0.4, 0, 99.2, 200));
            piece.getProblems().add("needle");
            if (i > 0) {
                Piece neighbour = panel.getPieces().get(i - 1);
                piece.getNeighbours().add(neighbour);
                neighbour.getNeighbours().add(piece);
            }
            panel.getPieces().add(piece);
            GlassChoice choice = NEW.createGlassChoice();
            choice.setPiece(piece);
            folder.studio().getGlass().stream().filter(glass -> glass.getName().equals("sea green")).forEach(choice::setGlass);
            colourway.getChoices().add(choice);
            StencilPiece printed = NEW.createStencilPiece();
            printed.setPiece(piece);
            stencil.getPieces().add(printed);
        }
        return window;
    }

    /** A sheet with the first stencil of each window. */
    static Sheet sheet(CommissionFolder folder) {
        Sheet sheet = NEW.createSheet();
        sheet.setNumber(1);
        folder.commission().getSheets().add(sheet);
        for (Window window : folder.windows()) {
            Placement placement = NEW.createPlacement();
            placement.setStencil(window.getPanels().get(0).getLayers().get(0).getStencils().get(0));
            sheet.getPlacements().add(placement);
        }
        return sheet;
    }
}
