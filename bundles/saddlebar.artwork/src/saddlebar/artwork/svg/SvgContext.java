package saddlebar.artwork.svg;

import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;

import org.apache.batik.anim.dom.SVGOMDocument;
import org.apache.batik.bridge.BridgeContext;
import org.apache.batik.bridge.BridgeException;
import org.apache.batik.bridge.DocumentLoader;
import org.apache.batik.bridge.ErrorConstants;
import org.apache.batik.bridge.ExternalResourceSecurity;
import org.apache.batik.bridge.FontFamilyResolver;
import org.apache.batik.bridge.NoLoadExternalResourceSecurity;
import org.apache.batik.bridge.NoLoadScriptSecurity;
import org.apache.batik.bridge.ScriptSecurity;
import org.apache.batik.bridge.UserAgentAdapter;
import org.apache.batik.css.engine.CSSEngine;
import org.apache.batik.util.ParsedURL;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.svg.SVGDocument;

/**
 * Batik's surroundings for one drawing: no screen, no dialogue, no network, no script, no other document. References are those inside the
 * drawing. Belongs to one thread.
 */
final class SvgContext extends BridgeContext {
    private final Agent agent;
    private Runnable ours;

    private SvgContext(Agent agent, SVGOMDocument document) {
        super(agent, new ClosedLoader(agent));
        this.agent = agent;
        agent.setBridgeContext(this);
        setDocument(document);
        initializeDocument(document);
    }

    /** A context with a style engine, which has not yet read the styles. */
    static SvgContext of(SVGOMDocument document) {
        return new SvgContext(new Agent(), document);
    }

    /** From now on our bridges come after Batik's own, whenever those are registered. */
    void use(Bridges.PathFaults faults, Pictures pictures) {
        ours = () -> Bridges.register(this, faults, pictures);
        registerSVGBridges();
    }

    @Override
    public void registerSVGBridges() {
        super.registerSVGBridges();
        if (ours != null) {
            ours.run();
        }
    }

    CSSEngine style() {
        return ((SVGOMDocument) getDocument()).getCSSEngine();
    }

    /** Whether the style engine met a fault since the last call. */
    boolean styleFailed() {
        boolean failed = agent.failed;
        agent.failed = false;
        return failed;
    }

    @Override
    public Node getReferencedNode(Element e, String uri) {
        Element target = target((SVGOMDocument) e.getOwnerDocument(), uri);
        if (target == null) {
            throw new BridgeException(this, e, ErrorConstants.ERR_URI_BAD_TARGET, new Object[] {uri});
        }
        return target;
    }

    /** The element of the drawing that a reference means; null if it means something outside, or nothing. */
    static Element target(SVGOMDocument document, String uri) {
        int hash = uri.indexOf('#');
        if (hash < 0) {
            return null;
        }
        String before = uri.substring(0, hash);
        if (!before.isEmpty() && !before.equals(document.getURL()) && !before.equals(new ParsedURL(document.getURL()).toString())) {
            return null;
        }
        String id = uri.substring(hash + 1);
        Element target = document.getElementById(id);
        if (target == null && id.indexOf('%') >= 0) {
            try {
                target = document.getElementById(URLDecoder.decode(id.replace("+", "%2B"), StandardCharsets.UTF_8));
            } catch (IllegalArgumentException e) {
                return null; // a lone percent sign
            }
        }
        return target;
    }

    private static final class ClosedLoader extends DocumentLoader {
        ClosedLoader(Agent agent) {
            super(agent);
        }

        @Override
        public org.w3c.dom.Document loadDocument(String uri) {
            throw new SecurityException("no other document is opened");
        }

        @Override
        public org.w3c.dom.Document loadDocument(String uri, java.io.InputStream in) {
            throw new SecurityException("no other document is opened");
        }
    }

    /** Says nothing, opens nothing, allows nothing. */
    private static final class Agent extends UserAgentAdapter {
        private final FontFamilyResolver fonts = new KernedFonts();
        private boolean failed;

        Agent() {
            addStdFeatures();
        }

        @Override
        public void displayError(Exception e) {
            failed = true;
        }

        @Override
        public void displayError(String message) {
            failed = true;
        }

        @Override
        public String getMedia() {
            return "screen";
        }

        @Override
        public float getPixelUnitToMillimeter() {
            return (float) (25.4 / 96);
        }

        @Override
        public FontFamilyResolver getFontFamilyResolver() {
            return fonts;
        }

        @Override
        public String getDefaultFontFamily() {
            return "sans-serif";
        }

        @Override
        public ScriptSecurity getScriptSecurity(String type, ParsedURL script, ParsedURL document) {
            return new NoLoadScriptSecurity(type);
        }

        @Override
        public ExternalResourceSecurity getExternalResourceSecurity(ParsedURL resource, ParsedURL document) {
            return new NoLoadExternalResourceSecurity();
        }

        @Override
        public void checkLoadExternalResource(ParsedURL resource, ParsedURL document) {
            throw new SecurityException("nothing outside the drawing is opened");
        }

        @Override
        public SVGDocument getBrokenLinkDocument(Element e, String url, String message) {
            throw new SecurityException("nothing outside the drawing is opened");
        }
    }
}
