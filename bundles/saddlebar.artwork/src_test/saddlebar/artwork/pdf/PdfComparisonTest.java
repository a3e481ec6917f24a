package saddlebar.artwork.pdf;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;

import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBoolean;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDPatternContentStream;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.common.function.PDFunctionType2;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.graphics.color.PDColor;
import org.apache.pdfbox.pdmodel.graphics.color.PDDeviceGray;
import org.apache.pdfbox.pdmodel.graphics.color.PDDeviceRGB;
import org.apache.pdfbox.pdmodel.graphics.color.PDPattern;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.graphics.form.PDTransparencyGroup;
import org.apache.pdfbox.pdmodel.graphics.image.LosslessFactory;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.pdmodel.graphics.pattern.PDTilingPattern;
import org.apache.pdfbox.pdmodel.graphics.shading.PDShadingType2;
import org.apache.pdfbox.pdmodel.graphics.shading.PDShadingType3;
import org.apache.pdfbox.pdmodel.graphics.state.PDExtendedGraphicsState;
import org.apache.pdfbox.util.Matrix;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import saddlebar.artwork.Art;
import saddlebar.artwork.Outside;

/** The same page by poppler (pdftoppm), where it is installed. */
class PdfComparisonTest {
    private static final double DPI = 127;

    @TempDir
    Path folder;

    private void compare(String name, Pages.Drawing drawing) {
        Path file = Pages.of(folder, 100, 100, drawing);
        Art art = Art.read(file);
        int px = art.page(DPI).widthPx();
        byte[] ours = art.gray(DPI);
        byte[] theirs = Outside.pdfGray(file, 1, DPI, px, px);
        Outside.show("pdf-" + name, ours, theirs, px);
        Outside.Difference difference = Outside.difference(ours, theirs, px);
        assertTrue(Math.abs(difference.meanOurs() - difference.meanTheirs()) < 0.75, () -> name + ": " + difference);
        assertTrue(difference.shareOff() < 0.001, () -> name + ": " + difference);
        assertTrue(difference.meanTheirs() < 252, () -> name + " is empty: " + difference);
    }

    @Test
    void pathsAndClips() {
        compare("paths", (out, document, page) -> {
            out.setNonStrokingColor(0.3f);
            star(out, 25, 75, 22);
            out.fillEvenOdd();
            out.setNonStrokingColor(0.6f);
            star(out, 75, 75, 22);
            out.fill();
            out.setLineWidth(3);
            out.setLineJoinStyle(0);
            out.setLineCapStyle(2);
            out.moveTo(5, 5);
            out.lineTo(20, 40);
            out.lineTo(35, 5);
            out.stroke();
            out.setLineJoinStyle(1);
            out.setLineCapStyle(1);
            out.setLineDashPattern(new float[] {6, 5}, 2);
            out.moveTo(40, 10);
            out.curveTo(50, 60, 60, -20, 95, 45);
            out.stroke();
            out.saveGraphicsState();
            star(out, 75, 25, 20);
            out.clip();
            out.setNonStrokingColor(0f);
            out.addRect(60, 20, 40, 10);
            out.fill();
            out.restoreGraphicsState();
        });
    }

    private static void star(PDPageContentStream out, double x, double y, double r) throws IOException {
        for (int i = 0; i <= 5; i++) {
            double angle = Math.PI / 2 + i * 4 * Math.PI / 5;
            float px = (float) (x + r * Math.cos(angle));
            float py = (float) (y + r * Math.sin(angle));
            if (i == 0) {
                out.moveTo(px, py);
            } else {
                out.lineTo(px, py);
            }
        }
        out.closePath();
    }

    private static COSArray numbers(double... values) {
        COSArray array = new COSArray();
        for (double value : values) {
            array.add(new COSFloat((float) value));
        }
        return array;
    }

    private static void ramp(PDShadingType2 shading, double[] coords, boolean before, boolean after) {
        COSDictionary function = new COSDictionary();
        function.setItem(COSName.FUNCTION_TYPE, COSInteger.TWO);
        function.setItem(COSName.DOMAIN, numbers(0, 1));
        function.setItem(COSName.C0, numbers(0));
        function.setItem(COSName.C1, numbers(0.9));
        function.setItem(COSName.N, COSInteger.ONE);
        shading.setColorSpace(PDDeviceGray.INSTANCE);
        shading.setCoords(numbers(coords));
        shading.setFunction(new PDFunctionType2(function));
        COSArray extend = new COSArray();
        extend.add(before ? COSBoolean.TRUE : COSBoolean.FALSE);
        extend.add(after ? COSBoolean.TRUE : COSBoolean.FALSE);
        shading.setExtend(extend);
    }

