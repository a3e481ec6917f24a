package saddlebar.ui.easel;

import saddlebar.production.light.RectMm;
import saddlebar.production.light.ScenePiece;
import saddlebar.production.light.ColourShelf;
import saddlebar.production.light.EaselScene;
import saddlebar.production.light.EaselPainter;
import saddlebar.production.light.EaselLook;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.SWTException;
import org.eclipse.swt.events.PaintEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;

import saddlebar.model.problem.PlaceMm;
import saddlebar.model.work.Work;

/**
 * The Easel on the screen: shows a scene through a viewport. The glass is painted in squares on threads of its own and put on the screen as
 * squares come; until then what was there before stands in, stretched. Nothing here blocks. All methods are for the screen's thread.
 */
public final class EaselCanvas extends Canvas {
    /** Free room around a window that is fitted, in points. */
    private static final int FREE_PT = 24;
    private static final int BACKDROP_SIDE_PX = 1024;
    private static final long MOST_TILE_BYTES = 96L << 20;
    private static final int PAINTERS = 2;

    private final Display display;
    private final ExecutorService painters;
    private final TileQueue<ScreenPicture> queue;
    private final TileImages tiles = new TileImages(MOST_TILE_BYTES);
    private final SelectionPainter selectionPainter = new SelectionPainter();
    private final RulerPainter rulers = new RulerPainter();
    private final StateLegend legend = new StateLegend();
    private final List<Runnable> viewListeners = new ArrayList<>();
    private final List<Runnable> sceneListeners = new ArrayList<>();
    private final List<Runnable> lookListeners = new ArrayList<>();
    private final List<Consumer<Optional<ScenePiece>>> choiceListeners = new ArrayList<>();
    private final EaselAccess access;

    private Optional<EaselScene> scene = Optional.empty();
    private EaselLook look = EaselLook.withSurround(0x808080);
    private ColourShelf colours = new ColourShelf();
    private EaselPainter painter;
    private Viewport view = new Viewport(0, 0, 1, 1, 1);
    private boolean fitted = true;
    /** Written by the screen's thread alone; painters read it to learn that nobody waits for them. */
    private volatile long edition;
    private TileKey standIn = new TileKey(-1, 1, 0, 0);
    private ScreenTile backdrop;
    private Optional<String> chosenPiece = Optional.empty();
    private Optional<PlaceMm> markedPlace = Optional.empty();
    private Optional<RulerScale.Unit> ruler = Optional.of(RulerScale.Unit.MM);
    private double screenDpi = 96;
    private String message = "";

    public EaselCanvas(Composite parent) {
        super(parent, SWT.DOUBLE_BUFFERED | SWT.NO_BACKGROUND | SWT.NO_REDRAW_RESIZE);
        this.display = getDisplay();
        this.painters = painters();
        this.queue = new TileQueue<>(painters, PAINTERS, (tile, picture) -> inScreenThread(() -> take(tile, picture)),
                (tile, fault) -> inScreenThread(() -> {
                    throw fault; // our own fault: to the screen's one handler, which writes the log
                }));
        this.access = new EaselAccess(this);
        addListener(SWT.Resize, event -> resized());
        addPaintListener(this::paint);
        addListener(SWT.FocusIn, event -> redraw());
        addListener(SWT.FocusOut, event -> redraw());
        addListener(SWT.Dispose, event -> {
            painters.shutdownNow();
            tiles.clear();
            dropBackdrop();
            legend.dispose();
        });
        new EaselGestures(this);
    }

    private static ExecutorService painters() {
        ThreadPoolExecutor pool = new ThreadPoolExecutor(PAINTERS, PAINTERS, 5, TimeUnit.SECONDS, new LinkedBlockingQueue<>(), task -> {
            Thread thread = new Thread(task, "Easel painter");
            thread.setDaemon(true);
            thread.setPriority(Thread.NORM_PRIORITY - 1);
            return thread;
        });
        pool.allowCoreThreadTimeOut(true);
        return pool;
    }

    private void inScreenThread(Runnable task) {
        try {
            display.asyncExec(() -> {
                if (!isDisposed()) {
                    task.run();
                }
            });
        } catch (SWTException e) {
            if (e.code != SWT.ERROR_DEVICE_DISPOSED) { // closed while a square was painted: nobody looks any more
                throw e;
            }
        }
    }

    // ---- what is shown

