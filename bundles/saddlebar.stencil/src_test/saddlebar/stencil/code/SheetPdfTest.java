package saddlebar.stencil.code;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.graphics.PDXObject;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import saddlebar.model.file.Hashes;
import saddlebar.model.problem.LockedException;
import saddlebar.model.work.Work;
import saddlebar.stencil.BitBands;
import saddlebar.stencil.BitPicture;

class SheetPdfTest {
    private static final BitonalSettings SETTINGS = BitonalSettings.at(1200).withTitle("Heron & \u201cReed\u201d window, sheet 1 of 3")
            .withDescription("am 40 lpi < 22.5 deg").withSoftware("Saddlebar test").onThreads(2);

    @TempDir
    private Path folder;

    static Iterable<BitPicture> pictures() {
        return BitonalTiffTest.pictures()::iterator;
    }

    /** The bytes of the image are those of the one strip of the TIFF, whichever compression both took. */
    @ParameterizedTest
    @MethodSource("pictures")
    void holdsTheBytesOfTheTiff(BitPicture picture) throws IOException {
        Path pdf = folder.resolve("sheet.pdf");
        WrittenBits written = write(picture, pdf);
        Path tiff = folder.resolve("sheet.tif");
        try (BitBands bits = picture.bands()) {
            WrittenBits asTiff = BitonalTiff.write(bits, tiff, SETTINGS, Work.UNWATCHED);
            assertEquals(asTiff.sha256OfBits(), written.sha256OfBits());
            assertEquals(asTiff.compression(), written.compression());
        }
        byte[] image = rawImage(pdf);
        byte[] file = Files.readAllBytes(tiff);
        byte[] strip = Arrays.copyOfRange(file, 8, 8 + image.length);
        assertArrayEquals(strip, image);
        assertEquals(Hashes.sha256(pdf), written.sha256OfFile());
        assertEquals(Files.size(pdf), written.bytes());
    }

