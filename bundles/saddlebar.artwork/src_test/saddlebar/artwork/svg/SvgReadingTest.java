package saddlebar.artwork.svg;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.zip.GZIPOutputStream;

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

/** Size, units, layers, lines: what a drawing says, read as it is meant. */
class SvgReadingTest {
    private static final String NS = Art.NAMESPACES;

    @TempDir
    Path folder;

    private Art sized(String attributes) {
        return Art.svg(folder, "<svg " + NS + " " + attributes + "><rect width='10' height='20'/></svg>");
    }

    /** Units of CSS 2.1, 4.3.2: 1 in = 25.4 mm = 72 pt = 6 pc = 96 px; Q of CSS Values 3 is a quarter mm. */
    @ParameterizedTest
    @CsvSource({"25.4mm,25.4", "2.54cm,25.4", "1in,25.4", "72pt,25.4", "6pc,25.4", "96px,25.4", "96,25.4", "101.6Q,25.4", "  +.5e1mm ,5", "8.5in,215.9"})
    void units(String width, double mm) {
        assertEquals(mm, sized("width='" + width + "' height='50mm'").widthMm(), 1e-9);
    }

    @Test
    void sizeFromWhatThereIs() {
        Art percent = sized("width='100%' height='100%' viewBox='0 0 96 192'");
        assertEquals(25.4, percent.widthMm(), 1e-9);
        assertEquals(50.8, percent.heightMm(), 1e-9);
        assertTrue(percent.warns("art-size", "art.svg:1: <svg>: the drawing does not say in mm or inches"));
        assertTrue(sized("width='50%' height='40%' viewBox='0 0 96 192'").warns("art-size", "50%"));
        Art oneSide = sized("width='10mm' viewBox='0 0 20 40'");
        assertEquals(20, oneSide.heightMm(), 1e-9);
        Art none = sized("");
        assertEquals(10 * 25.4 / 96, none.widthMm(), 1e-6);
        assertEquals(20 * 25.4 / 96, none.heightMm(), 1e-6);
        assertTrue(none.warns("art-size", "does not say how large"));
        assertTrue(sized("width='10mm' height='10mm'").warnings().isEmpty());
    }

    @Test
    void scaleAndWidth() {
        String text = "<svg " + NS + " width='10mm' height='5mm' viewBox='0 0 10 5'><path d='M1 1h8' stroke='black' fill='none'/></svg>";
        Art tenth = Art.svg(folder, text, ReadSettings.scaled(10));
        assertEquals(100, tenth.widthMm(), 1e-9);
        Art wide = Art.svg(folder, text, ReadSettings.ofWidth(300));
        assertEquals(150, wide.heightMm(), 1e-9);
        double[] line = wide.lines().get(0).xy();
        assertEquals(30, line[0], 1e-4);
        assertEquals(270, line[2], 1e-4);
    }

    private static List<DrawnLine> lines(Art artwork) {
        return artwork.lines();
    }

    private static void assertPoints(DrawnLine line, double... xy) {
        assertEquals(xy.length, line.xy().length, java.util.Arrays.toString(line.xy()));
        for (int i = 0; i < xy.length; i++) {
            assertEquals(xy[i], line.xy()[i], 1e-4, java.util.Arrays.toString(line.xy()));
        }
    }

    @Test
    void transformsOfGroupsAddUp() {
        Art artwork = Art.page(folder, "<g transform='translate(10,20) scale(2)'><g transform='rotate(90)'>"
                + "<path id='a' d='M1 0H3' stroke='black' transform='matrix(1 0 0 1 0 5)'/></g></g>");
        assertPoints(lines(artwork).get(0), 0, 22, 0, 26); // (1,5) turned: (-5,1), doubled and moved: (0,22)
        assertEquals("a", lines(artwork).get(0).element());
        assertEquals(2, lines(artwork).get(0).line());
    }

    @Test
    void copiesAndSymbolsAndInnerPages() {
        Art artwork = Art.page(folder, """
                <defs><g id='u'><path d='M0 0H5' stroke='black' fill='none'/></g>
                <symbol id='s' viewBox='0 0 10 10'><path d='M0 0L10 10' stroke='black'/></symbol></defs>
                <use xlink:href='#u' x='10' y='20'/>
                <use href='#u' transform='scale(2)'/>
                <use href='#s' x='50' y='50' width='20' height='20'/>
                <svg x='10' y='60' width='20' height='10' viewBox='0 0 4 2'><path d='M1 1H3' stroke='black'/></svg>
                """);
        List<DrawnLine> lines = lines(artwork);
        assertPoints(lines.get(0), 10, 20, 15, 20);
        assertPoints(lines.get(1), 0, 0, 10, 0);
        assertPoints(lines.get(2), 50, 50, 70, 70);
        assertPoints(lines.get(3), 15, 65, 25, 65);
        assertTrue(artwork.layers().isEmpty(), "a group that is only copied is no layer");
        assertEquals(2, lines.get(0).line(), "a copy keeps the line of what it copies");
    }

