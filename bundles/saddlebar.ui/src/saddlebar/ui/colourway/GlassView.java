package saddlebar.ui.colourway;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.jobs.Job;
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
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.ISelectionListener;
import org.eclipse.ui.part.ViewPart;

import saddlebar.model.commission.Colourway;
import saddlebar.model.commission.GlassStock;
import saddlebar.model.commission.Piece;
import saddlebar.model.commission.Window;
import saddlebar.production.colourway.Colourways;
import saddlebar.production.light.ColourShelf;
import saddlebar.production.light.GlassLook;
import saddlebar.production.light.LightBehind;
import saddlebar.production.light.LightLook;
import saddlebar.production.light.WindowSketcher;
import saddlebar.ui.Columns;
import saddlebar.ui.StudioPreferences;
import saddlebar.ui.bench.EaselEditor;
import saddlebar.ui.bench.EaselFollower;
import saddlebar.ui.desk.CommissionDesk;
import saddlebar.ui.desk.OpenCommission;
import saddlebar.ui.desk.SelectionOf;
import saddlebar.ui.properties.PropertiesPage;

/** The studio's glass, each in its colour in the light and in words; the chosen pieces are cut from one of them. */
public final class GlassView extends ViewPart {
    /** A line of the table. */
    private record Line(GlassStock stock, GlassLook look, Optional<GlassReckoning> seen, long pieces) {
    }

