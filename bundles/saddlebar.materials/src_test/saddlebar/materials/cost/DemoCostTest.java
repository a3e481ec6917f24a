package saddlebar.materials.cost;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import saddlebar.materials.job.CostHints;
import saddlebar.materials.job.CostJob;
import saddlebar.materials.job.JobReader;
import saddlebar.materials.job.JobRecords;
import saddlebar.materials.money.Prices;
import saddlebar.model.commission.CommissionFactory;
import saddlebar.model.commission.DesignLayer;
import saddlebar.model.commission.PriceItem;
import saddlebar.model.commission.Quote;
import saddlebar.model.commission.Sheet;
import saddlebar.model.commission.Stencil;
import saddlebar.model.problem.Refusal;
import saddlebar.model.store.Access;
import saddlebar.model.store.CommissionFolder;
import saddlebar.model.store.RecordDraft;
import saddlebar.model.store.RecordKind;

/** The window of the first demo, reckoned line by line by hand at the invented prices of the studio tables. */
class DemoCostTest {
    private static final LocalDate DAY = LocalDate.of(2026, 1, 31);
    private static final List<CostSource> SOURCES = List.of(new RiskCost(), new FixingCost(), new EnergyCost(), new LabourCost(), new MetalCost(),
            new ScreenCost(), new SheetCost(), new PaintCost(), new GlassCost());

    @TempDir
    private Path temp;
    private Path folder;

    /** The demo with stencils of 203.2 x 254 mm at 1200 dpi, as a making would enter them: trace 10 % once, matt 35 % forty times, stain 20 % once. */
    @BeforeEach
    void made() throws IOException {
        folder = temp.resolve("first-panel");
        Path demo = Path.of("../../demo-projects/first-panel");
        try (Stream<Path> files = Files.walk(demo)) {
            for (Path file : files.filter(path -> Files.isRegularFile(path) && !path.getFileName().toString().startsWith(".")).toList()) {
                Path target = folder.resolve(demo.relativize(file).toString());
                Files.createDirectories(target.getParent());
                Files.copy(file, target);
            }
        }
        try (CommissionFolder open = CommissionFolder.open(folder, Access.WRITE)) {
            List<RecordDraft> drafts = new ArrayList<>();
            for (DesignLayer layer : open.windows().get(0).getPanels().get(0).getLayers()) {
                Stencil stencil = CommissionFactory.eINSTANCE.createStencil();
                stencil.setNumber(1);
                stencil.setWidthMm(1); // the record of the bits counts, not this
                stencil.setHeightMm(1);
                stencil.setPrints(layer.getName().equals("matt") ? 40 : 1);
                layer.getStencils().add(stencil);
            }
            for (int i = 1; i <= 2; i++) {
                Sheet sheet = CommissionFactory.eINSTANCE.createSheet();
                sheet.setNumber(i);
                sheet.setPaper("letter");
                sheet.setProcessKey("fused-sheet");
                open.commission().getSheets().add(sheet);
            }
            open.save();
            for (DesignLayer layer : open.windows().get(0).getPanels().get(0).getLayers()) {
                double coverage = Map.of("trace", 0.1, "matt", 0.35, "stain", 0.2).get(layer.getName());
                drafts.add(RecordDraft.of(RecordKind.STENCIL).with(Map.of("stencilId", layer.getStencils().get(0).getId(), "widthPx", 9600, "heightPx", 12000,
                        "dpi", 1200.0, "coverage", coverage)));
            }
            open.records().append(drafts);
        }
    }

    private static Prices prices(CommissionFolder open) {
        return BookReader.read(open.studio(), DAY, "EUR");
    }

    private static Estimate estimate(CommissionFolder open) throws IOException {
        return Estimate.of(JobReader.read(open, JobRecords.of(open)), prices(open), SOURCES, 1);
    }

    private static String line(ReckonedLine line) {
        return line.source() + " | " + line.what() + " | " + line.window() + " | " + line.amount();
    }

