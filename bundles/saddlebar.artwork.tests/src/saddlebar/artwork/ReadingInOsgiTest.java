package saddlebar.artwork;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;

import javax.imageio.ImageIO;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.osgi.framework.BundleContext;
import org.osgi.framework.FrameworkUtil;
import org.osgi.framework.InvalidSyntaxException;
import org.osgi.framework.ServiceReference;

import saddlebar.model.art.DrawnLine;
import saddlebar.model.art.GrayBands;
import saddlebar.model.art.GrayCoding;
import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Refusal;
import saddlebar.model.problem.Severity;
import saddlebar.model.work.Work;

/** Art is read through the services of a running OSGi, where the libraries must find their own parts through class loaders that see little. */
class ReadingInOsgiTest {
    private final BundleContext context = FrameworkUtil.getBundle(ArtworkReaders.class).getBundleContext();

    private Path folder;

    @BeforeEach
    void makeFolder() throws IOException {
        folder = Files.createTempDirectory("artwork");
    }

    @AfterEach
    void removeFolder() throws IOException {
        try (var files = Files.list(folder)) {
            for (Path file : files.toList()) {
                Files.delete(file);
            }
        }
        Files.delete(folder);
    }

    @Test
    void everyReaderOfThisBundleIsAService() throws InvalidSyntaxException {
        List<String> kinds = context.getServiceReferences(ArtworkReader.class, null).stream().map(reference -> context.getService(reference).kinds())
                .sorted().toList();
        assertTrue(kinds.contains("SVG") && kinds.contains("PDF") && kinds.contains("PNG, JPEG and TIFF"), kinds.toString());
    }

    @Test
    void aDrawingWithGradientTextStylesAndPicture() throws IOException {
        BufferedImage pixels = new BufferedImage(4, 4, BufferedImage.TYPE_BYTE_GRAY);
        for (int i = 0; i < 16; i++) {
            pixels.getRaster().setSample(i % 4, i / 4, 0, 100);
        }
        ByteArrayOutputStream png = new ByteArrayOutputStream();
        assertTrue(ImageIO.write(pixels, "png", png));
        Path file = Files.writeString(folder.resolve("art.svg"), """
                <svg xmlns='http://www.w3.org/2000/svg' xmlns:xlink='http://www.w3.org/1999/xlink' width='100mm' height='40mm' viewBox='0 0 100 40'>
                <style>.cut { fill: none; stroke: #000; stroke-width: .2 }</style>
                <defs><linearGradient id='g'><stop offset='0' stop-color='#000'/><stop offset='1' stop-color='#fff'/></linearGradient></defs>
                <g id='paint'><rect width='100' height='10' fill='url(#g)'/>
                <text x='2' y='28' font-size='12' font-family='sans-serif'>Heron</text>
                <image x='60' y='15' width='20' height='20' xlink:href='data:image/png;base64,%s'/></g>
                <g id='cut'><path class='cut' d='M1 38C20 30 80 46 99 38'/></g></svg>
                """.formatted(Base64.getEncoder().encodeToString(png.toByteArray())));
        try (Artwork art = readers().read(file, ReadSettings.asDrawn())) {
            assertEquals(List.of(), art.warnings().stream().filter(problem -> problem.severity() != Severity.NOTE).map(Problem::message).toList());
            byte[] gray = gray(art);
            assertEquals(127.5, gray[500 + 50 * 1000] & 0xFF, 1.5, "the middle of the gradient");
            assertEquals(25.5, gray[100 + 50 * 1000] & 0xFF, 1.5, "a tenth along it");
            assertEquals(100, gray[700 + 250 * 1000] & 0xFF, "the picture");
            assertEquals(255, gray[900 + 250 * 1000] & 0xFF, "paper");
            int dark = 0;
            for (int y = 180; y < 290; y++) {
                for (int x = 20; x < 400; x++) {
                    dark += (gray[x + y * 1000] & 0xFF) < 128 ? 1 : 0;
                }
            }
            assertTrue(dark > 1500 && dark < 20000, () -> "letters cover some of their place");
            List<DrawnLine> lines = art.lines(LayerChoice.of(art.chosenLayer("cut")), Artwork.CUT_FLATNESS_MM);
            assertEquals(1, lines.size());
            assertEquals(1, lines.get(0).x(0), 1e-4);
            assertEquals(38, lines.get(0).y(lines.get(0).points() - 1), 1e-4);
            assertEquals("cut", art.cutlineLayer().orElseThrow().id());
        }
    }

