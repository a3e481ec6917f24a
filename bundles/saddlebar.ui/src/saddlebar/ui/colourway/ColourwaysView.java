package saddlebar.ui.colourway;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.action.IMenuManager;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.preference.IPreferenceStore;
import org.eclipse.jface.util.IPropertyChangeListener;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.part.ViewPart;

import saddlebar.materials.cost.BookReader;
import saddlebar.materials.money.Prices;
import saddlebar.model.commission.Colourway;
import saddlebar.model.commission.Window;
import saddlebar.model.problem.Refusal;
import saddlebar.production.colourway.ColourwayApproval;
import saddlebar.production.colourway.ColourwayComparison.GlassBill;
import saddlebar.production.colourway.ColourwayComparison;
import saddlebar.production.colourway.Colourways;
import saddlebar.production.light.ColourShelf;
import saddlebar.production.light.GlassLook;
import saddlebar.production.light.WindowSketcher;
import saddlebar.ui.Columns;
import saddlebar.ui.StudioPreferences;
import saddlebar.ui.bench.EaselEditor;
import saddlebar.ui.bench.EaselFollower;
import saddlebar.ui.desk.CommissionDesk;
import saddlebar.ui.desk.OpenCommission;
import saddlebar.ui.desk.SelectionOf;
import saddlebar.ui.properties.PropertiesPage;

/** The colourways of the window on the Easel: the chosen one lies there; each with what its glass costs and how far it is from the one that is made. */
public final class ColourwaysView extends ViewPart {
    /** A line of the table. */
    private record Line(Colourway colourway, String name, String state, String cost, String beside) {
    }

    private CommissionDesk desk;
    private TableViewer table;
    private SelectionOf selection;
    private Label told;
    private EaselFollower follower;
    private ColourwayDeeds deeds;
    private boolean following;
    private final IPreferenceStore preferences = StudioPreferences.store();
    private final IPropertyChangeListener onPreferences = event -> Display.getDefault().asyncExec(this::refresh);
    private final CommissionDesk.Listener onDesk = new CommissionDesk.Listener() {
        @Override
        public void opened(OpenCommission commission) {
            refresh();
        }

        @Override
        public void closing(OpenCommission commission) {
            show(List.of());
        }

        @Override
        public void changed(OpenCommission commission) {
            refresh();
        }
    };

    @Override
    public void createPartControl(Composite parent) {
        desk = getSite().getService(CommissionDesk.class);
        Composite body = new Composite(parent, SWT.NONE);
        GridLayoutFactory.swtDefaults().applyTo(body);
        Composite frame = new Composite(body, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, true).hint(SWT.DEFAULT, 90).applyTo(frame);
        TableColumnLayout layout = new TableColumnLayout();
        frame.setLayout(layout);
        table = new TableViewer(frame, SWT.SINGLE | SWT.FULL_SELECTION | SWT.V_SCROLL | SWT.H_SCROLL | SWT.BORDER);
        table.getTable().setHeaderVisible(true);
        Columns columns = new Columns(table, layout);
        columns.add(ColourWords.Colourway_name, 2, "Spring tide xx", ColumnLabelProvider.createTextProvider(line -> ((Line) line).name));
        columns.add(ColourWords.Colourway_state, 2, ColourWords.Colourway_made, ColumnLabelProvider.createTextProvider(line -> ((Line) line).state));
        columns.add(ColourWords.Colourway_cost, 1, "8888.88 EUR", ColumnLabelProvider.createTextProvider(line -> ((Line) line).cost));
        columns.add(ColourWords.Colourway_beside, 3, "88 pieces differ, +888.88", ColumnLabelProvider.createTextProvider(line -> ((Line) line).beside));
        table.setContentProvider(ArrayContentProvider.getInstance());
        table.addSelectionChangedListener(event -> chosenHere());
        told = new Label(body, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).hint(100, SWT.DEFAULT).applyTo(told);
        selection = new SelectionOf(table) {
            @Override
            protected Object thing(Object line) {
                return ((Line) line).colourway;
            }
        };
        getSite().setSelectionProvider(selection);
        follower = new EaselFollower(getSite().getPage(), editor -> refresh());
        deeds = new ColourwayDeeds(getSite().getWorkbenchWindow(), () -> follower.front(), this::chosen);
        menus();
        preferences.addPropertyChangeListener(onPreferences);
        desk.addListener(onDesk);
        refresh();
    }

    private void menus() {
        MenuManager menu = new MenuManager();
        menu.setRemoveAllWhenShown(true);
        menu.addMenuListener(deeds::fill);
        table.getTable().setMenu(menu.createContextMenu(table.getTable()));
        IMenuManager view = getViewSite().getActionBars().getMenuManager();
        view.setRemoveAllWhenShown(true);
        view.addMenuListener(deeds::fill);
        deeds.fill(view);
        deeds.bar(getViewSite().getActionBars().getToolBarManager());
    }

    private Optional<Colourway> chosen() {
        return table.getStructuredSelection().getFirstElement() instanceof Line line ? Optional.of(line.colourway) : Optional.empty();
    }

    private void chosenHere() {
        deeds.update();
        tell();
        if (!following) {
            chosen().ifPresent(colourway -> follower.front().ifPresent(editor -> ShownColourway.show(editor, colourway)));
        }
    }

