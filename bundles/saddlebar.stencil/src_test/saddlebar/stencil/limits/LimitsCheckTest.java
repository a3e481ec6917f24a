package saddlebar.stencil.limits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.util.Random;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import saddlebar.model.problem.Refusal;
import saddlebar.stencil.BitBands;
import saddlebar.stencil.BitPicture;
import saddlebar.stencil.Fields;

class LimitsCheckTest {
    private static final double DPI = 1200;

    /** Closed form: a bar holds a disc as wide as itself, whichever its place and direction, and none wider. */
    @ParameterizedTest
    @ValueSource(ints = {2, 3, 6, 7, 8, 20})
    void barsAsWideAsTheDisc(int disc) {
        assertEquals(0, found(bar(disc, false), disc, 0).tooFine());
        assertEquals(0, found(bar(disc, true), disc, 0).tooFine());
        assertEquals(1, found(bar(disc - 1, false), disc, 0).tooFine());
        assertEquals(1, found(bar(disc - 1, true), disc, 0).tooFine());
        // the same bar bare between painted areas
        assertEquals(0, found(inverse(bar(disc, false)), 0, disc).bridgesLost());
        assertEquals(1, found(inverse(bar(disc - 1, false)), 0, disc).bridgesLost());
        assertEquals(1, found(inverse(bar(disc - 1, true)), 0, disc).bridgesLost());
    }

    @Test
    void sevenPxHoldsSixDoesNot() {
        assertEquals(0, found(bar(7, false), 7, 0).tooFine());
        assertEquals(1, found(bar(6, false), 7, 0).tooFine());
    }

    /** Two painted squares that touch by a corner: the bare squares between them touch by a corner too, and that is no bridge to lose. */
    @Test
    void cornersAreNoBridges() {
        BitPicture board = new BitPicture(60, 60);
        for (int y = 0; y < 60; y++) {
            for (int x = 0; x < 60; x++) {
                board.set(x, y, (x / 12 + y / 12) % 2 == 0);
            }
        }
        LimitsFound found = found(board, 8, 8);
        assertEquals(0, found.tooFine());
        assertEquals(0, found.bridgesLost());
    }

    /** Corners of wide shapes lose a px or two under a round disc: nothing to count. */
    @Test
    void tipsAreNotPlaces() {
        BitPicture square = new BitPicture(60, 60);
        fill(square, 20, 20, 40, 40);
        fill(square, 25, 10, 35, 20); // and the inner corners of a cross
        LimitsFound found = found(square, 9, 9);
        assertEquals(0, found.tooFine());
        assertEquals(0, found.bridgesLost());
    }

    @Test
    void bridgesAndIslands() {
        BitPicture two = new BitPicture(80, 40);
        fill(two, 5, 5, 30, 35);
        fill(two, 34, 5, 60, 35); // a bridge of 4 px between two openings
        assertEquals(1, found(two, 0, 5).bridgesLost());
        assertEquals(0, found(two, 0, 5).looseIslands());
        assertEquals(0, found(two, 0, 4).bridgesLost());
        two.set(15, 15, false); // an island of one px
        LimitsFound found = found(two, 0, 4);
        assertEquals(1, found.bridgesLost());
        assertEquals(1, found.looseIslands());
        assertEquals(15.5 * 25.4 / 1200, found.lostAt().get(0).xMm(), 1e-9);
        assertEquals(15.5 * 25.4 / 1200, found.lostAt().get(0).yMm(), 1e-9);
    }

    /** A bridge as short as it is narrow, between two round holes. */
    @Test
    void shortNecksAreBridgesToo() {
        BitPicture dots = new BitPicture(60, 30);
        for (int y = 0; y < 30; y++) {
            for (int x = 0; x < 60; x++) {
                dots.set(x, y, Math.hypot(x - 15, y - 15) <= 12 || Math.hypot(x - 43, y - 15) <= 12); // 3 px between, 5 a row on
            }
        }
        assertEquals(1, found(dots, 0, 6).bridgesLost());
        assertEquals(0, found(dots, 0, 3).bridgesLost());
        assertEquals(0, found(dots, 0, 6).looseIslands());
    }

    /** A hair that leaves a wide shape is too fine, and its place is told; a wart is not. */
    @Test
    void hairsThatHangOnSomething() {
        BitPicture hair = new BitPicture(100, 40);
        fill(hair, 5, 5, 30, 35);
        fill(hair, 30, 18, 33, 21); // 3 px long and wide
        assertEquals(0, found(hair, 7, 0).tooFine());
        fill(hair, 33, 18, 80, 21); // a disc of 7 px reaches one px into it
        LimitsFound found = found(hair, 7, 0);
        assertEquals(1, found.tooFine());
        assertEquals(31.5 * 25.4 / 1200, found.fineAt().get(0).xMm(), 1e-9);
        assertEquals(18.5 * 25.4 / 1200, found.fineAt().get(0).yMm(), 1e-9);
    }

    /** A bare picture and a full one have nothing narrow; the edge of the picture is stencil. */
    @Test
    void edges() {
        assertEquals(0, found(new BitPicture(70, 9), 5, 5).bridgesLost());
        BitPicture full = new BitPicture(70, 9);
        fill(full, 0, 0, 70, 9);
        LimitsFound found = found(full, 5, 5);
        assertEquals(0, found.tooFine() + found.bridgesLost());
        assertEquals(1, found.coverage());
        BitPicture edge = new BitPicture(70, 40);
        fill(edge, 0, 10, 4, 30); // 4 px are seen
        assertEquals(1, found(edge, 5, 0).tooFine());
        fill(edge, 10, 10, 69, 30); // the last column of stencil goes on outside
        assertEquals(0, found(edge, 0, 5).bridgesLost());
    }

