package saddlebar.ui.kiln;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.PaintEvent;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;

import saddlebar.kiln.shelf.ShelfLoad;
import saddlebar.kiln.shelf.ShelfPlaces;

/** The shelf from above, its door side below: what lies where, and which of its nine places are hot or cold, by words and by hatching. */
final class ShelfCanvas extends Canvas {
    private static final int MARGIN = 10;
    private static final int THIRDS = 3;
    private static final int HATCH = 8;

    private Optional<ShelfPlan> plan = Optional.empty();
    private Map<String, ShelfPlaces.Place> places = Map.of();

    ShelfCanvas(Composite parent) {
        super(parent, SWT.DOUBLE_BUFFERED);
        addPaintListener(this::paint);
    }

    void show(Optional<ShelfPlan> shown, List<ShelfPlaces.Place> told) {
        plan = shown;
        places = new TreeMap<>();
        told.forEach(place -> places.put(place.name(), place));
        redraw();
    }

    private void paint(PaintEvent event) {
        if (plan.isEmpty()) {
            return;
        }
        GC gc = event.gc;
        gc.setAntialias(SWT.ON);
        ShelfLoad load = plan.get().load();
        Rectangle area = getClientArea();
        int foot = gc.getFontMetrics().getHeight() + 4;
        double scale = Math.min((area.width - 2.0 * MARGIN) / load.widthMm(), (area.height - 2.0 * MARGIN - foot) / load.depthMm());
        if (scale <= 0) {
            return;
        }
        int width = (int) Math.round(load.widthMm() * scale);
        int height = (int) Math.round(load.depthMm() * scale);
        int left = (area.width - width) / 2;
        int bottom = MARGIN + height;
        gc.setForeground(getForeground());
        for (int row = 0; row < THIRDS; row++) {
            for (int column = 0; column < THIRDS; column++) {
                place(gc, new Rectangle(left + width * column / THIRDS, bottom - height * (row + 1) / THIRDS, width / THIRDS, height / THIRDS),
                        (char) ('A' + row) + String.valueOf(column + 1));
            }
        }
        gc.setLineStyle(SWT.LINE_SOLID);
        gc.setLineWidth(2);
        gc.setForeground(getForeground());
        gc.drawRectangle(left, MARGIN, width, height);
        gc.setLineWidth(1);
        for (ShelfLoad.Lay lay : load.lays()) {
            piece(gc, lay, new Rectangle((int) (left + lay.xMm() * scale), (int) (bottom - (lay.yMm() + lay.heightMm()) * scale),
                    (int) Math.max(3, lay.widthMm() * scale), (int) Math.max(3, lay.heightMm() * scale)));
        }
        String front = NLS.bind(Messages.Shelf_front, KilnWords.number(load.widthMm(), 0), KilnWords.number(load.depthMm(), 0));
        gc.drawText(front, (area.width - gc.textExtent(front).x) / 2, bottom + 3, true);
    }

    private void place(GC gc, Rectangle box, String name) {
        ShelfPlaces.Place told = places.get(name);
        gc.setForeground(getDisplay().getSystemColor(SWT.COLOR_WIDGET_NORMAL_SHADOW));
        gc.setLineStyle(SWT.LINE_DOT);
        gc.drawRectangle(box);
        gc.setLineStyle(SWT.LINE_SOLID);
        if (told != null && told.clear()) { // hot places are hatched upwards, cold ones across, each in a colour that all can tell apart
            boolean hot = told.offK() > 0;
            gc.setForeground(new Color(hot ? 0xD5 : 0x00, hot ? 0x5E : 0x72, hot ? 0x00 : 0xB2));
            gc.setClipping(box);
            for (int i = -box.height; i < box.width; i += HATCH) {
                if (hot) {
                    gc.drawLine(box.x + i, box.y + box.height, box.x + i + box.height, box.y);
                } else {
                    gc.drawLine(box.x, box.y + i + box.height, box.x + box.width, box.y + i + box.height);
                }
            }
            gc.setClipping((Rectangle) null);
        }
        gc.setForeground(getForeground());
        String words = told == null ? name : name + " " + KilnWords.signed(told.offK()) + " K";
        gc.drawText(words, box.x + 3, box.y + 2, true);
    }

    private void piece(GC gc, ShelfLoad.Lay lay, Rectangle box) {
        gc.setBackground(getBackground());
        gc.setAlpha(215);
        gc.fillRectangle(box);
        gc.setAlpha(255);
        gc.drawRectangle(box);
        Point size = gc.textExtent(lay.piece());
        if (size.x < box.width && size.y < box.height) {
            gc.drawText(lay.piece(), box.x + (box.width - size.x) / 2, box.y + (box.height - size.y) / 2, true);
        } else {
            String number = lay.piece().substring(lay.piece().lastIndexOf('/') + 1);
            Point small = gc.textExtent(number);
            if (small.x < box.width && small.y < box.height + 4) {
                gc.drawText(number, box.x + (box.width - small.x) / 2, box.y + (box.height - small.y) / 2, true);
            }
        }
    }
}
