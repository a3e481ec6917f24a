package saddlebar.ui.colourway;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.TableColumn;

import saddlebar.materials.cost.BookReader;
import saddlebar.materials.money.Prices;
import saddlebar.model.commission.Colourway;
import saddlebar.model.commission.Window;
import saddlebar.model.problem.Refusal;
import saddlebar.production.colourway.ColourwayComparison;
import saddlebar.production.colourway.ColourwayComparison.GlassBill;
import saddlebar.production.colourway.ColourwayComparison.PieceDifference;
import saddlebar.production.colourway.Colourways;
import saddlebar.ui.Columns;
import saddlebar.ui.Messages;
import saddlebar.ui.StudioPreferences;
import saddlebar.ui.desk.OpenCommission;
import saddlebar.ui.desk.SelectionOf;

/** Where colourways differ from the first of them: a line a piece, for each its glass and how far its colour is. */
final class DifferenceTable {
    private record Line(int number, String pieceId, List<String> cells) {
    }

    private final Composite frame;
    private final TableViewer table;
    private final SelectionOf selection;
    private List<Integer> shown = List.of();
    private List<String> words = List.of();
    private OpenCommission commission;
    private String windowName = "";

    /** @param choose told of a piece that is chosen here */
    DifferenceTable(Composite parent, Consumer<String> choose) {
        frame = new Composite(parent, SWT.NONE);
        frame.setLayout(new TableColumnLayout());
        table = new TableViewer(frame, SWT.SINGLE | SWT.FULL_SELECTION | SWT.V_SCROLL | SWT.H_SCROLL);
        table.getTable().setHeaderVisible(true);
        table.setContentProvider(ArrayContentProvider.getInstance());
        selection = new SelectionOf(table) {
            @Override
            protected Object thing(Object line) {
                return commission.piece(windowName, ((Line) line).pieceId).map(Object.class::cast).orElse(line);
            }
        };
        table.addSelectionChangedListener(event -> {
            if (table.getStructuredSelection().getFirstElement() instanceof Line line) {
                choose.accept(line.pieceId);
            }
        });
    }

    SelectionOf selection() {
        return selection;
    }

    /** What stands below a picture. */
    String words(int picture) {
        return picture < words.size() ? words.get(picture) : "";
    }

    void mark(String pieceId) {
        if (table.getInput() instanceof List<?> lines) {
            lines.stream().map(Line.class::cast).filter(line -> line.pieceId.equals(pieceId)).findFirst()
                    .ifPresent(line -> table.setSelection(new StructuredSelection(line), true));
        }
    }

    /** @param indices of the colourways, the first is what the others are set beside */
    void show(OpenCommission open, Window window, List<Integer> indices) {
        commission = open;
        windowName = window.getName();
        List<Colourway> colourways = indices.stream().filter(index -> index < window.getColourways().size()).map(window.getColourways()::get).toList();
        if (colourways.isEmpty()) {
            table.setInput(List.of());
            return;
        }
        Prices prices;
        try {
            prices = BookReader.read(open.folder().studio(), LocalDate.now(), open.folder().studio().getCurrency());
        } catch (Refusal e) {
            words = List.of(e.getMessage());
            return;
        }
        List<ColourwayComparison> comparisons = colourways.stream().map(other -> ColourwayComparison.of(colourways.get(0), other,
                StudioPreferences.light().behind(), open.colours(), prices)).toList();
        words = new ArrayList<>();
        for (int i = 0; i < comparisons.size(); i++) {
            String cost = cost(comparisons.get(i).other());
            words.add(i == 0 ? cost + "\n" + ColourWords.Beside_first : cost + "\n" + SideBySideWords.summary(comparisons.get(i)));
        }
        columns(indices, colourways.stream().map(Colourways::name).toList());
        table.setInput(lines(comparisons));
    }

    private static String cost(GlassBill bill) {
        String amount = bill.amount().map(one -> NLS.bind(ColourWords.Beside_cost, SideBySideWords.money(one), bill.currency())).orElse(bill.why());
        return bill.withoutGlass() == 0 ? amount : amount + ColourWords.List_comma + NLS.bind(ColourWords.Colourway_without, bill.withoutGlass());
    }

    private static List<Line> lines(List<ColourwayComparison> comparisons) {
        List<Line> lines = new ArrayList<>();
        List<PieceDifference> first = comparisons.get(0).pieces();
        for (int i = 0; i < first.size(); i++) {
            List<String> cells = new ArrayList<>();
            boolean differs = comparisons.size() == 1;
            for (int c = 0; c < comparisons.size(); c++) {
                PieceDifference piece = comparisons.get(c).pieces().get(i);
                cells.add(piece.other().isEmpty() ? Messages.Glass_unchosen : piece.other());
                if (c > 0) {
                    cells.add(SideBySideWords.difference(piece));
                    differs |= piece.differs();
                }
            }
            if (differs) {
                lines.add(new Line(first.get(i).number(), first.get(i).pieceId(), cells));
            }
        }
        return lines;
    }

    /** New ones where other colourways are set side by side. */
    private void columns(List<Integer> indices, List<String> names) {
        if (indices.equals(shown) && table.getTable().getColumnCount() == 2 * names.size()) {
            return;
        }
        shown = List.copyOf(indices);
        for (TableColumn column : table.getTable().getColumns()) {
            column.dispose();
        }
        TableColumnLayout layout = new TableColumnLayout();
        frame.setLayout(layout);
        Columns columns = new Columns(table, layout);
        columns.add(Messages.Property_number, 0, "8888", ColumnLabelProvider.createTextProvider(line -> String.valueOf(((Line) line).number)));
        for (int c = 0; c < names.size(); c++) {
            int cell = c == 0 ? 0 : 2 * c - 1;
            columns.add(names.get(c), 2, "dusk violet", cell(cell));
            if (c > 0) {
                columns.add(NLS.bind(ColourWords.Beside_differs, names.get(0)), 2, ColourWords.Beside_near, cell(cell + 1));
            }
        }
        frame.layout(true, true);
    }

    private static ColumnLabelProvider cell(int index) {
        return ColumnLabelProvider.createTextProvider(line -> Optional.of(((Line) line).cells).filter(cells -> index < cells.size())
                .map(cells -> cells.get(index)).orElse(""));
    }
}
