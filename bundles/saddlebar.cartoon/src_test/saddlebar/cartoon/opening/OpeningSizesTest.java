package saddlebar.cartoon.opening;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

import saddlebar.model.art.DrawnLine;
import saddlebar.model.problem.Refusal;

class OpeningSizesTest {
    private static double area(DrawnLine line) {
        return OutlineArea.of(line).getArea();
    }

    /** 600 x 900 shows, rebate 12, air 3: tight 624 x 924, panel 618 x 918. */
    @Test
    void rectangle() {
        OpeningSizes sizes = OpeningSizes.ofSight(RoundOpenings.rectangle(600, 900).line(0.01), 12, 3);
        assertEquals(600 * 900, area(sizes.sight()), 1e-6);
        assertEquals(624 * 924, area(sizes.tight()), 1e-6);
        assertEquals(618 * 918, area(sizes.panel()), 1e-6);
        assertEquals(9, sizes.coverMm(), 0);
        assertEquals(List.of(), sizes.problems());
    }

    /** A circle grows by its radius. */
    @Test
    void roundel() {
        OpeningSizes sizes = OpeningSizes.ofTight(RoundOpenings.roundel(500).line(0.001), 10, 4);
        assertEquals(Math.PI * 240 * 240, area(sizes.sight()), 5);
        assertEquals(Math.PI * 246 * 246, area(sizes.panel()), 5);
    }

    @ParameterizedTest
    @MethodSource("saddlebar.cartoon.opening.OpeningShapesTest#shapes")
    void outlinesLieWithinEachOther(OpeningShape shape) {
        OpeningSizes sizes = OpeningSizes.ofSight(shape.line(0.05), 10, 3);
        assertTrue(OutlineArea.of(sizes.tight()).contains(OutlineArea.of(sizes.panel())));
        assertTrue(OutlineArea.of(sizes.panel()).contains(OutlineArea.of(sizes.sight())));
        assertEquals(3, OutlineArea.of(sizes.tight()).getExteriorRing().distance(OutlineArea.of(sizes.panel()).getExteriorRing()), 0.1);
    }

    @Test
    void whatIsTooNarrow() {
        DrawnLine slit = RoundOpenings.rectangle(20, 900).line(0.01);
        assertThrows(Refusal.class, () -> OpeningSizes.ofTight(slit, 10, 3));
        assertEquals("edge-shows", OpeningSizes.ofSight(slit, 6, 3).problems().get(0).code());
        DrawnLine open = new DrawnLine("open", 0, new double[] {0, 0, 10, 0, 10, 10}, false);
        assertThrows(Refusal.class, () -> OpeningSizes.ofSight(open, 6, 3));
        DrawnLine eight = new DrawnLine("eight", 0, new double[] {0, 0, 10, 10, 10, 0, 0, 10}, true);
        assertThrows(Refusal.class, () -> OpeningSizes.ofSight(eight, 6, 3));
    }

    /** 600 x 2000 in an outer wall: fields of 400 mm, four bars; 5200 mm of perimeter make two panels, divided at a bar. */
    @Test
    void barsOfATallLight() {
        PanelDivision division = PanelDivision.of(RoundOpenings.rectangle(600, 2000).line(0.01), 0, BarRule.EXTERIOR,
                PanelDivision.USUAL_PERIMETER_MM);
        assertEquals(List.of(400.0, 800.0, 1200.0, 1600.0), division.bars().stream().map(SaddleBar::yMm).toList());
        assertEquals(2, division.panels().size());
        assertEquals(2 * (600 + 800), division.panels().get(0).perimeterMm(), 1e-9);
        assertEquals(600, division.bars().get(0).clearMm(), 1e-9);
        assertEquals(1, division.bars().stream().filter(SaddleBar::division).count());
        assertTrue(division.caution().contains("licensed professional"));
    }

    /** One bar lies on the springing line; chords of the head are shorter: half way up a semicircle of 450 the bar is 2 sqrt(450^2 - 225^2). */
    @Test
    void barAtTheSpringing() {
        OpeningShape arch = ArchedOpenings.semicircular(900, 1200);
        PanelDivision division = PanelDivision.of(arch.line(0.001), arch.springingMm(), BarRule.EXTERIOR, 10_000);
        assertTrue(division.bars().stream().anyMatch(bar -> Math.abs(bar.yMm() - 450) < 1e-9 && Math.abs(bar.clearMm() - 900) < 1e-6));
        PanelDivision close = PanelDivision.of(arch.line(0.001), 225, BarRule.EXTERIOR, 10_000);
        SaddleBar half = close.bars().get(0);
        assertEquals(225, half.yMm(), 1e-9);
        assertEquals(2 * Math.sqrt(450 * 450 - 225 * 225), half.clearMm(), 0.05);
    }

    @ParameterizedTest
    @EnumSource
    void ruleHoldsAndPanelsAddUp(BarRule rule) {
        for (OpeningShape shape : OpeningShapesTest.shapes()) {
            DrawnLine line = shape.line(0.01);
            PanelDivision division = PanelDivision.of(line, shape.springingMm(), rule, 3000);
            var box = OutlineArea.of(line).getEnvelopeInternal();
            double before = box.getMinY();
            for (SaddleBar bar : division.bars()) {
                assertTrue(bar.yMm() - before <= rule.mostMm() + 1e-6, shape.name());
                before = bar.yMm();
            }
            assertTrue(box.getMaxY() - before <= rule.mostMm() + 1e-6, shape.name());
            assertEquals(area(line), division.panels().stream().mapToDouble(StackedPanel::areaMm2).sum(), 1e-3, shape.name());
            assertEquals(division.panels().size() - 1, division.bars().stream().filter(SaddleBar::division).count());
            assertTrue(!division.problems().isEmpty() || division.panels().stream().allMatch(panel -> panel.perimeterMm() <= 3000), shape.name());
        }
    }

    @Test
    void aWideOpeningNeedsMoreThanBars() {
        PanelDivision division = PanelDivision.of(RoundOpenings.rectangle(2500, 1000).line(0.01), 0, BarRule.EXTERIOR, 4000);
        assertEquals("panel-too-large", division.problems().get(0).code());
        assertTrue(division.problems().get(0).message().contains("professional"));
    }
}
