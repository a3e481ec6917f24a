package saddlebar.artwork.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;

import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts;
import org.apache.pdfbox.pdmodel.graphics.color.PDColor;
import org.apache.pdfbox.pdmodel.graphics.color.PDDeviceCMYK;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentGroup;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentProperties;
import org.apache.pdfbox.util.Matrix;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import saddlebar.artwork.Art;
import saddlebar.artwork.ArtLayer;
import saddlebar.artwork.LayerChoice;
import saddlebar.artwork.LayerHint;
import saddlebar.artwork.ReadSettings;
import saddlebar.model.art.DrawnLine;
import saddlebar.model.problem.Refusal;

/** Size, pages, layers, lines: what a page says, read as it is meant. A unit is 1/72 inch (ISO 32000-1, 8.3.2.3). */
class PdfReadingTest {
    @TempDir
    Path folder;

    private static void assertPoints(DrawnLine line, double... xy) {
        assertEquals(xy.length, line.xy().length, java.util.Arrays.toString(line.xy()));
        for (int i = 0; i < xy.length; i++) {
            assertEquals(xy[i], line.xy()[i], 2e-4, java.util.Arrays.toString(line.xy()));
        }
    }

    @Test
    void aLineOnAPage() {
        Art art = Art.read(Pages.of(folder, 100, 60, (out, document, page) -> {
            out.moveTo(10, 50);
            out.lineTo(30, 50);
            out.lineTo(30, 20);
            out.stroke();
            out.addRect(50, 10, 20, 5);
            out.fill();
        }));
        assertEquals(100, art.widthMm(), 1e-4);
        assertEquals(60, art.heightMm(), 1e-4);
        List<DrawnLine> lines = art.lines();
        assertEquals(2, lines.size());
        assertPoints(lines.get(0), 10, 10, 30, 10, 30, 40);
        assertFalse(lines.get(0).closed());
        assertPoints(lines.get(1), 50, 50, 70, 50, 70, 45, 50, 45);
        assertTrue(lines.get(1).closed());
        assertTrue(art.warnings().isEmpty(), art.warnings().toString());
        assertTrue(art.layers().isEmpty());
    }

    /** The same mark at 10 mm from the left and 5 mm from the top as seen, on pages that are turned. */
    @ParameterizedTest
    @CsvSource({"0, 10, 35", "90, 5, 10", "180, 90, 5", "270, 95, 30"})
    void turnedPagesWithACropBoxAndLargeUnits(int rotation, float x, float y) {
        Art art = Art.read(Pages.write(folder, document -> {
            boolean lying = rotation % 180 != 0;
            float unit = Pages.UNITS_PER_MM / 2; // UserUnit 2
            float w = lying ? 40 : 100;
            float h = lying ? 100 : 40;
            PDPage page = new PDPage(new PDRectangle(0, 0, 500, 600));
            page.setCropBox(new PDRectangle(30, 20, w * unit, h * unit));
            page.setRotation(rotation);
            page.setUserUnit(2);
            document.addPage(page);
            try (PDPageContentStream out = new PDPageContentStream(document, page)) {
                out.transform(new Matrix(unit, 0, 0, unit, 30, 20));
                float atX = rotation == 0 ? x : rotation == 90 ? x : rotation == 180 ? x : 40 - x + 60 - 5;
                float atY = rotation == 0 ? y : rotation == 90 ? y : rotation == 180 ? y : 90;
                out.moveTo(rotation == 270 ? 35 : atX, rotation == 270 ? 90 : atY);
                out.lineTo(rotation == 270 ? 35 : atX, (rotation == 270 ? 90 : atY) + 1e-3f);
                out.stroke();
            }
        }));
        assertEquals(100, art.widthMm(), 1e-3);
        assertEquals(40, art.heightMm(), 1e-3);
        assertEquals(10, art.lines().get(0).x(0), 2e-3);
        assertEquals(5, art.lines().get(0).y(0), 2e-3);
    }

