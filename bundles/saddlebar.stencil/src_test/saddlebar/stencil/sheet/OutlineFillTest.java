package saddlebar.stencil.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;

import org.junit.jupiter.api.Test;

import saddlebar.stencil.BitPicture;

class OutlineFillTest {
    /** The JDK's geometry as second opinion: a px is set exactly where {@code Shape.contains} says its centre lies inside. */
    @Test
    void fillsWhereTheJdkSaysInside() throws IOException {
        try (SheetFont font = new SheetFont()) {
            assertLikeJdk(font.outline("Reading 0123 & \u00d8\u03a9\u2026", 1, 6, 4), 45, 8, 200);
            assertLikeJdk(font.outline("Estuary", 1, 6, 4), 20, 8, 313);
        }
        assertLikeJdk(new Ellipse2D.Double(1, 2, 20, 12), 30, 20, 300);
        assertLikeJdk(MarkShapes.register(new RectMm(2, 2, 6, 6), 0.2), 10, 10, 600);
    }

    private static void assertLikeJdk(Shape outlineMm, double widthMm, double heightMm, double dpi) {
        int widthPx = (int) (widthMm * dpi / 25.4);
        int heightPx = (int) (heightMm * dpi / 25.4);
        BitPicture ours = OutlineFill.bits(outlineMm, dpi, 0, 0, widthPx, heightPx);
        int differing = 0;
        for (int y = 0; y < heightPx; y++) {
            for (int x = 0; x < widthPx; x++) {
                differing += ours.get(x, y) == outlineMm.contains((x + 0.5) * 25.4 / dpi, (y + 0.5) * 25.4 / dpi) ? 0 : 1;
            }
        }
        assertTrue(ours.count() > 1000);
        assertTrue(differing <= 2 + ours.count() / 2000, differing + " of " + ours.count() + ", more than chords within 0.01 px explain");
    }

    /** Px whose centres lie inside: a box from 1.5 to 4.5 px holds the centres of px 2 to 4 in the half-open sense. */
    @Test
    void takesPxByTheirCentres() {
        BitPicture bits = OutlineFill.bits(new Rectangle2D.Double(1.5, 1.5, 3, 3), 25.4, 0, 0, 8, 8);
        assertEquals(9, bits.count());
        assertTrue(bits.get(1, 1) && bits.get(3, 3));
        assertFalse(bits.get(4, 4) || bits.get(0, 1));
    }

    @Test
    void cutsAtItsBox() {
        BitPicture bits = OutlineFill.bits(new Rectangle2D.Double(-100, -100, 300, 300), 25.4, 0, 0, 70, 5);
        assertEquals(350, bits.count());
        assertEquals(0, OutlineFill.bits(new Rectangle2D.Double(-100, -100, 50, 50), 25.4, 0, 0, 70, 5).count());
    }

    @Test
    void turnsAreThoseOfTheFormula() {
        BitPicture picture = Sheets.paint(203, 130);
        for (int turns = 0; turns < 4; turns++) {
            BitPicture turned = TurnedBits.turned(picture, turns);
            assertEquals(turns % 2 == 0 ? 203 : 130, turned.widthPx());
            for (int y = 0; y < turned.heightPx(); y++) {
                for (int x = 0; x < turned.widthPx(); x++) {
                    boolean from = switch (turns) {
                        case 1 -> picture.get(y, 129 - x);
                        case 2 -> picture.get(202 - x, 129 - y);
                        case 3 -> picture.get(202 - y, x);
                        default -> picture.get(x, y);
                    };
                    assertEquals(from, turned.get(x, y));
                }
            }
            assertEquals(picture, TurnedBits.turned(turned, 4 - turns));
        }
    }

    @Test
    void fontIsTheSameEverywhere() throws IOException {
        try (SheetFont font = new SheetFont()) {
            assertEquals(4 * 1366 / 2048.0, font.widthMm("A", 4), 1e-9); // advance width of the letter in the font's own table
            assertEquals("Est\u2026", font.fitted("Estuary", 4, 10));
            assertEquals("Estuary", font.fitted("Estuary", 4, 100));
            assertTrue(font.outline("\uE000", 0, 0, 4).getBounds2D().getHeight() > 0, "the box of a letter that is not there");
            assertEquals("a?b", font.shown("a\uE000b"));
        }
    }
}
