package saddlebar.ui;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageLoader;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.IHandlerService;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfEnvironmentVariable;
import org.junit.jupiter.api.extension.ExtendWith;

import saddlebar.ui.bench.EaselEditor;
import saddlebar.ui.desk.CommissionDesk;
import saddlebar.ui.desk.CommissionOpening;
import saddlebar.ui.easel.EaselCanvas;
import saddlebar.production.light.EaselLook.Overlay;
import saddlebar.production.light.EaselScene;
import saddlebar.ui.make.BringingArtwork;
import saddlebar.ui.make.HandedOverJob;
import saddlebar.ui.make.MakeSummary;
import saddlebar.ui.make.Maker;
import saddlebar.ui.tree.StateBoard;

/** Takes the pictures of the guide from the program itself; {@code guide-pictures} asks for them. */
@ExtendWith(WorkbenchExtension.class)
@EnabledIfEnvironmentVariable(named = GuidePicturesTest.FOLDER, matches = ".+", disabledReason = "the script guide-pictures asks for pictures")
class GuidePicturesTest {
    /** The environment variable that says where the pictures go. */
    static final String FOLDER = "SADDLEBAR_GUIDE_PICTURES";

    private Path work;

    @BeforeEach
    void makeRoom() throws IOException {
        work = Files.createTempDirectory("saddlebar-guide");
    }

