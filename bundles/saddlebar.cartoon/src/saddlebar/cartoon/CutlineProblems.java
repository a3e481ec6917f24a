package saddlebar.cartoon;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

import saddlebar.model.art.DrawnLine;
import saddlebar.model.problem.PlaceMm;
import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Severity;

/**
 * Every problem that a cutline can have, in the words that a person reads. The codes never change. A problem of a piece has
 * {@code piece N} in {@code where}; one of a line, its line in the file and its element.
 * <p>Severity: an error means that the pieces are not what was meant or cannot exist; a warning, that a cutter will have trouble; a note
 * asks for nothing at the drawing board.
 */
public final class CutlineProblems {
    /** A line ends where no other line is. */
    public static final String OPEN_END = "open-end";
    /** A line crosses another and ends just behind it. */
    public static final String CROSSING_END = "crossing-end";
    /** A cut would have to end inside a piece. */
    public static final String CUT_ENDS_INSIDE = "cut-ends-inside";
    /** A line has the same piece on both sides. */
    public static final String DIVIDES_NOTHING = "divides-nothing";
    /** A ring of the net that bounds no face. */
    public static final String LOST_RING = "lost-ring";
    /** The count of vertices, edges and faces does not come out. */
    public static final String NET_UNPROVED = "net-unproved";
    /** The same stretch drawn twice, or two lines closer than a hair. */
    public static final String DOUBLED_LINE = "doubled-line";
    /** A piece outside the panel's outline. */
    public static final String PIECE_OUTSIDE = "piece-outside";
    /** A part of the panel that touches the rest nowhere, or only in points. */
    public static final String PANEL_APART = "panel-apart";
    /** A piece too small to be handled. */
    public static final String SLIVER = "sliver";
    /** A neck, tail or strip that is narrower than glass should be. */
    public static final String NARROW = "narrow";
    /** A corner too sharp. */
    public static final String NEEDLE_POINT = "needle-point";
    /** An inside curve deep against its width. */
    public static final String DEEP_INSIDE_CURVE = "deep-inside-curve";
    /** An inside curve or corner with too small a radius. */
    public static final String TIGHT_INSIDE_CURVE = "tight-inside-curve";
    /** A piece with a hole. */
    public static final String HOLE = "hole";
    /** A piece whose edge meets itself in one point. */
    public static final String TOUCHING_POINT = "touching-point";
    /** The drawing was moved as a whole. */
    public static final String DRAWING_MOVED = "drawing-moved";
    /** A piece that lies elsewhere in the new drawing. */
    public static final String PIECE_MOVED = "piece-moved";
    /** A locked piece that the new drawing has changed. */
    public static final String LOCKED_CHANGED = "locked-changed";
    /** The gap leaves nothing of a piece. */
    public static final String GAP_EATS_PIECE = "gap-eats-piece";
    /** The gap cuts a piece in two. */
    public static final String GAP_SPLITS_PIECE = "gap-splits-piece";
    /** A straight joint across the panel. */
    public static final String HINGE = "hinge";
    /** An old piece whose glass now belongs to several. */
    public static final String PIECE_SPLIT = "piece-split";
    /** A piece that has taken in old ones. */
    public static final String PIECES_MERGED = "pieces-merged";
    /** An old number that is no more. */
    public static final String PIECE_GONE = "piece-gone";

    private CutlineProblems() {
    }

    /** How a drawn line is named: its line in the file if known, and its element. */
    public static String where(DrawnLine line) {
        String element = line.element().isBlank() ? "a line of the cutline" : "element " + line.element();
        return line.line() > 0 ? "line " + line.line() + ", " + element : element;
    }

    static String piece(int number) {
        return "piece " + number;
    }

    static Problem openEnd(String where, double x, double y, Double distanceMm) {
        return at(OPEN_END, Severity.ERROR, where, x, y, distanceMm == null
                ? "A line ends here where no other line is; carry it on to the next line, or take it out"
                : "A line ends here, " + mm(distanceMm) + " mm short of the next line; carry it on to that line");
    }

    static Problem looseLine(String where, double x, double y, double lengthMm) {
        return at(OPEN_END, Severity.ERROR, where, x, y, "A line of " + mm(lengthMm)
                + " mm meets no other line at either end and closes nothing; join both ends to lines, or take it out");
    }

