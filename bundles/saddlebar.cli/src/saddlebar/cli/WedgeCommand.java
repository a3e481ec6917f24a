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

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import saddlebar.model.problem.LockedException;
import saddlebar.stencil.ScreeningMethods;
import saddlebar.stencil.ScreeningRecipe;
import saddlebar.stencil.code.BitonalPng;
import saddlebar.stencil.code.BitonalSettings;
import saddlebar.stencil.code.BitonalTiff;
import saddlebar.stencil.code.SheetPdf;
import saddlebar.stencil.code.WrittenBits;
import saddlebar.stencil.process.Face;
import saddlebar.stencil.process.StencilProcess;
import saddlebar.stencil.process.StencilProcesses;
import saddlebar.stencil.process.TonerSide;
import saddlebar.stencil.sheet.ComposedSheet;
import saddlebar.stencil.sheet.Paper;
import saddlebar.stencil.sheet.SheetPlan;
import saddlebar.stencil.wedge.WedgeLayout;
import saddlebar.stencil.wedge.WedgeSheet;

/** A sheet of step wedges to print, fire and measure. */
@Component(service = BenchCommand.class, scope = ServiceScope.PROTOTYPE)
@Command(name = "wedge", sortOptions = false, description = "Draws a sheet of step wedges, one for each method, to be printed with one paint on one mesh.",
        footer = {"", "Example: saddlebar wedge --out wedge.pdf --method am,diffusion --paint matt --mesh 220-48",
                "Then fire it, and give what was measured to saddlebar tone."})
public final class WedgeCommand implements BenchCommand {
    private final ScreeningMethods methods;
    private final StencilProcesses processes;

    @Option(names = "--out", required = true, paramLabel = "FILE", description = "The sheet: .pdf, .tif or .png.")
    private Path out;

    @Option(names = "--replace", description = "Replace FILE if it exists.")
    private boolean replace;

    @Option(names = "--method", paramLabel = "M,M,...", split = ",", defaultValue = "am", description = "One wedge for each; am if not given.")
    private List<String> method;

    @Option(names = "--dpi", paramLabel = "D", defaultValue = "1200", description = "Device px an inch; 1200 if not given.")
    private double dpi;

    @Option(names = "--lpi", paramLabel = "L", defaultValue = "40", description = "Ruling; 40 if not given.")
    private double lpi;

    @Option(names = "--angle", paramLabel = "A", defaultValue = "22.5", description = "Angle of the ruling; 22.5 if not given.")
    private double angleDeg;

    @Option(names = "--dot", paramLabel = "SHAPE", defaultValue = "round", description = "Dot shape; round if not given.")
    private String dot;

    @Option(names = "--dot-mm", paramLabel = "D", defaultValue = "0.254", description = "Side of a scattered dot in mm; 0.254 if not given.")
    private double dotMm;

    @Option(names = "--filter", paramLabel = "F", defaultValue = "floyd-steinberg", description = "Filter of diffusion.")
    private String filter;

    @Option(names = "--sheet", paramLabel = "S", defaultValue = "letter", description = "letter, tabloid, a4, a3 or WxH in mm; letter if not given.")
    private String sheet;

    @Option(names = "--paint", paramLabel = "NAME", defaultValue = "", description = "Paint, written on the sheet.")
    private String paint;

    @Option(names = "--mesh", paramLabel = "NAME", defaultValue = "", description = "Mesh, written on the sheet.")
    private String mesh;

    @Option(names = "--process", paramLabel = "P", defaultValue = "fused-sheet", description = "fused-sheet or film-positive.")
    private String processKey;

    @Option(names = "--toner-side", paramLabel = "SIDE", defaultValue = "print", description = "Side of the mesh that the toner touches: print or squeegee.")
    private String tonerSide;

    @Mixin
    private QualityOptions quality;

    @Mixin
    private CommonOptions common;

    @Activate
    public WedgeCommand(@Reference ScreeningMethods methods, @Reference StencilProcesses processes) {
        this.methods = methods;
        this.processes = processes;
    }

    /** The JSON document. */
    record Answer(String file, int widthPx, int heightPx, double dpi, List<String> wedges, List<Double> steps, boolean mirrored, String compression,
            String sha256, List<QualityRow> quality) {
    }

    @Override
    public Integer call() throws IOException {
        List<ScreeningRecipe> recipes = new ArrayList<>();
        for (String one : method) {
            common.ofWords(() -> methods.method(one.strip()));
            recipes.add(common.ofWords(() -> ScreeningRecipe.withDefaults().withMethod(one.strip()).withDpiAndLpi(dpi, lpi).withAngleDeg(angleDeg)
                    .withDot(dot).withDotMm(dotMm).withFilter(filter)));
        }
        TonerSide touches = switch (tonerSide.toLowerCase(Locale.ROOT)) {
            case "print" -> TonerSide.PRINT;
            case "squeegee" -> TonerSide.SQUEEGEE;
            default -> throw common.wrong("--toner-side takes print or squeegee, not '" + tonerSide + "'.");
        };
        String ending = ending();
        if (Files.exists(out) && !replace) {
            throw new LockedException(out + " exists already; nothing was written. Give --replace to replace it, or another name.");
        }
        quality.check(common, replace);
        StencilProcess process = common.ofWords(() -> processes.process(processKey));
        boolean mirrored = process.mirrored(touches, Face.INTERIOR);
        Paper paper = common.ofWords(() -> Paper.of(sheet));
        WedgeLayout layout = WedgeLayout.usual();
        String note = String.join(", ", List.of(paint, mesh).stream().filter(word -> !word.isBlank()).toList());
        SheetPlan plan = WedgeSheet.plan(layout, recipes, methods, paper, process, touches, Face.INTERIOR, mirrored, "Step wedge", note);
        BitonalSettings settings = BitonalSettings.at(dpi).withTitle("Step wedge " + note).replacing(replace).onThreads(common.jobs())
                .withDescription(String.join("\n", recipes.stream().map(WedgeSheet::name).toList()));
        ComposedSheet composed = ComposedSheet.of(plan);
        WrittenBits written = switch (ending) {
            case "tif" -> BitonalTiff.write(composed, out, settings, common.work(2L * plan.heightPx()));
            case "png" -> BitonalPng.write(composed, out, settings, common.work(2L * plan.heightPx()));
            default -> SheetPdf.write(composed, out, settings, common.work(2L * plan.heightPx()));
        };
        List<String> names = recipes.stream().map(WedgeSheet::name).toList();
        List<String> words = new ArrayList<>(List.of(out + ": " + names.size() + (names.size() == 1 ? " wedge of " : " wedges of ") + layout.steps().size()
                + " steps: " + String.join("; ", names), process.caution(),
                "Paint and its dust are poisonous if breathed or swallowed: wet-clean, wear a fitted respirator, no food nearby."));
        List<QualityRow> measured = quality.measured(recipes, methods, replace, common.work(1), words);
        common.answer(new Answer(out.toString(), written.widthPx(), written.heightPx(), dpi, names, layout.steps(), mirrored, written.compression(),
                written.sha256OfFile(), measured), words);
        return DONE;
    }

    private String ending() {
        String name = String.valueOf(out.getFileName()).toLowerCase(Locale.ROOT);
        for (String ending : List.of("pdf", "tif", "tiff", "png")) {
            if (name.endsWith("." + ending)) {
                return ending.equals("tiff") ? "tif" : ending;
            }
        }
        throw common.wrong("--out takes a name that ends in .pdf, .tif or .png, not '" + out + "'.");
    }
}
