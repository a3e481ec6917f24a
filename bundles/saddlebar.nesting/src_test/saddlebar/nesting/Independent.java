package saddlebar.nesting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.index.strtree.STRtree;

/** Looks at a layout with JTS alone, in floating point: a second opinion beside {@link LayoutCheck}. */
final class Independent {
    private static final double SLACK_MM = 1e-6;

    private Independent() {
    }

    static void requireValid(List<NestItem> items, Nested nested, double gapMm) {
        assertTrue(nested.valid());
        Map<String, NestItem> byId = items.stream().collect(Collectors.toMap(NestItem::id, Function.identity()));
        Map<String, Integer> count = new HashMap<>();
        Map<Integer, List<Polygon>> bySheet = new HashMap<>();
        for (Placement p : nested.placements()) {
            NestItem item = byId.get(p.id());
            count.merge(p.id(), 1, Integer::sum);
            assertTrue(item.turns().allows(p.rotationDeg()), p::toString);
            Polygon placed = placed(item, p);
            Envelope box = placed.getEnvelopeInternal();
            SheetArea area = nested.areas().get(p.sheet());
            assertTrue(box.getMinX() >= -SLACK_MM && box.getMinY() >= -SLACK_MM && box.getMaxX() <= area.widthMm() + SLACK_MM
                    && box.getMaxY() <= area.heightMm() + SLACK_MM, () -> p + " reaches over " + area);
            bySheet.computeIfAbsent(p.sheet(), s -> new ArrayList<>()).add(placed);
        }
        for (NestItem item : items) {
            assertEquals(item.quantity(), count.getOrDefault(item.id(), 0), item.id());
        }
        assertEquals(nested.sheets(), nested.areas().size());
        assertEquals(nested.sheets(), bySheet.size(), "no sheet is empty");
        bySheet.values().forEach(sheet -> requireApart(sheet, gapMm));
    }

    private static void requireApart(List<Polygon> shapes, double gapMm) {
        STRtree tree = new STRtree();
        for (int i = 0; i < shapes.size(); i++) {
            tree.insert(shapes.get(i).getEnvelopeInternal(), i);
        }
        for (int i = 0; i < shapes.size(); i++) {
            Polygon a = shapes.get(i);
            Envelope near = new Envelope(a.getEnvelopeInternal());
            near.expandBy(gapMm);
            for (Object found : tree.query(near)) {
                int j = (Integer) found;
                if (j > i) {
                    Polygon b = shapes.get(j);
                    double depthArea = a.intersection(b).getArea();
                    assertTrue(depthArea <= SLACK_MM * Math.min(a.getLength(), b.getLength()), () -> "overlap of " + depthArea + " mm2");
                    assertTrue(gapMm == 0 || a.distance(b) >= gapMm - SLACK_MM, () -> "only " + a.distance(b) + " mm apart");
                }
            }
        }
    }

    static Polygon placed(NestItem item, Placement p) {
        AffineTransformation move = AffineTransformation.rotationInstance(Math.toRadians(p.rotationDeg()));
        move.translate(p.xMm(), p.yMm());
        return (Polygon) move.transform(item.outline());
    }
}
