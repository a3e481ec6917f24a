package saddlebar.stencil.limits;

import java.util.ArrayList;
import java.util.List;

import saddlebar.model.problem.PlaceMm;
import saddlebar.model.units.Require;
import saddlebar.model.units.Units;
import saddlebar.stencil.BitPicture;

/**
 * {@link Mending} of pictures of any size, part by part: all narrow places, or only those that somebody decided on, each looked for again about its
 * place. Parts are taken with so much around them that a place of up to a hand's breadth is seen whole.
 */
public final class PictureMending {
    private static final int PART_PX = 2048;
    private static final int AROUND_PX = 384;
    private static final int MOST_PART_PX = 4096;
    private static final double NEAR_MM = 0.3;

    private PictureMending() {
    }

    /**
     * A place that is to be made wider.
     *
     * @param thicken whether paint is added, else a bridge strengthened
     * @param at      near any px of the place, from the picture's top left
     * @param widthMm that it is to have, 0 to 5
     */
    public record Wanted(boolean thicken, PlaceMm at, double widthMm) {
        public Wanted {
            Require.within("widthMm", widthMm, 0, 5);
        }
    }

    /**
     * What was done.
     *
     * @param bits     the mended picture
     * @param steps    in the order asked for, or from the top
     * @param notFound places at which nothing is too narrow any more
     */
    public record Done(BitPicture bits, List<Mending.Step> steps, List<Wanted> notFound) {
        public Done {
            steps = List.copyOf(steps);
            notFound = List.copyOf(notFound);
        }
    }

    /**
     * Everything too fine: first openings are thickened, then bridges strengthened. What one does the other may undo where both are too fine; count
     * afterwards. A place that spans more than one part by more than what is seen around it is done in several steps.
     *
     * @param openMm   0: openings are left
     * @param bridgeMm 0: bridges are left
     */
    public static Done all(BitPicture bits, double dpi, double openMm, double bridgeMm) {
        List<Mending.Step> steps = new ArrayList<>();
        BitPicture mended = openMm > 0 ? parts(bits, dpi, openMm, true, steps) : bits;
        mended = bridgeMm > 0 ? parts(mended, dpi, bridgeMm, false, steps) : mended;
        return new Done(mended, steps, List.of());
    }

    private static BitPicture copy(BitPicture bits) {
        BitPicture copy = new BitPicture(bits.widthPx(), bits.heightPx());
        System.arraycopy(bits.words(), 0, copy.words(), 0, bits.words().length);
        return copy;
    }

    private static BitPicture parts(BitPicture bits, double dpi, double mm, boolean paint, List<Mending.Step> steps) {
        BitPicture mended = copy(bits);
        for (int top = 0; top < bits.heightPx(); top += PART_PX) {
            for (int left = 0; left < bits.widthPx(); left += PART_PX) {
                Box core = new Box(left, top, Math.min(bits.widthPx(), left + PART_PX), Math.min(bits.heightPx(), top + PART_PX));
                Box seen = core.grown(AROUND_PX, bits);
                Mending.Proposal proposal = new Mending(seen.of(bits), dpi, mm, paint).all(place -> true);
                core.copy(proposal.bits(), seen, mended);
                for (Mending.Step step : proposal.steps()) {
                    Mending.Step there = seen.moved(step, dpi);
                    if (core.holds(there.at(), dpi)) {
                        steps.add(there);
                    }
                }
            }
        }
        return mended;
    }

    /** Only the places that are wanted, one after the other. */
    public static Done places(BitPicture bits, double dpi, List<Wanted> wanted) {
        BitPicture mended = copy(bits);
        List<Mending.Step> steps = new ArrayList<>();
        List<Wanted> notFound = new ArrayList<>();
        for (Wanted place : wanted) {
            List<Mending.Step> done = place(mended, dpi, place);
            steps.addAll(done);
            if (done.isEmpty()) {
                notFound.add(place);
            }
        }
        return new Done(mended, steps, notFound);
    }

    private static List<Mending.Step> place(BitPicture mended, double dpi, Wanted place) {
        int x = (int) Math.floor(place.at().xMm() * dpi / Units.MM_PER_INCH);
        int y = (int) Math.floor(place.at().yMm() * dpi / Units.MM_PER_INCH);
        if (x < 0 || y < 0 || x >= mended.widthPx() || y >= mended.heightPx()) {
            return List.of();
        }
        int near = Math.max(1, Units.pxOfMm(NEAR_MM, dpi));
        for (int reach = AROUND_PX / 2;; reach *= 2) {
            Box seen = new Box(x, y, x + 1, y + 1).grown(reach, mended);
            Mending mending = new Mending(seen.of(mended), dpi, place.widthMm(), place.thicken());
            int width = seen.right - seen.left;
            Mending.Proposal proposal = mending.all(px -> px.stream()
                    .anyMatch(at -> Math.abs(at % width + seen.left - x) <= near && Math.abs(at / width + seen.top - y) <= near));
            boolean whole = seen.right - seen.left == mended.widthPx() && seen.bottom - seen.top == mended.heightPx();
            if (!mending.cutOff() || whole || 4 * reach > MOST_PART_PX) {
                seen.copy(proposal.bits(), seen, mended);
                return proposal.steps().stream().map(step -> seen.moved(step, dpi)).toList();
            }
        }
    }

    /** A part of a picture, px. */
    private record Box(int left, int top, int right, int bottom) {
        Box grown(int by, BitPicture within) {
            return new Box(Math.max(0, left - by), Math.max(0, top - by), Math.min(within.widthPx(), right + by), Math.min(within.heightPx(), bottom + by));
        }

        BitPicture of(BitPicture bits) {
            return bits.part(left, top, right - left, bottom - top);
        }

        /** This part of what was seen, into the whole. */
        void copy(BitPicture part, Box seen, BitPicture whole) {
            for (int y = top; y < bottom; y++) {
                for (int x = left; x < right; x++) {
                    whole.set(x, y, part.get(x - seen.left, y - seen.top));
                }
            }
        }

        Mending.Step moved(Mending.Step step, double dpi) {
            return new Mending.Step(step.kind(), new PlaceMm(step.at().xMm() + Units.mmOfPx(left, dpi), step.at().yMm() + Units.mmOfPx(top, dpi)), step.px());
        }

        boolean holds(PlaceMm place, double dpi) {
            double x = place.xMm() * dpi / Units.MM_PER_INCH;
            double y = place.yMm() * dpi / Units.MM_PER_INCH;
            return x >= left && x < right && y >= top && y < bottom;
        }
    }
}
