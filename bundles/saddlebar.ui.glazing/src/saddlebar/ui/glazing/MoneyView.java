package saddlebar.ui.glazing;

import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

import org.eclipse.jface.dialogs.InputDialog;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceColors;
import org.eclipse.jface.window.Window;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.TabFolder;
import org.eclipse.swt.widgets.TabItem;

import saddlebar.materials.cost.QuoteBook;
import saddlebar.materials.cost.ReckonedLine;
import saddlebar.materials.cost.ShoppingList;
import saddlebar.materials.cost.SourceVariance;
import saddlebar.materials.cost.WindowProfit;
import saddlebar.model.commission.PriceBook;
import saddlebar.model.commission.Quote;
import saddlebar.model.problem.Refusal;
import saddlebar.production.cost.CommissionCosts;
import saddlebar.ui.desk.OpenCommission;

/** What the commission costs, line by line with its range; prices to type in; quotes; what it came to, and what is left of each window's price. */
public final class MoneyView extends CostPart {
    private LineTable<ReckonedLine> lines;
    private LineTable<ShoppingList.Row> shopping;
    private LineTable<Quote> quotes;
    private LineTable<SourceVariance> variance;
    private LineTable<WindowProfit> profits;
    private PriceTable prices;
    private Label wrong;
    private Button freeze;
    private Button change;
    private Button later;
    private Button remove;

    @Override
    void fill(Composite parent) {
        TabFolder pages = new TabFolder(parent, SWT.TOP);
        GridDataFactory.fillDefaults().grab(true, true).hint(NARROW_PT, NARROW_PT).applyTo(pages);
        estimate(pages);
        bookPage(pages);
        quotePage(pages);
        Composite came = page(pages, Messages.Money_came);
        variance = new LineTable<>(came, SourceVariance.class).text(Messages.Money_source, 2, "paint-gold", SourceVariance::source)
                .number(Messages.Money_estimate, 2, "00000.00", row -> CostWords.money(row.estimate()))
                .number(Messages.Money_actual, 2, "00000.00", row -> CostWords.money(row.actual()))
                .number(Messages.Money_byPrice, 2, "00000.00", row -> CostWords.money(row.price()))
                .number(Messages.Money_byQuantity, 2, "00000.00", row -> CostWords.money(row.quantity()));
        fillPage(variance.frame());
        Composite windows = page(pages, Messages.Money_windows);
        profits = new LineTable<>(windows, WindowProfit.class).text(Messages.Money_window, 2, "W01", WindowProfit::window)
                .number(Messages.Money_price, 2, "00000.00", row -> CostWords.money(row.price()))
                .number(Messages.Money_cost, 2, "00000.00", row -> CostWords.money(row.cost()) + (row.booked() ? " *" : ""))
                .number(Messages.Money_overhead, 2, "00000.00", row -> CostWords.money(row.overhead()))
                .number(Messages.Money_profit, 2, "00000.00", row -> CostWords.money(row.profit()));
        fillPage(profits.frame());
        Composite buy = page(pages, Messages.Money_buy);
        shopping = new LineTable<>(buy, ShoppingList.Row.class).text(Messages.Metal_what, 3, "silver stain amber", ShoppingList.Row::what)
                .number(Messages.Metal_need, 2, "0000.00 m2", row -> CostWords.number(row.need(), 2) + " " + row.unit())
                .number(Messages.Money_onHand, 2, "0000.00", row -> CostWords.number(row.onHand(), 2))
                .number(Messages.Money_toBuy, 2, "0000.00", row -> CostWords.number(row.buy(), 2))
                .text(Messages.Metal_packs, 2, "00 lengths", ShoppingList.Row::packs);
        fillPage(shopping.frame());
        wrong = line(parent);
        wrong.setForeground(JFaceColors.getErrorText(parent.getDisplay()));
        pages.addListener(SWT.Selection, event -> wrong.setText(""));
    }

    private void estimate(TabFolder pages) {
        Composite page = page(pages, Messages.Money_lines);
        lines = new LineTable<>(page, ReckonedLine.class).text(Messages.Money_source, 2, "paint-gold", ReckonedLine::source)
                .text(Messages.Money_window, 1, "W01", ReckonedLine::window).text(Messages.Metal_what, 4, "silver stain amber powder", ReckonedLine::what)
                .number(Messages.Money_quantity, 2, "00.000 m2", row -> CostWords.quantity(row.quantity()) + " " + row.unit())
                .number(Messages.Money_unitPrice, 2, "000.0000", row -> row.unitPrice().toPlainString())
                .number(Messages.Money_amount, 2, "00000.00", row -> CostWords.money(row.amount()));
        fillPage(lines.frame());
    }

    private void bookPage(TabFolder pages) {
        Composite page = page(pages, Messages.Money_prices);
        prices = new PriceTable(page, this::sheet, this::say);
        fillPage(prices.frame());
        Composite row = new Composite(page, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).applyTo(row);
        later = button(row, Messages.Price_later, () -> sheet().ifPresent(found -> prices.chosen().ifPresent(item -> found.from(item, LocalDate.now()))));
        remove = button(row, Messages.Price_remove, () -> sheet().ifPresent(found -> prices.chosen().ifPresent(found::remove)));
    }

