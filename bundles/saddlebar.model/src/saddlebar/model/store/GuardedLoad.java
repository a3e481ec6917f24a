package saddlebar.model.store;

import javax.xml.parsers.ParserConfigurationException;
import javax.xml.parsers.SAXParser;

import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.xmi.PackageNotFoundException;
import org.eclipse.emf.ecore.xmi.XMLHelper;
import org.eclipse.emf.ecore.xmi.XMLResource;
import org.eclipse.emf.ecore.xmi.impl.SAXXMIHandler;
import org.eclipse.emf.ecore.xmi.impl.XMILoadImpl;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.DefaultHandler;

import java.util.Map;

/** Reads XMI with a parser that knows no DOCTYPE, and with no package but those of this program. */
final class GuardedLoad extends XMILoadImpl {
    GuardedLoad(XMLHelper helper) {
        super(helper);
    }

    @Override
    protected SAXParser makeParser() throws ParserConfigurationException, SAXException {
        return GuardedXml.saxParser();
    }

    @Override
    protected DefaultHandler makeDefaultHandler() {
        return new Handler(resource, helper, options);
    }

    private static final class Handler extends SAXXMIHandler {
        Handler(XMLResource resource, XMLHelper helper, Map<?, ?> options) {
            super(resource, helper, options);
        }

        /** By itself it would fetch an unknown package from wherever its name points. */
        @Override
        protected EPackage getPackageForURI(String uri) {
            EPackage known = packageRegistry.getEPackage(uri);
            if (known == null) {
                error(new PackageNotFoundException(uri, getLocation(), getLineNumber(), getColumnNumber()));
            }
            return known;
        }

        @Override
        protected EPackage handleMissingPackage(String uri) {
            return null;
        }

        @Override
        protected void handleXSISchemaLocation(String schemaLocations) {
            // no schema is fetched
        }

        @Override
        protected void handleXSINoNamespaceSchemaLocation(String schemaLocations) {
            // no schema is fetched
        }
    }
}
