package saddlebar.stencil.limits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import saddlebar.stencil.BitPicture;
import saddlebar.stencil.Fields;

class MendingTest {
    private static final double DPI = 1200;
    private static final double PX = 25.4 / DPI;

    /** The nearest by looking at all. */
    @Property(tries = 60)
    void distancesAreExact(@ForAll @IntRange(min = 1, max = 40) int width, @ForAll @IntRange(min = 1, max = 40) int height, @ForAll long seed) {
        byte[] noise = Fields.noise(width * height, seed);
        BitPicture bits = new BitPicture(width, height);
        for (int i = 0; i < noise.length; i++) {
            bits.set(i % width, i / width, noise[i] > 115);
        }
        for (boolean outside : new boolean[] {true, false}) {
            DistanceField field = DistanceField.to(bits, true, outside);
            for (int y = 0; y < height; y++) {
                for (int x = 0; x < width; x++) {
                    int nearest = DistanceField.NONE;
                    for (int v = -1; v <= height; v++) {
                        for (int u = -1; u <= width; u++) {
                            boolean beyond = u < 0 || v < 0 || u == width || v == height;
                            if (beyond ? outside : bits.get(u, v)) {
                                nearest = Math.min(nearest, (u - x) * (u - x) + (v - y) * (v - y));
                            }
                        }
                    }
                    assertEquals(nearest, field.squared(x, y));
                }
            }
        }
    }

    private static BitPicture bar(int width) {
        BitPicture bits = new BitPicture(100, 60);
        for (int y = 20; y < 20 + width; y++) {
            for (int x = 10; x < 90; x++) {
                bits.set(x, y, true);
            }
        }
        return bits;
    }

    /** A bar of 7 px holds a disc of 7 px, one of 6 does not (plain geometry); the mended one holds it everywhere. */
    @Test
    void fineBars() {
        assertTrue(Mending.thickened(bar(7), DPI, 7 * PX).steps().isEmpty());
        Mending.Proposal proposal = Mending.thickened(bar(6), DPI, 7 * PX);
        assertEquals(1, proposal.steps().size());
        assertEquals("thicken", proposal.steps().get(0).kind());
        assertEquals(0, tooFine(proposal.bits(), 7 * PX));
        assertTrue(tooFine(bar(6), 7 * PX) > 0);
    }

    /** A bridge of 3 px between two openings becomes one of 8; paint elsewhere stays. */
    @Test
    void fineBridges() {
        BitPicture bits = bar(30);
        for (int x = 10; x < 90; x++) {
            for (int y = 33; y < 36; y++) {
                bits.set(x, y, false);
            }
        }
        Mending.Proposal proposal = Mending.strengthened(bits, DPI, 8 * PX);
        assertEquals(1, proposal.steps().size());
        int bare = 0;
        for (int y = 20; y < 50; y++) {
            bare += proposal.bits().get(50, y) ? 0 : 1;
        }
        assertTrue(bare >= 7 && bare <= 9, bare + " px");
        assertTrue(proposal.bits().get(50, 22) && proposal.bits().get(50, 47));
    }

    /** Two halves that meet: the under one spread by 5 px lies under the other for 5 px. */
    @Test
    void trap() {
        BitPicture left = new BitPicture(100, 20);
        BitPicture right = new BitPicture(100, 20);
        for (int i = 0; i < 2000; i++) {
            left.set(i % 100, i / 100, i % 100 < 50);
            right.set(i % 100, i / 100, i % 100 >= 50 && i % 100 < 80);
        }
        assertEquals(0, LayerTrap.overlapMm2(left, right, DPI));
        BitPicture spread = LayerTrap.spread(left, right, DPI, 5 * PX);
        assertEquals(5 * 20 * PX * PX, LayerTrap.overlapMm2(spread, right, DPI), 1e-9);
        assertEquals(55 * 20, spread.count());
    }

    private static long tooFine(BitPicture bits, double openMm) {
        LimitsCheck check = new LimitsCheck(bits.widthPx(), bits.heightPx(), DPI, openMm, 0);
        check.add(bits.words(), bits.heightPx());
        return check.finish().tooFine();
    }
}
