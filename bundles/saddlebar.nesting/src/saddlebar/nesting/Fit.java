package saddlebar.nesting;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.DoubleStream;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;

import saddlebar.model.problem.Refusal;

/** Whether each item can be placed at all; if not, the refusal that says so. */
final class Fit {
    private static final double SLACK_MM = 1e-7;

    private Fit() {
    }

    static void requireDistinctIds(List<NestItem> items) {
        if (items.isEmpty()) {
            throw new Refusal("items", "there is nothing to place", "name at least one item");
        }
        Set<String> seen = new HashSet<>();
        for (NestItem item : items) {
            if (!seen.add(item.id())) {
                throw new Refusal("item " + item.id(), "its id is used twice", "give each item an id of its own, or one item a quantity");
            }
        }
        if (items.stream().mapToLong(NestItem::quantity).sum() > NestItem.MOST) {
            throw new Refusal("items", "their quantities add up to more than " + NestItem.MOST, "place them in several parts");
        }
    }

    static void requireOnSheets(List<NestItem> items, List<SheetArea> kinds) {
        if (kinds.isEmpty()) {
            throw new Refusal("sheets", "there is no kind of sheet", "name at least one");
        }
        SheetArea largest = kinds.get(0);
        for (SheetArea kind : kinds) {
            largest = kind.areaMm2() > largest.areaMm2() ? kind : largest;
        }
        for (NestItem item : items) {
            Polygon outline = item.outline();
            if (Arrays.stream(angles(item, outline)).noneMatch(angle -> kinds.stream().anyMatch(k -> fits(outline, angle, k.widthMm(), k.heightMm())))) {
                throw new Refusal("item " + item.id(),
                        "it is " + item.sizeText() + " and fits no sheet; the largest has " + largest.sizeText() + " to use",
                        "take a larger sheet, divide the item, or allow it to be turned");
            }
        }
    }

    static void requireInStrip(List<NestItem> items, double heightMm) {
        for (NestItem item : items) {
            Polygon outline = item.outline();
            if (Arrays.stream(angles(item, outline)).noneMatch(angle -> fits(outline, angle, Double.POSITIVE_INFINITY, heightMm))) {
                throw new Refusal("item " + item.id(),
                        "it is " + item.sizeText() + " and does not fit a strip " + NestItem.text(heightMm) + " mm high",
                        "take a higher strip, divide the item, or allow it to be turned");
            }
        }
    }

    /** The allowed angles; for free turning every half degree and those that lay an edge along x or y. */
    static double[] angles(NestItem item, Polygon outline) {
        if (!item.turns().free()) {
            return item.turns().degrees().stream().mapToDouble(d -> d).toArray();
        }
        return DoubleStream.concat(DoubleStream.iterate(0, a -> a + 0.5).limit(720), DoubleStream.of(levelAngles(outline))).toArray();
    }

    /** Angles at which an edge of the convex hull lies along x or y: the smallest box around a shape is at one of them. */
    static double[] levelAngles(Polygon outline) {
        Coordinate[] hull = outline.convexHull().getCoordinates();
        double[] angles = new double[4 * (hull.length - 1)];
        for (int i = 1; i < hull.length; i++) {
            double edge = StrictMath.toDegrees(StrictMath.atan2(hull[i].y - hull[i - 1].y, hull[i].x - hull[i - 1].x));
            for (int quarter = 0; quarter < 4; quarter++) {
                angles[4 * (i - 1) + quarter] = ((90 * quarter - edge) % 360 + 360) % 360;
            }
        }
        return angles;
    }

    static boolean fits(Polygon outline, double angleDeg, double widthMm, double heightMm) {
        double[] box = boxAt(outline, angleDeg);
        return box[0] <= widthMm + SLACK_MM && box[1] <= heightMm + SLACK_MM;
    }

    /** Width and height of the box around the turned outline. */
    static double[] boxAt(Polygon outline, double angleDeg) {
        double cos = ExactRing.cos(angleDeg);
        double sin = ExactRing.cos(angleDeg - 90);
        double minX = Double.POSITIVE_INFINITY;
        double maxX = Double.NEGATIVE_INFINITY;
        double minY = Double.POSITIVE_INFINITY;
        double maxY = Double.NEGATIVE_INFINITY;
        for (Coordinate c : outline.getExteriorRing().getCoordinates()) {
            double x = c.x * cos - c.y * sin;
            double y = c.x * sin + c.y * cos;
            minX = Math.min(minX, x);
            maxX = Math.max(maxX, x);
            minY = Math.min(minY, y);
            maxY = Math.max(maxY, y);
        }
        return new double[] {maxX - minX, maxY - minY};
    }
}
