package saddlebar.production.stock;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

import saddlebar.model.units.Require;
import saddlebar.model.work.Work;
import saddlebar.nesting.Effort;
import saddlebar.nesting.FreeRectangles;
import saddlebar.nesting.NestItem;
import saddlebar.nesting.Placement;
import saddlebar.nesting.SheetArea;
import saddlebar.nesting.StockArea;
import saddlebar.nesting.StockLaid;
import saddlebar.nesting.StockNesting;
import saddlebar.nesting.Turns;
import saddlebar.production.make.Outlines;

/**
 * Lays pieces on the studio's glass: glass by glass, off-cuts first, around flaws, along the grain where the glass has one (a piece may then stand upright
 * or on its head, nothing else). What has no room goes on sheets to be bought, if the glass says how large they are.
 *
 * @param gapMm  between pieces, and from flaws and broken edges: room to score and break, 0 to 50
 * @param edgeMm kept off the edge of a sheet, 0 to 50
 * @param buy    whether sheets may be bought
 * @param effort orders tried a glass
 */
public record GlassLaying(double gapMm, double edgeMm, boolean buy, Effort effort) {
    /** Between pieces that are scored and broken (common practice, no source). */
    public static final double USUAL_GAP_MM = 3;
    public static final double USUAL_EDGE_MM = 5;
    /** Shorter than this is not worth a place on the shelf (studio setting). */
    private static final double LEAST_OFFCUT_MM = 70;
    private static final int MOST_OFFCUTS = 3;
    private static final double CELL_MM = 2;
    private static final double OFFCUT_PRICE = 0.3;
    private static final double BOUGHT_PRICE = 3;
    /** A sheet may be used this badly before more are reckoned with than are needed. */
    private static final double POOR_USE = 0.4;
    /** More different pieces than this are turned by quarters only: every further angle costs tables. */
    private static final int MOST_TURNED_FREELY = 12;
    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    public GlassLaying {
        Require.within("gapMm", gapMm, 0, 50);
        Require.within("edgeMm", edgeMm, 0, 50);
    }

    /** Units of work told for each glass. */
    public static final int WORK_UNITS = StockNesting.WORK_UNITS;

    /** All sheets that carry something, and what found no room. */
    public record Result(List<LaidGlass> sheets, List<WantedPiece> leftOut) {
        public Result {
            sheets = List.copyOf(sheets);
            leftOut = List.copyOf(leftOut);
        }

        /** For each glass: area of its pieces / area of the sheets taken, less the off-cuts that are kept. */
        public Map<String, Double> yields() {
            Map<String, double[]> sums = new TreeMap<>();
            for (LaidGlass laid : sheets) {
                double[] sum = sums.computeIfAbsent(laid.glass(), glass -> new double[2]);
                sum[0] += laid.piecesMm2();
                sum[1] += laid.sheet().areaMm2() - laid.offcuts().stream().mapToDouble(LaidGlass.Offcut::areaMm2).sum();
            }
            Map<String, Double> yields = new TreeMap<>();
            sums.forEach((glass, sum) -> yields.put(glass, Math.min(1, sum[0] / sum[1])));
            return yields;
        }
    }

    /**
     * @param pieces those of glasses that are not on the shelf are left out
     * @param work   told {@link #WORK_UNITS} for each glass of the pieces
     */
    public Result lay(List<WantedPiece> pieces, List<ShelfGlass> shelf, Work work) {
        Map<String, List<WantedPiece>> byGlass = new TreeMap<>();
        pieces.stream().filter(piece -> !piece.outline().isEmpty())
                .forEach(piece -> byGlass.computeIfAbsent(piece.glass(), glass -> new ArrayList<>()).add(piece));
        List<LaidGlass> sheets = new ArrayList<>();
        List<WantedPiece> leftOut = new ArrayList<>();
        byGlass.forEach((name, wanted) -> {
            work.say(name);
            Optional<ShelfGlass> glass = shelf.stream().filter(g -> g.name().equals(name)).findFirst();
            if (glass.isEmpty()) {
                leftOut.addAll(wanted);
                work.advance(WORK_UNITS);
            } else {
                one(glass.get(), wanted, sheets, leftOut, work);
            }
        });
        return new Result(sheets, leftOut);
    }

    private void one(ShelfGlass glass, List<WantedPiece> wanted, List<LaidGlass> sheets, List<WantedPiece> leftOut, Work work) {
        List<ShelfSheet> there = new ArrayList<>(glass.sheets());
        int atHand = there.size();
        if (buy && glass.boughtWidthMm() >= 1 && glass.boughtHeightMm() >= 1) {
            double area = wanted.stream().mapToDouble(piece -> piece.outline().areaMm2()).sum();
            int most = (int) Math.min(wanted.size(), 1 + Math.ceil(area / (POOR_USE * glass.boughtWidthMm() * glass.boughtHeightMm())));
            for (int i = 1; i <= most; i++) {
                there.add(new ShelfSheet("", "to buy " + i, glass.boughtWidthMm(), glass.boughtHeightMm(), Optional.empty(), false, false, List.of()));
            }
        }
        if (there.isEmpty()) {
            leftOut.addAll(wanted);
            work.advance(WORK_UNITS);
            return;
        }
        List<StockArea> areas = new ArrayList<>();
        for (int i = 0; i < there.size(); i++) {
            areas.add(area(there.get(i), glass.grained(), i >= atHand));
        }
        Turns turns = glass.grained() ? Turns.HALF : wanted.size() <= MOST_TURNED_FREELY ? Turns.FREE : Turns.QUARTER;
        Map<String, WantedPiece> byId = new LinkedHashMap<>();
        List<NestItem> items = new ArrayList<>();
        for (WantedPiece piece : wanted) {
            String id = piece.label() + "#" + byId.size();
            byId.put(id, piece);
            Polygon outline = Outlines.polygon(piece.outline());
            items.add(new NestItem(id, outline, 1, turns));
        }
        StockLaid laid = StockNesting.place(items, areas, gapMm, effort, work);
        laid.leftOut().forEach(id -> leftOut.add(byId.get(id)));
        Map<Integer, List<Placement>> bySheet = new HashMap<>();
        laid.placements().forEach(placement -> bySheet.computeIfAbsent(placement.sheet(), sheet -> new ArrayList<>()).add(placement));
        for (int i = 0; i < there.size(); i++) {
            if (bySheet.containsKey(i)) {
                sheets.add(laid(glass, there.get(i), i >= atHand, bySheet.get(i), byId));
            }
        }
    }