    private static PDShadingType2 axial(boolean before, boolean after, double... coords) {
        PDShadingType2 shading = new PDShadingType2(new COSDictionary());
        shading.setShadingType(2);
        ramp(shading, coords, before, after);
        return shading;
    }

    private static PDShadingType3 radial(boolean before, boolean after, double... coords) {
        PDShadingType3 shading = new PDShadingType3(new COSDictionary());
        shading.setShadingType(3);
        ramp(shading, coords, before, after);
        return shading;
    }

    @Test
    void shadings() {
        compare("shadings", (out, document, page) -> {
            shade(out, 0, 50, axial(true, true, 10, 60, 40, 90));
            shade(out, 50, 50, axial(false, false, 60, 75, 90, 75));
            shade(out, 0, 0, radial(true, true, 20, 30, 0, 25, 25, 22));
            shade(out, 50, 0, radial(false, false, 75, 25, 6, 77, 23, 20));
        });
        compare("shadings-backward", (out, document, page) -> {
            shade(out, 0, 50, radial(false, true, 25, 75, 20, 28, 73, 5));
            shade(out, 50, 50, radial(true, false, 75, 75, 20, 75, 75, 5));
            shade(out, 0, 0, axial(true, false, 10, 10, 30, 20));
        });
    }

    private static void shade(PDPageContentStream out, float x, float y, PDShadingType2 shading) throws IOException {
        out.saveGraphicsState();
        out.addRect(x, y, 50, 50);
        out.clip();
        out.shadingFill(shading);
        out.restoreGraphicsState();
    }

    @Test
    void picturesAndMasks() {
        BufferedImage gray = new BufferedImage(50, 40, BufferedImage.TYPE_BYTE_GRAY);
        BufferedImage clear = new BufferedImage(30, 30, BufferedImage.TYPE_INT_ARGB);
        for (int y = 0; y < 40; y++) {
            for (int x = 0; x < 50; x++) {
                gray.getRaster().setSample(x, y, 0, 20 + x * 3 + y * 2);
            }
        }
        for (int y = 0; y < 30; y++) {
            for (int x = 0; x < 30; x++) {
                clear.setRGB(x, y, x * 8 << 24 | x * 4 << 16 | y * 8 << 8 | 60);
            }
        }
        compare("pictures", (out, document, page) -> {
            PDImageXObject one = LosslessFactory.createFromImage(document, gray);
            one.setInterpolate(true);
            out.drawImage(one, 5, 55, 50, 40);
            PDImageXObject other = LosslessFactory.createFromImage(document, clear);
            out.setNonStrokingColor(0.4f);
            out.addRect(50, 20, 50, 20);
            out.fill();
            out.drawImage(other, new Matrix(30, 12, -12, 30, 62, 10));
            PDImageXObject stencil = new PDImageXObject(document, new java.io.ByteArrayInputStream(new byte[] {(byte) 0xAA, 0x55, (byte) 0xF0, 0x0F,
                    (byte) 0xAA, 0x55, (byte) 0xF0, 0x0F}), null, 8, 8, 1, null);
            stencil.setStencil(true);
            out.setNonStrokingColor(0.2f);
            out.drawImage(stencil, 5, 5, 40, 40);
        });
    }

    @Test
    void patternsAndSeeThroughGroups() {
        compare("patterns", (out, document, page) -> {
            PDTilingPattern tiling = new PDTilingPattern();
            tiling.setBBox(new PDRectangle(0, 0, 20, 20));
            tiling.setPaintType(PDTilingPattern.PAINT_COLORED);
            tiling.setTilingType(PDTilingPattern.TILING_CONSTANT_SPACING);
            tiling.setXStep(24);
            tiling.setYStep(20);
            tiling.setMatrix(AffineTransform.getRotateInstance(0.3));
            tiling.setResources(new PDResources());
            try (PDPatternContentStream tile = new PDPatternContentStream(tiling)) {
                tile.setNonStrokingColor(0.5f);
                tile.addRect(2, 2, 10, 10);
                tile.fill();
                tile.setNonStrokingColor(0f);
                tile.addRect(8, 8, 12, 6);
                tile.fill();
            }
            COSName name = page.getResources() == null ? null : page.getResources().add(tiling);
            out.setNonStrokingColor(new PDColor(name, new PDPattern(null)));
            out.addRect(5, 55, 90, 40);
            out.fill();
            PDExtendedGraphicsState half = new PDExtendedGraphicsState();
            half.setNonStrokingAlphaConstant(0.5f);
            out.saveGraphicsState();
            out.setGraphicsStateParameters(half);
            out.drawForm(twoSquares(document, true));
            out.transform(Matrix.getTranslateInstance(50, 0));
            out.drawForm(twoSquares(document, false));
            out.restoreGraphicsState();
        });
    }

