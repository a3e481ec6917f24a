package saddlebar.artwork.svg;

import java.io.StringReader;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.apache.batik.anim.dom.SVGDOMImplementation;
import org.apache.batik.anim.dom.SVGOMDocument;
import org.apache.batik.util.ParsedURL;
import org.w3c.dom.DOMException;
import org.w3c.dom.Element;
import org.xml.sax.Attributes;
import org.xml.sax.InputSource;
import org.xml.sax.Locator;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;
import org.xml.sax.ext.DefaultHandler2;

import saddlebar.model.problem.Refusal;

/**
 * Makes Batik's document from the events of the parser. Keeps what can be drawn, with the line of each element; leaves out foreign elements,
 * descriptions and whitespace, and tells what is left out if it was meant to be seen or to run.
 */
final class DocumentBuilder extends DefaultHandler2 {
    private static final int MOST_DEPTH = 400;
    private static final int MOST_ELEMENTS = 1_000_000;
    /** Longer than this no program writes a word or a shape for later. */
    private static final int MOST_ENTITY = 16_384;
    private static final Pattern ENTITY_USED = Pattern.compile("[&%]([^#;\\s&%][^;\\s&%]*);");
    private static final Set<String> WITH_TEXT = Set.of("text", "tspan", "tref", "textPath", "style", "altGlyph", "a");
    /** Says something about the drawing, draws nothing. */
    private static final Set<String> SILENT = Set.of("metadata", "desc", "view", "cursor");
    private static final Set<String> ANIMATION = Set.of("animate", "animateColor", "animateMotion", "animateTransform", "animation", "set",
            "discard", "mpath");
    private static final Set<String> KNOWN = Set.of("a", "altGlyph", "altGlyphDef", "altGlyphItem", "circle", "clipPath", "color-profile", "defs",
            "ellipse", "feBlend", "feColorMatrix", "feComponentTransfer", "feComposite", "feConvolveMatrix", "feDiffuseLighting",
            "feDisplacementMap", "feDistantLight", "feFlood", "feFuncA", "feFuncB", "feFuncG", "feFuncR", "feGaussianBlur", "feImage", "feMerge",
            "feMergeNode", "feMorphology", "feOffset", "fePointLight", "feSpecularLighting", "feSpotLight", "feTile", "feTurbulence", "filter",
            "font", "font-face", "font-face-format", "font-face-name", "font-face-src", "font-face-uri", "g", "glyph", "glyphRef", "hkern", "image",
            "line", "linearGradient", "marker", "mask", "missing-glyph", "path", "pattern", "polygon", "polyline", "radialGradient", "rect", "stop",
            "style", "svg", "switch", "symbol", "text", "textPath", "tref", "tspan", "use", "vkern");

    private final Findings findings;
    private final String uri;
    private final Deque<Element> open = new ArrayDeque<>();
    private final StringBuilder text = new StringBuilder();
    private SVGOMDocument document;
    private Locator locator;
    private int eventLine = 1;
    private int skipped;
    private int elements;
    private StringBuilder title;
    private boolean assumedNamespace;

    DocumentBuilder(Findings findings, String uri) {
        this.findings = findings;
        this.uri = uri;
    }

    SVGOMDocument document() {
        if (document == null) {
            throw new Refusal(findings.fileName(), "there is no drawing in it", "export the drawing again as SVG");
        }
        return document;
    }

    int line() {
        return locator == null ? 0 : Math.max(0, locator.getLineNumber());
    }

    @Override
    public void setDocumentLocator(Locator where) {
        locator = where;
    }

    /** A start tag begins where the event before it ended: the locator itself stands at the tag's end. */
    private void ended() {
        eventLine = line();
    }

