package saddlebar.ui.properties;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.viewers.ISelection;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.BusyIndicator;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.forms.widgets.FormToolkit;
import org.eclipse.ui.views.properties.tabbed.AbstractPropertySection;
import org.eclipse.ui.views.properties.tabbed.TabbedPropertySheetPage;

import saddlebar.model.commission.Window;
import saddlebar.model.problem.Refusal;
import saddlebar.production.pieces.RecordedPieces;
import saddlebar.ui.StudioPreferences;
import saddlebar.ui.desk.CommissionDesk;
import saddlebar.ui.desk.Edits;
import saddlebar.ui.desk.OpenCommission;
import saddlebar.ui.tree.StateBoard;
import saddlebar.ui.tree.WindowNode;

/** Shows rows as labels and fields. A field's value is taken when it is left or Enter is pressed; Escape puts the old one back. */
abstract class RowsSection extends AbstractPropertySection {
    private Composite body;
    private CommissionDesk desk;
    private StateBoard states;
    private final Runnable onStates = this::refresh;
    private Object thing;
    private Optional<EObject> again = Optional.empty();
    private List<String> shape = List.of();
    private final List<Text> fields = new ArrayList<>();
    private List<Row> rows = List.of();
    private final CommissionDesk.Listener onDesk = new CommissionDesk.Listener() {
        @Override
        public void changed(OpenCommission commission) {
            refresh();
        }

        @Override
        public void closing(OpenCommission commission) {
            again = thing instanceof EObject object && object.eResource() != null ? Optional.of(object) : Optional.empty();
            thing = null;
            refresh();
        }

        @Override
        public void opened(OpenCommission commission) {
            if (thing == null && again.isPresent()) {
                thing = sameIn(commission, again.get()).orElse(null);
                refresh();
            }
            again = Optional.empty();
        }
    };

    /** The thing that the commission, read anew, has in place of one of before; none if it is gone or cannot be read. */
    private static Optional<EObject> sameIn(OpenCommission commission, EObject before) {
        try {
            if (EcoreUtil.getRootContainer(before) instanceof Window window) {
                commission.window(window.getName()); // loaded the store's way before it is looked into
            }
            return Optional.ofNullable(commission.folder().resourceSet().getEObject(EcoreUtil.getURI(before), false));
        } catch (Refusal e) {
            return Optional.empty();
        }
    }

    /** General things, or those of making. */
    abstract List<Row> rows(RowsOf rowsOf, Object shown);

    @Override
    public void createControls(Composite parent, TabbedPropertySheetPage page) {
        super.createControls(parent, page);
        body = getWidgetFactory().createFlatFormComposite(parent);
        GridLayoutFactory.swtDefaults().numColumns(2).spacing(12, 4).applyTo(body);
        desk = PlatformUI.getWorkbench().getService(CommissionDesk.class);
        desk.addListener(onDesk);
        states = PlatformUI.getWorkbench().getService(StateBoard.class);
        states.addListener(onStates);
    }

    @Override
    public void setInput(IWorkbenchPart part, ISelection selection) {
        super.setInput(part, selection);
        Object first = selection instanceof IStructuredSelection structured ? structured.getFirstElement() : null;
        thing = first instanceof WindowNode node ? desk.commission().flatMap(open -> open.window(node.name())).orElse(null) : first;
    }

    @Override
    public void refresh() {
        if (body == null || body.isDisposed()) {
            return;
        }
        Optional<Edits> edits = desk.canEdit() ? desk.commission().map(OpenCommission::edits) : Optional.empty();
        rows = thing == null ? List.of() : rows(new RowsOf(StudioPreferences.lengths(), edits, states.states(), this::recorded), thing);
        List<String> wanted = rows.stream().map(row -> row.label() + row.edit().isPresent() + row.lines()).toList();
        if (!wanted.equals(shape)) {
            build();
            shape = wanted;
        }
        for (int i = 0; i < rows.size(); i++) {
            Text field = fields.get(i);
            if (!field.getText().equals(rows.get(i).value())) {
                field.setText(rows.get(i).value());
            }
        }
    }

    private void build() {
        for (Control child : body.getChildren()) {
            child.dispose();
        }
        fields.clear();
        for (int i = 0; i < rows.size(); i++) {
            Row row = rows.get(i);
            Label label = getWidgetFactory().createLabel(body, row.label());
            GridDataFactory.swtDefaults().align(SWT.BEGINNING, row.lines() > 1 ? SWT.BEGINNING : SWT.CENTER).applyTo(label);
            fields.add(row.edit().isPresent() ? editable(row, i) : fact(row));
        }
        body.getParent().layout(true, true);
    }

    /** A text that can be selected and copied, and that a screen reader finds, but looks like a label. */
    private Text fact(Row row) {
        Text text = new Text(body, SWT.READ_ONLY);
        getWidgetFactory().adapt(text, true, false);
        text.setData(FormToolkit.KEY_DRAW_BORDER, Boolean.FALSE);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(text);
        text.setToolTipText(row.label());
        return text;
    }

    private Text editable(Row row, int index) {
        Text text = getWidgetFactory().createText(body, "", row.lines() > 1 ? SWT.MULTI | SWT.WRAP | SWT.V_SCROLL | SWT.BORDER : SWT.SINGLE | SWT.BORDER);
        GridDataFactory.fillDefaults().grab(true, false).hint(SWT.DEFAULT, row.lines() * text.getLineHeight()).applyTo(text);
        text.addListener(SWT.FocusOut, event -> take(text, index));
        text.addListener(SWT.DefaultSelection, event -> take(text, index));
        text.addListener(SWT.KeyDown, event -> {
            if (event.character == SWT.ESC) {
                text.setText(rows.get(index).value());
            }
        });
        return text;
    }

    private void take(Text text, int index) {
        if (index < rows.size()) {
            Row row = rows.get(index);
            if (!text.getText().equals(row.value())) {
                try {
                    row.edit().ifPresent(edit -> edit.accept(text.getText()));
                } catch (Refusal refusal) {
                    text.setText(row.value());
                    MessageDialog.openError(text.getShell(), row.label(), refusal.getMessage());
                }
            }
        }
    }

    /** Ids of pieces that records name; a record that cannot be read names none, as its problem tells elsewhere. */
    private Set<String> recorded() {
        Set<String> ids = new HashSet<>();
        desk.commission().ifPresent(open -> BusyIndicator.showWhile(body.getDisplay(), () -> {
            try {
                ids.addAll(RecordedPieces.ids(open.folder()));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }));
        return ids;
    }

    @Override
    public void dispose() {
        if (desk != null) {
            desk.removeListener(onDesk);
            states.removeListener(onStates);
        }
        super.dispose();
    }

    @Override
    public boolean shouldUseExtraSpace() {
        return true;
    }
}
