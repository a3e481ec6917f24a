package saddlebar.stencil;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;

import org.junit.jupiter.api.Test;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import saddlebar.model.art.GrayBands;
import saddlebar.stencil.tone.ToneTable;

class ScreenedBandsTest {
    private static final ScreeningMethods METHODS = ScreeningMethods.ownMethods();

    /** Bands of any height, on either side, give the same bits: for every method. */
    @Property(tries = 60)
    void heightOfBandsDoesNotMatter(@ForAll @IntRange(min = 1, max = 200) int width, @ForAll @IntRange(min = 1, max = 90) int height,
            @ForAll @IntRange(min = 1, max = 40) int grayRows, @ForAll @IntRange(min = 1, max = 40) int bitRows, @ForAll long seed)
            throws IOException {
        byte[] codes = Fields.noise(width * height, seed);
        for (String key : METHODS.keys()) {
            ScreeningRecipe recipe = ScreeningRecipe.withDefaults().withMethod(key);
            BitPicture whole = Fields.screened(METHODS.method(key), recipe, ToneTable.linear(), width, height, height,
                    (x, y) -> codes[y * width + x]);
            BitPicture pieces = new BitPicture(width, height);
            try (GrayBands gray = Fields.gray(width, height, grayRows, (x, y) -> codes[y * width + x]);
                    BitBands bits = new ScreenedBands(gray, ToneTable.linear(), METHODS.method(key), recipe)) {
                long[] band = new long[bitRows * bits.wordsPerRow()];
                int row = 0;
                for (int rows = bits.read(band, bitRows); rows > 0; rows = bits.read(band, bitRows)) {
                    System.arraycopy(band, 0, pieces.words(), row * bits.wordsPerRow(), rows * bits.wordsPerRow());
                    row += rows;
                }
                assertEquals(height, row);
            }
            assertEquals(whole, pieces, key);
        }
    }

    /** A mask cuts at the px, also through a dot of 12 px. */
    @Property(tries = 60)
    void cutToAMask(@ForAll @IntRange(min = 1, max = 200) int width, @ForAll @IntRange(min = 1, max = 60) int height, @ForAll long seed)
            throws IOException {
        ScreeningRecipe recipe = ScreeningRecipe.withDefaults().withMethod("diffusion");
        BitPicture mask = new BitPicture(width, height);
        byte[] noise = Fields.noise(width * height, seed);
        for (int i = 0; i < noise.length; i++) {
            mask.set(i % width, i / width, noise[i] > 0);
        }
        BitPicture uncut = Fields.screened(METHODS.method("diffusion"), recipe, ToneTable.linear(), width, height, 7, (x, y) -> 100);
        BitPicture cut;
        try (GrayBands gray = Fields.gray(width, height, 5, (x, y) -> 100);
                BitBands maskBands = mask.bands();
                BitBands screened = new ScreenedBands(gray, ToneTable.linear(), METHODS.method("diffusion"), recipe);
                BitBands clipped = new ClippedBands(screened, maskBands)) {
            cut = BitPicture.of(clipped);
        }
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                assertEquals(uncut.get(x, y) && mask.get(x, y), cut.get(x, y));
            }
        }
    }

    @Test
    void aMaskOfAnotherSize() {
        try (BitBands bits = new BitPicture(3, 3).bands(); BitBands mask = new BitPicture(3, 4).bands()) {
            assertThrows(IllegalArgumentException.class, () -> new ClippedBands(bits, mask).close());
        }
    }

    /** Line art: half covered is painted, a little less is not. */
    @Test
    void solid() {
        assertEquals("1111111100000000", Fields.text(Fields.screened(METHODS.method("solid"), ScreeningRecipe.withDefaults(),
                Fields.tone(1, 0.5, 0.49), 16, 1, 1, (x, y) -> x < 4 ? 0 : x < 8 ? 1 : x < 12 ? 2 : 3)));
    }

    @Test
    void picturesThatEndEarly() {
        try (GrayBands gray = new ShortBands();
                BitBands bits = new ScreenedBands(gray, ToneTable.linear(), METHODS.method("am"),
                        ScreeningRecipe.withDefaults())) {
            assertThrows(IOException.class, () -> bits.read(new long[10], 10));
        }
    }

    private static final class ShortBands implements GrayBands {
        private final GrayBands one = Fields.gray(5, 1, 1, (x, y) -> 0);

        @Override
        public int widthPx() {
            return 5;
        }

        @Override
        public int heightPx() {
            return 2;
        }

        @Override
        public saddlebar.model.art.GrayCoding coding() {
            return one.coding();
        }

        @Override
        public int read(byte[] target, int maxRows) throws IOException {
            return one.read(target, maxRows);
        }

        @Override
        public void close() {
            one.close();
        }
    }
}
