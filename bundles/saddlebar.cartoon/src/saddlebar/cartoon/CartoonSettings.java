package saddlebar.cartoon;

import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

import saddlebar.model.units.Require;

/**
 * How a cutline is read. {@link #defaults()}, then {@code with...} gives a changed copy.
 *
 * @param join            the gap between neighbouring glasses
 * @param edgeAllowanceMm what comes off at the outer edge of the panel, 0 to 20 mm: 0, or what the border came takes
 * @param snapMm          grid on which the net is noded, 0.0001 to 0.1 mm; drawn points move by at most 0.71 of it
 * @param shortDangleMm   an end that runs past its line by less is cut off without a word, 0 to 10 mm
 * @param carryOnMm       an end that stops short of a line by no more is carried on to it, 0 to 1 mm. Needed: an end drawn exactly on a
 *                        curve misses the straight steps of the flattened curve by up to the flattening tolerance (0.01 mm)
 * @param hairMm          a face narrower than this on average (2 x area / perimeter) is two drawings of one line, and joins the neighbour
 *                        it shares most with, 0 to 1 mm
 * @param outlineElement  id of the drawn element that is the panel's outline; empty: the outer edge of all faces
 * @param limits          what is called hard to cut
 * @param numbering       order of numbers
 * @param localJoins      where pieces are joined otherwise than by {@code join}; a rule that names pieces counts before one that names lines, a later
 *                        one before an earlier one
 * @param limitsByPiece   what is hard to cut from the glass of a piece, by its number; {@code limits} for all others
 */
public record CartoonSettings(Join join, double edgeAllowanceMm, double snapMm, double shortDangleMm, double carryOnMm, double hairMm,
        Optional<String> outlineElement, CutLimits limits, Numbering numbering, List<LocalJoin> localJoins, SortedMap<Integer, CutLimits> limitsByPiece) {
    private static final CartoonSettings DEFAULTS = new CartoonSettings(Join.gap(Join.DEFAULT_GAP_MM), 0, 0.001, 0.5, 0.05, 0.05,
            Optional.empty(), CutLimits.commonPractice(), Numbering.READING_ORDER, List.of(), Collections.emptySortedMap());

    public CartoonSettings {
        Objects.requireNonNull(join, "join");
        Require.within("edgeAllowanceMm", edgeAllowanceMm, 0, 20);
        Require.within("snapMm", snapMm, 0.0001, 0.1);
        Require.within("shortDangleMm", shortDangleMm, 0, 10);
        Require.within("carryOnMm", carryOnMm, 0, 1);
        Require.within("hairMm", hairMm, 0, 1);
        Objects.requireNonNull(outlineElement, "outlineElement");
        Objects.requireNonNull(limits, "limits");
        Objects.requireNonNull(numbering, "numbering");
        localJoins = List.copyOf(localJoins);
        limitsByPiece = Collections.unmodifiableSortedMap(new TreeMap<>(limitsByPiece));
    }

    public static CartoonSettings defaults() {
        return DEFAULTS;
    }

    public CartoonSettings withJoin(Join other) {
        return new CartoonSettings(other, edgeAllowanceMm, snapMm, shortDangleMm, carryOnMm, hairMm, outlineElement, limits, numbering, localJoins,
                limitsByPiece);
    }

    public CartoonSettings withEdgeAllowance(double mm) {
        return new CartoonSettings(join, mm, snapMm, shortDangleMm, carryOnMm, hairMm, outlineElement, limits, numbering, localJoins, limitsByPiece);
    }

    public CartoonSettings withSnap(double mm) {
        return new CartoonSettings(join, edgeAllowanceMm, mm, shortDangleMm, carryOnMm, hairMm, outlineElement, limits, numbering, localJoins, limitsByPiece);
    }

    /** What is mended without a word: ends too long, ends too short, hairs between two drawings of one line. */
    public CartoonSettings withMending(double cutOffMm, double carriedOnMm, double hairWidthMm) {
        return new CartoonSettings(join, edgeAllowanceMm, snapMm, cutOffMm, carriedOnMm, hairWidthMm, outlineElement, limits, numbering, localJoins,
                limitsByPiece);
    }

    public CartoonSettings withOutline(String element) {
        return new CartoonSettings(join, edgeAllowanceMm, snapMm, shortDangleMm, carryOnMm, hairMm, Optional.of(element), limits,
                numbering, localJoins, limitsByPiece);
    }

    public CartoonSettings withLimits(CutLimits other) {
        return new CartoonSettings(join, edgeAllowanceMm, snapMm, shortDangleMm, carryOnMm, hairMm, outlineElement, other, numbering, localJoins,
                limitsByPiece);
    }

    public CartoonSettings withNumbering(Numbering other) {
        return new CartoonSettings(join, edgeAllowanceMm, snapMm, shortDangleMm, carryOnMm, hairMm, outlineElement, limits, other, localJoins, limitsByPiece);
    }

    public CartoonSettings withLocalJoins(List<LocalJoin> others) {
        return new CartoonSettings(join, edgeAllowanceMm, snapMm, shortDangleMm, carryOnMm, hairMm, outlineElement, limits, numbering, others,
                limitsByPiece);
    }

    public CartoonSettings withLimitsByPiece(SortedMap<Integer, CutLimits> others) {
        return new CartoonSettings(join, edgeAllowanceMm, snapMm, shortDangleMm, carryOnMm, hairMm, outlineElement, limits, numbering, localJoins,
                others);
    }

    CutLimits limitsOf(int piece) {
        return limitsByPiece.getOrDefault(piece, limits);
    }
}
