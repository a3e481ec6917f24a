package saddlebar.nesting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

import saddlebar.model.units.Require;
import saddlebar.model.work.Work;
import saddlebar.nesting.outline.Guard;
import saddlebar.nesting.outline.OutlineJob;
import saddlebar.nesting.outline.TurnedOutline;
import saddlebar.nesting.search.Budget;

/**
 * Shapes on given sheets, each there once, with places that must stay clear. Sheets are filled in their order, shapes placed one after another, largest
 * first, as far left as there is room; then other orders are tried, drawn by lot around that. Of two layouts the better leaves out less, then takes less
 * sheet (by price), then keeps more of the last sheet in one stretch. O(orders * items * places looked at * items on the sheet).
 */
public final class StockNesting {
    /** Units that {@link #place} tells its {@link Work} in all. */
    public static final int WORK_UNITS = 100;
    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    private StockNesting() {
    }

    /**
     * @param items  ids all different, each once
     * @param sheets in the order in which they are to be filled
     * @param gapMm  least distance between two shapes, and from a shape to what is blocked; not kept to the border of a sheet
     * @param effort orders to try: a round is one
     * @param work   told {@link #WORK_UNITS}; asked whether to stop
     * @return the best layout found; an item that no sheet can take is left out
     */
    public static StockLaid place(List<NestItem> items, List<StockArea> sheets, double gapMm, Effort effort, Work work) {
        Require.within("gapMm", gapMm, 0, SheetArea.LARGEST_MM);
        Fit.requireDistinctIds(items);
        if (items.stream().anyMatch(item -> item.quantity() != 1)) {
            throw new IllegalArgumentException("on given sheets each item is placed once");
        }
        List<SheetArea> areas = sheets.stream().map(StockArea::area).toList();
        List<NestItem> able = items.stream().filter(item -> fitsOne(item, areas)).toList();
        Set<String> unable = new HashSet<>(items.stream().map(NestItem::id).toList());
        able.forEach(item -> unable.remove(item.id()));
        List<String> without = items.stream().map(NestItem::id).filter(unable::contains).toList();
        if (able.isEmpty()) {
            work.advance(WORK_UNITS);
            return new StockLaid(List.of(), without, 0);
        }
        Best best = new Best(able, sheets, areas, gapMm, without);
        Budget budget = new Budget(effort, work, WORK_UNITS, 1);
        List<TurnedOutline> turned = new ArrayList<>(new Outlines(able, areas).turned());
        List<Integer> fixedOn = new ArrayList<>();
        for (int sheet = 0; sheet < sheets.size(); sheet++) {
            for (Polygon blocked : within(sheets.get(sheet))) {
                turned.add(new TurnedOutline(blocked, Guard.of(blocked), 1, new double[] {0}));
                fixedOn.add(sheet);
            }
        }
        new OutlineJob(turned, gapMm).given(areas.stream().mapToDouble(SheetArea::widthMm).toArray(), areas.stream().mapToDouble(SheetArea::heightMm).toArray(),
                fixedOn.stream().mapToInt(i -> i).toArray(), budget, best::offer);
        budget.finish();
        return best.best;
    }

    private static boolean fitsOne(NestItem item, List<SheetArea> areas) {
        Polygon outline = item.outline();
        return Arrays.stream(Fit.angles(item, outline)).anyMatch(angle -> areas.stream().anyMatch(a -> Fit.fits(outline, angle, a.widthMm(), a.heightMm())));
    }

    /** What is blocked of a sheet, clipped to it, in polygons that hold nothing else. */
    private static List<Polygon> within(StockArea sheet) {
        Polygon whole = (Polygon) GEOMETRY.toGeometry(new Envelope(0, sheet.area().widthMm(), 0, sheet.area().heightMm()));
        List<Polygon> found = new ArrayList<>();
        for (Polygon blocked : sheet.blocked()) {
            Geometry inside = OverlayNGRobust.overlay(GEOMETRY.createPolygon(blocked.getExteriorRing().getCoordinates()), whole, OverlayNG.INTERSECTION);
            for (int part = 0; part < inside.getNumGeometries(); part++) {
                if (inside.getGeometryN(part) instanceof Polygon polygon && polygon.getArea() > 1e-6) {
                    found.add(GEOMETRY.createPolygon(polygon.getExteriorRing().getCoordinates()));
                }
            }
        }
        return found;
    }

