package saddlebar.artwork.svg;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

import org.apache.batik.anim.dom.SVGOMDocument;
import org.apache.batik.parser.AWTTransformProducer;
import org.apache.batik.parser.ParseException;
import org.w3c.dom.Attr;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

import saddlebar.model.problem.Refusal;

/**
 * Goes once through the document and takes out, or mends, what Batik would stumble over; each is told. Numbers that are none (NaN, infinite)
 * are refused: nobody knows where such a thing was meant to be.
 */
final class SvgTidy {
    private static final Set<String> NUMBERS = Set.of("x", "y", "x1", "y1", "x2", "y2", "cx", "cy", "r", "rx", "ry", "fx", "fy", "width", "height", "dx",
            "dy", "offset", "refX", "refY", "markerWidth", "markerHeight", "viewBox", "transform", "gradientTransform", "patternTransform", "stroke-width",
            "font-size", "stroke-dasharray", "stroke-dashoffset", "startOffset", "style", "opacity");
    private static final Pattern NO_NUMBER = Pattern.compile("(^|[\\s,(:;])[-+]?(NaN|nan|Infinity|inf)($|[\\s,);%a-z])");
    private static final Pattern ASPECT = Pattern.compile("\\s*(defer\\s+)?(none|x(Min|Mid|Max)Y(Min|Mid|Max))(\\s+(meet|slice))?\\s*");
    private static final Pattern NOT_HERE = Pattern.compile("(?i)(DOM|Animation|Animated|Script|Event|Interactivity|dynamic|Cursor|Hyperlinking|"
            + "Extensibility)");
    private static final Set<String> LOCAL_LINKS = Set.of("use", "linearGradient", "radialGradient", "pattern", "filter", "textPath", "tref", "glyphRef",
            "altGlyph");

    private final SVGOMDocument document;
    private final Findings findings;
    private final StyleTidy style;

    SvgTidy(SVGOMDocument document, SvgContext context, Findings findings) {
        this.document = document;
        this.findings = findings;
        this.style = new StyleTidy(document, context, findings);
    }

    void tidy() {
        List<Element> all = new ArrayList<>();
        gather(document.getDocumentElement(), all);
        style.sheets(all.stream().filter(element -> Source.isSvg(element, "style")).toList());
        for (Element element : all) {
            numbers(element);
            style.element(element);
            transforms(element);
            aspect(element);
            filters(element);
            conditions(element);
            links(element);
        }
    }

