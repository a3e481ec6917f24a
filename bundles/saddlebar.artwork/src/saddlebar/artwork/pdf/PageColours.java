package saddlebar.artwork.pdf;

import java.io.IOException;

import org.apache.pdfbox.pdmodel.graphics.color.PDCIEBasedColorSpace;
import org.apache.pdfbox.pdmodel.graphics.color.PDColor;
import org.apache.pdfbox.pdmodel.graphics.color.PDColorSpace;
import org.apache.pdfbox.pdmodel.graphics.color.PDDeviceCMYK;
import org.apache.pdfbox.pdmodel.graphics.color.PDDeviceN;
import org.apache.pdfbox.pdmodel.graphics.color.PDICCBased;
import org.apache.pdfbox.pdmodel.graphics.color.PDSeparation;

/**
 * Colours of a page as sRGB code values. Gray stays the gray it is. Ink (cyan, magenta, yellow, black) becomes light without a profile, r =
 * (1 - c)(1 - k), the same as in pictures of ink, so that full black is 0; one ink called Black or All is gray. All else is as the library
 * turns it into sRGB.
 */
final class PageColours {
    private final PageFindings findings;

    PageColours(PageFindings findings) {
        this.findings = findings;
    }

    /** 0xAARRGGBB. */
    int argb(PDColor color, double opacity) throws IOException {
        return argb(color.getComponents(), color.getColorSpace(), opacity);
    }

    int argb(float[] values, PDColorSpace space, double opacity) throws IOException {
        float[] rgb = rgb(values, space);
        return code(opacity) << 24 | code(rgb[0]) << 16 | code(rgb[1]) << 8 | code(rgb[2]);
    }

    private float[] rgb(float[] values, PDColorSpace space) throws IOException {
        if (values.length == 4 && (space instanceof PDDeviceCMYK || space instanceof PDICCBased)) {
            if (values[0] != 0 || values[1] != 0 || values[2] != 0) {
                findings.warn("art-colour", "colours are inks (cyan, magenta, yellow, black) and are turned into light without a profile, so they may look"
                        + " different; use gray or sRGB");
            }
            float light = 1 - values[3];
            return new float[] {(1 - values[0]) * light, (1 - values[1]) * light, (1 - values[2]) * light};
        }
        if (space instanceof PDSeparation one && ("Black".equals(one.getColorantName()) || "All".equals(one.getColorantName()))) {
            float gray = 1 - values[0];
            return new float[] {gray, gray, gray};
        }
        if (space instanceof PDSeparation one && "None".equals(one.getColorantName())) {
            findings.warn("art-colour", "something is painted with the ink None, which leaves no mark elsewhere but is shown here");
        }
        if (space instanceof PDDeviceN) {
            findings.note("art-colour", "colours are mixed of named inks (DeviceN) and are turned into sRGB as the file says");
        }
        if (values.length == 1 && space instanceof PDCIEBasedColorSpace) { // gray with a profile: its code value is what was meant on film
            return new float[] {values[0], values[0], values[0]};
        }
        return space.toRGB(values);
    }

    private static int code(double share) {
        return (int) Math.max(0, Math.min(255, Math.floor(share * 255 + 0.5)));
    }
}
