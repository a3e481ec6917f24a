package saddlebar.production.light;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.union.UnaryUnionOp;

import saddlebar.artwork.ArtLayer;
import saddlebar.artwork.Artwork;
import saddlebar.artwork.LayerChoice;
import saddlebar.cartoon.Cartoon;
import saddlebar.cartoon.CartoonMaker;
import saddlebar.cartoon.CartoonPiece;
import saddlebar.cartoon.NumberedFace;
import saddlebar.cartoon.Relief;
import saddlebar.cartoon.mend.Mend;
import saddlebar.cartoon.mend.MendKind;
import saddlebar.cartoon.mend.MendSettings;
import saddlebar.cartoon.mend.Mending;
import saddlebar.model.art.DrawnLine;
import saddlebar.model.art.OutlineMm;
import saddlebar.model.commission.JoinKind;
import saddlebar.model.problem.PlaceMm;
import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Refusal;
import saddlebar.model.problem.Severity;
import saddlebar.model.work.Work;
import saddlebar.production.light.WindowSketch.LayerSketch;
import saddlebar.production.light.WindowSketch.PanelSketch;
import saddlebar.production.light.WindowSketch.PieceSketch;
import saddlebar.production.make.Cutline;

/**
 * Reads one panel. Pieces that have been made are shown as made; before, they are shown as the cutline draws them now. The cutline is looked
 * through either way, so that its problems come with their places. What cannot be read becomes a problem, and the rest is shown.
 */
final class PanelReader {
    /** Units of work of one panel. */
    static final long UNITS = 1000;
    private static final long CARTOON_UNITS = 300;
    private static final long LAYER_UNITS = UNITS - CARTOON_UNITS;

    private final String where;
    private final PanelSketch panel;
    private final ArtworkShelf shelf;
    private Optional<Artwork> art = Optional.empty();
    private final List<Contour> outlines = new ArrayList<>();
    private final List<ScenePiece> pieces = new ArrayList<>();
    private final List<SceneLayer> layers = new ArrayList<>();
    private final List<Problem> problems = new ArrayList<>();
    private final List<SceneHint> hints = new ArrayList<>();
    private final List<PlacedMend> mends = new ArrayList<>();

    PanelReader(String where, PanelSketch panel, ArtworkShelf shelf) {
        this.where = where;
        this.panel = panel;
        this.shelf = shelf;
    }

    List<Contour> outlines() {
        return outlines;
    }

    List<ScenePiece> pieces() {
        return pieces;
    }

    List<SceneLayer> layers() {
        return layers;
    }

    List<Problem> problems() {
        return problems;
    }

    /** The glass: as made, which is at hand, else as the cutline draws it. */
    void readGlass(Work work) throws IOException {
        art = artwork();
        if (!panel.pieces().isEmpty()) {
            panel.pieces().forEach(this::addMade);
            if (panel.outline().isPresent()) {
                outlines.add(contour(panel.outline().get()));
            } else {
                addFaces();
            }
        } else if (art.isPresent()) {
            Optional<Cartoon> cartoon = cartoon(art.get(), work);
            if (cartoon.isPresent()) {
                DrawnGlass glass = DrawnGlass.of(art.get());
                cartoon.get().pieces().stream().filter(piece -> !piece.glass().isEmpty()).forEach(piece -> addDrawn(piece, glass));
                addOutlines(cartoon.get().panel());
            } else {
                addPane(new RectMm(panel.xMm(), panel.yMm(), art.get().widthMm(), art.get().heightMm()));
            }
        }
    }

    int layerCount() {
        return panel.layers().size();
    }

    /** One layer, in the order of firing. */
    void readLayer(int index, Work work) throws IOException {
        if (art.isPresent()) {
            long each = LAYER_UNITS / Math.max(1, panel.layers().size());
            LayerSketch layer = panel.layers().get(index);
            try {
                LayerReader reader = new LayerReader(shelf, art.get(), layer, panel.xMm(), panel.yMm());
                layers.add(reader.read(work.part(each, reader.rows())));
            } catch (Refusal refusal) {
                tell("layer", refusal);
            }
        }
    }

