package saddlebar.stencil.wedge;

import java.io.IOException;
import java.util.Arrays;

import saddlebar.model.art.GrayBands;
import saddlebar.model.art.GrayCoding;
import saddlebar.model.units.Require;
import saddlebar.stencil.BitBands;
import saddlebar.stencil.BitPicture;
import saddlebar.stencil.ScreenedBands;
import saddlebar.stencil.ScreeningMethod;
import saddlebar.stencil.ScreeningRecipe;
import saddlebar.stencil.tone.ToneTable;

/** One coverage all over, screened: patches of wedges, and trials of a method. */
public final class FlatTone {
    private FlatTone() {
    }

    /** @param coverage 0 to 1 */
    public static BitPicture bits(ScreeningMethod method, ScreeningRecipe recipe, double coverage, int widthPx, int heightPx) throws IOException {
        double[] table = new double[256];
        table[0] = Require.within("coverage", coverage, 0, 1);
        try (BitBands screened = new ScreenedBands(new Flat(widthPx, heightPx), ToneTable.of(table), method, recipe)) {
            return BitPicture.of(screened);
        }
    }

    /** A field of code 0. */
    private static final class Flat implements GrayBands {
        private final int widthPx;
        private final int heightPx;
        private int row;

        Flat(int widthPx, int heightPx) {
            this.widthPx = widthPx;
            this.heightPx = heightPx;
        }

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
            int rows = Math.min(maxRows, heightPx - row);
            Arrays.fill(target, 0, rows * widthPx, (byte) 0);
            row += rows;
            return rows;
        }

        @Override
        public void close() {
            // nothing was opened
        }
    }
}
