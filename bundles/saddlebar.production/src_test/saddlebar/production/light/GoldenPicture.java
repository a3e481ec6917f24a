package saddlebar.production.light;

import static org.junit.jupiter.api.Assertions.fail;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;

import javax.imageio.ImageIO;

/**
 * A picture as expectation, beside the test under {@code golden/}. A miss leaves what was painted and the difference in {@code target/golden} and
 * names them. {@code -Dgolden.write=true}, by hand, writes the expectation anew; look at it before it is committed.
 */
final class GoldenPicture {
    private static final Path MISSED = Path.of("target", "golden");

    private final String name;

    GoldenPicture(String name) {
        this.name = name;
    }

    /** Fails if a channel of any pixel is farther off than {@code most}: edges may round otherwise on another Java. */
    void assertAlike(BufferedImage painted, int most) throws IOException {
        if (Boolean.getBoolean("golden.write")) {
            Path target = Path.of("src_test", "saddlebar", "production", "light", "golden", name + ".png");
            Files.createDirectories(target.getParent());
            ImageIO.write(painted, "png", target.toFile());
            return;
        }
        try (InputStream in = GoldenPicture.class.getResourceAsStream("golden/" + name + ".png")) {
            if (in == null) {
                fail("there is no golden/" + name + ".png; write it with -Dgolden.write=true and look at it");
            }
            BufferedImage expected = ImageIO.read(in);
            BufferedImage difference = new BufferedImage(painted.getWidth(), painted.getHeight(), BufferedImage.TYPE_INT_RGB);
            int worst = painted.getWidth() == expected.getWidth() && painted.getHeight() == expected.getHeight()
                    ? compare(expected, painted, difference)
                    : 255;
            if (worst > most) {
                Files.createDirectories(MISSED);
                ImageIO.write(painted, "png", MISSED.resolve(name + "-got.png").toFile());
                ImageIO.write(difference, "png", MISSED.resolve(name + "-diff.png").toFile());
                fail(name + " differs by up to " + worst + " of 255; see " + MISSED.resolve(name + "-got.png").toAbsolutePath() + " and -diff.png");
            }
        }
    }

    private static int compare(BufferedImage expected, BufferedImage painted, BufferedImage difference) {
        int worst = 0;
        for (int y = 0; y < painted.getHeight(); y++) {
            for (int x = 0; x < painted.getWidth(); x++) {
                int off = 0;
                for (int shift = 0; shift <= 16; shift += 8) {
                    off = Math.max(off, Math.abs((expected.getRGB(x, y) >> shift & 0xff) - (painted.getRGB(x, y) >> shift & 0xff)));
                }
                difference.setRGB(x, y, off * 0x010101);
                worst = Math.max(worst, off);
            }
        }
        return worst;
    }
}