    /**
     * Glass: net area of the pieces / 0.6 x price a m2, such as sea green 0.01865476 / 0.6 = 0.031091 m2 x 88 = 2.74.
     * Matt: 0.0516128 m2 x 0.35 x 40 x 15.238 um x 2.17636 g/cm3 = 23.96 g, with 15 g waste 40 g: 28.571 g powder x 0.090, 11.429 g medium x 0.038.
     * Trace and stain: less than 5 g net, with 15 g waste 20 g each. Foil 2357.743 mm x 1.1 x 0.29. Solder (2 x 80.11 x 0.728872 + 50.07 x 0.9) x 1.15 =
     * 186.12 g x 0.040. Energy: three firings x 3.2 kW x 3 h x 0.30. Labour 38 an hour: 6 pieces x 6 min, 6 x 4 min, 1.628872 m x 30 min, 3 screens x 31
     * min, 42 pulls x 2 min, 3 shelves x 40 min, 3 bowls x 15 min. Risk 0.05 of 353.72.
     */
    @Test
    void lineByLineByHand() throws IOException {
        try (CommissionFolder open = CommissionFolder.open(folder, Access.READ)) {
            Estimate estimate = estimate(open);
            assertEquals(List.of("glass | amber | W01 | 0.25", "glass | pale jade | W01 | 0.96", "glass | pale water | W01 | 1.30",
                    "glass | river blue | W01 | 1.06", "glass | sea green | W01 | 2.74", "glass | sky blue | W01 | 1.12",
                    "paint | tracing black powder |  | 1.36", "paint | medium for tracing black |  | 0.22", "paint | pale matt powder |  | 2.57",
                    "paint | medium for pale matt |  | 0.43", "paint | silver stain amber powder |  | 3.43", "paint | medium for silver stain amber |  | 0.15",
                    "sheets | fused film letter |  | 6.80", "screens | cleaner | W01 | 3.60", "metal | foil 7/32 in 1.25 mil | W01 | 0.75",
                    "metal | solder 60/40 | W01 | 7.44", "metal | flux | W01 | 0.15", "metal | patina | W01 | 0.20", "energy | energy of the kiln |  | 8.64",
                    "labour | cut glass | W01 | 22.80", "labour | foil | W01 | 15.20", "labour | solder | W01 | 30.95",
                    "labour | fuse and reclaim screens | W01 | 58.90", "labour | print | W01 | 53.20", "labour | load and unload the kiln | W01 | 76.00",
                    "labour | mix paint |  | 28.50", "fixing | packing | W01 | 25.00", "risk | breakage and remaking |  | 17.69"),
                    estimate.lines().stream().map(DemoCostTest::line).toList());
            assertEquals("371.41", estimate.cost().toPlainString());
            assertEquals("74.28", estimate.overhead().toPlainString());
            assertEquals("524.34", estimate.net().toPlainString()); // each window and source x 1.2 / 0.85, rounded, then summed
            assertEquals("78.65", estimate.margin().toPlainString());
            assertEquals("524.34", estimate.total().toPlainString());
            assertEquals(List.of("174.78", "174.78", "174.78"), estimate.deposits().stream().map(part -> part.amount().toPlainString()).toList());
            assertEquals(estimate.range(), estimate(open).range());
            assertTrue(estimate.range().low() < estimate.range().likely() && estimate.range().likely() < estimate.range().high());
        }
    }

    /** 0.0494190 m2 of 3 mm glass are 0.3706 kg; foil 2.3577 m x 1.58 g, solder 161.84 g stay on it. */
    @Test
    void weightOfThePanel() throws IOException {
        try (CommissionFolder open = CommissionFolder.open(folder, Access.READ)) {
            CostJob job = JobReader.read(open, JobRecords.of(open));
            assertEquals(List.of(), job.assumed());
            assertEquals(728.872, job.windows().get(0).panels().get(0).innerMm(), 1e-2);
            assertEquals(900, job.windows().get(0).panels().get(0).edgeMm(), 1e-2);
            assertEquals(0.37064 + 0.0037252 + 0.161843, job.windows().get(0).panels().get(0).weight().totalKg(), 1e-5);
        }
    }

