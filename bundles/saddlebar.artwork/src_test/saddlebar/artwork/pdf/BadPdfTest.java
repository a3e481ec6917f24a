package saddlebar.artwork.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.zip.DeflaterOutputStream;

import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.encryption.AccessPermission;
import org.apache.pdfbox.pdmodel.encryption.StandardProtectionPolicy;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import saddlebar.artwork.Art;
import saddlebar.artwork.ReadSettings;
import saddlebar.model.problem.Refusal;

/** What cannot be read is refused in one sentence; these tests run in a heap far smaller than what such files unpack to. */
class BadPdfTest {
    @TempDir
    Path folder;

    private String refused(Path file) {
        return assertThrows(Refusal.class, () -> Art.read(file)).getMessage();
    }

    private Path plain() {
        return Pages.of(folder, 50, 50, (out, document, page) -> {
            out.addRect(5, 5, 20, 20);
            out.fill();
        });
    }

    @Test
    void passwords() {
        Path file = Pages.write(folder, document -> {
            document.addPage(new PDPage());
            document.protect(new StandardProtectionPolicy("owner", "user", new AccessPermission()));
        });
        assertEquals("art.pdf: the PDF is protected by a password; save it without a password", refused(file));
        Path open = Pages.write(folder, document -> {
            document.addPage(new PDPage());
            document.protect(new StandardProtectionPolicy("owner", "", new AccessPermission()));
        });
        assertEquals(215.9, Art.read(open).widthMm(), 1e-3, "anybody may open it");
    }

    @Test
    void cutOffOrScrambled() throws IOException {
        byte[] whole = Files.readAllBytes(plain());
        Path file = folder.resolve("bad.pdf");
        for (int length : new int[] {8, 20, whole.length / 4}) {
            Files.write(file, Arrays.copyOf(whole, length));
            String message = refused(file);
            assertTrue(message.startsWith("bad.pdf: the PDF"), message);
        }
        Files.write(file, ("%PDF-1.7\n" + "rubbish ".repeat(5000)).getBytes(StandardCharsets.US_ASCII));
        assertTrue(refused(file).startsWith("bad.pdf: the PDF"));
    }

    @Test
    void aTableOfPlacesThatIsWrongIsMended() throws IOException {
        String text = Files.readString(plain(), StandardCharsets.ISO_8859_1).replaceFirst("startxref\\s+\\d+", "startxref\n7");
        Path file = Files.writeString(folder.resolve("mended.pdf"), text, StandardCharsets.ISO_8859_1);
        assertEquals(1, Art.read(file).lines().size());
    }

    @Test
    void noPagesOrNoSize() {
        assertEquals("art.pdf: the PDF has no pages; export it again", refused(Pages.write(folder, document -> {
        })));
        assertTrue(refused(Pages.write(folder, document -> document.addPage(new PDPage(new PDRectangle(0, 0, 100, 0))))).contains("no size")
                || refused(folder.resolve("art.pdf")).contains("the page would be"));
    }

    @Test
    void manyPages() {
        Path file = Pages.write(folder, document -> {
            for (int i = 0; i < 100_000; i++) {
                document.addPage(new PDPage(new PDRectangle(72 + i % 7, 72)));
            }
        });
        assertEquals((72 + 99_998 % 7) * 25.4 / 72, Art.read(file, ReadSettings.asDrawn().onPage(99_999)).widthMm(), 1e-3);
    }

    @Test
    void aVeryLargeFile() throws IOException {
        Path file = folder.resolve("large.pdf");
        try (RandomAccessFile sparse = new RandomAccessFile(file.toFile(), "rw")) {
            sparse.write("%PDF-1.7\n".getBytes(StandardCharsets.US_ASCII));
            sparse.setLength(2L << 30);
        }
        assertEquals("large.pdf: the PDF is larger than 1024 MB; export the page that is wanted by itself", refused(file));
    }

