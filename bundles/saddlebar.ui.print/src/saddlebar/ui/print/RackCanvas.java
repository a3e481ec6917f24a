package saddlebar.ui.print;

import java.util.List;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;

import saddlebar.production.trace.ScreenRack;

/** Frames hanging from a rail, each as large beside the others as it is. What is fused to one is hatched; words say what it is. Arrows go along the rail. */
final class RackCanvas extends Canvas {
    private static final int CELL_PT = 104;
    private static final int LARGEST_PT = 74;
    private static final int FREE_PT = 10;

    private final Consumer<ScreenRack.Frame> onChoose;
    private List<ScreenRack.Frame> frames = List.of();
    private int chosen = -1;

    RackCanvas(Composite parent, Consumer<ScreenRack.Frame> onChoose) {
        super(parent, SWT.DOUBLE_BUFFERED);
        this.onChoose = onChoose;
        addListener(SWT.Paint, event -> draw(event.gc));
        addListener(SWT.Resize, event -> redraw());
        addListener(SWT.FocusIn, event -> redraw());
        addListener(SWT.FocusOut, event -> redraw());
        addListener(SWT.Traverse, event -> event.doit = event.detail == SWT.TRAVERSE_TAB_NEXT || event.detail == SWT.TRAVERSE_TAB_PREVIOUS);
        addListener(SWT.MouseDown, event -> {
            setFocus();
            int at = event.y / (CELL_PT + 2 * FREE_PT) * columns() + event.x / CELL_PT;
            pick(event.x / CELL_PT < columns() ? at : -1);
        });
        addListener(SWT.KeyDown, event -> {
            switch (event.keyCode) {
                case SWT.ARROW_RIGHT -> pick(chosen + 1);
                case SWT.ARROW_LEFT -> pick(chosen - 1);
                case SWT.ARROW_DOWN -> pick(chosen + columns());
                case SWT.ARROW_UP -> pick(chosen - columns());
                default -> {
                    // other keys are not ours
                }
            }
        });
        getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = chosen < 0
                        ? Messages.Rack_graph
                        : frames.get(chosen).name() + " " + words(frames.get(chosen).state()) + " " + frames.get(chosen).carries();
            }
        });
    }

    static String words(ScreenRack.State state) {
        return switch (state) {
            case EMPTY -> Messages.State_empty;
            case LOADED -> Messages.State_loaded;
            case TO_RECLAIM -> Messages.State_toReclaim;
            case OUT_OF_USE -> Messages.State_outOfUse;
            case NOT_OF_STUDIO -> Messages.State_notOfStudio;
        };
    }

    private int columns() {
        return Math.max(1, getClientArea().width / CELL_PT);
    }

    private void pick(int at) {
        if (at >= 0 && at < frames.size() && at != chosen) {
            chosen = at;
            redraw();
            onChoose.accept(frames.get(at));
        }
    }

    void show(List<ScreenRack.Frame> shown) {
        frames = shown;
        chosen = chosen < shown.size() ? chosen : -1;
        redraw();
    }

    void choose(ScreenRack.Frame frame) {
        chosen = frames.indexOf(frame);
        redraw();
    }

    private void draw(GC gc) {
        Display display = getDisplay();
        double largest = frames.stream().mapToDouble(frame -> Math.max(frame.widthMm(), frame.heightMm())).max().orElse(1);
        for (int i = 0; i < frames.size(); i++) {
            int x = i % columns() * CELL_PT;
            int y = i / columns() * (CELL_PT + 2 * FREE_PT);
            if (y > getClientArea().height) {
                break;
            }
            gc.setForeground(display.getSystemColor(SWT.COLOR_WIDGET_FOREGROUND));
            gc.setLineWidth(3);
            gc.drawLine(x, y + 4, x + CELL_PT, y + 4);
            frame(gc, display, frames.get(i), x, y + 4, largest, i == chosen);
        }
    }

    private void frame(GC gc, Display display, ScreenRack.Frame frame, int x, int y, double largest, boolean isChosen) {
        int width = (int) Math.max(20, frame.widthMm() / largest * LARGEST_PT);
        int height = (int) Math.max(20, frame.heightMm() / largest * LARGEST_PT);
        Rectangle box = new Rectangle(x + (CELL_PT - width) / 2, y + 8, width, height);
        gc.setLineWidth(1);
        gc.drawLine(x + CELL_PT / 2, y, x + CELL_PT / 2, box.y);
        gc.setBackground(display.getSystemColor(isChosen ? SWT.COLOR_LIST_SELECTION : SWT.COLOR_LIST_BACKGROUND));
        gc.setForeground(display.getSystemColor(isChosen ? SWT.COLOR_LIST_SELECTION_TEXT : SWT.COLOR_LIST_FOREGROUND));
        gc.fillRectangle(box);
        if (frame.state() == ScreenRack.State.LOADED || frame.state() == ScreenRack.State.TO_RECLAIM) {
            gc.setClipping(box);
            int step = frame.state() == ScreenRack.State.LOADED ? 6 : 12;
            for (int at = -height; at < width; at += step) {
                gc.drawLine(box.x + at, box.y + height, box.x + at + height, box.y);
            }
            gc.setClipping((Rectangle) null);
        }
        gc.setForeground(display.getSystemColor(SWT.COLOR_WIDGET_FOREGROUND));
        gc.setLineWidth(2);
        gc.drawRectangle(box);
        if (isChosen && isFocusControl()) {
            gc.drawFocus(box.x + 3, box.y + 3, box.width - 6, box.height - 6);
        }
        int line = gc.getFontMetrics().getHeight();
        gc.setClipping(x, y, CELL_PT, CELL_PT + 2 * FREE_PT);
        centred(gc, frame.name(), x, y + 10 + LARGEST_PT);
        centred(gc, words(frame.state()), x, y + 8 + LARGEST_PT + line);
        gc.setClipping((Rectangle) null);
    }

    private static void centred(GC gc, String text, int x, int y) {
        gc.drawText(text, x + Math.max(0, (CELL_PT - gc.textExtent(text).x) / 2), y, true);
    }
}
