package saddlebar.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.lang.reflect.Constructor;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.DND;
import org.eclipse.swt.dnd.DropTarget;
import org.eclipse.swt.dnd.DropTargetEvent;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.ui.IViewPart;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.IHandlerService;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

import saddlebar.model.commission.Colourway;
import saddlebar.model.commission.Piece;
import saddlebar.model.commission.Window;
import saddlebar.model.store.CommissionFolder;
import saddlebar.model.store.NewCommission;
import saddlebar.model.store.StudioLibrary;
import saddlebar.model.work.Work;
import saddlebar.production.colourway.Colourways;
import saddlebar.production.light.LightBehind;
import saddlebar.production.light.LightLook;
import saddlebar.production.light.ScenePiece;
import saddlebar.ui.bench.EaselEditor;
import saddlebar.ui.colourway.ColourWords;
import saddlebar.ui.desk.CommissionDesk;
import saddlebar.ui.desk.CommissionOpening;
import saddlebar.ui.desk.OpenCommission;
import saddlebar.ui.easel.EaselCanvas;
import saddlebar.ui.make.BringChoice;
import saddlebar.ui.make.Bringer;

/** The Drawing bench at work on glass and colour: picked, taken back, switched, looked at in another light; a drawing dropped on the Easel. */
@ExtendWith(WorkbenchExtension.class)
class GlassBenchTest {
    private static final String ART = """
            <svg xmlns="http://www.w3.org/2000/svg" width="90mm" height="60mm" viewBox="0 0 90 60">
              <g id="matt" data-name="Matt"><rect width="90" height="20" fill="#c0c0c0"/></g>
              <g id="cutline" data-name="Cutline" fill="none" stroke="#000">
                <rect width="90" height="60"/><path d="M30 0V60"/><path d="M60 0V60"/>
              </g>
            </svg>
            """;

    @TempDir
    private Path temp;
    private Path folder;

    @BeforeEach
    void makeACommission() throws IOException, InterruptedException {
        folder = temp.resolve("chapel");
        StudioLibrary tables = StudioLibrary.installed().orElseThrow();
        CommissionFolder.create(folder, NewCommission.titled("Chapel").stockedFrom(tables)).close();
        Path art = Files.writeString(temp.resolve("chapel.svg"), ART);
        Bringer bringer = Screen.get(() -> Screen.window().getService(Bringer.class));
        bringer.bring(folder, new BringChoice(art, "W01", "Three lights", OptionalDouble.empty()), Work.UNWATCHED);
        assertTrue(Screen.get(() -> new CommissionOpening(Screen.window()).open(folder)));
        Screen.await("the window on the Easel", () -> easel().flatMap(EaselCanvas::scene).filter(scene -> scene.layers().size() == 1).isPresent());
        Screen.run(() -> {
            PlatformUI.getWorkbench().showPerspective(Ids.DRAWING_BENCH, Screen.window());
            Screen.page().showView(Ids.GLASS_VIEW);
            Screen.page().showView(Ids.COLOURWAYS_VIEW);
            Window window = window();
            open().edits().perform("new", window, () -> {
                Colourway first = Colourways.create(window, "Morning");
                Colourways.copy(first, "Evening");
            });
        });
        Screen.settle();
    }

    @AfterEach
    void putItAway() throws InterruptedException {
        Job.getJobManager().cancel(null);
        Screen.run(() -> {
            StudioPreferences.setLight(LightLook.USUAL);
            desk().close();
            Screen.page().closeAllEditors(false);
        });
        Screen.settle();
    }

    private static CommissionDesk desk() {
        return Screen.window().getService(CommissionDesk.class);
    }

    private static OpenCommission open() {
        return desk().commission().orElseThrow();
    }

    private static Window window() {
        return open().window("W01").orElseThrow();
    }

    private static Optional<EaselCanvas> easel() {
        return Screen.page().getActiveEditor() instanceof EaselEditor editor ? Optional.of(editor.easel()) : Optional.empty();
    }

    private static Colourway colourway(String name) {
        return Colourways.named(window(), name);
    }

    private static Piece piece(int number) {
        return Colourways.pieces(window()).get(number - 1);
    }

    private static Table table(String firstColumn) {
        return Screen.all(Screen.window().getShell(), Table.class).stream()
                .filter(table -> table.getColumnCount() > 0 && table.getColumn(0).getText().equals(firstColumn)).findFirst().orElseThrow();
    }

