package saddlebar.ui.kiln;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;

import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.CellEditor;
import org.eclipse.jface.viewers.CheckboxCellEditor;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.ColumnViewerEditor;
import org.eclipse.jface.viewers.ColumnViewerEditorActivationEvent;
import org.eclipse.jface.viewers.ColumnViewerEditorActivationStrategy;
import org.eclipse.jface.viewers.ColumnViewerToolTipSupport;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.jface.viewers.EditingSupport;
import org.eclipse.jface.viewers.FocusCellOwnerDrawHighlighter;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.jface.viewers.TableViewerEditor;
import org.eclipse.jface.viewers.TableViewerFocusCellManager;
import org.eclipse.jface.viewers.TextCellEditor;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;

import saddlebar.model.commission.FiringSchedule;
import saddlebar.model.commission.FiringSegment;

/** The segments of a schedule, typed in cell by cell: by double click, F2 or Return, on with Tab. */
final class SegmentTable {
    private final TableViewer viewer;
    private final Supplier<Optional<ScheduleSheet>> sheet;
    private final Consumer<String> wrong;

    /** @param sheet empty where nothing may be changed */
    SegmentTable(Composite parent, Supplier<Optional<ScheduleSheet>> sheet, Consumer<String> wrong) {
        this.sheet = sheet;
        this.wrong = wrong;
        Composite frame = new Composite(parent, SWT.NONE);
        TableColumnLayout layout = new TableColumnLayout();
        frame.setLayout(layout);
        viewer = new TableViewer(frame, SWT.FULL_SELECTION | SWT.SINGLE | SWT.BORDER | SWT.V_SCROLL);
        viewer.getTable().setHeaderVisible(true);
        viewer.setContentProvider(ArrayContentProvider.getInstance());
        ColumnViewerToolTipSupport.enableFor(viewer);
        column(layout, Messages.Schedule_columnSegment, 4, SWT.LEFT, ScheduleSheet.Field.NAME);
        column(layout, Messages.Schedule_columnRate, 3, SWT.RIGHT, ScheduleSheet.Field.RATE);
        column(layout, Messages.Schedule_columnTarget, 3, SWT.RIGHT, ScheduleSheet.Field.TARGET);
        column(layout, Messages.Schedule_columnSoak, 3, SWT.RIGHT, ScheduleSheet.Field.SOAK);
        vent(layout);
        TableViewerFocusCellManager cells = new TableViewerFocusCellManager(viewer, new FocusCellOwnerDrawHighlighter(viewer));
        TableViewerEditor.create(viewer, cells, new ColumnViewerEditorActivationStrategy(viewer) {
            @Override
            protected boolean isEditorActivationEvent(ColumnViewerEditorActivationEvent event) {
                return event.eventType == ColumnViewerEditorActivationEvent.TRAVERSAL
                        || event.eventType == ColumnViewerEditorActivationEvent.MOUSE_DOUBLE_CLICK_SELECTION
                        || event.eventType == ColumnViewerEditorActivationEvent.PROGRAMMATIC
                        || event.eventType == ColumnViewerEditorActivationEvent.KEY_PRESSED && (event.keyCode == SWT.F2 || event.character == SWT.CR);
            }
        }, ColumnViewerEditor.TABBING_HORIZONTAL | ColumnViewerEditor.TABBING_MOVE_TO_ROW_NEIGHBOR | ColumnViewerEditor.KEYBOARD_ACTIVATION);
    }

    private void column(TableColumnLayout layout, String title, int share, int align, ScheduleSheet.Field field) {
        TableViewerColumn column = new TableViewerColumn(viewer, align);
        column.getColumn().setText(title);
        layout.setColumnData(column.getColumn(), new ColumnWeightData(share, 60, true));
        column.setLabelProvider(new ColumnLabelProvider() {
            @Override
            public String getText(Object element) {
                FiringSegment segment = (FiringSegment) element;
                String value = ScheduleSheet.value(segment, field, locale());
                return field == ScheduleSheet.Field.RATE && value.isEmpty() ? Messages.Schedule_fullRate : value;
            }

            @Override
            public String getToolTipText(Object element) {
                return ((FiringSegment) element).getNote();
            }
        });
        column.setEditingSupport(new EditingSupport(viewer) {
            @Override
            protected CellEditor getCellEditor(Object element) {
                return new TextCellEditor(viewer.getTable());
            }

            @Override
            protected boolean canEdit(Object element) {
                return sheet.get().isPresent();
            }

            @Override
            protected Object getValue(Object element) {
                return ScheduleSheet.value((FiringSegment) element, field, locale());
            }

            @Override
            protected void setValue(Object element, Object value) {
                sheet.get().ifPresent(found -> wrong.accept(found.take((FiringSegment) element, field, (String) value).orElse("")));
            }
        });
    }

    private void vent(TableColumnLayout layout) {
        TableViewerColumn column = new TableViewerColumn(viewer, SWT.LEFT);
        column.getColumn().setText(Messages.Schedule_columnVent);
        layout.setColumnData(column.getColumn(), new ColumnWeightData(2, 50, true));
        column.setLabelProvider(ColumnLabelProvider.createTextProvider(element -> ((FiringSegment) element).isVent()
                ? Messages.Schedule_open
                : Messages.Schedule_shut));
        column.setEditingSupport(new EditingSupport(viewer) {
            @Override
            protected CellEditor getCellEditor(Object element) {
                return new CheckboxCellEditor(viewer.getTable());
            }

            @Override
            protected boolean canEdit(Object element) {
                return sheet.get().isPresent();
            }

            @Override
            protected Object getValue(Object element) {
                return ((FiringSegment) element).isVent();
            }

            @Override
            protected void setValue(Object element, Object value) {
                sheet.get().ifPresent(found -> found.vent((FiringSegment) element, (Boolean) value));
            }
        });
    }

    private static Locale locale() {
        return KilnWords.locale();
    }

    void show(Optional<FiringSchedule> schedule) {
        if (viewer.isCellEditorActive()) {
            viewer.getControl().getDisplay().asyncExec(() -> {
                if (!viewer.getControl().isDisposed() && !viewer.isCellEditorActive()) {
                    viewer.refresh();
                }
            });
            return;
        }
        List<FiringSegment> segments = schedule.map(found -> List.copyOf(found.getSegments())).orElse(List.of());
        if (!segments.equals(viewer.getInput())) {
            Object chosen = viewer.getStructuredSelection().getFirstElement();
            viewer.setInput(segments);
            if (chosen != null && segments.contains(chosen)) {
                viewer.setSelection(new StructuredSelection(chosen));
            }
        } else {
            viewer.refresh();
        }
    }

    Optional<FiringSegment> chosen() {
        return viewer.getStructuredSelection().getFirstElement() instanceof FiringSegment segment ? Optional.of(segment) : Optional.empty();
    }

    void choose(FiringSegment segment) {
        viewer.setSelection(new StructuredSelection(segment), true);
    }

    void focus() {
        viewer.getTable().setFocus();
    }
}