    /** Overlapping squares: as a group the overlap is as dark as the rest, as a plain part it is darker. */
    private static PDFormXObject twoSquares(PDDocument document, boolean group) throws IOException {
        PDFormXObject form = group ? new PDTransparencyGroup(document) : new PDFormXObject(document);
        form.setBBox(new PDRectangle(0, 0, 50, 50));
        form.setResources(new PDResources());
        if (group) {
            COSDictionary attributes = new COSDictionary();
            attributes.setItem(COSName.S, COSName.TRANSPARENCY);
            attributes.setItem(COSName.TYPE, COSName.GROUP);
            form.getCOSObject().setItem(COSName.GROUP, attributes);
        }
        try (java.io.OutputStream content = form.getStream().createOutputStream()) {
            content.write("0 g 5 5 25 25 re f 15 15 25 25 re f".getBytes(java.nio.charset.StandardCharsets.US_ASCII));
        }
        return form;
    }

    @Test
    void softMask() {
        compare("mask", (out, document, page) -> {
            PDTransparencyGroup shape = new PDTransparencyGroup(document);
            shape.setBBox(new PDRectangle(0, 0, 100, 100));
            PDResources resources = new PDResources();
            shape.setResources(resources);
            COSDictionary attributes = new COSDictionary();
            attributes.setItem(COSName.S, COSName.TRANSPARENCY);
            attributes.setItem(COSName.TYPE, COSName.GROUP);
            attributes.setItem(COSName.CS, COSName.DEVICEGRAY);
            shape.getCOSObject().setItem(COSName.GROUP, attributes);
            COSName shading = resources.add(axial(true, true, 10, 0, 90, 0));
            try (java.io.OutputStream content = shape.getStream().createOutputStream()) {
                content.write(("/" + shading.getName() + " sh").getBytes(java.nio.charset.StandardCharsets.US_ASCII));
            }
            COSDictionary mask = new COSDictionary();
            mask.setItem(COSName.TYPE, COSName.MASK);
            mask.setItem(COSName.S, COSName.LUMINOSITY);
            mask.setItem(COSName.G, shape);
            PDExtendedGraphicsState state = new PDExtendedGraphicsState();
            state.getCOSObject().setItem(COSName.SMASK, mask);
            out.setGraphicsStateParameters(state);
            out.setNonStrokingColor(0f);
            out.addRect(5, 20, 90, 60);
            out.fill();
        });
    }

    @Test
    void lettersOfAFontInTheFile() {
        compare("letters", (out, document, page) -> {
            try (InputStream in = PDDocument.class.getResourceAsStream("/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf")) {
                out.beginText();
                out.setFont(PDType0Font.load(document, in), 18);
                out.newLineAtOffset(5, 70);
                out.showText("Heron &");
                out.setNonStrokingColor(Color.GRAY);
                out.newLineAtOffset(0, -25);
                out.showText("eelgrass");
                out.setRenderingMode(org.apache.pdfbox.pdmodel.graphics.state.RenderingMode.STROKE);
                out.setLineWidth(0.4f);
                out.newLineAtOffset(0, -25);
                out.showText("kiln 46");
                out.endText();
            }
        });
    }

    @Test
    void coloursInInkAndLight() {
        compare("colours", (out, document, page) -> {
            for (int i = 0; i < 10; i++) {
                out.setNonStrokingColor(new PDColor(new float[] {i / 9f, 0.3f, 1 - i / 9f}, PDDeviceRGB.INSTANCE));
                out.addRect(10 * i, 50, 10, 50);
                out.fill();
                out.setNonStrokingColor(i / 9f);
                out.addRect(10 * i, 0, 10, 50);
                out.fill();
            }
        });
    }
}
