package saddlebar.ui.print;

import java.util.function.Function;

import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;

import saddlebar.ui.Columns;

/** Layers on which something is still to be printed or fired. */
public final class TodayView extends PrintPart {
    private TableViewer table;

    @Override
    protected void createParts(Composite parent) {
        Composite frame = new Composite(parent, SWT.NONE);
        table = new TableViewer(frame, SWT.SINGLE | SWT.FULL_SELECTION | SWT.V_SCROLL | SWT.H_SCROLL);
        table.getTable().setHeaderVisible(true);
        TableColumnLayout layout = new TableColumnLayout();
        frame.setLayout(layout);
        Columns columns = new Columns(table, layout);
        column(columns, Messages.Column_window, 1, "W88", BenchState.Job::window);
        column(columns, Messages.Column_layer, 2, "lettering", BenchState.Job::layer);
        column(columns, Messages.Column_state, 2, "on screen", BenchState.Job::state);
        column(columns, Messages.Column_stencils, 1, "88", job -> String.valueOf(job.stencils()));
        column(columns, Messages.Column_prints, 1, "888", job -> String.valueOf(job.prints()));
        table.setContentProvider(ArrayContentProvider.getInstance());
    }

    private void column(Columns columns, String title, int share, String widest, Function<BenchState.Job, String> text) {
        columns.add(title, share, widest, ColumnLabelProvider.createTextProvider(line -> text.apply((BenchState.Job) line)));
    }

    @Override
    protected void show() {
        if (!table.getTable().isDisposed()) {
            table.setInput(desk().state().today());
            setContentDescription(desk().state().next().isEmpty()
                    ? desk().state().today().isEmpty() ? Messages.Today_none : ""
                    : NLS.bind(Messages.Today_next, desk().state().next().get(0)));
        }
    }

    @Override
    public void setFocus() {
        table.getTable().setFocus();
    }
}
