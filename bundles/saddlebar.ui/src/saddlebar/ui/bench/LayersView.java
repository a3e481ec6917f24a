package saddlebar.ui.bench;

import java.util.List;
import java.util.Optional;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.CheckStateChangedEvent;
import org.eclipse.jface.viewers.CheckboxTableViewer;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.ICheckStateProvider;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.ui.part.ViewPart;

import saddlebar.model.commission.DesignLayer;
import saddlebar.model.commission.MakingState;
import saddlebar.ui.Columns;
import saddlebar.ui.Messages;
import saddlebar.ui.desk.SelectionOf;
import saddlebar.ui.easel.EaselCanvas;
import saddlebar.production.light.EaselScene;
import saddlebar.production.light.SceneLayer;
import saddlebar.ui.properties.PropertiesPage;
import saddlebar.ui.tree.MakingWords;
import saddlebar.ui.tree.StateBoard;

/** The layers of the window on the Easel: which are shown, with what paint, how far they are made; and which colourway lies there. */
public final class LayersView extends ViewPart {
    /** A line of the table: the layer as shown, and the model's where there is one. */
    private record Line(SceneLayer shown, Optional<DesignLayer> made) {
    }

    private Combo colourway;
    private CheckboxTableViewer table;
    private SelectionOf selection;
    private StateBoard states;
    private final Runnable onStates = () -> table.refresh();
    private EaselFollower follower;

    @Override
    public void createPartControl(Composite parent) {
        states = getSite().getService(StateBoard.class);
        Composite body = new Composite(parent, SWT.NONE);
        GridLayoutFactory.swtDefaults().numColumns(2).applyTo(body);
        new Label(body, SWT.NONE).setText(Messages.Layers_colourway);
        colourway = new Combo(body, SWT.READ_ONLY | SWT.DROP_DOWN);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(colourway);
        colourway.addListener(SWT.Selection, event -> easel().ifPresent(easel -> easel.setLook(easel.look()
                .withColourway(Math.max(0, colourway.getSelectionIndex())))));
        Composite frame = new Composite(body, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, true).span(2, 1).applyTo(frame);
        TableColumnLayout layout = new TableColumnLayout();
        frame.setLayout(layout);
        table = new CheckboxTableViewer(new Table(frame, SWT.CHECK | SWT.FULL_SELECTION | SWT.V_SCROLL | SWT.H_SCROLL | SWT.BORDER));
        table.getTable().setHeaderVisible(true);
        Columns columns = new Columns(table, layout);
        columns.add(Messages.Layers_shown, 1, "      lettering", new ColumnLabelProvider() {
            @Override
            public String getText(Object line) {
                return ((Line) line).shown.name();
            }
        });
        columns.add(Messages.Property_paint, 2, "silver stain amber",
                ColumnLabelProvider.createTextProvider(line -> ((Line) line).made.map(DesignLayer::getPaint)
                        .map(paint -> paint.getName()).orElse(Messages.State_noPaint)));
        columns.add(Messages.Property_state, 1, MakingWords.of(MakingState.ON_SHEET), ColumnLabelProvider.createTextProvider(line -> ((Line) line).made
                .map(layer -> MakingWords.of(states.states().of(layer))).orElse("")));
        table.setContentProvider(ArrayContentProvider.getInstance());
        table.setCheckStateProvider(new ICheckStateProvider() {
            @Override
            public boolean isChecked(Object line) {
                return easel().map(easel -> easel.look().showsLayer(((Line) line).shown.id())).orElse(false);
            }

            @Override
            public boolean isGrayed(Object line) {
                return false;
            }
        });
        table.addCheckStateListener(this::checked);
        selection = new SelectionOf(table) {
            @Override
            protected Object thing(Object line) {
                return ((Line) line).made.isPresent() ? ((Line) line).made.get() : ((Line) line).shown;
            }
        };
        getSite().setSelectionProvider(selection);
        states.addListener(onStates);
        follower = new EaselFollower(getSite().getPage(), this::follow);
        follow(follower.front());
    }

    private Optional<EaselCanvas> easel() {
        return follower == null ? Optional.empty() : follower.front().map(EaselEditor::easel);
    }

    private void checked(CheckStateChangedEvent event) {
        easel().ifPresent(easel -> easel.setLook(easel.look().withLayer(((Line) event.getElement()).shown.id(), event.getChecked())));
    }

    private void follow(Optional<EaselEditor> editor) {
        if (table.getTable().isDisposed()) {
            return;
        }
        Optional<EaselScene> scene = editor.flatMap(easel -> easel.easel().scene());
        colourway.setItems(scene.map(EaselScene::colourways).orElse(List.of()).stream().map(name -> name.isEmpty() ? Messages.Colourway_unnamed : name)
                .toArray(String[]::new));
        editor.ifPresent(easel -> {
            watch(easel.easel());
            showLook(easel.easel());
        });
        colourway.setEnabled(colourway.getItemCount() > 1);
        table.setInput(editor.map(LayersView::lines).orElse(List.of()));
        setContentDescription(scene.isEmpty() || scene.get().layers().isEmpty() ? Messages.Layers_none : "");
    }

    /** What is shown may be changed from the menu too. */
    private void watch(EaselCanvas easel) {
        String key = LayersView.class.getName() + System.identityHashCode(this);
        if (easel.getData(key) == null) {
            easel.setData(key, this);
            easel.whenLookChanges(() -> {
                if (!table.getTable().isDisposed() && easel().filter(front -> front == easel).isPresent()) {
                    showLook(easel);
                    table.refresh();
                }
            });
        }
    }

    private void showLook(EaselCanvas easel) {
        if (easel.look().colourway() < colourway.getItemCount()) {
            colourway.select(easel.look().colourway());
        }
    }

    private static List<Line> lines(EaselEditor editor) {
        return editor.easel().scene().stream().flatMap(scene -> scene.layers().stream())
                .map(layer -> new Line(layer, editor.layer(layer.id()))).toList();
    }

    @Override
    public void setFocus() {
        selection.focus();
    }

    @Override
    public void dispose() {
        if (follower != null) {
            follower.dispose();
            states.removeListener(onStates);
        }
        super.dispose();
    }

    @Override
    public <T> T getAdapter(Class<T> adapter) {
        T properties = PropertiesPage.adapt(adapter, this);
        return properties != null ? properties : super.getAdapter(adapter);
    }
}