    /** What is wrong with the cutline, where the pieces were at hand and it has not been looked through for them. */
    void readProblems(Work work) {
        if (art.isPresent() && !panel.pieces().isEmpty()) {
            cartoon(art.get(), work);
        }
    }

    private Optional<Artwork> artwork() throws IOException {
        if (panel.art().isEmpty()) {
            return Optional.empty();
        }
        try {
            Artwork artwork = shelf.artwork(panel.art().get());
            problems.addAll(artwork.warnings());
            return Optional.of(artwork);
        } catch (Refusal refusal) {
            tell("artwork", refusal);
            return Optional.empty();
        }
    }

    private Optional<Cartoon> cartoon(Artwork artwork, Work work) {
        Optional<ArtLayer> cutline = panel.cutline().isEmpty() ? artwork.cutlineLayer() : artwork.layer(panel.cutline());
        if (cutline.isEmpty()) {
            return Optional.empty();
        }
        try {
            Cutline lines = Cutline.of(cutline.get().id(), panel.lead() ? JoinKind.LEAD : JoinKind.FOIL, panel.gapMm(), panel.cut(),
                    layer -> artwork.lines(LayerChoice.of(artwork.chosenLayer(layer)), Artwork.CUT_FLATNESS_MM), work);
            List<NumberedFace> before = panel.pieces().stream().filter(piece -> !piece.face().isEmpty())
                    .map(piece -> new NumberedFace(piece.number(), polygon(piece.face()), panel.cut().locked().contains(piece.number()))).toList();
            Cartoon cartoon = CartoonMaker.make(lines.mended().lines(), lines.settings(), before, 1, work.part(CARTOON_UNITS, 100));
            hints(cartoon, Mending.propose(lines.mended().lines(), MendSettings.defaults(), work));
            cartoon.problems().forEach(problem -> problems.add(placed(problem)));
            return Optional.of(cartoon);
        } catch (Refusal refusal) {
            tell("cutline", refusal);
            return Optional.empty();
        }
    }

    private void hints(Cartoon cartoon, List<Mend> proposed) {
        for (Relief relief : cartoon.reliefs()) {
            SceneHint.Kind kind = relief.kind() == Relief.Kind.JOINT ? SceneHint.Kind.JOINT : SceneHint.Kind.RELIEF_CUTS;
            hints.add(new SceneHint(kind, relief.lines().stream().map(line -> moved(line.xy())).toList(), relief.message()));
        }
        for (Mend mend : proposed) {
            PlaceMm at = new PlaceMm(mend.at().xMm() + panel.xMm(), mend.at().yMm() + panel.yMm());
            mends.add(new PlacedMend(where, panel.id(), mend, at));
            List<double[]> added = mend.changes().stream().flatMap(change -> change.after().stream()).map(line -> moved(open(line))).toList();
            if (!added.isEmpty() && mend.kind() != MendKind.REMOVE_DOUBLED) {
                hints.add(new SceneHint(SceneHint.Kind.MEND, added, mend.message()));
            }
        }
    }

    private static double[] open(DrawnLine line) {
        double[] xy = line.xy();
        if (line.closed()) {
            double[] round = Arrays.copyOf(xy, xy.length + 2);
            round[xy.length] = xy[0];
            round[xy.length + 1] = xy[1];
            return round;
        }
        return xy;
    }

    /** What could be mended. */
    List<PlacedMend> mends() {
        return mends;
    }

    List<SceneHint> hints() {
        return hints;
    }

    private void tell(String code, Refusal refusal) {
        problems.add(Problem.of(code, Severity.ERROR, where, refusal.getMessage()));
    }

