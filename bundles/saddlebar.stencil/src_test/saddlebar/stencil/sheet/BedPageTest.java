package saddlebar.stencil.sheet;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import saddlebar.model.art.OutlineMm;
import saddlebar.stencil.code.BitonalSettings;

class BedPageTest {
    /** Two stops below and one at the left of a rectangle; of a triangle that stands on its tip, against its slanting sides. */
    @Test
    void threeStopsHoldAPiece() {
        double[][] stops = BedPage.stops(OutlineMm.rectangle(10, 20, 80, 40));
        assertArrayEquals(new double[] {30, 62.5}, stops[0], 1e-9);
        assertArrayEquals(new double[] {70, 62.5}, stops[1], 1e-9);
        assertArrayEquals(new double[] {7.5, 40}, stops[2], 1e-9);
        stops = BedPage.stops(OutlineMm.of(0, 0, 100, 0, 50, 60));
        assertArrayEquals(new double[] {25, 32.5}, stops[0], 1e-9);
        assertArrayEquals(new double[] {75, 32.5}, stops[1], 1e-9);
    }

    /** The page is as large as the bed with its border, in true size, and the same bytes every time. */
    @Test
    void trueSize(@TempDir Path folder) throws IOException {
        List<BedPage.BedPiece> pieces = List.of(new BedPage.BedPiece("1", OutlineMm.rectangle(10, 10, 60, 40)),
                new BedPage.BedPiece("2", OutlineMm.of(90, 10, 150, 20, 120, 80)));
        BitonalSettings settings = BitonalSettings.at(1200);
        Path first = BedPage.writePdf(pieces, 160, 100, "Bed of stencil 3", folder.resolve("a.pdf"), settings);
        Path second = BedPage.writePdf(pieces, 160, 100, "Bed of stencil 3", folder.resolve("b.pdf"), settings);
        assertArrayEquals(Files.readAllBytes(first), Files.readAllBytes(second));
        try (PDDocument document = Loader.loadPDF(first.toFile())) {
            assertEquals((160 + 24) / 25.4 * 72, document.getPage(0).getMediaBox().getWidth(), 1e-3);
            assertEquals((100 + 24 + 7) / 25.4 * 72, document.getPage(0).getMediaBox().getHeight(), 1e-3);
        }
    }
}
