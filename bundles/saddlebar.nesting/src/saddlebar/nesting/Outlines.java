package saddlebar.nesting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.DoubleStream;

import org.locationtech.jts.geom.Polygon;

import saddlebar.nesting.outline.Guard;
import saddlebar.nesting.outline.OutlineJob;
import saddlebar.nesting.outline.TurnedOutline;

/** Items as outlines at certain angles, and back. */
final class Outlines {
    static final String METHOD = "overlaps driven apart, strip shortened";
    /** Passes over all shapes that overlap. */
    static final int STEPS_PER_ROUND = 5;

    private final List<NestItem> items;
    private final List<SheetArea> areas;

    Outlines(List<NestItem> items, List<SheetArea> areas) {
        this.items = items;
        this.areas = areas;
    }

    OutlineJob job(double gapMm) {
        return new OutlineJob(turned(), gapMm);
    }

    /** Each item at its angles. */
    List<TurnedOutline> turned() {
        List<TurnedOutline> turned = new ArrayList<>();
        for (NestItem item : items) {
            Polygon outline = item.outline();
            turned.add(new TurnedOutline(outline, Guard.of(outline), item.quantity(), angles(item, outline)));
        }
        return turned;
    }

    List<Placement> placements(OutlineJob.Found found) {
        List<Placement> placements = new ArrayList<>();
        int k = 0;
        for (NestItem item : items) {
            for (int copy = 0; copy < item.quantity(); copy++) {
                placements.add(new Placement(item.id(), copy, found.bay()[k], found.x()[k], found.y()[k], found.angleDeg()[k]));
                k++;
            }
        }
        return placements;
    }

    /**
     * The allowed angles at which the outline fits one of the areas. Of free turning, as drawn and from the angle of the smallest box around
     * the outline on in equal steps, fewer the more different items there are.
     */
    private double[] angles(NestItem item, Polygon outline) {
        DoubleStream wanted = item.turns().degrees().stream().mapToDouble(d -> d);
        if (item.turns().free()) {
            int steps = items.size() <= 8 ? 16 : items.size() <= 40 ? 8 : 4;
            double level = Arrays.stream(Fit.levelAngles(outline)).boxed().min(Comparator.comparingDouble(a -> boxArea(outline, a)))
                    .orElseThrow();
            wanted = DoubleStream.concat(wanted, DoubleStream.iterate(level, a -> a + 360.0 / steps).limit(steps).map(a -> a % 360));
        }
        double[] fitting = wanted.distinct().filter(a -> fits(outline, a)).toArray();
        return fitting.length > 0 ? fitting : Arrays.stream(Fit.angles(item, outline)).filter(a -> fits(outline, a)).limit(1).toArray();
    }

    private boolean fits(Polygon outline, double angle) {
        return areas.stream().anyMatch(area -> Fit.fits(outline, angle, area.widthMm(), area.heightMm()));
    }

    /** Rounded, so that of equal boxes the first angle counts. */
    private static double boxArea(Polygon outline, double angle) {
        double[] box = Fit.boxAt(outline, angle);
        return Math.rint(box[0] * box[1] * 1e6);
    }
}
