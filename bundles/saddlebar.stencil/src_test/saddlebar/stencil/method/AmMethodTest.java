package saddlebar.stencil.method;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import saddlebar.stencil.ActualScreen;
import saddlebar.stencil.BitPicture;
import saddlebar.stencil.Fields;
import saddlebar.stencil.ScreeningRecipe;
import saddlebar.stencil.SpotFunction;
import saddlebar.stencil.tone.ToneTable;

class AmMethodTest {
    private static final ScreeningRecipe RECIPE = ScreeningRecipe.withDefaults();
    private final AmMethod am = new AmMethod();

    @ParameterizedTest
    @EnumSource
    void everyTileIsAPermutation(SpotFunction spot) {
        for (double angle : new double[] {0, 22.5, 45, -30, 100}) {
            RankedTile tile = RankedTile.of(CellGrid.of(RECIPE.withAngleDeg(angle)), spot);
            int[] ranks = tile.ranks();
            Arrays.sort(ranks);
            assertTrue(Arrays.equals(IntStream.range(0, tile.size()).toArray(), ranks), spot + " at " + angle);
        }
    }

    /** Closed form: coverage k/N paints k px of every tile. A square of N x N px holds N whole tiles, whatever the lattice. */
    @Property(tries = 40)
    void flatCoveragePaintsExactly(@ForAll @IntRange(min = -6, max = 6) int a, @ForAll @IntRange(min = 1, max = 6) int b,
            @ForAll @IntRange(min = 1, max = 2) int cells, @ForAll SpotFunction spot) {
        CellGrid grid = new CellGrid(a, b, cells);
        int n = grid.area();
        RankedTile tile = RankedTile.of(grid, spot);
        byte[] black = new byte[n * n];
        for (int k = 0; k <= n; k++) {
            BitPicture bits = new BitPicture(n, n);
            new ThresholdScreener(tile.thresholds(Fields.tone((double) k / n)), n).screen(black, n, bits.words());
            assertEquals((long) k * n, bits.count());
        }
    }

    /** The whole way, at the ruling and angles of a real sheet: 900 px a cell, 901 tones, each exact. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 90})
    void nineHundredAndOneTones(double angle) {
        ScreeningRecipe recipe = RECIPE.withAngleDeg(angle);
        assertEquals(901, am.actual(recipe).levels());
        for (int k = 0; k <= 900; k++) {
            assertEquals(4L * k, Fields.flat(am, recipe, k / 900.0, 60, 60).count());
        }
    }

    /** Every threshold comparison against the plain definition: painted where coverage > (rank + 1/2)/N. */
    @Property(tries = 30)
    void sameAsTheDefinition(@ForAll @IntRange(min = 1, max = 200) int width, @ForAll long seed, @ForAll SpotFunction spot) {
        ScreeningRecipe recipe = RECIPE.withLpi(97).withAngleDeg(33).withDot(spot.standardName());
        RankedTile tile = RankedTile.of(CellGrid.of(recipe), spot);
        byte[] codes = Fields.noise(width * 40, seed);
        ToneTable tone = ToneTable.linear();
        BitPicture bits = Fields.screened(am, recipe, tone, width, 40, 7, (x, y) -> codes[y * width + x]);
        for (int y = 0; y < 40; y++) {
            for (int x = 0; x < width; x++) {
                boolean expected = tone.coverage(codes[y * width + x] & 255) > (tile.rank(x, y) + 0.5) / tile.size();
                assertEquals(expected, bits.get(x, y), "at " + x + ", " + y);
            }
        }
    }

    @Test
    void saysWhatComesOut() {
        ActualScreen actual = am.actual(RECIPE.withSupercell(1));
        assertEquals(39.889, actual.lpi().getAsDouble(), 5e-4);
        assertEquals(21.448, actual.angleDeg().getAsDouble(), 5e-4);
        assertEquals(906, actual.levels());
        assertTrue(actual.dotMm().isEmpty());
    }

    /** A dot starts at the middle of its cell and grows outwards: at 0 degrees and 2 % the middle of the first cell is painted, its corner bare. */
    @Test
    void dotsStandInTheMiddleOfCells() {
        BitPicture light = Fields.flat(am, RECIPE.withAngleDeg(0), 0.02, 60, 60);
        assertTrue(light.get(15, 15) && light.get(14, 14) && light.get(45, 45));
        assertTrue(!light.get(0, 0) && !light.get(30, 30));
        BitPicture dark = Fields.flat(am, RECIPE.withAngleDeg(0), 0.98, 60, 60);
        assertTrue(!dark.get(0, 0) && !dark.get(30, 30) && dark.get(15, 15));
    }
}
