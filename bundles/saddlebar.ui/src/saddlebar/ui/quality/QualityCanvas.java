package saddlebar.ui.quality;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.PaintEvent;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;

import saddlebar.stencil.quality.PatchQuality;
import saddlebar.stencil.quality.QualityRun;
import saddlebar.ui.screening.ScreenWords;
import saddlebar.ui.screening.ScreeningWords;

/**
 * The spectrum of some tones, the tone error of each and the grain of each. Colours: Okabe, M., Ito, K. (2008). Color Universal Design.
 */
final class QualityCanvas extends Canvas {
    private static final double LEAST_DB = -30;
    private static final double MOST_DB = 40;
    private static final double MOST_PER_MM = 8;
    private static final int LEFT_PT = 40;
    private static final int TOP_PT = 20;
    static final List<Double> SHOWN = List.of(0.05, 0.25, 0.5, 0.75, 0.95);
    private static final List<Color> LINES = List.of(new Color(0, 114, 178), new Color(213, 94, 0), new Color(0, 158, 115), new Color(204, 121, 167),
            new Color(86, 180, 233));

    private Optional<QualityRun> run = Optional.empty();

    QualityCanvas(Composite parent) {
        super(parent, SWT.DOUBLE_BUFFERED);
        addPaintListener(this::paint);
        addListener(SWT.Resize, event -> redraw());
    }

    void show(Optional<QualityRun> next) {
        run = next;
        redraw();
    }

    private void paint(PaintEvent event) {
        if (run.isEmpty()) {
            return;
        }
        GC gc = event.gc;
        gc.setAntialias(SWT.ON);
        gc.setForeground(getForeground());
        Rectangle area = getClientArea();
        int high = gc.getFontMetrics().getHeight();
        int half = (area.height - high) / 2;
        spectrum(gc, new Rectangle(LEFT_PT, TOP_PT, area.width - LEFT_PT - 10, Math.max(20, half - TOP_PT - 2 * high)), high);
        int top = half + TOP_PT + high;
        int wide = (area.width - 2 * LEFT_PT - 20) / 2;
        int tall = Math.max(20, area.height - top - high - 4);
        bars(gc, new Rectangle(LEFT_PT, top, wide, tall), high, ScreenWords.Quality_toneError, patch -> 100 * patch.quality().toneError());
        bars(gc, new Rectangle(2 * LEFT_PT + wide + 10, top, wide, tall), high,
                NLS.bind(ScreenWords.Quality_grain, ScreeningWords.number(run.get().distanceM(), 1)), patch -> 100 * patch.quality().grain());
    }

    private void spectrum(GC gc, Rectangle box, int high) {
        gc.drawText(ScreenWords.Quality_power, box.x, box.y - high - 1, true);
        for (double db = LEAST_DB; db <= MOST_DB; db += 10) {
            int y = y(box, db);
            gc.setAlpha(db == 0 ? 255 : 60);
            gc.drawLine(box.x, y, box.x + box.width, y);
            gc.setAlpha(255);
            if (Math.rint(db / 20) * 20 == db) {
                right(gc, ScreeningWords.number(db, 0), box.x - 4, y - high / 2);
            }
        }
        for (int f = 0; f <= MOST_PER_MM; f += 2) {
            gc.drawText(String.valueOf(f), (int) (box.x + f / MOST_PER_MM * box.width) - 3, box.y + box.height + 1, true);
        }
        int x = box.x + box.width / 3;
        int colour = 0;
        for (PatchQuality patch : run.get().patches()) {
            if (SHOWN.contains(patch.asked())) {
                gc.setForeground(LINES.get(colour));
                gc.setLineWidth(2);
                line(gc, box, patch.radial());
                gc.setBackground(LINES.get(colour));
                gc.fillRectangle(x, box.y - high / 2 - 2, 12, 3);
                gc.setForeground(getForeground());
                String words = Math.round(100 * patch.asked()) + " %";
                gc.drawText(words, x + 15, box.y - high - 1, true);
                x += 22 + gc.textExtent(words).x;
                colour = (colour + 1) % LINES.size();
            }
        }
        gc.setLineWidth(1);
    }

    private void line(GC gc, Rectangle box, double[] power) {
        double perRing = run.get().cyclesPerMmARing();
        int rings = (int) Math.min(power.length, MOST_PER_MM / perRing);
        int[] points = new int[2 * rings];
        for (int ring = 0; ring < rings; ring++) {
            points[2 * ring] = (int) (box.x + (ring + 0.5) * perRing / MOST_PER_MM * box.width);
            points[2 * ring + 1] = y(box, 10 * Math.log10(Math.max(1e-12, power[ring])));
        }
        gc.drawPolyline(points);
    }

    private static int y(Rectangle box, double db) {
        double held = Math.max(LEAST_DB, Math.min(MOST_DB, db));
        return box.y + box.height - (int) Math.round((held - LEAST_DB) / (MOST_DB - LEAST_DB) * box.height);
    }

    private void bars(GC gc, Rectangle box, int high, String title, ToDoubleFunction<PatchQuality> measure) {
        List<PatchQuality> patches = run.get().patches();
        double most = Math.max(0.1, patches.stream().mapToDouble(patch -> Math.abs(measure.applyAsDouble(patch))).max().orElse(1));
        boolean signed = patches.stream().anyMatch(patch -> measure.applyAsDouble(patch) < 0);
        int zero = signed ? box.y + box.height / 2 : box.y + box.height;
        double unit = (signed ? box.height / 2.0 : box.height) / most;
        gc.drawText(title, box.x - LEFT_PT + 4, box.y - high - 1, true);
        right(gc, ScreeningWords.number(most, 2), box.x - 3, box.y);
        right(gc, "0", box.x - 3, zero - high / 2);
        gc.drawLine(box.x, zero, box.x + box.width, zero);
        gc.setBackground(LINES.get(0));
        for (PatchQuality patch : patches) {
            int bar = (int) Math.round(measure.applyAsDouble(patch) * unit);
            int x = box.x + (int) Math.round(patch.asked() * (box.width - 5));
            gc.fillRectangle(x, Math.min(zero, zero - bar), 4, Math.max(1, Math.abs(bar)));
        }
    }

    private static void right(GC gc, String words, int x, int y) {
        gc.drawText(words, x - gc.textExtent(words).x, y, true);
    }
}
