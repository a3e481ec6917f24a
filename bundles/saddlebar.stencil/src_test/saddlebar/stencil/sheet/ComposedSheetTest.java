package saddlebar.stencil.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import saddlebar.model.problem.Refusal;
import saddlebar.model.units.Units;
import saddlebar.stencil.BitBands;
import saddlebar.stencil.BitPicture;
import saddlebar.stencil.process.Face;
import saddlebar.stencil.process.FilmPositiveProcess;
import saddlebar.stencil.process.FusedSheetProcess;
import saddlebar.stencil.process.StencilProcess;
import saddlebar.stencil.process.TonerSide;

class ComposedSheetTest {
    private static final StencilProcess FUSED = new FusedSheetProcess();
    private static final StencilProcess FILM = new FilmPositiveProcess();

    static Stream<StencilProcess> processes() {
        return Stream.of(FUSED, FILM);
    }

    @ParameterizedTest
    @MethodSource("processes")
    void looksAsItDid(StencilProcess process) throws IOException {
        Golden.assertSame(getClass(), process.key(), Sheets.composed(Sheets.small(process, 240)));
    }

    /** Each stencil's px by the slow formula: unturned px (x, y) lies at (x, y), (h-1-y, x), (w-1-x, h-1-y) or (y, w-1-x) of its place. */
    @ParameterizedTest
    @MethodSource("processes")
    void everyStencilLiesAtItsPlace(StencilProcess process) throws IOException {
        SheetPlan plan = Sheets.small(process, 151);
        BitPicture sheet = Sheets.composed(plan);
        for (PlacedStencil stencil : plan.stencils()) {
            BitPicture bits;
            try (BitBands open = stencil.bits().open()) {
                bits = BitPicture.of(open);
            }
            int left = Units.pxOfMm(stencil.xMm(), 151);
            int top = Units.pxOfMm(stencil.yMm(), 151);
            int w = bits.widthPx();
            int h = bits.heightPx();
            for (int y = 0; y < h; y++) {
                for (int x = 0; x < w; x++) {
                    int[] at = switch (stencil.quarterTurns()) {
                        case 1 -> new int[] {h - 1 - y, x};
                        case 2 -> new int[] {w - 1 - x, h - 1 - y};
                        case 3 -> new int[] {y, w - 1 - x};
                        default -> new int[] {x, y};
                    };
                    assertEquals(bits.get(x, y), sheet.get(left + at[0], top + at[1]), stencil.id() + " " + x + "," + y);
                }
            }
        }
    }

    /** What would print outside the stencils lies in the areas of the tape plan, and nowhere else; at the edge the ground goes to the last px. */
    @ParameterizedTest
    @MethodSource("processes")
    void nothingPrintsOutsideStencilsAndTape(StencilProcess process) throws IOException {
        double dpi = 200;
        SheetPlan plan = Sheets.small(process, dpi);
        BitPicture sheet = Sheets.composed(plan);
        BitPicture allowed = new BitPicture(sheet.widthPx(), sheet.heightPx());
        List<RectMm> boxes = new ArrayList<>();
        plan.stencils().forEach(stencil -> boxes.add(stencil.placeMm(dpi)));
        TapePlan.of(plan).areas().stream().filter(area -> area.kind() != TapeArea.Kind.EDGE).forEach(area -> boxes.add(area.areaMm()));
        for (RectMm box : boxes) {
            for (int y = Units.pxOfMm(box.yMm(), dpi); y < Units.pxOfMm(box.bottomMm(), dpi); y++) {
                for (int x = Units.pxOfMm(box.xMm(), dpi); x < Units.pxOfMm(box.rightMm(), dpi); x++) {
                    allowed.set(x, y, true);
                }
            }
        }
        int open = 0;
        for (int y = 0; y < sheet.heightPx(); y++) {
            for (int x = 0; x < sheet.widthPx(); x++) {
                boolean prints = sheet.get(x, y) != process.printsWhite();
                assertTrue(!prints || allowed.get(x, y), "prints at " + x + "," + y);
                open += prints ? 1 : 0;
            }
        }
        assertTrue(open > 10_000);
        assertEquals(process.printsWhite(), sheet.get(0, 0));
        assertEquals(process.printsWhite(), sheet.get(sheet.widthPx() - 1, sheet.heightPx() - 1));
    }