    /** PDFBox's own decoder gives the bits back; page of exact size; no scaling asked for; parameters of ISO 32000-1 Table 11. */
    @ParameterizedTest
    @MethodSource("pictures")
    void pdfBoxReadsIt(BitPicture picture) throws IOException {
        Path pdf = folder.resolve("sheet.pdf");
        WrittenBits written = write(picture, pdf);
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            assertEquals(1, document.getNumberOfPages());
            assertEquals(picture.widthPx() * 0.06, document.getPage(0).getMediaBox().getWidth(), 1e-3);
            assertEquals(picture.heightPx() * 0.06, document.getPage(0).getMediaBox().getHeight(), 1e-3);
            assertEquals("None", document.getDocumentCatalog().getViewerPreferences().getPrintScaling());
            PDXObject image = document.getPage(0).getResources().getXObject(COSName.getPDFName("Sheet"));
            boolean t6 = written.compression().equals("T.6");
            if (t6) {
                COSDictionary parameters = dictionary(image).getCOSDictionary(COSName.DECODE_PARMS);
                assertEquals(-1, parameters.getInt(COSName.K));
                assertEquals(picture.widthPx(), parameters.getInt(COSName.COLUMNS));
                assertEquals(picture.heightPx(), parameters.getInt(COSName.ROWS));
                assertFalse(parameters.getBoolean(COSName.BLACK_IS_1, true));
            }
            try (InputStream rows = image.getStream().createInputStream()) {
                for (int y = 0; y < picture.heightPx(); y++) {
                    byte[] row = rows.readNBytes((picture.widthPx() + 7) / 8);
                    for (int x = 0; x < picture.widthPx(); x++) {
                        boolean one = (row[x / 8] >> 7 - x % 8 & 1) != 0;
                        assertEquals(picture.get(x, y), t6 ? !one : one); // BlackIs1 false: the decoded 0 is black
                    }
                }
            }
        }
    }

    /** poppler: drawn at the sheet's resolution the page is the bits; pdfimages sees one image of 1 bit. */
    @ParameterizedTest
    @MethodSource("pictures")
    void popplerDrawsTheBits(BitPicture picture) throws Exception {
        assumeTrue(picture.widthPx() > 1, "a page of 0.06 pt is drawn 2 px wide, whatever lies on it");
        Path pdf = folder.resolve("sheet.pdf");
        WrittenBits written = write(picture, pdf);
        PublicTool.run("pdftoppm", "-mono", "-r", "1200", "-singlefile", pdf, folder.resolve("drawn"));
        assertEquals(picture, PublicTool.pbm(folder.resolve("drawn.pbm")));
        String list = PublicTool.run("pdfimages", "-list", pdf);
        String[] image = list.lines().skip(2).findFirst().orElseThrow().strip().split("\\s+");
        assertEquals(3, list.lines().count(), list);
        assertEquals(String.valueOf(picture.widthPx()), image[3], list);
        assertEquals(String.valueOf(picture.heightPx()), image[4], list);
        assertEquals("gray", image[5], list);
        assertEquals("1", image[7], list);
        assertEquals(written.compression().equals("T.6") ? "ccitt" : "image", image[8], list);
        assertEquals("1200", image[12], list);
        if (written.compression().equals("T.6")) {
            PublicTool.run("pdfimages", "-ccitt", pdf, folder.resolve("code"));
            assertArrayEquals(T6Encoder.strip(picture), Files.readAllBytes(folder.resolve("code-000.ccitt")));
        }
    }

    /** Ghostscript draws the same bits, too. */
    @ParameterizedTest
    @MethodSource("pictures")
    void ghostscriptDrawsTheBits(BitPicture picture) throws Exception {
        Path pdf = folder.resolve("sheet.pdf");
        write(picture, pdf);
        PublicTool.run("gs", "-q", "-dBATCH", "-dNOPAUSE", "-dSAFER", "-r1200", "-sDEVICE=pbmraw", "-sOutputFile=" + folder.resolve("drawn.pbm"), pdf);
        assertEquals(picture, PublicTool.pbm(folder.resolve("drawn.pbm")));
    }

    @Test
    void sameBitsSameBytes() throws Exception {
        BitPicture picture = Fields.drawn(1313, 300, 1);
        write(picture, folder.resolve("a.pdf"));
        Thread.sleep(5); // whatever took the time of day would differ now
        write(picture, folder.resolve("b.pdf"));
        assertArrayEquals(Files.readAllBytes(folder.resolve("a.pdf")), Files.readAllBytes(folder.resolve("b.pdf")));
        String text = Files.readString(folder.resolve("a.pdf"), StandardCharsets.ISO_8859_1);
        assertFalse(text.contains("Date"), "a date");
        BitPicture other = Fields.drawn(1313, 300, 2);
        write(other, folder.resolve("c.pdf"));
        assertFalse(identifier(text).equals(identifier(Files.readString(folder.resolve("c.pdf"), StandardCharsets.ISO_8859_1))));
    }

    private static String identifier(String pdf) {
        int at = pdf.lastIndexOf("/ID");
        return pdf.substring(at, pdf.indexOf(']', at));
    }

    @Test
    void carriesItsWords() throws IOException {
        Path pdf = folder.resolve("sheet.pdf");
        write(Fields.row(3, 4), pdf);
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            assertEquals(SETTINGS.title(), document.getDocumentInformation().getTitle());
            String xmp = new String(document.getDocumentCatalog().getMetadata().toByteArray(), StandardCharsets.UTF_8);
            assertTrue(xmp.contains("Heron &amp; \u201cReed\u201d window, sheet 1 of 3"), xmp);
            assertTrue(xmp.contains("am 40 lpi &lt; 22.5 deg"), xmp);
        }
    }

    @Test
    void neverReplacesWithoutLeave() throws IOException {
        Path file = folder.resolve("mine.pdf");
        Files.writeString(file, "mine");
        assertThrows(LockedException.class, () -> write(Fields.row(3, 4), file));
        assertEquals("mine", Files.readString(file));
        assertEquals(1, folder.toFile().list().length);
    }

    private static WrittenBits write(BitPicture picture, Path file) throws IOException {
        try (BitBands bits = picture.bands()) {
            return SheetPdf.write(bits, file, SETTINGS, Work.UNWATCHED);
        }
    }

    private static COSDictionary dictionary(PDXObject image) {
        return image.getCOSObject();
    }

    private static byte[] rawImage(Path pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            COSStream image = (COSStream) document.getPage(0).getResources().getXObject(COSName.getPDFName("Sheet")).getCOSObject();
            try (InputStream raw = image.createRawInputStream()) {
                return raw.readAllBytes();
            }
        }
    }
}
