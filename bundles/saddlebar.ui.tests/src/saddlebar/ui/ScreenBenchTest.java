package saddlebar.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;

import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.eclipse.ui.IViewPart;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.IHandlerService;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

import saddlebar.model.commission.DesignLayer;
import saddlebar.model.commission.LayerRole;
import saddlebar.model.commission.Printer;
import saddlebar.model.commission.ProcessSetting;
import saddlebar.model.commission.Studio;
import saddlebar.model.commission.ToneMode;
import saddlebar.model.commission.TonerSide;
import saddlebar.model.store.CommissionFolder;
import saddlebar.model.store.NewCommission;
import saddlebar.model.store.StudioLibrary;
import saddlebar.model.work.Work;
import saddlebar.ui.desk.CommissionDesk;
import saddlebar.ui.desk.CommissionOpening;
import saddlebar.ui.desk.OpenCommission;
import saddlebar.ui.dots.DotsView;
import saddlebar.ui.dots.NarrowView;
import saddlebar.ui.make.BringChoice;
import saddlebar.ui.make.Bringer;
import saddlebar.ui.quality.QualityView;
import saddlebar.ui.sheets.PrinterTyped;
import saddlebar.ui.sheets.SheetsView;
import saddlebar.ui.tone.CurvePoints;
import saddlebar.ui.tone.ReadingsText;
import saddlebar.ui.tone.ToneView;

/** The later parts of the Screen bench in the real workbench: a wedge kept, a curve drawn, the studio's word taken, narrow places widened, tones measured. */
@ExtendWith(WorkbenchExtension.class)
class ScreenBenchTest {
    /** Shading from pale to dark, and hairs finer than any mesh prints. 60 x 60 mm. */
    private static final String ART = """
            <svg xmlns="http://www.w3.org/2000/svg" width="60mm" height="60mm" viewBox="0 0 60 60">
              <defs><linearGradient id="g"><stop offset="0" stop-color="#fff"/><stop offset="1" stop-color="#444"/></linearGradient></defs>
              <g id="matt" data-name="Matt"><rect width="60" height="60" fill="url(#g)"/></g>
              <g id="trace" data-name="Trace" stroke="#000" fill="none"><path d="M10 30h40" stroke-width=".1"/><path d="M10 32h40" stroke-width="1"/></g>
              <g id="cutline" data-name="Cutline" fill="none" stroke="#000"><rect width="60" height="60"/><path d="M0 5h60"/></g>
            </svg>
            """;
    private static final String WEDGE = "0 0.02\n10 0.06\n30 0.16\n50 0.29\n70 0.42\n90 0.55\n100 0.62";

    @TempDir
    private Path temp;
    private OpenCommission commission;

    @BeforeEach
    void openACommission() throws IOException, InterruptedException {
        Path folder = temp.resolve("porch");
        StudioLibrary tables = StudioLibrary.installed().orElseThrow(() -> new IllegalStateException("-Dsaddlebar.shared is not set"));
        CommissionFolder.create(folder, NewCommission.titled("Porch").stockedFrom(tables)).close();
        Path art = Files.writeString(temp.resolve("porch.svg"), ART);
        Screen.get(() -> Screen.window().getService(Bringer.class)).bring(folder, new BringChoice(art, "W01", "Flood tide", OptionalDouble.empty()),
                Work.UNWATCHED);
        assertTrue(Screen.get(() -> new CommissionOpening(Screen.window()).open(folder)));
        commission = Screen.get(() -> desk().commission().orElseThrow());
    }

    @AfterEach
    void putItAway() throws InterruptedException {
        Job.getJobManager().cancel(null);
        Screen.run(() -> {
            desk().close();
            Screen.page().closeAllEditors(false);
        });
        Screen.settle();
    }

    private static CommissionDesk desk() {
        return Screen.window().getService(CommissionDesk.class);
    }

    private Studio studio() {
        return commission.commission().getStudio();
    }

