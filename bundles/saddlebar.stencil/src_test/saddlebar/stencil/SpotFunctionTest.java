package saddlebar.stencil;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.Set;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Against ISO 32000-1:2008, Table 128. */
class SpotFunctionTest {
    /** Values worked out by hand from the formulas of Table 128 at (0,0), (.25,.5), (.5,.5), (.75,.75), (1,1). */
    @ParameterizedTest
    @CsvSource({"SimpleDot, 1, 0.6875, 0.5, -0.125, -1", "CosineDot, 1, 0.353553, 0, -0.707107, -1", "Double, 0, 0.353553, 0.5, -0.146447, 0",
            "Round, 1, 0.6875, 0.5, -0.875, -1", "Ellipse, 1, 0.873264, 0, -0.956597, -1",
            "EllipseB, 1, 0.532293, 0.362623, 0.043934, -0.274755", "Diamond, 1, 0.6875, 0.075, -0.875, -1",
            "Rhomboid, 0, 0.3625, 0.475, 0.7125, 0.95", "Line, 0, -0.5, -0.5, -0.75, -1"})
    void valuesOfTheStandard(String name, double centre, double quarter, double half, double threeQuarters, double corner) {
        SpotFunction spot = SpotFunction.named(name).orElseThrow();
        assertEquals(centre, spot.at(0, 0), 1e-6);
        assertEquals(quarter, spot.at(0.25, 0.5), 1e-6);
        assertEquals(half, spot.at(0.5, 0.5), 1e-6);
        assertEquals(threeQuarters, spot.at(0.75, 0.75), 1e-6);
        assertEquals(corner, spot.at(1, 1), 1e-6);
    }

    /** Share of the cell where the value is above 0: by symmetry 1/2, for the simple dot a circle's pi/4; on a grid of 400 x 400. */
    @ParameterizedTest
    @CsvSource({"CosineDot, 0.5", "Round, 0.5", "Ellipse, 0.5", "SimpleDot, 0.785398", "EllipseA, 0.816"})
    void areaAboveZero(String name, double share) {
        SpotFunction spot = SpotFunction.named(name).orElseThrow();
        int above = 0;
        for (int y = 0; y < 400; y++) {
            for (int x = 0; x < 400; x++) {
                above += spot.at((x + 0.5) / 200 - 1, (y + 0.5) / 200 - 1) > 0 ? 1 : 0;
            }
        }
        assertEquals(share, above / 160000.0, 0.003);
    }

    @Test
    void twentyOneNamesAndFiveShortOnes() {
        assertEquals(21, SpotFunction.values().length);
        Set<String> names = new HashSet<>();
        for (SpotFunction spot : SpotFunction.values()) {
            assertTrue(names.add(spot.standardName()));
            assertSame(spot, SpotFunction.named(spot.standardName()).orElseThrow());
        }
        assertSame(SpotFunction.ROUND, SpotFunction.named("round").orElseThrow());
        assertSame(SpotFunction.COSINE_DOT, SpotFunction.named("cosine").orElseThrow());
        assertEquals(21, SpotFunction.names().size());
        assertTrue(SpotFunction.named("triangle").isEmpty());
    }

    /** The inverted functions are the negatives of the plain ones. */
    @ParameterizedTest
    @CsvSource({"SimpleDot, 0", "DoubleDot, 0", "Double, 0", "EllipseA, 0", "EllipseC, 0"})
    void inverted(String name, double sum) {
        SpotFunction plain = SpotFunction.named(name).orElseThrow();
        SpotFunction inverted = SpotFunction.named("Inverted" + name).orElseThrow();
        for (double x = -1; x <= 1; x += 0.125) {
            for (double y = -1; y <= 1; y += 0.125) {
                assertEquals(sum, plain.at(x, y) + inverted.at(x, y), 1e-12);
            }
        }
    }
}
