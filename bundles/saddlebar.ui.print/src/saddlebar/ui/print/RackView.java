package saddlebar.ui.print;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.List;
import java.util.function.Function;

import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;

import saddlebar.production.trace.ScreenRack;
import saddlebar.ui.Columns;

/** The frames as they hang, drawn, and the same as a table. */
public final class RackView extends PrintPart {
    private RackCanvas canvas;
    private TableViewer table;

    @Override
    protected void createParts(Composite parent) {
        SashForm sash = new SashForm(parent, SWT.HORIZONTAL);
        canvas = new RackCanvas(sash, frame -> table.setSelection(new StructuredSelection(frame), true));
        Composite frame = new Composite(sash, SWT.NONE);
        table = new TableViewer(frame, SWT.SINGLE | SWT.FULL_SELECTION | SWT.V_SCROLL | SWT.H_SCROLL);
        table.getTable().setHeaderVisible(true);
        TableColumnLayout layout = new TableColumnLayout();
        frame.setLayout(layout);
        Columns columns = new Columns(table, layout);
        DateTimeFormatter day = DateTimeFormatter.ofLocalizedDate(FormatStyle.SHORT).withZone(ZoneId.systemDefault());
        column(columns, Messages.Column_frame, 1, "S888", ScreenRack.Frame::name);
        column(columns, Messages.Column_mesh, 1, "220-48", ScreenRack.Frame::mesh);
        column(columns, Messages.Column_state, 1, Messages.State_toReclaim, one -> RackCanvas.words(one.state()));
        column(columns, Messages.Column_carries, 2, "W01 matt sheet 3", ScreenRack.Frame::carries);
        column(columns, Messages.Column_since, 0, "28.08.2026", one -> one.since().map(day::format).orElse(""));
        column(columns, Messages.Column_pulls, 0, "88 of 88", one -> one.since().isEmpty()
                ? ""
                : one.wanted().map(wanted -> NLS.bind(Messages.Rack_of, one.pulls(), wanted)).orElse(String.valueOf(one.pulls())));
        table.setContentProvider(ArrayContentProvider.getInstance());
        table.addSelectionChangedListener(event -> {
            if (event.getStructuredSelection().getFirstElement() instanceof ScreenRack.Frame chosen) {
                canvas.choose(chosen);
            }
        });
        sash.setWeights(55, 45);
    }

    private void column(Columns columns, String title, int share, String widest, Function<ScreenRack.Frame, String> text) {
        columns.add(title, share, widest, ColumnLabelProvider.createTextProvider(line -> text.apply((ScreenRack.Frame) line)));
    }

    @Override
    protected void show() {
        if (table.getTable().isDisposed()) {
            return;
        }
        List<ScreenRack.Frame> frames = desk().state().frames();
        table.setInput(frames);
        canvas.show(frames);
        setContentDescription(frames.isEmpty()
                ? Messages.Rack_none
                : NLS.bind(Messages.Rack_count, frames.size(), frames.stream().filter(one -> one.state() == ScreenRack.State.TO_RECLAIM).count()));
    }

    @Override
    public void setFocus() {
        canvas.setFocus();
    }
}
