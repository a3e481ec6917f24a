package saddlebar.stencil.mesh;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;

import saddlebar.model.problem.Refusal;
import saddlebar.stencil.BitPicture;
import saddlebar.stencil.Fields;
import saddlebar.stencil.ScreeningMethods;
import saddlebar.stencil.ScreeningRecipe;

class PrintThroughMeshTest {
    /**
     * 40 lines at 22.5 degrees on 220 threads beat at 5.305 cycles an inch (4.79 mm; frequency vectors, Amidror 2009, ch. 2, worked for orders (2, 5)
     * and (0, 1)). The foretold print must show that wave, and more of it than of its neighbours in frequency. The ruling comes out of the device's
     * grid a little off, so the beat is taken at the ruling that was laid.
     */
    @Test
    void theBeatIsInTheForetoldPrint() {
        ScreeningRecipe recipe = ScreeningRecipe.withDefaults().withSupercell(4);
        double lpi = ScreeningMethods.ownMethods().method("am").actual(recipe).lpi().getAsDouble();
        double angle = ScreeningMethods.ownMethods().method("am").actual(recipe).angleDeg().getAsDouble();
        int side = 900;
        BitPicture bits = Fields.flat(ScreeningMethods.ownMethods().method("am"), recipe, 0.3, side, side);
        float[] covered = PrintThroughMesh.of(new Mesh(220, 48), 0).covered(bits, 1200);
        double t = Math.toRadians(angle);
        double fx = 2 * lpi * Math.cos(t) - 5 * lpi * -Math.sin(t) * -1;
        double fy = 2 * lpi * Math.sin(t) + 5 * lpi * Math.cos(t) - 220;
        assertEquals(5.3, Math.hypot(fx, fy), 0.6);
        double beat = wave(covered, side, fx / 1200, fy / 1200);
        double beside = 0;
        for (int d = 0; d < 8; d++) {
            double off = 6 + d;
            beside = Math.max(beside, wave(covered, side, (fx + off * Math.cos(d)) / 1200, (fy + off * Math.sin(d)) / 1200));
        }
        assertTrue(beat > 2 * beside, beat + " against " + beside);
    }

    /** Size of a wave of so many cycles a px, seen through a window that fades to the edges. */
    private static double wave(float[] values, int side, double fx, double fy) {
        double re = 0;
        double im = 0;
        double mean = 0;
        for (float value : values) {
            mean += value / values.length;
        }
        for (int y = 0; y < side; y++) {
            for (int x = 0; x < side; x++) {
                double window = Math.sin(Math.PI * (x + 0.5) / side) * Math.sin(Math.PI * (y + 0.5) / side);
                double turn = 2 * Math.PI * (fx * x + fy * y);
                re += (values[y * side + x] - mean) * window * Math.cos(turn);
                im += (values[y * side + x] - mean) * window * Math.sin(turn);
            }
        }
        return Math.hypot(re, im) / side / side;
    }

    @Test
    void solidAndBare() {
        BitPicture solid = new BitPicture(200, 200);
        PrintThroughMesh print = PrintThroughMesh.of(new Mesh(220, 48), 22.5);
        for (float covered : print.covered(solid, 1200)) {
            assertEquals(0, covered);
        }
        for (int i = 0; i < 40_000; i++) {
            solid.set(i % 200, i / 200, true);
        }
        float[] covered = print.covered(solid, 1200);
        for (int y = 20; y < 180; y++) {
            for (int x = 20; x < 180; x++) {
                assertTrue(covered[200 * y + x] > 0.9, "hole at " + x + ", " + y);
            }
        }
    }

    /** Opening, open share and volume of the common pairs by plain geometry, fabric of 1.55 threads; worked apart from this program. */
    @Test
    void table() {
        List<Mesh> meshes = MeshTable.common();
        assertEquals(16, meshes.size());
        double[][] worked = {{150.9, 42.7, 53.0, 311}, {159.9, 48.0, 52.8, 302}, {98.8, 36.8, 36.5, 227}, {75.3, 33.4, 28.5, 185}, {82.3, 39.9, 29.7, 178},
                {67.5, 34.1, 25.4, 163}, {62.4, 32.0, 23.8, 158}, {70.4, 40.7, 25.2, 150}, {59.6, 35.8, 22.2, 140}, {50.7, 31.3, 19.4, 131},
                {56.7, 39.1, 20.6, 125}, {43.3, 27.0, 16.7, 123}, {49.3, 35.0, 18.5, 117}, {52.3, 39.4, 18.9, 114}, {37.5, 27.5, 14.5, 106},
                {40.5, 32.1, 15.4, 103}};
        for (int i = 0; i < worked.length; i++) {
            Mesh mesh = meshes.get(i);
            assertEquals(worked[i][0], mesh.openingUm(), 0.051);
            assertEquals(worked[i][1], 100 * mesh.openArea(), 0.051);
            assertEquals(worked[i][2], mesh.volumeCm3PerM2(), 0.051);
            assertEquals(worked[i][3], mesh.finestDotUm(), 0.51);
        }
    }

    /** 220 threads less 2 %: 215.6; opening 117.81 - 48 um (closed form). */
    @Test
    void tension() {
        Mesh tense = new Mesh(220, 48).underTension(0.02);
        assertEquals(215.6, tense.threadsPerInch(), 1e-9);
        assertEquals(69.81, tense.openingUm(), 0.005);
        assertEquals(53.9, tense.finestLpi(), 1e-9);
        assertThrows(Refusal.class, () -> new Mesh(220, 48).underTension(0.2));
    }

    @Test
    void mapHoldsEveryRulingThatDividesTheGrid() {
        List<ScoredRuling> map = new MeshBeats(new Mesh(220, 48)).map(1200, 37.5, 50);
        assertEquals((32 - 24 + 1) * 19, map.size());
        assertEquals(0.097, map.stream().filter(ruling -> ruling.lpi() == 40 && ruling.angleDeg() == 22.5).findFirst().orElseThrow().score(), 0.0006);
    }
}
