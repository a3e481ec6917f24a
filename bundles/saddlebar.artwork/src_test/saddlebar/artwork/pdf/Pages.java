package saddlebar.artwork.pdf;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;

/** Writes PDF files for tests. */
final class Pages {
    static final float UNITS_PER_MM = (float) (72 / 25.4);

    /** Draws on a page whose user space is mm from its lower left. */
    interface Drawing {
        void on(PDPageContentStream out, PDDocument document, PDPage page) throws IOException;
    }

    private Pages() {
    }

    /** A page of so many mm. */
    static Path of(Path folder, double widthMm, double heightMm, Drawing drawing) {
        return write(folder, document -> {
            PDPage page = new PDPage(new PDRectangle((float) (widthMm * UNITS_PER_MM), (float) (heightMm * UNITS_PER_MM)));
            document.addPage(page);
            try (PDPageContentStream out = new PDPageContentStream(document, page)) {
                out.transform(org.apache.pdfbox.util.Matrix.getScaleInstance(UNITS_PER_MM, UNITS_PER_MM));
                drawing.on(out, document, page);
            }
        });
    }

    interface Making {
        void of(PDDocument document) throws IOException;
    }

    static Path write(Path folder, Making making) {
        Path file = folder.resolve("art.pdf");
        try (PDDocument document = new PDDocument()) {
            making.of(document);
            document.save(file.toFile());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return file;
    }
}
