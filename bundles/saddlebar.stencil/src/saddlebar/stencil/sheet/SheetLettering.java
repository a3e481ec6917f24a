package saddlebar.stencil.sheet;

import java.io.IOException;

import saddlebar.model.units.Units;
import saddlebar.stencil.BitPicture;

/** Short words as bits in the sheet's own letters, for what is drawn within stencils. For one thread. */
public final class SheetLettering implements AutoCloseable {
    private final SheetFont font;

    public SheetLettering() throws IOException {
        this.font = new SheetFont();
    }

    /** Words in the middle of a box, shortened if they are too long for it. */
    public BitPicture bits(String words, double emMm, double widthMm, double heightMm, double dpi) throws IOException {
        String fitted = font.fitted(words, emMm, widthMm);
        double xMm = (widthMm - font.widthMm(fitted, emMm)) / 2;
        double yMm = (heightMm + SheetFont.CAPITAL_EM * emMm) / 2;
        return OutlineFill.bits(font.outline(fitted, xMm, yMm, emMm), dpi, 0, 0, Units.pxOfMm(widthMm, dpi), Units.pxOfMm(heightMm, dpi));
    }

    @Override
    public void close() throws IOException {
        font.close();
    }
}
