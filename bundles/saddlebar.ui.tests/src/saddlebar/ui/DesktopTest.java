package saddlebar.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.core.runtime.Platform;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageLoader;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IViewPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.handlers.IHandlerService;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.AfterAllCallback;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

import saddlebar.model.commission.DesignLayer;
import saddlebar.model.commission.LayerRole;
import saddlebar.model.commission.Piece;
import saddlebar.model.commission.Window;
import saddlebar.model.store.CommissionFolder;
import saddlebar.model.store.NewCommission;
import saddlebar.model.store.StudioLibrary;
import saddlebar.model.work.Work;
import saddlebar.stencil.mesh.ScoredRuling;
import saddlebar.ui.bench.EaselEditor;
import saddlebar.ui.desk.CommissionDesk;
import saddlebar.ui.desk.CommissionOpening;
import saddlebar.ui.desk.OpenCommission;
import saddlebar.ui.dots.DotsView;
import saddlebar.ui.dots.StencilBits;
import saddlebar.ui.easel.EaselCanvas;
import saddlebar.production.light.EaselLook.Overlay;
import saddlebar.ui.easel.PieceWalk;
import saddlebar.ui.make.BringChoice;
import saddlebar.ui.make.Bringer;
import saddlebar.ui.make.HandedOverJob;
import saddlebar.ui.make.MakeSummary;
import saddlebar.ui.make.Maker;
import saddlebar.ui.problems.ProblemBoard;
import saddlebar.ui.screening.RecipeField;

/** The desktop as a person meets it: opened, looked at, changed, made. At the end the log is clean and nothing of the screen's was lost. */
@ExtendWith(WorkbenchExtension.class)
class DesktopTest {
    /** Three panes, one of which ends in a needle; shading and a line over them. 120 x 80 mm. */
    private static final String ART = """
            <svg xmlns="http://www.w3.org/2000/svg" width="120mm" height="80mm" viewBox="0 0 120 80">
              <g id="glass" data-name="Glass"><rect width="60" height="80" fill="#2e6fb0"/><rect x="60" width="60" height="80" fill="#e9c46a"/></g>
              <g id="matt" data-name="Matt"><rect width="120" height="30" fill="#c0c0c0"/></g>
              <g id="trace" data-name="Trace"><path d="M10 60h100v3h-100z"/></g>
              <g id="cutline" data-name="Cutline" fill="none" stroke="#000">
                <rect width="120" height="80"/><path d="M60 0V80"/><path d="M60 40L120 42"/>
              </g>
            </svg>
            """;
    private static final String[] VIEWS = {Ids.TREE_VIEW, Ids.WALL_VIEW, Ids.PIECES_VIEW, Ids.LAYERS_VIEW, Ids.DOTS_VIEW, Ids.RECIPE_VIEW,
            Ids.MESH_VIEW, Ids.PROPERTIES_VIEW, Ids.PROBLEMS_VIEW, Ids.PROGRESS_VIEW};

    @RegisterExtension
    static final NothingLost NOTHING_LOST = new NothingLost();

    @TempDir
    private Path temp;
    private Path folder;