    @Test
    void frozenQuoteStaysAndActualsAreSetAgainstIt() throws IOException {
        try (CommissionFolder open = CommissionFolder.open(folder, Access.WRITE)) {
            Quote first = QuoteBook.freeze(open, estimate(open), DAY);
            assertEquals("2026-Q01", first.getNumber());
            assertEquals(first.getTotal(), first.getLines().stream().map(line -> line.getAmount()).reduce(BigDecimal.ZERO, BigDecimal::add));
            open.studio().getPriceBook().setLabourPerHour(new BigDecimal("50"));
            open.records().append(RecordDraft.of(RecordKind.COST).with(Map.of("sourceKey", "labour", "what", "print", "unit", "hour", "quantity", 2.0,
                    "unitPrice", "40", "amount", "80.00", "estimate", false)));
            String matt = open.studio().getPaints().stream().filter(paint -> paint.getName().equals("pale matt")).findFirst().orElseThrow().getId();
            open.records().append(RecordDraft.of(RecordKind.MIX).with(Map.of("paintId", matt, "powderG", 40.0)));
        }
        try (CommissionFolder open = CommissionFolder.open(folder, Access.WRITE)) {
            JobRecords records = JobRecords.of(open);
            CostJob job = JobReader.read(open, records);
            BookedCosts booked = BookedCosts.of(job, records, prices(open));
            assertEquals("2026-Q01", booked.quote());
            assertEquals(new BigDecimal("371.41"), booked.frozen().stream().map(BookedLine::amount).reduce(BigDecimal.ZERO, BigDecimal::add));
            List<SourceVariance> rows = SourceVariance.of(booked.frozen(), booked.actual(), prices(open).rounding());
            // print: 1.4 h x 38 = 53.20 reckoned, 2 h x 40 = 80.00: price 2 x 2 = 4.00; of the rest, 285.55 reckoned in all, quantity takes what is left
            SourceVariance labour = rows.stream().filter(row -> row.source().equals("labour")).findFirst().orElseThrow();
            assertEquals(List.of("285.55", "80.00", "4.00", "-209.55"), Stream.of(labour.estimate(), labour.actual(), labour.price(), labour.quantity())
                    .map(BigDecimal::toPlainString).toList());
            // 40 g x 0.090 = 3.60 of pale matt powder, where 2.57 were reckoned
            assertTrue(booked.actual().contains(new BookedLine("paint", "pale matt powder", new BigDecimal("40.0"), "g", new BigDecimal("3.60"))));
            rows.forEach(row -> assertEquals(0, row.total().compareTo(row.price().add(row.quantity()))));
            assertEquals("2026-Q02", QuoteBook.freeze(open, estimate(open), DAY).getNumber());
        }
    }

    /** Two alike at 0.9: cutting takes 0.6 h x (1 + 0.9) = 1.14 h; screens are made once; glass is twice 0.031091 m2, 5.47. */
    @Test
    void windowsAlike() throws IOException {
        try (CommissionFolder open = CommissionFolder.open(folder, Access.WRITE)) {
            open.windows().get(0).getOpening().setCount(2);
            List<String> lines = estimate(open).lines().stream().map(DemoCostTest::line).toList();
            assertTrue(lines.containsAll(List.of("labour | cut glass | W01 | 43.32", "labour | fuse and reclaim screens | W01 | 58.90",
                    "glass | sea green | W01 | 5.47", "fixing | packing | W01 | 50.00")), lines::toString);
        }
    }

    @Test
    void recordOfMoreThanAllTheBitsIsRefused() throws IOException {
        try (CommissionFolder open = CommissionFolder.open(folder, Access.WRITE)) {
            String stencil = open.windows().get(0).getPanels().get(0).getLayers().get(0).getStencils().get(0).getId();
            open.records().append(RecordDraft.of(RecordKind.STENCIL).with(Map.of("stencilId", stencil, "widthPx", 10, "heightPx", 10, "dpi", 1200.0, "coverage",
                    1.5)));
            assertTrue(assertThrows(Refusal.class, () -> estimate(open)).getMessage().contains(":4: the record of a stencil has coverage 1.5"));
        }
    }

    @Test
    void missingPriceOrRateIsRefused() throws IOException {
        try (CommissionFolder open = CommissionFolder.open(folder, Access.WRITE)) {
            assertTrue(assertThrows(Refusal.class, () -> Estimate.of(JobReader.read(open, JobRecords.of(open)), BookReader.read(open.studio(), DAY, "USD"),
                    SOURCES, 1)).getMessage().contains("no rate of USD for 2026-01-31"));
            assertThrows(IllegalStateException.class, () -> Estimate.of(JobReader.read(open, JobRecords.of(open)), prices(open),
                    List.of(new GlassCost(), new GlassCost()), 1));
            open.studio().getPriceBook().setLabourPerHour(null);
            assertTrue(assertThrows(Refusal.class, () -> estimate(open)).getMessage().contains("no price of 'labour'"));
            assertFalse(Files.exists(folder.resolve(".save")));
        }
    }

