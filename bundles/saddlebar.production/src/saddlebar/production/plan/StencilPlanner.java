package saddlebar.production.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.LongStream;
import java.util.stream.Stream;

import org.locationtech.jts.geom.Envelope;

/**
 * Divides the painted pieces of layers that are printed alike (same paint, recipe, face and mesh) among as few stencils as their frames allow:
 * never through a piece, neighbours together, identical pieces once, also over windows.
 *
 * <p>Method: pieces whose glass as cut and whose paint are the same but for their place, not turned and not mirrored, form a class; a class of
 * several becomes a stencil of its own, made from its first piece and printed once for each. The rest are divided where they lie, layer by layer:
 * the whole set is one stencil if its box fits; otherwise it is cut in two by the straight line, along x or along y between two pieces in order of
 * their middles, that leaves the smallest sum of box areas, and so on in both halves; at last any two stencils whose common box fits are joined,
 * the pair that wastes least first. O(n^2 log n) for n pieces of one layer; a window has a few hundred. Deterministic: ties go to the earlier
 * piece. Common practice, no source.
 */
public final class StencilPlanner {
    private static final Comparator<PaintedPiece> READING = Comparator
            .comparingDouble((PaintedPiece piece) -> Math.rint(piece.boxMm().centre().y * 1000)).thenComparingDouble(piece -> piece.boxMm().centre().x)
            .thenComparing(PaintedPiece::label);

    private final ImageArea area;

    public StencilPlanner(ImageArea area) {
        this.area = area;
    }

    /**
     * @param pieces painted pieces, those of one layer in the coordinates of its window
     * @return stencils, and the pieces that no frame can print because they are larger than the image area
     */
    public Plan plan(List<PaintedPiece> pieces) {
        List<PaintedPiece> tooLarge = pieces.stream().filter(piece -> !area.takes(piece.boxMm())).toList();
        List<List<PaintedPiece>> classes = classes(pieces.stream().filter(piece -> area.takes(piece.boxMm())).toList());
        List<PlannedStencil> stencils = new ArrayList<>();
        Map<String, List<PaintedPiece>> single = new LinkedHashMap<>();
        for (List<PaintedPiece> alike : classes) {
            if (alike.size() > 1) {
                stencils.add(new PlannedStencil(List.of(alike.get(0)), List.of(alike), alike.get(0).boxMm()));
            } else {
                single.computeIfAbsent(alike.get(0).layerId(), layer -> new ArrayList<>()).add(alike.get(0));
            }
        }
        for (List<PaintedPiece> ofLayer : single.values()) {
            List<List<PaintedPiece>> groups = new ArrayList<>();
            divide(ofLayer, groups);
            join(groups);
            for (List<PaintedPiece> group : groups) {
                List<PaintedPiece> read = group.stream().sorted(READING).toList();
                stencils.add(new PlannedStencil(read, read.stream().map(List::of).toList(), box(read)));
            }
        }
        stencils.sort(Comparator.comparing(PlannedStencil::layerId).thenComparing(s -> s.prints() > 1).thenComparing(s -> s.boxMm().getMinY())
                .thenComparing(s -> s.boxMm().getMinX())
                .thenComparing(s -> s.pieces().get(0).label()));
        return new Plan(List.copyOf(stencils), tooLarge);
    }

    /** Stencils of a layer, and what no frame can take. */
    public record Plan(List<PlannedStencil> stencils, List<PaintedPiece> tooLarge) {
    }

    private static List<List<PaintedPiece>> classes(List<PaintedPiece> pieces) {
        List<List<PaintedPiece>> classes = new ArrayList<>();
        Map<Size, List<List<PaintedPiece>>> bySize = new HashMap<>();
        for (PaintedPiece piece : pieces) {
            Size size = Size.of(piece);
            Optional<List<PaintedPiece>> home = size.near().flatMap(near -> bySize.getOrDefault(near, List.of()).stream())
                    .filter(alike -> alike.get(0).prints(piece)).findFirst();
            if (home.isPresent()) {
                home.get().add(piece);
            } else {
                List<PaintedPiece> alike = new ArrayList<>(List.of(piece));
                classes.add(alike);
                bySize.computeIfAbsent(size, s -> new ArrayList<>()).add(alike);
            }
        }
        return classes;
    }

    /** Width and height in steps of twice the tolerance: pieces that are the same lie in the same or a neighbouring step. */
    private record Size(long width, long height) {
        private static final double STEP_MM = 2 * SameOutline.TOLERANCE_MM;

        static Size of(PaintedPiece piece) {
            Envelope box = piece.glass().getEnvelopeInternal();
            return new Size(Math.round(box.getWidth() / STEP_MM), Math.round(box.getHeight() / STEP_MM));
        }

        Stream<Size> near() {
            return LongStream.rangeClosed(width - 1, width + 1).boxed()
                    .flatMap(w -> LongStream.rangeClosed(height - 1, height + 1).mapToObj(h -> new Size(w, h)));
        }
    }

    private void divide(List<PaintedPiece> pieces, List<List<PaintedPiece>> done) {
        if (area.takes(box(pieces))) {
            done.add(new ArrayList<>(pieces));
            return;
        }
        List<PaintedPiece> bestOrder = null;
        int bestCut = 0;
        double least = Double.POSITIVE_INFINITY;
        for (boolean alongX : new boolean[] {true, false}) {
            List<PaintedPiece> order = new ArrayList<>(pieces);
            order.sort(Comparator.comparingDouble((PaintedPiece p) -> alongX ? p.boxMm().centre().x : p.boxMm().centre().y).thenComparing(READING));
            double[] before = areas(order, 1);
            double[] after = areas(order, -1);
            for (int cut = 1; cut < order.size(); cut++) {
                double sum = before[cut - 1] + after[cut];
                if (sum < least) {
                    least = sum;
                    bestOrder = order;
                    bestCut = cut;
                }
            }
        }
        divide(List.copyOf(bestOrder.subList(0, bestCut)), done);
        divide(List.copyOf(bestOrder.subList(bestCut, bestOrder.size())), done);
    }

    /** Areas of the boxes around the pieces up to (step 1) or from (step -1) each place in the order. */
    private static double[] areas(List<PaintedPiece> order, int step) {
        double[] areas = new double[order.size()];
        Envelope box = new Envelope();
        for (int i = step > 0 ? 0 : order.size() - 1; i >= 0 && i < order.size(); i += step) {
            box.expandToInclude(order.get(i).boxMm());
            areas[i] = box.getArea();
        }
        return areas;
    }

    private void join(List<List<PaintedPiece>> groups) {
        while (true) {
            int bestA = -1;
            int bestB = -1;
            double least = Double.POSITIVE_INFINITY;
            for (int a = 0; a < groups.size(); a++) {
                for (int b = a + 1; b < groups.size(); b++) {
                    Envelope one = box(groups.get(a));
                    Envelope other = box(groups.get(b));
                    Envelope both = new Envelope(one);
                    both.expandToInclude(other);
                    double waste = both.getArea() - one.getArea() - other.getArea();
                    if (area.takes(both) && waste < least) {
                        least = waste;
                        bestA = a;
                        bestB = b;
                    }
                }
            }
            if (bestA < 0) {
                return;
            }
            groups.get(bestA).addAll(groups.remove(bestB));
        }
    }

    private static Envelope box(List<PaintedPiece> pieces) {
        Envelope box = new Envelope();
        pieces.forEach(piece -> box.expandToInclude(piece.boxMm()));
        return box;
    }
}
