package saddlebar.artwork.svg;

import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.Optional;

import org.apache.batik.anim.dom.SVGOMUseElement;
import org.apache.batik.bridge.Bridge;
import org.apache.batik.bridge.BridgeContext;
import org.apache.batik.bridge.CSSUtilities;
import org.apache.batik.bridge.GVTBuilder;
import org.apache.batik.bridge.SVGClipPathElementBridge;
import org.apache.batik.bridge.SVGImageElementBridge;
import org.apache.batik.bridge.SVGMaskElementBridge;
import org.apache.batik.bridge.SVGPathElementBridge;
import org.apache.batik.bridge.SVGPatternElementBridge;
import org.apache.batik.bridge.SVGPolygonElementBridge;
import org.apache.batik.bridge.SVGPolylineElementBridge;
import org.apache.batik.bridge.SVGUtilities;
import org.apache.batik.css.engine.SVGCSSEngine;
import org.apache.batik.ext.awt.image.renderable.ClipRable;
import org.apache.batik.ext.awt.image.renderable.ClipRable8Bit;
import org.apache.batik.gvt.CompositeGraphicsNode;
import org.apache.batik.gvt.GraphicsNode;
import org.apache.batik.gvt.PatternPaint;
import org.apache.batik.gvt.RootGraphicsNode;
import org.apache.batik.gvt.ShapeNode;
import org.apache.batik.gvt.filter.Mask;
import org.apache.batik.gvt.filter.MaskRable8Bit;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

import saddlebar.artwork.drawing.Picture;
import saddlebar.artwork.svg.PathData.Read;

/**
 * What we do otherwise than Batik: path data in double precision and with the rule for errors; pictures by our own decoders; patterns that
 * keep their content; clips that cut each other where Batik takes one out of the other, and that hide all where they are empty.
 */
final class Bridges {
    private Bridges() {
    }

    static void register(BridgeContext context, PathFaults faults, Pictures pictures) {
        context.putBridge(new PathBridge(faults));
        context.putBridge(new PolylineBridge(faults));
        context.putBridge(new PolygonBridge(faults));
        context.putBridge(new ImageBridge(pictures));
        context.putBridge(new PatternBridge());
        context.putBridge(new ClipBridge());
        context.putBridge(new MaskBridge());
        FilterBridges.register(context);
    }

    /** Who is told of faults in path data. */
    interface PathFaults {
        void found(Element element, PathData.Fault fault);
    }

    private static void shape(ShapeNode node, Element element, Read read, PathFaults faults) {
        node.setShape(read.path());
        read.fault().ifPresent(fault -> faults.found(element, fault));
    }

    private static final class PathBridge extends SVGPathElementBridge {
        private final PathFaults faults;

        PathBridge(PathFaults faults) {
            this.faults = faults;
        }

        @Override
        public Bridge getInstance() {
            return new PathBridge(faults);
        }

        @Override
        protected void buildShape(BridgeContext context, Element element, ShapeNode node) {
            shape(node, element, PathData.parse(Source.attribute(element, "d"), CSSUtilities.convertFillRule(element)), faults);
        }
    }

    private static final class PolylineBridge extends SVGPolylineElementBridge {
        private final PathFaults faults;

        PolylineBridge(PathFaults faults) {
            this.faults = faults;
        }

        @Override
        public Bridge getInstance() {
            return new PolylineBridge(faults);
        }

        @Override
        protected void buildShape(BridgeContext context, Element element, ShapeNode node) {
            shape(node, element, PathData.points(Source.attribute(element, "points"), false, CSSUtilities.convertFillRule(element)), faults);
        }
    }

    private static final class PolygonBridge extends SVGPolygonElementBridge {
        private final PathFaults faults;

        PolygonBridge(PathFaults faults) {
            this.faults = faults;
        }

        @Override
        public Bridge getInstance() {
            return new PolygonBridge(faults);
        }

        @Override
        protected void buildShape(BridgeContext context, Element element, ShapeNode node) {
            shape(node, element, PathData.points(Source.attribute(element, "points"), true, CSSUtilities.convertFillRule(element)), faults);
        }
    }

    private static final class ImageBridge extends SVGImageElementBridge {
        private final Pictures pictures;

        ImageBridge(Pictures pictures) {
            this.pictures = pictures;
        }

        @Override
        public Bridge getInstance() {
            return new ImageBridge(pictures);
        }

        @Override
        protected GraphicsNode buildImageGraphicsNode(BridgeContext context, Element element) {
            Optional<Picture> picture = pictures.of(element, element.getAttributeNS(Source.XLINK, "href"));
            if (picture.isEmpty()) {
                return empty();
            }
            if (Source.attribute(element, "width").isBlank() && Source.attribute(element, "height").isBlank()) {
                element.setAttributeNS(null, "width", Integer.toString(picture.get().widthPx())); // SVG 2: as large as it is
                element.setAttributeNS(null, "height", Integer.toString(picture.get().heightPx()));
            }
            Rectangle2D bounds = getImageBounds(context, element);
            if (bounds.isEmpty()) {
                return empty();
            }
            boolean smooth = !CSSUtilities.getComputedStyle(element, SVGCSSEngine.IMAGE_RENDERING_INDEX).getStringValue().equalsIgnoreCase("optimizeSpeed");
            PhotoNode node = new PhotoNode(picture.get(), smooth);
            initializeViewport(context, element, node, new float[] {0, 0, picture.get().widthPx(), picture.get().heightPx()}, bounds);
            Frame frame = new Frame(bounds);
            frame.getChildren().add(node);
            return frame;
        }

