package saddlebar.stencil.limits;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

import saddlebar.model.problem.PlaceMm;
import saddlebar.model.units.Require;
import saddlebar.model.units.Units;
import saddlebar.stencil.BitPicture;

/**
 * Proposes how openings too fine to print are made wider and bridges too fine to hold are made stronger: along the middle of each such place px are
 * set, or cleared, within half of what is wanted. Nothing is changed but on a copy; each place is a step that can be shown, and kept or dropped. What
 * is fine is told as {@link LimitsCheck} does: not left by an opening with the disc, and farther from what is left than the disc's radius, or with
 * nothing left beside it. Whole pictures, in memory, about ten bytes a px; {@link PictureMending} goes by parts.
 */
public final class Mending {
    /** Paint added to an opening. */
    public static final String THICKEN = "thicken";
    /** Paint taken from beside a bridge. */
    public static final String STRENGTHEN = "strengthen";

    /**
     * One place mended.
     *
     * @param kind {@link #THICKEN} or {@link #STRENGTHEN}
     * @param at   first px of the place
     * @param px   px changed
     */
    public record Step(String kind, PlaceMm at, int px) {
    }

    /**
     * A proposal.
     *
     * @param bits  the mended picture
     * @param steps what was done, from the top
     */
    public record Proposal(BitPicture bits, List<Step> steps) {
        public Proposal {
            steps = List.copyOf(steps);
        }
    }

    /** Openings narrower than {@code openMm} made that wide. */
    public static Proposal thickened(BitPicture bits, double dpi, double openMm) {
        return mended(bits, dpi, openMm, true);
    }

    /** Bridges between openings narrower than {@code bridgeMm} made that wide. */
    public static Proposal strengthened(BitPicture bits, double dpi, double bridgeMm) {
        return mended(bits, dpi, bridgeMm, false);
    }

    private static Proposal mended(BitPicture bits, double dpi, double mm, boolean paint) {
        return new Mending(bits, dpi, mm, paint).all(place -> true);
    }

    private final BitPicture bits;
    private final double dpi;
    private final double radius;
    private final boolean paint;
    private final int width;
    private final int height;
    private final BitPicture mended;
    private final DistanceField inside;
    private final DistanceField toKept;
    private final List<Step> steps = new ArrayList<>();
    private boolean cutOff;

    /** @param paint whether paint is added, else taken away */
    Mending(BitPicture bits, double dpi, double mm, boolean paint) {
        Require.within("mm", mm, 0, 5);
        this.bits = bits;
        this.dpi = dpi;
        this.radius = Math.ceil(mm * dpi / Units.MM_PER_INCH - 0.05) / 2;
        this.paint = paint;
        this.width = bits.widthPx();
        this.height = bits.heightPx();
        this.mended = new BitPicture(width, height);
        System.arraycopy(bits.words(), 0, mended.words(), 0, bits.words().length);
        this.inside = DistanceField.to(bits, !paint, paint); // outside lies stencil
        BitPicture kept = new BitPicture(width, height);
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                kept.set(x, y, inside.squared(x, y) > radius * radius);
            }
        }
        this.toKept = DistanceField.to(kept, true, !paint);
    }

    /** @param wanted told the px of a place, y * width + x; whether it is to be mended */
    Proposal all(Predicate<List<Integer>> wanted) {
        boolean[] seen = new boolean[width * height];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                if (!seen[y * width + x] && narrow(x, y)) {
                    mend(place(seen, x, y), wanted);
                }
            }
        }
        return new Proposal(mended, steps);
    }

    /** Whether a place that was mended reaches the picture's edge, so that it may go on outside. */
    boolean cutOff() {
        return cutOff;
    }

    private boolean narrow(int x, int y) {
        return bits.get(x, y) == paint && toKept.squared(x, y) > radius * radius;
    }

    /** All narrow px that touch, the first of them first; none if it is but the tip of a corner. */
    private List<Integer> place(boolean[] seen, int x0, int y0) {
        ArrayDeque<Integer> open = new ArrayDeque<>();
        List<Integer> place = new ArrayList<>();
        open.add(y0 * width + x0);
        seen[y0 * width + x0] = true;
        boolean counts = false;
        while (!open.isEmpty()) {
            int at = open.remove();
            place.add(at);
            counts |= toKept.squared(at % width, at / width) > 4 * radius * radius;
            for (int d = 0; d < 9; d++) {
                int x = at % width + d % 3 - 1;
                int y = at / width + d / 3 - 1;
                if (x >= 0 && y >= 0 && x < width && y < height && !seen[y * width + x] && narrow(x, y)) {
                    seen[y * width + x] = true;
                    open.add(y * width + x);
                }
            }
        }
        return counts ? place : List.of();
    }

    private void mend(List<Integer> place, Predicate<List<Integer>> wanted) {
        if (place.isEmpty() || !wanted.test(place)) {
            return;
        }
        int changed = 0;
        for (int at : place) {
            int x = at % width;
            int y = at / width;
            cutOff |= x == 0 || y == 0 || x == width - 1 || y == height - 1;
            if (isMiddle(x, y)) {
                changed += stamp(x, y);
            }
        }
        if (changed > 0) {
            int first = place.get(0);
            steps.add(new Step(paint ? THICKEN : STRENGTHEN, new PlaceMm(Units.mmOfPx(first % width + 0.5, dpi), Units.mmOfPx(first / width + 0.5, dpi)),
                    changed));
        }
    }

    private boolean isMiddle(int x, int y) {
        int here = inside.squared(x, y);
        boolean across = (x == 0 || inside.squared(x - 1, y) <= here) && (x == width - 1 || inside.squared(x + 1, y) <= here);
        boolean down = (y == 0 || inside.squared(x, y - 1) <= here) && (y == height - 1 || inside.squared(x, y + 1) <= here);
        return across && down;
    }

    private int stamp(int x0, int y0) {
        int changed = 0;
        int reach = (int) Math.floor(radius);
        for (int y = Math.max(0, y0 - reach); y <= Math.min(height - 1, y0 + reach); y++) {
            for (int x = Math.max(0, x0 - reach); x <= Math.min(width - 1, x0 + reach); x++) {
                if ((x - x0) * (x - x0) + (y - y0) * (y - y0) <= radius * radius && mended.get(x, y) != paint) {
                    mended.set(x, y, paint);
                    changed++;
                }
            }
        }
        return changed;
    }
}