    @AfterEach
    void putAway() throws IOException {
        Job.getJobManager().cancel(null);
        Screen.run(() -> {
            desk().close();
            Screen.page().closeAllEditors(false);
        });
        try (Stream<Path> all = Files.walk(work)) {
            for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }

    private static CommissionDesk desk() {
        return Screen.window().getService(CommissionDesk.class);
    }

    /** A copy of a demonstration commission, open, its first window read and everything quiet. */
    private void open(String demo) throws IOException, InterruptedException {
        Path from = Path.of(System.getProperty("saddlebar.shared")).resolveSibling("demo-projects").resolve(demo);
        Path to = work.resolve(demo);
        try (Stream<Path> all = Files.walk(from)) {
            for (Path path : all.filter(file -> !from.relativize(file).startsWith("made")).toList()) {
                Files.copy(path, to.resolve(from.relativize(path).toString()));
            }
        }
        assertTrue(Screen.get(() -> new CommissionOpening(Screen.window()).open(to)));
        rest();
    }

    private static void rest() throws InterruptedException {
        Screen.await("all layers on the Easel", () -> easel().flatMap(EaselCanvas::scene).map(EaselScene::layers).filter(layers -> layers.size() > 2)
                .isPresent());
        Screen.await("quiet", () -> Arrays.stream(Job.getJobManager().find(null)).noneMatch(job -> job.getState() == Job.RUNNING));
        Thread.sleep(2_500); // squares of the Easel are painted on threads of its own
        Screen.settle();
    }

    private static Optional<EaselCanvas> easel() {
        return Screen.page().getActiveEditor() instanceof EaselEditor editor ? Optional.of(editor.easel()) : Optional.empty();
    }

    private static void keep(String name, Control control) throws IOException {
        ImageData picture = Screen.get(() -> {
            Point size = control.getSize();
            Image image = new Image(control.getDisplay(), size.x, size.y);
            GC gc = new GC(image);
            try {
                control.print(gc);
                return image.getImageData();
            } finally {
                gc.dispose();
                image.dispose();
            }
        });
        ImageLoader loader = new ImageLoader();
        loader.data = new ImageData[] {picture};
        loader.save(Files.createDirectories(Path.of(System.getenv(FOLDER))).resolve(name + ".png").toString(), SWT.IMAGE_PNG);
    }

    private static void keepWindow(String name) throws IOException {
        keep(name, Screen.get(() -> Screen.window().getShell()));
    }

    private static void bench(String id) {
        Screen.run(() -> PlatformUI.getWorkbench().showPerspective(id, Screen.window()));
    }

    @Test
    void benchesAndEasel() throws IOException, InterruptedException {
        open("estuary-reading-room");
        bench(Ids.DESK_BENCH);
        rest();
        keepWindow("desk");
        bench(Ids.DRAWING_BENCH);
        Screen.run(() -> {
            Screen.page().activate(Screen.page().getActiveEditor());
            EaselCanvas easel = easel().orElseThrow();
            easel.fit();
            easel.setLook(easel.look().with(Overlay.NUMBERS, true));
            easel.chooseHere(easel.scene().orElseThrow().pieces().stream().filter(piece -> piece.number().equals("17")).findFirst(), false);
        });
        rest();
        keepWindow("drawing-bench");
        Screen.run(() -> {
            EaselCanvas easel = easel().orElseThrow();
            easel.chooseHere(Optional.empty(), false);
            easel.setLook(easel.look().with(Overlay.NUMBERS, false));
            easel.zoom(4);
            easel.look(easel.view().centredOn(350, 520));
        });
        rest();
        keep("easel-near", easel().orElseThrow());
    }

    @Test
    void dialogs() throws IOException, InterruptedException {
        open("first-panel");
        dialog(Messages.New_title, () -> Screen.window().getService(IHandlerService.class).executeCommand("saddlebar.ui.commission.new", null), shell -> {
            List<Text> fields = Screen.all(shell, Text.class).stream().filter(field -> (field.getStyle() & SWT.READ_ONLY) == 0).toList();
            fields.get(0).setText("Chapel door");
            fields.get(1).setText("/tmp/commissions/chapel-door");
        }, "new-commission");
        Path art = work.resolve("first-panel/artwork/first-panel.svg");
        dialog(Messages.Bring_title, () -> new BringingArtwork(Screen.window()).bring(art), shell -> {
            List<Text> fields = Screen.all(shell, Text.class).stream().filter(field -> (field.getStyle() & SWT.READ_ONLY) == 0).toList();
            fields.get(fields.size() - 1).setText("18 1/2 in");
        }, "bring-artwork");
    }

    /** Opens a dialog, which holds the screen's thread until it is closed, fills it, keeps its picture, and closes it. */
    private static void dialog(String title, Screen.Action open, Fill fill, String name) throws IOException, InterruptedException {
        Screen.display().asyncExec(() -> {
            try {
                open.run();
            } catch (Exception e) {
                throw new IllegalStateException(e);
            }
        });
        Screen.await("the dialog " + title, () -> shell(title).isPresent());
        Shell shell = Screen.get(() -> shell(title).orElseThrow());
        Screen.run(() -> fill.in(shell));
        Thread.sleep(500);
        keep(name, shell);
        Screen.run(shell::close);
    }

    /** Writes into a dialog's fields. */
    @FunctionalInterface
    private interface Fill {
        void in(Shell shell);
    }

    private static Optional<Shell> shell(String title) {
        return Arrays.stream(Screen.display().getShells()).filter(shell -> shell.isVisible() && shell.getText().equals(title)).findFirst();
    }

    @Test
    void makingAndItsStates() throws IOException, InterruptedException {
        open("first-panel");
        bench(Ids.DRAWING_BENCH);
        MakeSummary[] made = new MakeSummary[1];
        Screen.run(() -> {
            Maker maker = Screen.window().getService(Maker.class);
            Screen.page().showView(Ids.PROGRESS_VIEW);
            new HandedOverJob<>(NLS.bind(Messages.Make_job, desk().commission().orElseThrow().title()), desk(), Screen.display(), Maker.WORK_UNITS,
                    maker::make, summary -> made[0] = summary).begin();
        });
        Thread.sleep(3_000);
        keepWindow("making");
        for (int waited = 0; made[0] == null && waited < 600; waited++) {
            Thread.sleep(1_000); // longer than the screen may take for anything else
        }
        Screen.await("the making to end", () -> made[0] != null && !desk().isMaking());
        Screen.await("the states", () -> !Screen.window().getService(StateBoard.class).states().painted().isEmpty());
        Screen.run(() -> {
            Screen.page().showView(Ids.PROBLEMS_VIEW);
            Screen.page().activate(Screen.page().getActiveEditor());
            EaselCanvas easel = easel().orElseThrow();
            easel.setLook(easel.look().with(Overlay.STATES, true));
        });
        rest();
        keepWindow("states");
        bench(Ids.SCREEN_BENCH);
        Screen.run(() -> {
            Screen.page().activate(Screen.page().getActiveEditor());
            EaselCanvas easel = easel().orElseThrow();
            easel.setLook(easel.look().with(Overlay.STATES, false));
            easel.fit();
            easel.chooseHere(easel.scene().orElseThrow().pieces().stream().filter(piece -> piece.number().equals("6")).findFirst(), false);
        });
        rest();
        keepWindow("dots");
        Screen.run(() -> {
            Screen.page().showView(Ids.RECIPE_VIEW);
            Screen.page().activate(Screen.page().getActiveEditor());
        });
        rest();
        keepWindow("screen-bench");
    }
}
