package saddlebar.artwork.pdf;

import java.awt.geom.AffineTransform;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.logging.Level;
import java.util.logging.Logger;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.encryption.InvalidPasswordException;
import org.osgi.service.component.annotations.Component;

import saddlebar.artwork.Artwork;
import saddlebar.artwork.ArtworkReader;
import saddlebar.artwork.ArtworkReaders;
import saddlebar.artwork.ReadSettings;
import saddlebar.artwork.drawing.DrawnArtwork;
import saddlebar.artwork.drawing.Group;
import saddlebar.model.problem.Refusal;
import saddlebar.model.units.Units;

/**
 * Reads one page of a PDF (ISO 32000-1), the one that the settings name. Its layers are the file's optional content. The page's size is that
 * of its crop box in user units of 1/72 inch times UserUnit, turned as the page says.
 */
@Component(service = ArtworkReader.class)
public final class PdfReader implements ArtworkReader {
    private static final long MOST_BYTES = 1L << 30;
    private static final int HEAD = 1024; // where readers look for the header (ISO 32000-1, H.3)
    private static final double UNITS_PER_INCH = 72;
    private static final double LEAST_MM = 0.01;
    private static final double MOST_MM = 1e7;
    /** Kept, since the platform forgets a logger nobody holds. What the library would log is told as warnings of the artwork. */
    private static final Logger[] QUIET = {Logger.getLogger("org.apache.pdfbox"), Logger.getLogger("org.apache.fontbox")};

    static {
        for (Logger logger : QUIET) {
            logger.setLevel(Level.OFF);
        }
    }

    @Override
    public String kinds() {
        return "PDF";
    }

    @Override
    public boolean canRead(String fileName, byte[] head) {
        return new String(head, 0, Math.min(head.length, HEAD), StandardCharsets.ISO_8859_1).contains("%PDF-");
    }

    @Override
    public Artwork read(Path file, ReadSettings settings) throws IOException {
        return with(file, (name, document) -> page(file, name, document, settings));
    }

    @Override
    public int pages(Path file) throws IOException {
        return with(file, (name, document) -> document.getNumberOfPages());
    }

    private interface Use<T> {
        T of(String name, PDDocument document) throws IOException;
    }

    private static <T> T with(Path file, Use<T> use) throws IOException {
        String name = String.valueOf(file.getFileName());
        if (Files.size(file) > MOST_BYTES) {
            throw new Refusal(name, "the PDF is larger than " + (MOST_BYTES >> 20) + " MB", "export the page that is wanted by itself");
        }
        try (PDDocument document = open(file, name)) {
            return use.of(name, document);
        } catch (StackOverflowError e) {
            throw new Refusal(name, "its parts lie in each other too deep", "export the page again", e);
        } catch (OutOfMemoryError e) {
            throw new Refusal(name, "a part of the page is too large for the memory there is", "place pictures smaller, at the resolution at which they are"
                    + " printed", e);
        } catch (ClassCastException | IllegalArgumentException | IllegalStateException | IndexOutOfBoundsException | NullPointerException
                | NegativeArraySizeException | ArithmeticException e) { // what the library answers to values that cannot be
            throw damaged(name, e);
        } catch (IOException e) {
            if (e.getCause() instanceof java.nio.file.FileSystemException) {
                throw e;
            }
            throw damaged(name, e);
        }
    }

    private static PDDocument open(Path file, String name) throws IOException {
        try {
            return Loader.loadPDF(file.toFile());
        } catch (InvalidPasswordException e) {
            throw new Refusal(name, "the PDF is protected by a password", "save it without a password", e);
        }
    }

    private static Refusal damaged(String name, Throwable cause) {
        return new Refusal(name, "the PDF is damaged beyond repair, or cut off", "export or copy it again", cause);
    }

    private static Artwork page(Path file, String name, PDDocument document, ReadSettings settings) throws IOException {
        int pages = document.getNumberOfPages();
        if (pages < 1) {
            throw new Refusal(name, "the PDF has no pages", "export it again");
        }
        if (settings.page() > pages) {
            throw ArtworkReaders.noPage(name, settings.page(), pages);
        }
        PDPage page = document.getPage(settings.page() - 1);
        PageFindings findings = new PageFindings(pages == 1 ? name : name + " page " + settings.page());
        if (pages > 1) {
            findings.note("art-page", "the file has " + pages + " pages; this is page " + settings.page());
        }
        PDRectangle box = page.getCropBox();
        double unitMm = Units.MM_PER_INCH / UNITS_PER_INCH * page.getUserUnit();
        boolean lying = page.getRotation() % 180 != 0;
        double drawnWidthMm = (lying ? box.getHeight() : box.getWidth()) * unitMm;
        if (!(drawnWidthMm > 0)) {
            throw new Refusal(findings.where(), "the page has no size", "set the page size and export it again");
        }
        double scale = settings.scaleFor(drawnWidthMm) * unitMm;
        double widthMm = (lying ? box.getHeight() : box.getWidth()) * scale;
        double heightMm = (lying ? box.getWidth() : box.getHeight()) * scale;
        if (!(Math.max(widthMm, heightMm) <= MOST_MM && Math.min(widthMm, heightMm) >= LEAST_MM)) {
            throw new Refusal(findings.where(), String.format(Locale.ROOT, "the page would be %.4g x %.4g mm", widthMm, heightMm),
                    "set the page size, or give its width in mm");
        }
        PageLayers layers = new PageLayers(document, findings);
        PageWalk walk = new PageWalk(page, toMm(box, page.getRotation(), scale), layers, findings);
        Group drawing = walk.drawing();
        return new DrawnArtwork(file, widthMm, heightMm, layers.layers(), findings.all(), drawing);
    }

    /** From default user space, y up, to mm of the page as it is seen, y down. */
    private static AffineTransform toMm(PDRectangle box, int rotation, double scale) {
        AffineTransform toMm = AffineTransform.getScaleInstance(scale, scale);
        switch (Math.floorMod(rotation, 360)) {
            case 90 -> toMm.concatenate(new AffineTransform(0, 1, 1, 0, -box.getLowerLeftY(), -box.getLowerLeftX()));
            case 180 -> toMm.concatenate(new AffineTransform(-1, 0, 0, 1, box.getUpperRightX(), -box.getLowerLeftY()));
            case 270 -> toMm.concatenate(new AffineTransform(0, -1, -1, 0, box.getUpperRightY(), box.getUpperRightX()));
            default -> toMm.concatenate(new AffineTransform(1, 0, 0, -1, -box.getLowerLeftX(), box.getUpperRightY()));
        }
        return toMm;
    }
}
