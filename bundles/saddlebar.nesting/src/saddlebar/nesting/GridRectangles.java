package saddlebar.nesting;

import java.util.ArrayList;
import java.util.List;

import org.locationtech.jts.geom.Envelope;

import saddlebar.nesting.rectangle.Bin;
import saddlebar.nesting.rectangle.RectangleLayout;
import saddlebar.nesting.rectangle.RectangleSet;

/**
 * Rectangles in whole steps of a fine grid and back. Sides are rounded up, sheets down (both but for a thousandth of a step, so that 0.1 mm is
 * not taken for more than it is). The gap is added to shapes and sheets alike, which keeps it between shapes and not to the border.
 */
final class GridRectangles {
    private static final double SLACK = 1e-3;
    private final List<NestItem> items;
    private final long gap;
    final RectangleSet set;
    private final int[] itemOf;
    private final int[] copyOf;

    private GridRectangles(List<NestItem> items, double gapMm, int copies) {
        this.items = items;
        gap = upward(gapMm);
        set = new RectangleSet(new long[copies], new long[copies], new boolean[copies], new boolean[copies]);
        itemOf = new int[copies];
        copyOf = new int[copies];
        int k = 0;
        for (int i = 0; i < items.size(); i++) {
            NestItem item = items.get(i);
            for (int copy = 0; copy < item.quantity(); copy++) {
                itemOf[k] = i;
                copyOf[k] = copy;
                set.width()[k] = upward(item.widthMm()) + gap;
                set.height()[k] = upward(item.heightMm()) + gap;
                set.mayStand()[k] = item.turns().allows(0) || item.turns().allows(180);
                set.mayTurn()[k++] = item.turns().allows(90) || item.turns().allows(270);
            }
        }
    }

    static GridRectangles of(List<NestItem> items, double gapMm) {
        return new GridRectangles(items, gapMm, items.stream().mapToInt(NestItem::quantity).sum());
    }

    /** Can the item be handled here: a rectangle that fits one of the areas with its sides along the sides? */
    static boolean takes(NestItem item, List<SheetArea> areas) {
        boolean stands = item.turns().allows(0) || item.turns().allows(180);
        boolean turns = item.turns().allows(90) || item.turns().allows(270);
        return item.isRectangle() && areas.stream().anyMatch(a -> stands && fits(item.widthMm(), item.heightMm(), a)
                || turns && fits(item.heightMm(), item.widthMm(), a));
    }

    Bin bin(int kind, SheetArea area) {
        return new Bin(kind, downward(area.widthMm()) + gap, downward(area.heightMm()) + gap, false);
    }

    double lengthMm(RectangleLayout layout) {
        return (layout.lastLength() - gap) / ExactRing.PER_MM;
    }

    List<Placement> placements(RectangleLayout layout) {
        List<Placement> placements = new ArrayList<>();
        for (int k = 0; k < itemOf.length; k++) {
            NestItem item = items.get(itemOf[k]);
            boolean turned = layout.turned()[k];
            double angle = turned ? item.turns().allows(90) ? 90 : 270 : item.turns().allows(0) ? 0 : 180;
            Envelope box = item.outline().getEnvelopeInternal();
            double left = angle == 0 ? box.getMinX() : angle == 90 ? -box.getMaxY() : angle == 180 ? -box.getMaxX() : box.getMinY();
            double top = angle == 0 ? box.getMinY() : angle == 90 ? box.getMinX() : angle == 180 ? -box.getMaxY() : -box.getMaxX();
            placements.add(new Placement(item.id(), copyOf[k], layout.bin()[k], mm(layout.x()[k]) - left, mm(layout.y()[k]) - top, angle));
        }
        return placements;
    }

    private static boolean fits(double widthMm, double heightMm, SheetArea area) {
        return upward(widthMm) <= downward(area.widthMm()) && upward(heightMm) <= downward(area.heightMm());
    }

    private static double mm(long steps) {
        return steps / ExactRing.PER_MM;
    }

    private static long upward(double mm) {
        return (long) Math.ceil(mm * ExactRing.PER_MM - SLACK);
    }

    private static long downward(double mm) {
        return (long) Math.floor(mm * ExactRing.PER_MM + SLACK);
    }
}
