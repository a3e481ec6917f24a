package saddlebar.model.store;

import java.util.List;
import java.util.Map;

import org.w3c.dom.Attr;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

/**
 * Format 0 to 1. Format 0 was the draft before the first release: lengths were called {@code sightWidth} without their unit, and the
 * name space was {@code urn:saddlebar:commission:0}.
 */
final class NamesWithUnits implements FormatStep {
    private static final String OLD_SPACE = "urn:saddlebar:commission:0";
    private static final String NEW_SPACE = "urn:saddlebar:commission:1";
    private static final String XMLNS = "http://www.w3.org/2000/xmlns/";
    private static final Map<String, String> NEW_NAMES = Map.of("sightWidth", "sightWidthMm", "sightHeight", "sightHeightMm", "tightWidth",
            "tightWidthMm", "tightHeight", "tightHeightMm", "gap", "gapMm", "bleed", "bleedMm", "labelX", "labelXMm", "labelY", "labelYMm");

    @Override
    public int from() {
        return 0;
    }

    @Override
    public void apply(Document document) {
        Element root = document.getDocumentElement();
        rename(document, root);
        Element current = document.getDocumentElement();
        if (OLD_SPACE.equals(current.getNamespaceURI())) {
            document.renameNode(current, NEW_SPACE, current.getNodeName());
        }
        NamedNodeMap attributes = document.getDocumentElement().getAttributes();
        for (int i = 0; i < attributes.getLength(); i++) {
            Node attribute = attributes.item(i);
            if (XMLNS.equals(attribute.getNamespaceURI()) && OLD_SPACE.equals(attribute.getNodeValue())) {
                attribute.setNodeValue(NEW_SPACE);
            }
        }
    }

    private static void rename(Document document, Element element) {
        NamedNodeMap attributes = element.getAttributes();
        List<Attr> old = java.util.stream.IntStream.range(0, attributes.getLength()).mapToObj(i -> (Attr) attributes.item(i))
                .filter(attribute -> NEW_NAMES.containsKey(attribute.getName())).toList();
        for (Attr attribute : old) {
            document.renameNode(attribute, null, NEW_NAMES.get(attribute.getName()));
        }
        NodeList children = element.getChildNodes();
        for (int i = 0; i < children.getLength(); i++) {
            if (children.item(i) instanceof Element child) {
                rename(document, child);
            }
        }
    }
}
