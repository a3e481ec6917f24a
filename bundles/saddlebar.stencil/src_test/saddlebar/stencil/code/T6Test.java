package saddlebar.stencil.code;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.HexFormat;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

import saddlebar.stencil.BitPicture;

/** ITU-T T.6. The vectors were produced by the program tiffcp of libtiff 4.5.0; A, B, C, I and J were also decoded by hand with the standard's tables. */
class T6Test {
    static Stream<Arguments> vectors() {
        return Stream.of(
                Arguments.of("A", Fields.of("0".repeat(16)), "80080080"),
                Arguments.of("B", Fields.of("0".repeat(16), "0".repeat(16)), "c0040040"),
                Arguments.of("C", Fields.of("11111111"), "26a280080080"),
                Arguments.of("D", Fields.of("10101010", "01010101"), "26a88e88e825692494004004"),
                Arguments.of("E", Fields.of("00000000", "00111100", "00100100", "00111100", "00000000"), "9778205c7180080080"),
                Arguments.of("F", Fields.of("0000011100000000"), "3940040040"),
                Arguments.of("G, pass mode", Fields.of("0011001100000000", "0000001100000000"), "2f97e3c0040040"),
                Arguments.of("H", Fields.of("0000111100000000", "0000011111000000", "0000001111110000", "0000000111100000", "0000111111000000"),
                        "36ec3b0ed41280080080"),
                Arguments.of("I, VR3 and VL2", Fields.of("0000111100000000", "0000000111100000", "0000011110000000"), "36e0c1c20a002002"),
                Arguments.of("J, repeated make-up code", Fields.row(0, 2624), "26a03e0786e0020020"),
                Arguments.of("K", Fields.row(100, 200, 2000), "3b150c9160020020"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("vectors")
    void codesAsThePublicLibrary(String name, BitPicture picture, String hex) {
        assertEquals(hex, HexFormat.of().formatHex(T6Encoder.strip(picture)));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("vectors")
    void readsThePublicLibrary(String name, BitPicture picture, String hex) throws IOException {
        assertEquals(picture, decode(HexFormat.of().parseHex(hex), picture.widthPx(), picture.heightPx()));
    }

    static IntStream widths() {
        return IntStream.rangeClosed(1, 70);
    }

    @ParameterizedTest
    @MethodSource("widths")
    void everyNarrowWidthComesBack(int widthPx) throws IOException {
        for (int seed = 0; seed < 6; seed++) {
            comesBack(Fields.noise(widthPx, 40, 0.5, seed));
            comesBack(Fields.noise(widthPx, 40, 0.05, seed));
            comesBack(Fields.drawn(widthPx, 60, seed));
        }
    }

    /** Each run of 0 to 5300 px in either colour, alone in the midst of a row and as the rest of one. */
    @Test
    void everyRunComesBack() throws IOException {
        int widthPx = 5310;
        BitPicture picture = new BitPicture(widthPx, 2 * 5301);
        for (int run = 0; run <= 5300; run++) {
            for (int x = 0; x < run; x++) {
                picture.set(5 + x, 2 * run, true);
            }
            for (int x = run; x < widthPx; x++) {
                picture.set(x, 2 * run + 1, true);
            }
        }
        comesBack(picture);
        for (int run : new int[] {1, 63, 64, 2559, 2560, 2623, 2624, 5119, 5120, 5183, 5184, 5300}) {
            comesBack(Fields.row(run));
            comesBack(Fields.row(0, run));
            comesBack(Fields.row(run, run, 3));
        }
    }

    @Property(tries = 60)
    void wideFieldsComeBack(@ForAll @IntRange(min = 1990, max = 2060) int widthPx, @ForAll long seed) throws IOException {
        comesBack(Fields.drawn(widthPx, 40, seed));
        comesBack(Fields.noise(widthPx, 8, new Random(seed).nextDouble(), seed));
    }

    /** The bits of a picture coded in parts, each told the row above it, are those of the whole. */
    @Property(tries = 40)
    void partsJoinToTheWhole(@ForAll @IntRange(min = 1, max = 300) int widthPx, @ForAll @IntRange(min = 1, max = 13) int partRows, @ForAll long seed) {
        BitPicture picture = Fields.drawn(widthPx, 40, seed);
        CodeBits joined = new CodeBits(1);
        T6Encoder encoder = new T6Encoder(widthPx);
        for (int row = 0; row < 40; row += partRows) {
            CodeBits part = new CodeBits(1);
            if (row > 0) {
                encoder.continueBelow(picture.words(), (row - 1) * picture.wordsPerRow());
            }
            encoder.rows(picture.words(), row * picture.wordsPerRow(), Math.min(partRows, 40 - row), part);
            joined.append(part);
        }
        T6Encoder.end(joined);
        assertEquals(HexFormat.of().formatHex(T6Encoder.strip(picture)), HexFormat.of().formatHex(joined.bytes, 0, joined.length));
    }

    /** Whatever the bytes, the decoder ends with rows or with a word about the row, and writes nowhere else. */
    @Property(tries = 400)
    void damageIsToldWithItsRow(@ForAll @IntRange(min = 1, max = 400) int widthPx, @ForAll long seed) throws IOException {
        Random random = new Random(seed);
        byte[] coded = T6Encoder.strip(Fields.drawn(widthPx, 30, seed));
        for (int flips = random.nextInt(4); flips >= 0; flips--) {
            coded[random.nextInt(coded.length)] ^= (byte) (1 << random.nextInt(8));
        }
        long[] row = new long[((widthPx + 63) >> 6) + 2];
        row[0] = row[row.length - 1] = 0x5555;
        T6Decoder decoder = new T6Decoder(new ByteArrayInputStream(coded), widthPx);
        int rows = 0;
        try {
            while (decoder.next(row, 1)) {
                rows++;
                assertTrue(rows <= 8 * coded.length, "more rows than bits");
            }
        } catch (DamagedCodeException e) {
            assertEquals(rows, e.row());
            assertTrue(e.getMessage().startsWith("row " + rows + ": "), e.getMessage());
        }
        assertEquals(0x5555, row[0]);
        assertEquals(0x5555, row[row.length - 1]);
        assertEquals(0, (widthPx & 63) == 0 ? 0 : row[row.length - 2] & -1L >>> (widthPx & 63), "bits past the width");
    }

    @Test
    void tellsAnEarlyEnd() {
        byte[] coded = HexFormat.of().parseHex("26a88e88");
        DamagedCodeException e = assertThrows(DamagedCodeException.class, () -> decode(coded, 8, 2));
        assertEquals(0, e.row());
        assertEquals("row 0: the code ends within the row", e.getMessage());
    }

    @Test
    void tellsTooFewRows() {
        DamagedCodeException e = assertThrows(DamagedCodeException.class, () -> decode(HexFormat.of().parseHex("c0040040"), 16, 3));
        assertEquals("row 2: the code ends here, 3 rows were announced", e.getMessage());
    }

    /** ITU-T T.6, 2.3: 0000001111 begins uncompressed mode. */
    @Test
    void tellsUncompressedMode() {
        DamagedCodeException e = assertThrows(DamagedCodeException.class, () -> decode(HexFormat.of().parseHex("03c0000000"), 16, 1));
        assertTrue(e.getMessage().contains("uncompressed mode"), e.getMessage());
    }

    @Test
    void tellsARunBeyondTheRow() {
        DamagedCodeException e = assertThrows(DamagedCodeException.class, () -> decode(HexFormat.of().parseHex("3b150c9160020020"), 250, 1));
        assertEquals("row 0: runs end at px 300, beyond the width of 250", e.getMessage());
    }

    private static void comesBack(BitPicture picture) throws IOException {
        assertEquals(picture, decode(T6Encoder.strip(picture), picture.widthPx(), picture.heightPx()));
    }

    private static BitPicture decode(byte[] coded, int widthPx, int heightPx) throws IOException {
        return T6Decoder.strip(new ByteArrayInputStream(coded), widthPx, heightPx);
    }
}