    @Test
    void whatIsALine() {
        Art artwork = Art.page(folder, """
                <rect id='both' x='1' y='1' width='4' height='2' fill='red' stroke='black' stroke-width='1'/>
                <rect id='filled' x='11' y='1' width='4' height='2'/>
                <path id='open' d='M20 1h4v2' fill='none' stroke='black' stroke-dasharray='1 1'/>
                <path id='openfill' d='M30 1h4v2'/>
                <path id='nothing' d='M40 1h4v2' fill='none'/>
                <path id='clear' d='M40 1h4v2' fill='none' stroke='black' opacity='0'/>
                <circle id='round' cx='60' cy='60' r='10' fill='none' stroke='black'/>
                <text x='5' y='90'>12</text>
                """);
        List<DrawnLine> lines = lines(artwork);
        assertEquals(List.of("both", "filled", "open", "openfill", "round"), lines.stream().map(DrawnLine::element).toList());
        assertPoints(lines.get(0), 1, 1, 5, 1, 5, 3, 1, 3); // the centre line of the stroke, not its edge
        assertTrue(lines.get(0).closed());
        assertTrue(lines.get(1).closed());
        assertFalse(lines.get(2).closed());
        assertTrue(lines.get(3).closed(), "a fill closes what it fills");
        assertEquals(71, lines.get(4).points(), "a circle of 10 mm at 0.01 mm");
    }

    @Test
    void clipsCutLines() {
        Art artwork = Art.page(folder, """
                <defs><clipPath id='c'><rect x='10' y='10' width='20' height='20'/></clipPath>
                <clipPath id='d' clip-path='url(#c)'><circle cx='30' cy='20' r='15'/></clipPath>
                <clipPath id='nothing'/></defs>
                <g clip-path='url(#c)'><path id='through' d='M0 20H50' stroke='black'/><path id='in' d='M12 12h5' stroke='black'/>
                  <path id='out' d='M50 50h5' stroke='black'/><rect id='area' x='25' y='25' width='20' height='20'/></g>
                <path id='twice' d='M0 20H50' stroke='black' clip-path='url(#d)'/>
                <path id='gone' d='M0 20H50' stroke='black' clip-path='url(#nothing)'/>
                """);
        List<DrawnLine> lines = lines(artwork);
        assertEquals(List.of("through", "in", "area", "twice"), lines.stream().map(DrawnLine::element).distinct().toList());
        assertEquals(20, length(lines.get(0)), 1e-4);
        assertEquals(15, length(lines.get(lines.size() - 1)), 0.02);
    }

    private static double length(DrawnLine line) {
        double length = 0;
        for (int i = 1; i < line.points(); i++) {
            length += Math.hypot(line.x(i) - line.x(i - 1), line.y(i) - line.y(i - 1));
        }
        return length;
    }

    @Test
    void layersByAnyName() {
        Art artwork = Art.svg(folder, "<svg " + NS + " xmlns:k='http://example.org/k' width='100mm' height='100mm' viewBox='0 0 100 100'>"
                + """
                        <g id='g1' k:label='Cut lines'><path d='M0 0H9' stroke='black'/><g id='g1a'><path d='M0 0H9' stroke='black'/></g></g>
                        <g id='g2' data-name='Matt 2'><rect width='5' height='5'/></g>
                        <g id='g3'><title>Lettering</title><text y='9'>a</text></g>
                        <g><rect width='5' height='5'/><g><rect width='5' height='5'/></g></g>
                        <g id='g5' style='display:none'><rect x='50' width='5' height='5'/></g>
                        <g id='g6' visibility='hidden'><rect x='60' width='5' height='5'/></g>
                        </svg>""");
        List<ArtLayer> layers = artwork.layers();
        assertEquals(List.of("g1", "g1a", "g2", "g3", "group-4", "group-4.1", "g5", "g6"), layers.stream().map(ArtLayer::id).toList());
        assertEquals(new ArtLayer("g1", "Cut lines", 0, "", 2, false, LayerHint.CUTLINE), layers.get(0));
        assertEquals(new ArtLayer("g1a", "g1a", 1, "g1", 1, false, LayerHint.NONE), layers.get(1));
        assertEquals(LayerHint.MATT, layers.get(2).hint());
        assertEquals(LayerHint.LETTERING, layers.get(3).hint());
        assertEquals("group-4", layers.get(5).parentId());
        assertTrue(layers.get(6).hidden() && layers.get(7).hidden());
        assertEquals("g1", artwork.chosenLayer("cut lines").id());
        assertEquals("g1", artwork.cutlineLayer().orElseThrow().id());
        Refusal refusal = assertThrows(Refusal.class, () -> artwork.chosenLayer("Trace"));
        assertEquals("art.svg: there is no layer \"Trace\"; choose one of \"Cut lines\", \"Matt 2\", \"Lettering\", \"group-4\", \"g5\", \"g6\","
                + " or a group inside by its id", refusal.getMessage());
        // hidden groups are not drawn with all, but when asked for
        assertEquals(255, artwork.at(52, 2));
        assertEquals(255, artwork.at(62, 2));
        for (int hidden : new int[] {6, 7}) {
            assertEquals(0, artwork.at(LayerChoice.of(layers.get(hidden)), hidden * 10 - 8, 2));
        }
        assertEquals(1, artwork.lines(LayerChoice.of(layers.get(6)), 0.01).size());
    }

