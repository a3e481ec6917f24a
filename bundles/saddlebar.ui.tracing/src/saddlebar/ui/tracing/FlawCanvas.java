package saddlebar.ui.tracing;

import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.SWTException;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Path;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;

import saddlebar.model.art.OutlineMm;
import saddlebar.ui.desk.OpenCommission;

/** The photo of a defect, and beside it the piece with a pin where the defect is. */
final class FlawCanvas extends Canvas {
    private static final int FREE_PT = 8;
    private static final int PIN_PT = 5;

    private Optional<Flaw> flaw = Optional.empty();
    private Optional<OutlineMm> outline = Optional.empty();
    private Image photo;
    private String words = "";

    FlawCanvas(Composite parent) {
        super(parent, SWT.DOUBLE_BUFFERED | SWT.BORDER);
        addListener(SWT.Paint, event -> draw(event.gc));
        addListener(SWT.Resize, event -> redraw());
        addListener(SWT.Dispose, event -> forgetPhoto());
        getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = words;
            }
        });
    }

    void show(Optional<Flaw> chosen, Optional<OpenCommission> commission) {
        if (chosen.equals(flaw)) {
            return;
        }
        flaw = chosen;
        forgetPhoto();
        outline = chosen.flatMap(one -> commission.flatMap(open -> open.piece(one.window(), one.pieceId()))).map(piece -> piece.getNet());
        words = chosen.map(one -> one.kind() + " " + one.place()).orElse("");
        chosen.flatMap(Flaw::photo).ifPresent(file -> {
            try {
                photo = new Image(getDisplay(), file.toString());
            } catch (SWTException e) {
                photo = null; // a format that the screen cannot show, such as TIFF with tiles: the record has it all the same
            }
        });
        redraw();
    }

    private void forgetPhoto() {
        if (photo != null) {
            photo.dispose();
            photo = null;
        }
    }

    private void draw(GC gc) {
        Rectangle all = getClientArea();
        if (flaw.isEmpty()) {
            return;
        }
        int half = all.width / 2;
        Rectangle left = new Rectangle(FREE_PT, FREE_PT, half - 2 * FREE_PT, all.height - 2 * FREE_PT);
        Rectangle right = new Rectangle(half + FREE_PT, FREE_PT, half - 2 * FREE_PT, all.height - 2 * FREE_PT);
        gc.setAntialias(SWT.ON);
        if (photo != null) {
            Rectangle size = photo.getBounds();
            double scale = Math.min((double) left.width / size.width, (double) left.height / size.height);
            int width = Math.max(1, (int) (size.width * scale));
            int height = Math.max(1, (int) (size.height * scale));
            gc.drawImage(photo, 0, 0, size.width, size.height, left.x, left.y, width, height);
        } else {
            wrapped(gc, flaw.get().photoLost() ? Messages.Flaws_photoGone : Messages.Flaws_noPhoto, left);
        }
        if (outline.isPresent()) {
            piece(gc, outline.get(), right);
        }
        if (Double.isNaN(flaw.get().xMm())) {
            wrapped(gc, Messages.Flaws_noPlace, right);
        }
    }

    private static void wrapped(GC gc, String text, Rectangle room) {
        StringBuilder line = new StringBuilder();
        int y = room.y;
        for (String word : text.split(" ")) {
            if (line.length() > 0 && gc.textExtent(line + " " + word).x > room.width) {
                gc.drawText(line.toString(), room.x, y, true);
                y += gc.getFontMetrics().getHeight();
                line.setLength(0);
            }
            line.append(line.length() == 0 ? "" : " ").append(word);
        }
        gc.drawText(line.toString(), room.x, y, true);
    }

    private void piece(GC gc, OutlineMm shape, Rectangle room) {
        if (shape.isEmpty()) {
            return;
        }
        double[] bounds = shape.boundsMm();
        double left = bounds[0];
        double top = bounds[1];
        double right = bounds[2];
        double bottom = bounds[3];
        double scale = Math.min(room.width / Math.max(1, right - left), room.height / Math.max(1, bottom - top));
        Path path = new Path(getDisplay());
        try {
            for (int ring = 0; ring < shape.rings(); ring++) {
                double[] points = shape.ring(ring);
                for (int i = 0; i < points.length; i += 2) {
                    float x = (float) (room.x + (points[i] - left) * scale);
                    float y = (float) (room.y + (points[i + 1] - top) * scale);
                    if (i == 0) {
                        path.moveTo(x, y);
                    } else {
                        path.lineTo(x, y);
                    }
                }
                path.close();
            }
            gc.setLineWidth(2);
            gc.drawPath(path);
        } finally {
            path.dispose();
        }
        Flaw one = flaw.get();
        if (!Double.isNaN(one.xMm())) {
            int x = (int) Math.round(room.x + (one.xMm() - left) * scale);
            int y = (int) Math.round(room.y + (one.yMm() - top) * scale);
            gc.setBackground(getDisplay().getSystemColor(SWT.COLOR_LIST_SELECTION));
            gc.drawLine(x, y, x + 2 * PIN_PT, y - 3 * PIN_PT);
            gc.fillOval(x + 2 * PIN_PT - PIN_PT, y - 4 * PIN_PT, 2 * PIN_PT, 2 * PIN_PT);
            gc.drawOval(x + 2 * PIN_PT - PIN_PT, y - 4 * PIN_PT, 2 * PIN_PT, 2 * PIN_PT);
        }
    }
}
