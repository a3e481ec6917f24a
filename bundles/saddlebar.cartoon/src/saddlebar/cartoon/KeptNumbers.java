package saddlebar.cartoon;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.index.strtree.STRtree;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * Numbers that stay through a revision of the drawing. A drawing that was moved as a whole is followed first ({@link DrawingShift}). A new face keeps
 * the number of an old one of which it covers more than half; of several such old ones, that of the largest overlap, a locked one before all. Since
 * new faces do not overlap, no number is claimed twice. A locked piece that nothing covers by half keeps its number on the face that covers most of
 * it. Then a face of the shape and size of an old one that nobody keeps, and that lies elsewhere, keeps its number: the piece was moved. All others
 * get numbers that were never used: records and cards name the old ones.
 *
 * @param numbers number of each new face, in the order given, all different
 * @param split   old number to the new numbers that each hold a tenth of its area or more, where there are several
 * @param merged  new number to the old numbers of which it covers more than half, where there are several
 * @param gone    old numbers that no new piece keeps, ascending; they are not used again
 * @param fresh   numbers that are new, ascending
 * @param moved   numbers of pieces that keep their shape and lie elsewhere, ascending
 * @param became  old and new pieces that share a tenth of either or more, by old and new number
 * @param shift   how far the whole drawing was moved
 */