    /** Keeps the best layout that holds. */
    private static final class Best {
        private final List<NestItem> items;
        private final List<StockArea> sheets;
        private final List<SheetArea> areas;
        private final double gapMm;
        private final List<String> without;
        private StockLaid best;
        private double[] score;

        Best(List<NestItem> items, List<StockArea> sheets, List<SheetArea> areas, double gapMm, List<String> without) {
            this.items = items;
            this.sheets = sheets;
            this.areas = areas;
            this.gapMm = gapMm;
            this.without = without;
            this.best = new StockLaid(List.of(), java.util.stream.Stream.concat(without.stream(), items.stream().map(NestItem::id)).toList(), 0);
        }

        void offer(OutlineJob.Found found) {
            List<Placement> placements = new ArrayList<>();
            List<NestItem> placed = new ArrayList<>();
            List<String> out = new ArrayList<>(without);
            double outArea = 0;
            double[] reach = new double[sheets.size()];
            double area = 0;
            for (int i = 0; i < items.size(); i++) {
                NestItem item = items.get(i);
                if (found.bay()[i] < 0) {
                    out.add(item.id());
                    outArea += item.areaMm2();
                    continue;
                }
                Placement placement = new Placement(item.id(), 0, found.bay()[i], found.x()[i], found.y()[i], found.angleDeg()[i]);
                placements.add(placement);
                placed.add(item);
                area += item.areaMm2();
                reach[found.bay()[i]] = Math.max(reach[found.bay()[i]], lying(item, placement).getEnvelopeInternal().getMaxX());
            }
            double price = 0;
            double taken = 0;
            double last = 0;
            for (int sheet = 0; sheet < reach.length; sheet++) {
                if (reach[sheet] > 0) {
                    price += sheets.get(sheet).price() * areas.get(sheet).areaMm2();
                    taken += areas.get(sheet).areaMm2();
                    last = reach[sheet] * areas.get(sheet).heightMm();
                }
            }
            double[] own = {outArea, price, last};
            if ((score == null || Arrays.compare(own, score) < 0) && LayoutCheck.holds(placed, areas, gapMm, placements) && keepsClear(placed, placements)) {
                score = own;
                best = new StockLaid(placements, out, taken == 0 ? 0 : area / taken);
            }
        }

        /** By JTS alone, as drawn: no shape nearer to what is blocked than the gap. */
        private boolean keepsClear(List<NestItem> placed, List<Placement> placements) {
            for (int i = 0; i < placed.size(); i++) {
                Geometry lying = lying(placed.get(i), placements.get(i));
                for (Polygon blocked : sheets.get(placements.get(i).sheet()).blocked()) {
                    Geometry rim = GEOMETRY.createPolygon(blocked.getExteriorRing().getCoordinates());
                    if (rim.distance(lying) < gapMm - LayoutCheck.TOLERANCE_MM
                            || gapMm == 0 && rim.getEnvelopeInternal().intersects(lying.getEnvelopeInternal())
                                    && OverlayNGRobust.overlay(rim, lying, OverlayNG.INTERSECTION).getArea() > 1e-6) {
                        return false;
                    }
                }
            }
            return true;
        }
    }

    private static Geometry lying(NestItem item, Placement placement) {
        AffineTransformation move = AffineTransformation.rotationInstance(Math.toRadians(placement.rotationDeg()));
        move.translate(placement.xMm(), placement.yMm());
        Coordinate[] ring = item.outline().getExteriorRing().getCoordinates();
        return move.transform(GEOMETRY.createPolygon(ring));
    }
}
