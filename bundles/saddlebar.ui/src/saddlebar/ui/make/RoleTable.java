package saddlebar.ui.make;

import java.util.Map;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.CellEditor;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.ComboBoxViewerCellEditor;
import org.eclipse.jface.viewers.EditingSupport;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;

import saddlebar.artwork.LayerGuess.Ground;
import saddlebar.production.bring.LayerPurpose;
import saddlebar.ui.Columns;
import saddlebar.ui.Messages;

/** The layers of a drawing, what each is for, which can be changed, and why it is thought so. */
final class RoleTable {
    private static final int ROWS = 6;
    /** Under this name a column knows its viewer's half. */
    private static final String VIEWER_COLUMN = "org.eclipse.jface.columnViewer";
    private static final Map<Ground, String> WHY = Map.of(Ground.NAME, Messages.Roles_byName, Ground.CLOSED_HAIRLINES, Messages.Roles_byClosedLines,
            Ground.LINES, Messages.Roles_byLines, Ground.LETTERS, Messages.Roles_byLetters, Ground.TONES, Messages.Roles_byTones, Ground.COLOURS,
            Messages.Roles_byColours, Ground.DARK, Messages.Roles_byDark, Ground.NOTHING, Messages.Roles_byNothing);

    private final RoleRows rows;
    private final Runnable changed;
    private final TableViewer table;

    /** @param changed told after the person changed a row */
    RoleTable(Composite parent, RoleRows rows, int columnsOfParent, Runnable changed) {
        this.rows = rows;
        this.changed = changed;
        Composite frame = new Composite(parent, SWT.NONE);
        TableColumnLayout layout = new TableColumnLayout();
        frame.setLayout(layout);
        table = new TableViewer(frame, SWT.BORDER | SWT.FULL_SELECTION | SWT.V_SCROLL);
        table.getTable().setHeaderVisible(true);
        table.getTable().setLinesVisible(true);
        table.setContentProvider(ArrayContentProvider.getInstance());
        Columns columns = new Columns(table, layout);
        columns.add(Messages.Roles_layer, 2, "Cutline of the panel", ColumnLabelProvider.createTextProvider(row -> ((LayerPurpose) row).label()));
        columns.add(Messages.Roles_for, 1, Messages.Roles_lettering, ColumnLabelProvider.createTextProvider(row -> words(((LayerPurpose) row).purpose())));
        columns.add(Messages.Roles_why, 3, Messages.Roles_byColours, ColumnLabelProvider.createTextProvider(row -> why((LayerPurpose) row)));
        TableViewerColumn purpose = viewerColumn(1);
        purpose.setEditingSupport(new Choosing());
        int height = table.getTable().getItemHeight() * ROWS + table.getTable().getHeaderHeight();
        GridDataFactory.fillDefaults().grab(true, true).span(columnsOfParent, 1).hint(SWT.DEFAULT, height).applyTo(frame);
        show();
    }

    private TableViewerColumn viewerColumn(int index) {
        return (TableViewerColumn) table.getTable().getColumn(index).getData(VIEWER_COLUMN);
    }

    void show() {
        table.setInput(rows.rows());
    }

    static String words(String purpose) {
        return switch (purpose) {
            case "cutline" -> Messages.Roles_cutline;
            case "glass" -> Messages.Roles_glass;
            case "trace" -> Messages.Roles_trace;
            case "matt" -> Messages.Roles_matt;
            case "lettering" -> Messages.Roles_lettering;
            case "stain" -> Messages.Roles_stain;
            case "enamel" -> Messages.Roles_enamel;
            default -> Messages.Roles_none;
        };
    }

    private static String why(LayerPurpose row) {
        return switch (row.source()) {
            case SAID -> Messages.Roles_said;
            case REMEMBERED -> Messages.Roles_remembered;
            case GUESSED -> WHY.get(row.ground());
        };
    }

    private final class Choosing extends EditingSupport {
        Choosing() {
            super(table);
        }

        @Override
        protected CellEditor getCellEditor(Object row) {
            ComboBoxViewerCellEditor editor = new ComboBoxViewerCellEditor(table.getTable(), SWT.READ_ONLY);
            editor.setActivationStyle(ComboBoxViewerCellEditor.DROP_DOWN_ON_MOUSE_ACTIVATION);
            editor.setContentProvider(ArrayContentProvider.getInstance());
            editor.setLabelProvider(LabelProvider.createTextProvider(purpose -> words((String) purpose)));
            editor.setInput(RoleRows.PURPOSES);
            return editor;
        }

        @Override
        protected boolean canEdit(Object row) {
            return true;
        }

        @Override
        protected Object getValue(Object row) {
            return ((LayerPurpose) row).purpose();
        }

        @Override
        protected void setValue(Object row, Object purpose) {
            if (purpose != null) {
                rows.say(((LayerPurpose) row).id(), (String) purpose);
                show();
                changed.run();
            }
        }
    }
}
