package saddlebar.production.light;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CancellationException;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import saddlebar.model.work.Work;
import saddlebar.production.light.EaselLook.Overlay;

class EaselPainterTest {
    private static final int ROOM = 0xDAD6CE;
    private static final RectMm SQUARE = new RectMm(0, 0, 10, 10);

    private static BufferedImage whole(EaselScene scene, EaselLook look, double pxPerMm) {
        RectMm bounds = scene.bounds().grownBy(5);
        return new EaselPainter(scene, look).paint(bounds.leftMm(), bounds.topMm(), pxPerMm, 1, (int) (bounds.widthMm() * pxPerMm),
                (int) (bounds.heightMm() * pxPerMm), Work.UNWATCHED);
    }

    private static EaselScene pane(int glassRgb, SceneLayer... layers) {
        ScenePiece piece = new ScenePiece("a", "1", Contour.of(SQUARE), 5, 5, 5, List.of(new GlassLook("g", glassRgb)));
        return new EaselScene("W", SQUARE, List.of(Contour.of(SQUARE)), List.of(piece), List.of(layers), List.of(), List.of(""), new Metal(0));
    }

    private static Coverage even(int covered) {
        byte[] all = new byte[16];
        Arrays.fill(all, (byte) covered);
        return new Coverage(SQUARE, 4, 4, all);
    }

    private static int middle(EaselScene scene) {
        EaselLook bare = new EaselLook(0, Set.of(), Set.of(), ROOM);
        return new EaselPainter(scene, bare).paint(4, 4, 1, 1, 2, 2, Work.UNWATCHED).getRGB(1, 1) & 0xFFFFFF;
    }

    @Test
    void theWindowAsItHangsInTheLight() throws IOException {
        new GoldenPicture("round-head").assertAlike(whole(Scenes.roundHead(), EaselLook.withSurround(ROOM), 3), 6);
    }

    @Test
    void theOtherColourwayWithoutMetalAndMarksInTheDark() throws IOException {
        EaselLook look = EaselLook.withSurround(0x202124).withColourway(1).with(Overlay.METAL, false).with(Overlay.PROBLEMS, false)
                .withLayer("matt", false);
        new GoldenPicture("round-head-evening").assertAlike(whole(Scenes.roundHead(), look, 3), 6);
    }

    /** Pieced together from squares it is the same picture: no seam shows. */
    @ParameterizedTest
    @ValueSource(doubles = {0.7, 3, 11.3})
    void squaresJoinWithoutASeam(double pxPerMm) {
        EaselPainter painter = new EaselPainter(Scenes.roundHead(), EaselLook.withSurround(ROOM).with(Overlay.NUMBERS, true));
        int side = 128;
        BufferedImage all = painter.paint(-side / pxPerMm, 0, pxPerMm, 1, 3 * side, 3 * side, Work.UNWATCHED);
        for (int column = -1; column < 2; column++) {
            for (int row = 0; row < 3; row++) {
                BufferedImage one = painter.paint(column * side / pxPerMm, row * side / pxPerMm, pxPerMm, 1, side, side, Work.UNWATCHED);
                for (int y = 0; y < side; y++) {
                    for (int x = 0; x < side; x++) {
                        int expected = all.getRGB((column + 1) * side + x, row * side + y);
                        int got = one.getRGB(x, y);
                        for (int shift = 0; shift <= 16; shift += 8) {
                            int off = Math.abs((expected >> shift & 0xff) - (got >> shift & 0xff));
                            assertTrue(off <= 8, "square " + column + "," + row + " differs by " + off + " at " + x + "," + y);
                        }
                    }
                }
            }
        }
    }

    /** Half covered, each channel lets (1 + T)/2 of the glass's light through; checked in light by the sRGB formula. */
    @Test
    void aMattTakesItsShareOfLight() {
        int rgb = middle(pane(0xC0FFFF, new SceneLayer("m", "Matt", new PaintLook(0.2, 0.5, 0), even(128))));
        double a = 128 / 255.0;
        assertEquals(code(light(0xC0) * (1 - a + 0.2 * a)), rgb >> 16 & 0xff, 1);
        assertEquals(code(1 - a + 0.5 * a), rgb >> 8 & 0xff, 1);
        assertEquals(code(1 - a), rgb & 0xff, 1);
    }

