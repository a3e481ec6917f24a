package saddlebar.production.light;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Set;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import saddlebar.colour.Appearance;
import saddlebar.colour.Glass;
import saddlebar.colour.Light;
import saddlebar.colour.Matt;
import saddlebar.colour.PaintFilm;
import saddlebar.colour.PrintedGlass;
import saddlebar.colour.Spectrum;
import saddlebar.colour.Srgb;
import saddlebar.colour.picture.ColourVision;
import saddlebar.model.problem.Refusal;
import saddlebar.model.work.Work;

/** The painter's pixels against the colour bundle's own slow way, which is checked against the CIE's tables and published pairs. */
class LightOnTheEaselTest {
    private static final RectMm PAGE = new RectMm(0, 0, 20, 20);
    private final ColourShelf colours = new ColourShelf();

    private static EaselScene pane(GlassLook glass, SceneLayer... layers) {
        ScenePiece piece = new ScenePiece("a", "1", Contour.of(PAGE), 10, 10, 9, List.of(glass));
        return new EaselScene("W", PAGE, List.of(Contour.of(PAGE)), List.of(piece), List.of(layers), List.of(), List.of(""), new Metal(0));
    }

    private static SceneLayer matt(String hex, int covered) {
        byte[] all = new byte[400];
        java.util.Arrays.fill(all, (byte) covered);
        return new SceneLayer("m" + hex, "Matt", PaintLook.ofRgb(Integer.parseInt(hex.substring(1), 16)), new Coverage(PAGE, 20, 20, all));
    }

    private BufferedImage paint(EaselScene scene, LightLook light, Set<EaselLook.Overlay> shown) {
        return new EaselPainter(scene, new EaselLook(0, shown, Set.of(), 0x808080, light), colours).paint(0, 0, 4, 1, 80, 80, Work.UNWATCHED);
    }

    private int middle(EaselScene scene, LightLook light) {
        return paint(scene, light, Set.of()).getRGB(40, 40) & 0xFFFFFF;
    }

    private static int rgb(Srgb colour) {
        return Integer.parseInt(colour.hex().substring(1), 16);
    }

    private static void assertNear(int expected, int got, int most) {
        for (int shift = 0; shift <= 16; shift += 8) {
            assertEquals(expected >> shift & 0xff, got >> shift & 0xff, most, () -> String.format("%06x and %06x", expected, got));
        }
    }

    @ParameterizedTest
    @CsvSource({"NORTH,#b8c8c0,#6b4f3f,102", "LAMP,#b8c8c0,#6b4f3f,102", "DUSK,#d8c088,#404038,200", "LAMP,#dc8a1c,#1c1512,60"})
    void aHalftonedMattLooksAsItsSpectraSay(LightBehind behind, String glassHex, String paintHex, int covered) {
        Spectrum bare = Glass.coloured("g", Srgb.parse(glassHex).orElseThrow(), 3).transmittance();
        PaintFilm film = PaintFilm.coloured("p", Srgb.parse(paintHex).orElseThrow());
        Srgb expected = Appearance.of(PrintedGlass.of(bare, List.of(new Matt(film, covered / 255.0))), behind.light()).screen().shown();
        GlassLook look = new GlassLook("g", Integer.parseInt(glassHex.substring(1), 16));
        assertNear(rgb(expected), middle(pane(look, matt(paintHex, covered)), LightLook.USUAL.withBehind(behind)), 2);
    }

    @Test
    void aThickerSheetIsDeeperByBeerAndLambert() {
        Glass measured = Glass.coloured("g", Srgb.parse("#8dc0de").orElseThrow(), 3);
        Srgb expected = Appearance.of(measured.atThickness(6).transmittance(), Light.D65).screen().shown();
        assertNear(rgb(expected), middle(pane(new GlassLook("g", 0x8dc0de, new SheetLook(3, 6, ""))), LightLook.USUAL), 1);
    }

    /** Two bands of one colour in daylight part under the lamp: a measured spectrum counts, not the colour. */
    @Test
    void aMeasuredSpectrumCountsBeforeTheColour() {
        Spectrum measured = Spectrum.each(band -> Spectrum.nmOf(band) > 600 ? 0.7 : 0.2);
        GlassLook look = new GlassLook("g", 0x00FF00, new SheetLook(3, 3, SpectrumText.write(measured)));
        Srgb expected = Appearance.of(measured, Light.A).screen().shown();
        assertNear(rgb(expected), middle(pane(look), LightLook.USUAL.withBehind(LightBehind.LAMP)), 1);
    }

