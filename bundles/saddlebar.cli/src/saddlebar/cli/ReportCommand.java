package saddlebar.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;

import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ServiceScope;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import saddlebar.model.file.Hashes;
import saddlebar.model.problem.LockedException;
import saddlebar.model.store.Access;
import saddlebar.model.store.CommissionFolder;
import saddlebar.production.document.ReportRequest;
import saddlebar.production.document.ReportWriting;
import saddlebar.report.document.ReportKind;
import saddlebar.report.document.ReportPaper;
import saddlebar.report.document.Words;

/** Documents for client and bench. */
@Component(service = BenchCommand.class, scope = ServiceScope.PROTOTYPE)
@Command(name = "report", sortOptions = false,
        description = {
                "Writes a document: proposal, progress, workshop, dossier, competition, remake or defect. PDF/A, tagged, with bookmarks; or HTML for mail.",
                "Only what is known is said: what is left out, and why, stands on standard error."},
        footer = {"",
                "Sizes of panels and bars are a studio's rule of thumb; wind load, safety glazing and fixing are for the local code and a licensed professional.",
                "",
                "Example: saddlebar report demo-projects/first-panel proposal --out proposal.pdf --lang de --paper a4"})
public final class ReportCommand implements BenchCommand {
    private final ReportWriting writing;

    @Parameters(index = "0", paramLabel = "C", description = "Folder of the commission.")
    private Path folder;

    @Parameters(index = "1", paramLabel = "KIND", description = "proposal, progress, workshop, dossier, competition, remake or defect.")
    private String kind;

    @Parameters(index = "2..*", paramLabel = "WINDOW", description = "Only these windows; all if none is named.")
    private List<String> windows = List.of();

    @Option(names = "--piece", paramLabel = "P", defaultValue = "", description = "remake: the piece, such as W01/12.")
    private String piece;

    @Option(names = "--out", paramLabel = "F", description = "File; made/reports/KIND.pdf of the commission if not given.")
    private Path out;

    @Option(names = "--lang", paramLabel = "L", defaultValue = "en", description = "en or de; en if not given.")
    private String language;

    @Option(names = "--paper", paramLabel = "P", defaultValue = "a4", description = "a4 or letter; a4 if not given.")
    private String paper;

    @Option(names = "--day", paramLabel = "D", description = "Day that stands on it, such as 2026-01-31; today if not given.")
    private String day;

    @Option(names = "--html", description = "One HTML file for mail instead of a PDF.")
    private boolean html;

    @Option(names = "--replace", description = "Replace F if it exists.")
    private boolean replace;

    @Mixin
    private CommonOptions common;

    @Activate
    public ReportCommand(@Reference ReportWriting writing) {
        this.writing = writing;
    }

    /** The JSON document. */
    record Answer(String kind, String file, String sha256, long bytes, List<String> untold) {
    }

    @Override
    public Integer call() throws IOException {
        ReportKind wanted = ReportKind.ofWord(kind)
                .orElseThrow(() -> common.wrong("report writes proposal, progress, workshop, dossier, competition, remake and defect, not '" + kind + "'."));
        ReportPaper sheet = ReportPaper.ofWord(paper).orElseThrow(() -> common.wrong("--paper takes a4 or letter, not '" + paper + "'."));
        if (Words.in(language).isEmpty()) {
            throw common.wrong("--lang takes en or de, not '" + language + "'.");
        }
        if (wanted == ReportKind.REMAKE && piece.isEmpty()) {
            throw common.wrong("Which piece? Give --piece, such as --piece W01/12.");
        }
        LocalDate on = day();
        try (CommissionFolder commission = CommissionFolder.open(folder, Access.READ)) {
            Path target = out != null ? out : commission.path().resolve("made").resolve("reports").resolve(wanted.word() + (html ? ".html" : ".pdf"));
            if (out != null && Files.exists(target) && !replace) {
                throw new LockedException(target + " exists already; nothing was written. Give --replace to replace it, or another name.");
            }
            List<String> untold = writing.write(commission, new ReportRequest(wanted, windows, language, sheet, on, piece, html, target),
                    common.work(ReportWriting.WORK_UNITS));
            List<String> words = new ArrayList<>(List.of(target.toString()));
            words.addAll(untold);
            common.answer(new Answer(wanted.word(), target.toString(), Hashes.sha256(target), Files.size(target), untold), words);
            return untold.isEmpty() ? DONE : ATTENTION;
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
