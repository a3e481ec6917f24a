package saddlebar.artwork.svg;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;

import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import saddlebar.artwork.Art;
import saddlebar.artwork.LayerChoice;
import saddlebar.artwork.Outside;

/** The same drawing by rsvg-convert (librsvg), where it is installed. */
class SvgComparisonTest {
    private static final double DPI = 127;

    @TempDir
    Path folder;

    private static void compare(String name, Art art, Path file, double dpi, double mostOff) {
        int width = art.page(dpi).widthPx();
        int height = art.page(dpi).heightPx();
        byte[] ours = art.gray(dpi);
        byte[] theirs = Outside.svgGray(file, width, height);
        Outside.show("svg-" + name, ours, theirs, width);
        Outside.Difference difference = Outside.difference(ours, theirs, width);
        assertTrue(Math.abs(difference.meanOurs() - difference.meanTheirs()) < 0.75, () -> name + ": " + difference);
        assertTrue(difference.shareOff() < mostOff, () -> name + ": " + difference);
        assertTrue(difference.meanTheirs() < 252, () -> name + " is empty: " + difference);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "gradients | <linearGradient id='g'><stop offset='.1'/><stop offset='.5' stop-color='#aaa'/><stop offset='.5' stop-color='#333'/>"
                    + "<stop offset='1' stop-color='#fff' stop-opacity='.5'/></linearGradient><radialGradient id='r' cx='.4' cy='.6' fx='.3' fy='.5'"
                    + " gradientTransform='rotate(20)' spreadMethod='reflect' r='.3'><stop offset='0' stop-color='#fff'/><stop offset='1'/></radialGradient>"
                    + "<rect x='5' y='5' width='90' height='40' fill='url(#g)'/><ellipse cx='50' cy='72' rx='40' ry='22' fill='url(#r)'/>",
            "clips | <clipPath id='c' clipPathUnits='objectBoundingBox'><circle cx='.5' cy='.5' r='.5'/></clipPath><clipPath id='d'>"
                    + "<path clip-rule='evenodd' d='M50 5L80 95 5 40H95L20 95z'/></clipPath><g clip-path='url(#d)'><rect width='100' height='100'/></g>"
                    + "<rect x='5' y='5' width='30' height='20' fill='gray' clip-path='url(#c)'/>",
            "uses | <symbol id='s' viewBox='0 0 10 20' preserveAspectRatio='xMinYMid'><path d='M0 0H10V20z'/></symbol><g id='u'><rect width='9' height='5'/>"
                    + "</g><use href='#s' x='10' y='10' width='50' height='30'/><use xlink:href='#u' transform='translate(60 60) rotate(30) scale(3)'/>"
                    + "<svg x='5' y='50' width='40' height='40' viewBox='-5 -5 10 20'><circle r='5'/></svg>",
            "strokes | <g fill='none' stroke='black' stroke-width='3'><path d='M5 5L50 30 5 40' stroke-linejoin='round'/><path d='M60 5L95 30 60 40'"
                    + " stroke-dasharray='7 3 1' stroke-dashoffset='2' stroke-linecap='butt'/><circle cx='30' cy='70' r='20' stroke-dasharray='5'/>"
                    + "<path d='M60 60q30 0 30 30' transform='scale(1 .9)' stroke-linecap='square'/><path d='M70 55l4 30 4-30' stroke-miterlimit='20'/></g>",
            "styles | <style>.a{fill:#888} g > .b, #i{fill:#333;opacity:.5} rect:first-child{stroke:black}</style><g><rect class='a' x='5' y='5' width='40'"
                    + " height='40'/><rect class='a b' x='55' y='5' width='40' height='40'/></g><circle id='i' cx='50' cy='70' r='25' style='fill:#000'/>",
            "groups | <g opacity='.5'><rect x='10' y='10' width='50' height='50'/><rect x='30' y='30' width='50' height='50' fill='#777'/></g>"
                    + "<path fill-rule='evenodd' d='M10 70h30v20h-30zM20 75h10v10h-10zM60 70h30v20h-30zM70 75v10h10v-10z'/>",
            "letters | <path d='M10 80V20h10v25h20V20h10v60H40V55H20v25z'/><text x='10' y='95' font-size='0'>a</text>",
            "masks | <mask id='m'><linearGradient id='g'><stop offset='0' stop-color='#fff'/><stop offset='1'/></linearGradient><rect width='100' height='100'"
                    + " fill='url(#g)'/></mask><rect width='100' height='90' mask='url(#m)'/>",
            "patterns | <pattern id='p' width='10' height='10' patternUnits='userSpaceOnUse' patternTransform='rotate(20)'><circle cx='5' cy='5' r='4'/>"
                    + "</pattern><rect x='5' y='5' width='90' height='90' fill='url(#p)'/>"})
    void purposeMade(String name, String content) {
        Path file = folder.resolve("art.svg");
        compare(name, Art.page(folder, content), file, DPI, 0.001);
    }

    @ParameterizedTest
    @ValueSource(strings = {"first-panel/artwork/first-panel.svg", "estuary-reading-room/artwork/W02-reading-heron.svg"})
    void demonstrationArt(String path) throws IOException {
        Path demo = Path.of("../../demo-projects").resolve(path);
        Assumptions.assumeTrue(Files.exists(demo), "the demonstration art is not beside this bundle");
        Path file = Files.copy(demo, folder.resolve("demo.svg"));
        Outside.assumeInstalled("rsvg-convert");
        Art art = Art.read(file);
        compare("demo-" + demo.getFileName(), art, file, 60, 0.004); // the page is no whole number of px, and theirs is stretched to one
    }

    /** A4 at 1200 dpi is 139 MB of gray; a process of its own with a heap of 96 MB reads it all. */
    @Test
    void aLargeSheetInASmallHeap() throws Exception {
        Path file = Files.writeString(folder.resolve("a4.svg"), "<svg " + Art.NAMESPACES + " width='210mm' height='297mm' viewBox='0 0 210 297'>"
                + "<linearGradient id='g'><stop offset='0'/><stop offset='1' stop-color='#fff'/></linearGradient><rect width='210' height='297' fill='#fff'/>"
                + "<rect width='210' height='148.5' fill='url(#g)'/><g opacity='.5'><circle cx='105' cy='200' r='60'/></g></svg>");
        Process child = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-Xmx96m", "-XX:+UseSerialGC",
                "-Djava.awt.headless=true", "-cp", System.getProperty("java.class.path"), GrayOfLargeSheet.class.getName(), file.toString())
                .redirectErrorStream(true).start();
        String said = new String(child.getInputStream().readAllBytes(), java.nio.charset.StandardCharsets.UTF_8).strip();
        assertEquals(0, child.waitFor(), said);
        // the upper half is 127.5 in the mean, the circle takes half of its share of the lower half
        double circle = Math.PI * 60 * 60 / (210 * 297);
        assertEquals((127.5 + 255) / 2 - 127.5 * circle, Double.parseDouble(said), 0.5);
    }

    @Test
    void bandsDoNotDependOnTheirHeight() {
        Art art = Art.page(folder, "<g opacity='.5' transform='rotate(10)'><rect x='10' y='10' width='70' height='50'/><circle cx='50' cy='60' r='30'/></g>");
        byte[] whole = art.gray(LayerChoice.all(), art.page(200), 2000);
        for (int rows : new int[] {1, 17, 256, 300}) {
            assertEquals(-1, Arrays.mismatch(whole, art.gray(LayerChoice.all(), art.page(200), rows)));
        }
    }
}
