package saddlebar.artwork.svg;

import java.awt.geom.AffineTransform;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Set;

import org.apache.batik.dom.svg.SVGOMUseShadowRoot;
import org.apache.batik.bridge.Bridge;
import org.apache.batik.bridge.BridgeContext;
import org.apache.batik.bridge.BridgeException;
import org.apache.batik.bridge.CSSUtilities;
import org.apache.batik.bridge.ErrorConstants;
import org.apache.batik.bridge.GVTBuilder;
import org.apache.batik.bridge.GenericBridge;
import org.apache.batik.bridge.GraphicsNodeBridge;
import org.apache.batik.gvt.CompositeGraphicsNode;
import org.apache.batik.gvt.GraphicsNode;
import org.w3c.dom.Attr;
import org.w3c.dom.Element;

import saddlebar.model.problem.Refusal;

/**
 * Builds Batik's graphics tree so that one faulty element does not cost the drawing: it is told and left out, or drawn without what was
 * wrong. Remembers which element each node was made from.
 */
final class SvgBuilder extends GVTBuilder {
    /** More than this many drawn things, copies counted, is a trap or a texture. */
    static final int MOST_NODES = 500_000;

    private static final Set<String> PLACES = Set.of("x", "y", "x1", "y1", "x2", "y2", "cx", "cy", "fx", "fy", "refX", "refY");
    private static final Set<String> LENGTHS = Set.of("x", "y", "x1", "y1", "x2", "y2", "cx", "cy", "fx", "fy", "refX", "refY", "r", "rx", "ry",
            "width", "height", "markerWidth", "markerHeight");

    private final Findings findings;
    private final Map<GraphicsNode, Element> elements = new IdentityHashMap<>();
    private int built;

    SvgBuilder(Findings findings) {
        this.findings = findings;
    }

    /** The element a node was made from; null if it was made for several. */
    Element element(GraphicsNode node) {
        return elements.get(node);
    }

    /** Called by Batik for copies and for what masks, patterns, clips and markers hold. */
    @Override
    public GraphicsNode build(BridgeContext context, Element element) {
        GraphicsNode node = one(context, element, null);
        if (node == null && element.getParentNode() instanceof SVGOMUseShadowRoot) {
            return new CompositeGraphicsNode(); // a copy of something that is not shown
        }
        return node;
    }

    @Override
    protected void buildGraphicsNode(BridgeContext context, Element element, CompositeGraphicsNode parent) {
        one(context, element, parent);
    }

    private GraphicsNode one(BridgeContext context, Element element, CompositeGraphicsNode parent) {
        Bridge bridge = context.getBridge(element);
        if (bridge instanceof GenericBridge generic) {
            generic.handleElement(context, element);
            handleGenericBridges(context, element);
            return null;
        }
        if (!(bridge instanceof GraphicsNodeBridge graphics) || !graphics.getDisplay(element)) {
            handleGenericBridges(context, element);
            return null;
        }
        if (++built > MOST_NODES) {
            throw new Refusal(findings.where(element), "with all copies the drawing has more than " + MOST_NODES + " elements",
                    "draw what repeats as a pattern or a picture, or split the drawing");
        }
        GraphicsNode node;
        try {
            node = graphics.createGraphicsNode(context, element);
        } catch (Refusal e) {
            throw e;
        } catch (RuntimeException e) { // Batik's own, and whatever its classes stumble over
            findings.warn("art-element", element, e.getClass().getSimpleName(), sentence(element, e) + "; it is left out");
            return null;
        }
        if (node == null) {
            handleGenericBridges(context, element);
            return null;
        }
        elements.put(node, element);
        if (parent != null) {
            parent.getChildren().add(node);
        }
        if (graphics.isComposite()) {
            buildComposite(context, element, (CompositeGraphicsNode) node);
        } else {
            handleGenericBridges(context, element);
        }
        finish(context, graphics, element, node);
        return node;
    }

    /** The step that reads opacity, clip, mask, filter, fill and stroke. */
    private void finish(BridgeContext context, GraphicsNodeBridge bridge, Element element, GraphicsNode node) {
        try {
            bridge.buildGraphicsNode(context, element, node);
        } catch (Refusal e) {
            throw e;
        } catch (RuntimeException e) {
            findings.warn("art-element", element, e.getClass().getSimpleName(), sentence(element, e) + "; it is drawn without that, as far as it can be");
            if (node.getComposite() == null) {
                node.setComposite(CSSUtilities.convertOpacity(element));
            }
        }
    }

    private static String sentence(Element element, RuntimeException e) {
        String code = e instanceof BridgeException known ? known.getCode() : "";
        return switch (code) {
            case ErrorConstants.ERR_ATTRIBUTE_MISSING -> "an attribute that it needs is missing";
            case ErrorConstants.ERR_ATTRIBUTE_VALUE_MALFORMED -> faulty(element, false);
            case ErrorConstants.ERR_LENGTH_NEGATIVE, ErrorConstants.ERR_CSS_LENGTH_NEGATIVE -> faulty(element, true);
            case ErrorConstants.ERR_CSS_URI_BAD_TARGET, ErrorConstants.ERR_URI_BAD_TARGET -> "it refers to something that is not there or of another kind";
            case ErrorConstants.ERR_XLINK_HREF_CIRCULAR_DEPENDENCIES -> "it refers to itself in a circle";
            default -> "it cannot be drawn as it is written";
        };
    }

    /** Batik knows which attribute it was but does not say. */
    private static String faulty(Element element, boolean negative) {
        for (Attr attribute : StyleTidy.attributes(element)) {
            String value = attribute.getValue().strip();
            if (LENGTHS.contains(attribute.getName())) {
                boolean bad = negative
                        ? value.startsWith("-") && !PLACES.contains(attribute.getName())
                        : !value.matches("[-+]?([0-9]+\\.?[0-9]*|\\.[0-9]+)([eE][-+]?[0-9]+)?(%|em|ex|px|in|cm|mm|pt|pc)?");
                if (bad) {
                    return attribute.getName() + "=\"" + value + "\" " + (negative ? "is negative" : "cannot be read");
                }
            }
        }
        return negative ? "a length is negative" : "one of its attributes cannot be read";
    }

    /** Where a node stands in its parent; never null. */
    static AffineTransform transform(GraphicsNode node) {
        AffineTransform transform = node.getTransform();
        return transform == null ? new AffineTransform() : transform;
    }
}