    @Test
    void aPictureByItself() throws IOException {
        BufferedImage pixels = new BufferedImage(30, 20, BufferedImage.TYPE_INT_RGB);
        for (String format : List.of("png", "jpg", "tiff")) {
            Path file = folder.resolve("art." + format);
            assertTrue(ImageIO.write(pixels, format, file.toFile()), format);
            try (Artwork art = readers().read(file, ReadSettings.ofWidth(30))) {
                assertEquals(20, art.heightMm(), 1e-9, format);
                for (byte value : gray(art)) {
                    assertEquals(0, value & 0xFF, format);
                }
            }
        }
    }

    /** Written by hand, without a table of places: the library mends that, and finds its fonts and colours in its own bundle. */
    @Test
    void aPageOfPdf() throws IOException {
        String content = "0.5 g 0 0 72 72 re f BT /F 20 Tf 80 20 Td (Heron) Tj ET 0 0 0 1 K 72 0 m 72 72 l S";
        Path file = Files.writeString(folder.resolve("art.pdf"), "%PDF-1.4\n1 0 obj<</Type/Catalog/Pages 2 0 R>>endobj\n"
                + "2 0 obj<</Type/Pages/Kids[3 0 R]/Count 1>>endobj\n3 0 obj<</Type/Page/Parent 2 0 R/MediaBox[0 0 144 72]/Contents 4 0 R"
                + "/Resources<</Font<</F<</Type/Font/Subtype/Type1/BaseFont/Helvetica>>>>>>>>endobj\n4 0 obj<</Length " + content.length()
                + ">>stream\n" + content + "\nendstream endobj\ntrailer<</Root 1 0 R>>\n");
        try (Artwork art = readers().read(file, ReadSettings.asDrawn())) {
            assertEquals(50.8, art.widthMm(), 1e-4);
            byte[] gray = gray(art);
            assertEquals(128, gray[100 * 508 + 100] & 0xFF);
            int dark = 0;
            for (int i = 0; i < gray.length; i++) {
                dark += i % 508 > 270 && (gray[i] & 0xFF) < 160 ? 1 : 0; // letters of half gray
            }
            assertTrue(dark > 300, "letters");
            assertEquals(2, art.lines(LayerChoice.all(), Artwork.CUT_FLATNESS_MM).size());
        }
    }

    @Test
    void whatIsNoArtIsRefused() throws IOException {
        Path file = Files.writeString(folder.resolve("notes.txt"), "a list of colours");
        assertTrue(assertThrows(Refusal.class, () -> readers().read(file, ReadSettings.asDrawn())).getMessage().contains("no kind of artwork"));
    }

    private static byte[] gray(Artwork art) throws IOException {
        RasterRequest request = RasterRequest.ofPage(art, 254, GrayCoding.CODE_VALUES);
        byte[] all = new byte[request.widthPx() * request.heightPx()];
        byte[] band = new byte[request.widthPx() * 16];
        int at = 0;
        try (GrayBands bands = art.gray(LayerChoice.all(), request, Work.UNWATCHED)) {
            for (int rows = bands.read(band, 16); rows > 0; rows = bands.read(band, 16)) {
                System.arraycopy(band, 0, all, at, rows * request.widthPx());
                at += rows * request.widthPx();
            }
        }
        assertEquals(all.length, at);
        return all;
    }

    private ArtworkReaders readers() {
        ServiceReference<ArtworkReaders> reference = context.getServiceReference(ArtworkReaders.class);
        assertNotNull(reference, "no service ArtworkReaders");
        return context.getService(reference);
    }
}
