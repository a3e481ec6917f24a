package saddlebar.stencil.code;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import saddlebar.model.file.Hashes;

/**
 * A metadata packet with title and description, without dates (ISO 16684-1: RDF/XML between packet marks; rdf:RDF may be the outermost
 * element). What wrote the file stands in the document information dictionary.
 */
final class XmpPacket {
    private XmpPacket() {
    }

    /**
     * @param sha256OfBits of the picture ({@link BitsHash}); stands with that of the description as the identifiers of what is in the file
     */
    static byte[] of(String title, String description, String sha256OfBits) {
        // simple values as attributes and no line ends: what it says of itself must not make a file notably larger
        String packet = "<?xpacket begin=\"\" id=\"W5M0MpCehiHzreSzNTczkc9d\"?><rdf:RDF xmlns:rdf=\"http://www.w3.org/1999/02/22-rdf-syntax-ns#\">"
                + "<rdf:Description rdf:about=\"\" xmlns:dc=\"http://purl.org/dc/elements/1.1/\" dc:identifier=\"recipe:sha256:" + Hashes.sha256(description)
                + "\" dc:source=\"bits:sha256:" + sha256OfBits + "\"><dc:title><rdf:Alt><rdf:li xml:lang=\"x-default\">" + text(title)
                + "</rdf:li></rdf:Alt></dc:title><dc:description><rdf:Alt><rdf:li xml:lang=\"x-default\">" + text(description)
                + "</rdf:li></rdf:Alt></dc:description></rdf:Description></rdf:RDF><?xpacket end=\"r\"?>";
        return packet.getBytes(StandardCharsets.UTF_8);
    }

    /** The hash behind {@code recipe:sha256:} or {@code bits:sha256:} in a packet. */
    static Optional<String> hash(String packet, String of) {
        Matcher found = Pattern.compile(of + ":sha256:([0-9a-f]{64})\"").matcher(packet);
        return found.find() ? Optional.of(found.group(1)) : Optional.empty();
    }

    /** Text as XML 1.0 allows it: marks as entities, characters that XML does not have as the replacement character. */
    private static String text(String plain) {
        StringBuilder out = new StringBuilder(plain.length());
        plain.codePoints().forEach(c -> {
            switch (c) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                default -> out.appendCodePoint(isXml(c) ? c : 0xFFFD);
            }
        });
        return out.toString();
    }

    private static boolean isXml(int c) {
        return c == '\t' || c == '\n' || c == '\r' || c >= ' ' && c < 0xD800 || c > 0xDFFF && c < 0xFFFE || c > 0xFFFF;
    }
}