    @BeforeEach
    void makeACommission() throws IOException {
        folder = temp.resolve("porch");
        StudioLibrary tables = StudioLibrary.installed().orElseThrow(() -> new IllegalStateException("-Dsaddlebar.shared is not set"));
        CommissionFolder.create(folder, NewCommission.titled("Porch").stockedFrom(tables)).close();
        Path art = Files.writeString(temp.resolve("porch.svg"), ART);
        Bringer bringer = Screen.get(() -> Screen.window().getService(Bringer.class));
        assertNotNull(bringer, "no service brings artwork");
        bringer.bring(folder, new BringChoice(art, "W01", "Ebb tide", OptionalDouble.empty()), Work.UNWATCHED);
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

    private OpenCommission open() throws InterruptedException {
        assertTrue(Screen.get(() -> new CommissionOpening(Screen.window()).open(folder)));
        Screen.await("the window on the Easel", () -> easel().flatMap(EaselCanvas::scene).filter(scene -> scene.layers().size() == 2).isPresent());
        return Screen.get(() -> desk().commission().orElseThrow());
    }

    private static Optional<EaselEditor> editor() {
        IEditorPart active = Screen.page().getActiveEditor();
        return active instanceof EaselEditor easel ? Optional.of(easel) : Optional.empty();
    }

    private static Optional<EaselCanvas> easel() {
        return editor().map(EaselEditor::easel);
    }

    @Test
    void allBenchesOpenWithAllTheirParts() throws InterruptedException {
        open();
        for (String bench : new String[] {Ids.DESK_BENCH, Ids.DRAWING_BENCH, Ids.SCREEN_BENCH}) {
            Screen.run(() -> PlatformUI.getWorkbench().showPerspective(bench, Screen.window()));
            for (String view : VIEWS) {
                IViewPart part = Screen.get(() -> Screen.page().showView(view));
                assertNotNull(part, view);
                assertFalse(part.getClass().getSimpleName().contains("Error"), view + " could not be shown");
            }
        }
        Screen.settle();
        Screen.run(() -> assertEquals(Ids.SCREEN_BENCH, Screen.page().getPerspective().getId()));
    }

    @Test
    void aPieceChosenOnTheEaselIsChosenEverywhere() throws InterruptedException {
        open();
        Screen.run(() -> {
            PlatformUI.getWorkbench().showPerspective(Ids.DRAWING_BENCH, Screen.window());
            Screen.page().showView(Ids.PIECES_VIEW);
            Screen.page().activate(editor().orElseThrow());
            easel().orElseThrow().chooseHere(Optional.empty(), false);
            easel().orElseThrow().walk(PieceWalk.Way.NEXT);
        });
        Screen.settle();
        Screen.run(() -> {
            Object chosen = ((IStructuredSelection) Screen.window().getSelectionService().getSelection()).getFirstElement();
            assertTrue(chosen instanceof Piece, "chosen is " + chosen);
            assertEquals(1, ((Piece) chosen).getNumber());
            Table table = table(Messages.Property_number);
            assertEquals(3, table.getItemCount());
            assertEquals("1", table.getSelection()[0].getText(0));
        });
    }

    @Test
    void whatIsNotSavedIsLaidAsideUntilItIsSavedOrGivenUp() throws InterruptedException, IOException {
        OpenCommission open = open();
        Path list = folder.resolve(".unsaved/list.json");
        Screen.run(() -> retitle(open, "Flood tide"));
        Screen.await("the edit laid aside", () -> Files.exists(list));
        Screen.run(open::save);
        assertFalse(Files.exists(list), "saved");
        Screen.run(() -> retitle(open, "Neap tide"));
        Screen.await("the second edit laid aside", () -> Files.exists(list));
        Screen.run(() -> desk().close());
        assertFalse(Files.exists(list), "given up");
    }

    private static void retitle(OpenCommission open, String title) {
        Window window = open.window("W01").orElseThrow();
        open.edits().perform("Title", window, () -> window.setTitle(title));
    }

    @Test
    void aPieceChosenInTheTableIsLitOnTheEasel() throws InterruptedException {
        OpenCommission commission = open();
        Screen.run(() -> {
            Piece third = commission.window("W01").orElseThrow().getPanels().get(0).getPieces().stream().filter(piece -> piece.getNumber() == 3)
                    .findFirst().orElseThrow();
            IViewPart tree = Screen.page().showView(Ids.TREE_VIEW);
            tree.getSite().getSelectionProvider().setSelection(new StructuredSelection(third));
        });
        Screen.settle();
        assertEquals("3", Screen.get(() -> easel().orElseThrow().chosen().orElseThrow().number()));
    }

    @Test
    void theTreeShowsTheCommissionAndItsWindows() throws InterruptedException {
        open();
        Screen.await("titles in the tree", () -> {
            Tree tree = commissionTree();
            return tree.getItem(0).getItemCount() == 3 && tree.getItem(0).getItem(0).getText().contains("Ebb tide");
        });
        assertTrue(Screen.get(() -> Screen.window().getShell().getText()).contains("Porch"));
    }

    @Test
    void aChangeIsMarkedTakenBackAndSaved() throws InterruptedException {
        OpenCommission commission = open();
        Screen.run(() -> {
            Window window = commission.window("W01").orElseThrow();
            commission.edits().perform("Title", window, () -> window.setTitle("Flood"));
        });
        Screen.settle();
        assertTrue(Screen.get(() -> editor().orElseThrow().isDirty()));
        assertTrue(Screen.get(() -> editor().orElseThrow().getTitle()).contains("Flood"));
        command("org.eclipse.ui.edit.undo");
        assertEquals("Ebb tide", Screen.get(() -> commission.window("W01").orElseThrow().getTitle()));
        command("org.eclipse.ui.edit.redo");
        command("org.eclipse.ui.file.save");
        Screen.settle();
        assertFalse(Screen.get(() -> editor().orElseThrow().isDirty()));
        assertFalse(Screen.get(commission::isDirty));
    }

    @Test
    void whatIsTakenBackIsNoLongerMarked() throws InterruptedException {
        OpenCommission commission = open();
        Screen.run(() -> {
            Screen.page().activate(editor().orElseThrow());
            easel().orElseThrow().chooseHere(Optional.empty(), false);
            Screen.page().showView(Ids.PROPERTIES_VIEW); // where the title is written
        });
        Screen.await("Properties to show the title", () -> showsField("Ebb tide"));
        Screen.run(() -> {
            Window window = commission.window("W01").orElseThrow();
            commission.edits().perform("Title", window, () -> window.setTitle("Flood"));
        });
        Screen.await("Save to be there", () -> Screen.window().getService(ICommandService.class).getCommand("org.eclipse.ui.file.save").isEnabled());
        Screen.run(() -> desk().reopen());
        Screen.await("Save to be gone", () -> !Screen.window().getService(ICommandService.class).getCommand("org.eclipse.ui.file.save").isEnabled());
        assertFalse(Screen.get(() -> editor().orElseThrow().getTitle()).contains("Flood"));
        Screen.await("Properties to show it as it is", () -> showsField("Ebb tide"));
    }

    private static boolean showsField(String text) {
        return Screen.all(Screen.window().getShell(), Text.class).stream().anyMatch(field -> field.isVisible() && field.getText().equals(text));
    }

    /** As the menu does it: once the command can be chosen. */
    private static void command(String id) throws InterruptedException {
        Screen.run(() -> Screen.page().activate(Screen.page().getActiveEditor()));
        Screen.await("the command " + id, () -> Screen.window().getService(ICommandService.class).getCommand(id).isEnabled());
        Screen.run(() -> Screen.window().getService(IHandlerService.class).executeCommand(id, null));
    }

    @Test
    void theViewCommandsLookAtTheEasel() throws InterruptedException {
        open();
        double fitted = Screen.get(() -> easel().orElseThrow().view().ptPerMm());
        command("saddlebar.ui.easel.trueSize");
        assertTrue(Screen.get(() -> easel().orElseThrow().isTrueSize()));
        command("saddlebar.ui.easel.nearer");
        command("saddlebar.ui.easel.fit");
        assertEquals(fitted, Screen.get(() -> easel().orElseThrow().view().ptPerMm()), 1e-9);
        command("saddlebar.ui.easel.numbers");
        assertTrue(Screen.get(() -> easel().orElseThrow().look().shows(Overlay.NUMBERS)));
    }

    @Test
    void makingRunsInTheBackgroundAndTheCommissionComesBack() throws InterruptedException {
        open();
        MakeSummary[] made = new MakeSummary[1];
        Screen.run(() -> {
            Maker maker = Screen.window().getService(Maker.class);
            assertNotNull(maker, "no service makes");
            new HandedOverJob<>("Making", desk(), Screen.display(), Maker.WORK_UNITS, maker::make, summary -> made[0] = summary).begin();
            assertFalse(desk().canEdit());
        });
        Screen.await("the making to end", () -> made[0] != null && !desk().isMaking());
        assertTrue(made[0].made() > 5, "only " + made[0].made() + " files were made");
        Screen.run(() -> {
            assertTrue(desk().canEdit());
            assertFalse(desk().commission().orElseThrow().commission().getSheets().isEmpty());
        });
        Screen.await("the tree to say that it lies on sheets", () -> commissionTree().getItem(0).getItem(0).getText().contains(Messages.State_onSheet));
        Screen.await("the Easel to be laid anew", () -> easel().flatMap(EaselCanvas::scene).filter(scene -> scene.layers().size() == 2).isPresent());
    }

    @Test
    void makingStopsWhenAskedToAndNothingHasChanged() throws InterruptedException {
        open();
        boolean[] told = {false};
        HandedOverJob<String> job = Screen.get(() -> {
            HandedOverJob<String> started = new HandedOverJob<>("Waiting", desk(), Screen.display(), 100, (path, work) -> {
                while (true) {
                    work.checkpoint();
                }
            }, nothing -> told[0] = true);
            started.begin();
            return started;
        });
        job.cancel();
        job.join(60_000, new NullProgressMonitor());
        Screen.await("the commission to come back", () -> !desk().isMaking());
        assertFalse(told[0]);
        assertTrue(Screen.get(() -> desk().canEdit()));
    }

    /** A job that was stopped before its turn never runs; the commission must come back all the same. */
    @Test
    void makingStoppedBeforeItsTurnGivesTheCommissionBack() throws InterruptedException {
        open();
        Job.getJobManager().suspend();
        try {
            HandedOverJob<String> waiting = Screen.get(() -> {
                HandedOverJob<String> asked = new HandedOverJob<>("Waiting", desk(), Screen.display(), 100, (path, work) -> "never", nothing -> {
                    throw new IllegalStateException("it was stopped");
                });
                asked.begin();
                return asked;
            });
            assertFalse(Screen.get(() -> desk().canEdit()));
            assertTrue(waiting.cancel(), "it has begun although all jobs are held");
        } finally {
            Job.getJobManager().resume();
        }
        Screen.await("the commission to come back", () -> desk().canEdit());
    }

    @Test
    void problemsStandInTheListWithTheirPlace() throws InterruptedException {
        open();
        Screen.await("problems of the needle", () -> !Screen.window().getService(ProblemBoard.class).all().isEmpty());
        Screen.run(() -> {
            Screen.page().showView(Ids.PROBLEMS_VIEW);
            assertTrue(table(Messages.Problems_severity).getItemCount() > 0);
        });
    }

    /** The matt of the window, chosen in the tree, on the Screen bench. */
    private static DesignLayer chooseMatt(OpenCommission commission) throws InterruptedException {
        DesignLayer matt = Screen.get(() -> {
            PlatformUI.getWorkbench().showPerspective(Ids.SCREEN_BENCH, Screen.window());
            Screen.page().resetPerspective();
            DesignLayer found = commission.window("W01").orElseThrow().getPanels().get(0).getLayers().stream()
                    .filter(layer -> layer.getRole() == LayerRole.MATT).findFirst().orElseThrow();
            IViewPart tree = Screen.page().showView(Ids.TREE_VIEW);
            tree.getSite().getSelectionProvider().setSelection(new StructuredSelection(found));
            return found;
        });
        Screen.await("dots of the recipe", () -> dots().preview().isPresent() && dots().showsRecipe());
        return matt;
    }

    private static DotsView dots() {
        return (DotsView) Screen.page().findView(Ids.DOTS_VIEW);
    }

    /** The field of the recipe that is typed in. */
    private static Text recipeText(RecipeField field) {
        return Screen.all(Screen.window().getShell(), Text.class).stream().filter(text -> text.getData(RecipeField.class.getName()) == field)
                .findFirst().orElseThrow(() -> new AssertionError("no field of " + field));
    }

    private static void type(RecipeField field, String words) {
        Screen.run(() -> {
            Text text = recipeText(field);
            text.setText(words);
            text.notifyListeners(SWT.DefaultSelection, new Event());
        });
    }

    private static String rows(StencilBits bits) {
        StringBuilder rows = new StringBuilder();
        for (int i = 0; i < 4096; i++) {
            rows.append(bits.black(i % 512, i / 512 * 127) ? '1' : '0');
        }
        return rows.toString();
    }

    @Test
    void aRecipeIsChangedSeenInTheDotsAndTakenBack() throws InterruptedException {
        DesignLayer matt = chooseMatt(open());
        String solid = Screen.get(() -> rows(dots().preview().orElseThrow().bits())); // one tone only, which is stretched to solid paint
        type(RecipeField.TO, "100 %");
        Screen.await("dots of a half tone", () -> dots().preview().filter(preview -> !rows(preview.bits()).equals(solid)).isPresent());
        String before = Screen.get(() -> rows(dots().preview().orElseThrow().bits()));
        double lpi = matt.getRecipe().getLpi();
        Screen.await("the recipe's ruling in its field", () -> recipeText(RecipeField.RULING).getText().startsWith("40"));
        type(RecipeField.RULING, "12 /cm");
        assertEquals(30.48, matt.getRecipe().getLpi(), 1e-9);
        Screen.await("other dots", () -> dots().preview().filter(preview -> !rows(preview.bits()).equals(before)).isPresent());
        command("org.eclipse.ui.edit.undo");
        assertEquals(lpi, Screen.get(() -> matt.getRecipe().getLpi()));
        Screen.await("the dots of before", () -> dots().preview().filter(preview -> rows(preview.bits()).equals(before)).isPresent());
        assertTrue(Screen.get(() -> recipeText(RecipeField.RULING).getText()).startsWith("40"));
        command("org.eclipse.ui.edit.redo");
        assertEquals(30.48, Screen.get(() -> matt.getRecipe().getLpi()), 1e-9);
    }

    @Test
    void whatARecipeCannotTakeIsSaidUnderItsField() throws InterruptedException {
        OpenCommission commission = open();
        DesignLayer matt = chooseMatt(commission);
        double lpi = matt.getRecipe().getLpi();
        type(RecipeField.RULING, "oodles");
        assertTrue(Screen.get(() -> Screen.all(Screen.window().getShell(), Label.class).stream()
                .anyMatch(label -> label.getVisible() && label.getText().contains("oodles"))), "nobody said what is wrong");
        assertEquals(lpi, Screen.get(() -> matt.getRecipe().getLpi()));
        assertFalse(Screen.get(commission::isDirty));
    }

    @Test
    void aBetterPairIsTakenAndTakenBack() throws InterruptedException {
        DesignLayer matt = chooseMatt(open());
        double lpi = matt.getRecipe().getLpi();
        Screen.run(() -> Screen.page().showView(Ids.MESH_VIEW));
        Screen.await("better pairs", () -> table(Messages.Mesh_columnRuling).getItemCount() > 1);
        double[] pair = Screen.get(() -> {
            Table table = table(Messages.Mesh_columnRuling);
            int other = ((ScoredRuling) table.getItem(0).getData()).lpi() == lpi ? 1 : 0;
            table.setSelection(other);
            table.notifyListeners(SWT.Selection, new Event());
            ScoredRuling wanted = (ScoredRuling) table.getItem(other).getData();
            Button take = Screen.all(Screen.window().getShell(), Button.class).stream().filter(button -> button.getText().equals(Messages.Mesh_take))
                    .findFirst().orElseThrow();
            assertTrue(take.isEnabled());
            take.notifyListeners(SWT.Selection, new Event());
            return new double[] {wanted.lpi(), wanted.angleDeg()};
        });
        assertEquals(pair[0], Screen.get(() -> matt.getRecipe().getLpi()), 1e-9);
        assertEquals(pair[1], Screen.get(() -> matt.getRecipe().getAngleDeg()), 1e-9);
        command("org.eclipse.ui.edit.undo");
        assertEquals(lpi, Screen.get(() -> matt.getRecipe().getLpi()), 1e-9);
    }

    @Test
    void thePictureIsKept() throws InterruptedException, IOException {
        open();
        Screen.run(() -> {
            PlatformUI.getWorkbench().showPerspective(Ids.DESK_BENCH, Screen.window());
            Screen.page().setPartState(Screen.page().getReference(editor().orElseThrow()), IWorkbenchPage.STATE_RESTORED);
        });
        Screen.settle();
        Screen.await("glass on the Easel", () -> colours(picture()) > 500);
        Path pictures = Files.createDirectories(Path.of(System.getProperty("saddlebar.pictures", "target/pictures")));
        ImageLoader loader = new ImageLoader();
        loader.data = new ImageData[] {Screen.get(DesktopTest::picture)};
        loader.save(pictures.resolve("desktop.png").toString(), SWT.IMAGE_PNG);
        assertTrue(Files.size(pictures.resolve("desktop.png")) > 10_000);
    }

    private static ImageData picture() {
        Shell shell = Screen.window().getShell();
        Point size = shell.getSize();
        Image image = new Image(shell.getDisplay(), size.x, size.y);
        GC gc = new GC(image);
        try {
            shell.print(gc);
            return image.getImageData();
        } finally {
            gc.dispose();
            image.dispose();
        }
    }

    /** How many pixels of the picture are as blue as the left pane: the glass is really there. */
    private static int colours(ImageData picture) {
        int blue = 0;
        for (int y = 0; y < picture.height; y += 2) {
            for (int x = 0; x < picture.width; x += 2) {
                var rgb = picture.palette.getRGB(picture.getPixel(x, y));
                if (rgb.blue > rgb.red + 60 && rgb.blue > rgb.green + 30) {
                    blue++;
                }
            }
        }
        return blue;
    }

    /** The table whose first column is called so, wherever it stands. */
    private static Table table(String firstColumn) {
        return Screen.all(Screen.window().getShell(), Table.class).stream()
                .filter(table -> table.getColumnCount() > 0 && table.getColumn(0).getText().equals(firstColumn)).findFirst()
                .orElseThrow(() -> new AssertionError("no table begins with " + firstColumn));
    }

    private static Tree commissionTree() {
        return Screen.all(Screen.window().getShell(), Tree.class).stream()
                .filter(tree -> tree.getItemCount() > 0 && tree.getItem(0).getText().startsWith("Porch"))
                .findFirst().orElseThrow(() -> new AssertionError("no tree shows the commission"));
    }

    /** After the last test: the log holds no error, and no font, image or other thing of the screen's was lost. */
    static final class NothingLost implements AfterAllCallback {
        @Override
        public void afterAll(ExtensionContext context) throws Exception {
            Screen.settle();
            List<String> errors = Files.exists(log())
                    ? Files.readAllLines(log()).stream().filter(line -> line.matches("!ENTRY \\S+ 4 .*")).toList()
                    : List.of();
            assertEquals(List.of(), errors, "see " + log());
            for (int i = 0; i < 5; i++) {
                System.gc();
                Thread.sleep(50);
            }
            Screen.settle();
            assertEquals(List.of(), WorkbenchExtension.leaks(context));
        }

        private static Path log() {
            return Platform.getLogFileLocation().toFile().toPath();
        }
    }
}
