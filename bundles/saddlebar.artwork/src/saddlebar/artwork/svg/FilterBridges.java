package saddlebar.artwork.svg;

import java.awt.geom.Rectangle2D;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;

import org.apache.batik.bridge.Bridge;
import org.apache.batik.bridge.BridgeContext;
import org.apache.batik.bridge.SVGFeConvolveMatrixElementBridge;
import org.apache.batik.bridge.SVGFeDiffuseLightingElementBridge;
import org.apache.batik.bridge.SVGFeGaussianBlurElementBridge;
import org.apache.batik.bridge.SVGFeImageElementBridge;
import org.apache.batik.bridge.SVGFeMorphologyElementBridge;
import org.apache.batik.bridge.SVGFeOffsetElementBridge;
import org.apache.batik.bridge.SVGFeSpecularLightingElementBridge;
import org.apache.batik.bridge.SVGUtilities;
import org.apache.batik.ext.awt.image.PadMode;
import org.apache.batik.ext.awt.image.renderable.Filter;
import org.apache.batik.ext.awt.image.renderable.PadRable8Bit;
import org.apache.batik.gvt.GraphicsNode;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * What filters do otherwise than in Batik: convolutions of our own, and lengths of primitives that are shares of the filtered thing's box
 * (primitiveUnits="objectBoundingBox", SVG 1.1, 15.5), which Batik takes for user units.
 */
final class FilterBridges {
    private static final Rectangle2D EVERYWHERE = new Rectangle2D.Double(-1e9, -1e9, 2e9, 2e9);

    private FilterBridges() {
    }

    static void register(BridgeContext context) {
        context.putBridge(new Convolve());
        context.putBridge(new PictureInput());
        context.putBridge(new Blur());
        context.putBridge(new Offset());
        context.putBridge(new Morphology());
        context.putBridge(new Diffuse());
        context.putBridge(new Specular());
    }

