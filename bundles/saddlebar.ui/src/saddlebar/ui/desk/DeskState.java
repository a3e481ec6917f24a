package saddlebar.ui.desk;

import java.util.Map;

import org.eclipse.ui.AbstractSourceProvider;
import org.eclipse.ui.ISources;
import org.eclipse.ui.services.IServiceLocator;

/** Tells commands how things stand on the desk: {@value #OPEN} whether a commission lies open, {@value #EDITABLE} whether it may be changed. */
public final class DeskState extends AbstractSourceProvider {
    static final String OPEN = "saddlebar.ui.commissionOpen";
    static final String EDITABLE = "saddlebar.ui.commissionEditable";
    static final String DIRTY = "saddlebar.ui.commissionDirty";

    private CommissionDesk desk;
    private final CommissionDesk.Listener onDesk = new CommissionDesk.Listener() {
        @Override
        public void opened(OpenCommission commission) {
            tell();
        }

        @Override
        public void closing(OpenCommission commission) {
            fireSourceChanged(ISources.WORKBENCH, Map.of(OPEN, false, EDITABLE, false, DIRTY, false));
        }

        @Override
        public void changed(OpenCommission commission) {
            tell();
        }
    };

    @Override
    public void initialize(IServiceLocator locator) {
        desk = locator.getService(CommissionDesk.class);
        desk.addListener(onDesk);
    }

    private void tell() {
        fireSourceChanged(ISources.WORKBENCH, getCurrentState());
    }

    @Override
    public Map<String, Object> getCurrentState() {
        return Map.of(OPEN, desk.commission().isPresent(), EDITABLE, desk.canEdit(), DIRTY,
                desk.commission().map(OpenCommission::isDirty).orElse(false));
    }

    @Override
    public String[] getProvidedSourceNames() {
        return new String[] {OPEN, EDITABLE, DIRTY};
    }

    @Override
    public void dispose() {
        desk.removeListener(onDesk);
    }
}
