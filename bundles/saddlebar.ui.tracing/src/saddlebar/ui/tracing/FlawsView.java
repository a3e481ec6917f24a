package saddlebar.ui.tracing;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.List;

import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;

import saddlebar.ui.Columns;

/** Every recorded defect, the latest first, with its photo and a pin on the piece. */
public final class FlawsView extends TraceTableView<Flaw> {
    private FlawCanvas picture;

    @Override
    protected void createParts(Composite parent) {
        SashForm sash = new SashForm(parent, SWT.VERTICAL);
        createTable(sash);
        picture = new FlawCanvas(sash);
        sash.setWeights(55, 45);
    }

    @Override
    protected void columns(Columns columns) {
        DateTimeFormatter day = DateTimeFormatter.ofLocalizedDate(FormatStyle.SHORT).withZone(ZoneId.systemDefault());
        column(columns, Messages.Column_when, 0, "28.08.2026", flaw -> day.format(flaw.when()));
        column(columns, Messages.Column_place, 2, "W08/88/trace", Flaw::place);
        column(columns, Messages.Column_defect, 2, "matt rubs off", Flaw::kind);
        column(columns, Messages.Column_severity, 1, "middle", Flaw::severity);
        column(columns, Messages.Column_who, 1, "Marlo", Flaw::who);
    }

    @Override
    protected List<Flaw> lines(TraceDesk from) {
        return from.overview().flaws();
    }

    @Override
    protected String heading(TraceDesk from) {
        return lines(from).isEmpty() ? Messages.Flaws_none : NLS.bind(Messages.Flaws_count, lines(from).size());
    }

    @Override
    protected void chosen(Flaw flaw) {
        desk().choose(flaw);
    }

    @Override
    protected void show() {
        super.show();
        if (!picture.isDisposed()) {
            picture.show(desk().chosen(), desk().commission());
        }
    }
}