    private static DotsView dots() {
        return (DotsView) Screen.page().findView(Ids.DOTS_VIEW);
    }

    private static void undo() {
        Screen.run(() -> Screen.window().getService(IHandlerService.class).executeCommand("org.eclipse.ui.edit.undo", null));
    }

    private <T extends IViewPart> T part(String id, Class<T> type) {
        return Screen.get(() -> type.cast(Screen.page().showView(id)));
    }

    private DesignLayer choose(LayerRole role) throws InterruptedException {
        DesignLayer layer = Screen.get(() -> {
            PlatformUI.getWorkbench().showPerspective(Ids.SCREEN_BENCH, Screen.window());
            Screen.page().resetPerspective();
            DesignLayer found = commission.window("W01").orElseThrow().getPanels().get(0).getLayers().stream().filter(one -> one.getRole() == role)
                    .findFirst().orElseThrow();
            Screen.page().showView(Ids.TREE_VIEW).getSite().getSelectionProvider().setSelection(new StructuredSelection(found));
            return found;
        });
        Screen.await("dots of " + role, () -> dots().preview().isPresent() && dots().layer().filter(found -> found == layer).isPresent());
        return layer;
    }

    private static void keep(ToneView tone, String readings) {
        Screen.run(() -> {
            tone.panel().type(ReadingsText.Measure.DENSITY, readings);
            assertEquals("", tone.panel().wrong());
            assertTrue(tone.panel().keepButton().isEnabled());
            tone.panel().keepButton().notifyListeners(SWT.Selection, new Event());
        });
    }

    @Test
    void aWedgeIsTypedKeptUsedAndSuperseded() throws InterruptedException {
        DesignLayer matt = choose(LayerRole.MATT);
        ToneView tone = part(Ids.TONE_VIEW, ToneView.class);
        keep(tone, WEDGE);
        assertEquals(1, studio().getCalibrations().size());
        assertSame(matt.getPaint(), studio().getCalibrations().get(0).getPaint());
        var before = Screen.get(() -> dots().preview().orElseThrow());
        Screen.run(() -> commission.edits().perform("calibrate", matt, () -> matt.getRecipe().setToneMode(ToneMode.CALIBRATED)));
        Screen.await("dots by the wedge", () -> dots().preview().filter(now -> now != before).isPresent());
        keep(tone, WEDGE.replace("0.29", "0.33"));
        assertSame(studio().getCalibrations().get(1), studio().getCalibrations().get(0).getSupersededBy());
        undo();
        assertEquals(1, studio().getCalibrations().size());
        assertEquals(null, studio().getCalibrations().get(0).getSupersededBy());
    }

    @Test
    void whatIsNoWedgeIsSaidBesideIt() throws InterruptedException {
        choose(LayerRole.MATT);
        ToneView tone = part(Ids.TONE_VIEW, ToneView.class);
        Screen.run(() -> {
            tone.panel().type(ReadingsText.Measure.DENSITY, WEDGE.replace("0.29", "0.1"));
            assertTrue(tone.panel().wrong().contains("do not rise"), tone.panel().wrong());
            assertTrue(tone.panel().keepButton().isEnabled(), "pooled, and said so");
            tone.panel().type(ReadingsText.Measure.DENSITY, "0 0.02\n50 0.3\n75 0.4");
            assertTrue(tone.panel().wrong().contains("solid"), tone.panel().wrong());
            assertFalse(tone.panel().keepButton().isEnabled());
        });
        assertTrue(studio().getCalibrations().isEmpty());
    }

