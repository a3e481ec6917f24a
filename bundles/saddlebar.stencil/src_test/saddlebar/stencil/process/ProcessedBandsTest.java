package saddlebar.stencil.process;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.Random;

import org.junit.jupiter.api.Test;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import saddlebar.model.problem.Refusal;
import saddlebar.stencil.BitBands;
import saddlebar.stencil.BitPicture;

class ProcessedBandsTest {
    @Property(tries = 200)
    void everyPxGoesWhereItShould(@ForAll @IntRange(min = 1, max = 300) int width, @ForAll @IntRange(min = 1, max = 9) int height,
            @ForAll int seed, @ForAll boolean inverted, @ForAll boolean mirrored) throws IOException {
        BitPicture before = random(width, height, seed);
        BitPicture after = processed(before, inverted, mirrored);
        BitPicture expected = new BitPicture(width, height);
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                expected.set(mirrored ? width - 1 - x : x, y, before.get(x, y) != inverted);
            }
        }
        assertEquals(expected, after); // word by word: bits past the width are 0 too
    }

    @Property(tries = 200)
    void twiceIsItself(@ForAll @IntRange(min = 1, max = 300) int width, @ForAll int seed, @ForAll boolean inverted, @ForAll boolean mirrored)
            throws IOException {
        BitPicture before = random(width, 5, seed);
        assertEquals(before, processed(processed(before, inverted, mirrored), inverted, mirrored));
    }

    @Test
    void polarityAndWords() {
        StencilProcesses processes = StencilProcesses.ownProcesses();
        assertTrue(processes.process("fused-sheet").printsWhite());
        assertFalse(processes.process("film-positive").printsWhite());
        assertEquals("[film-positive, fused-sheet]", processes.keys().toString());
        assertTrue(processes.process("fused-sheet").caution().contains("hot"));
        assertEquals("process", assertThrows(Refusal.class, () -> processes.process("stencil-knife")).where());
    }

    private static BitPicture processed(BitPicture picture, boolean inverted, boolean mirrored) throws IOException {
        try (BitBands bits = picture.bands(); BitBands processed = new ProcessedBands(bits, inverted, mirrored)) {
            return BitPicture.of(processed);
        }
    }

    private static BitPicture random(int width, int height, int seed) {
        Random random = new Random(seed);
        BitPicture picture = new BitPicture(width, height);
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                picture.set(x, y, random.nextBoolean());
            }
        }
        return picture;
    }
}
