package saddlebar.artwork.svg;

import java.awt.GraphicsEnvironment;
import java.util.Collections;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

import org.apache.batik.anim.dom.SVGOMDocument;
import org.apache.batik.bridge.CSSUtilities;
import org.apache.batik.css.engine.CSSStylableElement;
import org.apache.batik.css.engine.SVGCSSEngine;
import org.apache.batik.css.engine.StyleMap;
import org.apache.batik.css.engine.value.FloatValue;
import org.apache.batik.css.engine.value.Value;
import org.apache.batik.css.engine.value.ValueConstants;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.css.CSSPrimitiveValue;
import org.w3c.dom.css.CSSValue;

import saddlebar.model.problem.Refusal;

/**
 * Follows every reference with all styles applied: what is not there or of another kind is told and taken out, circles are cut, and all copies
 * are counted before one is made. On the way hidden groups are noted and shown to Batik, so that they can be asked for by name, and fonts are
 * looked for.
 */
final class References {
    private static final int MOST_DEPTH = 800;
    /** Dashes of a line beyond this share of the pattern before its start are a trap for whoever counts them one by one. */
    private static final double MOST_DASH_PERIODS = 1e5;
    private static final Map<Integer, Set<String>> KINDS = Map.of(SVGCSSEngine.FILL_INDEX, Set.of("linearGradient", "radialGradient", "pattern"),
            SVGCSSEngine.STROKE_INDEX, Set.of("linearGradient", "radialGradient", "pattern"), SVGCSSEngine.CLIP_PATH_INDEX, Set.of("clipPath"),
            SVGCSSEngine.MASK_INDEX, Set.of("mask"), SVGCSSEngine.FILTER_INDEX, Set.of("filter"), SVGCSSEngine.MARKER_START_INDEX, Set.of("marker"),
            SVGCSSEngine.MARKER_MID_INDEX, Set.of("marker"), SVGCSSEngine.MARKER_END_INDEX, Set.of("marker"));
    private static final List<Integer> PROPERTIES = KINDS.keySet().stream().sorted().toList();
    private static final Set<String> NOT_DRAWN_HERE = Set.of("defs", "symbol", "pattern", "mask", "clipPath", "marker");
    private static final Set<String> GENERIC = Set.of("serif", "sans-serif", "monospace", "cursive", "fantasy", "system-ui", "inherit");

    private final SVGOMDocument document;
    private final Findings findings;
    private final Map<Element, Long> sizes = new IdentityHashMap<>();
    private final Set<Element> open = Collections.newSetFromMap(new IdentityHashMap<>());
    private final Set<String> fontsTold = new HashSet<>();
    private Set<String> fonts;

    References(SVGOMDocument document, Findings findings) {
        this.document = document;
        this.findings = findings;
    }

    void follow() {
        hiddenIn(document.getDocumentElement());
        long all = visit(document.getDocumentElement(), 0);
        if (all > SvgBuilder.MOST_NODES) {
            throw new Refusal(findings.fileName(), "with all copies the drawing has more than " + SvgBuilder.MOST_NODES + " elements",
                    "draw what repeats as a pattern or a picture, or split the drawing");
        }
    }

    /** How many drawn things an element stands for, copies counted. */
    private long visit(Element element, int depth) {
        Long known = sizes.get(element);
        if (known != null) {
            return known;
        }
        if (depth > MOST_DEPTH) {
            throw new Refusal(findings.where(element), "copies of copies and groups lie more than " + MOST_DEPTH + " deep", "take them apart");
        }
        open.add(element);
        style(element, depth);
        long size = 1;
        String link = element.getAttributeNS(Source.XLINK, "href");
        if (!link.isEmpty() && !"image".equals(element.getLocalName()) && !"a".equals(element.getLocalName())) {
            Element target = SvgContext.target(document, link);
            if (target != null) {
                if (open.contains(target)) {
                    findings.warn("art-reference", element, "circle", "it uses " + link + ", of which it is itself a part; it is left out");
                    element.removeAttributeNS(Source.XLINK, "href");
                    if ("use".equals(element.getLocalName())) {
                        element.getParentNode().removeChild(element);
                        open.remove(element);
                        return 0;
                    }
                } else {
                    long copies = visit(target, depth + 1);
                    size += "use".equals(element.getLocalName()) ? copies : 0;
                }
            }
        }
        Node child = element.getFirstChild();
        while (child != null) {
            Node next = child.getNextSibling(); // the child may be taken out
            if (child instanceof Element one) {
                size = Math.min(Long.MAX_VALUE / 4, size + visit(one, depth + 1));
            }
            child = next;
        }
        open.remove(element);
        sizes.put(element, size);
        return size;
    }

    private void style(Element element, int depth) {
        if (!(element instanceof CSSStylableElement)) {
            return;
        }
        for (int property : PROPERTIES) {
            Value value = CSSUtilities.getComputedStyle(element, property);
            boolean list = value.getCssValueType() == CSSValue.CSS_VALUE_LIST;
            Value first = list ? value.item(0) : value;
            if (first.getCssValueType() == CSSValue.CSS_PRIMITIVE_VALUE && first.getPrimitiveType() == CSSPrimitiveValue.CSS_URI) {
                reference(element, property, first.getStringValue(), list, depth);
            }
        }
        dashes(element);
        String kind = element.getLocalName();
        if ("text".equals(kind) || "tspan".equals(kind) || "textPath".equals(kind)) {
            font(element);
        }
    }

