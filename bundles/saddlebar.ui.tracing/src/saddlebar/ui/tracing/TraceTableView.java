package saddlebar.ui.tracing;

import java.util.List;
import java.util.function.Function;

import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.part.ViewPart;

import saddlebar.ui.Columns;

/** A part of the tracing bench that is a table of what the desk has. */
abstract class TraceTableView<T> extends ViewPart {
    private TraceDesk desk;
    private TableViewer table;
    private final Runnable onChange = this::show;

    @Override
    public final void createPartControl(Composite parent) {
        desk = getSite().getService(TraceDesk.class);
        createParts(parent);
        desk.addListener(onChange);
        show();
    }

    /** The table alone; a part with more beside it lays it out itself. */
    protected void createParts(Composite parent) {
        createTable(parent);
    }

    protected final TableViewer createTable(Composite parent) {
        Composite frame = new Composite(parent, SWT.NONE);
        table = new TableViewer(frame, SWT.SINGLE | SWT.FULL_SELECTION | SWT.V_SCROLL | SWT.H_SCROLL);
        table.getTable().setHeaderVisible(true);
        TableColumnLayout layout = new TableColumnLayout();
        frame.setLayout(layout);
        columns(new Columns(table, layout));
        table.setContentProvider(ArrayContentProvider.getInstance());
        table.addSelectionChangedListener(event -> {
            Object line = event.getStructuredSelection().getFirstElement();
            if (line != null && table.getTable().isFocusControl()) {
                chosen(cast(line));
            }
        });
        return table;
    }

    @SuppressWarnings("unchecked")
    private T cast(Object line) {
        return (T) line;
    }

    protected final void column(Columns columns, String title, int share, String widest, Function<T, String> text) {
        columns.add(title, share, widest, ColumnLabelProvider.createTextProvider(line -> text.apply(cast(line))));
    }

    protected abstract void columns(Columns columns);

    protected abstract List<T> lines(TraceDesk from);

    /** What stands above the table; what to do while it is empty. */
    protected abstract String heading(TraceDesk from);

    protected void chosen(T line) {
        // a table to be looked at
    }

    protected void show() {
        if (!table.getTable().isDisposed()) {
            List<T> lines = lines(desk);
            if (!lines.equals(table.getInput())) {
                table.setInput(lines);
            }
            setContentDescription(heading(desk));
        }
    }

    protected final TraceDesk desk() {
        return desk;
    }

    protected final TableViewer table() {
        return table;
    }

    @Override
    public void setFocus() {
        table.getTable().setFocus();
    }

    @Override
    public void dispose() {
        if (desk != null) {
            desk.removeListener(onChange);
        }
        super.dispose();
    }
}
