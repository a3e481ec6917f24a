package saddlebar.stencil.code;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.SplittableRandom;

import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.stream.ImageInputStream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

import saddlebar.model.problem.Refusal;
import saddlebar.model.work.Work;
import saddlebar.stencil.BitPicture;

class StencilFileTest {
    private static final String RECIPE = "method: am\nruling: 40 lpi at 22.5 degrees, \u201cround\u201d dots\n";
    private static final BitonalSettings SETTINGS = BitonalSettings.at(1200).withTitle("Sheet 1").withDescription(RECIPE).onThreads(1);

    @TempDir
    private Path folder;

    private static BitPicture picture(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        BitPicture bits = new BitPicture(300, 90);
        for (int i = 0; i < 300; i++) {
            int x = random.nextInt(290);
            int y = random.nextInt(90);
            for (int d = 0; d < 9; d++) {
                bits.set(x + d, y, true);
            }
        }
        return bits;
    }

    @Test
    void theRecipeComesBack() throws IOException {
        Path tiff = folder.resolve("a.tif");
        Path pdf = folder.resolve("a.pdf");
        WrittenBits written = BitonalTiff.write(picture(1).bands(), tiff, SETTINGS.withRowsPerStrip(32), Work.UNWATCHED);
        SheetPdf.write(picture(1).bands(), pdf, SETTINGS, Work.UNWATCHED);
        Path png = folder.resolve("a.png");
        BitonalPng.write(picture(1).bands(), png, SETTINGS, Work.UNWATCHED);
        for (Path file : new Path[] {tiff, pdf, png}) {
            StencilFile read = StencilFile.read(file, Work.UNWATCHED);
            assertEquals(RECIPE, read.recipe());
            assertEquals("Sheet 1", read.title());
            assertEquals(1200, read.dpi());
            assertEquals(written.sha256OfBits(), read.bits());
            assertTrue(read.recipeIntact() && read.bitsIntact());
        }
    }

    /** A recipe edited in the file is noticed, and bits that were are. */
    @Test
    void whatWasChangedIsNoticed() throws IOException {
        Path tiff = folder.resolve("b.tif");
        BitonalTiff.write(picture(2).bands(), tiff, SETTINGS, Work.UNWATCHED);
        byte[] bytes = Files.readAllBytes(tiff);
        String text = new String(bytes, StandardCharsets.ISO_8859_1);
        bytes[text.indexOf("40 lpi")] = '5';
        Files.write(tiff, bytes);
        StencilFile read = StencilFile.read(tiff, Work.UNWATCHED);
        assertFalse(read.recipeIntact());
        assertTrue(read.bitsIntact());
    }

    /** By its bytes and not by its name; the packet is where others look for it. */
    @Test
    void pngSaysItsRecipeWhereOthersLook() throws Exception {
        Path png = folder.resolve("a.png.copy");
        BitonalPng.write(picture(4).bands(), png, SETTINGS, Work.UNWATCHED);
        assertEquals("png", StencilFile.read(png, Work.UNWATCHED).format());
        ImageReader reader = ImageIO.getImageReadersByFormatName("png").next(); // the JDK's
        try (ImageInputStream in = ImageIO.createImageInputStream(png.toFile())) {
            reader.setInput(in);
            IIOMetadata metadata = reader.getImageMetadata(0);
            NodeList texts = ((Element) metadata.getAsTree(metadata.getNativeMetadataFormatName())).getElementsByTagName("iTXtEntry");
            Element last = (Element) texts.item(texts.getLength() - 1);
            assertEquals(BitonalPng.XMP, last.getAttribute("keyword"));
            assertTrue(last.getAttribute("text").contains("dc:identifier=\"recipe:sha256:"), last.getAttribute("text"));
        } finally {
            reader.dispose();
        }
        byte[] bytes = Files.readAllBytes(png);
        String text = new String(bytes, StandardCharsets.ISO_8859_1);
        bytes[text.lastIndexOf("40 lpi")] = '5';
        Files.write(png, bytes);
        assertTrue(assertThrows(Refusal.class, () -> StencilFile.read(png, Work.UNWATCHED)).getMessage().contains("its part iTXt is damaged"));
    }

    @Test
    void filesThatAreNone() throws IOException {
        assertThrows(Refusal.class, () -> StencilFile.read(folder.resolve("none.tif"), Work.UNWATCHED));
        Path words = Files.writeString(folder.resolve("words.pdf"), "no PDF");
        assertThrows(Refusal.class, () -> StencilFile.read(words, Work.UNWATCHED));
        Path tiff = Files.writeString(folder.resolve("words.tif"), "no TIFF at all");
        assertThrows(Refusal.class, () -> StencilFile.read(tiff, Work.UNWATCHED));
    }

    /** Found by fuzzing: a page without resources. */
    @Test
    void pdfWithoutResources() throws IOException {
        Path pdf = folder.resolve("r.pdf");
        SheetPdf.write(picture(5).bands(), pdf, SETTINGS, Work.UNWATCHED);
        String text = new String(Files.readAllBytes(pdf), StandardCharsets.ISO_8859_1);
        Files.write(pdf, text.replaceFirst("/Resources", "/Resourced").getBytes(StandardCharsets.ISO_8859_1));
        assertTrue(assertThrows(Refusal.class, () -> StencilFile.read(pdf, Work.UNWATCHED)).getMessage().contains("no sheet that this program wrote"));
    }

    /** Three thousand damaged files, from a fixed seed: bytes changed, runs of them cut out or copied; each is read, or refused with a sentence. */
    @Test
    void damagedFilesAreReadOrRefused() throws IOException {
        Path tiff = folder.resolve("c.tif");
        BitonalTiff.write(picture(3).bands(), tiff, SETTINGS.withRowsPerStrip(30), Work.UNWATCHED);
        byte[] good = Files.readAllBytes(tiff);
        SplittableRandom random = new SplittableRandom(99);
        int refused = 0;
        Path bad = folder.resolve("bad.tif");
        for (int run = 0; run < 3000; run++) {
            byte[] bytes = good.clone();
            for (int change = random.nextInt(1, 6); change > 0; change--) {
                int at = random.nextInt(bytes.length);
                switch (random.nextInt(3)) {
                    case 0 -> bytes[at] = (byte) random.nextInt(256);
                    case 1 -> System.arraycopy(good, random.nextInt(good.length / 2), bytes, Math.min(at, bytes.length - 8), 8);
                    default -> bytes = Arrays.copyOf(bytes, Math.max(10, at));
                }
            }
            Files.write(bad, bytes);
            try (TiffBits read = BitonalTiff.read(bad)) {
                long[] row = new long[read.wordsPerRow()];
                for (int y = 0; y < Math.min(300, read.heightPx()); y++) {
                    read.read(row, 1);
                }
            } catch (Refusal e) {
                refused++;
            }
        }
        assertTrue(refused > 300 && refused < 3000, refused + " refused");
    }
}
