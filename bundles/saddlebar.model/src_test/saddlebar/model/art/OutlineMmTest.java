package saddlebar.model.art;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.Test;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class OutlineMmTest {
    @Property
    void whatIsWrittenIsRead(@ForAll("rings") List<double[]> rings) {
        OutlineMm outline = OutlineMm.of(rings);
        assertEquals(outline, OutlineMm.parse(outline.toString()));
        assertEquals(outline.hashCode(), OutlineMm.parse(outline.toString()).hashCode());
        for (int r = 0; r < rings.size(); r++) {
            assertArrayEquals(rings.get(r), outline.ring(r), 0.5000001e-6);
        }
    }

    /** The polygon that OGC 06-103r4 gives as its example of well-known text (clause 7.2.6); its area by hand: 100 - 25. */
    @Test
    void theExampleOfTheStandardIsRead() {
        OutlineMm example = OutlineMm.parse("Polygon((10 10, 10 20, 20 20, 20 15, 10 10))");
        assertArrayEquals(new double[] {10, 10, 10, 20, 20, 20, 20, 15}, example.ring(0));
        assertEquals(75, example.areaMm2());
        assertEquals("POLYGON ((10 10, 10 20, 20 20, 20 15, 10 10))", example.toString());
    }

    @Provide
    Arbitrary<List<double[]>> rings() {
        Arbitrary<Double> coordinate = Arbitraries.oneOf(Arbitraries.doubles().between(-5000, 5000), Arbitraries.of(0.0, -0.0, 1e-6, -1e-6, 99999999.0));
        Arbitrary<double[]> ring = coordinate.array(Double[].class).ofMinSize(6).ofMaxSize(20).map(OutlineMmTest::evenAndOpen);
        return ring.list().ofMinSize(1).ofMaxSize(4);
    }

    /** An even count, the last point apart from the first, as a ring is kept. */
    private static double[] evenAndOpen(Double[] values) {
        double[] xy = new double[values.length & ~1];
        for (int i = 0; i < xy.length; i++) {
            xy[i] = values[i];
        }
        xy[xy.length - 2] = xy[0] > 0 ? xy[0] - 7 : xy[0] + 7;
        return xy;
    }

    @Test
    void theTextIsWellKnownText() {
        OutlineMm square = OutlineMm.rectangle(0, 0, 10, 20.5);
        assertEquals("POLYGON ((0 0, 10 0, 10 20.5, 0 20.5, 0 0))", square.toString());
        assertEquals("POLYGON EMPTY", OutlineMm.EMPTY.toString());
        assertTrue(OutlineMm.parse(" polygon  empty ").isEmpty());
        OutlineMm holed = OutlineMm.parse("POLYGON((0 0,10 0,10 10,0 10,0 0),(4 4,6 4,6 6.000001,4 4))");
        assertEquals(2, holed.rings());
        assertEquals(100 - 2.000001, holed.areaMm2(), 1e-9);
        assertArrayEquals(new double[] {0, 0, 10, 10}, holed.boundsMm());
    }

    @Test
    void whatIsNoRegionIsRefused() {
        for (String bad : new String[] {"", "POINT (1 1)", "POLYGON", "POLYGON ((0 0, 1 1))", "POLYGON ((0 0, 1 0, 1 1, 0 0)", "POLYGON ((0 0, 1 0, 1 x, 0 0))",
                "POLYGON ((0 0, 1 0, 1 NaN, 0 0))", "POLYGON ((0 0, 1 0, 1 1e300, 0 0))", "POLYGON EMPTY 3"}) {
            assertThrows(IllegalArgumentException.class, () -> OutlineMm.parse(bad), bad);
        }
        for (double bad : new double[] {Double.NaN, Double.POSITIVE_INFINITY, 2e8}) {
            assertThrows(IllegalArgumentException.class, () -> OutlineMm.of(0, 0, 1, 0, 1, bad));
        }
        assertThrows(IllegalStateException.class, OutlineMm.EMPTY::boundsMm);
    }

    @Test
    void nobodyChangesItFromOutside() {
        double[] xy = {0, 0, 1, 0, 1, 1};
        OutlineMm outline = OutlineMm.of(new ArrayList<>(List.of(xy)));
        xy[0] = 5;
        outline.ring(0)[1] = 7;
        assertArrayEquals(new double[] {0, 0, 1, 0, 1, 1}, outline.ring(0));
    }
}
