package saddlebar.ui.tracing;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.List;

import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;

import saddlebar.ui.Columns;

/** The way back as a drawing and, beside it, as a table that says the same. */
public final class WayBackView extends TraceTableView<Trail.Step> {
    private ScrolledComposite scrolled;
    private WayBackCanvas canvas;

    @Override
    protected void createParts(Composite parent) {
        SashForm sash = new SashForm(parent, SWT.HORIZONTAL);
        scrolled = new ScrolledComposite(sash, SWT.H_SCROLL | SWT.V_SCROLL);
        canvas = new WayBackCanvas(scrolled, this::chosenOnDrawing);
        scrolled.setContent(canvas);
        scrolled.setExpandHorizontal(true);
        scrolled.setExpandVertical(true);
        createTable(sash);
        sash.setWeights(62, 38);
    }

    @Override
    protected void columns(Columns columns) {
        DateTimeFormatter day = DateTimeFormatter.ofLocalizedDate(FormatStyle.SHORT).withZone(ZoneId.systemDefault());
        column(columns, Messages.Column_when, 0, "28.08.2026", step -> day.format(step.when()));
        column(columns, Messages.Column_what, 1, "screen loaded", step -> KindWords.of(step.kind()));
        column(columns, Messages.Column_place, 1, "W08/88/trace", Trail.Step::place);
        column(columns, Messages.Column_with, 3, "S05, trace black, M001", Trail.Step::with);
        column(columns, Messages.Column_who, 1, "Marlo", Trail.Step::who);
    }

    @Override
    protected List<Trail.Step> lines(TraceDesk from) {
        return from.trail().steps();
    }

    @Override
    protected String heading(TraceDesk from) {
        return lines(from).isEmpty() ? Messages.WayBack_none : NLS.bind(Messages.WayBack_count, lines(from).size() - 1, from.trail().title());
    }

    @Override
    protected void chosen(Trail.Step step) {
        canvas.choose(desk().trail().steps().indexOf(step));
        desk().meet(step);
    }

    private void chosenOnDrawing(int step) {
        Trail.Step chosen = desk().trail().steps().get(step);
        table().setSelection(new StructuredSelection(chosen), true);
        desk().meet(chosen);
    }

    @Override
    protected void show() {
        super.show();
        if (!canvas.isDisposed()) {
            canvas.show(desk().trail());
            Point size = canvas.size();
            scrolled.setMinSize(size);
        }
    }

    @Override
    public void setFocus() {
        canvas.setFocus();
    }
}
