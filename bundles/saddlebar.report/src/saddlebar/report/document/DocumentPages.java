package saddlebar.report.document;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;

/** A written document's pages as pictures, for a preview. Used by one thread at a time; closed when it is no longer looked at. */
public final class DocumentPages implements AutoCloseable {
    private final PDDocument document;
    private final PDFRenderer renderer;

    private DocumentPages(PDDocument document) {
        this.document = document;
        this.renderer = new PDFRenderer(document);
    }

    public static DocumentPages open(Path file) throws IOException {
        return new DocumentPages(Loader.loadPDF(file.toFile()));
    }

    public int count() {
        return document.getNumberOfPages();
    }

    /** @param page from 0 */
    public BufferedImage picture(int page, double dpi) throws IOException {
        return renderer.renderImageWithDPI(page, (float) dpi, ImageType.RGB);
    }

    @Override
    public void close() throws IOException {
        document.close();
    }
}
