package saddlebar.artwork.svg;

import java.io.BufferedInputStream;
import java.io.CharConversionException;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.zip.GZIPInputStream;
import java.util.zip.ZipException;

import javax.xml.XMLConstants;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.parsers.SAXParser;
import javax.xml.parsers.SAXParserFactory;

import org.apache.batik.anim.dom.SVGOMDocument;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXNotRecognizedException;
import org.xml.sax.SAXParseException;
import org.xml.sax.XMLReader;

import saddlebar.model.problem.Refusal;

/**
 * Reads the XML of a drawing without trusting it: no entity is taken, from inside or outside, nothing outside the file is opened, and depth,
 * size and number of elements are bounded. A plain DOCTYPE does no harm and is passed over.
 */
final class SvgParser {
    /** More text than this is no drawing. */
    static final long MOST_BYTES = 256L << 20;

    private SvgParser() {
    }

    static SVGOMDocument parse(Path file, Findings findings) throws IOException {
        String name = findings.fileName();
        DocumentBuilder builder = new DocumentBuilder(findings, "file:/drawing");
        try (InputStream raw = new BufferedInputStream(Files.newInputStream(file), 1 << 16); InputStream in = unpacked(raw, name)) {
            XMLReader reader = reader();
            reader.setContentHandler(builder);
            reader.setErrorHandler(builder);
            reader.setEntityResolver(builder);
            reader.setProperty("http://xml.org/sax/properties/lexical-handler", builder);
            reader.setProperty("http://xml.org/sax/properties/declaration-handler", builder);
            InputSource source = new InputSource(in);
            source.setSystemId("drawing"); // nothing can be resolved against it
            reader.parse(source);
        } catch (SAXParseException e) {
            throw new Refusal(findings.where(e.getLineNumber()), "this is no well-formed XML (" + plain(e.getMessage()) + ")",
                    "export the drawing again as SVG", e);
        } catch (SAXException e) {
            throw new Refusal(findings.where(builder.line()), "this is no readable XML", "export the drawing again as SVG", e);
        } catch (CharConversionException e) {
            throw new Refusal(findings.where(builder.line()), "the bytes do not fit the encoding that the file names",
                    "export the drawing again as SVG in UTF-8", e);
        } catch (OutOfMemoryError e) { // one endless comment or attribute
            throw new Refusal(name, "the drawing holds more text than there is memory for", "keep large pictures in files of their own beside it, or split it",
                    e);
        } catch (ZipException | java.io.EOFException e) {
            throw new Refusal(name, "the compressed drawing is cut off or damaged", "export or copy it again", e);
        }
        return builder.document();
    }

    private static String plain(String message) {
        String text = message == null ? "it ends too early" : message.strip();
        return text.endsWith(".") ? text.substring(0, text.length() - 1) : text;
    }

    private static InputStream unpacked(InputStream raw, String name) throws IOException {
        raw.mark(2);
        boolean packed = raw.read() == 0x1F && raw.read() == 0x8B;
        raw.reset();
        return new Bounded(packed ? new GZIPInputStream(raw, 1 << 16) : raw, name);
    }

    private static XMLReader reader() throws SAXException {
        try {
            SAXParserFactory factory = SAXParserFactory.newDefaultInstance();
            factory.setNamespaceAware(true);
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            factory.setFeature("http://xml.org/sax/features/external-general-entities", false);
            factory.setFeature("http://xml.org/sax/features/external-parameter-entities", false);
            factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
            SAXParser parser = factory.newSAXParser();
            try {
                parser.setProperty("http://apache.org/xml/properties/locale", Locale.ENGLISH);
            } catch (SAXNotRecognizedException e) {
                return parser.getXMLReader(); // then its messages are in the platform's language
            }
            return parser.getXMLReader();
        } catch (ParserConfigurationException e) {
            throw new IllegalStateException("every Java platform parses XML safely", e);
        }
    }

    /** Ends a file that grows without end, packed or not. */
    private static final class Bounded extends FilterInputStream {
        private final String name;
        private long left = MOST_BYTES;

        Bounded(InputStream in, String name) {
            super(in);
            this.name = name;
        }

        @Override
        public int read() throws IOException {
            int value = super.read();
            count(value >= 0 ? 1 : 0);
            return value;
        }

        @Override
        public int read(byte[] target, int from, int length) throws IOException {
            int n = super.read(target, from, length);
            count(Math.max(n, 0));
            return n;
        }

        private void count(int n) {
            left -= n;
            if (left < 0) {
                throw new Refusal(name, "the drawing holds more than " + (MOST_BYTES >> 20) + " MB of text",
                        "keep large pictures in files of their own beside it, or split it");
            }
        }
    }
}
