package saddlebar.ui.tone;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.DoubleUnaryOperator;

import org.eclipse.swt.SWT;
import org.eclipse.swt.events.PaintEvent;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;

import saddlebar.stencil.tone.Calibration;
import saddlebar.stencil.tone.DrawnCurve;
import saddlebar.stencil.tone.WedgeReading;
import saddlebar.ui.screening.ScreenWords;

/**
 * Tone as curves: what was measured, what is screened for a wanted tone, the curve drawn by hand with its points to be dragged, and below the grays
 * of the layer with the range that is stretched. A click beside the points adds one, Delete takes the chosen one away, arrows move it. Colours:
 * Okabe, M., Ito, K. (2008). Color Universal Design.
 */
final class CurveCanvas extends Canvas {
    private static final int LEFT_PT = 46;
    private static final int TOP_PT = 22;
    private static final int RIGHT_PT = 14;
    private static final int GRAYS_PT = 52;
    private static final int BELOW_PT = 24;
    private static final int HANDLE_PT = 5;
    private static final double REACH = 0.04;
    private static final double STEP = 0.01;
    private static final Color MEASURED = new Color(0, 114, 178);
    private static final Color SCREENED = new Color(0, 158, 115);
    private static final Color DRAWN = new Color(213, 94, 0);

    private final Consumer<CurvePoints> taken;
    private ToneShown shown = ToneShown.NOTHING;
    private Optional<Integer> chosen = Optional.empty();
    private boolean editable;
    private boolean dragging;
    private int downX;
    private int downY;

    /** @param taken a curve as it was left after a drag or a key */
    CurveCanvas(Composite parent, Consumer<CurvePoints> taken) {
        super(parent, SWT.DOUBLE_BUFFERED);
        this.taken = taken;
        addPaintListener(this::paint);
        addListener(SWT.MouseDown, this::down);
        addListener(SWT.MouseMove, event -> {
            if (dragging && chosen.isPresent()) {
                shown = shown.with(shown.curve().moved(chosen.get(), x(event.x), y(event.y)));
                redraw();
            }
        });
        addListener(SWT.MouseUp, event -> {
            if (dragging) {
                dragging = false;
                boolean moved = Math.hypot(event.x - downX, event.y - downY) > HANDLE_PT; // a quick hand may tell of no move in between
                if (moved && chosen.isPresent()) {
                    shown = shown.with(shown.curve().moved(chosen.get(), x(event.x), y(event.y)));
                    redraw();
                }
                taken.accept(shown.curve());
            }
        });
        addListener(SWT.KeyDown, this::key);
        addListener(SWT.FocusIn, event -> redraw());
        addListener(SWT.FocusOut, event -> redraw());
        addListener(SWT.Traverse, event -> event.doit = event.detail != SWT.TRAVERSE_ARROW_NEXT && event.detail != SWT.TRAVERSE_ARROW_PREVIOUS);
    }

    void show(ToneShown next, boolean mayEdit) {
        if (!dragging) {
            shown = next;
            editable = mayEdit;
            chosen = chosen.filter(index -> index < next.curve().points().size());
            redraw();
        }
    }

    private void down(Event event) {
        setFocus();
        if (!editable || event.button != 1) {
            return;
        }
        double x = x(event.x);
        double y = y(event.y);
        chosen = shown.curve().near(x, y, REACH);
        if (chosen.isEmpty() && x > 0 && x < 1 && y >= 0 && y <= 1) {
            shown = shown.with(shown.curve().added(x, y));
            chosen = shown.curve().near(x, y, REACH);
        }
        dragging = chosen.isPresent();
        downX = event.x;
        downY = event.y;
        redraw();
    }

    private void key(Event event) {
        if (!editable) {
            return;
        }
        int last = shown.curve().points().size() - 1;
        if (event.character == SWT.DEL && chosen.isPresent()) {
            take(shown.curve().removed(chosen.get()));
        } else if (event.keyCode == SWT.PAGE_DOWN || event.keyCode == SWT.PAGE_UP) {
            int by = event.keyCode == SWT.PAGE_DOWN ? 1 : -1;
            chosen = Optional.of(Math.max(0, Math.min(last, chosen.orElse(by > 0 ? -1 : last + 1) + by)));
            redraw();
        } else if (chosen.isPresent()) {
            double dx = event.keyCode == SWT.ARROW_RIGHT ? STEP : event.keyCode == SWT.ARROW_LEFT ? -STEP : 0;
            double dy = event.keyCode == SWT.ARROW_UP ? STEP : event.keyCode == SWT.ARROW_DOWN ? -STEP : 0;
            if (dx != 0 || dy != 0) {
                DrawnCurve.Point point = shown.curve().points().get(chosen.get());
                take(shown.curve().moved(chosen.get(), point.wanted() + dx, point.screened() + dy));
            }
        }
    }

    private void take(CurvePoints next) {
        shown = shown.with(next);
        chosen = chosen.filter(index -> index < next.points().size());
        redraw();
        taken.accept(next);
    }

    private Rectangle box() {
        Rectangle area = getClientArea();
        return new Rectangle(LEFT_PT, TOP_PT, Math.max(10, area.width - LEFT_PT - RIGHT_PT), Math.max(10, area.height - TOP_PT - GRAYS_PT - 2 * BELOW_PT));
    }

    private double x(int px) {
        return (px - box().x) / (double) box().width;
    }

    private double y(int py) {
        return 1 - (py - box().y) / (double) box().height;
    }

