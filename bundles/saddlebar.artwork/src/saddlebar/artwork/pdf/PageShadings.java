package saddlebar.artwork.pdf;

import java.awt.geom.AffineTransform;
import java.io.IOException;
import java.util.Optional;

import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBoolean;
import org.apache.pdfbox.pdmodel.graphics.shading.PDShading;
import org.apache.pdfbox.pdmodel.graphics.shading.PDShadingType2;
import org.apache.pdfbox.pdmodel.graphics.shading.PDShadingType3;

import saddlebar.artwork.drawing.Ramp;
import saddlebar.artwork.drawing.Tint;

/**
 * Axial and radial shadings (ISO 32000-1, 8.7.4.5.3 and .4) as ramps. A function is sampled at {@value #SAMPLES} places; where a shading is
 * not extended it is clear beyond its ends.
 */
final class PageShadings {
    private static final int SAMPLES = 256;

    private final PageColours colours;
    private final PageFindings findings;

    PageShadings(PageColours colours, PageFindings findings) {
        this.colours = colours;
        this.findings = findings;
    }

    /** Whether a shading is kept as a ramp: along a line, or between circles of which one holds the other. */
    boolean isRamp(PDShading shading) throws IOException {
        if (shading instanceof PDShadingType3 radial) {
            double[] c = numbers(radial.getCoords(), 6);
            return Math.hypot(c[0] - c[3], c[1] - c[4]) < Math.abs(c[2] - c[5]);
        }
        return shading instanceof PDShadingType2 && shading.getShadingType() == PDShading.SHADING_TYPE2;
    }

    /** @param toMm from shading space to mm; empty, and told, if it cannot be drawn */
    Optional<Tint> tint(PDShading shading, AffineTransform toMm, double opacity) throws IOException {
        if (shading.getBackground() != null) {
            findings.note("art-shading", "a shading has a background colour, which is left out");
        }
        if (shading instanceof PDShadingType3 radial) {
            return radial(radial, toMm, opacity);
        } else if (shading instanceof PDShadingType2 axial && shading.getShadingType() == PDShading.SHADING_TYPE2) {
            double[] c = numbers(axial.getCoords(), 4);
            boolean[] extend = extend(axial);
            Ramp ramp = ramp(axial, opacity, 0, false, extend[0], extend[1]);
            return Optional.of(new Ramp.Linear(ramp, c[0], c[1], c[2], c[3], toMm));
        }
        findings.warn("art-shading", "a shading of the kind " + shading.getShadingType() + " (by function or mesh) is not drawn; turn it into a picture");
        return Optional.empty();
    }

    /**
     * Circles between two circles are circles that grow from a point, the apex, where the radius is 0: at s = -r0 / (r1 - r0). If that lies
     * inside the larger circle it is the focus of a ramp whose place t is (s - apex) / (1 - apex).
     */
    private Optional<Tint> radial(PDShadingType3 shading, AffineTransform toMm, double opacity) throws IOException {
        double[] c = numbers(shading.getCoords(), 6);
        boolean swapped = c[2] > c[5];
        if (swapped) {
            c = new double[] {c[3], c[4], c[5], c[0], c[1], c[2]};
        }
        boolean[] extend = extend(shading);
        double apex = c[5] > c[2] ? -c[2] / (c[5] - c[2]) : Double.NaN;
        double fx = c[0] + apex * (c[3] - c[0]);
        double fy = c[1] + apex * (c[4] - c[1]);
        if (!(Math.hypot(fx - c[3], fy - c[4]) < c[5])) {
            findings.warn("art-shading", "a radial shading between two circles of which neither holds the other is not drawn; turn it into a picture");
            return Optional.empty();
        }
        double start = -apex / (1 - apex); // place of the smaller circle on the way from the focus
        Ramp ramp = ramp(shading, opacity, start, swapped, extend[swapped ? 1 : 0], extend[swapped ? 0 : 1]);
        return Optional.of(new Ramp.Radial(ramp, c[3], c[4], c[5], fx, fy, toMm));
    }

    private Ramp ramp(PDShadingType2 shading, double opacity, double start, boolean backward, boolean extendFirst, boolean extendLast)
            throws IOException {
        COSArray range = shading.getDomain();
        double from = range == null ? 0 : numbers(range, 2)[0];
        double to = range == null ? 1 : numbers(range, 2)[1];
        int first = extendFirst ? 0 : 1;
        int last = extendLast ? 0 : 1;
        double[] offsets = new double[first + SAMPLES + last];
        int[] argb = new int[offsets.length];
        for (int i = 0; i < SAMPLES; i++) {
            double share = (double) i / (SAMPLES - 1);
            double at = backward ? 1 - share : share;
            offsets[first + i] = start + share * (1 - start);
            argb[first + i] = colours.argb(shading.evalFunction((float) (from + at * (to - from))), shading.getColorSpace(), opacity);
        }
        if (first > 0) {
            offsets[0] = start;
            argb[0] = argb[1] & 0xFFFFFF;
        }
        if (last > 0) {
            offsets[offsets.length - 1] = 1;
            argb[argb.length - 1] = argb[argb.length - 2] & 0xFFFFFF;
        }
        return new Ramp(offsets, argb, Ramp.Spread.PAD, false);
    }

    private static boolean[] extend(PDShadingType2 shading) {
        COSArray extend = shading.getExtend();
        return new boolean[] {extend != null && extend.size() > 0 && extend.getObject(0) == COSBoolean.TRUE,
                extend != null && extend.size() > 1 && extend.getObject(1) == COSBoolean.TRUE};
    }

    private static double[] numbers(COSArray array, int count) throws IOException {
        float[] given = array == null ? new float[0] : array.toFloatArray();
        if (given.length < count) {
            throw new IOException("a shading has " + given.length + " numbers where " + count + " are needed");
        }
        double[] numbers = new double[count];
        for (int i = 0; i < count; i++) {
            numbers[i] = given[i];
        }
        return numbers;
    }
}
