package saddlebar.ui.dates;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.part.ViewPart;

import saddlebar.model.problem.Refusal;
import saddlebar.model.store.Access;
import saddlebar.model.store.CommissionFolder;
import saddlebar.production.check.CommissionStatus.Step;
import saddlebar.production.check.CommissionStatus;
import saddlebar.ui.Columns;
import saddlebar.ui.Ids;
import saddlebar.ui.colourway.ColourWords;
import saddlebar.ui.desk.CommissionDesk;
import saddlebar.ui.desk.CommissionOpening;
import saddlebar.ui.desk.OpenCommission;
import saddlebar.ui.properties.PropertiesPage;

/** What can be done next in the commission as it is saved, the most pressing first. Enter or a double click shows the window. */
public final class NextView extends ViewPart {
    private CommissionDesk desk;
    private TableViewer table;
    private Job reading;
    private final CommissionDesk.Listener onDesk = new CommissionDesk.Listener() {
        @Override
        public void opened(OpenCommission commission) {
            read(commission.path());
        }

        @Override
        public void closing(OpenCommission commission) {
            stop();
            show(List.of(), ColourWords.Next_closed);
        }

        @Override
        public void changed(OpenCommission commission) {
            if (!commission.isDirty() && !desk.isMaking()) {
                read(commission.path());
            }
        }
    };

    @Override
    public void createPartControl(Composite parent) {
        desk = getSite().getService(CommissionDesk.class);
        Composite frame = new Composite(parent, SWT.NONE);
        TableColumnLayout layout = new TableColumnLayout();
        frame.setLayout(layout);
        table = new TableViewer(frame, SWT.SINGLE | SWT.FULL_SELECTION | SWT.V_SCROLL | SWT.H_SCROLL);
        table.getTable().setHeaderVisible(true);
        new Columns(table, layout).add(ColourWords.Next_what, 1, "W01: make", ColumnLabelProvider.createTextProvider(step -> words((Step) step)));
        table.setContentProvider(ArrayContentProvider.getInstance());
        table.addDoubleClickListener(event -> {
            if (table.getStructuredSelection().getFirstElement() instanceof Step step && !step.window().isEmpty()) {
                desk.commission().ifPresent(open -> new CommissionOpening(getSite().getWorkbenchWindow()).showWindow(open, step.window()));
            }
        });
        desk.addListener(onDesk);
        desk.commission().ifPresentOrElse(onDesk::opened, () -> show(List.of(), ColourWords.Next_closed));
    }

    private static String words(Step step) {
        return switch (step.kind()) {
            case FIRST_ARTWORK -> ColourWords.Step_firstArtwork;
            case ARTWORK -> NLS.bind(ColourWords.Step_artwork, step.window());
            case MAKE -> NLS.bind(ColourWords.Step_make, step.window());
            case PRINT -> NLS.bind(ColourWords.Step_print, step.window());
        };
    }

    private void read(Path path) {
        stop();
        Display display = table.getTable().getDisplay();
        Job job = new Job(ColourWords.Next_what) {
            @Override
            protected IStatus run(IProgressMonitor monitor) {
                try (CommissionFolder folder = CommissionFolder.open(path, Access.READ)) {
                    List<Step> steps = CommissionStatus.of(folder).steps();
                    display.asyncExec(() -> {
                        if (reading == this) {
                            show(steps, ColourWords.Next_none);
                        }
                    });
                    return Status.OK_STATUS;
                } catch (IOException | Refusal e) {
                    return new Status(IStatus.WARNING, Ids.PLUGIN, e.getMessage(), e); // told where the window itself is looked into
                }
            }
        };
        job.setSystem(true);
        reading = job;
        job.schedule();
    }

    private void stop() {
        if (reading != null) {
            reading.cancel();
            reading = null;
        }
    }

    private void show(List<Step> steps, String ifNone) {
        if (!table.getTable().isDisposed()) {
            table.setInput(steps);
            setContentDescription(steps.isEmpty() ? ifNone : "");
        }
    }

    @Override
    public <T> T getAdapter(Class<T> adapter) {
        T properties = PropertiesPage.adapt(adapter, this);
        return properties != null ? properties : super.getAdapter(adapter);
    }

    @Override
    public void setFocus() {
        table.getTable().setFocus();
    }

    @Override
    public void dispose() {
        stop();
        if (desk != null) {
            desk.removeListener(onDesk);
        }
        super.dispose();
    }
}
