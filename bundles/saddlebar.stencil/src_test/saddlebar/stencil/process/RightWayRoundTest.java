package saddlebar.stencil.process;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import saddlebar.stencil.BitBands;
import saddlebar.stencil.BitPicture;
import saddlebar.stencil.Fields;

/**
 * All eight ways from a letter F in the artwork to an F on the glass, by hand: the sheet is laid against the mesh, the stencil made, the screen
 * turned over and printed, the glass looked at from the interior, each step a turn of a matrix of booleans, with nothing of the product but the
 * sheet it writes.
 */
class RightWayRoundTest {
    private static final String[] F = {"..........", ".#######..", ".#........", ".#........", ".#####....", ".#........", ".#........",
            ".........."};

    @ParameterizedTest
    @CsvSource({"fused-sheet, PRINT, INTERIOR, false", "fused-sheet, SQUEEGEE, INTERIOR, true", "fused-sheet, PRINT, EXTERIOR, true",
            "fused-sheet, SQUEEGEE, EXTERIOR, false", "film-positive, PRINT, INTERIOR, false", "film-positive, SQUEEGEE, INTERIOR, true",
            "film-positive, PRINT, EXTERIOR, true", "film-positive, SQUEEGEE, EXTERIOR, false"})
    void readsRightFromTheInterior(String key, TonerSide side, Face face, boolean mirrored) throws IOException {
        StencilProcess process = StencilProcesses.ownProcesses().process(key);
        assertEquals(mirrored, process.mirrored(side, face));
        BitPicture file;
        try (BitBands artwork = Fields.drawn(F).bands(); BitBands toner = process.toner(artwork, process.mirrored(side, face))) {
            file = BitPicture.of(toner);
        }
        boolean[][] tonerView = matrix(file); // the sheet on the table, toner up

        boolean[][] open = tonerView; // seen from the toner's side, where the mesh stays open
        if (key.equals("fused-sheet")) {
            open = not(tonerView); // toner that fuses closes
        } // under a film positive the emulsion hardens where light comes; where toner shades it, it washes out and is open

        // the sheet is turned over to lay its toner against a side of the mesh: whoever looks at that side sees the toner view from behind
        boolean[][] openOnTouchedSide = turnedOver(open);
        boolean[][] openOnSqueegeeSide = side == TonerSide.SQUEEGEE ? openOnTouchedSide : turnedOver(openOnTouchedSide);

        // the printer looks at the squeegee side, the painted face of the glass lies below and looks up: paint falls where it is open
        boolean[][] paintedFace = openOnSqueegeeSide;
        boolean[][] fromInterior = face == Face.INTERIOR ? paintedFace : turnedOver(paintedFace); // the exterior is seen through the glass

        assertArrayEquals(matrix(Fields.drawn(F)), fromInterior);
    }

    private static boolean[][] matrix(BitPicture picture) {
        boolean[][] bits = new boolean[picture.heightPx()][picture.widthPx()];
        for (int y = 0; y < bits.length; y++) {
            for (int x = 0; x < bits[y].length; x++) {
                bits[y][x] = picture.get(x, y);
            }
        }
        return bits;
    }

    private static boolean[][] not(boolean[][] bits) {
        boolean[][] result = new boolean[bits.length][bits[0].length];
        for (int y = 0; y < bits.length; y++) {
            for (int x = 0; x < bits[y].length; x++) {
                result[y][x] = !bits[y][x];
            }
        }
        return result;
    }

    /** Seen from behind, turned about the upright axis. */
    private static boolean[][] turnedOver(boolean[][] bits) {
        boolean[][] result = new boolean[bits.length][bits[0].length];
        for (int y = 0; y < bits.length; y++) {
            for (int x = 0; x < bits[y].length; x++) {
                result[y][bits[y].length - 1 - x] = bits[y][x];
            }
        }
        return result;
    }
}
