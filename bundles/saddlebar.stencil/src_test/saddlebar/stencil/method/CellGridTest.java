package saddlebar.stencil.method;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.Set;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import saddlebar.stencil.ScreeningRecipe;

class CellGridTest {
    private static final ScreeningRecipe RECIPE = ScreeningRecipe.withDefaults();

    /** Closed form: a = round(m dpi/lpi cos t), b likewise with the sine; 40 lines an inch at 1200 dpi. */
    @ParameterizedTest
    @CsvSource({"0, 1, 30, 0, 900, 40.000, 0", "7.5, 1, 30, 4, 916, 39.649, 7.595", "7.5, 4, 119, 16, 14417, 39.976, 7.658",
            "15, 1, 29, 8, 905, 39.889, 15.422", "15, 4, 116, 31, 14417, 39.976, 14.962", "22.5, 1, 28, 11, 905, 39.889, 21.448",
            "22.5, 4, 111, 46, 14437, 39.949, 22.510", "45, 1, 21, 21, 882, 40.406, 45", "45, 4, 85, 85, 14450, 39.931, 45"})
    void fortyLines(double angle, int cells, int a, int b, int area, double lpi, double actualAngle) {
        CellGrid grid = CellGrid.of(RECIPE.withAngleDeg(angle).withSupercell(cells));
        assertEquals(new CellGrid(a, b, cells), grid);
        assertEquals(area, grid.area());
        assertEquals(lpi, grid.lpi(1200), 5e-4);
        assertEquals(actualAngle, grid.angleDeg(), 5e-4);
    }

    @Test
    void fewestCellsThatComeNear() {
        assertEquals(1, CellGrid.of(RECIPE.withAngleDeg(0)).cells()); // exact
        assertEquals(4, CellGrid.of(RECIPE.withAngleDeg(45)).cells()); // 1 and 2 cells are off by 1 %, 3 by 0.56 %
        CellGrid grid = CellGrid.of(RECIPE);
        assertEquals(22.5, grid.angleDeg(), 0.25);
        assertEquals(40, grid.lpi(1200), 0.2);
    }

    /** The brick tiles the plane as the lattice does: every px has the tile coordinates of the brick px that stands for it. */
    @Property(tries = 60)
    void bricksRepeatTheLattice(@ForAll @IntRange(min = -40, max = 40) int a, @ForAll @IntRange(min = -40, max = 40) int b) {
        if (a == 0 && b == 0) {
            return;
        }
        CellGrid grid = new CellGrid(a, b, 1);
        Set<Long> places = new HashSet<>();
        for (int y = 0; y < grid.brickRows(); y++) {
            for (int x = 0; x < grid.brickPx(); x++) {
                places.add((long) grid.along(x, y) << 32 | grid.across(x, y));
            }
        }
        assertEquals(grid.area(), places.size(), "a brick has every place of the tile once");
        for (int y = 0; y < 3 * grid.brickRows(); y++) {
            int phase = Math.floorMod(y / grid.brickRows() * grid.brickShift(), grid.brickPx());
            for (int x = 0; x < 50; x++) {
                int inBrick = (x + phase) % grid.brickPx();
                assertEquals(grid.along(inBrick, y % grid.brickRows()), grid.along(x, y));
                assertEquals(grid.across(inBrick, y % grid.brickRows()), grid.across(x, y));
            }
        }
    }

    @Property(tries = 200)
    void nearTheRulingThatWasAskedFor(@ForAll @DoubleRange(min = 20, max = 75) double lpi, @ForAll @DoubleRange(min = 0, max = 180) double angle) {
        CellGrid grid = CellGrid.of(RECIPE.withLpi(lpi).withAngleDeg(angle));
        assertTrue(Math.abs(grid.lpi(1200) / lpi - 1) < 0.02, grid + " for " + lpi + " at " + angle);
        assertTrue(Math.abs(grid.angleDeg() - angle) < 1, grid + " for " + lpi + " at " + angle);
    }
}