    @Test
    void scaleWidthAndPage() {
        Path file = Pages.write(folder, document -> {
            for (int i = 1; i <= 3; i++) {
                PDPage page = new PDPage(new PDRectangle(72 * i, 144));
                document.addPage(page);
                try (PDPageContentStream out = new PDPageContentStream(document, page)) {
                    out.addRect(0, 0, 10 * i, 10);
                    out.fill();
                }
            }
        });
        assertEquals(25.4, Art.read(file).widthMm(), 1e-5);
        assertTrue(Art.read(file).warns("art-page", "art.pdf page 1: the file has 3 pages; this is page 1"));
        Art third = Art.read(file, ReadSettings.asDrawn().onPage(3));
        assertEquals(76.2, third.widthMm(), 1e-5);
        assertEquals(30 * 25.4 / 72, third.lines().get(0).x(1), 1e-4);
        assertEquals(200, Art.read(file, ReadSettings.ofWidth(100)).heightMm(), 1e-4);
        assertEquals(508, Art.read(file, ReadSettings.scaled(10)).heightMm(), 1e-4);
        assertEquals("art.pdf: it has no page 4 but 3 pages; name one of them",
                assertThrows(Refusal.class, () -> Art.read(file, ReadSettings.asDrawn().onPage(4))).getMessage());
    }

    private Path layered() {
        return Pages.of(folder, 100, 100, (out, document, page) -> {
            PDOptionalContentProperties properties = new PDOptionalContentProperties();
            document.getDocumentCatalog().setOCProperties(properties);
            PDOptionalContentGroup cut = new PDOptionalContentGroup("Cut lines");
            PDOptionalContentGroup matt = new PDOptionalContentGroup("Matt 1");
            PDOptionalContentGroup notes = new PDOptionalContentGroup("Notes");
            for (PDOptionalContentGroup group : List.of(cut, matt, notes)) {
                properties.addGroup(group);
            }
            properties.setGroupEnabled(notes, false);
            out.beginMarkedContent(COSName.OC, cut);
            out.moveTo(0, 90);
            out.lineTo(100, 90);
            out.stroke();
            out.endMarkedContent();
            out.beginMarkedContent(COSName.OC, matt);
            out.addRect(10, 10, 20, 20);
            out.fill();
            out.beginMarkedContent(COSName.OC, notes);
            out.addRect(40, 10, 20, 20);
            out.fill();
            out.endMarkedContent();
            out.endMarkedContent();
            out.beginMarkedContent(COSName.OC, cut); // the same layer again, in another place
            out.moveTo(0, 80);
            out.lineTo(100, 80);
            out.stroke();
            out.endMarkedContent();
            PDFormXObject form = new PDFormXObject(document);
            form.setBBox(new PDRectangle(0, 0, 100, 100));
            form.setOptionalContent(matt);
            try (java.io.OutputStream content = form.getStream().createOutputStream()) {
                content.write("70 10 20 20 re f".getBytes(java.nio.charset.StandardCharsets.US_ASCII));
            }
            out.drawForm(form);
        });
    }

    @Test
    void layersAreTheOptionalContent() {
        Art art = Art.read(layered());
        assertEquals(List.of(new ArtLayer("layer-1", "Cut lines", 0, "", 2, false, LayerHint.CUTLINE),
                new ArtLayer("layer-2", "Matt 1", 0, "", 3, false, LayerHint.MATT), new ArtLayer("layer-3", "Notes", 0, "", 1, true, LayerHint.NONE)),
                art.layers());
        List<DrawnLine> cut = art.lines(art.choice("cut lines"), 0.01);
        assertEquals(2, cut.size(), "both places of the layer");
        assertPoints(cut.get(0), 0, 10, 100, 10);
        assertPoints(cut.get(1), 0, 20, 100, 20);
        assertEquals(0, art.at(art.choice("Matt 1"), 20, 80));
        assertEquals(0, art.at(art.choice("Matt 1"), 80, 80), "a part that belongs to the layer as a whole");
        assertEquals(255, art.at(art.choice("Matt 1"), 50, 80), "a hidden layer inside stays hidden");
        assertEquals(255, art.at(art.choice("Matt 1"), 50, 10));
        assertEquals(255, art.at(50, 80));
        assertEquals(0, art.at(art.choice("Notes"), 50, 80), "hidden, but asked for");
        assertEquals(255, art.at(art.choice("Notes"), 20, 80));
        assertEquals("art.pdf: there is no layer \"Trace\"; choose one of \"Cut lines\", \"Matt 1\", \"Notes\", or a group inside by its id",
                assertThrows(Refusal.class, () -> art.chosenLayer("Trace")).getMessage());
    }

    @Test
    void aLayerThatIsNotOnThePageIsEmpty() {
        Path file = Pages.of(folder, 50, 50, (out, document, page) -> {
            PDOptionalContentProperties properties = new PDOptionalContentProperties();
            document.getDocumentCatalog().setOCProperties(properties);
            properties.addGroup(new PDOptionalContentGroup("Trace"));
            out.addRect(0, 0, 50, 50);
            out.fill();
        });
        Art art = Art.read(file);
        assertEquals(255, art.at(art.choice("Trace"), 25, 25));
        assertEquals(0, art.at(25, 25));
    }

