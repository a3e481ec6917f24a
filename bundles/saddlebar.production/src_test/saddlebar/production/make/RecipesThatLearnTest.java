package saddlebar.production.make;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import saddlebar.artwork.ArtworkReaders;
import saddlebar.model.commission.CommissionFactory;
import saddlebar.model.commission.LayerRole;
import saddlebar.model.commission.MendKind;
import saddlebar.model.commission.MendedPlace;
import saddlebar.model.commission.Mesh;
import saddlebar.model.commission.Paint;
import saddlebar.model.commission.Studio;
import saddlebar.model.commission.ToneCalibration;
import saddlebar.model.commission.ToneMode;
import saddlebar.model.problem.Problem;
import saddlebar.model.store.Access;
import saddlebar.model.store.CommissionFolder;
import saddlebar.model.work.Work;
import saddlebar.production.check.Checking;
import saddlebar.production.facts.CalibrationChoice;
import saddlebar.production.facts.FactsReader;
import saddlebar.production.facts.LayerFacts;
import saddlebar.production.studio.CalibrationBook;
import saddlebar.stencil.ScreeningMethods;
import saddlebar.stencil.process.StencilProcesses;
import saddlebar.stencil.tone.WedgeReading;

/** What a studio finds out goes into what is made: places widened, calibrations kept, layers that do not overlap. */
class RecipesThatLearnTest {
    private static final List<WedgeReading> WEDGE = List.of(new WedgeReading(0, 0), new WedgeReading(0.25, 0.35), new WedgeReading(0.5, 0.64),
            new WedgeReading(0.75, 0.86), new WedgeReading(1, 1));

    @TempDir
    private Path temp;
    private WorkBench bench;

    @BeforeEach
    void aBench() throws IOException {
        bench = new WorkBench(temp);
    }

    @Test
    void aPlaceIsWidenedAndTheStepRecorded() throws IOException {
        bench.bring("W01", WorkBench.svg(80, 50, "<path d='M40 0V50'/>", "<g id='trace'><path d='M5 20H35' stroke='#000' stroke-width='.15'/></g>"));
        bench.change("W01", LayerRole.TRACE, layer -> layer.getRecipe().setOpenMm(0.8));
        MadeStencil before = bench.make().stencils().get(0);
        assertEquals(1, before.tooFine());
        bench.change("W01", LayerRole.TRACE, layer -> layer.getRecipe().getMends().addAll(List.of(mend(20, 20), mend(20, 40))));
        MakeResult result = bench.make();
        MadeStencil after = result.stencils().get(0);
        assertEquals(0, after.tooFine());
        assertTrue(after.coverage() > before.coverage());
        assertEquals(1, after.mended().size());
        assertTrue(after.mended().get(0).startsWith("thicken at "), after.mended().get(0));
        assertEquals(1, after.mendsLost(), "there is nothing to widen at the other place");
        assertTrue(result.problems().stream().anyMatch(problem -> problem.code().equals("widened-place-gone")));
        assertEquals(after.mended(), bench.make().stencils().get(0).mended(), "kept, and still told");
    }

    private static MendedPlace mend(double xMm, double yMm) {
        MendedPlace place = CommissionFactory.eINSTANCE.createMendedPlace();
        place.setKind(MendKind.THICKEN);
        place.setXMm(xMm);
        place.setYMm(yMm);
        place.setWidthMm(0.8);
        return place;
    }

    @Test
    void theNewestCalibrationIsUsedUntilItIsSuperseded() throws IOException {
        bench.bring("W01", WorkBench.twoPieces());
        bench.edit(open -> {
            Studio studio = open.studio();
            var matt = open.window("W01").orElseThrow().getPanels().get(0).getLayers().stream().filter(layer -> layer.getRole() == LayerRole.MATT).findFirst()
                    .orElseThrow();
            matt.getRecipe().setToneMode(ToneMode.CALIBRATED);
            Mesh mesh = matt.getMesh() != null ? matt.getMesh() : studio.getMeshes().get(0);
            matt.setMesh(mesh);
            ToneCalibration first = keep(studio, matt.getPaint(), mesh, "am", LocalDate.of(2026, 3, 1));
            matt.getRecipe().setCalibration(first);
            ToneCalibration second = keep(studio, matt.getPaint(), mesh, "am", LocalDate.of(2026, 5, 1));
            assertSame(second, first.getSupersededBy());
            ToneCalibration late = keep(studio, matt.getPaint(), mesh, "am", LocalDate.of(2026, 4, 1));
            assertSame(second, late.getSupersededBy(), "measured earlier, entered later");
            ToneCalibration other = keep(studio, matt.getPaint(), mesh, "diffusion", LocalDate.of(2026, 6, 1));
            assertSame(second, CalibrationChoice.newest(first));
            assertSame(second, CalibrationChoice.of(studio, matt.getPaint(), mesh, "am").orElseThrow());
            assertEquals(null, other.getSupersededBy());
            first.setSupersededBy(second);
            second.setSupersededBy(first);
            assertSame(first, CalibrationChoice.newest(first), "a ring leads nowhere");
            second.setSupersededBy(null);
        });
        try (CommissionFolder open = CommissionFolder.open(bench.folder, Access.READ)) {
            LayerFacts matt = FactsReader.read(open.commission(), open.path(), List.of()).panels().flatMap(panel -> panel.panel().layers().stream())
                    .filter(layer -> layer.role() == LayerRole.MATT).findFirst().orElseThrow();
            assertEquals(10, matt.recipe().tone().calibration().size());
        }
    }

    private static ToneCalibration keep(Studio studio, Paint paint, Mesh mesh, String method, LocalDate day) {
        return CalibrationBook.keep(studio,
                new CalibrationBook.Measured(paint, mesh, method, "fused-sheet", OptionalDouble.of(40), OptionalDouble.empty(), 1, day,
                        "typed", WEDGE));
    }

    @Test
    void layersThatMeetWithoutOverlapAreFound() throws IOException {
        bench.bring("W01", WorkBench.svg(80, 50, "<path d='M40 0V50'/>", "<g id='matt'><rect x='5' y='5' width='15' height='40'/></g>"
                + "<g id='trace'><rect x='20' y='5' width='15' height='40'/></g>"));
        assertTrue(meetings().isEmpty(), "nobody asked for a trap");
        bench.change("W01", LayerRole.TRACE, layer -> layer.getRecipe().setTrapMm(0.5));
        List<Problem> found = meetings();
        assertEquals(1, found.size());
        assertEquals(20, found.get(0).at().orElseThrow().xMm(), 1, "at the common edge");
        assertFalse(found.get(0).message().isBlank());
    }

    private List<Problem> meetings() throws IOException {
        Making making = new Making(ArtworkReaders.ownReaders(), ScreeningMethods.ownMethods(), StencilProcesses.ownProcesses());
        try (CommissionFolder open = CommissionFolder.open(bench.folder, Access.READ)) {
            return new Checking(making, ScreeningMethods.ownMethods()).check(open, Work.UNWATCHED).stream()
                    .filter(problem -> problem.code().equals("layers-without-trap")).toList();
        }
    }
}
