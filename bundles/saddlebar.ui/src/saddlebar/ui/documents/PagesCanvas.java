package saddlebar.ui.documents;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;

import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;

import saddlebar.report.document.DocumentPages;
import saddlebar.ui.Messages;

/** One page of a document after the other, as large as there is room; turned by buttons, Page Up and Page Down, or the wheel. Pages are drawn in the background. */
final class PagesCanvas extends Composite {
    private static final double DPI = 150;
    private final Canvas canvas;
    private final Button before;
    private final Button after;
    private final Label number;
    private Optional<Path> file = Optional.empty();
    private String words = "";
    private Image picture;
    private int page;
    private int count;
    private int asked;

    PagesCanvas(Composite parent) {
        super(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(3).applyTo(this);
        canvas = new Canvas(this, SWT.DOUBLE_BUFFERED | SWT.BORDER);
        GridDataFactory.fillDefaults().grab(true, true).span(3, 1).applyTo(canvas);
        before = new Button(this, SWT.PUSH);
        before.setText(Messages.Documents_pageBefore);
        number = new Label(this, SWT.CENTER);
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(number);
        after = new Button(this, SWT.PUSH);
        after.setText(Messages.Documents_pageAfter);
        before.addListener(SWT.Selection, event -> turn(-1));
        after.addListener(SWT.Selection, event -> turn(1));
        canvas.addListener(SWT.Paint, this::paint);
        canvas.addListener(SWT.MouseVerticalWheel, event -> turn(event.count > 0 ? -1 : 1));
        canvas.addListener(SWT.KeyDown, event -> turn(event.keyCode == SWT.PAGE_UP ? -1 : event.keyCode == SWT.PAGE_DOWN ? 1 : 0));
        addListener(SWT.Dispose, event -> drop());
    }

    /** Shows a document from its first page; empty for none. */
    void show(Optional<Path> document) {
        file = document;
        page = 0;
        count = 0;
        drop();
        read();
    }

    /** What stands there while there is no page. */
    void say(String sentence) {
        words = sentence;
        drop();
        state();
    }

    private void turn(int by) {
        int wanted = Math.max(0, Math.min(count - 1, page + by));
        if (file.isPresent() && wanted != page) {
            page = wanted;
            read();
        }
    }

    private void read() {
        int ticket = ++asked; // a page that was asked for before and comes late is not shown
        file.ifPresent(path -> {
            int wanted = page;
            Job job = Job.create(Messages.Documents_preview, (ICoreRunnable) monitor -> {
                try (DocumentPages pages = DocumentPages.open(path)) {
                    BufferedImage image = pages.picture(Math.min(wanted, pages.count() - 1), DPI);
                    int all = pages.count();
                    later(() -> arrived(ticket, all, image));
                } catch (IOException e) {
                    later(() -> say(e.getMessage()));
                }
            });
            job.setSystem(true);
            job.schedule();
        });
        state();
    }

    private void later(Runnable then) {
        if (!isDisposed()) {
            getDisplay().asyncExec(() -> {
                if (!isDisposed()) {
                    then.run();
                }
            });
        }
    }

    private void arrived(int ticket, int all, BufferedImage image) {
        if (ticket == asked) {
            drop();
            count = all;
            picture = new Image(getDisplay(), PageImage.data(image));
            state();
        }
    }

    private void drop() {
        if (picture != null) {
            picture.dispose();
            picture = null;
        }
    }

    private void state() {
        before.setEnabled(page > 0);
        after.setEnabled(page < count - 1);
        number.setText(count == 0 ? "" : NLS.bind(Messages.Documents_pageOf, page + 1, count));
        canvas.redraw();
    }

    private void paint(Event event) {
        Rectangle room = canvas.getClientArea();
        if (picture == null) {
            event.gc.drawText(words, 12, 12, true);
            return;
        }
        Rectangle size = picture.getBounds();
        double scale = Math.min((room.width - 16) / (double) size.width, (room.height - 16) / (double) size.height);
        int width = Math.max(1, (int) (size.width * scale));
        int height = Math.max(1, (int) (size.height * scale));
        int x = (room.width - width) / 2;
        int y = (room.height - height) / 2;
        event.gc.setAntialias(SWT.ON);
        event.gc.setInterpolation(SWT.HIGH);
        event.gc.drawImage(picture, 0, 0, size.width, size.height, x, y, width, height);
        event.gc.drawRectangle(x - 1, y - 1, width + 1, height + 1);
    }
}
