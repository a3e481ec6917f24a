package saddlebar.production.light;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.CancellationException;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import saddlebar.artwork.ArtworkReaders;
import saddlebar.model.art.OutlineMm;
import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Severity;
import saddlebar.model.work.Work;
import saddlebar.production.facts.CutFacts;
import saddlebar.production.light.WindowSketch.ArtPlace;
import saddlebar.production.light.WindowSketch.LayerSketch;
import saddlebar.production.light.WindowSketch.PanelSketch;
import saddlebar.production.light.WindowSketch.PieceSketch;

class SceneReaderTest {
    /** 200 x 100 mm in two panes; trace a black bar over the left one, matt pale gray over the whole. */
    private static final String ART = """
            <svg xmlns="http://www.w3.org/2000/svg" width="200mm" height="100mm" viewBox="0 0 200 100">
              <g id="glass"><rect width="100" height="100" fill="#2e6fb0"/><rect x="100" width="100" height="100" fill="#e9c46a"/></g>
              <g id="matt"><rect width="200" height="50" fill="#e0e0e0"/></g>
              <g id="trace"><rect x="20" y="40" width="60" height="10" fill="#000"/></g>
              <g id="cutline" fill="none" stroke="#000"><rect width="200" height="100"/><path d="M100 0V100"/></g>
            </svg>
            """;

    @TempDir
    private Path temp;
    private Path art;
    private final ArtworkShelf shelf = new ArtworkShelf(ArtworkReaders.ownReaders());

    @BeforeEach
    void draw() throws IOException {
        art = Files.writeString(temp.resolve("two-panes.svg"), ART);
    }

    @AfterEach
    void close() {
        shelf.close();
    }

    private static LayerSketch layer(String name) {
        return new LayerSketch("id-" + name, name, name, new PaintLook(0.1, 0.1, 0.1), false, 0, OptionalDouble.empty());
    }

    private WindowSketch window(PanelSketch... panels) {
        return new WindowSketch("w", "W01", List.of(panels), List.of(""));
    }

    private PanelSketch panel(double xMm, Path file, List<PieceSketch> pieces, LayerSketch... layers) {
        return new PanelSketch(xMm, 0, Optional.empty(), Optional.of(new ArtPlace(file, 200)), "cutline", false, 0.8, 1.3, pieces, List.of(layers));
    }

    private static int coveredAt(SceneLayer layer, double xMm, double yMm) {
        Coverage coverage = layer.coverage();
        RectMm area = coverage.area();
        return coverage.at((int) ((xMm - area.leftMm()) / area.widthMm() * coverage.widthPx()),
                (int) ((yMm - area.topMm()) / area.heightMm() * coverage.heightPx()));
    }

    @Test
    void beforeAnythingIsMadeItIsShownAsDrawn() throws IOException {
        EaselScene scene = new SceneReader(shelf).read(window(panel(0, art, List.of())), Work.UNWATCHED);
        assertEquals(2, scene.pieces().size());
        ScenePiece left = scene.pieceAt(50, 50).orElseThrow();
        assertEquals(0x2e6fb0, left.glass(0).rgb());
        assertEquals(0xe9c46a, scene.pieceAt(150, 50).orElseThrow().glass(0).rgb());
        assertEquals(99.6, left.contour().bounds().rightMm(), 0.01, "half the gap of 0.8 mm comes off");
        assertEquals(new RectMm(0, 0, 200, 100), scene.bounds());
        assertEquals(List.of("hinge"), scene.problems().stream().map(problem -> problem.code()).toList(), "the straight joint alone is worth a look");
    }

    @Test
    void whatHasBeenMadeIsShownAsMade() throws IOException {
        PieceSketch made = new PieceSketch("lasting", 7, OutlineMm.rectangle(0, 0, 100, 100), OutlineMm.rectangle(0.4, 0.4, 99, 99), 50, 50, 49,
                List.of(new GlassLook("sky", 0x86c5d8)));
        PieceSketch other = new PieceSketch("other", 8, OutlineMm.rectangle(100, 0, 100, 100), OutlineMm.rectangle(100.4, 0.4, 99, 99), 150, 50, 49,
                List.of(new GlassLook("sand", 0xe9c46a)));
        EaselScene scene = new SceneReader(shelf).read(window(panel(300, art, List.of(made, other))), Work.UNWATCHED);
        ScenePiece piece = scene.pieceAt(350, 50).orElseThrow();
        assertEquals("7", piece.number());
        assertEquals("lasting", piece.id());
        assertEquals(1, scene.outlines().size(), "faces that touch have one outline");
        assertEquals(300, scene.bounds().leftMm(), 1e-9);
        assertEquals(200, scene.bounds().widthMm(), 1e-9);
    }

    @Test
    void layersLieWhereTheyAreDrawnAndPaleShadingIsStretched() throws IOException {
        EaselScene scene = new SceneReader(shelf).read(window(panel(0, art, List.of(), layer("matt"), layer("trace"))), Work.UNWATCHED);
        SceneLayer matt = scene.layers().get(0);
        SceneLayer trace = scene.layers().get(1);
        assertEquals(255, coveredAt(trace, 50, 45));
        assertEquals(0, coveredAt(trace, 50, 20));
        assertEquals(0, coveredAt(trace, 150, 45));
        assertEquals(255, coveredAt(matt, 150, 20), "the darkest that is drawn is the solid paint");
        assertEquals(0, coveredAt(matt, 150, 80));
    }

