package saddlebar.ui.glazing;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.part.ViewPart;

import saddlebar.production.cost.CommissionCosts;

/** A part over the cost desk: what is to be said stands above its tables, and each change of the commission shows at once. */
abstract class CostPart extends ViewPart {
    static final int NARROW_PT = 60;

    private CostDesk costs;
    private final Runnable onCosts = this::refresh;
    private Composite body;
    private Label words;

    @Override
    public final void createPartControl(Composite parent) {
        costs = getSite().getService(CostDesk.class);
        body = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().margins(6, 4).spacing(6, 3).applyTo(body);
        words = line(body);
        fill(body);
        costs.addListener(onCosts);
        refresh();
    }

    static Label line(Composite parent) {
        Label label = new Label(parent, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).hint(NARROW_PT, SWT.DEFAULT).applyTo(label);
        return label;
    }

    final CostDesk costs() {
        return costs;
    }

    abstract void fill(Composite parent);

    /** @return what is said above */
    abstract String show(CommissionCosts now);

    /** Nothing is reckoned. */
    abstract void clear();

    final void refresh() {
        if (body.isDisposed()) {
            return;
        }
        if (costs.costs().isPresent()) {
            words.setText(show(costs.costs().get()));
        } else {
            clear();
            words.setText(costs.commission().isEmpty() ? Messages.Cost_openFirst : costs.trouble().isEmpty() ? Messages.Cost_reckoning : costs.trouble());
        }
        body.layout(true, true);
    }

    @Override
    public void setFocus() {
        body.setFocus();
    }

    @Override
    public void dispose() {
        if (costs != null) {
            costs.removeListener(onCosts);
        }
        super.dispose();
    }
}
