package saddlebar.nesting;

import java.math.BigDecimal;
import java.util.Objects;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;

import saddlebar.model.problem.Refusal;

/**
 * A shape to be placed, and how often. The outline is in coordinates of its own; a placement turns it about their (0,0), then moves it.
 * Only the outer ring counts: nothing is placed into a hole.
 *
 * @param id       what placements call it; not empty
 * @param outline  simple closed outline, in mm; copied, and handed out as a copy
 * @param quantity copies wanted, 1 to {@value #MOST}
 * @param turns    the angles at which it may be placed
 * @throws Refusal naming the item, if the outline has no area, crosses itself or has a coordinate that is no number, or if the quantity is
 *                 out of range
 */
public record NestItem(String id, Polygon outline, int quantity, Turns turns) {
    /** A shape narrower than this is a slip of the pen. */
    public static final double SMALLEST_MM = 1e-3;
    /** Copies of one item, at most. */
    public static final int MOST = 100_000;
    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    public NestItem {
        Objects.requireNonNull(outline, "outline");
        Objects.requireNonNull(turns, "turns");
        if (id == null || id.isBlank()) {
            throw new Refusal("item", "it has no id", "give each item an id of its own");
        }
        if (quantity < 1 || quantity > MOST) {
            throw new Refusal("item " + id, "its quantity is " + quantity, "give a whole number from 1 to " + MOST);
        }
        outline = plainOutline(id, outline);
    }

    public static NestItem of(String id, LinearRing outline, int quantity, Turns turns) {
        return new NestItem(id, GEOMETRY.createPolygon(outline.getCoordinates()), quantity, turns);
    }

    /** A rectangle whose own origin is its top left. */
    public static NestItem rectangle(String id, double widthMm, double heightMm, int quantity, Turns turns) {
        Coordinate[] corners = {new Coordinate(0, 0), new Coordinate(widthMm, 0), new Coordinate(widthMm, heightMm),
                new Coordinate(0, heightMm), new Coordinate(0, 0)};
        return new NestItem(id, GEOMETRY.createPolygon(corners), quantity, turns);
    }

    @Override
    public Polygon outline() {
        return (Polygon) outline.copy();
    }

    /** Area of one copy in mm2. */
    public double areaMm2() {
        return outline.getArea();
    }

    /** Is it a rectangle with sides along x and y? */
    public boolean isRectangle() {
        return outline.isRectangle();
    }

    /** Width of the outline as drawn. */
    public double widthMm() {
        return outline.getEnvelopeInternal().getWidth();
    }

    /** Height of the outline as drawn. */
    public double heightMm() {
        return outline.getEnvelopeInternal().getHeight();
    }

    /** Width and height of the outline as drawn, as people write them. */
    public String sizeText() {
        return text(widthMm()) + " x " + text(heightMm()) + " mm";
    }

    /** A length without needless digits. */
    static String text(double mm) {
        return Double.isFinite(mm) ? BigDecimal.valueOf(Math.rint(mm * 1e6) / 1e6).stripTrailingZeros().toPlainString() : Double.toString(mm);
    }

    private static Polygon plainOutline(String id, Polygon outline) {
        String where = "item " + id;
        Polygon plain = GEOMETRY.createPolygon(copyOf(where, outline.getExteriorRing().getCoordinates()));
        Envelope box = plain.getEnvelopeInternal();
        if (box.getWidth() < SMALLEST_MM || box.getHeight() < SMALLEST_MM) {
            throw new Refusal(where, "its size is " + text(box.getWidth()) + " x " + text(box.getHeight()) + " mm",
                    "give a width and a height of at least " + text(SMALLEST_MM) + " mm");
        }
        if (!plain.isValid()) {
            throw new Refusal(where, "its outline crosses or touches itself", "draw it as one closed line that never meets itself");
        }
        return plain;
    }

    private static Coordinate[] copyOf(String where, Coordinate[] ring) {
        Coordinate[] copy = new Coordinate[ring.length];
        for (int i = 0; i < ring.length; i++) {
            double x = ring[i].getX();
            double y = ring[i].getY();
            if (!(Math.abs(x) <= SheetArea.LARGEST_MM && Math.abs(y) <= SheetArea.LARGEST_MM)) {
                throw new Refusal(where, "its outline has the point (" + text(x) + ", " + text(y) + ")",
                        "give coordinates that are numbers of at most " + text(SheetArea.LARGEST_MM) + " mm");
            }
            copy[i] = new Coordinate(x + 0.0, y + 0.0);
        }
        return copy;
    }
}
