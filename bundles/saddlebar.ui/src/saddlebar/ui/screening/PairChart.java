package saddlebar.ui.screening;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.PaintEvent;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;

import saddlebar.stencil.mesh.ScoredRuling;
import saddlebar.ui.Messages;

/** The map of rulings and angles on the screen; a click takes a pair. The table beside it gives the same to the keys. */
final class PairChart extends Canvas {
    private static final int LEFT_PT = 44;
    private static final int BELOW_PT = 54;
    private static final int TOP_PT = 20;
    private static final int RIGHT_PT = 10;
    private static final int STEP_DEG = 15;
    private static final int LEGEND_STEPS = 40;

    private List<ScoredRuling> pairs = List.of();
    private Optional<ScoredRuling> now = Optional.empty();

    PairChart(Composite parent, Consumer<ScoredRuling> taken) {
        super(parent, SWT.DOUBLE_BUFFERED);
        addPaintListener(this::paint);
        addListener(SWT.MouseDown, event -> {
            if (event.button == 1) {
                map().under(event.x - LEFT_PT, event.y - TOP_PT).ifPresent(taken);
            }
        });
        addListener(SWT.MouseMove, event -> {
            String words = map().under(event.x - LEFT_PT, event.y - TOP_PT)
                    .map(pair -> NLS.bind(Messages.Mesh_pairScore, ScreeningWords.pair(pair), ScreeningWords.percent(pair.score(), 2))).orElse("");
            if (!words.equals(getToolTipText())) {
                setToolTipText(words);
            }
        });
    }

    void show(List<ScoredRuling> all, Optional<ScoredRuling> recipe) {
        pairs = all;
        now = recipe;
        redraw();
    }

    private PairMap map() {
        Rectangle area = getClientArea();
        return new PairMap(pairs, Math.max(1, area.width - LEFT_PT - RIGHT_PT), Math.max(1, area.height - TOP_PT - BELOW_PT));
    }

    private void paint(PaintEvent event) {
        if (pairs.isEmpty()) {
            return;
        }
        GC gc = event.gc;
        PairMap map = map();
        gc.setForeground(getForeground());
        gc.drawText(Messages.Mesh_axisRuling, 2, 0, true);
        cells(gc, map);
        int lastY = -100;
        int high = gc.getFontMetrics().getHeight();
        for (int row = 0; row < map.rows(); row++) {
            int middle = TOP_PT + (map.y(row) + map.y(row + 1)) / 2 - high / 2;
            if (middle - lastY > high) {
                right(gc, ScreeningWords.number(map.at(0, row).lpi(), 1), LEFT_PT - 4, middle);
                lastY = middle;
            }
        }
        int under = TOP_PT + map.height() + 2;
        for (int column = 0; column < map.columns(); column++) {
            double angle = map.at(column, 0).angleDeg();
            if (angle % STEP_DEG == 0) {
                centre(gc, ScreeningWords.number(angle, 0) + "°", LEFT_PT + (map.x(column) + map.x(column + 1)) / 2, under);
            }
        }
        legend(gc, map, under + high + 2);
        now.ifPresent(recipe -> mark(gc, map, recipe));
    }

    private void cells(GC gc, PairMap map) {
        for (int row = 0; row < map.rows(); row++) {
            for (int column = 0; column < map.columns(); column++) {
                fill(gc, map.rgb(map.at(column, row).score()), LEFT_PT + map.x(column), TOP_PT + map.y(row), map.x(column + 1) - map.x(column),
                        map.y(row + 1) - map.y(row));
            }
        }
    }

    /** Two rings, dark in light, seen on any ground. */
    private void mark(GC gc, PairMap map, ScoredRuling recipe) {
        int[] cell = map.nearest(recipe.lpi(), recipe.angleDeg());
        int x = LEFT_PT + map.x(cell[0]);
        int y = TOP_PT + map.y(cell[1]);
        int width = map.x(cell[0] + 1) - map.x(cell[0]);
        int height = map.y(cell[1] + 1) - map.y(cell[1]);
        gc.setLineWidth(2);
        gc.setForeground(getDisplay().getSystemColor(SWT.COLOR_WHITE));
        gc.drawRectangle(x - 1, y - 1, width + 1, height + 1);
        gc.setForeground(getDisplay().getSystemColor(SWT.COLOR_BLACK));
        gc.drawRectangle(x - 3, y - 3, width + 5, height + 5);
        gc.setLineWidth(1);
        gc.setForeground(getForeground());
    }

    private void legend(GC gc, PairMap map, int y) {
        int high = gc.getFontMetrics().getHeight();
        String least = NLS.bind(Messages.Mesh_less, ScreeningWords.percent(map.least(), 1));
        String most = NLS.bind(Messages.Mesh_more, ScreeningWords.percent(map.most(), 1));
        Point less = gc.textExtent(least);
        Point more = gc.textExtent(most);
        gc.drawText(least, LEFT_PT, y, true);
        int from = LEFT_PT + less.x + 6;
        int wide = Math.max(LEGEND_STEPS, Math.min(160, map.width() - less.x - more.x - 12));
        for (int i = 0; i < LEGEND_STEPS; i++) {
            double score = map.least() * Math.pow(map.most() / map.least(), i / (LEGEND_STEPS - 1.0));
            fill(gc, map.rgb(score), from + wide * i / LEGEND_STEPS, y + 2, wide * (i + 1) / LEGEND_STEPS - wide * i / LEGEND_STEPS, high - 4);
        }
        gc.drawText(most, from + wide + 6, y, true);
    }

    private static void fill(GC gc, int rgb, int x, int y, int width, int height) {
        gc.setBackground(new Color(rgb >> 16 & 0xff, rgb >> 8 & 0xff, rgb & 0xff));
        gc.fillRectangle(x, y, width, height);
    }

    private static void right(GC gc, String words, int x, int y) {
        gc.drawText(words, x - gc.textExtent(words).x, y, true);
    }

    private static void centre(GC gc, String words, int x, int y) {
        gc.drawText(words, x - gc.textExtent(words).x / 2, y, true);
    }
}
