package saddlebar.ui.kiln;

import java.util.Optional;

import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.PaintEvent;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.FontData;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Path;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.graphics.Transform;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;

import saddlebar.kiln.chart.ChartDrawing;
import saddlebar.kiln.chart.FiringChart;
import saddlebar.kiln.chart.Ink;
import saddlebar.kiln.chart.Mark;

/** A firing's chart on the screen, from the same description as its files; in the theme's colours. Resting the pointer reads the chart at that time. */
final class ChartCanvas extends Canvas {
    private static final int LEAST_HEIGHT = 300;
    private static final int LEAST_WIDTH = 260;
    private static final double SIZE_OF_LETTERS = 0.78;
    private static final int DARK = 128;

    private Optional<KilnStudy> study = Optional.empty();
    private Optional<ChartDrawing> drawing = Optional.empty();
    private Point drawnFor = new Point(0, 0);

    ChartCanvas(Composite parent) {
        super(parent, SWT.DOUBLE_BUFFERED);
        addPaintListener(this::paint);
        addListener(SWT.MouseMove, event -> {
            String words = drawing.flatMap(chart -> chart.plots().stream().filter(plot -> plot.holds(event.x / scale(), event.y / scale())).findFirst()
                    .map(plot -> reading(plot.hoursAt(event.x / scale())))).orElse("");
            if (!words.equals(getToolTipText() == null ? "" : getToolTipText())) {
                setToolTipText(words.isEmpty() ? null : words);
            }
        });
    }

    void show(Optional<KilnStudy> shown) {
        if (!shown.equals(study)) {
            study = shown;
            drawing = Optional.empty();
            redraw();
        }
    }

    /** The chart's letters are made for paper; on the screen they are as large as the workbench's. */
    private double scale() {
        return SIZE_OF_LETTERS * getFont().getFontData()[0].getHeight() / 10.0 * getDisplay().getDPI().y / 96.0 * 1.15;
    }

    private String reading(double hours) {
        double s = hours * 3600;
        return study.map(shown -> NLS.bind(Messages.Chart_reading, new Object[] {KilnWords.number(hours, 1),
                KilnWords.number(shown.ask().schedule().asWritten().at(s), 0), KilnWords.number(shown.firing().kilnCurve().at(s), 0),
                KilnWords.number(shown.firing().coreCurve().at(s), 0)})).orElse("");
    }

    private void paint(PaintEvent event) {
        Rectangle area = getClientArea();
        event.gc.setAntialias(SWT.ON);
        event.gc.setTextAntialias(SWT.ON);
        if (study.isEmpty() || area.width < LEAST_WIDTH / 2) {
            return;
        }
        double scale = scale();
        Point size = new Point((int) Math.max(LEAST_WIDTH, area.width / scale), (int) Math.max(LEAST_HEIGHT, area.height / scale));
        if (drawing.isEmpty() || !size.equals(drawnFor)) {
            drawing = Optional.of(FiringChart.drawing(study.get().firing(), study.get().ask().log(), KilnWords.chart(), size.x, size.y));
            drawnFor = size;
        }
        Transform whole = new Transform(event.gc.getDevice());
        try {
            whole.scale((float) scale, (float) scale);
            event.gc.setTransform(whole);
            drawing.get().marks().forEach(mark -> draw(event.gc, mark, scale));
        } finally {
            event.gc.setTransform(null);
            whole.dispose();
        }
    }

    private void draw(GC gc, Mark mark, double scale) {
        if (mark instanceof Mark.Box box) {
            gc.setBackground(colour(box.fill()));
            gc.fillRectangle((int) box.x(), (int) box.y(), (int) Math.ceil(box.width()), (int) Math.ceil(box.height()));
        } else if (mark instanceof Mark.Rule rule) {
            take(gc, rule.ink());
            path(gc, new double[] {rule.x1(), rule.y1(), rule.x2(), rule.y2()});
        } else if (mark instanceof Mark.Curve curve) {
            take(gc, curve.ink());
            path(gc, curve.xy());
        } else if (mark instanceof Mark.Words words) {
            words(gc, words, scale);
        }
    }

    private static void path(GC gc, double[] xy) {
        Path path = new Path(gc.getDevice());
        try {
            path.moveTo((float) xy[0], (float) xy[1]);
            for (int i = 2; i < xy.length; i += 2) {
                path.lineTo((float) xy[i], (float) xy[i + 1]);
            }
            gc.drawPath(path);
        } finally {
            path.dispose();
        }
    }

    private void take(GC gc, Ink ink) {
        gc.setForeground(colour(ink));
        gc.setLineWidth((int) Math.max(1, Math.round(ink.widthPt())));
        gc.setLineJoin(SWT.JOIN_ROUND);
        float[] dash = ink.dash();
        if (dash.length == 0) {
            gc.setLineStyle(SWT.LINE_SOLID);
        } else {
            int[] whole = new int[dash.length];
            for (int i = 0; i < dash.length; i++) {
                whole[i] = Math.max(1, Math.round(dash[i]));
            }
            gc.setLineDash(whole);
        }
    }

    private void words(GC gc, Mark.Words words, double scale) {
        FontData data = getFont().getFontData()[0];
        double pxPerPt = getDisplay().getDPI().y / 72.0;
        Font font = new Font(gc.getDevice(), data.getName(), (int) Math.max(6, Math.round(words.sizePt() / pxPerPt)), words.bold() ? SWT.BOLD : SWT.NORMAL);
        Transform before = new Transform(gc.getDevice());
        Transform here = new Transform(gc.getDevice());
        try {
            gc.setFont(font);
            gc.setForeground(colour(Ink.TEXT));
            Point size = gc.textExtent(words.text());
            int back = switch (words.anchor()) {
                case START -> 0;
                case MIDDLE -> size.x / 2;
                case END -> size.x;
            };
            int ascent = gc.getFontMetrics().getAscent() + gc.getFontMetrics().getLeading();
            here.scale((float) scale, (float) scale);
            here.translate((float) words.x(), (float) words.y());
            if (words.upwards()) {
                here.rotate(-90);
            }
            gc.getTransform(before);
            gc.setTransform(here);
            gc.drawText(words.text(), -back, -ascent, SWT.DRAW_TRANSPARENT);
            gc.setTransform(before);
        } finally {
            gc.setFont(getFont());
            here.dispose();
            before.dispose();
            font.dispose();
        }
    }

    /** On a dark ground, paper and writing take the theme's colours, and the grid lies between them. */
    private Color colour(Ink ink) {
        Color ground = getBackground();
        boolean dark = (ground.getRed() + ground.getGreen() + ground.getBlue()) / 3 < DARK;
        if (ink == Ink.PAPER) {
            return ground;
        }
        if (ink.plain()) {
            return getForeground();
        }
        int rgb = dark && ink == Ink.GRID ? 0x4a4a4a : dark && ink == Ink.CORE || dark && ink == Ink.LAG ? 0x56B4E9 : ink.rgb();
        return new Color(rgb >> 16 & 0xff, rgb >> 8 & 0xff, rgb & 0xff);
    }
}
