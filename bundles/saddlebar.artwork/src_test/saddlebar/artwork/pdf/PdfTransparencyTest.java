package saddlebar.artwork.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

import javax.imageio.ImageIO;

import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.common.function.PDFunctionType2;
import org.apache.pdfbox.pdmodel.graphics.blend.BlendMode;
import org.apache.pdfbox.pdmodel.graphics.form.PDTransparencyGroup;
import org.apache.pdfbox.pdmodel.graphics.state.PDExtendedGraphicsState;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationRubberStamp;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAppearanceDictionary;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAppearanceStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import saddlebar.artwork.Art;
import saddlebar.artwork.Outside;
import saddlebar.artwork.PictureComparison;

/**
 * Blend modes, soft masks, meshes and stamps in colour beside poppler (pdftoppm), where it is installed; pages made by PDFBox, Ghostscript and librsvg.
 * The picture distance is at most 1 % of the pixels, the tone at most 3 points apart.
 */
class PdfTransparencyTest {
    private static final double DPI = 127; // a mm is 5 px, so that edges lie between pixels: what is blended of half covered pixels each program does its own way

    @TempDir
    Path folder;

    private void compare(String name, Path file) throws IOException {
        Outside.assumeInstalled("pdftoppm");
        Outside.run(folder, "pdftoppm", "-png", "-singlefile", "-cropbox", "-r", Double.toString(DPI), file.toString(), folder.resolve("theirs").toString());
        compareWithTheirs(name, file);
    }

    /** By Ghostscript, where poppler departs from the standard. */
    private void compareWithGhostscript(String name, Path file) throws IOException {
        Outside.assumeInstalled("gs");
        Outside.run(folder, "gs", "-q", "-dNOPAUSE", "-dBATCH", "-sDEVICE=png16m", "-r" + DPI, "-sOutputFile=" + folder.resolve("theirs.png"), file.toString());
        compareWithTheirs(name, file);
    }

    private void compareWithTheirs(String name, Path file) throws IOException {
        BufferedImage theirs = ImageIO.read(folder.resolve("theirs.png").toFile());
        BufferedImage ours = Art.read(file).picture(theirs.getWidth(), theirs.getHeight());
        String pictures = System.getProperty("saddlebar.pictures");
        if (pictures != null) {
            BufferedImage both = new BufferedImage(2 * theirs.getWidth(), theirs.getHeight(), BufferedImage.TYPE_INT_RGB);
            both.createGraphics().drawImage(ours, 0, 0, java.awt.Color.WHITE, null);
            both.createGraphics().drawImage(theirs, theirs.getWidth(), 0, null);
            ImageIO.write(both, "png", Path.of(pictures, "pdf-" + name + ".png").toFile());
        }
        PictureComparison found = PictureComparison.of(ours, theirs);
        assertTrue(found.distance() <= 0.01 && found.tone() <= 0.03, () -> name + ": " + found);
    }

