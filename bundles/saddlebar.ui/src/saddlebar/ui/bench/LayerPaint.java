package saddlebar.ui.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.IWorkbenchSite;

import saddlebar.model.commission.DesignLayer;
import saddlebar.model.commission.Paint;
import saddlebar.production.colourway.Colourways;
import saddlebar.ui.colourway.ColourWords;
import saddlebar.ui.colourway.WindowEdit;
import saddlebar.ui.desk.CommissionDesk;

/** Which of the studio's paints the chosen layer is painted with; can be taken back like every edit. */
final class LayerPaint {
    private final IWorkbenchSite site;
    private final CommissionDesk desk;
    private final Combo combo;
    private List<Paint> paints = List.of();
    private Optional<DesignLayer> layer = Optional.empty();

    /** @param parent with two columns */
    LayerPaint(Composite parent, IWorkbenchSite site) {
        this.site = site;
        this.desk = site.getService(CommissionDesk.class);
        new Label(parent, SWT.NONE).setText(ColourWords.Layer_paint);
        combo = new Combo(parent, SWT.READ_ONLY | SWT.DROP_DOWN);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(combo);
        combo.addListener(SWT.Selection, event -> paint());
        show(Optional.empty());
    }

    void show(Optional<DesignLayer> chosen) {
        layer = chosen;
        paints = new ArrayList<>();
        paints.add(null);
        desk.commission().ifPresent(open -> paints.addAll(open.folder().studio().getPaints()));
        combo.setItems(paints.stream().map(paint -> paint == null ? ColourWords.Layer_noPaint : String.valueOf(paint.getName())).toArray(String[]::new));
        combo.setEnabled(chosen.isPresent() && desk.canEdit());
        chosen.ifPresent(one -> combo.select(Math.max(0, paints.indexOf(one.getPaint()))));
    }

    private void paint() {
        Paint wanted = paints.get(combo.getSelectionIndex());
        layer.ifPresent(one -> {
            if (one.getPaint() != wanted && !new WindowEdit(desk, site.getShell()).perform(NLS.bind(ColourWords.Edit_paint, one.getName()),
                    one.getPanel().getWindow(), () -> Colourways.paint(one, Optional.ofNullable(wanted)))) {
                show(layer);
            }
        });
    }
}