    static void gather(Element element, List<Element> all) {
        all.add(element);
        for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element inner) {
                gather(inner, all);
            }
        }
    }

    private void numbers(Element element) {
        for (Attr attribute : StyleTidy.attributes(element)) {
            if (NUMBERS.contains(attribute.getName()) && NO_NUMBER.matcher(attribute.getValue()).find()) {
                throw noNumber(element, attribute.getName());
            }
        }
    }

    private Refusal noNumber(Element element, String attribute) {
        return new Refusal(findings.where(element), Source.tag(element) + ": " + attribute + " holds a number that is none (NaN or infinite)",
                "delete or redraw this element and export again");
    }

    /** What path data is told by: broken numbers refuse the drawing, other faults are warned of. */
    void pathFault(Element element, PathData.Fault fault) {
        String attribute = Source.isSvg(element, "path") ? "d" : "points";
        if (fault.broken()) {
            throw noNumber(element, attribute);
        }
        findings.warn("art-path", element, "", attribute + " is broken at character " + fault.character() + " (" + fault.what()
                + "); it is drawn up to there, so redraw it if something is missing");
    }

    private void transforms(Element element) {
        for (String name : List.of("transform", "gradientTransform", "patternTransform")) {
            String value = Source.attribute(element, name);
            if (value.isBlank() || "none".equals(value.strip())) {
                element.removeAttributeNS(null, name);
                continue;
            }
            try {
                AWTTransformProducer.createAffineTransform(value);
            } catch (ParseException e) {
                findings.warn("art-attribute", element, name, name + "=\"" + value + "\" cannot be read and is left out, so its place may be wrong");
                element.removeAttributeNS(null, name);
            }
        }
        String origin = Source.attribute(element, "transform-origin");
        if (!origin.isBlank() && !Source.attribute(element, "transform").isEmpty()) {
            if (origin.strip().matches("[-+.0-9]+(px)?[\\s,]+[-+.0-9]+(px)?")) {
                String[] at = origin.strip().replace("px", "").split("[\\s,]+");
                element.setAttributeNS(null, "transform", "translate(" + at[0] + "," + at[1] + ") " + Source.attribute(element, "transform") + " translate("
                        + ModernStyle.plain(-Double.parseDouble(at[0])) + "," + ModernStyle.plain(-Double.parseDouble(at[1])) + ")");
            } else {
                findings.warn("art-attribute", element, "transform-origin", "transform-origin=\"" + origin + "\" is not followed; its place may be wrong");
            }
            element.removeAttributeNS(null, "transform-origin");
        }
    }

    private void aspect(Element element) {
        String value = Source.attribute(element, "preserveAspectRatio");
        if (!value.isEmpty() && !ASPECT.matcher(value).matches()) {
            findings.warn("art-attribute", element, "preserveAspectRatio", "preserveAspectRatio=\"" + value + "\" cannot be read and is left out");
            element.removeAttributeNS(null, "preserveAspectRatio");
        }
        String box = Source.attribute(element, "viewBox");
        if (!box.isEmpty() && element != document.getDocumentElement() && SvgSize.viewBox(box) == null) {
            findings.warn("art-attribute", element, "viewBox", "viewBox=\"" + box + "\" cannot be read and is left out");
            element.removeAttributeNS(null, "viewBox");
        }
    }

    /** The seed of a turbulence is cut to a whole number (SVG 1.1, 15.24), and marker is a word of style sheets and no attribute (11.6.2). */
    private static void filters(Element element) {
        element.removeAttributeNS(null, "marker");
        String seed = Source.attribute(element, "seed").strip();
        if (!seed.isEmpty() && "feTurbulence".equals(element.getLocalName()) && seed.matches("[-+]?([0-9]+\\.?[0-9]*|\\.[0-9]+)([eE][-+]?[0-9]+)?")) {
            element.setAttributeNS(null, "seed", Integer.toString((int) Double.parseDouble(seed)));
        }
    }

    /** What a still drawing cannot do is not promised to it (SVG 1.1, appendix I). */
    private static void conditions(Element element) {
        String wanted = Source.attribute(element, "requiredFeatures");
        if (NOT_HERE.matcher(wanted).find()) {
            element.setAttributeNS(null, "requiredFeatures", "urn:saddlebar:none");
        }
    }

    private void links(Element element) {
        String kind = element.getLocalName();
        String link = element.getAttributeNS(Source.XLINK, "href").strip();
        if (!LOCAL_LINKS.contains(kind)) {
            return;
        }
        if (link.isEmpty()) {
            if ("use".equals(kind)) {
                findings.warn("art-reference", element, "use", "it copies nothing, since it names nothing");
                remove(element);
            }
            return;
        }
        if (SvgContext.target(document, link) != null) {
            return;
        }
        boolean outside = !link.startsWith("#");
        findings.warn(outside ? "art-outside" : "art-reference", element, kind,
                outside
                        ? "it uses \"" + link + "\" of another file, which is not opened; put it into the drawing"
                        : "it uses " + link + ", which is not in the drawing; what it stands for is missing");
        element.removeAttributeNS(Source.XLINK, "href");
        if ("use".equals(kind) || "tref".equals(kind)) {
            remove(element);
        }
    }

    private static void remove(Element element) {
        if (element.getParentNode() != null) {
            element.getParentNode().removeChild(element);
        }
    }
}
