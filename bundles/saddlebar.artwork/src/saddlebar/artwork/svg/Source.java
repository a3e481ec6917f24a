package saddlebar.artwork.svg;

import org.apache.batik.anim.dom.SVGOMDocument;
import org.w3c.dom.Element;

import saddlebar.artwork.drawing.Origin;

/**
 * What is remembered of the file on each element. It stands in attributes of a namespace of our own, since those go along when Batik copies
 * an element for a {@code use}.
 */
final class Source {
    static final String NAMESPACE = "urn:saddlebar:source";
    static final String SVG = "http://www.w3.org/2000/svg";
    static final String XLINK = "http://www.w3.org/1999/xlink";
    static final String XML = "http://www.w3.org/XML/1998/namespace";

    /** What can be remembered. */
    enum Note {
        /** Line of the file where the element's tag begins. */
        LINE,
        /** What the person called a group. */
        LABEL,
        /** Present if a group is switched off. */
        HIDDEN,
        /** The id of a group as a layer, where it differs from its own. */
        LAYER,
        /** Value of the property paint-order. */
        ORDER,
        /** Value of the property vector-effect. */
        VECTOR,
        /** Value of the property mix-blend-mode, where it is one that is known. */
        BLEND;

        private final String local = name().toLowerCase(java.util.Locale.ROOT);
    }

    private Source() {
    }

    static void put(Element element, Note note, String value) {
        element.setAttributeNS(NAMESPACE, "sb:" + note.local, value);
    }

    /** Empty if it was not remembered. */
    static String get(Element element, Note note) {
        return element.getAttributeNS(NAMESPACE, note.local);
    }

    static int line(Element element) {
        String line = element == null ? "" : get(element, Note.LINE);
        return line.isEmpty() ? 0 : Integer.parseInt(line);
    }

    static String id(Element element) {
        return element.getAttributeNS(null, "id");
    }

    static Origin origin(Element element) {
        if (element == null) {
            return new Origin("", 0);
        }
        return new Origin(id(element).isEmpty() ? element.getLocalName() : id(element), line(element));
    }

    /** For sentences: {@code <path id="wing">}. */
    static String tag(Element element) {
        String id = id(element);
        return id.isEmpty() ? "<" + element.getLocalName() + ">" : "<" + element.getLocalName() + " id=\"" + id + "\">";
    }

    /** An attribute without namespace, empty if absent. */
    static String attribute(Element element, String name) {
        return element.getAttributeNS(null, name);
    }

    static boolean isSvg(Element element, String localName) {
        return SVG.equals(element.getNamespaceURI()) && localName.equals(element.getLocalName());
    }

    static Element root(SVGOMDocument document) {
        return document.getDocumentElement();
    }
}
