package saddlebar.kiln.glass;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.Test;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import saddlebar.kiln.glass.GlassAnalysis.Oxide;

class VftTest {
    /**
     * Constants: Encyclopedia of Glass Science, Technology, History and Culture (Wiley 2021), standard glass DGG I; points worked out from
     * them outside of this program.
     */
    @Test
    void pointsOfFloatGlass() {
        Vft glass = Glass.DGG_I;
        assertEquals(515.1, glass.strainC(), 0.05);
        assertEquals(542.7, glass.annealingC(), 0.05);
        assertEquals(716.8, glass.softeningC(), 0.05);
        assertEquals(1019.3, glass.workingC(), 0.05);
        double[][] published = {{500, 14.457}, {560, 11.196}, {600, 9.637}, {650, 8.122}, {700, 6.941}, {750, 5.994}};
        for (double[] point : published) {
            assertEquals(point[1], glass.logEta(point[0]), 0.0006, point[0] + " degC");
        }
    }

    /**
     * Measured isokoms of the standard glass DGG I: 1301, 721, 539 degC (Fluegel, Glass Technol. A 48(1), 2007, Table 12); the fit's own s.d.
     * is 0.16 in log eta.
     */
    @Test
    void floatGlassAgainstItsMeasuredPoints() {
        assertEquals(1.5, Glass.DGG_I.logEta(1301), 0.16);
        assertEquals(6.6, Glass.DGG_I.logEta(721), 0.16);
        assertEquals(12, Glass.DGG_I.logEta(539), 2 * 0.16);
    }

    /**
     * Measured points: Fluegel 2007, Table 12. The older glass's equation log10(eta in poise) = -1.626 + 4239/(T - 266) is Napolitano and
     * Hawkins 1964 (from memory).
     */
    @Test
    void curvesThroughThreeMeasuredPoints() {
        assertEquals(-2.9733, Glass.SRM_710A.a(), 0.0001);
        assertEquals(4937.42, Glass.SRM_710A.b(), 0.02);
        assertEquals(215.25, Glass.SRM_710A.t0C(), 0.01);
        assertEquals(515.0, Glass.SRM_710A.strainC(), 0.05);
        assertEquals(-2.6037, Glass.SRM_710.a(), 0.0001);
        assertEquals(4206.50, Glass.SRM_710.b(), 0.02);
        assertEquals(267.96, Glass.SRM_710.t0C(), 0.01);
        assertEquals(529.2, Glass.SRM_710.strainC(), 0.05);
        for (double[] point : new double[][] {{1.5, 1293}, {6.6, 725}, {12, 556}}) {
            assertEquals(point[1], 266 + 4239 / (point[0] + 1 + 1.626), 0.6, "the old equation");
            assertEquals(point[1], Glass.SRM_710.temperatureC(point[0]), 1e-6);
        }
    }

    @Property(tries = 200)
    void findsAnyCurveAgainFromThreeOfItsPoints(@ForAll @DoubleRange(min = -4, max = -1) double a,
            @ForAll @DoubleRange(min = 2000, max = 6000) double b,
            @ForAll @DoubleRange(min = -50, max = 400) double t0) {
        Vft curve = new Vft(a, b, t0);
        Vft found = Vft.through(new Vft.Point(2, curve.temperatureC(2)), new Vft.Point(7, curve.temperatureC(7)),
                new Vft.Point(12, curve.temperatureC(12)));
        assertEquals(a, found.a(), 1e-6);
        assertEquals(b, found.b(), 1e-2);
        assertEquals(t0, found.t0C(), 1e-3);
    }

    @Property(tries = 200)
    void viscosityAndTemperatureTurnIntoEachOther(@ForAll @DoubleRange(min = -2, max = 16) double logEta) {
        assertEquals(logEta, Glass.DGG_I.logEta(Glass.DGG_I.temperatureC(logEta)), 1e-9);
    }