    private void paint(PaintEvent event) {
        GC gc = event.gc;
        gc.setAntialias(SWT.ON);
        Rectangle box = box();
        grid(gc, box);
        gc.setLineWidth(2);
        shown.calibration().ifPresent(found -> curves(gc, box, found));
        gc.setForeground(MEASURED);
        gc.setBackground(MEASURED);
        for (WedgeReading reading : shown.readings()) {
            gc.fillOval(px(box, reading.nominal()) - 3, py(box, reading.effective()) - 3, 7, 7);
        }
        DrawnCurve drawn = DrawnCurve.through(shown.curve().points());
        curve(gc, box, DRAWN, drawn::toScreen);
        handles(gc, box);
        gc.setLineWidth(1);
        grays(gc, new Rectangle(box.x, box.y + box.height + BELOW_PT, box.width, GRAYS_PT));
        if (isFocusControl()) {
            Rectangle area = getClientArea();
            gc.drawFocus(0, 0, area.width, area.height);
        }
    }

    private void curves(GC gc, Rectangle box, Calibration calibration) {
        curve(gc, box, MEASURED, calibration::printed);
        curve(gc, box, SCREENED, calibration::toScreen);
    }

    private void handles(GC gc, Rectangle box) {
        for (int i = 0; i < shown.curve().points().size(); i++) {
            DrawnCurve.Point point = shown.curve().points().get(i);
            int x = px(box, point.wanted()) - HANDLE_PT;
            int y = py(box, point.screened()) - HANDLE_PT;
            gc.setBackground(chosen.isPresent() && chosen.get() == i ? DRAWN : getBackground());
            gc.fillRectangle(x, y, 2 * HANDLE_PT, 2 * HANDLE_PT);
            gc.setForeground(DRAWN);
            gc.drawRectangle(x, y, 2 * HANDLE_PT, 2 * HANDLE_PT);
        }
    }

    private void grid(GC gc, Rectangle box) {
        gc.setForeground(getForeground());
        gc.setAlpha(60);
        for (int i = 0; i <= 4; i++) {
            gc.drawLine(box.x + box.width * i / 4, box.y, box.x + box.width * i / 4, box.y + box.height);
            gc.drawLine(box.x, box.y + box.height * i / 4, box.x + box.width, box.y + box.height * i / 4);
        }
        gc.drawLine(box.x, box.y + box.height, box.x + box.width, box.y);
        band(gc, box, 0, shown.least());
        band(gc, box, shown.most(), 1);
        gc.setAlpha(255);
        for (int i = 0; i <= 4; i += 2) {
            String words = 25 * i + " %";
            int half = gc.textExtent(words).x / 2;
            gc.drawText(words, box.x + box.width * i / 4 - (i == 0 ? 0 : i == 4 ? 2 * half : half), box.y + box.height + 3, true);
            gc.drawText(words, box.x - 2 * half - 4, box.y + box.height - box.height * i / 4 - gc.getFontMetrics().getHeight() / 2, true);
        }
        int x = 4;
        x = key(gc, x, DRAWN, ScreenWords.Tone_keyDrawn);
        if (shown.calibration().isPresent()) {
            x = key(gc, x, MEASURED, ScreenWords.Tone_keyMeasured);
            key(gc, x, SCREENED, ScreenWords.Tone_keyScreened);
        }
    }

    private int key(GC gc, int x, Color colour, String words) {
        gc.setBackground(colour);
        gc.fillRectangle(x, 8, 14, 3);
        gc.drawText(words, x + 18, 1, true);
        return x + 30 + gc.textExtent(words).x;
    }

    /** Tones that do not hold. */
    private void band(GC gc, Rectangle box, double from, double to) {
        if (to > from) {
            gc.setBackground(getForeground());
            int top = py(box, to);
            gc.fillRectangle(box.x, top, box.width, py(box, from) - top);
        }
    }

    private static void curve(GC gc, Rectangle box, Color colour, DoubleUnaryOperator curve) {
        gc.setForeground(colour);
        int steps = Math.max(20, box.width / 3);
        int[] line = new int[2 * (steps + 1)];
        for (int i = 0; i <= steps; i++) {
            double at = i / (double) steps;
            line[2 * i] = px(box, at);
            line[2 * i + 1] = py(box, curve.applyAsDouble(at));
        }
        gc.drawPolyline(line);
    }

    private void grays(GC gc, Rectangle box) {
        gc.setForeground(getForeground());
        double[] bins = shown.bins();
        for (int i = 0; i < bins.length; i++) {
            int high = (int) Math.round(Math.sqrt(bins[i]) * box.height); // rare grays must be seen too
            int level = 255 - 255 * i / bins.length;
            gc.setBackground(new Color(level, level, level));
            int from = box.x + box.width * i / bins.length;
            int wide = box.x + box.width * (i + 1) / bins.length - from;
            gc.fillRectangle(from, box.y + box.height - high, wide, high);
            if (high > 0) {
                gc.setAlpha(90);
                gc.drawRectangle(from, box.y + box.height - high, wide, high);
                gc.setAlpha(255);
            }
        }
        gc.drawLine(box.x, box.y + box.height, box.x + box.width, box.y + box.height);
        gc.drawText(ScreenWords.Tone_grays, box.x, box.y + box.height + 3, true);
        shown.stretch().ifPresent(found -> {
            gc.setForeground(DRAWN);
            gc.setLineWidth(2);
            for (double at : new double[] {found.from(), found.to()}) {
                int x = box.x + (int) Math.round(at * box.width);
                gc.drawLine(x, box.y, x, box.y + box.height);
            }
            gc.setLineWidth(1);
        });
    }

    private static int px(Rectangle box, double share) {
        return box.x + (int) Math.round(share * box.width);
    }

    private static int py(Rectangle box, double share) {
        return box.y + box.height - (int) Math.round(share * box.height);
    }
}