    /** Whether a sheet is laid with its width upright, so that its grain is upright as the pieces' is. */
    private static boolean stood(ShelfSheet sheet, boolean grained) {
        return grained && sheet.alongWidth();
    }

    /** The sheet without its edge, stood up where its grain asks for it. */
    private StockArea area(ShelfSheet sheet, boolean grained, boolean bought) {
        AffineTransformation in = intoArea(sheet, grained);
        double across = stood(sheet, grained) ? sheet.heightMm() : sheet.widthMm();
        double down = stood(sheet, grained) ? sheet.widthMm() : sheet.heightMm();
        List<Polygon> blocked = new ArrayList<>();
        for (Polygon polygon : blocked(sheet)) {
            blocked.add((Polygon) in.transform(polygon));
        }
        SheetArea room = new SheetArea(Math.max(1, across - 2 * edgeMm), Math.max(1, down - 2 * edgeMm));
        return new StockArea(room, blocked, bought ? BOUGHT_PRICE : sheet.offcut() ? OFFCUT_PRICE : 1);
    }

    /** Flaws, and what a shaped off-cut lacks of its rectangle. */
    private static List<Polygon> blocked(ShelfSheet sheet) {
        List<Polygon> blocked = new ArrayList<>();
        sheet.flaws().forEach(flaw -> blocked.add(Outlines.polygon(flaw)));
        if (sheet.outline().isPresent()) {
            Geometry whole = GEOMETRY.toGeometry(new Envelope(0, sheet.widthMm(), 0, sheet.heightMm()));
            Geometry missing = OverlayNGRobust.overlay(whole, Outlines.polygon(sheet.outline().get()), OverlayNG.DIFFERENCE);
            for (int part = 0; part < missing.getNumGeometries(); part++) {
                if (missing.getGeometryN(part) instanceof Polygon polygon && polygon.getArea() > 1) {
                    blocked.add(GEOMETRY.createPolygon(polygon.getExteriorRing().getCoordinates()));
                }
            }
        }
        return blocked;
    }

    private AffineTransformation intoArea(ShelfSheet sheet, boolean grained) {
        AffineTransformation in = new AffineTransformation();
        if (stood(sheet, grained)) {
            in.rotate(1, 0); // sine and cosine of a quarter turn
            in.translate(sheet.heightMm(), 0);
        }
        in.translate(-edgeMm, -edgeMm);
        return in;
    }

    private AffineTransformation outOfArea(ShelfSheet sheet, boolean grained) {
        AffineTransformation out = AffineTransformation.translationInstance(edgeMm, edgeMm);
        if (stood(sheet, grained)) {
            out.translate(-sheet.heightMm(), 0);
            out.rotate(-1, 0);
        }
        return out;
    }

    private LaidGlass laid(ShelfGlass glass, ShelfSheet sheet, boolean toBuy, List<Placement> placements, Map<String, WantedPiece> byId) {
        List<LaidPiece> pieces = new ArrayList<>();
        List<Polygon> taken = new ArrayList<>(blocked(sheet));
        for (Placement placement : placements) {
            WantedPiece piece = byId.get(placement.id());
            AffineTransformation move = AffineTransformation.rotationInstance(Math.toRadians(placement.rotationDeg()));
            move.translate(placement.xMm(), placement.yMm());
            move.compose(outOfArea(sheet, glass.grained()));
            Polygon lies = (Polygon) move.transform(Outlines.polygon(piece.outline()));
            double turned = (placement.rotationDeg() + (stood(sheet, glass.grained()) ? 270 : 0)) % 360;
            pieces.add(new LaidPiece(piece.label(), Outlines.outline(lies), turned));
            taken.add(GEOMETRY.createPolygon(lies.getExteriorRing().getCoordinates()));
        }
        pieces.sort(Comparator.comparing(LaidPiece::label));
        List<LaidGlass.Offcut> offcuts = FreeRectangles
                .of(new SheetArea(sheet.widthMm(), sheet.heightMm()), taken, gapMm, CELL_MM, LEAST_OFFCUT_MM, MOST_OFFCUTS)
                .stream().map(box -> new LaidGlass.Offcut(box.getMinX(), box.getMinY(), box.getWidth(), box.getHeight())).toList();
        return new LaidGlass(glass.name(), sheet, toBuy, pieces, offcuts);
    }
}