    @Test
    void doesNotDependOnTheBandsItIsReadIn() throws IOException {
        SheetPlan plan = Sheets.small(FUSED, 120);
        BitPicture whole = Sheets.composed(plan);
        for (int rowsAtOnce : new int[] {1, 7, 63, 64, 65, 1000}) {
            BitPicture read = new BitPicture(whole.widthPx(), whole.heightPx());
            try (BitBands sheet = ComposedSheet.of(plan)) {
                long[] band = new long[rowsAtOnce * sheet.wordsPerRow()];
                int row = 0;
                for (int rows = sheet.read(band, rowsAtOnce); rows > 0; rows = sheet.read(band, rowsAtOnce)) {
                    System.arraycopy(band, 0, read.words(), row * sheet.wordsPerRow(), rows * sheet.wordsPerRow());
                    row += rows;
                }
                assertEquals(whole.heightPx(), row);
            }
            assertEquals(whole, read, rowsAtOnce + " rows at once");
        }
    }

    /** Stencils are opened when the sheet reaches them and closed when it has passed them, so that memory does not grow with the sheet. */
    @Test
    void holdsOnlyStencilsThatArePassing() throws IOException {
        AtomicInteger open = new AtomicInteger();
        AtomicInteger most = new AtomicInteger();
        List<PlacedStencil> stencils = new ArrayList<>();
        double dpi = 100;
        for (PlacedStencil stencil : Sheets.full(FUSED, Paper.TABLOID, dpi, 120, 20).stencils()) {
            stencils.add(new PlacedStencil(stencil.id(), stencil.label(), stencil.xMm(), stencil.yMm(), 0, stencil.widthPx(), stencil.heightPx(),
                    Face.INTERIOR, false, () -> new Counted(stencil.bits().open(), open, most)));
        }
        assertEquals(2 * 16, stencils.size());
        try (BitBands sheet = ComposedSheet.of(Sheets.plan(FUSED, Paper.TABLOID, dpi, stencils))) {
            long[] row = new long[sheet.wordsPerRow()];
            while (sheet.read(row, 1) > 0) {
                continue;
            }
            assertEquals(0, open.get());
        }
        assertEquals(2, most.get());
        try (BitBands sheet = ComposedSheet.of(Sheets.plan(FUSED, Paper.TABLOID, dpi, stencils))) {
            long[] rows = new long[64 * sheet.wordsPerRow()];
            sheet.read(rows, 64);
            sheet.read(rows, 64);
            assertEquals(2, open.get());
        }
        assertEquals(0, open.get(), "left early");
    }

    /** The rule's end ticks are 100 mm apart from middle to middle, at each resolution to one px. */
    @Test
    void ruleIs100Mm() throws IOException {
        for (double dpi : new double[] {300, 600, 1200}) {
            SheetPlan plan = Sheets.plan(FILM, new Paper("strip", 140, 60), dpi, List.of());
            BitPicture sheet = Sheets.composed(plan);
            Mark rule = SheetMarks.of(plan).stream().filter(mark -> mark.kind() == Mark.Kind.RULE).findFirst().orElseThrow();
            int y = Units.pxOfMm(rule.boxMm().yMm() + 4.2 - 3.2, dpi); // here only the long ticks at 0, 50 and 100 mm are cut
            List<Double> middles = new ArrayList<>();
            int from = -1;
            for (int x = Units.pxOfMm(rule.boxMm().xMm(), dpi); x < Units.pxOfMm(rule.boxMm().rightMm(), dpi); x++) {
                if (sheet.get(x, y) && from < 0) {
                    from = x;
                } else if (!sheet.get(x, y) && from >= 0) {
                    middles.add((from + x) / 2.0);
                    from = -1;
                }
            }
            assertEquals(3, middles.size());
            assertEquals(100, Units.mmOfPx(middles.get(2) - middles.get(0), dpi), Units.mmOfPx(1, dpi));
            assertEquals(50, Units.mmOfPx(middles.get(1) - middles.get(0), dpi), Units.mmOfPx(1, dpi));
        }
    }