    @Test
    void cutlineByWhatIsInIt() {
        Art artwork = Art.page(folder, """
                <g id='paint'><rect width='5' height='5'/></g>
                <g id='a'><path d='M0 0H9' stroke='black' fill='none'/><text y='5'>1</text></g>
                <g id='b'><path d='M0 0H9' stroke='black' fill='none'/></g>
                """);
        assertEquals("a", artwork.cutlineLayer().orElseThrow().id());
        assertTrue(artwork.warns("art-layer", "holds text"));
    }

    @Test
    void innerLayerKeepsWhatIsAroundIt() {
        Art artwork = Art.page(folder, """
                <clipPath id='c'><rect width='50' height='50'/></clipPath>
                <g opacity='.5' clip-path='url(#c)' transform='translate(10 10)'><rect id='other' width='9' height='9'/>
                <g id='inner'><rect x='20' width='90' height='9'/></g></g>
                """);
        LayerChoice inner = artwork.choice("inner");
        assertEquals(255, artwork.at(inner, 15, 15));
        assertEquals(127, artwork.at(inner, 35, 15), 1);
        assertEquals(255, artwork.at(inner, 65, 15));
    }

    @Test
    void lineNumbersAreThoseOfTheTag() {
        Art artwork = Art.page(folder, """
                <!-- a comment
                     of two lines -->
                <path
                   id='p'
                   stroke='black'
                   d='M0 0
                      H5'/><path id='q' stroke='black' d='M0 1H5'/>
                <g>

                  <path id='r' stroke='black' d='M0 2H5'/></g>""");
        assertEquals(List.of(4, 8, 11), lines(artwork).stream().map(DrawnLine::line).toList());
    }

    @Test
    void packedAndOtherEncodings() throws IOException {
        String text = "<svg " + NS + " width='10mm' height='10mm'><g id='é'/></svg>";
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        try (GZIPOutputStream out = new GZIPOutputStream(packed)) {
            out.write(text.getBytes(StandardCharsets.UTF_8));
        }
        assertEquals("é", Art.read(Files.write(folder.resolve("a.svgz"), packed.toByteArray())).layers().get(0).id());
        assertEquals("é", Art.read(Files.write(folder.resolve("b.svg"), ("\uFEFF" + text).getBytes(StandardCharsets.UTF_16LE))).layers().get(0).id());
        assertEquals("é", Art.read(Files.write(folder.resolve("c.svg"), ("\uFEFF" + text).getBytes(StandardCharsets.UTF_8))).layers().get(0).id());
        assertEquals("é", Art.read(Files.write(folder.resolve("d.svg"),
                ("<?xml version='1.0' encoding='ISO-8859-1'?>" + text).getBytes(StandardCharsets.ISO_8859_1))).layers().get(0).id());
    }

    @Test
    void plainDoctypeIsNoFault() {
        Art artwork = Art.svg(folder, "<?xml version='1.0'?>\n<!DOCTYPE svg PUBLIC '-//W3C//DTD SVG 1.1//EN'"
                + " 'http://www.w3.org/Graphics/SVG/1.1/DTD/svg11.dtd'>\n<svg " + NS + " width='10mm' height='10mm'><path d='M0 0H3' stroke='black'/></svg>");
        assertTrue(artwork.warnings().isEmpty(), artwork.warnings().toString());
        assertEquals(3, lines(artwork).get(0).line());
    }

    @Test
    void withoutNamespace() {
        Art artwork = Art.svg(folder, "<svg width='10mm' height='10mm'><g id='a'><rect width='5' height='5'/></g></svg>");
        assertEquals(1, artwork.layers().size());
        assertTrue(artwork.warns("art-namespace", "art.svg:1: "));
    }
}