    @Test
    void aSpectrumThatIsNoneIsRefusedAndTheColourIsShown() {
        assertThrows(Refusal.class, () -> SpectrumText.read("g", "380:0.1 oops"));
        assertThrows(Refusal.class, () -> SpectrumText.read("g", ""));
        assertNear(0x4585B6, middle(pane(new GlassLook("g", 0x4585B6, new SheetLook(3, 3, "380:0.1 oops"))), LightLook.USUAL), 1);
    }

    @Test
    void aSpectrumComesBackAsItWasWritten() {
        Spectrum spectrum = Spectrum.each(band -> 0.1 + 0.01 * band);
        Spectrum read = SpectrumText.read("g", SpectrumText.write(spectrum));
        for (int band = 0; band < Spectrum.BANDS; band++) {
            assertEquals(spectrum.at(band), read.at(band), 5e-6);
        }
    }

    @Test
    void othersSeeTheWholePictureByTheirOwnMatrix() {
        GlassLook ruby = new GlassLook("ruby", 0xB03030);
        Srgb expected = ColourVision.DEUTERANOPE.seen(Srgb.parse("#b03030").orElseThrow());
        assertNear(rgb(expected), middle(pane(ruby), LightLook.USUAL.withEye(ColourVision.DEUTERANOPE)), 1);
    }

    /** Light spreads over lead beside glass and takes nothing but that light from it; far from any edge the colour stays. */
    @Test
    void lightSpreadsOverTheLead() {
        ScenePiece half = new ScenePiece("a", "1", Contour.of(0, 0, 10, 0, 10, 20, 0, 20), 5, 10, 4, List.of(new GlassLook("g", 0xFFFFFF)));
        EaselScene scene = new EaselScene("W", PAGE, List.of(Contour.of(PAGE)), List.of(half), List.of(), List.of(), List.of(""), new Metal(0));
        EaselLook dark = new EaselLook(0, Set.of(), Set.of(), 0, LightLook.USUAL.withSpread(true));
        BufferedImage spread = new EaselPainter(scene, dark, colours).paintGlass(0, 0, 40, 800, 800, Work.UNWATCHED);
        BufferedImage sharp = new EaselPainter(scene, dark.withLight(LightLook.USUAL), colours).paintGlass(0, 0, 40, 800, 800, Work.UNWATCHED);
        int beside = spread.getRGB(403, 400) & 0xff;
        assertTrue(beside > (sharp.getRGB(403, 400) & 0xff) + 10, "blue beside the edge is " + beside);
        assertEquals(sharp.getRGB(200, 400), spread.getRGB(200, 400));
    }

    /** Squares of one picture fit together: the spread at an edge of a square is that of the whole. */
    @Test
    void squaresOfASpreadPictureFitTogether() {
        EaselLook look = new EaselLook(0, Set.of(EaselLook.Overlay.METAL), Set.of(), 0x303030, LightLook.USUAL.withSpread(true));
        EaselPainter painter = new EaselPainter(Scenes.roundHead(), look, colours);
        BufferedImage whole = painter.paintGlass(10, 10, 4, 200, 100, Work.UNWATCHED);
        BufferedImage right = painter.paintGlass(35, 10, 4, 100, 100, Work.UNWATCHED);
        for (int y = 0; y < 100; y += 7) {
            for (int x = 0; x < 100; x += 7) {
                assertNear(whole.getRGB(100 + x, y) & 0xFFFFFF, right.getRGB(x, y) & 0xFFFFFF, 2);
            }
        }
    }

    @Test
    void glassStrongerThanTheScreenIsMarkedWhereThatIsWanted() {
        Spectrum narrow = Spectrum.each(band -> Math.abs(Spectrum.nmOf(band) - 520) <= 15 ? 0.9 : 0.001);
        EaselScene scene = pane(new GlassLook("g", 0x00C040, new SheetLook(3, 3, SpectrumText.write(narrow))));
        int plain = paint(scene, LightLook.USUAL, Set.of()).getRGB(40, 40);
        int marked = paint(scene, LightLook.USUAL, Set.of(EaselLook.Overlay.STRONGER)).getRGB(40, 40);
        assertNotEquals(plain, marked);
        EaselScene usual = pane(new GlassLook("g", 0xB8C8C0));
        assertEquals(paint(usual, LightLook.USUAL, Set.of()).getRGB(40, 40), paint(usual, LightLook.USUAL,
                Set.of(EaselLook.Overlay.STRONGER)).getRGB(40, 40));
    }
}
