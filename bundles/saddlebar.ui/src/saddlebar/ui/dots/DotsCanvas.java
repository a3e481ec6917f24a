package saddlebar.ui.dots;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.events.PaintEvent;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;

import saddlebar.ui.easel.ScreenPicture;

/** The magnifier over a stencil's dots: wheel and + - come nearer and go farther, dragging and the arrow keys move. */
final class DotsCanvas extends Canvas {
    private static final double NEAREST = 32;
    private static final double FARTHEST = 1 / 32.0;
    private static final double AT_FIRST = 4;
    private static final int STEP_PT = 40;

    private final List<Runnable> listeners = new ArrayList<>();
    private Optional<StencilBits> bits = Optional.empty();
    private Optional<MeshLines> mesh = Optional.empty();
    private Optional<float[]> print = Optional.empty();
    private String words = "";
    private double left;
    private double top;
    private double zoom = AT_FIRST;
    private Point grabbed;

    DotsCanvas(Composite parent) {
        super(parent, SWT.DOUBLE_BUFFERED | SWT.NO_BACKGROUND);
        addPaintListener(this::paint);
        addListener(SWT.Resize, event -> redraw());
        addListener(SWT.MouseDown, event -> {
            setFocus();
            grabbed = new Point(event.x, event.y);
        });
        addListener(SWT.MouseUp, event -> grabbed = null);
        addListener(SWT.MouseMove, event -> {
            if (grabbed != null) {
                move((grabbed.x - event.x) / zoom, (grabbed.y - event.y) / zoom);
                grabbed = new Point(event.x, event.y);
            }
        });
        addListener(SWT.MouseVerticalWheel, event -> zoomAt(event.count > 0 ? 2 : 0.5, event.x, event.y));
        addListener(SWT.KeyDown, this::key);
        addListener(SWT.Traverse, event -> event.doit = event.detail != SWT.TRAVERSE_ARROW_NEXT && event.detail != SWT.TRAVERSE_ARROW_PREVIOUS);
    }

    /** Another stencil, first seen about a place of it; or words where there is none. */
    void show(Optional<StencilBits> stencil, int[] placePx, String otherwise) {
        bits = stencil;
        words = otherwise;
        print = Optional.empty();
        zoom = AT_FIRST;
        stencil.ifPresent(shown -> {
            Rectangle area = getClientArea();
            left = placePx[0] - area.width / 2.0 / zoom;
            top = placePx[1] - area.height / 2.0 / zoom;
        });
        changed();
    }

    /** Other bits at the magnification that there is: of the same size in the same place, else about a place. */
    void replace(StencilBits other, int[] placePx) {
        boolean same = bits.filter(before -> before.widthPx() == other.widthPx() && before.heightPx() == other.heightPx()
                && before.pxPerMm() == other.pxPerMm()).isPresent();
        bits = Optional.of(other);
        print = Optional.empty();
        if (!same) {
            Rectangle area = getClientArea();
            left = placePx[0] - area.width / 2.0 / zoom;
            top = placePx[1] - area.height / 2.0 / zoom;
        }
        changed();
    }

    /** Device pixel in the middle. */
    int[] middlePx() {
        Rectangle area = getClientArea();
        return new int[] {(int) Math.round(left + area.width / 2.0 / zoom), (int) Math.round(top + area.height / 2.0 / zoom)};
    }

    /** The print foretold instead of the dots: share covered of each px of what is shown. */
    void setPrint(Optional<float[]> covered) {
        print = covered.filter(shares -> bits.isPresent() && shares.length == bits.get().widthPx() * bits.get().heightPx());
        changed();
    }

    /** Another place in the middle. */
    void lookAt(double px, double py) {
        Rectangle area = getClientArea();
        left = px - area.width / 2.0 / zoom;
        top = py - area.height / 2.0 / zoom;
        move(0, 0);
    }

    /** What is shown, if anything. */
    Optional<StencilBits> bits() {
        return bits;
    }

    void setMesh(Optional<MeshLines> lines) {
        mesh = lines;
        changed();
    }

    /** Called when another part is seen. */
    void whenViewChanges(Runnable listener) {
        listeners.add(listener);
    }

    /** Screen pixels a device pixel. */
    double zoom() {
        return zoom;
    }

    /** Share of black in what is seen. */
    double shareInView() {
        Rectangle area = getClientArea();
        return bits.map(shown -> shown.share((int) left, (int) top, (int) (area.width / zoom), (int) (area.height / zoom))).orElse(0.0);
    }

    private void key(Event event) {
        Rectangle area = getClientArea();
        switch (event.keyCode) {
            case SWT.ARROW_LEFT -> move(-STEP_PT / zoom, 0);
            case SWT.ARROW_RIGHT -> move(STEP_PT / zoom, 0);
            case SWT.ARROW_UP -> move(0, -STEP_PT / zoom);
            case SWT.ARROW_DOWN -> move(0, STEP_PT / zoom);
            default -> {
                if (event.character == '+' || event.character == '=') {
                    zoomAt(2, area.width / 2, area.height / 2);
                } else if (event.character == '-') {
                    zoomAt(0.5, area.width / 2, area.height / 2);
                }
            }
        }
    }

    /** In device pixels; the stencil cannot be lost out of sight. */
    private void move(double dx, double dy) {
        bits.ifPresent(shown -> {
            Rectangle area = getClientArea();
            left = Math.max(-area.width / zoom / 2, Math.min(shown.widthPx() - area.width / zoom / 2, left + dx));
            top = Math.max(-area.height / zoom / 2, Math.min(shown.heightPx() - area.height / zoom / 2, top + dy));
            changed();
        });
    }

    private void zoomAt(double factor, int xPt, int yPt) {
        double next = Math.max(FARTHEST, Math.min(NEAREST, zoom * factor));
        double px = left + xPt / zoom;
        double py = top + yPt / zoom;
        zoom = next;
        left = px - xPt / zoom;
        top = py - yPt / zoom;
        move(0, 0);
    }

    private void changed() {
        redraw();
        listeners.forEach(Runnable::run);
    }

    private void paint(PaintEvent event) {
        Rectangle area = getClientArea();
        if (bits.isEmpty()) {
            event.gc.setBackground(getParent().getBackground());
            event.gc.fillRectangle(area);
            event.gc.setForeground(getParent().getForeground());
            event.gc.drawText(words, 8, 8, SWT.DRAW_TRANSPARENT | SWT.DRAW_DELIMITER);
            return;
        }
        Image image = ScreenPicture.of(new DotsPainter(bits.get(), mesh, print).paint(left, top, zoom, Math.max(1, area.width), Math.max(1, area.height)), 100)
                .toImage(getDisplay());
        event.gc.drawImage(image, 0, 0);
        image.dispose();
        if (isFocusControl()) {
            event.gc.drawFocus(0, 0, area.width, area.height);
        }
    }
}
