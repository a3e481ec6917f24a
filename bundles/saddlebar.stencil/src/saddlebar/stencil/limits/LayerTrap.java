package saddlebar.stencil.limits;

import saddlebar.model.units.Require;
import saddlebar.model.units.Units;
import saddlebar.stencil.BitPicture;

/** How two layers of one face meet: where they lie over each other, and how one is spread under the other so that no bare gap shows between them. */
public final class LayerTrap {
    private LayerTrap() {
    }

    /** Area in mm2 that both paint. */
    public static double overlapMm2(BitPicture first, BitPicture second, double dpi) {
        requireAlike(first, second);
        long px = 0;
        for (int i = 0; i < first.words().length; i++) {
            px += Long.bitCount(first.words()[i] & second.words()[i]);
        }
        double sideMm = Units.mmOfPx(1, dpi);
        return px * sideMm * sideMm;
    }

    /**
     * The under layer, spread into the over layer by so much wherever they meet; nothing is added where neither paints.
     *
     * @param trapMm 0 to 3
     */
    public static BitPicture spread(BitPicture under, BitPicture over, double dpi, double trapMm) {
        requireAlike(under, over);
        double trapPx = Require.within("trapMm", trapMm, 0, 3) * dpi / Units.MM_PER_INCH;
        DistanceField near = DistanceField.to(under, true, false);
        BitPicture spread = new BitPicture(under.widthPx(), under.heightPx());
        for (int y = 0; y < under.heightPx(); y++) {
            for (int x = 0; x < under.widthPx(); x++) {
                spread.set(x, y, under.get(x, y) || over.get(x, y) && near.squared(x, y) <= trapPx * trapPx);
            }
        }
        return spread;
    }

    private static void requireAlike(BitPicture first, BitPicture second) {
        if (first.widthPx() != second.widthPx() || first.heightPx() != second.heightPx()) {
            throw new IllegalArgumentException(
                    "layers of " + first.widthPx() + " x " + first.heightPx() + " and " + second.widthPx() + " x " + second.heightPx()
                            + " px do not lie over each other");
        }
    }
}
