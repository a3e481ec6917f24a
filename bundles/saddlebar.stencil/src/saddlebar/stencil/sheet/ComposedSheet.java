package saddlebar.stencil.sheet;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

import saddlebar.model.problem.Refusal;
import saddlebar.model.units.Units;
import saddlebar.stencil.BitBands;
import saddlebar.stencil.BitPicture;

/**
 * A sheet as rows of toner (1 = black), put together while it is read: the ground, on it the marks, and each stencil from the moment its first row
 * is reached until its last has passed. In memory lie the marks, a band of each stencil that is passing, and whole only stencils that are turned
 * and passing: the height of the sheet does not matter.
 *
 * <p>Where what prints is white, the ground is toner to the sheet's very edge and marks are openings in it; otherwise the ground is clear and marks
 * are toner. Either way marks would print: see {@link TapePlan}.
 */
public final class ComposedSheet implements BitBands {
    private static final int ROWS_AT_ONCE = 64;

    private final SheetPlan plan;
    private final int widthPx;
    private final int heightPx;
    private final boolean tonerGround;
    private final List<SheetPart> waiting = new ArrayList<>();
    private final List<SheetPart> passing = new ArrayList<>();
    private int row;

    private ComposedSheet(SheetPlan plan, List<Mark> marks) {
        this.plan = plan;
        this.widthPx = plan.widthPx();
        this.heightPx = plan.heightPx();
        this.tonerGround = plan.process().printsWhite();
        for (Mark mark : marks) {
            waiting.add(markPart(mark));
        }
        for (PlacedStencil stencil : plan.stencils()) {
            waiting.add(stencilPart(stencil));
        }
        waiting.sort(Comparator.comparingInt(SheetPart::yPx));
    }

    /**
     * Begins to read a sheet.
     *
     * @throws Refusal if a stencil leaves the room for stencils, overlaps another, or has no room for its number
     */
    public static ComposedSheet of(SheetPlan plan) throws IOException {
        requireRoom(plan);
        return new ComposedSheet(plan, SheetMarks.of(plan));
    }

    private static void requireRoom(SheetPlan plan) {
        double slackMm = Units.mmOfPx(1, plan.dpi());
        RectMm usable = plan.frame().usableMm();
        List<RectMm> places = new ArrayList<>();
        for (PlacedStencil stencil : plan.stencils()) {
            RectMm place = stencil.placeMm(plan.dpi());
            String where = "sheet " + plan.label().number() + ", stencil " + stencil.id();
            if (!usable.grown(slackMm).contains(place)) {
                SheetFrame.requireRoom(stencil.id(), place.widthMm(), place.heightMm(), List.of(plan.frame()));
                throw new Refusal(where, "at " + Sides.mm(place.xMm()) + ", " + Sides.mm(place.yMm()) + " mm it leaves the room for stencils, which is "
                        + Sides.of(usable.widthMm(), usable.heightMm()) + " from " + Sides.mm(usable.xMm()) + ", " + Sides.mm(usable.yMm()),
                        "move it or lay the sheets out again");
            }
            for (int i = 0; i < places.size(); i++) {
                if (places.get(i).grown(-slackMm).overlaps(place)) {
                    throw new Refusal(where, "it lies over stencil " + plan.stencils().get(i).id(), "move it or lay the sheets out again");
                }
            }
            places.add(place);
        }
    }

    private SheetPart markPart(Mark mark) {
        int xPx = Math.max(0, Units.pxOfMm(mark.boxMm().xMm(), plan.dpi()));
        int yPx = Math.max(0, Units.pxOfMm(mark.boxMm().yMm(), plan.dpi()));
        int markWidthPx = Math.min(widthPx, Units.pxOfMm(mark.boxMm().rightMm(), plan.dpi())) - xPx;
        int markHeightPx = Math.min(heightPx, Units.pxOfMm(mark.boxMm().bottomMm(), plan.dpi())) - yPx;
        BitPicture bits = OutlineFill.bits(mark.outlineMm(), plan.dpi(), xPx, yPx, markWidthPx, markHeightPx);
        return new SheetPart("mark", xPx, yPx, markWidthPx, markHeightPx, tonerGround ? SheetPart.Way.CLEAR : SheetPart.Way.ADD, bits::bands);
    }

    private SheetPart stencilPart(PlacedStencil stencil) {
        // a place that rounds past the sheet's last px is moved back by that px
        int xPx = Math.max(0, Math.min(Units.pxOfMm(stencil.xMm(), plan.dpi()), widthPx - stencil.placedWidthPx()));
        int yPx = Math.max(0, Math.min(Units.pxOfMm(stencil.yMm(), plan.dpi()), heightPx - stencil.placedHeightPx()));
        BitSource bits = stencil.quarterTurns() == 0 ? stencil.bits() : () -> {
            try (BitBands rows = stencil.bits().open()) {
                return TurnedBits.turned(BitPicture.of(rows), stencil.quarterTurns()).bands();
            }
        };
        return new SheetPart("stencil " + stencil.id(), xPx, yPx, stencil.placedWidthPx(), stencil.placedHeightPx(), SheetPart.Way.REPLACE, bits);
    }

    @Override
    public int widthPx() {
        return widthPx;
    }

    @Override
    public int heightPx() {
        return heightPx;
    }

    @Override
    public int read(long[] target, int maxRows) throws IOException {
        int wanted = Math.min(maxRows, heightPx - row);
        for (int done = 0; done < wanted;) {
            int rows = Math.min(ROWS_AT_ONCE, wanted - done);
            band(target, done * wordsPerRow(), rows);
            done += rows;
        }
        return wanted;
    }

    private void band(long[] target, int firstWord, int rows) throws IOException {
        ground(target, firstWord, rows);
        while (!waiting.isEmpty() && waiting.get(0).yPx() < row + rows) {
            SheetPart part = waiting.remove(0);
            passing.add(part);
            part.open();
        }
        for (int i = passing.size() - 1; i >= 0; i--) {
            SheetPart part = passing.get(i);
            part.draw(target, firstWord, wordsPerRow(), row, rows);
            if (part.bottomPx() <= row + rows) {
                passing.remove(i);
                part.close();
            }
        }
        row += rows;
    }

    private void ground(long[] target, int firstWord, int rows) {
        int words = wordsPerRow();
        Arrays.fill(target, firstWord, firstWord + rows * words, tonerGround ? -1L : 0);
        if (tonerGround && (widthPx & 63) != 0) {
            for (int y = 1; y <= rows; y++) {
                target[firstWord + y * words - 1] = -1L << (64 - (widthPx & 63));
            }
        }
    }

    @Override
    public void close() {
        passing.forEach(SheetPart::close);
        passing.clear();
        waiting.clear();
    }
}