    @Test
    void pointsThatNoGlassHasAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> Vft.through(new Vft.Point(1.5, 700), new Vft.Point(6.6, 900), new Vft.Point(12, 1100)));
        assertThrows(IllegalArgumentException.class, () -> Vft.through(new Vft.Point(1.5, 1300), new Vft.Point(6.6, 1300), new Vft.Point(12, 545)));
        assertThrows(IllegalArgumentException.class, () -> new Vft(-2.6, Double.NaN, 246));
        assertEquals(Double.POSITIVE_INFINITY, Glass.DGG_I.etaPaS(20));
        assertEquals(0, Glass.DGG_I.fluidity(20));
    }

    /**
     * Model: Lakatos et al. 1976; the composition is that of DGG I without its minor oxides; the three temperatures were worked out outside of
     * this program.
     */
    @Test
    void viscosityFromAnAnalysis() {
        Map<Oxide, Double> dgg = new EnumMap<>(
                Map.of(Oxide.SIO2, 71.789, Oxide.AL2O3, 1.237, Oxide.NA2O, 14.971, Oxide.K2O, .333, Oxide.MGO, 4.181, Oxide.CAO, 6.735));
        GlassAnalysis analysis = GlassAnalysis.of(dgg);
        double[] at = analysis.isokomsC();
        assertEquals(1455.7, at[0], 0.06);
        assertEquals(1027.0, at[1], 0.06);
        assertEquals(819.3, at[2], 0.06);
        double[] fit = {1, 3, 5};
        for (int i = 0; i < 3; i++) {
            assertEquals(Glass.DGG_I.temperatureC(fit[i]), at[i], 8, "the fit to the same glass's measured points");
            assertEquals(at[i], analysis.viscosity().temperatureC(fit[i]), 1e-6);
        }
        assertEquals(List.of(), analysis.doubts());
        Map<Oxide, Double> lead = new EnumMap<>(Map.of(Oxide.SIO2, 56.0, Oxide.PBO, 30.0, Oxide.K2O, 12.0, Oxide.NA2O, 2.0));
        assertEquals(4, GlassAnalysis.of(lead).doubts().size(), GlassAnalysis.of(lead).doubts().toString());
        assertThrows(IllegalArgumentException.class, () -> GlassAnalysis.of(Map.of(Oxide.SIO2, 20.0)));
    }

    /** 433 kJ/mol at 650 degC: worked out outside of this program from the published constants. */
    @Test
    void activationEnergy() {
        assertEquals(433_000, Glass.DGG_I.activationJPerMol(650), 500);
    }

    /** Equal layers of equal stiffness: curvature 3/2 strain/h, seam stress E strain/2 (Timoshenko 1925, his equations 4 to 6 for m = n = 1). */
    @Test
    void equalLayersBowAsTimoshenkoSays() {
        Glass one = Glass.floatGlass();
        Glass other = one.withExpansion(9.5e-6);
        FusedLayers layers = new FusedLayers(one, 3, other, 3);
        double strain = 0.5e-6 * layers.fallK();
        assertEquals(1.5 * strain / 0.006, Math.abs(layers.curvaturePerM()), 1e-9);
        assertEquals(one.biaxialPa() * strain / 2 / 1e6, layers.seamMpa(), 1e-6);
        assertTrue(layers.cautions().stream().anyMatch(p -> p.code().equals("layers-differ")), layers.cautions().toString());
        assertEquals(List.of(), new FusedLayers(one, 3, one, 2).cautions());
        assertTrue(new FusedLayers(one, 3, Glass.sodaLime("soft", Glass.DGG_I.shifted(-40)), 3).cautions().stream()
                .anyMatch(p -> p.code().equals("layers-anneal-apart")));
    }

    @Property(tries = 100)
    void heatContentIsTheIntegralOfSpecificHeat(@ForAll @DoubleRange(min = -20, max = 1000) double degC) {
        HeatCapacity heat = HeatCapacity.SODA_LIME;
        double step = 0.01;
        assertEquals(heat.at(degC), (heat.enthalpy(degC + step) - heat.enthalpy(degC - step)) / (2 * step), 0.01);
    }
}
