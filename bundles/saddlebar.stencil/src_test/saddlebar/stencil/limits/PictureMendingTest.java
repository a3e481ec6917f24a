package saddlebar.stencil.limits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;

import saddlebar.model.problem.PlaceMm;
import saddlebar.stencil.BitPicture;

/** Places widened one by one and picture by picture; counted by plain geometry. */
class PictureMendingTest {
    private static final double DPI = 254; // 10 px a mm
    private static final double WIDE_MM = 0.7;

    /** Bars of 4 px, long enough to lie in several parts of a large picture. */
    private static BitPicture bars(int width, int height, int... rows) {
        BitPicture bits = new BitPicture(width, height);
        for (int row : rows) {
            for (int y = row; y < row + 4; y++) {
                for (int x = 20; x < width - 20; x++) {
                    bits.set(x, y, true);
                }
            }
        }
        return bits;
    }

    private static int thickness(BitPicture bits, int x, int row) {
        int high = 0;
        for (int y = row - 10; y < row + 14; y++) {
            high += bits.get(x, y) ? 1 : 0;
        }
        return high;
    }

    @Test
    void onlyTheWantedPlaceIsWidenedAndWhole() {
        BitPicture bits = bars(900, 200, 50, 120);
        PictureMending.Wanted upper = new PictureMending.Wanted(true, new PlaceMm(45, 5.2), WIDE_MM);
        PictureMending.Done done = PictureMending.places(bits, DPI, List.of(upper));
        assertEquals(1, done.steps().size());
        assertTrue(done.notFound().isEmpty());
        for (int x : new int[] {30, 450, 870}) { // the bar goes on beyond what was first looked at
            assertTrue(thickness(done.bits(), x, 50) >= 7, "at " + x);
        }
        assertEquals(4, thickness(done.bits(), 450, 120), "the other bar stays");
        assertEquals(4, thickness(bits, 450, 50), "the picture that was given is not changed");
    }

    @Test
    void aPlaceThatIsWideByNowIsToldAsNotFound() {
        BitPicture bits = bars(300, 200, 50);
        PictureMending.Wanted far = new PictureMending.Wanted(true, new PlaceMm(15, 15), WIDE_MM);
        PictureMending.Wanted outside = new PictureMending.Wanted(true, new PlaceMm(500, 5), WIDE_MM);
        PictureMending.Done done = PictureMending.places(bits, DPI, List.of(far, outside));
        assertEquals(List.of(far, outside), done.notFound());
        assertEquals(bits, done.bits());
    }

    /** Part by part a large picture is mended as a small one is whole: no bar is left narrow where parts meet. */
    @Test
    void partsLeaveNoSeam() {
        BitPicture bits = bars(4600, 2300, 60, 1020, 2046, 2200);
        PictureMending.Done done = PictureMending.all(bits, DPI, WIDE_MM, 0);
        for (int row : new int[] {60, 1020, 2046, 2200}) {
            for (int x = 40; x < 4560; x++) {
                assertTrue(thickness(done.bits(), x, row) >= 7, "row " + row + " at " + x);
            }
        }
        assertFalse(done.steps().isEmpty());
    }

    /** 0.5 mm of wanted overlap: edge to edge there is none, 0.2 mm is too little, 0.8 mm is enough; far apart nothing meets. */
    @Test
    void layersThatMeetWithoutTrap() {
        assertEquals(1, meeting(0).places().size());
        assertEquals(1, meeting(2).places().size());
        assertEquals(0, meeting(8).places().size());
        assertEquals(0, meeting(-30).places().size());
        assertEquals(1, meeting(-3).places().size(), "a gap narrower than the trap");
        assertEquals(15, meeting(0).lengthMm(), 1.0, "the common edge is 15 mm long");
        assertEquals(0.8 * 15, meeting(8).overlapMm2(), 0.1, "plain geometry");
    }

    private static LayerTrap.Meeting meeting(int overlapPx) {
        BitPicture left = box(20, 120);
        BitPicture right = box(120 - overlapPx, 280);
        return LayerTrap.meeting(left, right, DPI, 0.5);
    }

    private static BitPicture box(int from, int to) {
        BitPicture bits = new BitPicture(300, 200);
        for (int y = 25; y < 175; y++) {
            for (int x = from; x < to; x++) {
                bits.set(x, y, true);
            }
        }
        return bits;
    }
}
