package saddlebar.artwork.svg;

import java.awt.Rectangle;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.awt.image.ColorModel;
import java.awt.image.RenderedImage;
import java.awt.image.WritableRaster;
import java.awt.image.renderable.RenderContext;

import org.apache.batik.ext.awt.image.GraphicsUtil;
import org.apache.batik.ext.awt.image.PadMode;
import org.apache.batik.ext.awt.image.renderable.AbstractColorInterpolationRable;
import org.apache.batik.ext.awt.image.renderable.Filter;
import org.apache.batik.ext.awt.image.rendered.AffineRed;
import org.apache.batik.ext.awt.image.rendered.BufferedImageCachableRed;
import org.apache.batik.ext.awt.image.rendered.CachableRed;
import org.apache.batik.ext.awt.image.rendered.PadRed;

/**
 * The filter feConvolveMatrix (SVG 1.1, 15.13) with every kernel, bias and edge mode. Batik's own hands the work to the platform, which refuses kernels
 * and pictures of many sizes. The kernel counts pixels of the device unless the drawing says how large its steps are.
 */
final class Convolution extends AbstractColorInterpolationRable {
    /** More work than this for one picture is a trap. */
    private static final long MOST_STEPS = 4_000_000_000L;

    /**
     * What the drawing asks for.
     *
     * @param columns       of the kernel
     * @param rows          of the kernel
     * @param weights       row by row, already divided
     * @param targetX       column of the kernel that lies on the pixel
     * @param targetY       row
     * @param bias          added, as a share of the opacity
     * @param edge          what lies beyond the edge of the picture
     * @param stepUser      user units a step across and down, or null for device pixels
     * @param preserveAlpha whether the opacity stays as it is
     */
    record Kernel(int columns, int rows, float[] weights, int targetX, int targetY, double bias, PadMode edge, double[] stepUser, boolean preserveAlpha) {
    }

    private final Filter input;
    private final Kernel kernel;

    Convolution(Filter input, Kernel kernel) {
        super(input);
        this.input = input;
        this.kernel = kernel;
    }

    @Override
    public RenderedImage createRendering(RenderContext context) {
        AffineTransform at = context.getTransform();
        double scaleX = Math.hypot(at.getScaleX(), at.getShearY());
        double scaleY = Math.hypot(at.getShearX(), at.getScaleY());
        if (kernel.stepUser != null) {
            scaleX = kernel.stepUser[0] > 0 ? 1 / kernel.stepUser[0] : scaleX;
            scaleY = kernel.stepUser[1] > 0 ? 1 / kernel.stepUser[1] : scaleY;
        }
        if (!(scaleX > 0 && scaleY > 0)) {
            return null;
        }
        Shape asked = context.getAreaOfInterest() == null ? getBounds2D() : context.getAreaOfInterest();
        AffineTransform toSteps = AffineTransform.getScaleInstance(scaleX, scaleY);
        Rectangle wanted = toSteps.createTransformedShape(asked).getBounds2D().createIntersection(toSteps.createTransformedShape(getBounds2D()).getBounds2D())
                .getBounds();
        if (wanted.isEmpty() || (long) wanted.width * wanted.height * kernel.weights.length > MOST_STEPS) {
            return null;
        }
        Rectangle needed = new Rectangle(wanted.x - kernel.targetX, wanted.y - kernel.targetY, wanted.width + kernel.columns - 1,
                wanted.height + kernel.rows - 1);
        Rectangle2D neededUser = new Rectangle2D.Double(needed.x / scaleX, needed.y / scaleY, needed.width / scaleX, needed.height / scaleY);
        RenderedImage drawn = input.createRendering(new RenderContext(toSteps, neededUser, context.getRenderingHints()));
        if (drawn == null) {
            return null;
        }
        CachableRed whole = convertSourceCS(drawn);
        if (!whole.getBounds().equals(needed)) {
            whole = new PadRed(whole, needed, kernel.edge, context.getRenderingHints());
        }
        CachableRed result = new BufferedImageCachableRed(convolved(whole, wanted), wanted.x, wanted.y);
        AffineTransform rest = new AffineTransform(at);
        rest.scale(1 / scaleX, 1 / scaleY);
        return rest.isIdentity() ? result : new AffineRed(result, rest, null);
    }

    private BufferedImage convolved(CachableRed whole, Rectangle wanted) {
        WritableRaster raster = GraphicsUtil.copyRaster(whole.getData(), 0, 0);
        ColorModel model = GraphicsUtil.coerceData(raster, whole.getColorModel(), !kernel.preserveAlpha);
        int bands = raster.getNumBands();
        int colours = model.hasAlpha() ? bands - 1 : bands;
        int stride = raster.getWidth() * bands;
        int[] from = raster.getPixels(0, 0, raster.getWidth(), raster.getHeight(), (int[]) null);
        BufferedImage image = new BufferedImage(isColorSpaceLinear() ? GraphicsUtil.Linear_sRGB_Pre : GraphicsUtil.sRGB_Pre,
                GraphicsUtil.Linear_sRGB_Pre.createCompatibleWritableRaster(wanted.width, wanted.height), true, null);
        int[] row = new int[4 * wanted.width];
        for (int y = 0; y < wanted.height; y++) {
            for (int x = 0; x < wanted.width; x++) {
                pixel(from, y * stride + x * bands, stride, bands, colours, row, 4 * x);
            }
            image.getRaster().setPixels(0, y, wanted.width, 1, row);
        }
        return image;
    }

    /** The result is premultiplied; its colours never exceed its opacity. */
    private void pixel(int[] from, int at, int stride, int bands, int colours, int[] to, int target) {
        int own = at + kernel.targetY * stride + kernel.targetX * bands;
        int before = colours < bands ? from[own + bands - 1] : 255;
        int alpha = kernel.preserveAlpha || colours == bands ? before : clamped(sum(from, at + bands - 1, stride, bands) + kernel.bias * 255, 255);
        for (int c = 0; c < 3; c++) {
            double sum = sum(from, at + Math.min(c, colours - 1), stride, bands);
            to[target + c] = kernel.preserveAlpha
                    ? (clamped(sum + kernel.bias * 255, 255) * alpha + 127) / 255
                    : clamped(sum + kernel.bias * alpha, alpha);
        }
        to[target + 3] = alpha;
    }

    private double sum(int[] from, int at, int stride, int bands) {
        double sum = 0;
        for (int i = 0; i < kernel.rows; i++) {
            for (int j = 0; j < kernel.columns; j++) {
                sum += from[at + i * stride + j * bands] * kernel.weights[(kernel.rows - 1 - i) * kernel.columns + kernel.columns - 1 - j];
            }
        }
        return sum;
    }

    private static int clamped(double value, int most) {
        return (int) Math.max(0, Math.min(most, Math.rint(value)));
    }

    @Override
    public Rectangle2D getBounds2D() {
        return input.getBounds2D();
    }
}