    @Test
    void nearTheDrawingItselfIsAsked() throws IOException {
        EaselScene scene = new SceneReader(shelf).read(window(panel(1000, art, List.of(), layer("trace"))), Work.UNWATCHED);
        Coverage near = scene.layers().get(0).finer().orElseThrow().read(new RectMm(1019, 39, 2, 2), 100, Work.UNWATCHED);
        assertEquals(200, near.widthPx());
        assertEquals(0, near.at(50, 150));
        assertEquals(0, near.at(150, 50));
        assertEquals(255, near.at(150, 150), "the bar begins at 20, 40");
    }

    @Test
    void theGlassComesFirstAndThenLayerAfterLayer() throws IOException {
        List<Integer> layers = new ArrayList<>();
        List<Integer> pieces = new ArrayList<>();
        new SceneReader(shelf).read(window(panel(0, art, List.of(), layer("matt"), layer("trace"))), Work.UNWATCHED, soFar -> {
            layers.add(soFar.layers().size());
            pieces.add(soFar.pieces().size());
        });
        assertEquals(List.of(0, 1, 2), layers);
        assertEquals(List.of(2, 2, 2), pieces);
    }

    @Test
    void whatCannotBeReadIsAProblemAndTheRestIsShown() throws IOException {
        Path broken = Files.writeString(temp.resolve("broken.svg"), "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"10mm\"");
        EaselScene scene = new SceneReader(shelf).read(window(panel(0, broken, List.of()), panel(300, art, List.of(), layer("no-such-layer"))),
                Work.UNWATCHED);
        assertEquals(2, scene.pieces().size());
        assertEquals(2, scene.problems().stream().filter(problem -> problem.severity() == Severity.ERROR).count());
        assertTrue(scene.problems().stream().allMatch(problem -> problem.where().equals("W01")));
        assertTrue(scene.problems().stream().anyMatch(problem -> problem.message().contains("broken.svg")));
    }

    @Test
    void problemsOfTheCutlineHaveTheirPlaceInTheWindow() throws IOException {
        Path open = Files.writeString(temp.resolve("open.svg"), ART.replace("M100 0V100", "M100 0V100M150 0V60"));
        EaselScene scene = new SceneReader(shelf).read(window(panel(1000, open, List.of())), Work.UNWATCHED);
        assertTrue(scene.problems().stream().flatMap(problem -> problem.at().stream())
                .anyMatch(place -> Math.hypot(place.xMm() - 1150, place.yMm() - 60) < 0.1), () -> "no open end at 1150, 60: " + scene.problems());
    }

    @Test
    void withoutArtworkThereIsNothingToShow() throws IOException {
        PanelSketch empty = new PanelSketch(0, 0, Optional.empty(), Optional.empty(), "", false, 0.8, 1.3, List.of(), List.of());
        assertTrue(new SceneReader(shelf).read(window(empty), Work.UNWATCHED).isEmpty());
    }

    @Test
    void artworkIsReadOnceUntilItsFileChanges() throws IOException {
        ArtPlace place = new ArtPlace(art, 200);
        var first = shelf.artwork(place);
        assertEquals(first, shelf.artwork(place));
        Files.writeString(art, ART + "<!-- changed -->");
        assertNotEquals(first, shelf.artwork(place));
        assertFalse(shelf.artwork(place).layers().isEmpty());
        shelf.close();
        assertThrows(CancellationException.class, () -> shelf.artwork(place));
    }

    /** A line that stops short is a problem with a proposal beside it, drawn over the glass; agreed to, it is mended and nothing is proposed. */
    @Test
    void whatCouldBeMendedIsProposedAtItsPlace() throws IOException {
        Path gap = Files.writeString(temp.resolve("gap.svg"), "<svg xmlns='http://www.w3.org/2000/svg' width='200mm' height='100mm' viewBox='0 0 200 100'>"
                + "<g id='cutline' fill='none' stroke='#000'><rect width='200' height='100'/><path id='joint' d='M100 0V97'/></g></svg>");
        SceneReader reader = new SceneReader(shelf);
        EaselScene scene = reader.read(window(panel(300, gap, List.of())), Work.UNWATCHED);
        Problem open = scene.problems().stream().filter(problem -> problem.code().equals("open-end")).findFirst().orElseThrow();
        PlacedMend mend = reader.mends().stream().filter(one -> one.answers("W01", open)).findFirst().orElseThrow();
        assertEquals(400, mend.at().xMm(), 0.01);
        assertEquals(SceneHint.Kind.MEND, scene.hints().get(0).kind());
        assertEquals(400, scene.hints().get(0).lines().get(0)[0], 0.01);

        CutFacts agreed = new CutFacts(List.of(new CutFacts.AgreedMend(mend.mend().key(), "", 0, 0)), 0, Optional.empty(), List.of(), CutFacts.PLAIN.limits(),
                CutFacts.PLAIN.locked());
        PanelSketch mended = new PanelSketch(300, 0, Optional.empty(), Optional.of(new ArtPlace(gap, 200)), "cutline", false, 0.8, 1.3, List.of(), List.of(),
                "p", agreed);
        EaselScene after = reader.read(window(mended), Work.UNWATCHED);
        assertEquals(2, after.pieces().size());
        assertEquals(List.of(), reader.mends());
        assertEquals(List.of(), after.hints());
    }
}