        private static GraphicsNode empty() {
            ShapeNode nothing = new ShapeNode();
            nothing.setShape(new Rectangle2D.Double());
            return nothing;
        }
    }

    /** Where a picture is placed: its box is the place, however the picture fits in (SVG 1.1, 7.11 and 5.7), and filters count in units of the drawing. */
    private static final class Frame extends CompositeGraphicsNode {
        private final Rectangle2D place;

        Frame(Rectangle2D place) {
            this.place = place;
        }

        @Override
        public Rectangle2D getGeometryBounds() {
            return (Rectangle2D) place.clone();
        }

        @Override
        public Rectangle2D getTransformedGeometryBounds(AffineTransform outer) {
            return outer.createTransformedShape(place).getBounds2D();
        }
    }

    /** A pattern's paint that still knows what it is made of. */
    static final class TilePaint extends PatternPaint {
        private final GraphicsNode content;
        private final AffineTransform contentToTile;
        private final double opacity;

        TilePaint(PatternPaint made, GraphicsNode content, double opacity) {
            super(made.getGraphicsNode(), made.getPatternRect(), made.getOverflow(), made.getPatternTransform());
            this.content = content;
            this.contentToTile = made.getGraphicsNode().getTransform();
            this.opacity = opacity;
        }

        GraphicsNode content() {
            return content;
        }

        AffineTransform contentToTile() {
            return contentToTile == null ? new AffineTransform() : contentToTile;
        }

        double opacity() {
            return opacity;
        }
    }

    private static final class PatternBridge extends SVGPatternElementBridge {
        @Override
        public Bridge getInstance() {
            return new PatternBridge();
        }

        @Override
        public java.awt.Paint createPaint(BridgeContext context, Element pattern, Element painted, GraphicsNode node, float opacity) {
            java.awt.Paint made = super.createPaint(context, pattern, painted, node, opacity);
            Object content = context.getElementData(pattern);
            if (made instanceof PatternPaint tiles && content instanceof RootGraphicsNode root && !tiles.getPatternRect().isEmpty()) {
                return new TilePaint(tiles, root, opacity);
            }
            return null; // a pattern of no size paints nothing (SVG 1.1, 13.3)
        }
    }

    /** A mask with nothing in it lets nothing through (SVG 1.1, 14.4); Batik takes it for none. */
    private static final class MaskBridge extends SVGMaskElementBridge {
        @Override
        public Bridge getInstance() {
            return new MaskBridge();
        }

        @Override
        public Mask createMask(BridgeContext context, Element mask, Element masked, GraphicsNode node) {
            Mask made = super.createMask(context, mask, masked, node);
            if (made != null) {
                return made;
            }
            return new MaskRable8Bit(node.getFilter() == null ? node.getGraphicsNodeRable(true) : node.getFilter(), new CompositeGraphicsNode(),
                    SVGUtilities.convertMaskRegion(mask, masked, node, context));
        }
    }

    private static final class ClipBridge extends SVGClipPathElementBridge {
        @Override
        public ClipRable createClip(BridgeContext context, Element clip, Element clipped, GraphicsNode node) {
            AffineTransform toUser = new AffineTransform();
            String transform = Source.attribute(clip, "transform");
            if (!transform.isEmpty()) {
                toUser = SVGUtilities.convertTransform(clip, "transform", transform, context);
            }
            if ("objectBoundingBox".equals(Source.attribute(clip, "clipPathUnits"))) {
                toUser = SVGUtilities.toObjectBBox(toUser, node);
            }
            Area all = new Area();
            GVTBuilder builder = context.getGVTBuilder();
            for (Node child = clip.getFirstChild(); child != null; child = child.getNextSibling()) {
                if (child instanceof Element element) {
                    GraphicsNode drawn = builder.build(context, element);
                    if (drawn != null && drawn.isVisible() && drawn.getOutline() != null) {
                        all.add(part(element, drawn, toUser));
                    }
                }
            }
            cut(context, clip, all);
            return new ClipRable8Bit(node.getFilter() == null ? node.getGraphicsNodeRable(true) : node.getFilter(), all, true);
        }

        private static Area part(Element element, GraphicsNode drawn, AffineTransform toUser) {
            Element ruled = element;
            if (element instanceof SVGOMUseElement use && use.getCSSFirstChild() instanceof Element shape) {
                ruled = shape;
            }
            AffineTransform placed = new AffineTransform(toUser);
            if (drawn.getTransform() != null) {
                placed.concatenate(drawn.getTransform());
            }
            Path2D outline = new Path2D.Double(drawn.getOutline(), placed);
            outline.setWindingRule(CSSUtilities.convertClipRule(ruled));
            Area area = new Area(outline);
            if (drawn.getClip() != null) {
                area.intersect(new Area(placed.createTransformedShape(drawn.getClip().getClipPath())));
            }
            return area;
        }

        /** What clips the clip itself. */
        private static void cut(BridgeContext context, Element clip, Area area) {
            ShapeNode whole = new ShapeNode();
            whole.setShape(area);
            ClipRable inner = CSSUtilities.convertClipPath(clip, whole, context);
            if (inner != null) {
                area.intersect(new Area(inner.getClipPath()));
            }
        }
    }
}
