package saddlebar.ui.easel;

import saddlebar.production.light.RectMm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class ViewportTest {
    private static final RectMm WINDOW = new RectMm(0, 0, 600, 900);

    @Provide
    Arbitrary<Viewport> views() {
        return Combinators.combine(Arbitraries.doubles().between(-5000, 5000), Arbitraries.doubles().between(-5000, 5000),
                Arbitraries.doubles().between(Viewport.LEAST_PT_PER_MM, Viewport.MOST_PT_PER_MM), Arbitraries.integers().between(1, 4000),
                Arbitraries.integers().between(1, 3000)).as(Viewport::new);
    }

    @Property
    void thePlaceUnderThePointerStays(@ForAll("views") Viewport view, @ForAll @DoubleRange(min = 0, max = 4000) double xPt,
            @ForAll @DoubleRange(min = 0, max = 3000) double yPt, @ForAll @DoubleRange(min = 0.01, max = 100) double factor) {
        Viewport nearer = view.zoomedAt(xPt, yPt, factor);
        double exactPt = 1e-6;
        assertEquals(xPt, nearer.xPt(view.xMm(xPt)), exactPt);
        assertEquals(yPt, nearer.yPt(view.yMm(yPt)), exactPt);
        assertTrue(nearer.ptPerMm() >= Viewport.LEAST_PT_PER_MM && nearer.ptPerMm() <= Viewport.MOST_PT_PER_MM);
    }

    @Property
    void thereAndBackIsWhereOneWas(@ForAll("views") Viewport view, @ForAll @DoubleRange(min = -2000, max = 2000) double xPt,
            @ForAll @DoubleRange(min = -2000, max = 2000) double yPt) {
        Viewport back = view.draggedBy(xPt, yPt).draggedBy(-xPt, -yPt);
        assertEquals(view.leftMm(), back.leftMm(), 1e-6);
        assertEquals(view.topMm(), back.topMm(), 1e-6);
    }

    @Property
    void howeverFarOnePansSomeGlassStaysInSight(@ForAll("views") Viewport view) {
        RectMm seen = view.keeping(WINDOW).visible();
        assertTrue(seen.touches(WINDOW), () -> seen + " has lost the window");
    }

    @Property
    void whatIsBroughtIntoViewIsInView(@ForAll("views") Viewport view, @ForAll @DoubleRange(min = -2000, max = 2000) double xMm,
            @ForAll @DoubleRange(min = -2000, max = 2000) double yMm, @ForAll @DoubleRange(min = 0, max = 500) double sizeMm) {
        RectMm piece = new RectMm(xMm, yMm, sizeMm, sizeMm);
        RectMm seen = view.showing(piece, 0).visible().grownBy(1e-6);
        boolean fits = sizeMm <= view.visible().widthMm() && sizeMm <= view.visible().heightMm();
        if (fits) {
            assertTrue(seen.holds(piece.leftMm(), piece.topMm()) && seen.holds(piece.rightMm(), piece.bottomMm()));
        } else {
            assertTrue(seen.touches(piece));
        }
    }

    @Test
    void aWindowThatIsFittedFillsTheViewWithItsMarginAndStandsInTheMiddle() {
        Viewport view = Viewport.fitting(WINDOW, 1000, 1000, 50);
        assertEquals(1.0, view.ptPerMm(), 1e-12);
        assertEquals(50, view.yPt(0), 1e-9);
        assertEquals(950, view.yPt(900), 1e-9);
        assertEquals(200, view.xPt(0), 1e-9);
    }

    @Test
    void theOldMiddleStaysTheMiddleOfAViewOfAnotherSize() {
        Viewport view = new Viewport(100, 200, 2, 800, 600);
        Viewport wider = view.resized(1000, 700);
        assertEquals(view.xMm(400), wider.xMm(500), 1e-9);
        assertEquals(view.yMm(300), wider.yMm(350), 1e-9);
        assertEquals(2, wider.ptPerMm());
    }

    /** An inch is 25.4 mm by definition: on a screen of 96 dots an inch it is 96 dots long. */
    @Test
    void anInchOfGlassIsAnInchOfScreenAtTrueSize() {
        assertEquals(96, 25.4 * Viewport.trueSizePtPerMm(96), 1e-12);
        assertEquals(163, 25.4 * Viewport.trueSizePtPerMm(163), 1e-12);
    }

    @Test
    void whatIsInViewIsNotMoved() {
        Viewport view = Viewport.fitting(WINDOW, 1000, 1000, 50);
        assertSame(view, view.keeping(WINDOW));
        assertEquals(view, view.showing(new RectMm(10, 10, 50, 50), 10));
    }

    @Test
    void noScaleNoView() {
        assertThrows(IllegalArgumentException.class, () -> new Viewport(0, 0, Double.NaN, 10, 10));
        assertThrows(IllegalArgumentException.class, () -> new Viewport(0, 0, 1, 0, 10));
    }
}
