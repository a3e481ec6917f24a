package saddlebar.model.store;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

import javax.xml.parsers.ParserConfigurationException;
import javax.xml.transform.OutputKeys;
import javax.xml.transform.Transformer;
import javax.xml.transform.TransformerException;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.stream.StreamResult;

import org.w3c.dom.Document;
import org.xml.sax.Attributes;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;
import org.xml.sax.helpers.DefaultHandler;

import saddlebar.model.problem.Refusal;

/** The version of the model files' format, and the steps from older versions. */
public final class Formats {
    private static final Formats CURRENT = new Formats(1, List.of(new NamesWithUnits()));

    private final int version;
    private final Map<Integer, FormatStep> steps;

    Formats(int version, List<FormatStep> steps) {
        this.version = version;
        this.steps = steps.stream().collect(Collectors.toMap(FormatStep::from, Function.identity()));
        for (int from = 0; from < version; from++) {
            if (!this.steps.containsKey(from)) {
                throw new IllegalArgumentException("no step leads from format " + from + " to " + version);
            }
        }
    }

    public static Formats current() {
        return CURRENT;
    }

    /** The version that is written. */
    public int version() {
        return version;
    }

    /**
     * The version of a file, read from the root element alone.
     *
     * @throws Refusal if the file is not ours, not XML or newer than this program
     */
    int versionOf(String where, byte[] bytes) throws IOException {
        RootOnly root = new RootOnly();
        try {
            GuardedXml.saxParser().parse(new InputSource(new ByteArrayInputStream(bytes)), root);
        } catch (RootSeen seen) {
            return accepted(where, root);
        } catch (SAXParseException e) {
            throw Refusals.ofParse(where, e);
        } catch (SAXException | ParserConfigurationException e) {
            throw Refusals.ofXml(where, e);
        }
        throw new Refusal(where, "holds no element", Refusals.RESTORE);
    }

    private int accepted(String where, RootOnly root) {
        if (root.version == null) {
            throw new Refusal(where, "is not a Saddlebar file: its root element <" + root.name + "> has no formatVersion", Refusals.RESTORE);
        }
        int found;
        try {
            found = Integer.parseInt(root.version);
        } catch (NumberFormatException e) {
            throw new Refusal(where, "has formatVersion \"" + root.version + "\", which is no whole number", Refusals.RESTORE, e);
        }
        if (found > version) {
            throw new Refusal(where, "was written by a newer program (format " + found + ", this program knows " + version + ")",
                    "open it with that newer program, or update this one");
        }
        if (found < 0) {
            throw new Refusal(where, "has formatVersion " + found + ", which never was", Refusals.RESTORE);
        }
        return found;
    }

    /** The file in the current format. */
    byte[] broughtUpToDate(String where, byte[] bytes, int from) throws IOException {
        try {
            Document document = GuardedXml.documents().parse(new ByteArrayInputStream(bytes));
            for (int at = from; at < version; at++) {
                steps.get(at).apply(document);
                document.getDocumentElement().setAttribute("formatVersion", String.valueOf(at + 1));
            }
            Transformer writer = TransformerFactory.newDefaultInstance().newTransformer();
            writer.setOutputProperty(OutputKeys.ENCODING, "UTF-8");
            ByteArrayOutputStream out = new ByteArrayOutputStream(bytes.length);
            writer.transform(new DOMSource(document), new StreamResult(out));
            return out.toByteArray();
        } catch (SAXParseException e) {
            throw Refusals.ofParse(where, e);
        } catch (SAXException | ParserConfigurationException | TransformerException e) {
            throw Refusals.ofXml(where, e);
        }
    }

    /** Ends a parse after the first element; it carries nothing. */
    private static final class RootSeen extends SAXException {
        private static final long serialVersionUID = 1;
    }

    private static final class RootOnly extends DefaultHandler {
        private String name;
        private String version;

        @Override
        public void startElement(String uri, String localName, String qName, Attributes attributes) throws SAXException {
            name = qName;
            version = attributes.getValue("formatVersion");
            throw new RootSeen();
        }

        @Override
        public void fatalError(SAXParseException e) throws SAXException {
            throw e;
        }
    }
}