record KeptNumbers(List<Integer> numbers, SortedMap<Integer, List<Integer>> split, SortedMap<Integer, List<Integer>> merged,
        List<Integer> gone, List<Integer> fresh, List<Integer> moved, List<Became> became, DrawingShift shift) {
    private static final double KEEPS = 0.5;
    private static final double COUNTS = 0.1;

    public KeptNumbers {
        numbers = List.copyOf(numbers);
        split = Collections.unmodifiableSortedMap(new TreeMap<>(split));
        merged = Collections.unmodifiableSortedMap(new TreeMap<>(merged));
        gone = List.copyOf(gone);
        fresh = List.copyOf(fresh);
        moved = List.copyOf(moved);
        became = List.copyOf(became);
    }

    Revision revision() {
        List<Integer> kept = numbers.stream().filter(number -> !fresh.contains(number)).sorted().toList();
        return new Revision(shift.xMm(), shift.yMm(), kept, became, moved, gone, fresh);
    }

    private record Overlap(int old, int face, double area, double share) {
    }

    /**
     * @param before    pieces of the last revision, numbers all different, in the place where the new drawing has them
     * @param faces     faces of the new one, not overlapping, in the order in which new ones take their numbers
     * @param firstFree least number for a piece that keeps none; raised above all numbers of {@code before}
     */
    static KeptNumbers of(List<NumberedFace> before, List<Polygon> faces, int firstFree) {
        DrawingShift shift = DrawingShift.of(before, faces);
        List<NumberedFace> olds = shift.equals(DrawingShift.NONE)
                ? before
                : before.stream().map(old -> new NumberedFace(old.number(), shift.moved(old.face()), old.locked())).toList();
        List<Overlap> overlaps = overlaps(olds, faces);
        int[] kept = claimed(olds, overlaps, faces.size());
        Set<Integer> taken = new HashSet<>();
        Arrays.stream(kept).filter(number -> number > 0).forEach(taken::add);
        List<Integer> moved = new MovedPieces(olds, faces).claim(kept, taken);
        int next = Math.max(firstFree, 1 + before.stream().mapToInt(NumberedFace::number).max().orElse(0));
        List<Integer> fresh = new ArrayList<>();
        for (int face = 0; face < kept.length; face++) {
            if (kept[face] == 0) {
                kept[face] = next++;
                fresh.add(kept[face]);
            }
        }
        return new KeptNumbers(Arrays.stream(kept).boxed().toList(), split(olds, overlaps, kept), merged(olds, overlaps, kept),
                olds.stream().map(NumberedFace::number).filter(old -> !taken.contains(old)).sorted().toList(), fresh, moved,
                became(olds, faces, overlaps, kept), shift);
    }

    /** For each face the number that it keeps by overlap, 0 if none. */
    private static int[] claimed(List<NumberedFace> olds, List<Overlap> overlaps, int faces) {
        double[] mostOfOld = new double[olds.size()];
        overlaps.forEach(overlap -> mostOfOld[overlap.old] = Math.max(mostOfOld[overlap.old], overlap.area));
        Overlap[] best = new Overlap[faces];
        boolean[] heldByLocked = new boolean[olds.size()];
        for (Overlap overlap : overlaps) {
            boolean locked = olds.get(overlap.old).locked();
            boolean most = locked && !heldByLocked[overlap.old] && overlap.share >= COUNTS && overlap.area == mostOfOld[overlap.old];
            if (overlap.share <= KEEPS && !most) {
                continue;
            }
            heldByLocked[overlap.old] |= locked;
            Overlap other = best[overlap.face];
            boolean otherLocked = other != null && olds.get(other.old).locked();
            if (other == null || locked && !otherLocked || locked == otherLocked && overlap.area > other.area) {
                best[overlap.face] = overlap;
            }
        }
        return Arrays.stream(best).mapToInt(overlap -> overlap == null ? 0 : olds.get(overlap.old).number()).toArray();
    }

    private static List<Became> became(List<NumberedFace> olds, List<Polygon> faces, List<Overlap> overlaps, int[] kept) {
        return overlaps.stream().map(overlap -> new Became(olds.get(overlap.old).number(), kept[overlap.face], Math.min(1, overlap.share),
                Math.min(1, overlap.area / faces.get(overlap.face).getArea())))
                .filter(one -> one.shareOfBefore() >= COUNTS || one.shareOfNow() >= COUNTS)
                .sorted(Comparator.comparingInt(Became::before).thenComparingInt(Became::now)).toList();
    }

    /** All that overlap by more than nothing, in the order of the old pieces. */
    private static List<Overlap> overlaps(List<NumberedFace> before, List<Polygon> faces) {
        var tree = new STRtree();
        for (int face = 0; face < faces.size(); face++) {
            tree.insert(faces.get(face).getEnvelopeInternal(), face);
        }
        List<Overlap> overlaps = new ArrayList<>();
        for (int old = 0; old < before.size(); old++) {
            Polygon was = before.get(old).face();
            List<Integer> near = new ArrayList<>();
            for (Object item : tree.query(was.getEnvelopeInternal())) {
                near.add((Integer) item);
            }
            Collections.sort(near);
            for (int face : near) {
                double area = overlap(was, faces.get(face));
                if (area > 0) {
                    overlaps.add(new Overlap(old, face, area, area / was.getArea()));
                }
            }
        }
        return overlaps;
    }

    private static double overlap(Polygon a, Polygon b) {
        if (a.equalsExact(b)) {
            return a.getArea();
        }
        Geometry both = OverlayNGRobust.overlay(a, b, OverlayNG.INTERSECTION);
        return both.getArea();
    }

    private static SortedMap<Integer, List<Integer>> split(List<NumberedFace> before, List<Overlap> overlaps, int[] kept) {
        SortedMap<Integer, List<Integer>> split = new TreeMap<>();
        for (Overlap overlap : overlaps) {
            if (overlap.share >= COUNTS) {
                split.computeIfAbsent(before.get(overlap.old).number(), number -> new ArrayList<>()).add(kept[overlap.face]);
            }
        }
        split.values().removeIf(numbers -> numbers.size() < 2);
        split.values().forEach(Collections::sort);
        return split;
    }

    private static SortedMap<Integer, List<Integer>> merged(List<NumberedFace> before, List<Overlap> overlaps, int[] kept) {
        SortedMap<Integer, List<Integer>> merged = new TreeMap<>();
        for (Overlap overlap : overlaps) {
            if (overlap.share > KEEPS) {
                merged.computeIfAbsent(kept[overlap.face], number -> new ArrayList<>()).add(before.get(overlap.old).number());
            }
        }
        merged.values().removeIf(numbers -> numbers.size() < 2);
        merged.values().forEach(Collections::sort);
        return merged;
    }
}
