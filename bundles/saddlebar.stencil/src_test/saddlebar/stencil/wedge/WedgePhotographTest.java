package saddlebar.stencil.wedge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import java.util.Random;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import saddlebar.model.art.GrayBands;
import saddlebar.model.problem.Refusal;
import saddlebar.stencil.BitPicture;
import saddlebar.stencil.Fields;
import saddlebar.stencil.ScreeningMethods;
import saddlebar.stencil.ScreeningRecipe;
import saddlebar.stencil.sheet.RectMm;
import saddlebar.stencil.tone.MeasuredStep;
import saddlebar.stencil.tone.MeasuredWedge;
import saddlebar.stencil.tone.TintDensity;
import saddlebar.stencil.tone.WedgeReading;

/** Photographs made here: a wedge of known coverages under uneven light, turned, noisy, by a camera with a bent response. */
class WedgePhotographTest {
    private static final WedgeLayout LAYOUT = WedgeLayout.usual();
    private static final List<Double> TABLET = List.of(0.05, 0.2, 0.35, 0.5, 0.65, 0.8, 0.95, 1.1, 1.25, 1.4, 1.55, 1.7);
    private static final double TABLET_MM = 10;

    /** Dot gain of the invented print: 14 points in the middle. */
    private static double printed(double nominal) {
        return nominal + 0.56 * nominal * (1 - nominal);
    }

    private record Scene(double solid, double turnDeg, boolean mirrored, double gamma, double lightFall, double noise, boolean tablet) {
        double transmittance(double xMm, double yMm) {
            if (xMm < 0 || yMm < 0 || xMm > LAYOUT.widthMm() || yMm > LAYOUT.heightMm()) {
                return 1;
            }
            double frame = LAYOUT.frameMm();
            if (xMm < frame || yMm < frame || xMm > LAYOUT.widthMm() - frame || yMm > LAYOUT.heightMm() - frame) {
                return TintDensity.transmittance(solid);
            }
            for (int step = 0; step < LAYOUT.steps().size(); step++) {
                if (inside(LAYOUT.patch(step), xMm, yMm)) {
                    return 1 - printed(LAYOUT.steps().get(step)) * (1 - TintDensity.transmittance(solid));
                }
            }
            for (int step = 0; tablet && step < TABLET.size(); step++) {
                if (inside(LAYOUT.known(TABLET.size(), TABLET_MM, step), xMm, yMm)) {
                    return TintDensity.transmittance(TABLET.get(step));
                }
            }
            return 1;
        }

        GrayBands photograph() {
            int width = 1400;
            int height = 700;
            Random chance = new Random(5);
            double c = Math.cos(Math.toRadians(turnDeg));
            double s = Math.sin(Math.toRadians(turnDeg));
            byte[] codes = new byte[width * height];
            for (int y = 0; y < height; y++) {
                for (int x = 0; x < width; x++) {
                    double light = 0;
                    for (int sub = 0; sub < 4; sub++) {
                        double px = (x + 0.25 + 0.5 * (sub & 1) - width / 2.0) / 6.2;
                        double py = (y + 0.25 + 0.5 * (sub >> 1) - height / 2.0) / 6.2;
                        double xMm = (px * c + py * s) * (mirrored ? -1 : 1) + LAYOUT.widthMm() / 2;
                        double yMm = -px * s + py * c + LAYOUT.heightMm() / 2;
                        light += transmittance(xMm, yMm) / 4;
                    }
                    double u = (double) x / width - 0.4;
                    double v = (double) y / height - 0.6;
                    light *= 0.9 * (1 - lightFall * (u * u + v * v) - lightFall * 0.3 * u);
                    double code = 255 * Math.pow(light, 1 / gamma) + noise * chance.nextGaussian();
                    codes[y * width + x] = (byte) Math.max(0, Math.min(255, Math.round(code)));
                }
            }
            return Fields.gray(width, height, 64, (x, y) -> codes[y * width + x]);
        }

        private static boolean inside(RectMm box, double xMm, double yMm) {
            return xMm >= box.xMm() && xMm < box.rightMm() && yMm >= box.yMm() && yMm < box.bottomMm();
        }
    }