    /** Labour 285.55 at 7 %, all else at 19 %: price lines x 1.2 / 0.85, summed by rate, each tax rounded once. */
    @Test
    void severalRatesOfTax() throws IOException {
        try (CommissionFolder open = CommissionFolder.open(folder, Access.WRITE)) {
            open.studio().getPriceBook().setTaxShare(0.19);
            PriceItem reduced = CommissionFactory.eINSTANCE.createPriceItem();
            reduced.setKey("tax-labour");
            reduced.setPrice(new BigDecimal("0.07"));
            open.studio().getPriceBook().getItems().add(reduced);
            Estimate estimate = estimate(open);
            assertEquals(List.of("0.19", "0.07"), estimate.taxes().stream().map(group -> group.rate().toPlainString()).toList());
            BigDecimal labour = estimate.priceLines().stream().filter(line -> line.source().equals("labour")).map(Estimate.PriceLine::amount)
                    .reduce(BigDecimal.ZERO, BigDecimal::add);
            assertEquals(labour, estimate.taxes().get(1).net());
            assertEquals(new BigDecimal("28.22"), estimate.taxes().get(1).tax()); // 0.07 x (362.89 + 40.24) = 28.2191
            assertEquals(0, estimate.net().subtract(labour).compareTo(estimate.taxes().get(0).net()));
            assertEquals(estimate.total(), estimate.net().add(estimate.tax()));
            Quote quote = QuoteBook.freeze(open, estimate, DAY);
            assertEquals(List.of("tax 19 %", "tax 7 %"), quote.getLines().stream().filter(line -> line.getSourceKey().equals("tax"))
                    .map(line -> line.getText()).toList());
        }
    }

    /** 60 km one way, two journeys: 240 km x 0.40 = 96.00. No hours are reckoned where the book has no minutes a km. */
    @Test
    void travelToTheSite() throws IOException {
        try (CommissionFolder open = CommissionFolder.open(folder, Access.WRITE)) {
            open.commission().setSite(CommissionFactory.eINSTANCE.createSite());
            open.commission().getSite().setDistanceKm(60.0);
            open.commission().getSite().setTrips(2);
            PriceItem km = CommissionFactory.eINSTANCE.createPriceItem();
            km.setKey("travel-km");
            km.setPrice(new BigDecimal("0.40"));
            open.studio().getPriceBook().getItems().add(km);
            List<ReckonedLine> lines = new TravelCost().reckon(JobReader.read(open, JobRecords.of(open)), prices(open), List.of());
            assertEquals(List.of("travel | to the site and back |  | 96.00"), lines.stream().map(DemoCostTest::line).toList());
        }
    }

    /** Three firings of 9, 8 and 7 kWh take 24 kWh, 7.20; sheets of sea green laid out at 0.8 give 0.01865476 / 0.8 x 88 = 2.05; risk 0.1. */
    @Test
    void whatOthersKnowCountsBeforeAStudioSetting() throws IOException {
        try (CommissionFolder open = CommissionFolder.open(folder, Access.READ)) {
            CostJob job = JobReader.read(open, JobRecords.of(open));
            Map<Integer, Double> kwh = new HashMap<>();
            int n = 0;
            for (int order : job.windows().get(0).panels().get(0).layers().stream().mapToInt(layer -> layer.firingOrder()).distinct().toArray()) {
                kwh.put(order, 9.0 - n++);
            }
            CostJob told = job.with(new CostHints(kwh, Map.of("sea green", 0.8), Optional.of(0.1)));
            List<String> lines = Estimate.of(told, prices(open), SOURCES, 1).lines().stream().map(DemoCostTest::line).toList();
            assertTrue(lines.containsAll(List.of("energy | energy of the kiln |  | 7.20", "glass | sea green | W01 | 2.05")), lines::toString);
            BigDecimal before = Estimate.of(told, prices(open), SOURCES, 1).lines().stream().filter(line -> !line.source().equals("risk"))
                    .map(ReckonedLine::amount).reduce(BigDecimal.ZERO, BigDecimal::add);
            assertTrue(lines.contains("risk | breakage and remaking |  | " + before.multiply(new BigDecimal("0.1")).setScale(2, RoundingMode.HALF_EVEN)));
            assertThrows(IllegalArgumentException.class, () -> new CostHints(Map.of(), Map.of("sea green", 1.2), Optional.empty()));
        }
    }

    /** Profit of the windows sums to the margin; what was booked for a window counts in place of its estimate. */
    @Test
    void profitOfAWindow() throws IOException {
        try (CommissionFolder open = CommissionFolder.open(folder, Access.READ)) {
            Estimate estimate = estimate(open);
            List<WindowProfit> plain = WindowProfit.of(estimate, List.of(), prices(open).rounding());
            assertEquals(List.of("W01"), plain.stream().map(WindowProfit::window).toList());
            assertEquals(0, estimate.margin().compareTo(plain.get(0).profit()));
            // glass of W01 reckoned at 0.25 + 0.96 + 1.30 + 1.06 + 2.74 + 1.12 = 7.43, bought for 10.00: 2.57 less is left
            List<BookedLine> actual = List.of(new BookedLine("glass", "sheets", BigDecimal.ONE, "sheet", new BigDecimal("10.00"), "W01"));
            assertEquals(estimate.margin().subtract(new BigDecimal("2.57")), WindowProfit.of(estimate, actual, prices(open).rounding()).get(0).profit());
        }
    }
}
