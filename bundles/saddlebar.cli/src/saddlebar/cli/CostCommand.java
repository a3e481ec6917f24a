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
import saddlebar.materials.cost.BookReader;
import saddlebar.materials.cost.BookedCosts;
import saddlebar.materials.cost.CostSource;
import saddlebar.materials.cost.Estimate;
import saddlebar.materials.cost.PaintList;
import saddlebar.materials.cost.PanelList;
import saddlebar.materials.cost.QuoteBook;
import saddlebar.materials.job.CostJob;
import saddlebar.materials.job.JobReader;
import saddlebar.materials.job.JobRecords;
import saddlebar.materials.money.Prices;
import saddlebar.materials.paint.PaintRules;
import saddlebar.model.commission.Quote;
import saddlebar.model.store.Access;
import saddlebar.model.store.CommissionFolder;
import saddlebar.model.work.Work;
import saddlebar.production.stock.LayoutFile;

/** What a commission costs, is quoted at, and came to. */
@Component(service = BenchCommand.class, scope = ServiceScope.PROTOTYPE)
@Command(name = "cost", sortOptions = false, description = {"Estimates what a commission costs, and sets what it came to against that.",
        "Prices are the studio's: put in your own before you quote. Lists paint to mix and buy, metal to cut, and what panels weigh."},
        footer = {"", "Document of --json: commission, currency, day; lines (source, what, window, quantity, unit, unitPrice, amount); cost,",
                "overhead, margin, net, tax, total; range (low, likely, high, runs, seed); deposits; paints; panels; foilMetres; cuts;",
                "quote; actual; variance (source, estimate, actual, price, quantity, total); assumed; cautions. Money as decimal strings.",
                "", "Example: saddlebar cost demo-projects/first-panel --json"})
public final class CostCommand implements BenchCommand {
    private static final long SEED = 1;
    private static final long WORK_UNITS = 1;

    private final List<CostSource> sources;

    @Parameters(index = "0", paramLabel = "C", description = "Folder of the commission.")
    private Path folder;

    @Option(names = "--quote", description = "Freeze the estimate as a quote with a number of its own.")
    private boolean quote;

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
        try (CommissionFolder commission = CommissionFolder.open(folder, quote ? Access.WRITE : Access.READ)) {
            JobRecords records = JobRecords.of(commission);
            CostJob job = JobReader.read(commission, records).withYields(LayoutFile.yields(commission.path()));
            Prices prices = BookReader.read(commission.studio(), on, currency == null ? commission.studio().getCurrency() : currency);
            Estimate estimate = Estimate.of(job, prices, sources, SEED);
            PaintList paints = PaintList.of(job, PaintRules.USUAL);
            Work work = common.work(WORK_UNITS);
            PanelList panels = PanelList.of(job, work);
            work.advance(WORK_UNITS);
            BookedCosts booked = BookedCosts.of(job, records, prices);
            Optional<Quote> frozen = quote ? Optional.of(QuoteBook.freeze(commission, estimate, on)) : Optional.empty();
            CostAnswer answer = CostAnswer.of(job, prices, estimate, paints, panels, booked, frozen);
            common.tell(records.problems());
            common.answer(answer, answer.words());
            return job.assumed().isEmpty() && records.problems().isEmpty() ? DONE : ATTENTION;
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