    /** Solid's density, turn, mirrored, gamma of the camera, fall of light, noise in codes. Limit 2 points of coverage, our own. */
    @ParameterizedTest
    @CsvSource({"0.6, 0, false, 1, 0, 0", "0.6, 6, false, 2.2, 0.5, 1.5", "0.6, -11, true, 1.8, 0.7, 2", "1.2, 186, false, 2.4, 0.5, 1.5",
            "0.35, 3, false, 2.2, 0.4, 1"})
    void coveragesComeBack(double solid, double turn, boolean mirrored, double gamma, double fall, double noise) throws IOException {
        Scene scene = new Scene(solid, turn, mirrored, gamma, fall, noise, true);
        WedgePhotograph.Read read = WedgePhotograph.read(scene.photograph(), LAYOUT, TABLET, TABLET_MM);
        assertTrue(read.problems().stream().noneMatch(problem -> problem.code().equals("no-known-step")));
        List<MeasuredStep> steps = read.steps();
        assertEquals(solid, steps.get(steps.size() - 1).density() - steps.get(0).density(), 0.03);
        for (WedgeReading reading : MeasuredWedge.readings(steps, 1)) {
            assertEquals(printed(reading.nominal()), reading.effective(), 0.02, "step " + reading.nominal());
        }
    }

    /** Without known steps a camera that tells light truly is believed, and the user told. */
    @Test
    void withoutKnownSteps() throws IOException {
        WedgePhotograph.Read read = WedgePhotograph.read(new Scene(0.6, 2, false, 1, 0.3, 0.5, false).photograph(), LAYOUT, List.of(), 1);
        assertEquals("no-known-step", read.problems().get(0).code());
        for (WedgeReading reading : MeasuredWedge.readings(read.steps(), 1)) {
            assertEquals(printed(reading.nominal()), reading.effective(), 0.02);
        }
    }

    @Test
    void pictureOfNoWedge() {
        assertThrows(Refusal.class, () -> WedgePhotograph.read(Fields.gray(300, 200, 50, (x, y) -> 255 - x / 2), LAYOUT, List.of(), 1));
        assertThrows(Refusal.class, () -> WedgePhotograph.read(Fields.gray(300, 200, 50, (x, y) -> 240), LAYOUT, List.of(), 1));
        assertThrows(Refusal.class,
                () -> WedgePhotograph.read(Fields.gray(600, 300, 50, (x, y) -> x > 50 && x < 550 && y > 100 && y < 200 ? 40 : 250), LAYOUT, List.of(), 1));
    }

    /** Known steps said in the wrong order are refused, not believed. */
    @Test
    void knownStepsTheOtherWayRound() {
        List<Double> turned = TABLET.stream().sorted((a, b) -> Double.compare(b, a)).toList();
        assertThrows(Refusal.class, () -> WedgePhotograph.read(new Scene(0.6, 2, false, 2.2, 0.3, 1, true).photograph(), LAYOUT, turned, TABLET_MM));
    }

    /** Every patch of the printed strip covers what it says, between bare glass; the frame is whole. */
    @Test
    void theStrip() throws IOException {
        ScreeningRecipe recipe = ScreeningRecipe.withDefaults().withMethod("diffusion").withDotMm(0.1).withDpi(600);
        BitPicture bits = WedgeStrip.bits(LAYOUT, ScreeningMethods.ownMethods().method("diffusion"), recipe);
        for (int step = 0; step < LAYOUT.steps().size(); step++) {
            RectMm patch = LAYOUT.patch(step);
            assertEquals(LAYOUT.steps().get(step), share(bits, patch, 600), 0.012);
            assertTrue(share(bits, LAYOUT.figures(step), 600) > 0.02);
        }
        for (RectMm bare : LAYOUT.bare()) {
            assertEquals(0, share(bits, bare, 600));
        }
        assertEquals(1, share(bits, new RectMm(0, 0, LAYOUT.widthMm(), 1.9), 600));
        assertEquals(0, share(bits, LAYOUT.window(), 600));
    }

    private static double share(BitPicture bits, RectMm box, double dpi) {
        int painted = 0;
        int px = 0;
        for (int y = (int) Math.round(box.yMm() * dpi / 25.4); y < (int) Math.round(box.bottomMm() * dpi / 25.4); y++) {
            for (int x = (int) Math.round(box.xMm() * dpi / 25.4); x < Math.min(bits.widthPx(), (int) Math.round(box.rightMm() * dpi / 25.4)); x++) {
                painted += bits.get(x, y) ? 1 : 0;
                px++;
            }
        }
        return (double) painted / px;
    }
}
