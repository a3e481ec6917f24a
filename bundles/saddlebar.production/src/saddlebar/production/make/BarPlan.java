package saddlebar.production.make;

import java.util.ArrayList;
import java.util.List;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.union.CascadedPolygonUnion;

import saddlebar.cartoon.opening.BarRule;
import saddlebar.materials.metal.Reinforcement;
import saddlebar.report.truesize.BarPlace;
import saddlebar.report.truesize.PatternPiece;

/**
 * Where bars cross a panel: at the heights of the studio's rule of thumb, from edge to edge of the glass, tied where they cross joints.
 *
 * @param bars   from the top
 * @param reason why there are some, or none
 */
record BarPlan(List<BarPlace> bars, String reason) {
    /** Ties nearer to each other than this are one (studio setting). */
    private static final double TIES_APART_MM = 60;
    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    /** @param faces pieces as drawn, to the middle of the joints */
    static BarPlan of(List<PatternPiece> faces, BarRule rule) {
        List<Polygon> polygons = faces.stream().filter(face -> !face.outline().isEmpty()).map(face -> Outlines.polygon(face.outline())).toList();
        Geometry panel = CascadedPolygonUnion.union(polygons);
        if (panel == null) {
            return new BarPlan(List.of(), "no pieces");
        }
        Envelope box = panel.getEnvelopeInternal();
        Reinforcement found = Reinforcement.of(box.getWidth(), box.getHeight(), rule);
        List<BarPlace> bars = new ArrayList<>();
        for (double height : found.heightsMm()) {
            double y = box.getMinY() + height;
            Geometry level = GEOMETRY.createLineString(new Coordinate[] {new Coordinate(box.getMinX() - 1, y), new Coordinate(box.getMaxX() + 1, y)});
            Envelope reach = level.intersection(panel).getEnvelopeInternal();
            if (reach.isNull() || reach.getWidth() < 1) {
                continue;
            }
            bars.add(new BarPlace(y, reach.getMinX(), reach.getMaxX(), ties(polygons, level, reach)));
        }
        return new BarPlan(bars, found.reason());
    }

    private static List<Double> ties(List<Polygon> polygons, Geometry level, Envelope reach) {
        List<Double> crossings = new ArrayList<>();
        for (Polygon polygon : polygons) {
            if (polygon.getEnvelopeInternal().intersects(level.getEnvelopeInternal())) {
                for (Coordinate at : polygon.getBoundary().intersection(level).getCoordinates()) {
                    if (at.getX() > reach.getMinX() + TIES_APART_MM / 4 && at.getX() < reach.getMaxX() - TIES_APART_MM / 4) {
                        crossings.add(at.getX());
                    }
                }
            }
        }
        List<Double> ties = new ArrayList<>();
        crossings.stream().sorted().forEach(x -> {
            if (ties.isEmpty() || x - ties.get(ties.size() - 1) >= TIES_APART_MM) {
                ties.add(x);
            }
        });
        return ties;
    }
}
