package saddlebar.ui.dots;

import java.awt.image.BufferedImage;
import java.util.Objects;
import java.util.Optional;

/** Paints a part of a stencil: each device pixel as a square, or from farther away as the gray that a square of them has together. */
public final class DotsPainter {
    static final int PAPER_RGB = 0xFFFFFF;
    static final int TONER_RGB = 0x17181A;
    /** Beyond the stencil's edge. */
    static final int OUTSIDE_RGB = 0xC9CCD0;
    /** Bluish green, told from black and white by the colour-blind too. Source: Okabe, M., Ito, K. (2008). Color Universal Design. */
    static final int THREAD_RGB = 0x009E73;
    private static final double THREAD_SHARE = 0.55;

    private final StencilBits bits;
    private final Optional<MeshLines> mesh;
    private final Optional<float[]> print;

    /** @param mesh laid over the dots, if it is to be seen */
    public DotsPainter(StencilBits bits, Optional<MeshLines> mesh) {
        this(bits, mesh, Optional.empty());
    }

    /** @param print the print foretold, share covered of each px, seen instead of the dots */
    public DotsPainter(StencilBits bits, Optional<MeshLines> mesh, Optional<float[]> print) {
        this.print = Objects.requireNonNull(print, "print");
        this.bits = Objects.requireNonNull(bits, "bits");
        this.mesh = Objects.requireNonNull(mesh, "mesh");
    }

    /**
     * Paints.
     *
     * @param left   device pixel at the left edge, may lie outside
     * @param top    device pixel at the upper edge
     * @param zoom   pixels of the picture a device pixel, above 0
     * @param width  of the picture
     * @param height of the picture
     */
    public BufferedImage paint(double left, double top, double zoom, int width, int height) {
        BufferedImage picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < height; y++) {
            double py = top + (y + 0.5) / zoom;
            for (int x = 0; x < width; x++) {
                double px = left + (x + 0.5) / zoom;
                int rgb = ground(px, py, zoom);
                boolean thread = mesh.isPresent() && mesh.get().threadAt(px / bits.pxPerMm(), py / bits.pxPerMm());
                picture.setRGB(x, y, thread ? mixed(rgb, THREAD_RGB, THREAD_SHARE) : rgb);
            }
        }
        return picture;
    }

    private int ground(double px, double py, double zoom) {
        if (px < 0 || py < 0 || px >= bits.widthPx() || py >= bits.heightPx()) {
            return OUTSIDE_RGB;
        }
        if (print.isPresent()) {
            return mixed(PAPER_RGB, TONER_RGB, covered((int) px, (int) py, (int) Math.max(1, Math.rint(1 / zoom))));
        }
        if (zoom >= 1) {
            return bits.black((int) px, (int) py) ? TONER_RGB : PAPER_RGB;
        }
        int side = (int) Math.max(1, Math.rint(1 / zoom));
        return mixed(PAPER_RGB, TONER_RGB, bits.share((int) (px - side / 2.0), (int) (py - side / 2.0), side, side));
    }

    private double covered(int px, int py, int side) {
        double sum = 0;
        int count = 0;
        for (int y = Math.max(0, py - side / 2); y <= Math.min(bits.heightPx() - 1, py + (side - 1) / 2); y++) {
            for (int x = Math.max(0, px - side / 2); x <= Math.min(bits.widthPx() - 1, px + (side - 1) / 2); x++) {
                sum += print.get()[y * bits.widthPx() + x];
                count++;
            }
        }
        return count == 0 ? 0 : sum / count;
    }

    private static int mixed(int one, int other, double share) {
        int rgb = 0;
        for (int shift = 16; shift >= 0; shift -= 8) {
            rgb = rgb << 8 | (int) Math.round((one >> shift & 0xff) * (1 - share) + (other >> shift & 0xff) * share);
        }
        return rgb;
    }
}
