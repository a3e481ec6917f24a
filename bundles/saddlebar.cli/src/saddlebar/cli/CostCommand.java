package saddlebar.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;

import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferencePolicyOption;
import org.osgi.service.component.annotations.ServiceScope;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import saddlebar.materials.cost.CostSource;
import saddlebar.materials.cost.QuoteBook;
import saddlebar.model.commission.Quote;
import saddlebar.model.store.Access;
import saddlebar.model.store.CommissionFolder;
import saddlebar.model.work.Work;
import saddlebar.production.cost.CommissionCosts;
import saddlebar.production.cost.CostAsk;
import saddlebar.production.kiln.StudioHeat;

/** What a commission costs, is quoted at, and came to. */
@Component(service = BenchCommand.class, scope = ServiceScope.PROTOTYPE)
@Command(name = "cost", sortOptions = false, description = {"Estimates what a commission costs, and sets what it came to against that.",
        "Prices are the studio's: put in your own before you quote. Lists paint to mix and buy, metal to cut, and what panels weigh."},
        footer = {"", "Document of --json: commission, currency, day; lines (source, what, window, quantity, unit, unitPrice, amount); cost,",
                "overhead, margin, net, taxes, tax, total; range (low, likely, high, runs, seed); deposits; paints; panels; foilMetres; cuts;",
                "quote; actual; variance (source, estimate, actual, price, quantity, total); profits (window, price, cost, overhead, profit);",
                "earned; shopping; assumed; cautions. Money as decimal strings.",
                "", "Example: saddlebar cost demo-projects/first-panel --json"})
public final class CostCommand implements BenchCommand {
    private static final long WORK_UNITS = 1;

    private final List<CostSource> sources;

    @Parameters(index = "0", paramLabel = "C", description = "Folder of the commission.")
    private Path folder;

    @Option(names = "--quote", description = "Freeze the estimate as a quote with a number of its own.")
    private boolean quote;

    @Option(names = "--change", paramLabel = "REASON", description = "Freeze it as a change order to the last quote, and say why.")
    private String change;

    @Option(names = "--day", paramLabel = "D", description = "Day whose prices count, such as 2026-01-31; today if not given.")
    private String day;

    @Option(names = "--currency", paramLabel = "CUR", description = "Currency of ISO 4217; the studio's if not given. Needs that day's rate in the price book.")
    private String currency;

    @Mixin
    private CommonOptions common;

    @Activate
    public CostCommand(@Reference(policyOption = ReferencePolicyOption.GREEDY) List<CostSource> sources) {
        this.sources = List.copyOf(sources);
    }

    @Override
    public Integer call() throws IOException {
        LocalDate on = day();
        try (CommissionFolder commission = CommissionFolder.open(folder, quote || change != null ? Access.WRITE : Access.READ)) {
            CostAsk ask = CostAsk.read(commission, StudioHeat.installed(), on, Optional.ofNullable(currency));
            Work work = common.work(WORK_UNITS);
            CommissionCosts costs = CommissionCosts.of(ask, sources, work);
            work.advance(WORK_UNITS);
            Optional<Quote> frozen = Optional.empty();
            if (change != null) {
                frozen = Optional.of(QuoteBook.change(commission, costs.estimate(), on, change));
            } else if (quote) {
                frozen = Optional.of(QuoteBook.freeze(commission, costs.estimate(), on));
            }
            CostAnswer answer = CostAnswer.of(costs, frozen, frozen.flatMap(made -> QuoteBook.added(commission.commission(), made)));
            common.tell(ask.records().problems());
            common.answer(answer, answer.words());
            return costs.job().assumed().isEmpty() && ask.records().problems().isEmpty() ? DONE : ATTENTION;
        }
    }

    private LocalDate day() {
        if (day == null) {
            return LocalDate.now();
        }
        try {
            return LocalDate.parse(day);
        } catch (DateTimeParseException e) {
            throw common.wrong("--day takes a day such as 2026-01-31, not '" + day + "'.");
        }
    }
}
