package saddlebar.stencil.limits;

import java.util.List;

import saddlebar.model.problem.PlaceMm;
import saddlebar.model.units.Require;
import saddlebar.model.units.Units;
import saddlebar.stencil.BitPicture;

/** How two layers of one face meet: where they lie over each other, and how one is spread under the other so that no bare gap shows between them. */
public final class LayerTrap {
    private static final int MOST_PLACES = 100;

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

    /**
     * Where two layers meet without overlapping enough: their edges come nearer than the trap, and no overlap as wide as the trap lies beside.
     *
     * @param lengthMm   of such edges in all, about: their area over the trap
     * @param places     first px of each, from the top, 100 at most
     * @param overlapMm2 area that both paint
     */
    public record Meeting(double lengthMm, List<PlaceMm> places, double overlapMm2) {
        public Meeting {
            places = List.copyOf(places);
        }
    }

    /** @param trapMm the overlap that is wanted, above 0 to 3; looked for at the resolution of the pictures */
    public static Meeting meeting(BitPicture first, BitPicture second, double dpi, double trapMm) {
        requireAlike(first, second);
        double trapPx = Require.within("trapMm", trapMm, 0.01, 3) * dpi / Units.MM_PER_INCH;
        int width = first.widthPx();
        int height = first.heightPx();
        BitPicture both = new BitPicture(width, height);
        for (int i = 0; i < both.words().length; i++) {
            both.words()[i] = first.words()[i] & second.words()[i];
        }
        DistanceField inBoth = DistanceField.to(both, false, false);
        double half = Math.max(0.5, trapPx / 2 - 0.5);
        BitPicture wide = new BitPicture(width, height);
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                wide.set(x, y, inBoth.squared(x, y) >= half * half && both.get(x, y));
            }
        }
        DistanceField toWide = DistanceField.to(wide, true, false);
        DistanceField toSecond = DistanceField.to(second, true, false);
        BitPicture bare = new BitPicture(width, height);
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                bare.set(x, y, first.get(x, y) && !second.get(x, y) && toSecond.squared(x, y) <= trapPx * trapPx
                        && toWide.squared(x, y) > 4 * trapPx * trapPx);
            }
        }
        List<PlaceMm> places = BitParts.firsts(bare, MOST_PLACES).stream()
                .map(px -> new PlaceMm(Units.mmOfPx(px[0] + 0.5, dpi), Units.mmOfPx(px[1] + 0.5, dpi))).toList();
        double sideMm = Units.mmOfPx(1, dpi);
        return new Meeting(bare.count() * sideMm * sideMm / trapMm, places, overlapMm2(first, second, dpi));
    }

    private static void requireAlike(BitPicture first, BitPicture second) {
        if (first.widthPx() != second.widthPx() || first.heightPx() != second.heightPx()) {
            throw new IllegalArgumentException(
                    "layers of " + first.widthPx() + " x " + first.heightPx() + " and " + second.widthPx() + " x " + second.heightPx()
                            + " px do not lie over each other");
        }
    }
}
