package saddlebar.model.store;

import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.parsers.SAXParser;
import javax.xml.parsers.SAXParserFactory;

import org.xml.sax.SAXException;

/** The platform's XML parsers with everything off that reaches out or swells: DOCTYPE, entities, schemas, inclusion. */
final class GuardedXml {
    private static final String NO_DOCTYPE = "http://apache.org/xml/features/disallow-doctype-decl";
    private static final String GENERAL_ENTITIES = "http://xml.org/sax/features/external-general-entities";
    private static final String PARAMETER_ENTITIES = "http://xml.org/sax/features/external-parameter-entities";
    private static final String LOAD_DTD = "http://apache.org/xml/features/nonvalidating/load-external-dtd";

    private GuardedXml() {
    }

    static SAXParser saxParser() throws ParserConfigurationException, SAXException {
        SAXParserFactory factory = SAXParserFactory.newDefaultInstance(); // the platform's own: what lies on the class path is not asked
        factory.setNamespaceAware(false); // EMF resolves prefixes by itself
        factory.setValidating(false);
        factory.setXIncludeAware(false);
        factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
        factory.setFeature(NO_DOCTYPE, true);
        factory.setFeature(GENERAL_ENTITIES, false);
        factory.setFeature(PARAMETER_ENTITIES, false);
        factory.setFeature(LOAD_DTD, false);
        return factory.newSAXParser();
    }

    static DocumentBuilder documents() throws ParserConfigurationException {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultInstance();
        factory.setNamespaceAware(true);
        factory.setXIncludeAware(false);
        factory.setExpandEntityReferences(false);
        factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
        factory.setFeature(NO_DOCTYPE, true);
        factory.setFeature(GENERAL_ENTITIES, false);
        factory.setFeature(PARAMETER_ENTITIES, false);
        factory.setFeature(LOAD_DTD, false);
        return factory.newDocumentBuilder();
    }
}
