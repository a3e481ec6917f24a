package saddlebar.stencil.code;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.stream.ImageInputStream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;

import saddlebar.model.file.Hashes;
import saddlebar.model.work.Work;
import saddlebar.stencil.BitBands;
import saddlebar.stencil.BitPicture;

/** PNG, looked at by the JDK's reader. */
class PngTest {
    private static final BitonalSettings SETTINGS = BitonalSettings.at(1200).withTitle("Reiher \u00fcber Schilf").withDescription("solid");

    @TempDir
    private Path folder;

    static Iterable<BitPicture> pictures() {
        return BitonalTiffTest.pictures()::iterator;
    }

    @ParameterizedTest
    @MethodSource("pictures")
    void theJdkReadsOurBits(BitPicture picture) throws IOException {
        Path file = folder.resolve("bits.png");
        WrittenBits written = write(picture, file);
        BufferedImage image = ImageIO.read(file.toFile());
        assertEquals(1, image.getColorModel().getPixelSize());
        for (int y = 0; y < picture.heightPx(); y++) {
            for (int x = 0; x < picture.widthPx(); x++) {
                assertEquals(picture.get(x, y) ? 0xFF000000 : 0xFFFFFFFF, image.getRGB(x, y));
            }
        }
        assertEquals(Hashes.sha256(file), written.sha256OfFile());
        try (BitBands bits = picture.bands()) {
            assertEquals(BitsHash.of(bits, Work.UNWATCHED), written.sha256OfBits());
        }
    }

    /** 1200 px an inch are 47244 px a metre; the words come with the letters they have. */
    @Test
    void saysItsResolutionAndWords() throws IOException {
        Path file = folder.resolve("bits.png");
        write(Fields.drawn(300, 200, 3), file);
        ImageReader reader = ImageIO.getImageReadersByFormatName("png").next();
        try (ImageInputStream in = ImageIO.createImageInputStream(file.toFile())) {
            reader.setInput(in);
            IIOMetadata metadata = reader.getImageMetadata(0);
            Element root = (Element) metadata.getAsTree(metadata.getNativeMetadataFormatName());
            Element size = (Element) root.getElementsByTagName("pHYs").item(0);
            assertEquals("47244", size.getAttribute("pixelsPerUnitXAxis"));
            assertEquals("meter", size.getAttribute("unitSpecifier"));
            Element text = (Element) root.getElementsByTagName("iTXtEntry").item(0);
            assertEquals("Title", text.getAttribute("keyword"));
            assertEquals("Reiher \u00fcber Schilf", text.getAttribute("text"));
        } finally {
            reader.dispose();
        }
    }

    /** libpng, by way of netpbm, reads the same bits without a complaint. */
    @Test
    void libpngReadsOurBits() throws Exception {
        BitPicture picture = Fields.dots(1001, 700, 30);
        Path file = folder.resolve("bits.png");
        write(picture, file);
        Path script = folder.resolve("convert.sh");
        Files.writeString(script, "pngtopnm " + file + " | pgmtopbm -threshold 2>/dev/null > " + folder.resolve("bits.pbm") + " || pngtopnm " + file + " > "
                + folder.resolve("bits.pbm"));
        PublicTool.run("pngtopnm", "-verbose", file);
        PublicTool.run("sh", script);
        assertEquals(picture, PublicTool.pbm(folder.resolve("bits.pbm")));
    }

    /** Each px of a proof is the mean of its box, against a slow count. */
    @Test
    void proofIsTheMeanOfEachBox() throws IOException {
        BitPicture picture = Fields.noise(203, 101, 0.3, 9);
        for (int factor : new int[] {1, 2, 7, 8, 64, 100, 300}) {
            ReducedGray small;
            try (BitBands bits = picture.bands()) {
                small = ReducedGray.of(bits, factor, Work.UNWATCHED);
            }
            assertEquals(-Math.floorDiv(-203, factor), small.widthPx());
            assertEquals(-Math.floorDiv(-101, factor), small.heightPx());
            for (int y = 0; y < small.heightPx(); y++) {
                for (int x = 0; x < small.widthPx(); x++) {
                    int black = 0;
                    int all = 0;
                    for (int v = y * factor; v < Math.min(101, (y + 1) * factor); v++) {
                        for (int u = x * factor; u < Math.min(203, (x + 1) * factor); u++) {
                            all++;
                            black += picture.get(u, v) ? 1 : 0;
                        }
                    }
                    assertEquals(255 - 255.0 * black / all, small.gray()[y * small.widthPx() + x] & 0xFF, 0.51);
                }
            }
        }
    }

    @Test
    void proofIsWrittenAsGrayPng() throws IOException {
        Path file = folder.resolve("proof.png");
        try (BitBands bits = Fields.dots(1600, 800, 30).bands()) {
            ProofPng.write(bits, file, 150, SETTINGS, Work.UNWATCHED);
        }
        BufferedImage image = ImageIO.read(file.toFile());
        assertEquals(200, image.getWidth());
        assertEquals(100, image.getHeight());
        assertTrue((image.getRGB(0, 50) & 0xFF) > 240 && (image.getRGB(199, 50) & 0xFF) < 30, "dots grow from left to right");
    }

    @Test
    void sameBitsSameBytes() throws IOException {
        write(Fields.drawn(700, 300, 1), folder.resolve("a.png"));
        write(Fields.drawn(700, 300, 1), folder.resolve("b.png"));
        assertArrayEquals(Files.readAllBytes(folder.resolve("a.png")), Files.readAllBytes(folder.resolve("b.png")));
    }

    private static WrittenBits write(BitPicture picture, Path file) throws IOException {
        try (BitBands bits = picture.bands()) {
            return BitonalPng.write(bits, file, SETTINGS, Work.UNWATCHED);
        }
    }
}
