package saddlebar.stencil.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.fail;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;

import javax.imageio.ImageIO;

import saddlebar.stencil.BitPicture;

/**
 * A picture as expectation, to the px. A miss writes what came and where it differs to {@code target/golden} and names both. To write a new
 * expectation by hand: {@code -Dgolden.write=true}, run in the bundle's folder; look at it, and say in the commit why it changed.
 */
final class Golden {
    private Golden() {
    }

    static void assertSame(Class<?> test, String name, BitPicture got) throws IOException {
        String file = test.getSimpleName() + "-" + name + ".png";
        if (Boolean.getBoolean("golden.write")) {
            Path target = Path.of("src_test", test.getPackageName().replace('.', '/'), file);
            ImageIO.write(image(got, null), "png", target.toFile());
            return;
        }
        BufferedImage expected;
        try (InputStream in = test.getResourceAsStream(file)) {
            expected = in == null ? new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB) : ImageIO.read(in);
        }
        if (expected.getWidth() == got.widthPx() && expected.getHeight() == got.heightPx() && differing(got, expected) == 0) {
            return;
        }
        Path folder = Files.createDirectories(Path.of("target", "golden"));
        Path gotFile = folder.resolve(file.replace(".png", "-got.png"));
        Path diffFile = folder.resolve(file.replace(".png", "-diff.png"));
        ImageIO.write(image(got, null), "png", gotFile.toFile());
        ImageIO.write(image(got, expected), "png", diffFile.toFile());
        assertEquals(expected.getWidth() + " x " + expected.getHeight(), got.widthPx() + " x " + got.heightPx(), "see " + gotFile.toAbsolutePath());
        fail(differing(got, expected) + " px of " + file + " differ: see " + gotFile.toAbsolutePath() + " and " + diffFile.toAbsolutePath());
    }

    private static int differing(BitPicture got, BufferedImage expected) {
        int count = 0;
        for (int y = 0; y < got.heightPx(); y++) {
            for (int x = 0; x < got.widthPx(); x++) {
                count += x < expected.getWidth() && y < expected.getHeight() && got.get(x, y) == ((expected.getRGB(x, y) & 0xFF) == 0) ? 0 : 1;
            }
        }
        return count;
    }

    /** The picture; where it is not as expected in red (too much) or blue (too little). */
    private static BufferedImage image(BitPicture got, BufferedImage expected) {
        BufferedImage image = new BufferedImage(got.widthPx(), got.heightPx(),
                expected == null ? BufferedImage.TYPE_BYTE_BINARY : BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < got.heightPx(); y++) {
            for (int x = 0; x < got.widthPx(); x++) {
                boolean black = got.get(x, y);
                boolean wanted = expected != null && x < expected.getWidth() && y < expected.getHeight() ? (expected.getRGB(x, y) & 0xFF) == 0 : black;
                image.setRGB(x, y, black == wanted ? black ? 0 : 0xFFFFFF : black ? 0xFF0000 : 0x0000FF);
            }
        }
        return image;
    }
}
