package saddlebar.stencil;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.stream.Stream;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import saddlebar.stencil.tone.ToneTable;

/** What every screening method keeps to. A method of another bundle is tested by adding it to {@link #methods}. */
class ScreeningMethodContractTest {
    private static final ScreeningRecipe RECIPE = ScreeningRecipe.withDefaults();

    static Stream<ScreeningMethod> methods() {
        ScreeningMethods methods = ScreeningMethods.ownMethods();
        return methods.keys().stream().map(methods::method);
    }

    @ParameterizedTest
    @MethodSource("methods")
    void bareStaysBareAndSolidStaysSolid(ScreeningMethod method) {
        for (int width : new int[] {1, 63, 64, 65, 200}) {
            assertEquals(0, Fields.screened(method, RECIPE, ToneTable.linear(), width, 70, 9, (x, y) -> 255).count());
            assertEquals(70L * width, Fields.screened(method, RECIPE, ToneTable.linear(), width, 70, 9, (x, y) -> 0).count());
        }
    }

    /** Among other tones too: no dot strays into white paper and no hole into a solid, for every filter and the strongest clumps. */
    @ParameterizedTest
    @MethodSource("methods")
    void nothingStrays(ScreeningMethod method) {
        byte[] chance = Fields.noise(2 * 41 * 31, 11);
        byte[] codes = new byte[120 * 90];
        for (int i = 0; i < codes.length; i++) { // patches of 3 x 3 px: a third white, a third solid, the rest any tone
            int patch = i / 120 / 3 * 41 + i % 120 / 3;
            int kind = (chance[patch] & 255) % 3;
            codes[i] = kind == 0 ? (byte) 255 : kind == 1 ? 0 : chance[41 * 31 + patch];
        }
        for (String filter : DiffusionFilter.names()) {
            ScreeningRecipe fine = RECIPE.withDotMm(0.021).withFilter(filter).withClump(2);
            BitPicture bits = Fields.screened(method, fine, ToneTable.linear(), 120, 90, 90, (x, y) -> codes[y * 120 + x]);
            for (int i = 0; i < codes.length; i++) {
                if (codes[i] == 0 || codes[i] == -1) {
                    assertEquals(codes[i] == 0, bits.get(i % 120, i / 120), filter);
                }
            }
        }
    }

    /** Every word is written, whatever stood there, and bits past the width are 0. */
    @ParameterizedTest
    @MethodSource("methods")
    void everyWordIsWritten(ScreeningMethod method) {
        int width = 70;
        Screener screener = method.start(RECIPE, ToneTable.linear(), width, 48);
        assertTrue(screener.rowsTogether() >= 1);
        long[] bits = new long[48 * 2];
        Arrays.fill(bits, -1);
        byte[] gray = new byte[48 * width];
        Arrays.fill(gray, (byte) 255);
        screener.screen(gray, 48, bits);
        assertTrue(Arrays.stream(bits).allMatch(word -> word == 0));
        screener = method.start(RECIPE, ToneTable.linear(), width, 48);
        screener.screen(new byte[48 * width], 48, bits);
        for (int i = 0; i < bits.length; i += 2) {
            assertEquals(-1L, bits[i]);
            assertEquals(-1L << 58, bits[i + 1]);
        }
    }

    /** A service has no state: pictures begun side by side do not mix, and the same picture gives the same bits. */
    @ParameterizedTest
    @MethodSource("methods")
    void picturesSideBySide(ScreeningMethod method) {
        byte[] codes = Fields.noise(100 * 48, 3);
        BitPicture alone = Fields.screened(method, RECIPE, ToneTable.linear(), 100, 48, 48, (x, y) -> codes[y * 100 + x]);
        Screener first = method.start(RECIPE, ToneTable.linear(), 100, 48);
        Screener second = method.start(RECIPE, ToneTable.linear(), 100, 48);
        BitPicture one = new BitPicture(100, 48);
        BitPicture two = new BitPicture(100, 48);
        int together = first.rowsTogether();
        for (int row = 0; row < 48; row += together) {
            int rows = Math.min(together, 48 - row);
            byte[] band = Arrays.copyOfRange(codes, row * 100, (row + rows) * 100);
            long[] bits = new long[rows * 2];
            first.screen(band, rows, bits);
            System.arraycopy(bits, 0, one.words(), row * 2, bits.length);
            second.screen(band, rows, bits);
            System.arraycopy(bits, 0, two.words(), row * 2, bits.length);
        }
        assertEquals(alone, one);
        assertEquals(alone, two);
    }

    /** More darkness, more paint; and all but line art keep the tone to 1 % on a field of many dots. */
    @ParameterizedTest
    @MethodSource("methods")
    void tonesInOrder(ScreeningMethod method) {
        ScreeningRecipe fine = RECIPE.withDotMm(0.021);
        long before = 0;
        for (int percent = 5; percent <= 95; percent += 5) {
            // 240 px hold no more than 64 spots of a stipple, whose places are by chance: it is held to the same on a larger field
            int side = method.key().equals("stipple") ? 720 : 240;
            long count = Fields.flat(method, fine, percent / 100.0, side, side).count();
            assertTrue(count >= before, percent + " %");
            before = count;
            if (!method.key().equals("solid")) {
                assertEquals(percent / 100.0, count / (double) (side * side), 0.01, percent + " %");
            }
        }
    }

    @ParameterizedTest
    @MethodSource("methods")
    void saysWhatItDoes(ScreeningMethod method) {
        assertTrue(method.key().matches("[a-z]+"));
        assertTrue(method.actual(RECIPE).levels() >= 2);
        assertNotNull(method.advice(RECIPE));
    }
}
