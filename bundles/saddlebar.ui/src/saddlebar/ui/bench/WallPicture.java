package saddlebar.ui.bench;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.Set;
import java.util.concurrent.CancellationException;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.SubMonitor;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.ISchedulingRule;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.SWTException;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;

import saddlebar.model.problem.Refusal;
import saddlebar.ui.Ids;
import saddlebar.ui.Messages;
import saddlebar.ui.StudioPreferences;
import saddlebar.production.light.EaselLook;
import saddlebar.production.light.EaselLook.Overlay;
import saddlebar.production.light.EaselPainter;
import saddlebar.production.light.EaselScene;
import saddlebar.ui.easel.ScreenPicture;
import saddlebar.ui.easel.Viewport;
import saddlebar.ui.make.MonitorWork;
import saddlebar.production.light.ArtworkShelf;
import saddlebar.production.light.ColourShelf;
import saddlebar.production.light.LightLook;
import saddlebar.production.light.SceneReader;
import saddlebar.production.light.WindowSketch;

/** One window on the wall: painted small by a quiet job, kept as one image that goes with the widget. */
final class WallPicture extends Canvas {
    static final int WIDTH_PT = 120;
    static final int HEIGHT_PT = 130;
    private static final int FREE_PT = 3;
    /** Pictures are painted one after the other: what the person has put on the Easel comes first. */
    private static final ISchedulingRule ONE_AT_A_TIME = new ISchedulingRule() {
        @Override
        public boolean contains(ISchedulingRule rule) {
            return rule == this;
        }

        @Override
        public boolean isConflicting(ISchedulingRule rule) {
            return rule == this;
        }
    };

    private final Display display;
    private Image image;
    private Job job;
    private String description = "";

    /** @param open what Enter or a double click does */
    WallPicture(Composite parent, Runnable open) {
        super(parent, SWT.DOUBLE_BUFFERED);
        this.display = getDisplay();
        addListener(SWT.Paint, event -> draw(event.gc));
        addListener(SWT.MouseDown, event -> setFocus());
        addListener(SWT.MouseDoubleClick, event -> open.run());
        addListener(SWT.KeyDown, event -> {
            if (event.character == SWT.CR || event.character == ' ') {
                open.run();
            }
        });
        addListener(SWT.Traverse, event -> event.doit = event.detail != SWT.TRAVERSE_RETURN);
        addListener(SWT.FocusIn, event -> redraw());
        addListener(SWT.FocusOut, event -> redraw());
        addListener(SWT.Dispose, event -> {
            cancel();
            if (image != null) {
                image.dispose();
            }
        });
        getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = description;
            }
        });
    }

    void setDescription(String words) {
        description = words;
        setToolTipText(words);
    }

    @Override
    public Point computeSize(int widthHint, int heightHint, boolean changed) {
        return new Point(WIDTH_PT, HEIGHT_PT);
    }

    /** Paints the window anew, away from the screen's thread. */
    void paint(ArtworkShelf shelf, ColourShelf colours, WindowSketch sketch, int colourway, LightLook light) {
        cancel();
        int zoom = getMonitor().getZoom();
        EaselLook look = new EaselLook(colourway, Set.of(Overlay.METAL), Set.of(), StudioPreferences.surroundRgb(this), light);
        job = new Job(NLS.bind(Messages.Wall_job, sketch.name())) {
            @Override
            protected IStatus run(IProgressMonitor monitor) {
                try {
                    paintSmall(shelf, colours, sketch, look, zoom, monitor);
                    return Status.OK_STATUS;
                } catch (CancellationException e) {
                    return Status.CANCEL_STATUS;
                } catch (IOException | Refusal e) {
                    return new Status(IStatus.WARNING, Ids.PLUGIN, e.getMessage(), e);
                }
            }
        };
        job.setPriority(Job.DECORATE);
        job.setSystem(true);
        job.setRule(ONE_AT_A_TIME);
        job.schedule();
    }

    private void paintSmall(ArtworkShelf shelf, ColourShelf colours, WindowSketch sketch, EaselLook look, int zoom, IProgressMonitor monitor)
            throws IOException {
        MonitorWork work = new MonitorWork(SubMonitor.convert(monitor, (int) Math.max(1, SceneReader.units(sketch))));
        EaselScene scene = new SceneReader(shelf).read(sketch, work);
        if (scene.isEmpty()) {
            return;
        }
        int width = WIDTH_PT * zoom / 100;
        int height = HEIGHT_PT * zoom / 100;
        Viewport view = Viewport.fitting(scene.bounds(), width, height, FREE_PT * zoom / 100);
        BufferedImage small = new EaselPainter(scene, look, colours).paintGlass(view.leftMm(), view.topMm(), view.ptPerMm(), width, height, work);
        ScreenPicture picture = ScreenPicture.of(small, zoom);
        try {
            display.asyncExec(() -> take(picture));
        } catch (SWTException e) {
            if (e.code != SWT.ERROR_DEVICE_DISPOSED) { // closed meanwhile: nobody looks any more
                throw e;
            }
        }
    }

    private void take(ScreenPicture picture) {
        if (!isDisposed()) {
            if (image != null) {
                image.dispose();
            }
            image = picture.toImage(display);
            redraw();
        }
    }

    private void draw(GC gc) {
        Rectangle all = getClientArea();
        if (image != null) {
            gc.drawImage(image, 0, 0);
        }
        if (isFocusControl()) {
            gc.drawFocus(all.x, all.y, all.width, all.height);
        }
    }

    private void cancel() {
        if (job != null) {
            job.cancel();
        }
    }
}
