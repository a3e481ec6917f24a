package saddlebar.stencil;

import java.io.IOException;
import java.util.Arrays;
import java.util.Random;
import java.util.function.IntBinaryOperator;

import saddlebar.model.art.GrayBands;
import saddlebar.model.art.GrayCoding;
import saddlebar.stencil.tone.ToneTable;

/** Gray test fields in memory, and bits as text. */
public final class Fields {
    private Fields() {
    }

    /** A picture of code values, handed over in bands of at most {@code bandRows} rows however many are asked for. */
    public static GrayBands gray(int widthPx, int heightPx, int bandRows, IntBinaryOperator codeAt) {
        return new GrayBands() {
            private int row;

            @Override
            public int widthPx() {
                return widthPx;
            }

            @Override
            public int heightPx() {
                return heightPx;
            }

            @Override
            public GrayCoding coding() {
                return GrayCoding.CODE_VALUES;
            }

            @Override
            public int read(byte[] target, int maxRows) {
                int rows = Math.min(Math.min(maxRows, bandRows), heightPx - row);
                for (int y = 0; y < rows; y++) {
                    for (int x = 0; x < widthPx; x++) {
                        target[y * widthPx + x] = (byte) codeAt.applyAsInt(x, row + y);
                    }
                }
                row += rows;
                return rows;
            }

            @Override
            public void close() {
                // nothing was opened
            }
        };
    }

    /** A table in which codes 0 to coverages.length - 1 cover what is said; the lighter codes nothing. Must not rise. */
    public static ToneTable tone(double... coverages) {
        return ToneTable.of(Arrays.copyOf(coverages, 256));
    }

    /** One coverage all over. */
    public static BitPicture flat(ScreeningMethod method, ScreeningRecipe recipe, double coverage, int widthPx, int heightPx) {
        return screened(method, recipe, tone(coverage), widthPx, heightPx, heightPx, (x, y) -> 0);
    }

    /** {@link #gray} on the whole way. */
    public static BitPicture screened(ScreeningMethod method, ScreeningRecipe recipe, ToneTable tone, int widthPx, int heightPx, int bandRows,
            IntBinaryOperator codeAt) {
        try (GrayBands gray = gray(widthPx, heightPx, bandRows, codeAt); BitBands bits = new ScreenedBands(gray, tone, method, recipe)) {
            return BitPicture.of(bits);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    /** Random code values, the same for the same seed. */
    public static byte[] noise(int px, long seed) {
        byte[] codes = new byte[px];
        new Random(seed).nextBytes(codes);
        return codes;
    }

    /** Rows of 0 and 1, joined by blanks, as the published fields are written. */
    public static String text(BitPicture picture) {
        StringBuilder text = new StringBuilder();
        for (int y = 0; y < picture.heightPx(); y++) {
            text.append(y == 0 ? "" : " ");
            for (int x = 0; x < picture.widthPx(); x++) {
                text.append(picture.get(x, y) ? '1' : '0');
            }
        }
        return text.toString();
    }

    /** A picture drawn with {@code #} for 1, one string a row. */
    public static BitPicture drawn(String... rows) {
        BitPicture picture = new BitPicture(rows[0].length(), rows.length);
        for (int y = 0; y < rows.length; y++) {
            for (int x = 0; x < rows[y].length(); x++) {
                picture.set(x, y, rows[y].charAt(x) == '#');
            }
        }
        return picture;
    }
}
