package saddlebar.report.truesize;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import saddlebar.model.problem.Refusal;

class TilingTest {
    private static TrueSizeDrawing blank(double widthMm, double heightMm) {
        return new TrueSizeDrawing("blank", widthMm, heightMm, List.of());
    }

    @Property(tries = 300)
    void pagesCoverTheDrawingAndShareTheirStrips(@ForAll @DoubleRange(min = 10, max = 3000) double widthMm,
            @ForAll @DoubleRange(min = 10, max = 3000) double heightMm, @ForAll @DoubleRange(min = 0, max = 30) double overlapMm) {
        PrintPaper paper = PrintPaper.of("a3");
        Tiling tiling = Tiling.of(blank(widthMm, heightMm), paper, overlapMm);
        assertEquals(tiling.columns() * tiling.rows(), tiling.tiles().size());
        for (Tiling.Tile tile : tiling.tiles()) {
            assertTrue(tile.widthMm() <= tiling.paper().widthMm() - 2 * paper.marginMm() - Tiling.SIDE_MM + 1e-9, "wider than the page");
            assertTrue(tile.heightMm() <= tiling.paper().heightMm() - 2 * paper.marginMm() - Tiling.FOOT_MM + 1e-9, "higher than the page");
            assertTrue(tile.xMm() >= 0 && tile.yMm() >= 0);
            if (tile.column() == tiling.columns() - 1) {
                assertEquals(widthMm, tile.xMm() + tile.widthMm(), 1e-6);
            } else {
                Tiling.Tile right = tiling.tiles().get(tile.row() * tiling.columns() + tile.column() + 1);
                assertEquals(overlapMm, tile.xMm() + tile.widthMm() - right.xMm(), 1e-6);
            }
            if (tile.row() == tiling.rows() - 1) {
                assertEquals(heightMm, tile.yMm() + tile.heightMm(), 1e-6);
            }
        }
    }

    @Test
    void theWayToLieNeedsFewerPages() {
        Tiling wide = Tiling.of(blank(270, 180), PrintPaper.of("a4"), 10);
        assertEquals(1, wide.tiles().size());
        assertEquals(297, wide.paper().widthMm());
    }

    @Test
    void namesGoOnAfterZ() {
        assertEquals("A1", Tiling.Tile.name(0, 0));
        assertEquals("Z3", Tiling.Tile.name(25, 2));
        assertEquals("AA3", Tiling.Tile.name(26, 2));
        assertEquals("BA12", Tiling.Tile.name(52, 11));
    }

    @Test
    void aRollTakesAnyLengthInOnePage() {
        Tiling roll = Tiling.of(blank(580, 4_000), PrintPaper.of("roll:610"), 12);
        assertEquals(1, roll.tiles().size());
        assertEquals(2, Tiling.of(blank(800, 4_000), PrintPaper.of("roll:610"), 12).tiles().size());
    }

    @Test
    void tooManyPagesAreRefused() {
        Refusal refusal = assertThrows(Refusal.class, () -> Tiling.of(blank(20_000, 20_000), PrintPaper.of("a4"), 12));
        assertTrue(refusal.getMessage().contains("larger paper"), refusal.getMessage());
    }

    @ParameterizedTest
    @ValueSource(strings = {"b5", "12x12", "roll:x", "210x", "NaNx300", "", "-5x300"})
    void wordsThatNameNoPaperAreRefused(String words) {
        assertThrows(Refusal.class, () -> PrintPaper.of(words));
    }
}
