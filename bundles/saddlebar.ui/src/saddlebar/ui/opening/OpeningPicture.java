package saddlebar.ui.opening;

import org.eclipse.jface.resource.JFaceColors;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.PaintEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Path;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;

import saddlebar.cartoon.opening.OpeningPlan;
import saddlebar.cartoon.opening.SaddleBar;
import saddlebar.model.art.DrawnLine;

/** Draws an opening as large as there is room: the rebate thin, the panel bold, what shows broken, bars across. */
final class OpeningPicture extends Canvas {
    private static final int MARGIN_PX = 14;

    private OpeningPlan plan;

    OpeningPicture(Composite parent) {
        super(parent, SWT.BORDER | SWT.DOUBLE_BUFFERED);
        setBackground(getDisplay().getSystemColor(SWT.COLOR_LIST_BACKGROUND));
        setForeground(getDisplay().getSystemColor(SWT.COLOR_LIST_FOREGROUND));
        addPaintListener(this::paint);
    }

    /** @param shown null where the measures fit no opening */
    void show(OpeningPlan shown) {
        plan = shown;
        redraw();
    }

    private void paint(PaintEvent event) {
        if (plan == null) {
            return;
        }
        double[] box = OpeningPlan.box(plan.sizes().tight());
        Rectangle room = getClientArea();
        double scale = Math.min((room.width - 2.0 * MARGIN_PX) / (box[2] - box[0]), (room.height - 2.0 * MARGIN_PX) / (box[3] - box[1]));
        if (!(scale > 0)) {
            return;
        }
        double left = room.width / 2.0 - scale * (box[0] + box[2]) / 2;
        double top = room.height / 2.0 - scale * (box[1] + box[3]) / 2;
        GC gc = event.gc;
        gc.setAntialias(SWT.ON);
        gc.setForeground(getForeground());
        gc.setLineWidth(1);
        draw(gc, plan.sizes().tight(), scale, left, top);
        gc.setLineWidth(2);
        draw(gc, plan.sizes().panel(), scale, left, top);
        gc.setLineWidth(1);
        gc.setLineStyle(SWT.LINE_DASH);
        draw(gc, plan.sizes().sight(), scale, left, top);
        gc.setLineStyle(SWT.LINE_SOLID);
        gc.setForeground(JFaceColors.getActiveHyperlinkText(getDisplay()));
        for (SaddleBar bar : plan.division().bars()) {
            gc.setLineWidth(bar.division() ? 4 : 2);
            int y = (int) Math.round(top + scale * bar.yMm());
            gc.drawLine((int) Math.round(left + scale * bar.leftMm()), y, (int) Math.round(left + scale * bar.rightMm()), y);
        }
    }

    private static void draw(GC gc, DrawnLine line, double scale, double left, double top) {
        Path path = new Path(gc.getDevice());
        try {
            for (int i = 0; i < line.points(); i++) {
                float x = (float) (left + scale * line.x(i));
                float y = (float) (top + scale * line.y(i));
                if (i == 0) {
                    path.moveTo(x, y);
                } else {
                    path.lineTo(x, y);
                }
            }
            path.close();
            gc.drawPath(path);
        } finally {
            path.dispose();
        }
    }
}