    private void quotePage(TabFolder pages) {
        Composite page = page(pages, Messages.Money_quotes);
        quotes = new LineTable<>(page, Quote.class).text(Messages.Quote_number, 2, "2026-Q01", quote -> text(quote.getNumber()))
                .text(Messages.Quote_dated, 2, "2026-01-31", quote -> text(quote.getDated())).text(Messages.Quote_until, 2, "2026-01-31",
                        quote -> text(quote.getValidUntil()))
                .number(Messages.Quote_total, 2, "00000.00 EUR", quote -> CostWords.money(quote.getTotal()) + " " + text(quote.getCurrency()))
                .number(Messages.Quote_added, 2, "00000.00", quote -> costs().commission().flatMap(open -> QuoteBook.added(open.commission(), quote))
                        .map(CostWords::money).orElse(""))
                .text(Messages.Quote_reason, 3, "", quote -> text(quote.getReason()));
        fillPage(quotes.frame());
        Composite row = new Composite(page, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).applyTo(row);
        freeze = button(row, Messages.Quote_freeze, () -> freeze(Optional.empty()));
        change = button(row, Messages.Quote_change, this::change);
    }

    private static String text(Object value) {
        return value == null ? "" : value.toString();
    }

    private static Composite page(TabFolder pages, String title) {
        Composite page = new Composite(pages, SWT.NONE);
        GridLayoutFactory.fillDefaults().margins(2, 2).spacing(2, 2).applyTo(page);
        TabItem item = new TabItem(pages, SWT.NONE);
        item.setText(title);
        item.setControl(page);
        return page;
    }

    private static void fillPage(Composite frame) {
        GridDataFactory.fillDefaults().grab(true, true).hint(NARROW_PT, NARROW_PT).applyTo(frame);
    }

    private static Button button(Composite parent, String words, Runnable action) {
        Button button = new Button(parent, SWT.PUSH);
        button.setText(words);
        button.addListener(SWT.Selection, event -> action.run());
        return button;
    }

    private Optional<PriceBook> book() {
        return costs().commission().map(open -> open.folder().studio().getPriceBook());
    }

    private Optional<PriceSheet> sheet() {
        return costs().canEdit()
                ? book().flatMap(found -> costs().commission().map(OpenCommission::edits).map(edits -> new PriceSheet(found, edits)))
                : Optional.empty();
    }

    private void say(String words) {
        wrong.setText(words);
        wrong.getParent().layout(true, true);
    }

    private void change() {
        InputDialog dialog = new InputDialog(getSite().getShell(), Messages.Quote_change, Messages.Quote_changeAsk, "", typed -> typed.isBlank() ? "" : null);
        if (dialog.open() == Window.OK) {
            freeze(Optional.of(dialog.getValue()));
        }
    }

    private void freeze(Optional<String> reason) {
        if (reason.isPresent() || MessageDialog.openConfirm(getSite().getShell(), Messages.Quote_freeze, Messages.Quote_freezeAsk)) {
            try {
                Quote quote = costs().freeze(reason);
                say(NLS.bind(Messages.Quote_done, quote.getNumber()));
            } catch (IOException | Refusal cannot) {
                MessageDialog.openError(getSite().getShell(), Messages.Quote_freeze, cannot.getMessage());
            }
        }
    }

    @Override
    String show(CommissionCosts now) {
        lines.show(now.estimate().lines());
        shopping.show(now.shopping().rows());
        variance.show(now.variance());
        profits.show(now.profits());
        common();
        String sums = NLS.bind(Messages.Money_sums,
                new Object[] {CostWords.money(now.estimate().cost()), CostWords.money(now.estimate().net()), CostWords.money(
                        now.estimate().total()), now.estimate().currency(), CostWords.range(now.estimate().range())});
        String earned = now.earned().map(found -> " " + NLS.bind(Messages.Money_earned, new Object[] {CostWords.money(found.earned()), CostWords.money(found
                .planned()), CostWords.money(found.actual())})).orElse("");
        String assumed = now.job().assumed().isEmpty()
                ? ""
                : " " + NLS.bind(Messages.Money_assumed, String.valueOf(now.job().assumed().size()), now.job()
                        .assumed().get(0));
        return sums + earned + assumed;
    }

    private void common() {
        prices.show(book());
        quotes.show(costs().quotes());
        boolean edits = costs().canEdit();
        freeze.setEnabled(edits && costs().costs().isPresent());
        change.setEnabled(edits && costs().costs().isPresent() && !costs().quotes().isEmpty());
        later.setEnabled(edits);
        remove.setEnabled(edits);
    }

    @Override
    void clear() {
        lines.show(List.of());
        shopping.show(List.of());
        variance.show(List.of());
        profits.show(List.of());
        common();
    }
}
