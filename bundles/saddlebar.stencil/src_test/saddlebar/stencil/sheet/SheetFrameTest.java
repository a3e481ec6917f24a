package saddlebar.stencil.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import saddlebar.model.problem.Refusal;

class SheetFrameTest {
    /** ANSI/ASME Y14.1 (letter 8.5 x 11 in, tabloid 11 x 17 in) and ISO 216 (A4, A3), in px at 1200 an inch. */
    @ParameterizedTest
    @CsvSource({"letter, 10200, 13200", "tabloid, 13200, 20400", "a4, 9921, 14031", "a3, 14031, 19843"})
    void commonSheetsHaveTheirSize(String name, int widthPx, int heightPx) {
        assertEquals(widthPx, Paper.of(name).widthPx(1200));
        assertEquals(heightPx, Paper.of(name).heightPx(1200));
    }

    @Test
    void otherSheetsAreGivenInMm() {
        assertEquals(new Paper("300x200.5", 300, 200.5), Paper.of("300x200.5"));
        assertTrue(assertThrows(Refusal.class, () -> Paper.of("foolscap")).getMessage().startsWith("sheet foolscap: there is no sheet of that name"));
        assertTrue(assertThrows(Refusal.class, () -> Paper.of("300x")).getMessage().startsWith("sheet 300x: "));
        assertTrue(assertThrows(Refusal.class, () -> Paper.of("NaNx20")).getMessage().startsWith("sheet NaNx20: "));
    }

    @Test
    void partsOfASheetDoNotOverlap() {
        for (Paper paper : List.of(Paper.LETTER, Paper.TABLOID, Paper.A4, Paper.A3, Paper.TABLOID.turned(), new Paper("narrow", 140, 200))) {
            SheetFrame frame = SheetFrame.of(paper, 4.3);
            RectMm inner = new RectMm(4.3, 4.3, paper.widthMm() - 8.6, paper.heightMm() - 8.6).grown(1e-9);
            assertTrue(inner.contains(frame.headMm()) && inner.contains(frame.footMm()) && inner.contains(frame.usableMm()));
            assertTrue(frame.usableMm().yMm() - frame.headMm().bottomMm() >= SheetFrame.CAPTION_MM);
            assertTrue(frame.footMm().yMm() > frame.usableMm().bottomMm());
            assertTrue(frame.usableMm().heightMm() > 0.8 * paper.heightMm() || paper.heightMm() < 220, paper + " " + frame.usableMm());
        }
    }

    @Test
    void refusesSheetsWithoutRoom() {
        Refusal e = assertThrows(Refusal.class, () -> SheetFrame.of(new Paper("card", 120, 200), 4.3));
        assertEquals("sheet card: a sheet of 120 x 200 mm is too narrow for the 100 mm check rule; take one at least 128.6 mm wide", e.getMessage());
        assertThrows(Refusal.class, () -> SheetFrame.of(new Paper("strip", 300, 50), 10));
    }

    @Test
    void refusesAStencilThatNoSheetTakes() {
        List<SheetFrame> sheets = List.of(SheetFrame.of(Paper.LETTER, 4.3), SheetFrame.of(Paper.TABLOID, 4.3));
        SheetFrame.requireRoom("W1-7", 380, 200, sheets);
        Refusal e = assertThrows(Refusal.class, () -> SheetFrame.requireRoom("W1-7", 410, 200, sheets));
        assertEquals("stencil W1-7: it is 410 x 200 mm, larger than any sheet takes (letter has room for 207.3 x 245.3 mm, "
                + "tabloid has room for 270.8 x 397.7 mm); split its layer into smaller stencils or take a larger sheet", e.getMessage());
    }
}