    private void reference(Element element, int property, String uri, boolean hasOther, int depth) {
        Element target = SvgContext.target(document, uri);
        String name = ((SVGOMDocument) element.getOwnerDocument()).getCSSEngine().getPropertyName(property);
        String shown = uri.substring(uri.indexOf('#') + 1);
        if (target == null || !KINDS.get(property).contains(target.getLocalName())) {
            if (!hasOther) { // else the colour beside it is meant for just this
                findings.warn("art-reference", element, name, name + " refers to #" + shown
                        + (target == null ? ", which is not in the drawing" : ", which is a <" + target.getLocalName() + ">") + "; it is drawn without that");
                none(element, property, name);
            }
        } else if (open.contains(target)) {
            findings.warn("art-reference", element, "circle", name + " refers to #" + shown + ", of which it is itself a part; it is drawn without that");
            none(element, property, name);
        } else {
            visit(target, depth + 1);
        }
    }

    /** Takes a property out, in this element and in all copies that will be made of it. */
    private static void none(Element element, int property, String name) {
        String style = Source.attribute(element, "style");
        element.setAttributeNS(null, "style", (style.isEmpty() ? "" : style + ";") + name + ":none !important");
        put(element, property, ValueConstants.NONE_VALUE);
    }

    private static void put(Element element, int property, Value value) {
        StyleMap map = ((CSSStylableElement) element).getComputedStyleMap(null);
        if (map != null) {
            map.putValue(property, value);
            map.putComputed(property, true);
        }
    }

    /** Notes the hidden ones among the groups that are drawn where they stand; outer ones first, since what is inside inherits. */
    private static void hiddenIn(Element element) {
        if (NOT_DRAWN_HERE.contains(element.getLocalName())) {
            return;
        }
        if ("g".equals(element.getLocalName()) && element instanceof CSSStylableElement) {
            hidden(element);
        }
        for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element inner) {
                hiddenIn(inner);
            }
        }
    }

    private static void hidden(Element group) {
        boolean off = !CSSUtilities.convertDisplay(group);
        if (off) {
            put(group, SVGCSSEngine.DISPLAY_INDEX, ValueConstants.INLINE_VALUE);
        }
        boolean parentSeen = !(group.getParentNode() instanceof CSSStylableElement) || CSSUtilities.convertVisibility((Element) group.getParentNode());
        if (!CSSUtilities.convertVisibility(group) && parentSeen && !showsAgain(group)) {
            off = true;
            put(group, SVGCSSEngine.VISIBILITY_INDEX, ValueConstants.VISIBLE_VALUE);
        }
        if (off) {
            Source.put(group, Source.Note.HIDDEN, "true");
        }
    }

    /** Whether something inside an invisible group says that it is to be seen all the same. */
    private static boolean showsAgain(Element group) {
        for (Node child = group.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element inner && (!Source.attribute(inner, "visibility").isEmpty()
                    || Source.attribute(inner, "style").contains("visibility") || showsAgain(inner))) {
                return true;
            }
        }
        return false;
    }

    private void dashes(Element element) {
        Value dashes = CSSUtilities.getComputedStyle(element, SVGCSSEngine.STROKE_DASHARRAY_INDEX);
        if (dashes.getCssValueType() != CSSValue.CSS_VALUE_LIST) {
            return;
        }
        double period = 0;
        for (int i = 0; i < dashes.getLength(); i++) {
            period += dashes.item(i).getFloatValue();
        }
        double offset = CSSUtilities.getComputedStyle(element, SVGCSSEngine.STROKE_DASHOFFSET_INDEX).getFloatValue();
        if (period > 0 && Math.abs(offset) / period > MOST_DASH_PERIODS) {
            findings.warn("art-style", element, "dashes", "its dashes begin far away; they begin at the start of the line instead");
            put(element, SVGCSSEngine.STROKE_DASHOFFSET_INDEX, new FloatValue(CSSPrimitiveValue.CSS_NUMBER, 0));
        }
    }

    private void font(Element element) {
        boolean words = false;
        for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
            words |= child.getNodeType() == Node.TEXT_NODE && !child.getNodeValue().isBlank();
        }
        if (!words) {
            return;
        }
        Value families = CSSUtilities.getComputedStyle(element, SVGCSSEngine.FONT_FAMILY_INDEX);
        String wanted = null;
        String taken = "the platform's sans-serif font";
        int count = families.getCssValueType() == CSSValue.CSS_VALUE_LIST ? families.getLength() : 0;
        for (int i = 0; i < count; i++) {
            String name = families.item(i).getStringValue();
            boolean there = GENERIC.contains(name.toLowerCase(Locale.ROOT)) || isInstalled(name);
            if (there) {
                taken = GENERIC.contains(name.toLowerCase(Locale.ROOT)) ? "the platform's " + name.toLowerCase(Locale.ROOT) + " font" : name;
                break;
            }
            wanted = wanted == null ? name : wanted;
        }
        if (wanted != null && fontsTold.add(wanted)) {
            findings.warn("art-font", element, wanted, "the font " + wanted + " is not installed, so its letters are drawn in " + taken
                    + "; install it, or turn the text into paths before exporting");
        }
    }

    private boolean isInstalled(String family) {
        if (fonts == null) {
            fonts = new HashSet<>();
            for (String name : GraphicsEnvironment.getLocalGraphicsEnvironment().getAvailableFontFamilyNames(Locale.ROOT)) {
                fonts.add(name.toLowerCase(Locale.ROOT));
            }
        }
        return fonts.contains(family.toLowerCase(Locale.ROOT));
    }
}