    private static void choose(Table table, String text) {
        TableItem wanted = Arrays.stream(table.getItems()).filter(item -> item.getText(0).equals(text)).findFirst().orElseThrow();
        table.setSelection(wanted);
        Event event = new Event();
        event.item = wanted;
        table.notifyListeners(SWT.Selection, event);
    }

    private static Button button(Shell shell, String words) {
        return Screen.all(shell, Button.class).stream().filter(button -> button.getText().replace("&", "").equals(words.replace("&", ""))).findFirst()
                .orElseThrow(() -> new AssertionError("no button " + words));
    }

    private static void choosePieces(int... numbers) {
        EaselEditor editor = (EaselEditor) Screen.page().getActiveEditor();
        Screen.page().activate(editor);
        List<String> ids = Arrays.stream(numbers).mapToObj(number -> piece(number).getId()).toList();
        editor.easel().chooseAll(ids, false);
        editor.easel().chooseHere(editor.easel().chosen(), false);
        editor.easel().chooseAll(ids, false);
    }

    private static void command(String id) throws InterruptedException {
        Screen.run(() -> {
            Screen.page().activate(Screen.page().getActiveEditor());
            Screen.window().getService(IHandlerService.class).executeCommand(id, null);
        });
        Screen.settle();
    }

    private static String piecesOf(String glass) {
        return Arrays.stream(table(ColourWords.Glass_name).getItems()).filter(item -> item.getText(0).equals(glass)).findFirst().orElseThrow().getText(3);
    }

    private static String shownGlass(int number) {
        EaselCanvas easel = easel().orElseThrow();
        ScenePiece shown = easel.scene().orElseThrow().piece(piece(number).getId()).orElseThrow();
        return shown.glass(easel.look().colourway()).name();
    }

    @Test
    void glassIsPickedForTheChosenPiecesAndTakenBack() throws InterruptedException {
        Screen.run(() -> Screen.page().showView(Ids.GLASS_VIEW));
        Screen.settle();
        Screen.await("swatches of the glass", () -> table(ColourWords.Glass_name).getItemCount() > 5 && table(ColourWords.Glass_name).getItem(0)
                .getImage(0) != null);
        Screen.run(() -> {
            choosePieces(1, 3);
            choose(table(ColourWords.Glass_name), "amber");
        });
        Screen.settle();
        Screen.run(() -> {
            Button cut = button(Screen.window().getShell(), ColourWords.Glass_cut);
            assertTrue(cut.isEnabled(), "two pieces and a glass are chosen");
            cut.notifyListeners(SWT.Selection, new Event());
        });
        Screen.settle();
        Screen.run(() -> {
            assertEquals("amber", Colourways.glass(piece(1), colourway("Morning")).orElseThrow().getName());
            assertEquals("amber", Colourways.glass(piece(3), colourway("Morning")).orElseThrow().getName());
            assertTrue(Colourways.glass(piece(2), colourway("Morning")).isEmpty());
            assertEquals("amber", shownGlass(3));
            assertEquals("2", piecesOf("amber"));
            assertTrue(open().isDirty());
        });
        command("saddlebar.ui.colourway.next");
        Screen.run(() -> assertEquals("", piecesOf("amber"), "the other colourway has none"));
        command("saddlebar.ui.colourway.next");
        Screen.run(() -> assertEquals("2", piecesOf("amber")));
        command("org.eclipse.ui.edit.undo");
        Screen.run(() -> {
            assertTrue(Colourways.glass(piece(1), colourway("Morning")).isEmpty());
            assertEquals("", shownGlass(3));
        });
        command("org.eclipse.ui.edit.redo");
        Screen.run(() -> assertEquals("amber", shownGlass(3)));
    }

    @Test
    void theColourwayChosenInTheTableLiesOnTheEasel() throws InterruptedException {
        Screen.await("two colourways", () -> table(ColourWords.Colourway_name).getItemCount() == 2);
        Screen.run(() -> choose(table(ColourWords.Colourway_name), "Evening"));
        Screen.settle();
        assertEquals(1, Screen.get(() -> easel().orElseThrow().look().colourway()));
        command("saddlebar.ui.colourway.next");
        assertEquals(0, Screen.get(() -> easel().orElseThrow().look().colourway()));
        Screen.run(() -> assertEquals("Morning", table(ColourWords.Colourway_name).getSelection()[0].getText(0)));
    }

