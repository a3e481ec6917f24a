package saddlebar.ui.glazing;

import java.util.List;
import java.util.function.Function;

import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;

import saddlebar.ui.Columns;

/**
 * A table of lines that are only read.
 *
 * @param <T> a line
 */
final class LineTable<T> {
    private final TableViewer viewer;
    private final Columns columns;
    private final Class<T> type;

    LineTable(Composite parent, Class<T> type) {
        this.type = type;
        Composite frame = new Composite(parent, SWT.NONE);
        TableColumnLayout layout = new TableColumnLayout();
        frame.setLayout(layout);
        viewer = new TableViewer(frame, SWT.FULL_SELECTION | SWT.SINGLE | SWT.BORDER | SWT.V_SCROLL | SWT.H_SCROLL);
        viewer.getTable().setHeaderVisible(true);
        viewer.setContentProvider(ArrayContentProvider.getInstance());
        columns = new Columns(viewer, layout);
    }

    LineTable<T> text(String title, int share, String widest, Function<T, String> words) {
        columns.add(title, share, widest, new ColumnLabelProvider() {
            @Override
            public String getText(Object element) {
                return words.apply(type.cast(element));
            }

            @Override
            public String getToolTipText(Object element) {
                return getText(element);
            }
        });
        return this;
    }

    LineTable<T> number(String title, int share, String widest, Function<T, String> words) {
        columns.add(title, share, widest, ColumnLabelProvider.createTextProvider(element -> words.apply(type.cast(element)))).setAlignment(SWT.RIGHT);
        return this;
    }

    void show(List<T> lines) {
        if (!lines.equals(viewer.getInput())) {
            viewer.setInput(lines);
        }
    }

    TableViewer viewer() {
        return viewer;
    }

    /** What is laid out. */
    Composite frame() {
        return viewer.getTable().getParent();
    }
}