    @Override
    public void startElement(String namespace, String localName, String qName, Attributes attributes) {
        int line = eventLine;
        ended();
        if (++elements > MOST_ELEMENTS) {
            throw new Refusal(findings.where(line), "the drawing has more than a million elements", "split it into several files");
        }
        if (open.size() + skipped > MOST_DEPTH) {
            throw new Refusal(findings.where(line), "groups lie in groups more than " + MOST_DEPTH + " deep", "take the drawing's groups apart");
        }
        flushText();
        if (skipped > 0) {
            skipped++;
        } else if (document == null) {
            root(namespace, localName, attributes, line);
        } else if (isTitle(namespace, localName)) {
            skipped = 1;
            title = new StringBuilder();
        } else if (!leftOut(namespace, localName, attributes, line)) {
            Element element = document.createElementNS(Source.SVG, localName);
            fill(element, attributes, line);
            open.peek().appendChild(element);
            open.push(element);
        } else {
            skipped = 1;
        }
    }

    private void root(String namespace, String localName, Attributes attributes, int line) {
        if (!"svg".equals(localName) || !namespace.isEmpty() && !Source.SVG.equals(namespace)) {
            throw new Refusal(findings.where(line), "this is XML but no drawing: it begins with <" + localName + ">", "export the drawing as SVG");
        }
        assumedNamespace = namespace.isEmpty();
        document = (SVGOMDocument) SVGDOMImplementation.getDOMImplementation().createDocument(Source.SVG, "svg", null);
        document.setDocumentURI(uri);
        document.setParsedURL(new ParsedURL(uri));
        Element root = document.getDocumentElement();
        fill(root, attributes, line);
        open.push(root);
        if (assumedNamespace) {
            findings.warn("art-namespace", root, "", "the file does not say that it is SVG (xmlns is missing); it is read as SVG");
        }
    }

    private boolean isSvg(String namespace) {
        return Source.SVG.equals(namespace) || assumedNamespace && namespace.isEmpty();
    }

    private boolean isTitle(String namespace, String localName) {
        return isSvg(namespace) && "title".equals(localName);
    }

    private boolean leftOut(String namespace, String localName, Attributes attributes, int line) {
        if (!isSvg(namespace) || SILENT.contains(localName)) {
            return true; // notes of the program that made it; a foreign element draws nothing by itself
        }
        if (KNOWN.contains(localName)) {
            return false;
        }
        String id = attributes.getValue("id");
        String tag = id == null ? "<" + localName + ">" : "<" + localName + " id=\"" + id + "\">";
        if (ANIMATION.contains(localName)) {
            findings.add("art-animation", saddlebar.model.problem.Severity.NOTE, line, localName, tag + ": nothing moves on glass; it is drawn as it stands");
        } else if ("script".equals(localName)) {
            findings.add("art-script", saddlebar.model.problem.Severity.WARNING, line, "", tag + ": scripts are never run; what this one draws is missing");
        } else {
            findings.add("art-element", saddlebar.model.problem.Severity.WARNING, line, localName,
                    tag + ": this kind of element is not drawn; turn it into paths before exporting");
        }
        return true;
    }

    private void fill(Element element, Attributes attributes, int line) {
        Source.put(element, Source.Note.LINE, Integer.toString(line));
        for (int i = 0; i < attributes.getLength(); i++) {
            String namespace = attributes.getURI(i);
            String local = attributes.getLocalName(i);
            String value = attributes.getValue(i);
            try {
                if (namespace.isEmpty() && !attributes.getQName(i).startsWith("xmlns")) {
                    plain(element, local, value);
                } else if (Source.XLINK.equals(namespace)) {
                    element.setAttributeNS(Source.XLINK, "xlink:" + local, value);
                } else if (Source.XML.equals(namespace) && !"base".equals(local)) { // a base would move references out of the file
                    element.setAttributeNS(Source.XML, "xml:" + local, value);
                } else if ("label".equals(local)) {
                    Source.put(element, Source.Note.LABEL, value.strip());
                }
            } catch (DOMException e) {
                findings.warn("art-attribute", element, local, "the attribute " + local + " cannot be used and is left out");
            }
        }
    }

