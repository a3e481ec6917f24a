package saddlebar.ui.sheets;

import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.events.PaintEvent;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;

import saddlebar.model.commission.Placement;
import saddlebar.model.commission.Sheet;

/** A sheet in the toner view: its proof if it was made, the places of its stencils, and the chosen one marked. */
final class SheetCanvas extends Canvas {
    private static final int BORDER_PT = 8;
    private static final Color PLACE = new Color(0, 114, 178);
    private static final Color CHOSEN = new Color(213, 94, 0);
    private static final Color PAPER = new Color(255, 255, 255);

    private Optional<Sheet> sheet = Optional.empty();
    private Optional<Placement> chosen = Optional.empty();
    private String otherwise = "";
    private Image proof;

    SheetCanvas(Composite parent) {
        super(parent, SWT.DOUBLE_BUFFERED);
        addPaintListener(this::paint);
        addListener(SWT.Resize, event -> redraw());
        addListener(SWT.Dispose, event -> drop());
    }

    void show(Optional<Sheet> next, String words) {
        if (!next.equals(sheet)) {
            drop();
            chosen = Optional.empty();
        }
        sheet = next;
        otherwise = words;
        redraw();
    }

    void proof(ImageData data) {
        drop();
        proof = new Image(getDisplay(), data);
        redraw();
    }

    void choose(Optional<Placement> placement) {
        chosen = placement;
        redraw();
    }

    private void drop() {
        if (proof != null) {
            proof.dispose();
            proof = null;
        }
    }

    private void paint(PaintEvent event) {
        GC gc = event.gc;
        Rectangle area = getClientArea();
        if (sheet.isEmpty()) {
            gc.drawText(otherwise, BORDER_PT, BORDER_PT, SWT.DRAW_TRANSPARENT | SWT.DRAW_DELIMITER);
            return;
        }
        Sheet shown = sheet.get();
        double scale = Math.min((area.width - 2.0 * BORDER_PT) / shown.getWidthMm(), (area.height - 2.0 * BORDER_PT) / shown.getHeightMm());
        int width = (int) Math.round(scale * shown.getWidthMm());
        int height = (int) Math.round(scale * shown.getHeightMm());
        int left = (area.width - width) / 2;
        int top = (area.height - height) / 2;
        gc.setAntialias(SWT.ON);
        gc.setBackground(PAPER);
        gc.fillRectangle(left, top, width, height);
        if (proof != null) {
            Rectangle whole = proof.getBounds(); // below the sheet it says how to tape
            int sheetPx = Math.min(whole.height, (int) Math.round(whole.width * shown.getHeightMm() / shown.getWidthMm()));
            gc.setInterpolation(SWT.HIGH);
            gc.drawImage(proof, 0, 0, whole.width, sheetPx, left, top, width, height);
        }
        gc.setForeground(getForeground());
        gc.drawRectangle(left, top, width, height);
        for (Placement placement : shown.getPlacements()) {
            if (placement.getStencil() == null) {
                continue;
            }
            boolean turned = Math.round(placement.getRotationDeg() / 90) % 2 != 0;
            double across = turned ? placement.getStencil().getHeightMm() : placement.getStencil().getWidthMm();
            double down = turned ? placement.getStencil().getWidthMm() : placement.getStencil().getHeightMm();
            boolean marked = chosen.isPresent() && chosen.get() == placement;
            gc.setForeground(marked ? CHOSEN : PLACE);
            gc.setLineWidth(marked ? 3 : 1);
            gc.drawRectangle(left + (int) Math.round(scale * placement.getXMm()), top + (int) Math.round(scale * placement.getYMm()),
                    (int) Math.round(scale * across), (int) Math.round(scale * down));
        }
        gc.setLineWidth(1);
    }
}
