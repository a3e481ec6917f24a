package saddlebar.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ServiceScope;

import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import saddlebar.artwork.ArtLayer;
import saddlebar.artwork.Artwork;
import saddlebar.artwork.ArtworkReaders;
import saddlebar.artwork.LayerChoice;
import saddlebar.cartoon.Cartoon;
import saddlebar.cartoon.CartoonMaker;
import saddlebar.cartoon.CartoonPiece;
import saddlebar.cartoon.CartoonSettings;
import saddlebar.cartoon.Join;
import saddlebar.cartoon.NarrowestWidth;
import saddlebar.cartoon.mend.Mend;
import saddlebar.cartoon.mend.MendSettings;
import saddlebar.cartoon.mend.MendedCutline;
import saddlebar.cartoon.mend.Mending;
import saddlebar.model.art.DrawnLine;
import saddlebar.model.problem.LockedException;
import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Refusal;
import saddlebar.model.problem.Severity;
import saddlebar.production.make.CartoonSvg;
import saddlebar.production.pieces.MendChoice;

/** Cutline to pieces, without a commission. */
@Component(service = BenchCommand.class, scope = ServiceScope.PROTOTYPE)
@Command(name = "pieces", sortOptions = false, description = "Turns a cutline into numbered pieces and checks whether they can be cut.",
        footer = {"", "Example: saddlebar pieces demo-projects/first-panel/artwork/first-panel.svg --layer cutline --foil 1.25 --svg pieces.svg"})
public final class PiecesCommand implements BenchCommand {
    private final ArtworkReaders readers;

    @Mixin
    private ArtOptions art;

    @ArgGroup(exclusive = true)
    private Gap gap;

    @Option(names = "--outline", paramLabel = "ID", description = "The drawn element that is the panel's outline; else the outer edge of all pieces.")
    private String outline;

    @Option(names = "--mend", paramLabel = "ID,...", split = ",",
            description = "Mend the lines before pieces are made: all, or ids of the proposals that list shows. The drawing is not changed.")
    private List<String> mend;

    @Option(names = "--svg", paramLabel = "OUT", description = "Also draw the cut glass with numbers at true size.")
    private Path svg;

    @Option(names = "--replace", description = "Replace OUT if it exists.")
    private boolean replace;

    @Mixin
    private CommonOptions common;

    /** One way of saying how wide the gap is. */
    static final class Gap {
        @Option(names = "--gap-mm", paramLabel = "G", description = "Gap between two glasses, all in; 0.8 if nothing is given.")
        private Double gapMm;

        @Option(names = "--foil", paramLabel = "MIL", description = "Copper foil of this thickness in thousandths of an inch, with a hand's clearance.")
        private Double foilMil;

        @Option(names = "--heart-mm", paramLabel = "H", description = "Lead came with a heart this wide.")
        private Double heartMm;
    }

    /** Clearance of a hand and adhesive beside the copper, so that usual foil comes to the usual gap of 0.8 mm (common practice, no source). */
    private static final double HAND_CLEARANCE_MM = 0.8 - 2 * 0.03175;

    @Activate
    public PiecesCommand(@Reference ArtworkReaders readers) {
        this.readers = readers;
    }

    @Override
    public Integer call() throws IOException {
        if (svg != null && Files.exists(svg) && !replace) {
            throw new LockedException(svg + " exists already; nothing was written. Give --replace to replace it, or another name.");
        }
        CartoonSettings settings = CartoonSettings.defaults().withJoin(join());
        if (outline != null) {
            settings = settings.withOutline(outline);
        }
        try (Artwork artwork = art.read(readers)) {
            LayerChoice layer = art.layer() != null
                    ? LayerChoice.of(artwork.chosenLayer(art.layer()))
                    : artwork.cutlineLayer().map(LayerChoice::of).orElse(LayerChoice.all());
            Mended mended = mended(artwork.lines(layer, Artwork.CUT_FLATNESS_MM));
            Cartoon cartoon = cartoon(mended.lines, settings);
            if (svg != null) {
                CartoonSvg.write(svg, String.valueOf(art.file().getFileName()), cartoon.pieces().stream()
                        .map(piece -> new CartoonSvg.Shape(piece.number(), piece.glass(), piece.label(), piece.inradiusMm())).toList(), cartoon.problems(),
                        cartoon.reliefs());
            }
            List<Problem> problems = new ArrayList<>(cartoon.problems());
            artwork.warnings().stream().filter(warning -> art.layer() == null || warning.severity() != Severity.NOTE).forEach(problems::add);
            problems.sort(Problem.WORST_FIRST);
            List<String> words = words(cartoon, layer, artwork);
            cartoon.reliefs().forEach(relief -> words.add("  " + relief.message()));
            if (mended.rows != null) {
                words.add(mended.rows.isEmpty() ? "Nothing to mend." : "Mends:");
                mended.rows.forEach(row -> words.add(row.line()));
            }
            common.answer(new PiecesAnswer(cartoon, problems, mended.rows), words);
            common.tell(problems);
            return problems.stream().anyMatch(problem -> problem.severity() != Severity.NOTE) ? ATTENTION : DONE;
        }
    }

