package saddlebar.artwork.pdf;

import java.awt.Color;
import java.awt.color.ColorSpace;
import java.awt.image.BufferedImage;
import java.awt.image.IndexColorModel;
import java.awt.image.Raster;
import java.io.IOException;
import java.io.InputStream;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.graphics.color.PDDeviceCMYK;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;

import saddlebar.artwork.drawing.Picture;
import saddlebar.artwork.raster.PictureFile;
import saddlebar.model.problem.Refusal;

/** Pictures of a page, decoded once each. What claims more pixels than a sheet needs is refused before a pixel is decoded. */
final class PagePictures {
    private static final long MOST_PX = 60_000_000;

    private final PageFindings findings;
    private final Map<COSBase, Picture> known = new IdentityHashMap<>();

    PagePictures(PageFindings findings) {
        this.findings = findings;
    }

    /** @param rgb colour of a stencil, which is painted through */
    Picture of(PDImage image, int rgb) throws IOException {
        Picture before = image.isStencil() ? null : known.get(image.getCOSObject());
        if (before != null) {
            return before;
        }
        judge(image.getWidth(), image.getHeight());
        if (image instanceof PDImageXObject stored) {
            judgeInside(stored);
            PDImageXObject soft = stored.getSoftMask() == null ? stored.getMask() : stored.getSoftMask();
            if (soft != null) {
                judge(soft.getWidth(), soft.getHeight());
                judgeInside(soft);
            }
        }
        if (!image.isStencil() && image.getColorSpace() instanceof PDDeviceCMYK) {
            findings.warn("art-picture", "the colours of a picture are inks (cyan, magenta, yellow, black), so it may look different; use gray or sRGB");
        }
        Picture picture = picture(image.isStencil() ? image.getStencilImage(new Color(rgb)) : image.getImage());
        if (!image.isStencil()) {
            known.put(image.getCOSObject(), picture);
        }
        return picture;
    }

    private void judge(int width, int height) {
        if (width < 1 || height < 1 || (long) width * height > MOST_PX) {
            throw new Refusal(findings.where(), "a picture claims " + width + " x " + height + " px, "
                    + (width < 1 || height < 1 ? "which is no size" : "more than any sheet needs"),
                    "place it smaller, at the resolution at which it is printed");
        }
    }

    /** Looks into what is packed: a file in the file may be larger than it is said to be, and so may what comes out of unpacking. */
    private void judgeInside(PDImageXObject image) throws IOException {
        List<COSName> filters = image.getStream().getFilters();
        boolean jpeg = !filters.isEmpty() && filters.get(filters.size() - 1).equals(COSName.DCT_DECODE);
        if (jpeg) {
            byte[] bytes;
            try (InputStream in = image.createInputStream(List.of("DCTDecode", "DCT"))) {
                bytes = in.readAllBytes();
            }
            if (PictureFile.isPicture(bytes)) {
                PictureFile inner = PictureFile.of(bytes, findings.where());
                judge(inner.widthPx(), inner.heightPx());
            }
        } else {
            long most = 2L * 4 * image.getWidth() * image.getHeight() + 65_536;
            Unpacked.require(image.getCOSObject(), Math.max(most, 1 << 20), findings.where(), "a picture holds more than its size allows");
        }
    }

    static Picture picture(BufferedImage image) {
        int w = image.getWidth();
        int h = image.getHeight();
        boolean alpha = image.getColorModel().hasAlpha();
        boolean gray = !alpha && !(image.getColorModel() instanceof IndexColorModel) && image.getColorModel().getColorSpace().getType() == ColorSpace.TYPE_GRAY
                && image.getSampleModel().getSampleSize(0) == 8;
        int channels = gray ? 1 : alpha ? 4 : 3;
        byte[] data = new byte[w * h * channels];
        int at = 0;
        int[] row = new int[w];
        Raster raster = image.getRaster();
        for (int y = 0; y < h; y++) {
            if (gray) { // samples as they stand: the platform's colour conversion would bend gray
                raster.getSamples(0, y, w, 1, 0, row);
                for (int x = 0; x < w; x++) {
                    data[at++] = (byte) row[x];
                }
                continue;
            }
            image.getRGB(0, y, w, 1, row, 0, w);
            for (int x = 0; x < w; x++) {
                data[at++] = (byte) (row[x] >> 16);
                data[at++] = (byte) (row[x] >> 8);
                data[at++] = (byte) row[x];
                if (alpha) {
                    data[at++] = (byte) (row[x] >>> 24);
                }
            }
        }
        return new Picture(w, h, channels, data);
    }
}
