package saddlebar.materials.paint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

/**
 * The figures are worked by hand from volumes that add and masses that add; the rules of transfer and waste are common practice without a source, so there is
 * nothing published to hold them against.
 */
class PaintNeedTest {
    private static final double MESH_CM3_PER_M2 = 26.22; // of a mesh of 220 threads of 48 um

    /** A4 with 35 % printed: 0.06237 x 0.35 x 26.22 x 0.6 = 0.3434 cm3. */
    @Test
    void wetVolumeOfASheet() {
        assertEquals(0.3434, new PrintedArea(0.06237, 0.35, 1, MESH_CM3_PER_M2).wetCm3(PaintRules.USUAL), 5e-5);
        assertEquals(15.73, PaintRules.USUAL.wetFilmUm(MESH_CM3_PER_M2), 5e-3);
    }

    /** 2:1 of 4.5 and 1.1 g/cm3: 1 / (0.6667/4.5 + 0.3333/1.1) = 2.2164; 15.73 um is 34.87 g/m2 of mix, 23.25 of powder, 5.17 um fired. */
    @Test
    void densityPowderAndFiredThickness() {
        PaintMixture mixture = new PaintMixture(2, 4.5, 1.1);
        double wet = PaintRules.USUAL.wetFilmUm(MESH_CM3_PER_M2);
        assertEquals(2.2164, mixture.densityGPerCm3(), 5e-5);
        assertEquals(34.87, wet * mixture.densityGPerCm3(), 5e-3);
        assertEquals(23.25, mixture.powderGPerM2(wet), 5e-3);
        assertEquals(5.17, mixture.firedUm(wet), 5e-3);
        assertEquals(2.1538, new PaintMixture(3, 3.5, 1.0).densityGPerCm3(), 5e-5);
    }

    /** 9449 x 11811 px at 1200 dpi: 200.004 x 249.9995 mm. */
    @Test
    void areaOfTheBits() {
        assertEquals(0.2000038 * 0.2499995, PrintedArea.ofBits(9449, 11811, 1200, 0.5, 1, 20).areaM2(), 1e-8);
    }

    /** 1 m2 solid, once: net 34.87 g, waste max(15, 10.46) = 15, 49.87 -> 50 g, of which 2/3 powder; the rest is left. */
    @Test
    void wasteRoundingAndRest() {
        PaintNeed need = PaintNeed.of(List.of(new PrintedArea(1, 1, 1, MESH_CM3_PER_M2)), new PaintMixture(2, 4.5, 1.1), PaintRules.USUAL);
        assertEquals(15, need.wasteG(), 1e-9);
        assertEquals(50, need.mixG(), 1e-9);
        assertEquals(100 / 3.0, need.powderG(), 1e-9);
        assertEquals(50 - 34.8687 - 15, need.leftG(), 1e-4);
        PaintNeed large = PaintNeed.of(List.of(new PrintedArea(2, 1, 1, MESH_CM3_PER_M2)), new PaintMixture(2, 4.5, 1.1), PaintRules.USUAL);
        assertEquals(0.3 * large.netMixG(), large.wasteG(), 1e-9);
        assertEquals(0, PaintNeed.of(List.of(), new PaintMixture(2, 4.5, 1.1), PaintRules.USUAL).mixG());
    }

    /** 30 pulls an hour for 8 h are 240 of one bowl; 241 need two. */
    @Test
    void potLife() {
        PaintMixture mixture = new PaintMixture(2, 4.5, 1.1);
        assertEquals(1, PaintNeed.of(List.of(new PrintedArea(0.1, 0.5, 240, 25)), mixture, PaintRules.USUAL).batches());
        assertEquals(2, PaintNeed.of(List.of(new PrintedArea(0.1, 0.5, 241, 25)), mixture, PaintRules.USUAL).batches());
    }

    @Test
    void oldestLotFirstAndWholeBowls() {
        PowderStock stock = new PowderStock(List.of(new PowderStock.Lot("b", "new", Optional.of(LocalDate.of(2026, 2, 1)), 100),
                new PowderStock.Lot("a", "old", Optional.of(LocalDate.of(2025, 2, 1)), 30)));
        PowderStock.Plan one = stock.plan(1, 25);
        assertEquals(List.of(new PowderStock.Draw(1, "old", 25)), one.draws());
        PowderStock.Plan more = stock.plan(2, 60);
        assertEquals("new", more.draws().get(0).lot());
        assertEquals(List.of(2), more.mixedBowls()); // 30 of old and 30 of the 40 left of new
        assertEquals(0, more.buyG(), 1e-9);
        assertEquals(20, stock.plan(1, 150).buyG(), 1e-9);
    }

    @Test
    void cautionsOfPoisons() {
        List<String> all = new PaintFlags(true, true, true, false).cautions();
        assertTrue(all.get(0).startsWith("Lead") && all.get(1).startsWith("Cadmium") && all.get(2).startsWith("Silica"));
        assertTrue(all.get(3).contains("local rules"));
        assertTrue(new PaintFlags(false, false, false, true).cautions().isEmpty());
    }

    @Property(tries = 300)
    void nothingIsLost(@ForAll @DoubleRange(min = 0.01, max = 5) double areaM2, @ForAll @DoubleRange(min = 0.01, max = 1) double coverage,
            @ForAll @IntRange(min = 1, max = 500) int prints, @ForAll @DoubleRange(min = 0.5, max = 6) double ratio) {
        PaintMixture mixture = new PaintMixture(ratio, 4.5, 0.95);
        PaintNeed need = PaintNeed.of(List.of(new PrintedArea(areaM2, coverage, prints, 25)), mixture, PaintRules.USUAL);
        assertTrue(need.leftG() >= -1e-6 && need.leftG() < 5 * need.batches() + 1e-6);
        assertEquals(need.mixG(), need.powderG() + need.mediumG(), 1e-9 * need.mixG());
        assertEquals(ratio, need.powderG() / need.mediumG(), 1e-9 * ratio);
    }
}
