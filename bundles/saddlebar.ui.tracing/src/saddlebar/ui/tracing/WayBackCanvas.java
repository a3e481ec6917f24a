package saddlebar.ui.tracing;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.function.IntConsumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;

/** The way back, drawn: what came first at the left. Arrows go from step to step, Enter asks what else met the chosen one. */
final class WayBackCanvas extends Canvas {
    private static final int WIDTH_PT = 168;
    private static final int HEIGHT_PT = 62;
    private static final int OVER_PT = 40;
    private static final int DOWN_PT = 14;
    private static final int FREE_PT = 10;

    private final IntConsumer onChoose;
    private final DateTimeFormatter day = DateTimeFormatter.ofLocalizedDate(FormatStyle.SHORT).withZone(ZoneId.systemDefault());
    private Trail trail = Trail.NONE;
    private WayBackLayout layout = WayBackLayout.of(Trail.NONE);
    private int chosen = -1;

    WayBackCanvas(Composite parent, IntConsumer onChoose) {
        super(parent, SWT.DOUBLE_BUFFERED);
        this.onChoose = onChoose;
        addListener(SWT.Paint, event -> draw(event.gc));
        addListener(SWT.MouseDown, event -> {
            setFocus();
            at(event.x, event.y);
        });
        addListener(SWT.FocusIn, event -> redraw());
        addListener(SWT.FocusOut, event -> redraw());
        addListener(SWT.Traverse, event -> event.doit = event.detail == SWT.TRAVERSE_TAB_NEXT || event.detail == SWT.TRAVERSE_TAB_PREVIOUS);
        addListener(SWT.KeyDown, event -> key(event.keyCode));
        getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = chosen < 0 ? Messages.WayBack_graph : words(trail.steps().get(chosen));
            }
        });
    }

    private static String words(Trail.Step step) {
        return KindWords.of(step.kind()) + " " + step.place() + " " + step.with();
    }

    void show(Trail shown) {
        if (shown != trail) {
            trail = shown;
            layout = WayBackLayout.of(shown);
            chosen = shown.steps().isEmpty() ? -1 : shown.steps().size() - 1;
            redraw();
        }
    }

    void choose(int step) {
        if (step >= 0 && step < trail.steps().size() && step != chosen) {
            chosen = step;
            redraw();
        }
    }

    /** Room for all of it. */
    Point size() {
        return new Point(2 * FREE_PT + layout.columns() * (WIDTH_PT + OVER_PT) - OVER_PT, 2 * FREE_PT + layout.rows() * (HEIGHT_PT + DOWN_PT) - DOWN_PT);
    }

    private Rectangle box(int step) {
        WayBackLayout.Box box = layout.boxes().get(step);
        return new Rectangle(FREE_PT + box.column() * (WIDTH_PT + OVER_PT), FREE_PT + box.row() * (HEIGHT_PT + DOWN_PT), WIDTH_PT, HEIGHT_PT);
    }

    private void at(int x, int y) {
        for (int i = 0; i < trail.steps().size(); i++) {
            if (box(i).contains(x, y)) {
                choose(i);
                onChoose.accept(i);
                return;
            }
        }
    }

    private void key(int code) {
        if (chosen < 0) {
            return;
        }
        int next = switch (code) {
            case SWT.ARROW_LEFT -> layout.next(chosen, -1, 0);
            case SWT.ARROW_RIGHT -> layout.next(chosen, 1, 0);
            case SWT.ARROW_UP -> layout.next(chosen, 0, -1);
            case SWT.ARROW_DOWN -> layout.next(chosen, 0, 1);
            default -> chosen;
        };
        boolean enter = code == SWT.CR || code == SWT.KEYPAD_CR;
        if (next != chosen || enter) {
            choose(next);
            onChoose.accept(next);
        }
    }

    private void draw(GC gc) {
        gc.setAntialias(SWT.ON);
        Display display = getDisplay();
        gc.setForeground(display.getSystemColor(SWT.COLOR_WIDGET_NORMAL_SHADOW));
        gc.setLineWidth(2);
        for (int[] link : trail.links()) {
            Rectangle later = box(link[0]);
            Rectangle earlier = box(link[1]);
            boolean stacked = later.x == earlier.x;
            int fromX = stacked ? earlier.x + earlier.width / 2 : earlier.x + earlier.width;
            int fromY = stacked ? earlier.y + earlier.height : earlier.y + earlier.height / 2;
            int toX = stacked ? later.x + later.width / 2 : later.x;
            int toY = stacked ? later.y : later.y + later.height / 2;
            gc.drawLine(fromX, fromY, toX, toY);
            gc.drawOval(toX - 3, toY - 3, 6, 6);
        }
        for (int i = 0; i < trail.steps().size(); i++) {
            step(gc, display, i);
        }
    }

    private void step(GC gc, Display display, int at) {
        Trail.Step step = trail.steps().get(at);
        Rectangle box = box(at);
        gc.setBackground(display.getSystemColor(at == chosen ? SWT.COLOR_LIST_SELECTION : SWT.COLOR_LIST_BACKGROUND));
        gc.setForeground(display.getSystemColor(at == chosen ? SWT.COLOR_LIST_SELECTION_TEXT : SWT.COLOR_LIST_FOREGROUND));
        gc.fillRoundRectangle(box.x, box.y, box.width, box.height, 8, 8);
        gc.setLineWidth(step.kind().equals("defect") ? 3 : 1);
        gc.drawRoundRectangle(box.x, box.y, box.width, box.height, 8, 8);
        gc.setClipping(box.x + 4, box.y + 2, box.width - 8, box.height - 4);
        int line = gc.getFontMetrics().getHeight();
        gc.drawText(KindWords.of(step.kind()) + "  " + day.format(step.when()), box.x + 6, box.y + 3, true);
        gc.drawText(step.place().isEmpty() ? step.with() : step.place(), box.x + 6, box.y + 3 + line, true);
        gc.drawText(step.place().isEmpty() ? step.who() : step.with(), box.x + 6, box.y + 3 + 2 * line, true);
        gc.setClipping((Rectangle) null);
        if (at == chosen && isFocusControl()) {
            gc.drawFocus(box.x + 2, box.y + 2, box.width - 4, box.height - 4);
        }
    }
}