    /** Lines, and what was or could be mended; rows are null where nobody asked. */
    private record Mended(List<DrawnLine> lines, List<MendRow> rows) {
    }

    private Mended mended(List<DrawnLine> drawn) {
        if (mend == null) {
            return new Mended(drawn, null);
        }
        MendSettings settings = MendSettings.defaults();
        List<MendRow> rows = new ArrayList<>();
        List<DrawnLine> lines = drawn;
        if (!mend.equals(List.of("list"))) {
            MendedCutline mended = mend.equals(List.of("all"))
                    ? Mending.acceptAll(drawn, settings, common.work(1))
                    : Mending.acceptAgain(drawn, MendChoice.chosen(Mending.propose(drawn, settings, common.work(1)), mend).stream().map(Mend::key).toList(),
                            settings, common.work(1));
            mended.done().forEach(done -> rows.add(MendRow.of("", done, MendRow.AGREED)));
            lines = mended.lines();
        }
        Mending.propose(lines, settings, common.work(1)).forEach(proposed -> rows.add(MendRow.of("", proposed)));
        return new Mended(lines, rows);
    }

    /** The maker knows lines, not the file that they come from. */
    private Cartoon cartoon(List<DrawnLine> lines, CartoonSettings settings) {
        try {
            return CartoonMaker.make(lines, settings, common.work(100));
        } catch (Refusal ofTheLines) {
            throw new Refusal(art.file().getFileName() + ": " + ofTheLines.where(), ofTheLines.what(), ofTheLines.remedy(), ofTheLines);
        }
    }

    private Join join() {
        if (gap == null) {
            return Join.gap(Join.DEFAULT_GAP_MM);
        }
        try {
            if (gap.foilMil != null) {
                return Join.foilMil(gap.foilMil, HAND_CLEARANCE_MM);
            }
            return gap.heartMm != null ? Join.came(gap.heartMm) : Join.gap(gap.gapMm);
        } catch (IllegalArgumentException outOfRange) {
            String option = gap.foilMil != null ? "--foil" : gap.heartMm != null ? "--heart-mm" : "--gap-mm";
            throw common.wrong(option + " is out of range: " + outOfRange.getMessage() + ".");
        }
    }

    private static List<String> words(Cartoon cartoon, LayerChoice layer, Artwork artwork) {
        List<String> words = new ArrayList<>();
        String from = layer.layerId().flatMap(artwork::layer).map(ArtLayer::label).map(name -> " of layer " + name).orElse("");
        words.add(String.format(Locale.ROOT, "%d pieces%s; panel %.1f x %.1f mm, %.0f cm2, outline %.0f mm", cartoon.pieces().size(), from,
                cartoon.widthMm(), cartoon.heightMm(), cartoon.panelAreaMm2() / 100, cartoon.panelPerimeterMm()));
        words.add("  no   area cm2   edge mm   widest circle mm   narrowest mm   beside");
        for (CartoonPiece piece : cartoon.pieces()) {
            words.add(String.format(Locale.ROOT, "%4d %10.2f %9.1f %18.1f %14.1f   %s%s", piece.number(), piece.netAreaMm2() / 100, piece.perimeterMm(),
                    2 * piece.inradiusMm(), NarrowestWidth.of(piece.face()).widthMm(),
                    String.join(" ", piece.neighbours().stream().map(String::valueOf).toList()),
                    piece.problems().isEmpty() ? "" : "   ! " + String.join(", ", piece.problems())));
        }
        return words;
    }
}
