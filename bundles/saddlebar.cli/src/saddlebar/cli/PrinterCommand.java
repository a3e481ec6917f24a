package saddlebar.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ServiceScope;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import saddlebar.artwork.ArtworkReaders;
import saddlebar.model.commission.PaperSize;
import saddlebar.model.commission.Printer;
import saddlebar.model.problem.LockedException;
import saddlebar.model.problem.Problem;
import saddlebar.model.store.Access;
import saddlebar.production.studio.PrinterBook;
import saddlebar.production.studio.StudioThings;
import saddlebar.production.studio.WedgePicture;
import saddlebar.stencil.ScreeningMethods;
import saddlebar.stencil.code.BitonalSettings;
import saddlebar.stencil.code.SheetPdf;
import saddlebar.stencil.printer.PrinterTestPage;
import saddlebar.stencil.printer.TonerJudgement;
import saddlebar.stencil.sheet.ComposedSheet;
import saddlebar.stencil.sheet.Paper;
import saddlebar.stencil.sheet.PrinterFit;
import saddlebar.stencil.sheet.SheetPlan;
import saddlebar.stencil.wedge.WedgePhotograph;

/** What the studio's laser printer does to a page, measured and kept. */
@Component(service = BenchCommand.class, scope = ServiceScope.PROTOTYPE)
@Command(name = "printer", sortOptions = false,
        description = "Measures a laser printer: a test page to print, its lengths to keep, bands that were seen, and whether its toner is dense enough. Every"
                + " sheet made afterwards is bent the other way, so that layers printed on different days register.",
        footer = {"", "Example: saddlebar printer demo-projects/first-panel test --out test-page.pdf",
                "Example: saddlebar printer demo-projects/first-panel measured --across 200.8 --down 264.1 --falling 331.9 --rising 331.6"})
public final class PrinterCommand implements BenchCommand {
    private final ArtworkReaders readers;
    private final ScreeningMethods methods;

    @Parameters(index = "0", paramLabel = "C-or-STUDIO", description = "Folder of a commission or of a studio.")
    private Path folder;

    @Parameters(index = "1", arity = "0..1", paramLabel = "WHAT",
            description = "test: write the page. measured: keep its lengths. bands: keep the distances of bands. toner: judge a solid. Nothing: tell what is known.")
    private String what;

    @Option(names = "--printer", paramLabel = "NAME", description = "Which printer; the studio's first if not given.")
    private String name;

    @Option(names = "--paper", paramLabel = "NAME", description = "Paper of the test page; the first in use if not given.")
    private String paperName;

    @Option(names = "--out", paramLabel = "FILE.pdf", description = "The test page.")
    private Path out;

    @Option(names = "--replace", description = "Replace FILE if it exists.")
    private boolean replace;

    @Option(names = "--across", paramLabel = "MM", description = "Measured along the top, from middle to middle of the register marks.")
    private Double acrossMm;

    @Option(names = "--down", paramLabel = "MM", description = "Measured down the left side.")
    private Double downMm;

    @Option(names = "--falling", paramLabel = "MM", description = "Measured from the top left to the bottom right mark.")
    private Double fallingMm;

    @Option(names = "--rising", paramLabel = "MM", description = "Measured from the bottom left to the top right mark.")
    private Double risingMm;

    @Option(names = "--mm", paramLabel = "MM,MM", split = ",", description = "With bands: distances from band to band, down the even strip; none clears them.")
    private List<Double> bandsMm = List.of();

    @Option(names = "--density", paramLabel = "D", description = "With toner: optical density of the solid over bare film.")
    private Double density;

    @Option(names = "--photograph", paramLabel = "FILE", description = "With toner: photograph of the test page's framed wedge on a light box.")
    private Path photograph;

    @Mixin
    private CommonOptions common;

    @Activate
    public PrinterCommand(@Reference ArtworkReaders readers, @Reference ScreeningMethods methods) {
        this.readers = readers;
        this.methods = methods;
    }

    /** The JSON document; what is not known is null. */
    record Answer(String printer, double acrossScale, double downScale, double skew, String measured, List<Double> bandPeriodsMm, Double tonerDensity,
            String toner, String file, Double wantedAcrossMm, Double wantedDownMm, List<ProblemRow> problems) {
    }

