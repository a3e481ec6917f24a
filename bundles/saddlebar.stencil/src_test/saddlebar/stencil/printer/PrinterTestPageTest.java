package saddlebar.stencil.printer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import saddlebar.model.problem.Refusal;
import saddlebar.stencil.BitPicture;
import saddlebar.stencil.ScreeningMethods;
import saddlebar.stencil.sheet.ComposedSheet;
import saddlebar.stencil.sheet.Paper;
import saddlebar.stencil.sheet.PrinterFit;
import saddlebar.stencil.sheet.SheetPlan;

class PrinterTestPageTest {
    private static final double DPI = 300;

    /** Any paper that the studio uses takes the page, and its even strip has the tone that it is to have. */
    @Test
    void pageOnEveryCommonPaper() throws IOException {
        for (Paper paper : Paper.common()) {
            SheetPlan plan = PrinterTestPage.plan("laser", paper, 4.3, DPI, ScreeningMethods.ownMethods());
            BitPicture page = BitPicture.of(ComposedSheet.of(plan));
            int left = (int) ((plan.frame().usableMm().xMm() + 20) * DPI / 25.4);
            int top = (int) ((plan.frame().usableMm().yMm() + 100) * DPI / 25.4);
            assertEquals(0.3, page.part(left, top, 240, 600).count() / (240.0 * 600), 0.02, paper.name());
        }
        assertThrows(Refusal.class, () -> PrinterTestPage.plan("laser", new Paper("slip", 100, 60), 4.3, DPI, ScreeningMethods.ownMethods()));
    }

    /** Lengths that an inexact printer would give, from the four corners by plain geometry, lead back to what it does; the turned fit undoes a turned sheet. */
    @ParameterizedTest
    @CsvSource({"1, 1, 0", "0.995, 1.003, 0.002", "1.01, 0.99, -0.004"})
    void measuredLengthsGiveTheFit(double across, double down, double skew) {
        double a = 201.3;
        double d = 264.8;
        double fall = Math.hypot(across * a + skew * d, down * d);
        double rise = Math.hypot(across * a - skew * d, down * d);
        PrinterFit fit = PrinterFit.measured(a, d, across * a, Math.hypot(skew * d, down * d), fall, rise);
        assertEquals(across, fit.acrossScale(), 1e-9);
        assertEquals(down, fit.downScale(), 1e-9);
        assertEquals(skew, fit.skew(), 1e-9);
        assertEquals(skew == 0 && across == 1, fit.isTrue());
        // distances within a sheet fed turned by a quarter: x of the sheet runs down the paper
        double[][] corners = {{0, 0}, {150, 0}, {150, 100}, {0, 100}};
        for (double[] from : corners) {
            for (double[] to : corners) {
                double[] p = fit.printed(300 - from[1], from[0]);
                double[] q = fit.printed(300 - to[1], to[0]);
                double[] u = fit.turned().printed(from[0], from[1]);
                double[] v = fit.turned().printed(to[0], to[1]);
                assertEquals(Math.hypot(p[0] - q[0], p[1] - q[1]), Math.hypot(u[0] - v[0], u[1] - v[1]), 0.01, "a turn of the whole moves nothing within");
            }
        }
    }

    /** The two limits, common practice without a source. */
    @Test
    void tonerIsJudged() {
        assertEquals(TonerJudgement.Verdict.FUSE, TonerJudgement.ofDensity(2.2).verdict());
        assertEquals(TonerJudgement.Verdict.LOOK_FIRST, TonerJudgement.ofDensity(1.7).verdict());
        assertEquals(TonerJudgement.Verdict.PRINT_AGAIN, TonerJudgement.ofDensity(1.2).verdict());
        assertEquals(2.0, TonerJudgement.of(0.01).density(), 1e-12, "density 2 lets a hundredth through (definition, ISO 5-2)");
        assertTrue(TonerJudgement.ofDensity(1.2).words().contains("1.20"));
        assertThrows(IllegalArgumentException.class, () -> TonerJudgement.of(0));
    }
}