    @Test
    void aCurveIsDrawnSeenInTheDotsAndTakenBack() throws InterruptedException {
        DesignLayer matt = choose(LayerRole.MATT);
        ToneView tone = part(Ids.TONE_VIEW, ToneView.class);
        double covered = Screen.get(() -> (double) dots().preview().orElseThrow().paint().count());
        Screen.run(() -> tone.curve(CurvePoints.typed("50:90")));
        assertEquals("0:0 0.5:0.9 1:1", matt.getRecipe().getCurve());
        Screen.await("more paint", () -> dots().preview().filter(now -> now.paint().count() > 1.2 * covered).isPresent());
        undo();
        assertEquals(null, matt.getRecipe().getCurve());
        Screen.await("as before", () -> dots().preview().filter(now -> now.paint().count() == covered).isPresent());
    }

    @Test
    void theStudiosWordOnTonerAndPrinterIsTaken() throws InterruptedException {
        choose(LayerRole.MATT);
        SheetsView sheets = part(Ids.SHEETS_VIEW, SheetsView.class);
        ProcessSetting process = studio().getProcesses().get(0);
        boolean confirmed = process.isConfirmed();
        Screen.run(() -> sheets.confirm(TonerSide.SQUEEGEE));
        assertTrue(process.isConfirmed());
        assertEquals(TonerSide.SQUEEGEE, process.getTonerSide());
        undo();
        assertEquals(confirmed, process.isConfirmed());
        Printer printer = studio().getPrinters().get(0);
        Screen.run(() -> sheets.printer().keep(new PrinterTyped("150", "260", "", "", "", "")));
        assertFalse(Screen.get(() -> sheets.printer().wrong()).isEmpty(), "no printer does that");
        assertEquals(1, printer.getScaleX());
        Screen.run(() -> sheets.printer().keep(new PrinterTyped("", "", "", "", "25.4; 38", "1.8")));
        assertEquals(List.of(25.4, 38.0), List.copyOf(printer.getBandPeriodsMm()));
        assertEquals(Math.pow(10, -1.8), printer.getSolidTransmittance(), 1e-12);
        undo();
        assertTrue(printer.getBandPeriodsMm().isEmpty());
    }

    @Test
    void narrowPlacesAreWidenedAndLeftAgain() throws InterruptedException {
        DesignLayer trace = choose(LayerRole.TRACE);
        NarrowView narrow = part(Ids.NARROW_VIEW, NarrowView.class);
        Screen.await("the hair", () -> !narrow.proposals().isEmpty());
        double covered = Screen.get(() -> (double) dots().preview().orElseThrow().paint().count());
        int found = Screen.get(() -> narrow.proposals().size());
        Screen.run(() -> narrow.take(narrow.proposals()));
        assertEquals(found, trace.getRecipe().getMends().size());
        Screen.await("a wider hair", () -> dots().preview().filter(now -> now.paint().count() > covered).isPresent());
        undo();
        assertTrue(trace.getRecipe().getMends().isEmpty());
    }

    @Test
    void tonesAreMeasured() throws InterruptedException {
        choose(LayerRole.MATT);
        QualityView quality = part(Ids.QUALITY_VIEW, QualityView.class);
        Screen.await("the first tones", () -> quality.run().filter(run -> run.patches().size() >= 2).isPresent());
        assertTrue(Screen.get(() -> quality.run().orElseThrow().worstToneError()) < 0.02);
    }

    /** What the part writes is a PDF of the sheet's size. */
    @Test
    void wedgeAndTestPageAreWritten() throws InterruptedException, IOException {
        choose(LayerRole.MATT);
        ToneView tone = part(Ids.TONE_VIEW, ToneView.class);
        SheetsView sheets = part(Ids.SHEETS_VIEW, SheetsView.class);
        Path wedge = temp.resolve("wedge.pdf");
        Path page = temp.resolve("page.pdf");
        Job first = Screen.get(() -> tone.writeWedge(wedge));
        Job second = Screen.get(() -> sheets.writeTest(page));
        first.join();
        second.join();
        assertEquals("%PDF", Files.readString(wedge, StandardCharsets.ISO_8859_1).substring(0, 4));
        assertEquals("%PDF", Files.readString(page, StandardCharsets.ISO_8859_1).substring(0, 4));
    }
}
