package saddlebar.report.truesize;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;

import saddlebar.model.work.Work;
import saddlebar.nesting.Effort;
import saddlebar.nesting.NestItem;
import saddlebar.nesting.Nested;
import saddlebar.nesting.Placement;
import saddlebar.nesting.SheetArea;
import saddlebar.nesting.SheetNesting;
import saddlebar.nesting.Turns;

/**
 * Cutting patterns at true size, ganged on paper: each piece as its glass is cut (the gap already taken off), with its number, its glass and an arrow
 * that points to the top of the window, so that the grain of the glass can be laid as the design wants. A piece that fits no page is cut apart over
 * several pages of its own, after the others.
 */
public final class PatternSheets {
    private static final GeometryFactory GEOMETRY = new GeometryFactory();
    private static final double GAP_MM = 3;
    private static final double GLASS_NAME_MM = 1.8;
    private static final int INK = 0x000000;
    private static final int QUIET = 0x6E6E6E;

    private PatternSheets() {
    }

    /**
     * @param effort of the ganging; rounds, where the same pieces must give the same pages
     * @param work   told {@link SheetNesting#WORK_UNITS} for each glass
     */
    public static List<LaidDrawing> of(String title, List<PatternPiece> pieces, PrintPaper paper, Effort effort, Work work) {
        double widthMm = paper.widthMm() - 2 * paper.marginMm() - Tiling.SIDE_MM;
        double heightMm = (paper.roll() ? 2_000 : paper.heightMm()) - 2 * paper.marginMm() - Tiling.FOOT_MM;
        Map<String, List<PatternPiece>> byGlass = new LinkedHashMap<>();
        List<PatternPiece> large = new ArrayList<>();
        for (PatternPiece piece : pieces) {
            if (!piece.outline().isEmpty()) {
                double[] box = piece.box();
                boolean fits = fits(box[2] - box[0], box[3] - box[1], widthMm, heightMm) || fits(box[3] - box[1], box[2] - box[0], widthMm, heightMm);
                if (fits) {
                    byGlass.computeIfAbsent(piece.glass(), name -> new ArrayList<>()).add(piece);
                } else {
                    large.add(piece);
                }
            }
        }
        List<LaidDrawing> pages = new ArrayList<>();
        byGlass.keySet().stream().sorted().forEach(glass -> pages.addAll(ganged(title, glass, byGlass.get(glass), widthMm, heightMm, paper, effort, work)));
        for (PatternPiece piece : large) {
            pages.add(LaidDrawing.of(alone(title, piece), paper, Tiling.USUAL_OVERLAP_MM));
        }
        return pages;
    }

    private static boolean fits(double w, double h, double widthMm, double heightMm) {
        return w <= widthMm && h <= heightMm;
    }

    /** Each glass has pages of its own: whoever cuts takes one glass at a time. */
    private static List<LaidDrawing> ganged(String title, String glass, List<PatternPiece> pieces, double widthMm, double heightMm, PrintPaper paper,
            Effort effort, Work work) {
        Map<String, PatternPiece> byId = new LinkedHashMap<>();
        List<NestItem> items = new ArrayList<>();
        for (PatternPiece piece : pieces) {
            String id = piece.label() + "#" + byId.size();
            byId.put(id, piece);
            double[] ring = piece.outline().ring(0);
            items.add(NestItem.of(id, ring(ring), 1, Turns.QUARTER));
        }
        Nested nested = SheetNesting.place(items, List.of(new SheetArea(widthMm, heightMm)), GAP_MM, effort, work, better -> {});
        List<List<Ink>> sheets = new ArrayList<>();
        for (int sheet = 0; sheet < nested.sheets(); sheet++) {
            sheets.add(new ArrayList<>());
        }
        for (Placement placement : nested.placements()) {
            draw(sheets.get(placement.sheet()), byId.get(placement.id()), placement.xMm(), placement.yMm(), placement.rotationDeg());
        }
        List<LaidDrawing> pages = new ArrayList<>();
        for (int sheet = 0; sheet < sheets.size(); sheet++) {
            String name = title + ", patterns" + (glass.isEmpty() ? "" : ", " + glass) + (sheets.size() > 1 ? ", " + (sheet + 1) + " of " + sheets.size() : "");
            double usedMm = paper.roll() ? bottom(sheets.get(sheet)) : heightMm;
            TrueSizeDrawing drawing = new TrueSizeDrawing(name, widthMm, usedMm, sheets.get(sheet));
            pages.add(new LaidDrawing(drawing, new Tiling(paper, 0, 1, 1, List.of(new Tiling.Tile(0, 0, 0, 0, widthMm, usedMm)))));
        }
        return pages;
    }