    private static PDExtendedGraphicsState blending(BlendMode mode) {
        PDExtendedGraphicsState state = new PDExtendedGraphicsState();
        state.setBlendMode(mode);
        return state;
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"Multiply", "Screen", "Overlay", "Darken", "Lighten", "ColorDodge", "ColorBurn", "HardLight", "SoftLight", "Difference", "Exclusion",
                    "Color", "Luminosity"})
    void blendModes(String mode) throws IOException {
        compare(mode, blended(mode));
    }

    @ParameterizedTest
    @ValueSource(strings = {"Hue", "Saturation"})
    void blendModesOfHueAndSaturation(String mode) throws IOException {
        compareWithGhostscript(mode, blended(mode));
    }

    private Path blended(String mode) {
        return Pages.of(folder, 60, 60, (out, document, page) -> {
            for (int i = 0; i < 6; i++) {
                out.setNonStrokingColor(i / 5f, 0.2f + 0.1f * i, 1 - i / 5f);
                out.addRect(10 * i, 0, 10, 50);
                out.fill();
            }
            out.setGraphicsStateParameters(blending(BlendMode.getInstance(COSName.getPDFName(mode))));
            for (int i = 0; i < 6; i++) {
                out.setNonStrokingColor(0.9f - 0.15f * i, i / 5f, 0.35f);
                out.addRect(5, 10 * i, 50, 10);
                out.fill();
            }
        });
    }

    private static PDTransparencyGroup group(PDDocument document, String content, boolean isolated) throws IOException {
        PDTransparencyGroup shape = new PDTransparencyGroup(document);
        shape.setBBox(new PDRectangle(0, 0, 60, 60));
        shape.setResources(new PDResources());
        COSDictionary attributes = new COSDictionary();
        attributes.setItem(COSName.S, COSName.TRANSPARENCY);
        attributes.setItem(COSName.TYPE, COSName.GROUP);
        attributes.setItem(COSName.CS, COSName.DEVICERGB);
        attributes.setBoolean(COSName.I, isolated);
        shape.getCOSObject().setItem(COSName.GROUP, attributes);
        PDExtendedGraphicsState half = new PDExtendedGraphicsState();
        half.setNonStrokingAlphaConstant(0.4f);
        shape.getResources().put(COSName.getPDFName("half"), half);
        shape.getResources().put(COSName.getPDFName("times"), blending(BlendMode.MULTIPLY));
        try (java.io.OutputStream target = shape.getStream().createOutputStream()) {
            target.write(content.getBytes(StandardCharsets.US_ASCII));
        }
        return shape;
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void blendingInsideAGroup(boolean isolated) throws IOException {
        compare("isolated-" + isolated, Pages.of(folder, 60, 60, (out, document, page) -> {
            out.setNonStrokingColor(1f, 0.8f, 0.2f);
            out.addRect(0, 0, 60, 30);
            out.fill();
            out.drawForm(group(document, "/times gs 0.2 0.6 1 rg 10 10 40 40 re f", isolated));
        }));
    }

    @ParameterizedTest
    @ValueSource(strings = {"Alpha", "Luminosity", "Luminosity ground", "Luminosity curve"})
    void softMasks(String kind) throws IOException {
        compare("mask-" + kind, Pages.of(folder, 60, 60, (out, document, page) -> {
            COSDictionary mask = new COSDictionary();
            mask.setItem(COSName.TYPE, COSName.MASK);
            mask.setItem(COSName.S, COSName.getPDFName(kind.split(" ")[0]));
            mask.setItem(COSName.G, group(document, "1 g 5 5 25 50 re f /half gs 0.7 g 30 5 20 50 re f", true));
            if (kind.endsWith("ground")) {
                COSArray gray = new COSArray();
                for (int i = 0; i < 3; i++) {
                    gray.add(new COSFloat(0.5f));
                }
                mask.setItem(COSName.BC, gray);
            }
            if (kind.endsWith("curve")) {
                COSDictionary function = new COSDictionary();
                function.setInt(COSName.FUNCTION_TYPE, 2);
                COSArray domain = new COSArray();
                domain.add(new COSFloat(0));
                domain.add(new COSFloat(1));
                function.setItem(COSName.DOMAIN, domain);
                function.setItem(COSName.N, new COSFloat(2));
                mask.setItem(COSName.TR, new PDFunctionType2(function).getCOSObject());
            }
            PDExtendedGraphicsState state = new PDExtendedGraphicsState();
            state.getCOSObject().setItem(COSName.SMASK, mask);
            out.setGraphicsStateParameters(state);
            out.setNonStrokingColor(0.1f, 0.1f, 0.6f);
            out.addRect(0, 0, 60, 60);
            out.fill();
        }));
    }

    /** PostScript's own shadings, which Ghostscript writes into the PDF as they are. */
    @ParameterizedTest
    @ValueSource(strings = {"/ShadingType 4 /ColorSpace /DeviceRGB /DataSource [0 10 10 1 0 0  0 160 20 0 1 0  0 80 160 0 0 1  1 160 160 1 1 0]",
            "/ShadingType 5 /ColorSpace /DeviceRGB /VerticesPerRow 2 /DataSource [10 10 1 0 0  160 20 0 1 0  20 150 0 0 1  150 160 1 1 0]",
            "/ShadingType 6 /ColorSpace /DeviceRGB /DataSource [0 20 20 0 60 40 100 20 150 60 170 100 130 150 150 100 170 60 130 20 150 40 100 0 60 1 0 0 0 1 0"
                    + " 0 0 1 1 1 0]",
            "/ShadingType 7 /ColorSpace /DeviceRGB /DataSource [0 20 20 20 60 20 110 20 150 60 150 110 150 150 150 150 110 150 60 150 20 110 20 60 20 60 60 60 110"
                    + " 110 110 110 60 1 0 0 0 1 0 0 0 1 1 1 0]",
            "/ShadingType 3 /ColorSpace /DeviceGray /Coords [40 80 20 130 80 30] /Extend [false false] /Function << /FunctionType 2 /Domain [0 1] /N 1 /C0 [0]"
                    + " /C1 [1] >>"})
    void meshes(String shading) throws IOException {
        Outside.assumeInstalled("gs");
        Path page = Files.writeString(folder.resolve("mesh.ps"), "%!PS\n<< /PageSize [170 170] >> setpagedevice\ngsave 5 5 160 160 rectclip << " + shading
                + " >> shfill grestore\n0 setgray 2 setlinewidth 10 10 150 150 rectstroke showpage\n");
        Path file = folder.resolve("mesh.pdf");
        Outside.run(folder, "gs", "-q", "-dNOPAUSE", "-dBATCH", "-sDEVICE=pdfwrite", "-sOutputFile=" + file, page.toString());
        compare("mesh-" + shading.charAt(13), file);
    }

    @Test
    void aShadingByAFunction() throws IOException {
        compare("function", Pages.of(folder, 60, 60, (out, document, page) -> {
            org.apache.pdfbox.cos.COSStream function = document.getDocument().createCOSStream();
            function.setInt(COSName.FUNCTION_TYPE, 4);
            function.setItem(COSName.DOMAIN, numbers(0, 1, 0, 1));
            function.setItem(COSName.RANGE, numbers(0, 1, 0, 1, 0, 1));
            try (java.io.OutputStream target = function.createOutputStream()) {
                target.write("{ 2 copy mul }".getBytes(StandardCharsets.US_ASCII));
            }
            COSDictionary shading = new COSDictionary();
            shading.setInt(COSName.SHADING_TYPE, 1);
            shading.setItem(COSName.COLORSPACE, COSName.DEVICERGB);
            shading.setItem(COSName.MATRIX, numbers(50, 0, 10, 50, 0, 5));
            shading.setItem(COSName.FUNCTION, function);
            out.shadingFill(new org.apache.pdfbox.pdmodel.graphics.shading.PDShadingType1(shading));
        }));
    }

    private static COSArray numbers(float... values) {
        COSArray array = new COSArray();
        array.setFloatArray(values);
        return array;
    }

    @Test
    void aStampLooksAsItSays() throws IOException {
        Path file = Pages.of(folder, 60, 60, (out, document, page) -> {
            out.addRect(5, 5, 20, 20);
            out.fill();
            PDAppearanceStream look = new PDAppearanceStream(document);
            look.setBBox(new PDRectangle(0, 0, 10, 10));
            try (java.io.OutputStream target = look.getStream().createOutputStream()) {
                target.write("0.8 0.1 0.1 rg 1 1 8 8 re f".getBytes(StandardCharsets.US_ASCII));
            }
            PDAppearanceDictionary looks = new PDAppearanceDictionary();
            looks.setNormalAppearance(look);
            PDAnnotationRubberStamp stamp = new PDAnnotationRubberStamp();
            stamp.setRectangle(new PDRectangle(90, 80, 60, 40));
            stamp.setAppearance(looks);
            PDAnnotationRubberStamp hidden = new PDAnnotationRubberStamp();
            hidden.setRectangle(new PDRectangle(10, 120, 60, 40));
            hidden.setAppearance(looks);
            hidden.setHidden(true);
            page.setAnnotations(java.util.List.of(stamp, hidden));
        });
        compare("stamp", file);
        assertTrue(Art.read(file).warns("art-page", "stamps"));
    }

    /** The same drawing as SVG and as the PDF that librsvg makes of it. */
    @Test
    void aDrawingWithBlendsAndMasksBySvgAndPdf() throws IOException {
        Outside.assumeInstalled("rsvg-convert");
        Path svg = Files.writeString(folder.resolve("art.svg"), "<svg " + Art.NAMESPACES + " width='60mm' height='60mm' viewBox='0 0 60 60'>"
                + "<linearGradient id='g'><stop offset='0' stop-color='#fff'/><stop offset='1' stop-color='#000'/></linearGradient>"
                + "<mask id='m' maskUnits='userSpaceOnUse' x='0' y='0' width='60' height='60'><rect width='60' height='60' fill='url(#g)'/></mask>"
                + "<rect width='60' height='30' fill='#fc4'/><circle cx='30' cy='30' r='20' fill='#48c' style='mix-blend-mode:multiply'/>"
                + "<g style='mix-blend-mode:screen' opacity='.8'><rect x='5' y='20' width='20' height='35' fill='#a24'/></g>"
                + "<rect x='5' y='45' width='50' height='10' fill='#062' mask='url(#m)'/></svg>");
        Path pdf = folder.resolve("art.pdf");
        Outside.run(folder, "rsvg-convert", "-f", "pdf", "-o", pdf.toString(), svg.toString());
        compare("rsvg", pdf);
        Outside.run(folder, "rsvg-convert", "-w", "240", "-h", "240", "-o", "svg.png", svg.toString());
        PictureComparison found = PictureComparison.of(Art.read(svg).picture(240, 240), ImageIO.read(folder.resolve("svg.png").toFile()));
        assertTrue(found.distance() <= 0.01 && found.tone() <= 0.03, found::toString);
    }

    @Test
    void aRuleOverLayers() {
        assertEquals(255, Art.read(ruled(false)).at(15, 15));
        assertEquals(0, Art.read(ruled(true)).at(15, 15));
    }

    /** A square that shows when one layer is on and the other is not. */
    private Path ruled(boolean secondOff) {
        return Pages.of(folder, 30, 30, (out, document, page) -> {
            var properties = new org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentProperties();
            var first = new org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentGroup("first");
            var second = new org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentGroup("second");
            properties.addGroup(first);
            properties.addGroup(second);
            properties.setGroupEnabled(second, !secondOff);
            document.getDocumentCatalog().setOCProperties(properties);
            COSArray not = new COSArray();
            not.add(COSName.getPDFName("Not"));
            not.add(second);
            COSArray rule = new COSArray();
            rule.add(COSName.getPDFName("And"));
            rule.add(first);
            rule.add(not);
            var membership = new org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentMembershipDictionary();
            membership.getCOSObject().setItem(COSName.getPDFName("VE"), rule);
            out.beginMarkedContent(COSName.OC, membership);
            out.addRect(5, 5, 20, 20);
            out.fill();
            out.endMarkedContent();
        });
    }
}