    public Optional<EaselScene> scene() {
        return scene;
    }

    /** Another window, or the same one as it is now; a window seen whole stays whole, another window is first shown whole. */
    public void show(EaselScene newScene) {
        boolean another = scene.isEmpty() || !scene.get().bounds().equals(newScene.bounds());
        scene = Optional.of(newScene);
        chosenPiece = chosenPiece.filter(id -> newScene.piece(id).isPresent());
        if (another) {
            standIn = new TileKey(-1, 1, 0, 0);
        }
        newEdition();
        if (another || fitted) {
            fit();
        }
        access.changed();
        sceneListeners.forEach(Runnable::run);
    }

    /** Takes the window off. */
    public void clear() {
        scene = Optional.empty();
        chosenPiece = Optional.empty();
        standIn = new TileKey(-1, 1, 0, 0);
        newEdition();
        viewChanged();
        sceneListeners.forEach(Runnable::run);
    }

    /** Called when another scene is shown, or none. */
    public void whenSceneChanges(Runnable listener) {
        sceneListeners.add(listener);
    }

    /** Words shown while there is no window to show: what is going on or what to do next. */
    public void say(String words) {
        message = Objects.requireNonNull(words, "words");
        redraw();
    }

    /** Shares the colours that others have reckoned already. */
    public void setColours(ColourShelf shared) {
        colours = Objects.requireNonNull(shared, "shared");
    }

    public EaselLook look() {
        return look;
    }

    public void setLook(EaselLook newLook) {
        if (!newLook.equals(look)) {
            look = newLook;
            newEdition();
            redraw();
            lookListeners.forEach(Runnable::run);
        }
    }

    /** Called when something else of the scene is shown. */
    public void whenLookChanges(Runnable listener) {
        lookListeners.add(listener);
    }

    public Optional<RulerScale.Unit> ruler() {
        return ruler;
    }

    /** Rulers divided so, or none. */
    public void setRuler(Optional<RulerScale.Unit> unit) {
        if (!unit.equals(ruler)) {
            ruler = unit;
            resized();
            redraw();
        }
    }

    /** Pixels of the screen an inch, at 100 %; decides what true size is. */
    public void setScreenDpi(double dpi) {
        boolean trueSize = isTrueSize();
        screenDpi = dpi;
        if (trueSize) {
            showTrueSize();
        }
    }

    // ---- where the eye stands

    public Viewport view() {
        return view;
    }

    public boolean isTrueSize() {
        return Math.abs(view.ptPerMm() / Viewport.trueSizePtPerMm(screenDpi) - 1) < 1e-9;
    }

    /** How large glass is shown: 1 is true size. */
    public double magnification() {
        return view.ptPerMm() / Viewport.trueSizePtPerMm(screenDpi);
    }

    /** The place in mm that a point of the canvas shows: x, y. */
    public double[] placeMm(int xPt, int yPt) {
        return new double[] {view.xMm(xPt - rulerPt()), view.yMm(yPt - rulerPt())};
    }

    public void fit() {
        scene.ifPresent(shown -> {
            view = Viewport.fitting(shown.bounds(), view.widthPt(), view.heightPt(), FREE_PT);
            fitted = true;
            viewChanged();
        });
    }

    public void showTrueSize() {
        look(view.scaled(Viewport.trueSizePtPerMm(screenDpi)));
    }

    public void zoom(double factor) {
        look(view.scaled(view.ptPerMm() * factor));
    }

    /** Looks at another part; the window cannot be lost out of sight. */
    public void look(Viewport at) {
        view = scene.map(shown -> at.keeping(shown.bounds())).orElse(at);
        fitted = false;
        viewChanged();
    }

    /** Shows a place, marked with a ring until something else is chosen. */
    public void showPlace(double xMm, double yMm) {
        markedPlace = Optional.of(new PlaceMm(xMm, yMm));
        look(view.scaled(Math.max(view.ptPerMm(), Viewport.trueSizePtPerMm(screenDpi))).centredOn(xMm, yMm));
    }

    /** Called whenever another part is looked at. */
    public void whenViewChanges(Runnable listener) {
        viewListeners.add(listener);
    }

    private void viewChanged() {
        redraw();
        viewListeners.forEach(Runnable::run);
    }