    /**
     * The words lie in the toner view as a reader reads them, whether the stencils are mirrored or not: the bits of head and foot are the letters'
     * outlines, unmirrored.
     */
    @Test
    void wordsReadRightHoweverStencilsLie() throws IOException {
        double dpi = 200;
        SheetPlan drawn = Sheets.plan(FILM, Paper.A4, dpi, List.of(Sheets.stencil(FILM, "7", 20, 40, 0, 60, 40, dpi, false)));
        SheetPlan mirrored = Sheets.plan(FILM, Paper.A4, dpi, List.of(Sheets.stencil(FILM, "7", 20, 40, 0, 60, 40, dpi, true)));
        BitPicture a = Sheets.composed(drawn);
        BitPicture b = Sheets.composed(mirrored);
        RectMm foot = drawn.frame().footMm();
        int left = Units.pxOfMm(foot.rightMm() - 7 - 66, dpi);
        int top = Units.pxOfMm(foot.yMm(), dpi);
        BitPicture letters;
        try (SheetFont font = new SheetFont()) {
            letters = OutlineFill.bits(font.outline("TONER VIEW", foot.rightMm() - 7 - 66, foot.yMm() + 3.6 * SheetFont.CAPITAL_EM + 0.1, 3.6), dpi, left, top,
                    Units.pxOfMm(30, dpi), Units.pxOfMm(2.7, dpi));
        }
        assertTrue(letters.count() > 500);
        for (int y = 0; y < letters.heightPx(); y++) {
            for (int x = 0; x < letters.widthPx(); x++) {
                assertEquals(letters.get(x, y), a.get(left + x, top + y));
                assertEquals(letters.get(x, y), b.get(left + x, top + y));
            }
        }
        assertFalse(a.equals(b));
    }

    /**
     * The way of a sheet to the glass by plain flips: the side of the mesh that the toner touches shows it mirrored, the other as it is; the painted
     * face shows what the squeegee side shows; the exterior is seen mirrored from the interior. In all eight cases the stencil's paint, as drawn, is
     * what is seen from the interior at the stencil's place.
     */
    @ParameterizedTest
    @MethodSource("processes")
    void everyStencilEndsRightReading(StencilProcess process) throws IOException {
        double dpi = 100;
        for (TonerSide touches : TonerSide.values()) {
            for (Face face : Face.values()) {
                boolean mirrored = process.mirrored(touches, face);
                BitPicture paint = Sheets.paint(230, 170);
                PlacedStencil stencil = new PlacedStencil("W1-7", "7", 20, 40, 0, 230, 170, face, mirrored,
                        () -> process.toner(paint.bands(), mirrored));
                SheetPlan plan = new SheetPlan(Paper.A4, dpi, 4.3, process, touches, Sheets.LABEL, List.of(stencil));
                BitPicture tonerView = Sheets.composed(plan);
                boolean flips = touches == TonerSide.SQUEEGEE; // on the side that it touches, and that the printer looks at
                BitPicture seen = flips ? flipped(tonerView) : tonerView;
                if (face == Face.EXTERIOR) {
                    seen = flipped(seen);
                }
                boolean nowFlipped = flips != (face == Face.EXTERIOR);
                int left = Units.pxOfMm(20, dpi);
                int seenLeft = nowFlipped ? seen.widthPx() - left - 230 : left;
                for (int y = 0; y < 170; y++) {
                    for (int x = 0; x < 230; x++) {
                        boolean toner = seen.get(seenLeft + x, Units.pxOfMm(40, dpi) + y);
                        boolean prints = process.key().equals("fused-sheet") ? !toner : toner;
                        assertEquals(paint.get(x, y), prints, touches + " " + face + " at " + x + "," + y);
                    }
                }
            }
        }
    }

    private static BitPicture flipped(BitPicture picture) {
        BitPicture flipped = new BitPicture(picture.widthPx(), picture.heightPx());
        for (int y = 0; y < picture.heightPx(); y++) {
            for (int x = 0; x < picture.widthPx(); x++) {
                flipped.set(picture.widthPx() - 1 - x, y, picture.get(x, y));
            }
        }
        return flipped;
    }

    /** A stencil that somebody mirrored against the rule takes the promise from the mark. */
    @Test
    void saysWhenMirroredByHand() throws IOException {
        double dpi = 100;
        PlacedStencil byRule = Sheets.stencil(FILM, "7", 20, 40, 0, 60, 40, dpi, false);
        PlacedStencil byHand = new PlacedStencil(byRule.id(), byRule.label(), 20, 40, 0, byRule.widthPx(), byRule.heightPx(), Face.EXTERIOR, false,
                byRule.bits());
        assertTrue(Sheets.plan(FILM, Paper.A4, dpi, List.of(byRule)).mirroredByRule());
        SheetPlan plan = Sheets.plan(FILM, Paper.A4, dpi, List.of(byHand));
        assertFalse(plan.mirroredByRule());
        assertFalse(Sheets.composed(plan).equals(Sheets.composed(Sheets.plan(FILM, Paper.A4, dpi, List.of(byRule)))));
        SheetPlan squeegee = new SheetPlan(Paper.A4, dpi, 4.3, FILM, TonerSide.SQUEEGEE, Sheets.LABEL, List.of(byHand));
        assertTrue(squeegee.mirroredByRule(), "squeegee side and exterior are as drawn");
    }

