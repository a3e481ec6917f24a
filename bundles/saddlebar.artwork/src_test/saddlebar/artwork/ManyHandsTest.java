package saddlebar.artwork;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import javax.imageio.ImageIO;

import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import saddlebar.model.problem.Refusal;

/** Drawings that other people and programs made and that happen to be on this machine: none is a fault of ours, and they look as light as librsvg paints them. */
class ManyHandsTest {
    private static final Path SHARE = Path.of("/usr/share");
    private static final int SAMPLE = 25;
    private static final int PX = 160;
    private static final double MOST_TONE = 0.03;

    @TempDir
    Path folder;

    @Test
    void aSampleLooksAsLightAsElsewhere() throws IOException {
        Outside.assumeInstalled("rsvg-convert");
        List<Path> all;
        try (Stream<Path> files = Files.walk(SHARE, 8)) {
            all = files.filter(file -> file.toString().endsWith(".svg") && Files.isReadable(file) && Files.isRegularFile(file)).sorted().toList();
        }
        Assumptions.assumeTrue(all.size() >= SAMPLE, "too few drawings lie under " + SHARE);
        List<String> off = new ArrayList<>();
        int compared = 0;
        for (int i = 0; i < SAMPLE; i++) {
            Path file = all.get((int) ((long) i * all.size() / SAMPLE));
            try {
                Art art = Art.read(file);
                double scale = PX / Math.max(art.widthMm(), art.heightMm());
                int width = (int) Math.max(1, Math.rint(art.widthMm() * scale));
                int height = (int) Math.max(1, Math.rint(art.heightMm() * scale));
                BufferedImage ours = art.picture(width, height);
                Outside.run(folder, "rsvg-convert", "-b", "white", "-w", Integer.toString(width), "-h", Integer.toString(height), "-o", "theirs.png",
                        file.toString());
                BufferedImage theirs = ImageIO.read(folder.resolve("theirs.png").toFile());
                PictureComparison found = PictureComparison.of(ours, theirs);
                compared++;
                if (found.tone() > MOST_TONE) {
                    off.add(file + ": " + found);
                }
            } catch (Refusal e) {
                assertTrue(e.getMessage().startsWith(file.getFileName().toString()), e.getMessage());
            }
        }
        assertTrue(compared > SAMPLE / 2, "only " + compared + " drawings could be read");
        assertEquals(List.of(), off);
    }
}
