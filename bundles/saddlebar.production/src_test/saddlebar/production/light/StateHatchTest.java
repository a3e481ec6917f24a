package saddlebar.production.light;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

import saddlebar.model.commission.MakingState;
import saddlebar.model.work.Work;
import saddlebar.production.light.EaselLook.Overlay;

class StateHatchTest {
    private static int[] pixels(BufferedImage picture) {
        return picture.getRGB(0, 0, picture.getWidth(), picture.getHeight(), null, 0, picture.getWidth());
    }

    private static double ink(MakingState state) {
        BufferedImage sample = StateHatch.sample(state, 60, 60, 1);
        long dark = 0;
        for (int rgb : pixels(sample)) {
            dark += (rgb >> 8 & 0xff) < 100 ? 1 : 0;
        }
        return dark / 3600.0;
    }

    /** No two states look alike without colour: their samples differ in many pixels. */
    @Test
    void noTwoStatesLookAlike() {
        for (MakingState one : MakingState.VALUES) {
            for (MakingState other : MakingState.VALUES) {
                int[] a = pixels(StateHatch.sample(one, 40, 40, 1));
                int[] b = pixels(StateHatch.sample(other, 40, 40, 1));
                int unlike = 0;
                for (int i = 0; i < a.length; i++) {
                    unlike += Math.abs((a[i] & 0xff) - (b[i] & 0xff)) > 60 ? 1 : 0;
                }
                assertEquals(one == other, unlike < 50, one + " and " + other + " differ in " + unlike + " pixels");
            }
        }
    }

    @Test
    void theFartherTheCloserTheLines() {
        assertTrue(ink(MakingState.DRAWN) < ink(MakingState.ON_SHEET));
        assertTrue(ink(MakingState.ON_SHEET) < ink(MakingState.PRINTED));
        assertTrue(ink(MakingState.PRINTED) < ink(MakingState.GLAZED));
    }

    /** Pieced together from squares the hatch is the same: it hangs on the window. */
    @ParameterizedTest
    @EnumSource(value = MakingState.class, names = {"ON_SHEET", "ON_SCREEN", "PRINTED", "FIRED", "GLAZED", "IN_DOUBT", "TO_REMAKE"})
    void squaresJoinWithoutASeam(MakingState state) {
        EaselScene scene = Scenes.roundHead();
        Map<String, MakingState> states = new HashMap<>();
        scene.pieces().forEach(piece -> states.put(piece.id(), state));
        EaselPainter painter = new EaselPainter(scene.withStates(states), new EaselLook(0, Set.of(Overlay.STATES), Set.of(), 0xDAD6CE));
        BufferedImage all = painter.paint(0, 0, 3, 1, 256, 256, Work.UNWATCHED);
        BufferedImage bare = new EaselPainter(scene, new EaselLook(0, Set.of(), Set.of(), 0xDAD6CE)).paint(0, 0, 3, 1, 256, 256, Work.UNWATCHED);
        assertFalse(Arrays.equals(pixels(all), pixels(bare)), "nothing is hatched");
        for (int column = 0; column < 2; column++) {
            for (int row = 0; row < 2; row++) {
                BufferedImage one = painter.paint(column * 128 / 3.0, row * 128 / 3.0, 3, 1, 128, 128, Work.UNWATCHED);
                for (int y = 0; y < 128; y++) {
                    for (int x = 0; x < 128; x++) {
                        int off = Math.abs((all.getRGB(column * 128 + x, row * 128 + y) & 0xff) - (one.getRGB(x, y) & 0xff));
                        assertTrue(off <= 12, "square " + column + "," + row + " differs by " + off + " at " + x + "," + y);
                    }
                }
            }
        }
    }
}