    private void resized() {
        Point size = getSize();
        int width = Math.max(1, size.x - rulerPt());
        int height = Math.max(1, size.y - rulerPt());
        view = view.resized(width, height);
        if (fitted) {
            fit();
        } else {
            viewChanged();
        }
    }

    /** Width of a ruler in points, 0 without. */
    int rulerPt() {
        return ruler.isPresent() ? RulerPainter.WIDTH_PT : 0;
    }

    // ---- which piece is chosen

    public Optional<ScenePiece> chosen() {
        return chosenPiece.flatMap(id -> scene.flatMap(shown -> shown.piece(id)));
    }

    /** Chooses a piece, or none, from outside; listeners are not told. */
    public void choose(Optional<String> pieceId, boolean bringIntoView) {
        Optional<String> known = pieceId.filter(id -> scene.flatMap(shown -> shown.piece(id)).isPresent());
        markedPlace = Optional.empty();
        if (!known.equals(chosenPiece)) {
            chosenPiece = known;
            access.chosen();
            redraw();
        }
        if (bringIntoView) {
            chosen().ifPresent(piece -> {
                Viewport moved = view.showing(piece.contour().bounds(), FREE_PT);
                if (!moved.equals(view)) {
                    look(moved);
                }
            });
        }
    }

    /** Called with the piece that was chosen on the Easel, or none. */
    public void whenChosen(Consumer<Optional<ScenePiece>> listener) {
        choiceListeners.add(listener);
    }

    /** Chooses the next piece some way. */
    public void walk(PieceWalk.Way way) {
        scene.flatMap(shown -> new PieceWalk(shown).from(chosen(), way)).ifPresent(piece -> chooseHere(Optional.of(piece), true));
    }

    /** A choice made by the person here, with mouse, keys or a command; listeners are told. */
    public void chooseHere(Optional<ScenePiece> piece, boolean bringIntoView) {
        choose(piece.map(ScenePiece::id), bringIntoView);
        choiceListeners.forEach(listener -> listener.accept(piece));
    }

    // ---- painting

    private void newEdition() {
        edition = edition + 1;
        painter = scene.map(shown -> new EaselPainter(shown, look, colours)).orElse(null);
        if (painter == null || scene.get().isEmpty()) {
            dropBackdrop();
            return;
        }
        long asked = edition;
        EaselPainter current = painter;
        RectMm bounds = scene.get().bounds();
        painters.execute(() -> {
            double pxPerMm = BACKDROP_SIDE_PX / Math.max(1, Math.max(bounds.widthMm(), bounds.heightMm()));
            int width = Math.max(1, (int) Math.ceil(bounds.widthMm() * pxPerMm));
            int height = Math.max(1, (int) Math.ceil(bounds.heightMm() * pxPerMm));
            try {
                ScreenPicture picture = ScreenPicture.of(current.paintGlass(bounds.leftMm(), bounds.topMm(), pxPerMm, width, height,
                        new WhileShown(asked)), 100);
                inScreenThread(() -> takeBackdrop(asked, picture));
            } catch (CancellationException e) {
                return; // another window or another choice is shown by now
            }
        });
    }

    private void takeBackdrop(long asked, ScreenPicture picture) {
        if (asked == edition) {
            dropBackdrop();
            backdrop = new ScreenTile(display, picture);
            redraw();
        }
    }

    private void dropBackdrop() {
        if (backdrop != null) {
            backdrop.dispose();
            backdrop = null;
        }
    }

    private void take(TileKey tile, ScreenPicture picture) {
        tiles.put(tile, new ScreenTile(display, picture));
        if (tile.edition() == edition && tile.ptPerMm() == view.ptPerMm()) {
            TileGrid grid = TileGrid.of(view, edition);
            redraw(rulerPt() + grid.xPt(tile), rulerPt() + grid.yPt(tile), TileKey.SIDE_PT, TileKey.SIDE_PT, false);
        }
    }

