package saddlebar.nesting;

import java.util.ArrayList;
import java.util.List;

import org.locationtech.jts.geom.Polygon;

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
        List<TurnedOutline> turned = new ArrayList<>();
        for (NestItem item : items) {
            Polygon outline = item.outline();
            turned.add(new TurnedOutline(outline, outline, item.quantity(), angles(item, outline)));
        }
        return new OutlineJob(turned, gapMm);
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

    private double[] angles(NestItem item, Polygon outline) {
        return item.turns().degrees().stream().mapToDouble(d -> d)
                .filter(d -> areas.stream().anyMatch(a -> Fit.fits(outline, d, a.widthMm(), a.heightMm()))).toArray();
    }
}
