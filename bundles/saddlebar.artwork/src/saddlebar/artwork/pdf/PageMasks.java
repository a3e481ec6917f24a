package saddlebar.artwork.pdf;

import java.awt.Shape;
import java.io.IOException;

import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.common.function.PDFunction;
import org.apache.pdfbox.pdmodel.common.function.PDFunctionTypeIdentity;
import org.apache.pdfbox.pdmodel.graphics.blend.BlendMode;
import org.apache.pdfbox.pdmodel.graphics.color.PDColorSpace;
import org.apache.pdfbox.pdmodel.graphics.form.PDTransparencyGroup;
import org.apache.pdfbox.pdmodel.graphics.state.PDSoftMask;

import saddlebar.artwork.drawing.Blend;
import saddlebar.artwork.drawing.Group;
import saddlebar.artwork.drawing.Mask;

/** Soft masks (ISO 32000-1, 11.6.5.3) and blend modes (11.3.5) in the words of our drawing. */
final class PageMasks {
    private PageMasks() {
    }

    /** @param region nothing shows outside, mm */
    static Mask of(PDSoftMask mask, Group content, Shape region, PageColours colours) throws IOException {
        boolean byOpacity = COSName.ALPHA.equals(mask.getSubType());
        return new Mask(content, region, byOpacity, byOpacity ? 0 : ground(mask, colours), curve(mask.getTransferFunction()));
    }

    /** Luminance of the backdrop colour, which is in the group's own colour space; black if it does not say. */
    private static int ground(PDSoftMask mask, PageColours colours) throws IOException {
        PDTransparencyGroup group = mask.getGroup();
        PDColorSpace space = group.getGroup() == null ? null : group.getGroup().getColorSpace(group.getResources());
        if (mask.getBackdropColor() == null || space == null || mask.getBackdropColor().size() != space.getNumberOfComponents()) {
            return 0;
        }
        int rgb = colours.argb(mask.getBackdropColor().toFloatArray(), space, 1);
        return (int) Math.rint(0.2126 * (rgb >> 16 & 0xFF) + 0.7152 * (rgb >> 8 & 0xFF) + 0.0722 * (rgb & 0xFF));
    }

    private static byte[] curve(PDFunction transfer) throws IOException {
        if (transfer == null || transfer instanceof PDFunctionTypeIdentity) {
            return null;
        }
        byte[] curve = new byte[256];
        for (int i = 0; i < 256; i++) {
            curve[i] = (byte) Math.rint(255 * Math.max(0, Math.min(1, transfer.eval(new float[] {i / 255f})[0])));
        }
        return curve;
    }

    static Blend blend(BlendMode mode) {
        return switch (mode.getCOSName().getName()) {
            case "Multiply" -> Blend.MULTIPLY;
            case "Screen" -> Blend.SCREEN;
            case "Overlay" -> Blend.OVERLAY;
            case "Darken" -> Blend.DARKEN;
            case "Lighten" -> Blend.LIGHTEN;
            case "ColorDodge" -> Blend.COLOR_DODGE;
            case "ColorBurn" -> Blend.COLOR_BURN;
            case "HardLight" -> Blend.HARD_LIGHT;
            case "SoftLight" -> Blend.SOFT_LIGHT;
            case "Difference" -> Blend.DIFFERENCE;
            case "Exclusion" -> Blend.EXCLUSION;
            case "Hue" -> Blend.HUE;
            case "Saturation" -> Blend.SATURATION;
            case "Color" -> Blend.COLOR;
            case "Luminosity" -> Blend.LUMINOSITY;
            default -> Blend.NORMAL; // Normal, Compatible, and what nobody knows (11.6.3)
        };
    }
}