    static Problem crossingEnd(String where, double x, double y, double beyondMm) {
        return at(CROSSING_END, Severity.WARNING, where, x, y,
                "A line crosses another and ends " + mm(beyondMm) + " mm behind it; end it at the crossing, or carry it on to the next line");
    }

    static Problem cutEndsInside(int number, double x, double y) {
        return at(CUT_ENDS_INSIDE, Severity.WARNING, piece(number), x, y, "A cut would end here inside piece " + number
                + ", and glass cracks on to the far edge; carry the line on to another joint, or move it to a painted layer");
    }

    static Problem dividesNothing(String where, double x, double y) {
        return at(DIVIDES_NOTHING, Severity.WARNING, where, x, y,
                "A line has the same piece on both sides and divides nothing; draw a second line to close a piece, or take it out");
    }

    static Problem lostRing(double x, double y) {
        return at(LOST_RING, Severity.ERROR, "", x, y, "Lines meet here in a ring that closes no piece; draw the lines here anew");
    }

    static Problem netUnproved(Euler euler) {
        return Problem.of(NET_UNPROVED, Severity.ERROR, "", "The count of the net does not come out (" + euler.v() + " vertices, " + euler.e()
                + " edges, " + euler.f() + " faces, " + euler.c() + " parts), so a piece may be missing; compare the pieces with the drawing");
    }

    static Problem doubledLine(String where, double x, double y, double lengthMm) {
        return at(DOUBLED_LINE, Severity.NOTE, where, x, y,
                "The same line is drawn twice over " + mm(lengthMm) + " mm; one is enough, and it is cut once");
    }

    static Problem hair(double x, double y) {
        return at(DOUBLED_LINE, Severity.NOTE, "", x, y,
                "Two lines run closer here than a hair and were taken as one; draw one line that both pieces share");
    }

    static Problem manyDoubled(int places, double x, double y) {
        return at(DOUBLED_LINE, Severity.NOTE, "", x, y, "Lines are drawn twice in " + places
                + " places, the first of them here; each is cut once, so nothing has to be done");
    }

    static Problem pieceOutside(double x, double y, double areaMm2) {
        return at(PIECE_OUTSIDE, Severity.WARNING, "", x, y, "A closed region of " + mm(areaMm2)
                + " mm2 lies outside the panel's outline and is left out; move it inside, or to another layer");
    }

    static Problem panelApart(int number, double x, double y) {
        return at(PANEL_APART, Severity.WARNING, piece(number), x, y, "Piece " + number
                + " belongs to a part that no joint ties to the rest of the panel; close the space between, or bring it as a panel of its own");
    }

    static Problem sliver(int number, double x, double y, double widthMm, double areaMm2) {
        return at(SLIVER, Severity.WARNING, piece(number), x, y, "Piece " + number + " is a sliver, " + mm(widthMm) + " mm wide and "
                + mm(areaMm2) + " mm2 in all; join it to a neighbour, or widen it");
    }

    static Problem narrowPiece(int number, double x, double y, double widthMm) {
        return at(NARROW, Severity.WARNING, piece(number), x, y,
                "Piece " + number + " is nowhere wider than " + mm(widthMm) + " mm and will break easily; widen it");
    }

    static Problem neck(int number, double x, double y, double widthMm) {
        return at(NARROW, Severity.WARNING, piece(number), x, y, "Piece " + number + " narrows here to " + mm(widthMm)
                + " mm and will break at this place; widen it, or put a joint here");
    }

    static Problem needlePoint(int number, double x, double y, double angleDeg, boolean hard) {
        return at(NEEDLE_POINT, Severity.WARNING, piece(number), x, y, "Piece " + number + " has a point of " + deg(angleDeg)
                + " degrees here, " + (hard
                        ? "which is not easy to cut and breaks off; blunt it, or end the joint elsewhere"
                        : "which breaks off easily; blunt it if the drawing allows"));
    }