    private static double bottom(List<Ink> ink) {
        return 2 + ink.stream().filter(Ink.Line.class::isInstance).flatMap(line -> ((Ink.Line) line).paths().stream())
                .mapToDouble(path -> java.util.stream.IntStream.range(0, path.length / 2).mapToDouble(i -> path[2 * i + 1]).max().orElse(0)).max().orElse(0);
    }

    private static TrueSizeDrawing alone(String title, PatternPiece piece) {
        double[] box = piece.box();
        List<Ink> ink = new ArrayList<>();
        draw(ink, piece, 2 - box[0], 2 - box[1], 0);
        return new TrueSizeDrawing(title + ", pattern " + piece.label(), box[2] - box[0] + 4, box[3] - box[1] + 4, ink);
    }

    private static LinearRing ring(double[] xy) {
        Coordinate[] points = new Coordinate[xy.length / 2 + 1];
        for (int i = 0; i < points.length - 1; i++) {
            points[i] = new Coordinate(xy[2 * i], xy[2 * i + 1]);
        }
        points[points.length - 1] = new Coordinate(points[0]);
        return GEOMETRY.createLinearRing(points);
    }

    private static void draw(List<Ink> ink, PatternPiece piece, double xMm, double yMm, double turnDeg) {
        double cos = Math.cos(Math.toRadians(turnDeg));
        double sin = Math.sin(Math.toRadians(turnDeg));
        ink.add(Ink.Line.full(piece.rings().stream().map(ring -> placed(ring, cos, sin, xMm, yMm)).toList(), true, CutlineDrawing.CUT_LINE_MM, INK));
        double[] middle = placed(new double[] {piece.labelXMm(), piece.labelYMm()}, cos, sin, xMm, yMm);
        double number = Math.max(1.4, Math.min(8, piece.inradiusMm() / Math.max(1.6, 0.75 * piece.label().length())));
        double arrowMm = Math.min(18, 0.8 * piece.inradiusMm());
        double upX = sin;
        double upY = -cos;
        double besideX = cos;
        double besideY = sin;
        // the arrow stands beside the number, on the side that is the piece's right
        double offset = 0.5 * piece.inradiusMm();
        double footX = middle[0] + besideX * offset - upX * arrowMm / 2;
        double footY = middle[1] + besideY * offset - upY * arrowMm / 2;
        double tipX = footX + upX * arrowMm;
        double tipY = footY + upY * arrowMm;
        double barb = 0.22 * arrowMm;
        ink.add(Ink.Line.full(List.of(new double[] {footX, footY, tipX, tipY},
                new double[] {tipX - barb * (upX + besideX * 0.6), tipY - barb * (upY + besideY * 0.6), tipX, tipY, tipX - barb * (upX - besideX * 0.6),
                        tipY - barb * (upY - besideY * 0.6)}),
                false, 0.2, QUIET));
        ink.add(new Ink.Words(piece.label(), middle[0] - besideX * 0.15 * piece.inradiusMm(), middle[1] - besideY * 0.15 * piece.inradiusMm(), number, INK));
        if (!piece.glass().isEmpty() && piece.inradiusMm() >= 14) {
            ink.add(new Ink.Words(piece.glass(), middle[0], middle[1] + number / 2 + 1.6 * GLASS_NAME_MM, GLASS_NAME_MM, QUIET));
        }
    }

    private static double[] placed(double[] xy, double cos, double sin, double dx, double dy) {
        double[] placed = new double[xy.length];
        for (int i = 0; i < xy.length; i += 2) {
            placed[i] = xy[i] * cos - xy[i + 1] * sin + dx;
            placed[i + 1] = xy[i] * sin + xy[i + 1] * cos + dy;
        }
        return placed;
    }
}