    @Test
    void anApprovedColourwayTakesNoOtherGlass() throws InterruptedException {
        Screen.run(() -> open().edits().perform("approve", window(), () -> {
            colourway("Morning").setApproved(true);
            colourway("Morning").setApprovedOn(LocalDate.of(2026, 2, 3));
        }));
        Screen.run(() -> {
            Screen.page().showView(Ids.GLASS_VIEW);
            choosePieces(1);
        });
        Screen.settle();
        Screen.run(() -> {
            choose(table(ColourWords.Glass_name), "amber");
            assertFalse(button(Screen.window().getShell(), ColourWords.Glass_cut).isEnabled());
        });
    }

    @Test
    void anotherLightStandsBehindAllWindows() throws InterruptedException {
        command("saddlebar.ui.light.next");
        Screen.run(() -> {
            assertEquals(LightBehind.LAMP, StudioPreferences.light().behind());
            assertEquals(LightBehind.LAMP, easel().orElseThrow().look().light().behind());
        });
    }

    @Test
    void theSideBySidePartShowsBothAndWhereTheyDiffer() throws InterruptedException {
        Screen.run(() -> open().edits().perform("cut", window(), () -> {
            var stock = open().folder().studio().getGlass();
            Colourways.cut(colourway("Morning"), Colourways.pieces(window()), Optional.of(stock.get(0)));
            Colourways.cut(colourway("Evening"), Colourways.pieces(window()), Optional.of(stock.get(0)));
            Colourways.cut(colourway("Evening"), List.of(piece(2)), Optional.of(stock.get(5)));
        }));
        Screen.await("two colourways", () -> table(ColourWords.Colourway_name).getItemCount() == 2
                && !table(ColourWords.Colourway_name).getItem(1).getText(3).isEmpty());
        Screen.run(() -> choose(table(ColourWords.Colourway_name), "Evening"));
        Screen.run(() -> {
            IViewPart view = Screen.page().showView(Ids.COLOURWAYS_VIEW);
            assertNotNull(view);
            var bar = view.getViewSite().getActionBars().getToolBarManager();
            ((org.eclipse.jface.action.ActionContributionItem) bar.getItems()[1]).getAction().run();
        });
        Screen.await("the two side by side", () -> Screen.all(Screen.window().getShell(), EaselCanvas.class).stream()
                .filter(easel -> easel.isVisible() && easel.scene().isPresent()).count() == 2);
        Screen.await("the piece that differs", () -> Screen.all(Screen.window().getShell(), Table.class).stream()
                .anyMatch(table -> table.getColumnCount() == 4 && table.getItemCount() == 1 && table.getItem(0).getText(0).equals("2")));
    }

    @Test
    void aDrawingDroppedOnTheEaselIsBrought() throws Exception {
        Path dropped = Files.writeString(temp.resolve("second.svg"), ART);
        Screen.run(() -> open().save());
        Screen.run(() -> {
            EaselCanvas easel = easel().orElseThrow();
            DropTarget target = (DropTarget) easel.getData(DND.DROP_TARGET_KEY);
            DropTargetEvent event = dropOf(easel, dropped);
            target.getDropListeners()[0].drop(event);
        });
        Screen.await("the dialog that asks for the window", () -> dialog().isPresent());
        Screen.run(() -> button(dialog().orElseThrow(), Messages.Bring_bring).notifyListeners(SWT.Selection, new Event()));
        Screen.await("the second window", () -> desk().commission().filter(open -> open.windowNames().size() == 2 && !desk().isMaking()).isPresent());
        Screen.settle();
        Screen.run(() -> assertNotEquals(Optional.empty(), open().window("W02")));
    }

    private static Optional<Shell> dialog() {
        return Arrays.stream(Screen.display().getShells()).filter(shell -> shell.isVisible() && shell.getText().equals(Messages.Bring_title)).findFirst();
    }

    /** As the platform makes it when a file falls on a control; its constructor is the platform's own. */
    private static DropTargetEvent dropOf(EaselCanvas easel, Path file) throws ReflectiveOperationException {
        Class<?> inner = Class.forName("org.eclipse.swt.dnd.DNDEvent", true, DropTargetEvent.class.getClassLoader());
        Constructor<?> make = inner.getDeclaredConstructor();
        make.setAccessible(true);
        Event raw = (Event) make.newInstance();
        raw.widget = easel;
        Constructor<DropTargetEvent> wrap = DropTargetEvent.class.getDeclaredConstructor(inner);
        wrap.setAccessible(true);
        DropTargetEvent event = wrap.newInstance(raw);
        event.data = new String[] {file.toString()};
        event.detail = DND.DROP_COPY;
        return event;
    }
}