    @Test
    void picturesThatClaimTooMuch() {
        Path file = Pages.of(folder, 50, 50, (out, document, page) -> {
            PDImageXObject bomb = new PDImageXObject(document, new java.io.ByteArrayInputStream(new byte[100]), null, 100_000, 100_000, 8,
                    org.apache.pdfbox.pdmodel.graphics.color.PDDeviceGray.INSTANCE);
            out.drawImage(bomb, 0, 0, 50, 50);
        });
        assertEquals("art.pdf: a picture claims 100000 x 100000 px, more than any sheet needs; place it smaller, at the resolution at which it is printed",
                refused(file));
    }

    @Test
    void aPictureThatUnpacksToFarMoreThanItsSize() throws IOException {
        Path file = Pages.of(folder, 50, 50, (out, document, page) -> {
            PDImageXObject bomb = new PDImageXObject(document, new java.io.ByteArrayInputStream(zeros(64L << 20)), COSName.FLATE_DECODE, 10, 10, 8,
                    org.apache.pdfbox.pdmodel.graphics.color.PDDeviceGray.INSTANCE);
            out.drawImage(bomb, 0, 0, 50, 50);
        });
        assertTrue(Files.size(file) < 2_000_000);
        assertEquals("art.pdf: a picture holds more than its size allows; export the page again", refused(file));
    }

    @Test
    void aPageThatUnpacksToFarTooMuch() {
        Path file = Pages.write(folder, document -> {
            PDPage page = new PDPage();
            COSStream content = document.getDocument().createCOSStream();
            try (OutputStream raw = content.createRawOutputStream()) {
                raw.write(zeros(300L << 20));
            }
            content.setItem(COSName.FILTER, COSName.FLATE_DECODE);
            page.setContents(new PDStream(content));
            document.addPage(page);
        });
        assertEquals("art.pdf: the page's description is larger than any drawing; export the page again", refused(file));
    }

    private static byte[] zeros(long count) throws IOException {
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        try (DeflaterOutputStream out = new DeflaterOutputStream(packed)) {
            byte[] some = new byte[1 << 20];
            for (long done = 0; done < count; done += some.length) {
                out.write(some);
            }
        }
        return packed.toByteArray();
    }

    /** Ten levels, each drawing the next ten times, would be ten thousand million squares. */
    @Test
    void partsOfPartsOfParts() {
        Path file = Pages.of(folder, 50, 50, (out, document, page) -> {
            PDFormXObject inner = form(document, null);
            for (int level = 0; level < 10; level++) {
                inner = form(document, inner);
            }
            out.drawForm(inner);
        });
        String message = refused(file);
        assertTrue(message.contains("more than"), message);
    }

    private static PDFormXObject form(org.apache.pdfbox.pdmodel.PDDocument document, PDFormXObject inner) throws IOException {
        PDFormXObject form = new PDFormXObject(document);
        form.setBBox(new PDRectangle(0, 0, 50, 50));
        PDResources resources = new PDResources();
        form.setResources(resources);
        String step = inner == null ? "1 1 3 3 re f " : "/" + resources.add(inner).getName() + " Do ";
        try (OutputStream content = form.getStream().createOutputStream()) {
            content.write(step.repeat(inner == null ? 500 : 10).getBytes(StandardCharsets.US_ASCII));
        }
        return form;
    }

    @Test
    void aPartThatIsPartOfItself() {
        Path file = Pages.of(folder, 50, 50, (out, document, page) -> {
            PDFormXObject form = new PDFormXObject(document);
            form.setBBox(new PDRectangle(0, 0, 50, 50));
            PDResources resources = new PDResources();
            form.setResources(resources);
            String name = resources.add(form).getName();
            try (OutputStream content = form.getStream().createOutputStream()) {
                content.write(("1 1 3 3 re f /" + name + " Do").getBytes(StandardCharsets.US_ASCII));
            }
            out.drawForm(form);
        });
        assertTrue(Art.read(file).lines().size() < 100, "it ends");
    }

    @Test
    void numbersWithoutSense() {
        Path file = Pages.write(folder, document -> {
            PDPage page = new PDPage();
            COSStream content = document.getDocument().createCOSStream();
            try (OutputStream out = content.createOutputStream()) {
                out.write("0 0 99999999999 5 re f".getBytes(StandardCharsets.US_ASCII));
            }
            page.setContents(new PDStream(content));
            document.addPage(page);
        });
        assertTrue(refused(file).contains("more than ten kilometres away"));
    }
}
