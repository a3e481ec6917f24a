package saddlebar.ui.screening;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import saddlebar.artwork.ArtworkReaders;
import saddlebar.model.commission.CommissionFactory;
import saddlebar.model.commission.Piece;
import saddlebar.model.commission.Stencil;
import saddlebar.model.commission.StencilPiece;
import saddlebar.model.art.OutlineMm;
import saddlebar.model.work.Work;
import saddlebar.stencil.ScreeningRecipe;
import saddlebar.stencil.tone.EndLimits;
import saddlebar.ui.dots.StencilBits;
import saddlebar.production.light.ArtworkShelf;
import saddlebar.production.light.WindowSketch.ArtPlace;

class PreviewRoomTest {
    /** White above, code value 128 below, in a page of 60 x 60 mm. */
    private static final String ART = """
            <svg xmlns="http://www.w3.org/2000/svg" width="60mm" height="60mm" viewBox="0 0 60 60">
              <g id="matt" data-name="Matt"><rect y="30" width="60" height="30" fill="#808080"/></g>
            </svg>
            """;

    @TempDir
    private Path temp;

    private PreviewAsk ask(String method, String process, boolean mirrored, Optional<PreviewAsk.PlaceMm> place) throws IOException {
        Path art = temp.resolve("art.svg");
        if (!Files.exists(art)) {
            Files.writeString(art, ART);
        }
        return new PreviewAsk(new ArtPlace(art, 60), "Matt", ScreeningRecipe.withDefaults().withMethod(method), Optional.empty(),
                new ToneWay(true, 0, OptionalDouble.empty(), Optional.empty(), Optional.empty(), EndLimits.NONE), process, mirrored, Optional.empty(),
                List.of(),
                new PreviewAsk.LimitsMm(0, 0), place);
    }

    private static double share(StencilBits bits, boolean upper) {
        int half = bits.heightPx() / 2;
        return bits.share(0, upper ? 0 : half, bits.widthPx(), half);
    }

    @Test
    void aToneIsCoveredByItsShareWhateverTheMethod() throws IOException {
        try (ArtworkShelf shelf = new ArtworkShelf(ArtworkReaders.ownReaders())) {
            for (String method : new String[] {"am", "diffusion", "bluenoise", "hybrid", "lines"}) {
                StencilBits bits = new PreviewRoom().preview(ask(method, "film-positive", false, Optional.of(new PreviewAsk.PlaceMm(30, 30))), shelf,
                        Work.UNWATCHED).bits();
                assertEquals(0, share(bits, true), 0.01, method);
                assertEquals(127 / 255.0, share(bits, false), 0.02, method);
            }
        }
    }

    @Test
    void theProcessTurnsItRound() throws IOException {
        try (ArtworkShelf shelf = new ArtworkShelf(ArtworkReaders.ownReaders())) {
            PreviewRoom room = new PreviewRoom();
            StencilBits film = room.preview(ask("am", "film-positive", false, Optional.of(new PreviewAsk.PlaceMm(30, 30))), shelf, Work.UNWATCHED).bits();
            StencilBits sheet = room.preview(ask("am", "fused-sheet", true, Optional.of(new PreviewAsk.PlaceMm(30, 30))), shelf, Work.UNWATCHED).bits();
            for (int i = 0; i < 500; i++) {
                int x = i * 7 % film.widthPx();
                int y = 512 + i;
                assertEquals(film.black(x, y), !sheet.black(film.widthPx() - 1 - x, y), x + ", " + y);
            }
        }
    }

    @Test
    void withoutAPlaceThereIsSomethingToSee() throws IOException {
        try (ArtworkShelf shelf = new ArtworkShelf(ArtworkReaders.ownReaders())) {
            PreviewRoom.Preview preview = new PreviewRoom().preview(ask("am", "film-positive", false, Optional.empty()), shelf, Work.UNWATCHED);
            assertTrue(preview.place().yMm() > 30, "the white half was looked at: " + preview.place());
        }
    }

    @Test
    void aPlaceOfATurnedPieceIsFoundOnThePage() {
        Stencil stencil = CommissionFactory.eINSTANCE.createStencil();
        StencilPiece entry = CommissionFactory.eINSTANCE.createStencilPiece();
        Piece piece = CommissionFactory.eINSTANCE.createPiece();
        piece.setNet(OutlineMm.rectangle(100, 50, 20, 10));
        entry.setPiece(piece);
        entry.setRotationDeg(90);
        entry.setXMm(60 + 3);
        entry.setYMm(-100 + 4);
        stencil.getPieces().add(entry);
        // the page's (110, 55) turned by 90 degrees, x towards y, is (-55, 110); moved: (8, 14)
        PreviewAsk.PlaceMm place = StencilPlace.onPage(stencil, 8, 14).orElseThrow();
        assertEquals(110, place.xMm(), 1e-9);
        assertEquals(55, place.yMm(), 1e-9);
        assertEquals(Optional.empty(), StencilPlace.onPage(stencil, 30, 14));
    }
}