    /** A problem of the panel's page, told in the window. */
    private Problem placed(Problem problem) {
        Optional<PlaceMm> at = problem.at().map(place -> new PlaceMm(place.xMm() + panel.xMm(), place.yMm() + panel.yMm()));
        String told = problem.where().isEmpty() ? where : where + " " + problem.where();
        return new Problem(problem.code(), problem.severity(), told, at, problem.message());
    }

    private void addMade(PieceSketch piece) {
        pieces.add(new ScenePiece(piece.id(), String.valueOf(piece.number()), contour(piece.glass()), piece.labelXMm() + panel.xMm(),
                piece.labelYMm() + panel.yMm(), piece.inradiusMm(), piece.looks()));
    }

    /** Where nobody wrote down the panel's outer edge, its pieces together have it. */
    private void addFaces() {
        List<Polygon> faces = panel.pieces().stream().map(PieceSketch::face).filter(face -> !face.isEmpty()).map(PanelReader::polygon).toList();
        addOutlines(UnaryUnionOp.union(faces));
    }

    /** Artwork without pieces lies on one pane as large as its page. */
    private void addPane(RectMm page) {
        Contour pane = Contour.of(page);
        outlines.add(pane);
        pieces.add(new ScenePiece("pane-" + where, "", pane, page.centreXMm(), page.centreYMm(), 0, List.of(GlassLook.UNCHOSEN)));
    }

    private void addDrawn(CartoonPiece piece, DrawnGlass glass) {
        GlassLook look = glass.at(piece.label().xMm(), piece.label().yMm());
        pieces.add(new ScenePiece("drawn-" + where + "-" + piece.number(), String.valueOf(piece.number()), contour(piece.glass()),
                piece.label().xMm() + panel.xMm(), piece.label().yMm() + panel.yMm(), piece.inradiusMm(), List.of(look)));
    }

    private void addOutlines(Geometry whole) {
        for (int i = 0; i < whole.getNumGeometries(); i++) {
            if (whole.getGeometryN(i) instanceof Polygon polygon && !polygon.isEmpty()) {
                outlines.add(contour(polygon));
            }
        }
    }

    private Contour contour(OutlineMm outline) {
        List<double[]> rings = new ArrayList<>();
        for (int r = 0; r < outline.rings(); r++) {
            rings.add(moved(outline.ring(r)));
        }
        return Contour.of(rings);
    }

    private static Polygon polygon(OutlineMm outline) {
        GeometryFactory factory = new GeometryFactory();
        LinearRing[] holes = new LinearRing[outline.rings() - 1];
        for (int r = 1; r < outline.rings(); r++) {
            holes[r - 1] = factory.createLinearRing(closed(outline.ring(r)));
        }
        return factory.createPolygon(factory.createLinearRing(closed(outline.ring(0))), holes);
    }

    private static Coordinate[] closed(double[] ring) {
        Coordinate[] points = new Coordinate[ring.length / 2 + 1];
        for (int i = 0; i < points.length - 1; i++) {
            points[i] = new Coordinate(ring[2 * i], ring[2 * i + 1]);
        }
        points[points.length - 1] = points[0].copy();
        return points;
    }

    private Contour contour(Polygon polygon) {
        List<double[]> rings = new ArrayList<>();
        rings.add(moved(points(polygon.getExteriorRing())));
        for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
            rings.add(moved(points(polygon.getInteriorRingN(i))));
        }
        return Contour.of(rings);
    }

    private static double[] points(LinearRing ring) {
        int count = ring.getNumPoints() - 1; // the last repeats the first
        double[] xy = new double[2 * count];
        for (int i = 0; i < count; i++) {
            xy[2 * i] = ring.getCoordinateN(i).getX();
            xy[2 * i + 1] = ring.getCoordinateN(i).getY();
        }
        return xy;
    }

    private double[] moved(double[] ring) {
        for (int i = 0; i < ring.length; i += 2) {
            ring[i] += panel.xMm();
            ring[i + 1] += panel.yMm();
        }
        return ring;
    }
}
