package saddlebar.materials.metal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;

import saddlebar.cartoon.opening.BarRule;

class MetalTest {
    private static final double LB_KG = 0.45359237;

    /** EN 572-1: 2500 kg/m3, so 7.5 kg/m2 at 3 mm. */
    @Test
    void massOfGlass() {
        assertEquals(7.5, PanelWeight.glassKg(1e6, 3, 2500), 1e-12);
        assertEquals(0.1 * (7.5 + 2), PanelWeight.leaded(7.5, 2).cementKg(), 1e-12); // a tenth: common practice, no source
        assertEquals(8.5, PanelWeight.foiled(7.5, 1).totalKg(), 1e-12);
    }

    /** Half ellipses by hand: 6 x 2 is 9.425 mm2 and 80.1 g/m at 8.5 g/cm3, 5 x 1.5 is 50.1 g/m. */
    @Test
    void solderBeads() {
        assertEquals(9.425, SolderBead.INNER.sectionMm2(), 5e-4);
        assertEquals(80.1, SolderBead.INNER.massGPerM(8.5), 0.05);
        assertEquals(50.1, SolderBead.EDGE.massGPerM(8.5), 0.05);
        assertEquals((2 * 80.11 * 0.6 + 50.07 * 1.2) * 1.15, SolderBead.massG(600, 1200, 8.5), 0.05);
    }

    /** Handbook densities of tin-lead solders: 63/37 8.40 to 8.46, 60/40 8.50 to 8.52, 50/50 8.87 to 8.90 g/cm3. */
    @Test
    void densityOfSolders() {
        assertEquals(8.521, SolderBead.alloyGPerCm3(0.6), 1e-3);
        assertEquals(8.890, SolderBead.alloyGPerCm3(0.5), 1e-3);
        assertEquals(8.417, SolderBead.alloyGPerCm3(0.63), 1e-3);
    }

    /** 2 x 6.0 x 1.0 + 4.8 x 1.6 = 19.68 mm2; times 11.34 g/cm3 is 0.2232 kg/m. */
    @Test
    void sectionOfCame() {
        CameSection came = new CameSection(6.0, 1.0, 4.8, 1.6);
        assertEquals(19.68, came.sectionMm2(), 1e-12);
        assertEquals(0.2232, came.massKgPerM(), 5e-5);
    }

    /** 300 x 300 in four squares of 150: four perimeters of 600 are 2400 = 2 x 600 inner + 1200 edge. */
    @Test
    void foilOfFourSquares() {
        assertEquals(2.4, FoilNeed.of(4 * 600).netM(), 1e-12);
        assertEquals(2 * 600 + 1200, 4 * 600);
        assertEquals(2, FoilNeed.of(30_000).rolls()); // 33 m with waste, a roll is 32.9
    }

    /** 7/32 in for 3 mm glass is the standard choice of trade texts (a fold of 1.28 mm); 5/32 in folds 0.48 mm, 3/8 in 3.26 mm. */
    @Test
    void foldOfFoil() {
        assertEquals(1.278, FoilNeed.foldMm(5.55625, 3), 1e-3);
        assertTrue(FoilNeed.fits(5.55625, 3));
        assertFalse(FoilNeed.fits(3.96875, 3));
        assertFalse(FoilNeed.fits(9.525, 3));
    }

    /** Worked by hand from the published equation (NIOSH 94-110). */
    @Test
    void liftingByHand() {
        assertEquals(16.57, new LiftingLimit(30, 75, 50, 0, 1, 0.95).recommendedKg(), 5e-3);
        assertEquals(10.71, LiftingLimit.PANEL.recommendedKg(), 5e-3);
    }

    /**
     * The manual's supply reel of 44 lb (NIOSH 94-110, example 1; figures from memory): origin HM 0.44, VM 0.89, DM 0.86, CM 0.95, RWL 16.3 lb, LI 2.7;
     * destination 0.44, 0.75, 0.86, 1, RWL 14.5 lb, LI 3.0. The positions here give these multipliers in the metric equation, whose 23 kg are 50.7 lb where
     * the manual's pounds begin with 51.
     */
    @Test
    void liftingAgainstTheManual() {
        LiftingLimit origin = new LiftingLimit(25 / 0.44, 75 - 0.11 / 0.003, 4.5 / 0.04, 0, 1, 0.95);
        assertEquals(16.3, origin.recommendedKg() / LB_KG, 0.15);
        assertEquals(2.7, origin.index(44 * LB_KG), 0.05);
        LiftingLimit destination = new LiftingLimit(25 / 0.44, 75 + 0.25 / 0.003, 4.5 / 0.04, 0, 1, 1);
        assertEquals(14.5, destination.recommendedKg() / LB_KG, 0.15);
        assertEquals(3.0, destination.index(44 * LB_KG), 0.1);
    }

    @Test
    void whoCarries() {
        assertTrue(LiftingLimit.PANEL.handling(10.7).startsWith("One person"));
        assertTrue(LiftingLimit.PANEL.handling(10.8).startsWith("Two people"));
        assertTrue(LiftingLimit.PANEL.handling(14.3).startsWith("Use a lifting aid"));
    }

    /** Trade texts: without bars up to 2 to 4 m around or 600 x 900 mm; 300 to 450 mm apart outdoors and in doors, 600 elsewhere. */
    @Test
    void barsByTheRuleOfThumb() {
        assertTrue(Reinforcement.of(600, 800, BarRule.EXTERIOR).heightsMm().isEmpty());
        Reinforcement door = Reinforcement.of(600, 1800, BarRule.DOOR);
        assertEquals(List.of(450.0, 900.0, 1350.0), door.heightsMm());
        assertEquals(List.of(600.0, 1200.0), Reinforcement.of(600, 1800, BarRule.INTERIOR).heightsMm());
        assertEquals(3 * 4, door.ties());
        assertTrue(Reinforcement.CAUTION.contains("local code"));
    }
}
