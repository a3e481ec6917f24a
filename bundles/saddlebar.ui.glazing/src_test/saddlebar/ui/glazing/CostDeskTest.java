package saddlebar.ui.glazing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.core.commands.operations.DefaultOperationHistory;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import saddlebar.kiln.table.KilnTables;
import saddlebar.materials.cost.CostSources;
import saddlebar.materials.cost.QuoteBook;
import saddlebar.model.commission.PriceBook;
import saddlebar.model.commission.PriceItem;
import saddlebar.model.commission.Quote;
import saddlebar.model.problem.Refusal;
import saddlebar.production.kiln.StudioHeat;
import saddlebar.ui.desk.CommissionDesk;
import saddlebar.ui.desk.OpenCommission;

/** Money without widgets: prices typed and taken back, quotes frozen and changed, and that nothing is lost by what is refused. */
class CostDeskTest {
    private static final LocalDate DAY = LocalDate.of(2026, 1, 31);

    @TempDir
    private Path temp;
    private final DefaultOperationHistory history = new DefaultOperationHistory();
    private final CommissionDesk desk = new CommissionDesk(history);
    private final ArrayDeque<Runnable> beside = new ArrayDeque<>();
    private CostDesk costs;
    private OpenCommission open;
    private PriceSheet sheet;

    @BeforeEach
    void openTheDemo() throws IOException {
        Path demo = Path.of("../../demo-projects/first-panel");
        Path folder = temp.resolve("first-panel");
        try (Stream<Path> files = Files.walk(demo)) {
            for (Path file : files.filter(path -> Files.isRegularFile(path) && !path.getFileName().toString().startsWith(".")).toList()) {
                Path target = folder.resolve(demo.relativize(file).toString());
                Files.createDirectories(target.getParent());
                Files.copy(file, target);
            }
        }
        costs = new CostDesk(desk, StudioHeat.of(KilnTables.builtIn()), CostSources.own(), () -> DAY, beside::add, Runnable::run);
        open = desk.open(folder);
        sheet = new PriceSheet(book(), open.edits());
        work();
    }

    @AfterEach
    void close() throws IOException {
        desk.close();
    }

    private void work() {
        while (!beside.isEmpty()) {
            beside.poll().run();
        }
    }

    private PriceBook book() {
        return open.folder().studio().getPriceBook();
    }

    private BigDecimal cost() {
        return costs.costs().orElseThrow().estimate().cost();
    }

    private PriceRow fixed(PriceRow.Fixed which) {
        return PriceRow.of(book()).stream().filter(row -> row.fixed().equals(Optional.of(which))).findFirst().orElseThrow();
    }

    @Test
    void aPriceIsTypedReckonedAndTakenBack() throws Exception {
        BigDecimal before = cost();
        assertEquals(Optional.empty(), sheet.takePrice(fixed(PriceRow.Fixed.LABOUR), "39"));
        work();
        assertTrue(cost().compareTo(before) > 0);
        for (String bad : new String[] {"-1", "dear", "", "1e12"}) {
            assertTrue(sheet.takePrice(fixed(PriceRow.Fixed.LABOUR), bad).isPresent(), bad);
        }
        assertEquals(new BigDecimal("39"), book().getLabourPerHour());
        assertEquals(Optional.empty(), sheet.takePrice(fixed(PriceRow.Fixed.MARGIN), "20 %"));
        assertEquals(0.2, book().getMarginShare());
        assertTrue(sheet.takePrice(fixed(PriceRow.Fixed.MARGIN), "1.5").isPresent());
        history.undo(open.edits().context(), new NullProgressMonitor(), null);
        history.undo(open.edits().context(), new NullProgressMonitor(), null);
        work();
        assertEquals(before, cost());
        assertFalse(open.edits().isDirty());
    }

    @Test
    void aPriceFromADayOnLeavesTheOldOneForTheDaysBefore() throws Exception {
        PriceItem flux = book().getItems().stream().filter(item -> item.getKey().equals("flux")).findFirst().orElseThrow();
        BigDecimal before = cost();
        PriceItem later = sheet.from(flux, DAY.plusDays(1));
        assertEquals(Optional.empty(), sheet.takePrice(new PriceRow(Optional.empty(), Optional.of(later)), "300"));
        work();
        assertEquals(before, cost(), "it does not hold yet");
        assertEquals(Optional.empty(), sheet.takeDay(later, DAY.toString()));
        work();
        assertTrue(cost().compareTo(before) > 0);
        assertTrue(sheet.takeDay(later, "31.1.2026").isPresent());
        assertTrue(sheet.takeCurrency(later, "XQQ").isPresent());
        assertEquals(Optional.empty(), sheet.takeCurrency(later, "usd"));
        work();
        assertTrue(costs.costs().isEmpty());
        assertTrue(costs.trouble().contains("no rate of USD for 2026-01-31"), costs.trouble());
        sheet.remove(later);
        work();
        assertEquals(before, cost());
    }

    @Test
    void aQuoteIsFrozenAndAChangeOrderFollowsIt() throws Exception {
        assertThrows(Refusal.class, () -> costs.freeze(Optional.of("another colour")), "there is nothing to change yet");
        Quote first = costs.freeze(Optional.empty());
        assertFalse(open.edits().isDirty());
        sheet.takePrice(fixed(PriceRow.Fixed.LABOUR), "45");
        work();
        Quote change = costs.freeze(Optional.of("the client wants it deeper"));
        assertEquals(first.getNumber(), change.getChanges());
        assertEquals(change.getTotal().subtract(first.getTotal()), QuoteBook.added(open.commission(), change).orElseThrow());
        assertTrue(QuoteBook.added(open.commission(), change).orElseThrow().signum() > 0);
        assertEquals(List.of("2026-Q01", "2026-Q02"), costs.quotes().stream().map(Quote::getNumber).toList());
    }

    @Test
    void theMarginOfAllWindowsIsTheMarginOfTheWhole() {
        var now = costs.costs().orElseThrow();
        BigDecimal left = now.profits().stream().map(row -> row.profit()).reduce(BigDecimal.ZERO, BigDecimal::add);
        assertEquals(0, left.compareTo(now.estimate().margin()), left + " against " + now.estimate().margin());
        assertEquals(6, now.shopping().rows().stream().filter(row -> row.kind().equals("glass")).count());
    }
}
