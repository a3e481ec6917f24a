package saddlebar.production.document;

import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferencePolicyOption;

import saddlebar.artwork.ArtworkReaders;
import saddlebar.materials.cost.CostSource;
import saddlebar.model.commission.Window;
import saddlebar.model.problem.Refusal;
import saddlebar.model.store.CommissionFolder;
import saddlebar.model.work.Work;
import saddlebar.production.stock.LaidGlass;
import saddlebar.production.stock.LaidPiece;
import saddlebar.production.stock.LayoutFile;
import saddlebar.report.document.ReportKind;
import saddlebar.report.document.ReportMatter;
import saddlebar.report.document.Reports;
import saddlebar.report.document.Words;

/** Writes documents of a commission. Changes no model and writes no record. */
@Component(service = ReportWriting.class)
public final class ReportWriting {
    /** Units of work that {@link #write} tells in all. */
    public static final int WORK_UNITS = 100;
    private static final int PICTURES_SHARE = 80;

    private final ArtworkReaders readers;
    private final List<CostSource> sources;
    private final Reports reports;

    @Activate
    public ReportWriting(@Reference ArtworkReaders readers, @Reference(policyOption = ReferencePolicyOption.GREEDY) List<CostSource> sources,
            @Reference Reports reports) {
        this.readers = readers;
        this.sources = List.copyOf(sources);
        this.reports = reports;
    }

    /**
     * @param work told {@link #WORK_UNITS}
     * @return what could not be said and why, in sentences
     * @throws Refusal for a window, piece or language that is not there, or if there is nothing to write about
     */
    public List<String> write(CommissionFolder folder, ReportRequest request, Work work) throws IOException {
        Words words = Words.in(request.language())
                .orElseThrow(() -> new Refusal("language " + request.language(), "documents are not written in it", "take en or de"));
        List<Window> windows = windows(folder, request);
        List<String> untold = new ArrayList<>();
        RecordsRead records = RecordsRead.of(folder);
        ReportKind kind = request.kind();
        Work pictures = work.part(PICTURES_SHARE, Math.max(1, windows.size()));
        ReportMatter matter = new ReportMatter(kind, request.day(), folder.commission(), folder.studio(), windows, PictureShelf.mark(folder, untold),
                kind == ReportKind.WORKSHOP || kind == ReportKind.DEFECT || kind == ReportKind.REMAKE
                        ? List.of()
                        : new WindowPictures(readers).of(folder, windows, kind, pictures),
                kind == ReportKind.PROPOSAL || kind == ReportKind.PROGRESS ? MoneyTold.of(folder, sources, request.day(), windows, untold) : Optional.empty(),
                PanelsTold.of(folder, windows, work), kind == ReportKind.PROGRESS ? records.states(folder, windows) : List.of(), records.deeds(),
                kind == ReportKind.DOSSIER || kind == ReportKind.PROGRESS ? PictureShelf.photos(folder, untold) : List.of(),
                kind == ReportKind.WORKSHOP ? sheets(folder) : List.of(),
                kind == ReportKind.REMAKE ? Optional.of(RemakeTold.of(folder, windows, request.piece(), records, words)) : Optional.empty(),
                kind == ReportKind.DEFECT ? records.defects(windows) : List.of(),
                kind == ReportKind.DOSSIER && !request.html() ? DossierData.of(folder, windows, records) : List.of());
        Files.createDirectories(request.target().toAbsolutePath().getParent());
        work.say(words.of("kind." + kind.word()));
        if (request.html()) {
            reports.writeHtml(matter, words, request.target());
        } else {
            reports.writePdf(matter, words, request.paper(), request.target());
        }
        work.advance(WORK_UNITS - PICTURES_SHARE);
        return untold;
    }

    private static List<Window> windows(CommissionFolder folder, ReportRequest request) {
        for (String wanted : request.windows()) {
            if (!folder.windowNames().contains(wanted)) {
                throw new Refusal(wanted, "the commission has no window of this name", "take one of " + String.join(", ", folder.windowNames()));
            }
        }
        return folder.windows().stream().filter(window -> request.windows().isEmpty() || request.windows().contains(window.getName()))
                .sorted(java.util.Comparator.comparing(Window::getName)).toList();
    }

    private static List<ReportMatter.GlassSheet> sheets(CommissionFolder folder) throws IOException {
        List<ReportMatter.GlassSheet> sheets = new ArrayList<>();
        for (LaidGlass laid : LayoutFile.read(folder.path())) {
            sheets.add(new ReportMatter.GlassSheet(laid.glass(), laid.sheet().name(), laid.toBuy(), laid.sheet().widthMm(), laid.sheet().heightMm(),
                    laid.pieces().stream().map(LaidPiece::label).toList(), laid.use()));
        }
        return sheets;
    }
}
