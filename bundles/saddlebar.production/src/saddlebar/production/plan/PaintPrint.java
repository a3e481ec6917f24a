package saddlebar.production.plan;

import saddlebar.model.units.Require;

/**
 * A coarse gray picture of the paint on one piece, rows top first, 0 black to 255 bare. Two prints count as the same if no px differs by more
 * than {@value #MOST_PX} code values and the mean difference is at most {@value #MOST_MEAN} (our own limits: rendering the same drawing at
 * another fraction of a px moves a hard edge by less).
 */
public record PaintPrint(int widthPx, int heightPx, byte[] gray) {
    static final int MOST_PX = 40;
    static final double MOST_MEAN = 1.0;
    /** Darker than this anywhere means that something is printed. */
    private static final int BARE = 250;

    public PaintPrint {
        Require.within("widthPx", widthPx, 1, 100_000);
        Require.within("heightPx", heightPx, 1, 100_000);
        if (gray.length != Math.multiplyExact(widthPx, heightPx)) {
            throw new IllegalArgumentException("gray must hold " + widthPx + " x " + heightPx + " bytes but has " + gray.length);
        }
        gray = gray.clone();
    }

    @Override
    public byte[] gray() {
        return gray.clone();
    }

    public boolean isBare() {
        for (byte value : gray) {
            if ((value & 0xff) < BARE) {
                return false;
            }
        }
        return true;
    }

    boolean sameAs(PaintPrint other) {
        if (widthPx != other.widthPx || heightPx != other.heightPx) {
            return false;
        }
        long sum = 0;
        for (int i = 0; i < gray.length; i++) {
            int difference = Math.abs((gray[i] & 0xff) - (other.gray[i] & 0xff));
            if (difference > MOST_PX) {
                return false;
            }
            sum += difference;
        }
        return sum <= MOST_MEAN * gray.length;
    }
}
