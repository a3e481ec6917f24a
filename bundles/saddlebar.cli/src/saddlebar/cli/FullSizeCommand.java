package saddlebar.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ServiceScope;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import saddlebar.model.store.Access;
import saddlebar.model.store.CommissionFolder;
import saddlebar.production.facts.CommissionFacts;
import saddlebar.production.facts.FactsReader;
import saddlebar.production.make.FullSizeFile;
import saddlebar.production.make.FullSizeKind;
import saddlebar.production.make.FullSizePrinting;
import saddlebar.production.make.FullSizeRequest;
import saddlebar.report.truesize.OutlineFile;
import saddlebar.report.truesize.PrintPaper;
import saddlebar.report.truesize.Tiling;

/** Drawings at full size, on sheets or a roll. */
@Component(service = BenchCommand.class, scope = ServiceScope.PROTOTYPE)
@Command(name = "fullsize", sortOptions = false,
        description = {"Prints at full size: the cartoon with what is painted, the cutline with numbers, patterns, where bars go, and bare outlines for a",
                "plotter or waterjet. On sheets with overlap, crosses and a map of the pages, or on a roll. Print at 100 % and measure both rules of a page."},
        footer = {"", "Bars follow a studio's rule of thumb; wind load, safety glazing and fixing are for the local code and a licensed professional.",
                "Cutting glass: protect the eyes, wear shoes; brush splinters away.", "",
                "Example: saddlebar fullsize demo-projects/first-panel --what cartoon,bars --paper a3 --out full-size"})
public final class FullSizeCommand implements BenchCommand {
    private final FullSizePrinting printing;

    @Parameters(index = "0", paramLabel = "C", description = "Folder of the commission.")
    private Path folder;

    @Parameters(index = "1..*", paramLabel = "WINDOW", description = "Only these windows; all if none is named.")
    private List<String> windows = List.of();

    @Option(names = "--what", paramLabel = "KIND", split = ",", defaultValue = "cartoon,cutline,patterns,bars,outlines",
            description = "cartoon, cutline, patterns, bars, outlines; all if not given.")
    private List<String> what;

    @Option(names = "--paper", paramLabel = "P", defaultValue = "a3",
            description = "letter, tabloid, a4 to a0, WIDTHxHEIGHT in mm, or roll:WIDTH; a3 if not given.")
    private String paper;

    @Option(names = "--overlap-mm", paramLabel = "V", description = "Strip that neighbouring pages share, 0 to 50; 12 if not given.")
    private Double overlapMm;

    @Option(names = "--kerf-mm", paramLabel = "K", defaultValue = "0",
            description = "What the machine's cutter takes away, 0 to 5; outlines are led outside by half of it.")
    private double kerfMm;

    @Option(names = "--out", required = true, paramLabel = "DIR", description = "Folder for the files; made if absent.")
    private Path out;

    @Option(names = "--replace", description = "Replace files of the same names.")
    private boolean replace;

    @Mixin
    private CommonOptions common;

    @Activate
    public FullSizeCommand(@Reference FullSizePrinting printing) {
        this.printing = printing;
    }

    /** The JSON document. */
    record Answer(String paper, List<Row> files) {
    }

    record Row(String window, String what, String file, double widthMm, double heightMm, int pages) {
        static Row of(FullSizeFile file) {
            return new Row(file.window(), file.kind().word(), file.file().toString(), file.widthMm(), file.heightMm(), file.pages());
        }
    }

    @Override
    public Integer call() throws IOException {
        List<FullSizeKind> kinds = what.stream().distinct()
                .map(word -> FullSizeKind.ofWord(word)
                        .orElseThrow(() -> common.wrong("--what takes cartoon, cutline, patterns, bars and outlines, not '" + word + "'.")))
                .toList();
        double overlap = overlapMm == null ? Tiling.USUAL_OVERLAP_MM : overlapMm;
        if (!(overlap >= 0 && overlap <= 50)) {
            throw common.wrong("--overlap-mm takes 0 to 50 mm, not " + overlap + ".");
        }
        if (!(kerfMm >= 0 && kerfMm <= OutlineFile.MOST_KERF_MM)) {
            throw common.wrong("--kerf-mm takes 0 to 5 mm, not " + kerfMm + ".");
        }
        PrintPaper sheet = common.ofWords(() -> PrintPaper.of(paper));
        try (CommissionFolder commission = CommissionFolder.open(folder, Access.READ)) {
            CommissionFacts facts = FactsReader.read(commission.commission(), commission.path(), windows);
            List<FullSizeFile> files = printing.print(facts, new FullSizeRequest(windows, kinds, sheet, overlap, kerfMm, out, replace),
                    common.work(FullSizePrinting.WORK_UNITS));
            List<String> words = new ArrayList<>();
            files.forEach(file -> words.add(String.format(Locale.ROOT, "%s: %s, %.1f x %.1f mm, %d %s", file.file(), file.kind().word(), file.widthMm(),
                    file.heightMm(), file.pages(), file.pages() == 1 ? "page" : "pages")));
            words.add("Print at 100 %, not fitted to the page, and measure both check rules before you trust a page.");
            common.answer(new Answer(sheet.name(), files.stream().map(Row::of).toList()), words);
            return DONE;
        }
    }
}