    /** Runs with lengths in user units; afterwards the attributes are as written. */
    private static Filter inUserUnits(Element primitive, GraphicsNode node, BridgeContext context, Supplier<Filter> made) {
        boolean shares = primitive.getParentNode() instanceof Element filter
                && "objectBoundingBox".equals(SVGUtilities.getChainableAttributeNS(filter, null, "primitiveUnits", context));
        Rectangle2D box = shares ? node.getGeometryBounds() : null;
        if (box == null || box.isEmpty()) {
            return made.get();
        }
        Map<Element, Map<String, String>> before = new LinkedHashMap<>();
        scale(primitive, box, before);
        for (Node child = primitive.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element light) {
                scale(light, box, before);
            }
        }
        try {
            return made.get();
        } finally {
            before.forEach((element, values) -> values.forEach((name, value) -> element.setAttributeNS(null, name, value)));
        }
    }

    private static void scale(Element element, Rectangle2D box, Map<Element, Map<String, String>> before) {
        boolean light = element.getLocalName().endsWith("Light");
        double depth = Math.hypot(box.getWidth(), box.getHeight()) / Math.sqrt(2);
        scale(element, "stdDeviation", 0, box.getWidth(), box.getHeight(), before);
        scale(element, "radius", 0, box.getWidth(), box.getHeight(), before);
        scale(element, "dx", 0, box.getWidth(), box.getWidth(), before);
        scale(element, "dy", 0, box.getHeight(), box.getHeight(), before);
        if (light) {
            scale(element, "x", box.getX(), box.getWidth(), box.getWidth(), before);
            scale(element, "y", box.getY(), box.getHeight(), box.getHeight(), before);
            scale(element, "z", 0, depth, depth, before);
            scale(element, "pointsAtX", box.getX(), box.getWidth(), box.getWidth(), before);
            scale(element, "pointsAtY", box.getY(), box.getHeight(), box.getHeight(), before);
            scale(element, "pointsAtZ", 0, depth, depth, before);
        }
    }

    /** One number, or two of which the second is along the other side. */
    private static void scale(Element element, String name, double start, double first, double second, Map<Element, Map<String, String>> before) {
        String value = Source.attribute(element, name).strip();
        if (value.isEmpty()) {
            return;
        }
        String[] numbers = value.split("[\\s,]+");
        try {
            String one = ModernStyle.plain(start + first * Double.parseDouble(numbers[0]));
            String two = ModernStyle.plain(start + second * Double.parseDouble(numbers[numbers.length - 1]));
            before.computeIfAbsent(element, key -> new LinkedHashMap<>()).put(name, Source.attribute(element, name));
            element.setAttributeNS(null, name, numbers.length == 1 && first == second ? one : one + " " + two);
        } catch (NumberFormatException e) {
            return; // told by Batik when it reads it
        }
    }

    private static final class Blur extends SVGFeGaussianBlurElementBridge {
        @Override
        public Bridge getInstance() {
            return new Blur();
        }

        @Override
        public Filter createFilter(BridgeContext context, Element primitive, Element filtered, GraphicsNode node, Filter input, Rectangle2D region, Map known) {
            return inUserUnits(primitive, node, context, () -> super.createFilter(context, primitive, filtered, node, input, region, known));
        }
    }

    private static final class Offset extends SVGFeOffsetElementBridge {
        @Override
        public Bridge getInstance() {
            return new Offset();
        }

        @Override
        public Filter createFilter(BridgeContext context, Element primitive, Element filtered, GraphicsNode node, Filter input, Rectangle2D region, Map known) {
            return inUserUnits(primitive, node, context, () -> super.createFilter(context, primitive, filtered, node, input, region, known));
        }
    }

    private static final class Morphology extends SVGFeMorphologyElementBridge {
        @Override
        public Bridge getInstance() {
            return new Morphology();
        }

        @Override
        public Filter createFilter(BridgeContext context, Element primitive, Element filtered, GraphicsNode node, Filter input, Rectangle2D region, Map known) {
            return inUserUnits(primitive, node, context, () -> super.createFilter(context, primitive, filtered, node, input, region, known));
        }
    }

    private static final class Diffuse extends SVGFeDiffuseLightingElementBridge {
        @Override
        public Bridge getInstance() {
            return new Diffuse();
        }

        @Override
        public Filter createFilter(BridgeContext context, Element primitive, Element filtered, GraphicsNode node, Filter input, Rectangle2D region, Map known) {
            return inUserUnits(primitive, node, context, () -> super.createFilter(context, primitive, filtered, node, input, region, known));
        }
    }

    private static final class Specular extends SVGFeSpecularLightingElementBridge {
        @Override
        public Bridge getInstance() {
            return new Specular();
        }

        @Override
        public Filter createFilter(BridgeContext context, Element primitive, Element filtered, GraphicsNode node, Filter input, Rectangle2D region, Map known) {
            return inUserUnits(primitive, node, context, () -> super.createFilter(context, primitive, filtered, node, input, region, known));
        }
    }

    /** A picture file in a filter is placed as an image element would be, whatever the primitive's units; a part of the drawing is left to Batik. */
    private static final class PictureInput extends SVGFeImageElementBridge {
        @Override
        public Bridge getInstance() {
            return new PictureInput();
        }

        @Override
        public Filter createFilter(BridgeContext context, Element primitive, Element filtered, GraphicsNode node, Filter input, Rectangle2D region, Map known) {
            String link = primitive.getAttributeNS(Source.XLINK, "href");
            if (link.indexOf('#') >= 0 && !link.startsWith("data:")) {
                return super.createFilter(context, primitive, filtered, node, input, region, known);
            }
            Rectangle2D part = SVGUtilities.convertFilterPrimitiveRegion(primitive, filtered, node, region, EVERYWHERE, context);
            Element image = primitive.getOwnerDocument().createElementNS(Source.SVG, "image");
            Source.put(image, Source.Note.LINE, Integer.toString(Source.line(primitive)));
            image.setAttributeNS(Source.XLINK, "xlink:href", link);
            image.setAttributeNS(null, "preserveAspectRatio", Source.attribute(primitive, "preserveAspectRatio"));
            image.setAttributeNS(null, "x", ModernStyle.plain(part.getX()));
            image.setAttributeNS(null, "y", ModernStyle.plain(part.getY()));
            image.setAttributeNS(null, "width", ModernStyle.plain(part.getWidth()));
            image.setAttributeNS(null, "height", ModernStyle.plain(part.getHeight()));
            Element group = primitive.getOwnerDocument().createElementNS(Source.SVG, "g");
            group.appendChild(image);
            Filter picture = context.getGVTBuilder().build(context, group).getGraphicsNodeRable(true);
            handleColorInterpolationFilters(picture, primitive);
            Filter result = new PadRable8Bit(picture, part.createIntersection(region), PadMode.ZERO_PAD);
            updateFilterMap(primitive, result, known);
            return result;
        }
    }

    private static final class Convolve extends SVGFeConvolveMatrixElementBridge {
        @Override
        public Bridge getInstance() {
            return new Convolve();
        }

        @Override
        public Filter createFilter(BridgeContext context, Element primitive, Element filtered, GraphicsNode node, Filter input, Rectangle2D region, Map known) {
            int[] order = convertOrder(primitive, context);
            float[] weights = convertKernelMatrix(primitive, order, context);
            float divisor = convertDivisor(primitive, weights, context);
            int[] target = convertTarget(primitive, order, context);
            Filter in = getIn(primitive, filtered, node, input, known, context);
            if (in == null) {
                return null; // as Batik: the filter is off
            }
            Rectangle2D part = SVGUtilities.convertFilterPrimitiveRegion(primitive, filtered, node, in.getBounds2D(), region, context);
            for (int i = 0; i < weights.length; i++) {
                weights[i] /= divisor;
            }
            Convolution convolution = new Convolution(new PadRable8Bit(in, part, PadMode.ZERO_PAD),
                    new Convolution.Kernel(order[0], order[1], weights, target[0], target[1], convertNumber(primitive, "bias", 0, context),
                            convertEdgeMode(primitive, context), convertKernelUnitLength(primitive, context), convertPreserveAlpha(primitive, context)));
            handleColorInterpolationFilters(convolution, primitive);
            Filter result = new PadRable8Bit(convolution, part, PadMode.ZERO_PAD);
            updateFilterMap(primitive, result, known);
            return result;
        }
    }
}