    private void paint(PaintEvent event) {
        GC gc = event.gc;
        Rectangle all = getClientArea();
        gc.setBackground(ScreenColours.of(look.surroundRgb()));
        gc.fillRectangle(all);
        int edge = rulerPt();
        if (scene.isEmpty() || scene.get().isEmpty()) {
            selectionPainter.words(gc, all, message, look.surroundRgb());
        } else {
            TileGrid grid = TileGrid.of(view, edition);
            gc.setClipping(edge, edge, all.width - edge, all.height - edge);
            paintGlass(gc, grid, edge);
            chosen().ifPresent(piece -> selectionPainter.paint(gc, piece, grid, edge));
            markedPlace.ifPresent(place -> selectionPainter.ring(gc, place, grid, edge));
            if (look.shows(EaselLook.Overlay.STATES)) {
                legend.paint(gc, all, scene.get(), getMonitor().getZoom());
            }
            gc.setClipping((Rectangle) null);
            if (ruler.isPresent()) {
                rulers.paint(gc, all, view, ruler.get(), chosen());
            }
        }
        if (isFocusControl()) {
            gc.drawFocus(edge, edge, all.width - edge, all.height - edge);
        }
    }

    private void paintGlass(GC gc, TileGrid grid, int edge) {
        List<TileKey> inView = grid.inView();
        List<TileKey> missing = inView.stream().filter(tile -> !tiles.holds(tile)).toList();
        if (!missing.isEmpty()) {
            Rectangle whole = gc.getClipping();
            for (TileKey tile : missing) {
                Rectangle square = new Rectangle(edge + grid.xPt(tile), edge + grid.yPt(tile), TileKey.SIDE_PT, TileKey.SIDE_PT);
                Rectangle visible = square.intersection(whole);
                if (!visible.isEmpty()) {
                    gc.setClipping(visible);
                    paintBackdrop(gc, grid, edge);
                    paintStandIns(gc, grid, edge, visible);
                }
            }
            gc.setClipping(whole);
            EaselPainter current = painter;
            int zoom = getMonitor().getZoom();
            double pxPerPt = zoom / 100.0;
            int sidePx = (int) Math.round(TileKey.SIDE_PT * pxPerPt);
            queue.want(missing, (tile, work) -> ScreenPicture.of(
                    current.paint(tile.leftMm(), tile.topMm(), tile.ptPerMm() * pxPerPt, pxPerPt, sidePx, sidePx, work), zoom));
        } else {
            standIn = inView.get(0);
        }
        for (TileKey tile : inView) {
            Rectangle to = new Rectangle(edge + grid.xPt(tile), edge + grid.yPt(tile), TileKey.SIDE_PT, TileKey.SIDE_PT);
            tiles.get(tile).ifPresent(picture -> picture.draw(gc, to));
        }
    }

    private void paintBackdrop(GC gc, TileGrid grid, int edge) {
        if (backdrop != null) {
            RectMm bounds = scene.get().bounds();
            int left = (int) Math.round(bounds.leftMm() * grid.ptPerMm() - grid.leftPt());
            int top = (int) Math.round(bounds.topMm() * grid.ptPerMm() - grid.topPt());
            int width = (int) Math.round(bounds.widthMm() * grid.ptPerMm());
            int height = (int) Math.round(bounds.heightMm() * grid.ptPerMm());
            backdrop.draw(gc, new Rectangle(edge + left, edge + top, width, height));
        }
    }

    private void paintStandIns(GC gc, TileGrid grid, int edge, Rectangle where) {
        double stretch = grid.ptPerMm() / standIn.ptPerMm();
        if (!(stretch > 1 / 8.0 && stretch < 8)) {
            return;
        }
        for (TileKey tile : tiles.of(standIn.edition(), standIn.ptPerMm())) {
            int left = (int) Math.floor(tile.column() * TileKey.SIDE_PT * stretch - grid.leftPt());
            int top = (int) Math.floor(tile.row() * TileKey.SIDE_PT * stretch - grid.topPt());
            int right = (int) Math.ceil((tile.column() + 1) * TileKey.SIDE_PT * stretch - grid.leftPt());
            int bottom = (int) Math.ceil((tile.row() + 1) * TileKey.SIDE_PT * stretch - grid.topPt());
            if (where.intersects(edge + left, edge + top, right - left, bottom - top)) {
                Rectangle to = new Rectangle(edge + left, edge + top, right - left, bottom - top);
                tiles.get(tile).ifPresent(picture -> picture.draw(gc, to));
            }
        }
    }

    private final class WhileShown implements Work {
        private final long asked;

        WhileShown(long asked) {
            this.asked = asked;
        }

        @Override
        public void advance(long units) {
            // a picture is done or not
        }

        @Override
        public void checkpoint() {
            if (Thread.currentThread().isInterrupted() || asked != edition) {
                throw new CancellationException("something else is shown");
            }
        }
    }
}