    @Test
    void clipsCutLinesAndStrokesKeepTheirWidth() {
        Art art = Art.read(Pages.of(folder, 100, 100, (out, document, page) -> {
            out.saveGraphicsState();
            out.addRect(20, 20, 40, 40);
            out.clip();
            out.setLineWidth(2);
            out.moveTo(0, 50);
            out.lineTo(100, 50);
            out.stroke();
            out.restoreGraphicsState();
            out.saveGraphicsState();
            out.transform(new Matrix(3, 0, 0, 1, 0, 0)); // a pen three times as wide as high
            out.setLineWidth(2);
            out.moveTo(30, 10);
            out.lineTo(30, 30);
            out.stroke();
            out.restoreGraphicsState();
        }));
        assertPoints(art.lines().get(0), 20, 50, 60, 50);
        assertEquals(0, art.at(40, 49.2));
        assertEquals(255, art.at(40, 48.8));
        assertEquals(255, art.at(10, 50));
        assertEquals(0, art.at(87.3, 80));
        assertEquals(0, art.at(92.7, 80));
        assertEquals(255, art.at(86.8, 80));
        assertEquals(255, art.at(93.2, 80));
    }

    @Test
    void grayStaysGrayAndFullBlackInkIsBlack() {
        Art art = Art.read(Pages.of(folder, 100, 10, (out, document, page) -> {
            out.setNonStrokingColor(0.5f);
            out.addRect(0, 0, 10, 10);
            out.fill();
            out.setNonStrokingColor(new PDColor(new float[] {0, 0, 0, 1}, PDDeviceCMYK.INSTANCE));
            out.addRect(10, 0, 10, 10);
            out.fill();
            out.setNonStrokingColor(new PDColor(new float[] {0, 0, 0, 0.4f}, PDDeviceCMYK.INSTANCE));
            out.addRect(20, 0, 10, 10);
            out.fill();
            out.setNonStrokingColor(1f, 0f, 0f);
            out.addRect(30, 0, 10, 10);
            out.fill();
        }));
        assertEquals(128, art.at(5, 5));
        assertEquals(0, art.at(15, 5));
        assertEquals(153, art.at(25, 5));
        assertEquals(54, art.at(35, 5)); // 0.2126 * 255
        assertTrue(art.warnings().isEmpty(), art.warnings().toString());
    }

    @Test
    void textIsPaintedButNoLine() {
        Art art = Art.read(Pages.of(folder, 100, 20, (out, document, page) -> {
            out.beginText();
            out.setFont(new PDType1Font(Standard14Fonts.FontName.HELVETICA_BOLD), 15);
            out.newLineAtOffset(5, 5);
            out.showText("Heron");
            out.endText();
        }));
        assertTrue(art.lines().isEmpty());
        assertTrue(Art.mean(art.gray(100)) < 245, "letters are there");
        assertTrue(art.warns("art-font", "Helvetica-Bold is not in the file"));
    }

    @Test
    void whatIsNotDrawnIsTold() {
        Art art = Art.read(Pages.of(folder, 50, 50, (out, document, page) -> {
            var state = new org.apache.pdfbox.pdmodel.graphics.state.PDExtendedGraphicsState();
            state.setBlendMode(org.apache.pdfbox.pdmodel.graphics.blend.BlendMode.MULTIPLY);
            out.setGraphicsStateParameters(state);
            out.addRect(10, 10, 10, 10);
            out.fill();
            var mesh = new org.apache.pdfbox.pdmodel.graphics.shading.PDShadingType1(new org.apache.pdfbox.cos.COSDictionary());
            mesh.setShadingType(1);
            mesh.setColorSpace(org.apache.pdfbox.pdmodel.graphics.color.PDDeviceGray.INSTANCE);
            out.shadingFill(mesh);
            page.setAnnotations(List.of(new org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationText()));
        }));
        assertTrue(art.warns("art-blend", "Multiply"), art.warnings().toString());
        assertTrue(art.warns("art-shading", "kind 1"), art.warnings().toString());
        assertTrue(art.warns("art-page", "annotations"), art.warnings().toString());
        assertEquals(0, art.at(15, 35));
    }

    @Test
    void bandsDoNotDependOnTheirHeight() {
        Path file = layered();
        Art art = Art.read(file);
        byte[] whole = art.gray(LayerChoice.all(), art.page(150), 1000);
        for (int rows : new int[] {1, 7, 100}) {
            assertEquals(-1, java.util.Arrays.mismatch(whole, art.gray(LayerChoice.all(), art.page(150), rows)));
        }
    }
}