    private void refresh() {
        if (table.getTable().isDisposed() || follower == null) {
            return;
        }
        Optional<EaselEditor> editor = follower.front();
        Optional<Window> window = editor.flatMap(EaselEditor::modelWindow);
        editor.ifPresent(this::watch);
        if (window.isEmpty()) {
            show(List.of());
            return;
        }
        OpenCommission open = desk.commission().orElseThrow();
        List<GlassLook> looks = open.folder().studio().getGlass().stream().map(WindowSketcher::look).toList();
        ColourShelf colours = open.colours();
        Display display = table.getTable().getDisplay();
        Job job = Job.create(ColourWords.Glass_job, (ICoreRunnable) monitor -> {
            looks.forEach(colours::passed); // slow the first time: not on the screen's thread
            display.asyncExec(() -> {
                if (!table.getTable().isDisposed() && desk.commission().filter(now -> now == open).isPresent()
                        && follower.front().flatMap(EaselEditor::modelWindow).filter(now -> now == window.get()).isPresent()) {
                    show(lines(open, window.get(), colours));
                }
            });
        });
        job.setSystem(true);
        job.schedule();
    }

    private void watch(EaselEditor editor) {
        String key = ColourwaysView.class.getName() + System.identityHashCode(this);
        if (editor.easel().getData(key) == null) {
            editor.easel().setData(key, this);
            editor.easel().whenLookChanges(() -> {
                if (!table.getTable().isDisposed() && follower.front().filter(front -> front == editor).isPresent()) {
                    mark();
                }
            });
        }
    }

    private List<Line> lines(OpenCommission open, Window window, ColourShelf colours) {
        Optional<Prices> prices = prices(open);
        List<Line> lines = new ArrayList<>();
        for (Colourway colourway : window.getColourways()) {
            lines.add(new Line(colourway, Colourways.name(colourway), state(open, window, colourway), cost(colourway, prices),
                    beside(window, colourway, prices, colours)));
        }
        return lines;
    }

    private static Optional<Prices> prices(OpenCommission open) {
        try {
            return Optional.of(BookReader.read(open.folder().studio(), LocalDate.now(), open.folder().studio().getCurrency()));
        } catch (Refusal e) {
            return Optional.empty(); // told in the column of the cost
        }
    }

    private static String state(OpenCommission open, Window window, Colourway colourway) {
        String approved = colourway.isApproved()
                ? NLS.bind(ColourWords.Colourway_approved, colourway.getApprovedOn(), ColourwayApproval.of(colourway, open.commission())
                        .map(approval -> approval.getBy()).orElse(""))
                : "";
        String made = window.getChosen() == colourway ? ColourWords.Colourway_made : "";
        return approved.isEmpty() || made.isEmpty() ? approved + made : approved + ColourWords.List_comma + made;
    }

    private static String cost(Colourway colourway, Optional<Prices> prices) {
        if (prices.isEmpty()) {
            return ColourWords.Colourway_noBook;
        }
        GlassBill bill = ColourwayComparison.bill(colourway, prices.get());
        String amount = bill.amount().map(one -> SideBySideWords.money(one) + " " + bill.currency()).orElse(ColourWords.Colourway_noPrice);
        return bill.withoutGlass() == 0 ? amount : amount + ColourWords.List_comma + NLS.bind(ColourWords.Colourway_without, bill.withoutGlass());
    }

    private static String beside(Window window, Colourway colourway, Optional<Prices> prices, ColourShelf colours) {
        Colourway made = window.getChosen();
        if (made == null || made == colourway || prices.isEmpty()) {
            return "";
        }
        ColourwayComparison comparison = ColourwayComparison.of(made, colourway, StudioPreferences.light().behind(), colours, prices.get());
        return SideBySideWords.summary(comparison);
    }

    private void show(List<Line> lines) {
        if (table.getTable().isDisposed()) {
            return;
        }
        if (!lines.equals(table.getInput())) {
            table.setInput(lines);
        }
        mark();
        tell();
        deeds.update();
    }

    /** In full what the table may have no room for. */
    private void tell() {
        boolean none = !(table.getInput() instanceof List<?> lines) || lines.isEmpty();
        String words = none
                ? follower.front().isEmpty() ? ColourWords.Glass_noEasel : ColourWords.Glass_noColourway
                : table.getStructuredSelection().getFirstElement() instanceof Line line && !line.beside.isEmpty()
                        ? NLS.bind(ColourWords.Colourway_besideMade, new Object[] {line.name, line.beside})
                        : ColourWords.Colourway_hint;
        if (!words.equals(told.getText())) {
            told.setText(words);
            told.getParent().layout(true);
        }
    }

    /** The one that lies on the Easel. */
    private void mark() {
        Optional<Colourway> shown = ShownColourway.of(follower.front());
        following = true;
        try {
            shown.flatMap(one -> ((List<?>) table.getInput()).stream().map(Line.class::cast).filter(line -> line.colourway == one).findFirst())
                    .ifPresent(line -> table.setSelection(new StructuredSelection(line)));
        } finally {
            following = false;
        }
    }

    @Override
    public <T> T getAdapter(Class<T> adapter) {
        T properties = PropertiesPage.adapt(adapter, this);
        return properties != null ? properties : super.getAdapter(adapter);
    }

    @Override
    public void setFocus() {
        selection.focus();
    }

    @Override
    public void dispose() {
        if (follower != null) {
            follower.dispose();
            preferences.removePropertyChangeListener(onPreferences);
            desk.removeListener(onDesk);
        }
        super.dispose();
    }
}