    private CommissionDesk desk;
    private Combo light;
    private TableViewer table;
    private SelectionOf selection;
    private Label told;
    private Button cut;
    private Swatches swatches;
    private EaselFollower follower;
    private Job reckoning;
    private Map<GlassLook, GlassReckoning> seen = Map.of();
    private final IPreferenceStore preferences = StudioPreferences.store();
    private final IPropertyChangeListener onPreferences = event -> Display.getDefault().asyncExec(this::refresh);
    private final ISelectionListener onSelection = (part, chosen) -> tell();
    private final CommissionDesk.Listener onDesk = new CommissionDesk.Listener() {
        @Override
        public void opened(OpenCommission commission) {
            refresh();
        }

        @Override
        public void closing(OpenCommission commission) {
            show(List.of());
            tell();
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
        GridLayoutFactory.swtDefaults().numColumns(2).applyTo(body);
        new Label(body, SWT.NONE).setText(ColourWords.Glass_light);
        light = new Combo(body, SWT.READ_ONLY | SWT.DROP_DOWN);
        for (LightBehind behind : LightBehind.values()) {
            light.add(LightMenu.words(behind));
        }
        GridDataFactory.fillDefaults().grab(true, false).applyTo(light);
        light.addListener(SWT.Selection, event -> StudioPreferences.setLight(StudioPreferences.light()
                .withBehind(LightBehind.values()[light.getSelectionIndex()])));
        Composite frame = new Composite(body, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, true).span(2, 1).hint(SWT.DEFAULT, 120).applyTo(frame);
        TableColumnLayout layout = new TableColumnLayout();
        frame.setLayout(layout);
        table = new TableViewer(frame, SWT.SINGLE | SWT.FULL_SELECTION | SWT.V_SCROLL | SWT.H_SCROLL | SWT.BORDER);
        table.getTable().setHeaderVisible(true);
        swatches = new Swatches(table.getTable());
        columns(new Columns(table, layout));
        table.setContentProvider(ArrayContentProvider.getInstance());
        table.addSelectionChangedListener(event -> tell());
        table.addDoubleClickListener(event -> cut());
        selection = new SelectionOf(table) {
            @Override
            protected Object thing(Object line) {
                return ((Line) line).stock;
            }
        };
        getSite().setSelectionProvider(selection);
        told = new Label(body, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).span(2, 1).hint(100, SWT.DEFAULT).applyTo(told);
        cut = new Button(body, SWT.PUSH);
        cut.setText(ColourWords.Glass_cut);
        GridDataFactory.swtDefaults().span(2, 1).applyTo(cut);
        cut.addListener(SWT.Selection, event -> cut());
        preferences.addPropertyChangeListener(onPreferences);
        getSite().getPage().addSelectionListener(onSelection);
        desk.addListener(onDesk);
        follower = new EaselFollower(getSite().getPage(), editor -> refresh());
        refresh();
    }

    private void columns(Columns columns) {
        columns.add(ColourWords.Glass_name, 3, "     dusk violet xx", new ColumnLabelProvider() {
            @Override
            public String getText(Object line) {
                return ((Line) line).look.name();
            }

            @Override
            public Image getImage(Object line) {
                return ((Line) line).seen.map(one -> swatches.of(one.colour())).orElse(null);
            }
        });
        columns.add(ColourWords.Glass_colour, 2, NLS.bind(ColourWords.Hue_pale, ColourWords.Hue_yellow),
                ColumnLabelProvider.createTextProvider(line -> inWords((Line) line)));
        columns.add(ColourWords.Glass_passes, 1, "88 %", ColumnLabelProvider.createTextProvider(line -> ((Line) line).seen
                .flatMap(GlassReckoning::passes).map(share -> NLS.bind(ColourWords.Percent, Math.round(100 * share))).orElse("")));
        columns.add(ColourWords.Glass_pieces, 1, "88", ColumnLabelProvider.createTextProvider(line -> ((Line) line).pieces == 0
                ? ""
                : String.valueOf(((Line) line).pieces)));
        columns.add(ColourWords.Glass_price, 1, "888.88 EUR", ColumnLabelProvider.createTextProvider(line -> ((Line) line).stock.getPricePerM2() == null
                ? ColourWords.Glass_noPrice
                : SideBySideWords.money(((Line) line).stock.getPricePerM2()) + " " + currency()));
    }

    private static String inWords(Line line) {
        return line.seen.map(one -> one.colour().outOfGamut() ? NLS.bind(ColourWords.Glass_stronger, one.words()) : one.words()).orElse("");
    }

    private String currency() {
        return desk.commission().map(open -> open.folder().studio().getCurrency()).orElse("");
    }

    private Optional<EaselEditor> easel() {
        return follower == null ? Optional.empty() : follower.front();
    }

    private Optional<Colourway> colourway() {
        return ShownColourway.of(easel());
    }

    private void refresh() {
        if (table.getTable().isDisposed()) {
            return;
        }
        light.select(StudioPreferences.light().behind().ordinal());
        Optional<OpenCommission> open = desk.commission();
        easel().ifPresent(this::watch);
        show(lines(open));
        tell();
        open.ifPresent(this::reckon);
    }

    /** Another colourway has other glass. */
    private void watch(EaselEditor editor) {
        String key = GlassView.class.getName() + System.identityHashCode(this);
        if (editor.easel().getData(key) == null) {
            editor.easel().setData(key, this);
            editor.easel().whenLookChanges(() -> {
                if (!table.getTable().isDisposed() && easel().filter(front -> front == editor).isPresent()) {
                    show(lines(desk.commission()));
                    tell();
                }
            });
        }
    }

    private List<Line> lines(Optional<OpenCommission> open) {
        List<Line> lines = new ArrayList<>();
        Map<GlassStock, Long> counts = new HashMap<>();
        Optional<Colourway> colourway = colourway();
        colourway.ifPresent(shown -> Colourways.pieces(shown.getWindow())
                .forEach(piece -> Colourways.glass(piece, shown).ifPresent(glass -> counts.merge(glass, 1L, Long::sum))));
        open.ifPresent(commission -> commission.folder().studio().getGlass().forEach(stock -> {
            GlassLook look = WindowSketcher.look(stock);
            lines.add(new Line(stock, look, Optional.ofNullable(seen.get(look)), counts.getOrDefault(stock, 0L)));
        }));
        return lines;
    }

    /** The colours come later, from a thread of their own. */
    private void reckon(OpenCommission open) {
        if (reckoning != null) {
            reckoning.cancel();
        }
        List<GlassLook> looks = open.folder().studio().getGlass().stream().map(WindowSketcher::look).toList();
        LightLook look = StudioPreferences.light();
        ColourShelf colours = open.colours();
        Display display = table.getTable().getDisplay();
        Job job = Job.create(ColourWords.Glass_job, (ICoreRunnable) monitor -> {
            List<GlassReckoning> all = GlassReckoning.all(looks, look, colours);
            Map<GlassLook, GlassReckoning> known = new HashMap<>();
            for (int i = 0; i < looks.size(); i++) {
                known.put(looks.get(i), all.get(i));
            }
            display.asyncExec(() -> {
                if (!table.getTable().isDisposed() && !known.equals(seen)) {
                    seen = known;
                    show(lines(desk.commission()));
                }
            });
        });
        job.setSystem(true);
        reckoning = job;
        job.schedule();
    }

    private void show(List<Line> lines) {
        if (table.getTable().isDisposed() || lines.equals(table.getInput())) {
            return;
        }
        Optional<GlassStock> chosen = chosenGlass();
        table.setInput(lines);
        chosen.flatMap(glass -> lines.stream().filter(line -> line.stock == glass).findFirst())
                .ifPresent(line -> table.setSelection(new StructuredSelection(line)));
    }

    private Optional<GlassStock> chosenGlass() {
        return table.getStructuredSelection().getFirstElement() instanceof Line line ? Optional.of(line.stock) : Optional.empty();
    }

    private void tell() {
        if (told.isDisposed()) {
            return;
        }
        List<Piece> pieces = easel().map(EaselEditor::chosenPieces).orElse(List.of());
        Optional<Colourway> colourway = colourway();
        String words;
        if (desk.commission().isEmpty()) {
            words = ColourWords.Glass_noCommission;
        } else if (desk.commission().get().folder().studio().getGlass().isEmpty()) {
            words = ColourWords.Glass_noStock;
        } else if (colourway.isEmpty()) {
            words = easel().isEmpty() ? ColourWords.Glass_noEasel : ColourWords.Glass_noColourway;
        } else if (colourway.get().isApproved()) {
            words = NLS.bind(ColourWords.Glass_frozen, Colourways.name(colourway.get()), colourway.get().getApprovedOn());
        } else if (pieces.isEmpty()) {
            words = ColourWords.Glass_choosePieces;
        } else {
            words = NLS.bind(pieces.size() == 1 ? ColourWords.Glass_onePiece : ColourWords.Glass_chosenPieces, pieces.size() == 1
                    ? pieces.get(0).getNumber()
                    : pieces.size(), Colourways.name(colourway.get()));
        }
        cut.setEnabled(colourway.isPresent() && !colourway.get().isApproved() && !pieces.isEmpty() && chosenGlass().isPresent() && desk.canEdit());
        if (!words.equals(told.getText())) {
            told.setText(words);
            told.getParent().layout(true);
        }
    }

    private void cut() {
        Optional<EaselEditor> editor = easel();
        Optional<Colourway> colourway = colourway();
        Optional<GlassStock> glass = chosenGlass();
        List<Piece> pieces = editor.map(EaselEditor::chosenPieces).orElse(List.of());
        if (colourway.isPresent() && glass.isPresent() && !pieces.isEmpty()) {
            Window window = colourway.get().getWindow();
            new WindowEdit(desk, getSite().getShell()).perform(NLS.bind(ColourWords.Edit_cut, glass.get().getName()), window,
                    () -> Colourways.cut(colourway.get(), pieces, glass));
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
            getSite().getPage().removeSelectionListener(onSelection);
            desk.removeListener(onDesk);
        }
        if (reckoning != null) {
            reckoning.cancel();
        }
        super.dispose();
    }
}
