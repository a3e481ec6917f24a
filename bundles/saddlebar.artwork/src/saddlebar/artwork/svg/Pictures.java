package saddlebar.artwork.svg;

import java.io.IOException;
import java.net.URI;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

import org.w3c.dom.Element;

import saddlebar.artwork.drawing.Picture;
import saddlebar.artwork.raster.PictureFile;
import saddlebar.model.problem.Refusal;

/**
 * Pictures that a drawing holds (data URIs, RFC 2397) or that lie in its own folder or below. Nothing else is opened, nothing is fetched. A
 * picture that cannot be had is told and left out; a damaged one is refused, since nobody wants half a stencil.
 */
final class Pictures {
    private static final int MOST_LINK = 60;

    private final Path folder;
    private final Findings findings;
    private final Map<String, Optional<Picture>> known = new HashMap<>();

    Pictures(Path file, Findings findings) {
        this.folder = file.toAbsolutePath().getParent();
        this.findings = findings;
    }

    Optional<Picture> of(Element image, String link) {
        Optional<Picture> before = known.get(link);
        if (before == null) {
            try {
                before = Optional.ofNullable(load(image, link.strip()));
            } catch (IOException e) {
                throw new Refusal(findings.where(image), Source.tag(image) + ": the picture \"" + shortened(link) + "\" cannot be read from the disk",
                        "check the file, then try again", e);
            }
            known.put(link, before);
        }
        return before;
    }

    private Picture load(Element image, String link) throws IOException {
        if (link.isEmpty()) {
            findings.warn("art-picture", image, "none", "no picture is named, so none is drawn");
            return null;
        }
        String where = findings.where(image) + ": " + Source.tag(image);
        if (link.toLowerCase(Locale.ROOT).startsWith("data:")) {
            byte[] bytes = data(image, link);
            return bytes == null ? null : decoded(image, PictureFile.isPicture(bytes) ? PictureFile.of(bytes, where) : null, link);
        }
        Path file = inFolder(image, link);
        if (file == null) {
            return null;
        }
        byte[] head;
        try (java.io.InputStream in = Files.newInputStream(file)) {
            head = in.readNBytes(16);
        }
        return decoded(image, PictureFile.isPicture(head) ? PictureFile.of(file, where + ": " + file.getFileName()) : null, link);
    }

    private Picture decoded(Element image, PictureFile file, String link) throws IOException {
        if (file == null) {
            findings.warn("art-picture", image, "kind", "the picture \"" + shortened(link) + "\" is neither PNG nor JPEG nor TIFF and is left out;"
                    + " place it as one of these, or draw it into the file");
            return null;
        }
        for (String note : file.notes()) {
            findings.warn("art-picture", image, "note", "the picture: " + note);
        }
        try {
            return file.picture();
        } catch (OutOfMemoryError e) {
            throw new Refusal(findings.where(image), Source.tag(image) + ": the picture is too large for the memory there is",
                    "place it smaller, at the resolution at which it is printed", e);
        }
    }

    /** RFC 2397: {@code data:[type][;base64],content}. */
    private byte[] data(Element image, String link) {
        int comma = link.indexOf(',');
        if (comma < 0) {
            findings.warn("art-picture", image, "data", "the picture in the file is cut off and left out; place it again");
            return null;
        }
        String content = link.substring(comma + 1);
        try {
            if (link.substring(0, comma).toLowerCase(Locale.ROOT).endsWith(";base64")) {
                return Base64.getMimeDecoder().decode(content.indexOf('%') >= 0
                        ? URLDecoder.decode(content.replace("+", "%2B"), StandardCharsets.UTF_8)
                        : content);
            }
            return URLDecoder.decode(content.replace("+", "%2B"), StandardCharsets.ISO_8859_1).getBytes(StandardCharsets.ISO_8859_1);
        } catch (IllegalArgumentException e) {
            throw new Refusal(findings.where(image), Source.tag(image) + ": the picture in the file is damaged", "place it again and export anew", e);
        }
    }

    private Path inFolder(Element image, String link) throws IOException {
        Path file;
        try {
            if (link.matches("(?i)[a-z][a-z0-9+.-]+:.*|//.*")) {
                URI uri = URI.create(link.replace(" ", "%20"));
                if (!"file".equalsIgnoreCase(uri.getScheme()) || uri.getPath() == null) {
                    findings.warn("art-outside", image, "net", "the picture \"" + shortened(link) + "\" is not in the artwork's folder and is never"
                            + " fetched; embed it, or put it beside the drawing");
                    return null;
                }
                file = Path.of(uri.getPath());
            } else {
                String name = link.indexOf('%') >= 0 ? URLDecoder.decode(link.replace("+", "%2B"), StandardCharsets.UTF_8) : link;
                file = folder.resolve(name.replace('\\', '/'));
            }
            if (!file.normalize().startsWith(folder) || Files.exists(file) && !file.toRealPath().startsWith(folder.toRealPath())) {
                findings.warn("art-outside", image, "folder", "the picture \"" + shortened(link) + "\" lies outside the artwork's folder and is not"
                        + " opened; embed it, or put it beside the drawing");
                return null;
            }
        } catch (IllegalArgumentException e) { // also a path that cannot be one
            file = null;
        }
        if (file == null || !Files.isRegularFile(file)) {
            findings.warn("art-picture", image, "missing", "the picture \"" + shortened(link) + "\" is not there; embed it, or put it beside the drawing");
            return null;
        }
        return file;
    }

    private static String shortened(String link) {
        return link.length() <= MOST_LINK ? link : link.substring(0, MOST_LINK) + "…";
    }
}