    @Test
    void layersTakeTheirSharesOneAfterTheOtherInAnyOrder() {
        SceneLayer matt = new SceneLayer("m", "Matt", new PaintLook(0.3, 0.3, 0.3), even(200));
        SceneLayer stain = new SceneLayer("s", "Stain", new PaintLook(1, 0.7, 0.1), even(255));
        int one = middle(pane(0xFFFFFF, matt, stain));
        int other = middle(pane(0xFFFFFF, stain, matt));
        for (int shift = 0; shift <= 16; shift += 8) {
            assertEquals(one >> shift & 0xff, other >> shift & 0xff, 1);
        }
        assertEquals(code(1 - 200 / 255.0 * 0.7), one >> 16 & 0xff, 1);
    }

    @Test
    void solidTraceIsItsPaintOnClearGlass() {
        assertEquals(0x241A14, middle(pane(0xFFFFFF, new SceneLayer("t", "Trace", PaintLook.ofRgb(0x241A14), even(255)))));
    }

    @Test
    void whereThePictureGrowsCoarseTheDrawingIsAsked() {
        SceneLayer layer = new SceneLayer("t", "Trace", new PaintLook(0, 0, 0), even(0), Optional.of((part, pxPerMm, work) -> {
            assertTrue(part.holds(4, 4) && part.holds(6, 6), () -> part + " does not hold what is painted");
            assertEquals(1, pxPerMm);
            return new Coverage(part, 1, 1, new byte[] {(byte) 255});
        }));
        assertEquals(0x000000, middle(pane(0xFFFFFF, layer)), "held are 0.4 px a mm, wanted is 1");
        SceneLayer fine = new SceneLayer("t", "Trace", new PaintLook(0, 0, 0), new Coverage(SQUARE, 10, 10, new byte[100]),
                Optional.of((part, pxPerMm, work) -> {
                    throw new AssertionError("what is held is fine enough");
                }));
        assertEquals(0xFFFFFF, middle(pane(0xFFFFFF, fine)));
    }

    @Test
    void hiddenLayersAndOverlaysAreNotThere() {
        EaselScene scene = Scenes.roundHead();
        EaselLook look = EaselLook.withSurround(ROOM);
        int[] all = pixels(whole(scene, look, 2));
        assertNotEquals(Arrays.hashCode(all), Arrays.hashCode(pixels(whole(scene, look.withLayer("matt", false), 2))));
        assertNotEquals(Arrays.hashCode(all), Arrays.hashCode(pixels(whole(scene, look.with(Overlay.METAL, false), 2))));
        assertNotEquals(Arrays.hashCode(all), Arrays.hashCode(pixels(whole(scene, look.with(Overlay.NUMBERS, true), 2))));
        assertTrue(Arrays.equals(all, pixels(whole(scene, look.withLayer("matt", false).withLayer("matt", true), 2))));
    }

    @Test
    void itStopsWhenAskedTo() {
        Work stop = new Work() {
            @Override
            public void advance(long units) {
                // not counted
            }

            @Override
            public void checkpoint() {
                throw new CancellationException();
            }
        };
        EaselPainter painter = new EaselPainter(Scenes.roundHead(), EaselLook.withSurround(ROOM));
        assertThrows(CancellationException.class, () -> painter.paint(0, 0, 3, 1, 200, 200, stop));
    }

    private static int[] pixels(BufferedImage picture) {
        return picture.getRGB(0, 0, picture.getWidth(), picture.getHeight(), null, 0, picture.getWidth());
    }

    private static double light(int code) {
        double c = code / 255.0;
        return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
    }

    private static int code(double light) {
        return (int) Math.round(255 * (light <= 0.0031308 ? 12.92 * light : 1.055 * Math.pow(light, 1 / 2.4) - 0.055));
    }
}