    @Test
    void refusesWhatDoesNotFit() {
        double dpi = 100;
        assertRefused("stencil W1-7: it is 300 x 420.1 mm, larger than any sheet takes (tabloid has room for 270.8 x ",
                Sheets.stencil(FUSED, "7", 5, 20, 0, 300, 420, dpi, false));
        assertRefused("sheet 2, stencil W1-7: at 200, 20 mm it leaves the room for stencils", Sheets.stencil(FUSED, "7", 200, 20, 0, 100, 50, dpi, false));
        assertRefused("sheet 2, stencil W1-8: it lies over stencil W1-7", Sheets.stencil(FUSED, "7", 5, 20, 0, 50, 50, dpi, false),
                Sheets.stencil(FUSED, "8", 50, 65, 0, 50, 50, dpi, false));
    }

    private static void assertRefused(String begins, PlacedStencil... stencils) {
        SheetPlan plan = Sheets.plan(FUSED, Paper.TABLOID, 100, List.of(stencils));
        Refusal e = assertThrows(Refusal.class, () -> Sheets.composed(plan));
        assertTrue(e.getMessage().startsWith(begins), e.getMessage());
    }

    /** Stencils that touch on all sides leave no place for a number and are refused; 5 mm apart each has one, however small the stencil. */
    @Test
    void numbersNeedTheirRoom() throws IOException {
        double dpi = 100;
        SheetPlan plan = Sheets.plan(FUSED, Paper.A4, dpi, block(8, dpi));
        Refusal e = assertThrows(Refusal.class, () -> Sheets.composed(plan));
        assertTrue(e.getMessage().contains("no room beside it for its number"), e.getMessage());
        SheetPlan apart = Sheets.plan(FUSED, Paper.A4, dpi, block(13, dpi));
        TapePlan tape = TapePlan.of(apart);
        List<RectMm> captions = tape.areas().stream().filter(area -> area.kind() == TapeArea.Kind.CAPTION).map(TapeArea::areaMm).toList();
        assertEquals(49, captions.size());
        for (RectMm caption : captions) {
            assertTrue(captions.stream().filter(caption.grown(-1e-3)::overlaps).count() == 1, "overlaps another: " + caption);
            assertTrue(apart.stencils().stream().noneMatch(stencil -> stencil.placeMm(dpi).overlaps(caption.grown(-1e-3))), "overlaps a stencil: " + caption);
        }
    }

    /** Seven times seven stencils of 8 mm. */
    private static List<PlacedStencil> block(double pitchMm, double dpi) {
        List<PlacedStencil> stencils = new ArrayList<>();
        for (int i = 0; i < 49; i++) {
            stencils.add(Sheets.stencil(FUSED, String.valueOf(i + 1), 50 + i % 7 * pitchMm, 50 + i / 7 * pitchMm, 0, 8, 8, dpi, false));
        }
        return stencils;
    }

    @Test
    void tellsAStencilOfAnotherSize() {
        PlacedStencil wrong = new PlacedStencil("W1-7", "7", 20, 40, 0, 100, 50, Face.INTERIOR, false, () -> new BitPicture(100, 40).bands());
        IOException e = assertThrows(IOException.class, () -> Sheets.composed(Sheets.plan(FUSED, Paper.A4, 100, List.of(wrong))));
        assertEquals("stencil W1-7 was to be 100 x 50 px but is 100 x 40", e.getMessage());
    }

    private static final class Counted implements BitBands {
        private final BitBands bits;
        private final AtomicInteger open;

        Counted(BitBands bits, AtomicInteger open, AtomicInteger most) {
            this.bits = bits;
            this.open = open;
            most.accumulateAndGet(open.incrementAndGet(), Math::max);
        }

        @Override
        public int widthPx() {
            return bits.widthPx();
        }

        @Override
        public int heightPx() {
            return bits.heightPx();
        }

        @Override
        public int read(long[] target, int maxRows) throws IOException {
            return bits.read(target, maxRows);
        }

        @Override
        public void close() {
            open.decrementAndGet();
            bits.close();
        }
    }
}
