package saddlebar.stencil.limits;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;

import saddlebar.model.problem.PlaceMm;
import saddlebar.model.units.Require;
import saddlebar.model.units.Units;
import saddlebar.stencil.BitPicture;

/**
 * Proposes how openings too fine to print are made wider and bridges too fine to hold are made stronger: along the middle of each such place px are
 * set, or cleared, within half of what is wanted. Nothing is changed but on a copy; each place is a step that can be shown, and kept or dropped. What
 * is fine is told as {@link LimitsCheck} does: not left by an opening with the disc, and farther from what is left than the disc's radius, or with
 * nothing left beside it. Whole pictures, in memory.
 */
public final class Mending {
    /**
     * One place mended.
     *
     * @param kind {@code thicken} for paint added to an opening, {@code strengthen} for paint taken from beside a bridge
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

    private Mending() {
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
        Require.within("mm", mm, 0, 5);
        double radius = Math.ceil(mm * dpi / Units.MM_PER_INCH - 0.05) / 2;
        int width = bits.widthPx();
        int height = bits.heightPx();
        BitPicture mended = new BitPicture(width, height);
        System.arraycopy(bits.words(), 0, mended.words(), 0, bits.words().length);
        List<Step> steps = new ArrayList<>();
        DistanceField inside = DistanceField.to(bits, !paint, paint); // outside lies stencil
        BitPicture kept = new BitPicture(width, height);
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                kept.set(x, y, inside.squared(x, y) > radius * radius);
            }
        }
        DistanceField toKept = DistanceField.to(kept, true, !paint);
        boolean[] seen = new boolean[width * height];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                if (!seen[y * width + x] && narrow(bits, toKept, radius, x, y, paint)) {
                    mend(bits, mended, inside, toKept, seen, x, y, radius, dpi, paint, steps);
                }
            }
        }
        return new Proposal(mended, steps);
    }

    private static boolean narrow(BitPicture bits, DistanceField toKept, double radius, int x, int y, boolean paint) {
        return bits.get(x, y) == paint && toKept.squared(x, y) > radius * radius;
    }

    private static void mend(BitPicture bits, BitPicture mended, DistanceField inside, DistanceField toKept, boolean[] seen, int x0, int y0, double radius,
            double dpi, boolean paint, List<Step> steps) {
        int width = bits.widthPx();
        int height = bits.heightPx();
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
                if (x >= 0 && y >= 0 && x < width && y < height && !seen[y * width + x] && narrow(bits, toKept, radius, x, y, paint)) {
                    seen[y * width + x] = true;
                    open.add(y * width + x);
                }
            }
        }
        if (!counts) {
            return; // the tip of a corner
        }
        int changed = 0;
        for (int at : place) {
            if (isMiddle(inside, at % width, at / width, width, height)) {
                changed += stamp(mended, at % width, at / width, radius, paint);
            }
        }
        if (changed > 0) {
            steps.add(new Step(paint ? "thicken" : "strengthen", new PlaceMm(Units.mmOfPx(x0 + 0.5, dpi), Units.mmOfPx(y0 + 0.5, dpi)), changed));
        }
    }

    private static boolean isMiddle(DistanceField inside, int x, int y, int width, int height) {
        int here = inside.squared(x, y);
        boolean across = (x == 0 || inside.squared(x - 1, y) <= here) && (x == width - 1 || inside.squared(x + 1, y) <= here);
        boolean down = (y == 0 || inside.squared(x, y - 1) <= here) && (y == height - 1 || inside.squared(x, y + 1) <= here);
        return across && down;
    }

    private static int stamp(BitPicture mended, int x0, int y0, double radius, boolean paint) {
        int changed = 0;
        int reach = (int) Math.floor(radius);
        for (int y = Math.max(0, y0 - reach); y <= Math.min(mended.heightPx() - 1, y0 + reach); y++) {
            for (int x = Math.max(0, x0 - reach); x <= Math.min(mended.widthPx() - 1, x0 + reach); x++) {
                if ((x - x0) * (x - x0) + (y - y0) * (y - y0) <= radius * radius && mended.get(x, y) != paint) {
                    mended.set(x, y, paint);
                    changed++;
                }
            }
        }
        return changed;
    }
}
