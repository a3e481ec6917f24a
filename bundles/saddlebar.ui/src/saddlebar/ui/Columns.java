package saddlebar.ui;

import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.ColumnViewerToolTipSupport;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.widgets.TableColumn;

/** Columns as wide as what usually stands in them; the room that is left is shared, and what is longer is told when the pointer rests on it. */
public final class Columns {
    private static final int FREE_PT = 16;

    private final TableViewer table;
    private final TableColumnLayout layout;

    public Columns(TableViewer table, TableColumnLayout layout) {
        this.table = table;
        this.layout = layout;
        ColumnViewerToolTipSupport.enableFor(table);
    }

    /**
     * Adds a column.
     *
     * @param share  of the room that is left
     * @param widest what usually is the longest text
     */
    public TableColumn add(String title, int share, String widest, ColumnLabelProvider labels) {
        TableViewerColumn column = new TableViewerColumn(table, SWT.NONE);
        column.getColumn().setText(title);
        column.setLabelProvider(labels);
        GC gc = new GC(table.getTable());
        int width = Math.max(gc.textExtent(title).x, gc.textExtent(widest).x) + FREE_PT;
        gc.dispose();
        layout.setColumnData(column.getColumn(), new ColumnWeightData(share, width, true));
        return column.getColumn();
    }
}