    @Test
    void countsAndRefusals() {
        BitPicture dots = new BitPicture(90, 30);
        for (int i = 0; i < 8; i++) {
            fill(dots, 3 + 10 * i, 10, 6 + 10 * i, 13);
        }
        LimitsFound found = found(dots, 4, 0);
        assertEquals(8, found.tooFine());
        assertEquals(72, found.paintPx());
        assertEquals(72 / 2700.0, found.coverage());
        assertEquals("open-mm", assertThrows(Refusal.class, () -> new LimitsCheck(10, 10, DPI, 6, 0)).where());
        assertEquals("bridge-mm", assertThrows(Refusal.class, () -> new LimitsCheck(10, 10, DPI, 0, Double.NaN)).where());
        assertThrows(IllegalStateException.class, () -> new LimitsCheck(10, 10, DPI, 0, 0).finish());
    }

    /** Against a slow way that looks at the whole picture: openings by trying every disc, parts by flooding, necks by counting parts and rings. */
    @Property(tries = 100)
    void sameAsTheSlowWay(@ForAll @IntRange(min = 1, max = 75) int width, @ForAll @IntRange(min = 1, max = 30) int height,
            @ForAll @IntRange(min = 1, max = 7) int disc, @ForAll @IntRange(min = 1, max = 4) int grain, @ForAll int seed) {
        BitPicture blobs = blobs(width, height, grain, seed);
        LimitsFound found = found(blobs, disc, disc);
        SlowLimits slow = new SlowLimits(blobs, disc);
        assertEquals(slow.tooFine(), found.tooFine());
        assertEquals(slow.bridgesLost(), found.bridgesLost());
        assertEquals(slow.looseIslands(), found.looseIslands());
    }

    @Property(tries = 30)
    void bitsPassUnchangedInBandsOfAnyHeight(@ForAll @IntRange(min = 1, max = 20) int rows, @ForAll int seed) throws IOException {
        BitPicture blobs = blobs(70, 50, 3, seed);
        LimitsCheck check = check(blobs, 5, 4);
        BitPicture passed = new BitPicture(70, 50);
        try (BitBands bits = blobs.bands(); BitBands checked = new CheckedBands(bits, check)) {
            long[] band = new long[rows * 2];
            int row = 0;
            for (int n = checked.read(band, rows); n > 0; n = checked.read(band, rows)) {
                System.arraycopy(band, 0, passed.words(), row * 2, n * 2);
                row += n;
            }
        }
        assertEquals(blobs, passed);
        assertEquals(found(blobs, 5, 4), check.finish());
    }

    private static BitPicture blobs(int width, int height, int grain, int seed) {
        Random random = new Random(seed);
        int across = width / grain + 1;
        boolean[] cells = new boolean[across * (height / grain + 1)];
        for (int i = 0; i < cells.length; i++) {
            cells[i] = random.nextInt(5) < 3;
        }
        BitPicture picture = new BitPicture(width, height);
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                picture.set(x, y, cells[y / grain * across + x / grain] ^ random.nextInt(40) == 0);
            }
        }
        return picture;
    }

    private static LimitsFound found(BitPicture picture, int openPx, int bridgePx) {
        LimitsCheck check = check(picture, openPx, bridgePx);
        check.add(picture.words(), picture.heightPx());
        return check.finish();
    }

    private static LimitsCheck check(BitPicture picture, int openPx, int bridgePx) {
        return new LimitsCheck(picture.widthPx(), picture.heightPx(), DPI, openPx * 25.4 / DPI, bridgePx * 25.4 / DPI);
    }

    private static BitPicture bar(int thick, boolean upright) {
        BitPicture picture = upright ? new BitPicture(30 + thick, 80) : new BitPicture(80, 30 + thick);
        if (upright) {
            fill(picture, 15, 0, 15 + thick, 80);
        } else {
            fill(picture, 0, 15, 80, 15 + thick);
        }
        return picture;
    }

    private static BitPicture inverse(BitPicture picture) {
        BitPicture inverse = new BitPicture(picture.widthPx(), picture.heightPx());
        for (int y = 0; y < picture.heightPx(); y++) {
            for (int x = 0; x < picture.widthPx(); x++) {
                inverse.set(x, y, !picture.get(x, y));
            }
        }
        return inverse;
    }

    private static void fill(BitPicture picture, int left, int top, int right, int bottom) {
        for (int y = top; y < bottom; y++) {
            for (int x = left; x < right; x++) {
                picture.set(x, y, true);
            }
        }
    }

    @Test
    void drawnBySight() {
        BitPicture dumbbell = Fields.drawn(
                "...........................",
                "..#####.............#####..",
                "..#####.............#####..",
                "..#######################..",
                "..#####.............#####..",
                "..#####.............#####..",
                "...........................");
        LimitsFound found = found(dumbbell, 3, 2);
        assertEquals(1, found.tooFine()); // the bar between
        assertEquals(0, found.bridgesLost());
    }
}