    private static void plain(Element element, String name, String value) {
        if (name.startsWith("on")) {
            return; // event handlers are scripts
        }
        if ("href".equals(name)) { // SVG 2 writes references without a namespace
            if (!element.hasAttributeNS(Source.XLINK, "href")) {
                element.setAttributeNS(Source.XLINK, "xlink:href", value);
            }
            return;
        }
        if ("data-name".equals(name) && Source.get(element, Source.Note.LABEL).isEmpty()) {
            Source.put(element, Source.Note.LABEL, value.strip());
        }
        element.setAttributeNS(null, name, value);
    }

    @Override
    public void endElement(String namespace, String localName, String qName) {
        ended();
        if (skipped > 0) {
            skipped--;
            if (skipped == 0 && title != null) {
                Element owner = open.peek();
                String called = title.toString().strip();
                if (Source.get(owner, Source.Note.LABEL).isEmpty() && !called.isEmpty()) {
                    Source.put(owner, Source.Note.LABEL, called);
                }
                title = null;
            }
            return;
        }
        flushText();
        open.pop();
    }

    @Override
    public void characters(char[] chars, int start, int length) {
        ended();
        if (skipped > 0) {
            if (title != null) {
                title.append(chars, start, length);
            }
        } else if (!open.isEmpty() && WITH_TEXT.contains(open.peek().getLocalName())) {
            text.append(chars, start, length);
        }
    }

    private void flushText() {
        if (text.length() > 0) {
            open.peek().appendChild(document.createTextNode(text.toString()));
            text.setLength(0);
        }
    }

    @Override
    public void ignorableWhitespace(char[] chars, int start, int length) {
        ended();
    }

    @Override
    public void comment(char[] chars, int start, int length) {
        ended();
    }

    @Override
    public void endDTD() {
        ended();
    }

    @Override
    public void endCDATA() {
        ended();
    }

    @Override
    public void processingInstruction(String target, String data) {
        ended();
        if ("xml-stylesheet".equals(target)) {
            findings.add("art-style", saddlebar.model.problem.Severity.WARNING, line(), "outside",
                    "a style sheet outside the drawing is not read; put the styles into the drawing");
        }
    }

    // entities: short words and shapes that the file itself spells out; nothing of another file, and nothing that is built of others

    @Override
    public void internalEntityDecl(String name, String value) {
        if (name.startsWith("%")) {
            throw entity(name, "declares the entity " + name);
        }
        Matcher built = ENTITY_USED.matcher(value);
        if (built.find()) {
            throw entity(name, "declares the entity " + built.group(1) + " and builds the entity " + name + " of it");
        }
        if (value.length() > MOST_ENTITY) {
            throw entity(name, "declares the entity " + name + ", which stands for " + value.length() + " letters");
        }
    }

    @Override
    public void externalEntityDecl(String name, String publicId, String systemId) {
        throw entity(name, "declares the entity " + name + " of another file");
    }

    @Override
    public void skippedEntity(String name) {
        if (!"[dtd]".equals(name)) {
            throw entity(name, "uses the entity " + name);
        }
    }

    private Refusal entity(String name, String what) {
        return new Refusal(findings.where(line()), "the file " + what + ", and such entities are not accepted since they can hide other files or endless text",
                "write out what " + name + " stands for, or export as plain SVG");
    }

    @Override
    public InputSource resolveEntity(String publicId, String systemId) {
        return new InputSource(new StringReader("")); // no type definition is ever fetched
    }

    @Override
    public InputSource resolveEntity(String name, String publicId, String base, String systemId) {
        return resolveEntity(publicId, systemId);
    }

    @Override
    public InputSource getExternalSubset(String name, String base) {
        return null;
    }

    @Override
    public void fatalError(SAXParseException e) throws SAXException {
        throw e;
    }
}
