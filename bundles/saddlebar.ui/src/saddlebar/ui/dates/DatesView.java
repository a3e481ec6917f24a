package saddlebar.ui.dates;

import java.time.LocalDate;
import java.util.List;

import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.part.ViewPart;

import saddlebar.ui.Columns;
import saddlebar.ui.colourway.ColourWords;
import saddlebar.ui.desk.CommissionDesk;
import saddlebar.ui.desk.OpenCommission;
import saddlebar.ui.properties.PropertiesPage;

/** The dates of the commission: what is due when, what is late, what is done. */
public final class DatesView extends ViewPart {
    private CommissionDesk desk;
    private TableViewer table;
    private final CommissionDesk.Listener onDesk = new CommissionDesk.Listener() {
        @Override
        public void opened(OpenCommission commission) {
            show(DueDay.of(commission.commission()), ColourWords.Dates_none);
        }

        @Override
        public void closing(OpenCommission commission) {
            show(List.of(), ColourWords.Dates_closed);
        }

        @Override
        public void changed(OpenCommission commission) {
            opened(commission);
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
        Columns columns = new Columns(table, layout);
        columns.add(ColourWords.Dates_what, 3, "W01 Spring tide", ColumnLabelProvider.createTextProvider(day -> ((DueDay) day).what()));
        columns.add(ColourWords.Dates_due, 1, "28 Nov 2028", ColumnLabelProvider.createTextProvider(day -> ((DueDay) day).dueWords()));
        columns.add(ColourWords.Dates_state, 1, "in 888 days", ColumnLabelProvider.createTextProvider(day -> ((DueDay) day).stateWords(LocalDate.now())));
        table.setContentProvider(ArrayContentProvider.getInstance());
        desk.addListener(onDesk);
        desk.commission().ifPresentOrElse(onDesk::opened, () -> show(List.of(), ColourWords.Dates_closed));
    }

    private void show(List<DueDay> days, String ifNone) {
        if (!table.getTable().isDisposed()) {
            table.setInput(days);
            setContentDescription(days.isEmpty() ? ifNone : "");
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
        if (desk != null) {
            desk.removeListener(onDesk);
        }
        super.dispose();
    }
}