    @Override
    public Integer call() throws IOException {
        String asked = what == null ? "" : what.toLowerCase(Locale.ROOT);
        if (!List.of("", "test", "measured", "bands", "toner").contains(asked)) {
            throw common.wrong("printer takes test, measured, bands or toner, not '" + what + "'.");
        }
        List<String> words = new ArrayList<>();
        List<Problem> problems = new ArrayList<>();
        boolean writes = !asked.isEmpty() && !asked.equals("test");
        try (StudioAccess studio = StudioAccess.open(folder, writes ? Access.WRITE : Access.READ)) {
            Printer printer = common.ofWords(() -> StudioThings.printer(studio.studio(), name));
            PaperSize size = common.ofWords(() -> studio.paper(Optional.ofNullable(paperName)));
            Paper paper = new Paper(size.getName(), size.getWidthMm(), size.getHeightMm());
            SheetPlan page = common.ofWords(() -> PrinterTestPage.empty(printer.getName(), paper, printer.getMarginMm(), printer.getDpi()));
            boolean attention = switch (asked) {
                case "test" -> test(printer, paper, words);
                case "measured" -> measured(printer, page, words);
                case "bands" -> bands(printer, words);
                case "toner" -> toner(printer, words, problems);
                default -> false;
            };
            if (writes) {
                studio.save();
            }
            if (asked.isEmpty()) {
                known(printer, words);
            }
            Double solid = printer.getSolidTransmittance();
            Optional<TonerJudgement> judged = Optional.ofNullable(solid).map(TonerJudgement::of);
            common.answer(new Answer(printer.getName(), printer.getScaleX(), printer.getScaleY(), printer.getSkew(),
                    printer.getMeasured() == null ? null : printer.getMeasured().toString(), List.copyOf(printer.getBandPeriodsMm()),
                    judged.map(TonerJudgement::density).orElse(null), judged.map(found -> found.verdict().name().toLowerCase(Locale.ROOT).replace('_', ' '))
                            .orElse(null),
                    out == null ? null : out.toString(), PrinterFit.wantedAcrossMm(page), PrinterFit.wantedDownMm(page),
                    problems.stream().map(ProblemRow::of).toList()), words);
            common.tell(problems);
            return attention ? ATTENTION : DONE;
        }
    }

    private boolean test(Printer printer, Paper paper, List<String> words) throws IOException {
        if (out == null || !out.toString().toLowerCase(Locale.ROOT).endsWith(".pdf")) {
            throw common.wrong("printer test needs --out FILE.pdf.");
        }
        if (Files.exists(out) && !replace) {
            throw new LockedException(out + " exists already; nothing was written. Give --replace to replace it, or another name.");
        }
        SheetPlan plan = PrinterTestPage.plan(printer.getName(), paper, printer.getMarginMm(), printer.getDpi(), methods);
        SheetPdf.write(ComposedSheet.of(plan), out, BitonalSettings.at(printer.getDpi()).withTitle("Test page of " + printer.getName()).replacing(replace),
                common.work(2L * plan.heightPx()));
        words.add(out + ": print it at full size on film or paper, as your sheets are printed.");
        words.add(String.format(Locale.ROOT, "Between the middles of the register marks there should be %.2f mm across and %.2f mm down.",
                PrinterFit.wantedAcrossMm(plan), PrinterFit.wantedDownMm(plan)));
        words.add("Measure both, and both diagonals, to a tenth of a mm, then: saddlebar printer " + folder
                + " measured --across … --down … --falling … --rising …");
        words.add("Look along the even strip for bands: saddlebar printer " + folder + " bands --mm …; judge the solid before you fuse: … toner --density …");
        return false;
    }

    private boolean measured(Printer printer, SheetPlan page, List<String> words) {
        if (acrossMm == null || downMm == null || (fallingMm == null) != (risingMm == null)) {
            throw common.wrong("printer measured needs --across and --down, and --falling and --rising together or not at all.");
        }
        double straight = Math.hypot(acrossMm, downMm);
        PrinterFit fit = common.ofWords(() -> PrinterFit.measured(PrinterFit.wantedAcrossMm(page), PrinterFit.wantedDownMm(page), acrossMm, downMm,
                fallingMm == null ? straight : fallingMm, risingMm == null ? straight : risingMm));
        PrinterBook.measured(printer, fit, LocalDate.now());
        known(printer, words);
        words.add("Sheets made from now on are bent the other way; make them again: saddlebar make.");
        return false;
    }

    private boolean bands(Printer printer, List<String> words) {
        common.ofWords(() -> {
            PrinterBook.bands(printer, bandsMm);
            return printer;
        });
        known(printer, words);
        return false;
    }

    private boolean toner(Printer printer, List<String> words, List<Problem> problems) throws IOException {
        if ((density == null) == (photograph == null)) {
            throw common.wrong("printer toner needs --density D or --photograph FILE.");
        }
        TonerJudgement judgement;
        if (density != null) {
            judgement = common.ofWords(() -> TonerJudgement.ofDensity(density));
        } else {
            WedgePhotograph.Read read = WedgePicture.read(readers, photograph, PrinterTestPage.WEDGE, List.of(), 10, common.work(1));
            problems.addAll(read.problems());
            judgement = TonerJudgement.ofDensity(Math.max(0, Math.min(6, read.steps().get(read.steps().size() - 1).density())));
        }
        PrinterBook.toner(printer, judgement);
        words.add(judgement.words());
        return judgement.verdict() != TonerJudgement.Verdict.FUSE;
    }

    private static void known(Printer printer, List<String> words) {
        words.add(printer.getName() + ": " + (printer.getMeasured() == null
                ? "not measured yet; print a test page."
                : String.format(Locale.ROOT, "prints %.4f across and %.4f down of what is wanted, and leans %.2f mm to the right over 100 mm (measured %s).",
                        printer.getScaleX(), printer.getScaleY(), 100 * printer.getSkew(), printer.getMeasured())));
        if (!printer.getBandPeriodsMm().isEmpty()) {
            words.add("Bands were seen every " + String.join(", ", printer.getBandPeriodsMm().stream().map(mm -> mm + " mm").toList()) + ".");
        }
        Optional.ofNullable(printer.getSolidTransmittance()).ifPresent(solid -> words.add(TonerJudgement.of(solid).words()));
    }
}