    static Problem deepInsideCurve(int number, double x, double y, double depthMm, double chordMm, boolean hard) {
        return at(DEEP_INSIDE_CURVE, Severity.WARNING, piece(number), x, y, "Piece " + number + " has an inside curve " + mm(depthMm)
                + " mm deep on " + mm(chordMm) + " mm (" + String.format(Locale.ROOT, "%.2f", depthMm / chordMm) + "); "
                + (hard ? "it needs a ring saw, or redraw it with a joint that runs into its deepest point" : "plan relief cuts"));
    }

    static Problem tightInsideCurve(int number, double x, double y, double radiusMm) {
        return at(TIGHT_INSIDE_CURVE, Severity.WARNING, piece(number), x, y, "Piece " + number + " has an inside curve of "
                + mm(radiusMm) + " mm radius here, tighter than a score follows; open it, or run a joint into it");
    }

    static Problem hole(int number, double x, double y, List<Integer> within) {
        String held = within.isEmpty() ? "" : " around " + String.join(", ", within.stream().map(CutlineProblems::piece).toList());
        return at(HOLE, Severity.WARNING, piece(number), x, y, "Piece " + number
                + " has a hole" + held + ", which no score can reach; divide the piece with at least two lines from the hole to its edge");
    }

    static Problem touchingPoint(int number, double x, double y) {
        return at(TOUCHING_POINT, Severity.WARNING, piece(number), x, y, "The edge of piece " + number
                + " meets itself here in one point, where its glass has no width; part it here with a joint, or draw the lines apart");
    }

    static Problem drawingMoved(double byXMm, double byYMm) {
        return Problem.of(DRAWING_MOVED, Severity.NOTE, "", String.format(Locale.ROOT,
                "The drawing was moved on its page by %.1f mm to the right and %.1f mm down; the numbers went with it", byXMm + 0.0, byYMm + 0.0));
    }

    static Problem moved(int number, double x, double y) {
        return at(PIECE_MOVED, Severity.NOTE, piece(number), x, y, "Piece " + number + " lies elsewhere now and keeps its number, since its shape is the same");
    }

    static Problem lockedChanged(int number, double x, double y, double share) {
        return at(LOCKED_CHANGED, Severity.WARNING, piece(number), x, y, String.format(Locale.ROOT,
                "Piece %d is locked, and the new drawing changes its shape: only %.0f %% of the old piece is in it; look whether the glass is cut already",
                number, 100 * share));
    }

    static Problem gapEatsPiece(int number, double x, double y) {
        return at(GAP_EATS_PIECE, Severity.ERROR, piece(number), x, y,
                "Nothing of piece " + number + " is left when the gap comes off; widen it, or join it to a neighbour");
    }

    static Problem gapSplitsPiece(int number, double x, double y, int parts) {
        return at(GAP_SPLITS_PIECE, Severity.ERROR, piece(number), x, y, "The gap parts piece " + number + " into " + parts
                + ", and only the largest is kept; widen it here, or draw a joint here");
    }

    static Problem hinge(double x, double y, double lengthMm, double share) {
        return at(HINGE, Severity.NOTE, "", x, y, "A joint runs straight for " + mm(lengthMm) + " mm, " + Math.round(100 * share)
                + " % of the panel, which can fold here like a hinge; plan a bar across it, or break the line");
    }

    /** @param shares of the old piece in each of the new ones, in words */
    static Problem split(int old, double x, double y, String into, String shares) {
        return at(PIECE_SPLIT, Severity.NOTE, "", x, y,
                "Old number " + old + " was divided; its glass now belongs to " + into + " (" + shares + "); look at its stencils and records");
    }

    static Problem merged(int number, double x, double y, String olds) {
        return at(PIECES_MERGED, Severity.NOTE, piece(number), x, y,
                "Piece " + number + " has taken in the old numbers " + olds + "; look at their stencils and records");
    }

    static Problem gone(int old, double x, double y) {
        return at(PIECE_GONE, Severity.NOTE, "", x, y, "Old number " + old + " is no more; it will not be used again");
    }

    private static Problem at(String code, Severity severity, String where, double x, double y, String message) {
        return new Problem(code, severity, where, Optional.of(new PlaceMm(x, y)), message);
    }

    private static String mm(double value) {
        return String.format(Locale.ROOT, value < 0.1 ? "%.3f" : value < 10 ? "%.1f" : "%.0f", value);
    }

    private static String deg(double value) {
        return String.format(Locale.ROOT, "%.0f", value);
    }
}
