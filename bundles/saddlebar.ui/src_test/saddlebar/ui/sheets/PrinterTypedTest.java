package saddlebar.ui.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;

import saddlebar.model.problem.Refusal;
import saddlebar.stencil.sheet.PrinterFit;

class PrinterTypedTest {
    private static PrinterTyped typed(String across, String down, String falling, String rising, String bands, String density) {
        return new PrinterTyped(across, down, falling, rising, bands, density);
    }

    @Test
    void lengthsInTheUnitsThatPeopleUse() {
        PrinterFit fit = typed("200 mm", "26,4 cm", "", "", "", "").fit(200, 264);
        assertEquals(1, fit.acrossScale(), 1e-12);
        assertEquals(1, fit.downScale(), 1e-12);
        assertEquals(0, fit.skew(), 1e-12);
        assertEquals(1.016, typed("8 in", "264", "", "", "", "").fit(200, 264).acrossScale(), 1e-9);
        assertFalse(typed("", "", "", "", "25.4", "2").hasLengths());
    }

    @Test
    void whatCannotBeUsedIsSaid() {
        assertThrows(Refusal.class, () -> typed("200", "", "", "", "", "").fit(200, 264));
        assertThrows(Refusal.class, () -> typed("200", "264", "331", "", "", "").fit(200, 264));
        assertThrows(Refusal.class, () -> typed("150", "264", "", "", "", "").fit(200, 264), "no printer does that");
        assertThrows(Refusal.class, () -> typed("", "", "", "", "x", "").bandsMm());
        assertThrows(Refusal.class, () -> typed("", "", "", "", "", "9").toner());
    }

    @Test
    void bandsAndToner() {
        assertEquals(List.of(25.4, 38.0), typed("", "", "", "", "25,4; 38", "").bandsMm());
        assertEquals(2.1, typed("", "", "", "", "", "2,1").toner().orElseThrow().density(), 1e-9);
        assertTrue(typed("", "", "", "", "", " ").toner().isEmpty());
    }
}
