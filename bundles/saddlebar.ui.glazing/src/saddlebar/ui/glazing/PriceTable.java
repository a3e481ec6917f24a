package saddlebar.ui.glazing;

import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.Supplier;

import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.CellEditor;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.jface.viewers.EditingSupport;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.jface.viewers.TextCellEditor;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;

import saddlebar.model.commission.PriceBook;
import saddlebar.model.commission.PriceItem;

/** The price book, typed in cell by cell. */
final class PriceTable {
    private final TableViewer viewer;
    private final Supplier<Optional<PriceSheet>> sheet;
    private final Consumer<String> wrong;
    private Optional<PriceBook> book = Optional.empty();

    /** @param sheet empty where nothing may be changed */
    PriceTable(Composite parent, Supplier<Optional<PriceSheet>> sheet, Consumer<String> wrong) {
        this.sheet = sheet;
        this.wrong = wrong;
        Composite frame = new Composite(parent, SWT.NONE);
        TableColumnLayout layout = new TableColumnLayout();
        frame.setLayout(layout);
        viewer = new TableViewer(frame, SWT.FULL_SELECTION | SWT.SINGLE | SWT.BORDER | SWT.V_SCROLL);
        viewer.getTable().setHeaderVisible(true);
        viewer.setContentProvider(ArrayContentProvider.getInstance());
        column(layout, Messages.Price_name, 4, SWT.LEFT, PriceTable::name);
        column(layout, Messages.Price_unit, 3, SWT.LEFT, PriceTable::unit);
        editable(column(layout, Messages.Price_price, 2, SWT.RIGHT, this::price), row -> true, this::price,
                (found, row) -> typed -> found.takePrice(row, typed));
        editable(column(layout, Messages.Price_from, 2, SWT.LEFT, PriceTable::day), row -> row.item().isPresent(), PriceTable::day,
                (found, row) -> typed -> found.takeDay(row.item().orElseThrow(), typed));
        editable(column(layout, Messages.Price_currency, 2, SWT.LEFT, PriceTable::currency), row -> row.item().isPresent(), PriceTable::currency,
                (found, row) -> typed -> found.takeCurrency(row.item().orElseThrow(), typed));
    }

    private TableViewerColumn column(TableColumnLayout layout, String title, int share, int align, Function<PriceRow, String> words) {
        TableViewerColumn column = new TableViewerColumn(viewer, align);
        column.getColumn().setText(title);
        layout.setColumnData(column.getColumn(), new ColumnWeightData(share, 50, true));
        column.setLabelProvider(ColumnLabelProvider.createTextProvider(row -> words.apply((PriceRow) row)));
        return column;
    }

    private void editable(TableViewerColumn column, Predicate<PriceRow> can, Function<PriceRow, String> value,
            BiFunction<PriceSheet, PriceRow, Function<String, Optional<String>>> take) {
        column.setEditingSupport(new EditingSupport(viewer) {
            @Override
            protected CellEditor getCellEditor(Object element) {
                return new TextCellEditor(viewer.getTable());
            }

            @Override
            protected boolean canEdit(Object element) {
                return sheet.get().isPresent() && can.test((PriceRow) element);
            }

            @Override
            protected Object getValue(Object element) {
                return value.apply((PriceRow) element);
            }

            @Override
            protected void setValue(Object element, Object typed) {
                if (!typed.equals(value.apply((PriceRow) element))) {
                    sheet.get().ifPresent(found -> wrong.accept(take.apply(found, (PriceRow) element).apply((String) typed).orElse("")));
                }
            }
        });
    }

    private static String name(PriceRow row) {
        return row.item().map(item -> item.getName() == null || item.getName().isBlank() ? item.getKey() : item.getName())
                .orElseGet(() -> switch (row.fixed().orElseThrow()) {
                    case LABOUR -> Messages.Price_labour;
                    case ENERGY -> Messages.Price_energy;
                    case OVERHEAD -> Messages.Price_overhead;
                    case MARGIN -> Messages.Price_margin;
                    case TAX -> Messages.Price_tax;
                });
    }

    private static String unit(PriceRow row) {
        return row.item().map(item -> item.getUnit() == null ? "" : item.getUnit()).orElseGet(() -> switch (row.fixed().orElseThrow()) {
            case LABOUR -> Messages.Price_hour;
            case ENERGY -> "kWh";
            case OVERHEAD -> Messages.Price_ofCost;
            case MARGIN, TAX -> Messages.Price_ofPrice;
        });
    }

    private String price(PriceRow row) {
        return book.flatMap(row::price).map(price -> price.stripTrailingZeros().scale() < 0 ? price.setScale(0).toPlainString() : price.toPlainString())
                .orElse("");
    }

    private static String day(PriceRow row) {
        return row.item().map(PriceItem::getFrom).map(Object::toString).orElse("");
    }

    private static String currency(PriceRow row) {
        return row.item().map(PriceItem::getCurrency).orElse("");
    }

    void show(Optional<PriceBook> shown) {
        book = shown;
        List<PriceRow> rows = shown.map(PriceRow::of).orElse(List.of());
        if (viewer.isCellEditorActive()) {
            return;
        }
        if (rows.equals(viewer.getInput())) {
            viewer.refresh();
        } else {
            viewer.setInput(rows);
        }
    }

    Optional<PriceItem> chosen() {
        return viewer.getStructuredSelection().getFirstElement() instanceof PriceRow row ? row.item() : Optional.empty();
    }

    Composite frame() {
        return viewer.getTable().getParent();
    }
}
