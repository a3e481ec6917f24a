package saddlebar.ui.dots;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import saddlebar.model.problem.Refusal;
import saddlebar.model.work.Work;

class DotsTest {
    private static final int WIDTH = 200;
    private static final int HEIGHT = 100;

    @TempDir
    private Path temp;

    /** A plain TIFF 6.0 file, 254 an inch: 10 device pixels a mm; black where x is at least 100 and even, and the one at 3, 7. */
    private StencilBits stencil() throws IOException {
        int perRow = (WIDTH + 7) / 8;
        int[][] tags = {{256, 3, WIDTH}, {257, 3, HEIGHT}, {258, 3, 1}, {259, 3, 1}, {262, 3, 0}, {273, 4, 8}, {277, 3, 1}, {278, 3, HEIGHT},
                {279, 4, perRow * HEIGHT}, {282, 5, 8 + perRow * HEIGHT}, {283, 5, 8 + perRow * HEIGHT}, {296, 3, 2}};
        ByteBuffer file = ByteBuffer.allocate(8 + perRow * HEIGHT + 8 + 2 + 12 * tags.length + 4).order(ByteOrder.LITTLE_ENDIAN);
        file.put((byte) 'I').put((byte) 'I').putShort((short) 42).putInt(8 + perRow * HEIGHT + 8);
        for (int y = 0; y < HEIGHT; y++) {
            byte[] row = new byte[perRow];
            for (int x = 0; x < WIDTH; x++) {
                if (x >= 100 && x % 2 == 0 || x == 3 && y == 7) {
                    row[x / 8] |= (byte) (0x80 >> x % 8);
                }
            }
            file.put(row);
        }
        file.putInt(254).putInt(1).putShort((short) tags.length);
        for (int[] tag : tags) {
            file.putShort((short) tag[0]).putShort((short) tag[1]).putInt(1).putInt(tag[2]);
        }
        file.putInt(0);
        return StencilBits.read(Files.write(temp.resolve("s.tif"), file.array()), Work.UNWATCHED);
    }

    @Test
    void theBitsAreThoseOfTheFile() throws IOException {
        StencilBits bits = stencil();
        assertEquals(10, bits.pxPerMm(), 1e-9);
        assertTrue(bits.black(3, 7));
        assertFalse(bits.black(4, 7));
        assertTrue(bits.black(198, 99));
        assertFalse(bits.black(199, 99));
        assertFalse(bits.black(-1, 0) || bits.black(200, 0));
        assertEquals(0.5, bits.share(100, 0, 100, 100), 1e-12);
        assertEquals(1 / 100.0, bits.share(0, 0, 10, 10), 1e-12);
        assertEquals(0.5, bits.share(190, 90, 500, 500), 1e-12, "what lies outside does not count");
        assertEquals(0, bits.share(500, 500, 10, 10));
    }

    @Test
    void oneLooksFirstWhereItIsHalfCovered() throws IOException {
        int[] place = stencil().halfCovered();
        assertEquals(WIDTH / 2, place[0], "100 px high it has no other place: the middle");
        assertEquals(HEIGHT / 2, place[1]);
    }

    @Test
    void eachDevicePixelIsASquareUnderTheMagnifier() throws IOException {
        BufferedImage seen = new DotsPainter(stencil(), Optional.empty()).paint(2, 6, 8, 32, 32);
        for (int y = 0; y < 32; y++) {
            for (int x = 0; x < 32; x++) {
                boolean dot = x >= 8 && x < 16 && y >= 8 && y < 16;
                assertEquals(dot ? DotsPainter.TONER_RGB : DotsPainter.PAPER_RGB, seen.getRGB(x, y) & 0xFFFFFF, x + ", " + y);
            }
        }
    }

    @Test
    void fromAfarDotsRunTogetherToTheirShareOfGray() throws IOException {
        int rgb = new DotsPainter(stencil(), Optional.empty()).paint(120, 20, 0.25, 4, 4).getRGB(2, 2);
        assertEquals((0xFF + 0x17) / 2.0, rgb >> 16 & 0xff, 1);
    }

    @Test
    void besidesTheStencilThereIsNothing() throws IOException {
        BufferedImage seen = new DotsPainter(stencil(), Optional.empty()).paint(-1, -1, 1, 3, 3);
        assertEquals(DotsPainter.OUTSIDE_RGB, seen.getRGB(0, 1) & 0xFFFFFF);
        assertEquals(DotsPainter.PAPER_RGB, seen.getRGB(1, 1) & 0xFFFFFF);
    }

    /** 100 threads of 100 um in 25.4 mm: pitch 254 um, open (1 - 100/254)^2 = 36.8 %; counted on a fine grid it is the same, turned or not. */
    @Test
    void theMeshIsOpenAsFarAsMeshMakersSay() {
        for (double turn : new double[] {0, 22.5}) {
            MeshLines mesh = new MeshLines(100, 100, turn);
            assertEquals(0.254, mesh.pitchMm(), 1e-12);
            assertEquals(0.3676, mesh.openShare(), 1e-4);
            int open = 0;
            for (int y = 0; y < 1000; y++) {
                for (int x = 0; x < 1000; x++) {
                    open += mesh.threadAt(x * 0.01237, y * 0.01237) ? 0 : 1;
                }
            }
            assertEquals(mesh.openShare(), open / 1e6, 0.01);
        }
    }

    @Test
    void whatIsNoStencilIsRefused() throws IOException {
        Path torn = Files.writeString(temp.resolve("torn.tif"), "no picture");
        assertThrows(Refusal.class, () -> StencilBits.read(torn, Work.UNWATCHED));
    }
}
