package saddlebar.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ServiceScope;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import saddlebar.artwork.Artwork;
import saddlebar.artwork.ArtworkReaders;
import saddlebar.artwork.LayerChoice;
import saddlebar.artwork.RasterRequest;
import saddlebar.model.art.GrayBands;
import saddlebar.model.art.GrayCoding;
import saddlebar.model.problem.LockedException;
import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Severity;
import saddlebar.model.units.Units;
import saddlebar.model.work.Work;
import saddlebar.production.studio.WedgeFile;
import saddlebar.stencil.ActualScreen;
import saddlebar.stencil.BitBands;
import saddlebar.stencil.BitPicture;
import saddlebar.stencil.ScreenedBands;
import saddlebar.stencil.ScreeningMethod;
import saddlebar.stencil.ScreeningMethods;
import saddlebar.stencil.ScreeningRecipe;
import saddlebar.stencil.code.BitonalPng;
import saddlebar.stencil.code.BitonalSettings;
import saddlebar.stencil.code.BitonalTiff;
import saddlebar.stencil.code.SheetPdf;
import saddlebar.stencil.code.WrittenBits;
import saddlebar.stencil.limits.CheckedBands;
import saddlebar.stencil.limits.LimitsCheck;
import saddlebar.stencil.limits.LimitsFound;
import saddlebar.stencil.limits.Mending;
import saddlebar.stencil.limits.PictureMending;
import saddlebar.stencil.mesh.Mesh;
import saddlebar.stencil.process.Face;
import saddlebar.stencil.process.StencilProcess;
import saddlebar.stencil.process.StencilProcesses;
import saddlebar.stencil.process.TonerSide;
import saddlebar.stencil.tone.Calibration;
import saddlebar.stencil.tone.DrawnCurve;
import saddlebar.stencil.tone.EndLimits;
import saddlebar.stencil.tone.GrayHistogram;
import saddlebar.stencil.tone.Stretch;
import saddlebar.stencil.tone.ToneTable;

/** One picture or layer to a 1-bit stencil, without a commission. */
@Component(service = BenchCommand.class, scope = ServiceScope.PROTOTYPE)
@Command(name = "screen", sortOptions = false, description = "Turns a picture, or one layer of a drawing, into a 1-bit stencil.",
        footer = {"", "Example: saddlebar screen demo-projects/first-panel/artwork/first-panel.svg --layer matt --lpi 40 --angle 22.5 --out matt.tif"})
public final class ScreenCommand implements BenchCommand {
    /** The mesh that most small studios have, for the limits that are counted if none are given (common practice, no source). */
    private static final Mesh USUAL_MESH = new Mesh(220, 48);
    private static final double MEASURE_DPI = 100;
    private static final double LOOK_DPI = 50;
    private static final int TOLD_STEPS = 20;

    private final ArtworkReaders readers;
    private final ScreeningMethods methods;
    private final StencilProcesses processes;

    @Mixin
    private ArtOptions art;

    @Option(names = "--out", required = true, paramLabel = "FILE", description = "The stencil: .tif, .pdf or .png.")
    private Path out;

    @Option(names = "--replace", description = "Replace FILE if it exists.")
    private boolean replace;

    @Option(names = "--dpi", paramLabel = "D", defaultValue = "1200", description = "Device px an inch; 1200 if not given.")
    private double dpi;

    @Option(names = "--method", paramLabel = "M", defaultValue = "am",
            description = "am, diffusion, bluenoise, greennoise, hybrid, lines, stipple, solid; am if not given.")
    private String method;

    @Option(names = "--lpi", paramLabel = "L", defaultValue = "40", description = "Ruling of am, hybrid and lines, stipples an inch; 40 if not given.")
    private double lpi;

    @Option(names = "--angle", paramLabel = "A", defaultValue = "22.5", description = "Angle of the ruling, x towards y, in degrees; 22.5 if not given.")
    private double angleDeg;

    @Option(names = "--dot", paramLabel = "SHAPE", defaultValue = "round",
            description = "round, ellipse, line, diamond, cosine, or a spot function of ISO 32000-1 by its name.")
    private String dot;

    @Option(names = "--dot-mm", paramLabel = "D", defaultValue = "0.254",
            description = "Side of a scattered dot, or of the smallest of hybrid and stipple, in mm; 0.254 (1/100 inch) if not given.")
    private double dotMm;

    @Option(names = "--filter", paramLabel = "F", defaultValue = "floyd-steinberg",
            description = "Filter of diffusion: floyd-steinberg, jarvis-judice-ninke, stucki, ostromoukhov.")
    private String filter;

    @Option(names = "--raster", description = "Diffuse every row from left to right, on all processors, instead of to and fro on one.")
    private boolean raster;

    @Option(names = "--noise-side", paramLabel = "N", defaultValue = "64", description = "Dots a side of bluenoise's array: 64 (if not given) or 128.")
    private int noiseSide;

    @Option(names = "--cluster-dots", paramLabel = "M", description = "Mean dots of a cluster of greennoise at 25 %%, 1 to 7; 3.6 if not given.")
    private Double clusterDots;

    @Option(names = "--course", paramLabel = "C", defaultValue = "straight",
            description = "How lines run: straight, rings[:X,Y], waves:LENGTH_MM,HEIGHT_MM, or artwork (along its contours).")
    private String course;

    @Option(names = "--course-layer", paramLabel = "NAME",
            description = "Layer whose drawing leads the lines with --course artwork; the screened one if not given.")
    private String courseLayer;

    @Option(names = "--curve", paramLabel = "W:S W:S ...",
            description = "Tone curve by hand: points wanted:screened in shares, as one word in quotes, such as \"0.25:0.2 0.5:0.38\".")
    private String curve;

    @Option(names = "--tone", paramLabel = "T", description = "linear, or a CSV of a measured wedge with the columns nominal,effective.")
    private String tone;

    @Option(names = "--from", paramLabel = "K", description = "Darkness of the drawing that stays bare, 0 to 1 in linear light; 0 if not given.")
    private Double from;

    @Option(names = "--to", paramLabel = "K", description = "Darkness that is covered whole; that of 99.5 %% of what is drawn if not given.")
    private Double to;

    @Option(names = "--process", paramLabel = "P", defaultValue = "fused-sheet", description = "fused-sheet or film-positive.")
    private String processKey;

    @Option(names = "--mirror", paramLabel = "HOW", defaultValue = "auto", description = "auto (by toner side and face), yes or no.")
    private String mirror;

    @Option(names = "--toner-side", paramLabel = "SIDE", defaultValue = "print", description = "Side of the mesh that the toner touches: print or squeegee.")
    private String tonerSide;

    @Option(names = "--face", paramLabel = "FACE", defaultValue = "interior", description = "Painted face of the glass: interior or exterior.")
    private String face;

    @Option(names = "--open-mm", paramLabel = "MM", description = "Finest opening, counted; that of a 220 mesh if not given.")
    private Double openMm;

    @Option(names = "--bridge-mm", paramLabel = "MM", description = "Finest bridge, counted; that of a 220 mesh if not given.")
    private Double bridgeMm;

    @Option(names = "--mend", paramLabel = "HOW,HOW", split = ",",
            description = "Widen what is too fine: thicken (openings, to --open-mm), strengthen (bridges, to --bridge-mm). Each step is told.")
    private List<String> mend = List.of();

    @Mixin
    private QualityOptions quality;

    @Mixin
    private CommonOptions common;

    @Activate
    public ScreenCommand(@Reference ArtworkReaders readers, @Reference ScreeningMethods methods, @Reference StencilProcesses processes) {
        this.readers = readers;
        this.methods = methods;
        this.processes = processes;
    }

    /** The JSON document; what a method does not have is null. */
    record Answer(String file, int widthPx, int heightPx, double dpi, String method, Double lpi, Double angleDeg, Double dotMm, int levels, double coverage,
            long tooFine, long bridgesLost, long looseIslands, boolean mirrored, String compression, String compressionChoice,
            String sha256, double seconds, List<MendRow> mended, List<QualityRow> quality) {
    }

    /** One place widened; its first px on the page. */
    record MendRow(String kind, double[] at, int px) {
        static MendRow of(Mending.Step step) {
            return new MendRow(step.kind(), new double[] {step.at().xMm(), step.at().yMm()}, step.px());
        }
    }

    @Override
    public Integer call() throws IOException {
        long begun = System.nanoTime();
        ScreeningRecipe recipe = common.ofWords(this::recipe);
        ScreeningMethod screening = common.ofWords(() -> methods.method(method));
        StencilProcess process = common.ofWords(() -> processes.process(processKey));
        TonerSide touches = word("--toner-side", tonerSide, TonerSide.values(), TonerSide::key);
        Face painted = word("--face", face, Face.values(), Face::key);
        boolean mirrored = mirrored(process, touches, painted);
        double finestOpenMm = limit("--open-mm", openMm, USUAL_MESH.finestDotUm() / 1000);
        double finestBridgeMm = limit("--bridge-mm", bridgeMm, USUAL_MESH.finestBridgeUm() / 1000);
        requireTone();
        requireMend();
        String ending = ending();
        quality.check(common, replace);
        if (Files.exists(out) && !replace) {
            throw new LockedException(out + " exists already; nothing was written. Give --replace to replace it, or another name.");
        }
        try (Artwork artwork = art.read(readers)) {
            LayerChoice layer = art.layer() == null ? LayerChoice.all() : LayerChoice.of(artwork.chosenLayer(art.layer()));
            GrayCoding coding = "linear".equals(tone) ? GrayCoding.CODE_VALUES : GrayCoding.SRGB_LUMINANCE;
            RasterRequest place = RasterRequest.ofPage(artwork, dpi, coding);
            ToneTable table = toneTable(artwork, layer);
            Work work = common.work(2L * place.heightPx());
            BitonalSettings settings = BitonalSettings.at(dpi).withTitle(String.valueOf(art.file().getFileName()))
                    .withDescription(description(recipe, mirrored))
                    .replacing(replace).onThreads(common.jobs());
            LimitsCheck check = new LimitsCheck(place.widthPx(), place.heightPx(), dpi, finestOpenMm, finestBridgeMm);
            if (screening.looksAhead(recipe)) {
                RasterRequest coarse = RasterRequest.ofPage(artwork, LOOK_DPI, coding);
                LayerChoice leads = courseLayer == null ? layer : LayerChoice.of(artwork.chosenLayer(courseLayer));
                screening = screening.having(artwork.gray(leads, coarse, common.work(1).part(0, coarse.heightPx())), LOOK_DPI, recipe);
            }
            BitBands screened = new ScreenedBands(artwork.gray(layer, place, work), table, screening, recipe, common.jobs());
            List<Mending.Step> steps = new ArrayList<>();
            BitBands paint = new CheckedBands(mended(screened, finestOpenMm, finestBridgeMm, steps), check);
            BitBands toner = process.toner(paint, mirrored);
            WrittenBits written = switch (ending) {
                case "tif" -> BitonalTiff.write(toner, out, settings, work);
                case "pdf" -> SheetPdf.write(toner, out, settings, work);
                default -> BitonalPng.write(toner, out, settings, work);
            };
            LimitsFound found = check.finish();
            ActualScreen actual = screening.actual(recipe);
            double seconds = (System.nanoTime() - begun) / 1e9;
            List<String> words = words(written, actual, found, mirrored, process);
            steps.stream().limit(TOLD_STEPS).forEach(step -> words.add(String.format(Locale.ROOT, "  %s at %.2f, %.2f mm: %d px", step.kind(), step.at().xMm(),
                    step.at().yMm(), step.px())));
            if (!mend.isEmpty()) {
                words.add(steps.size() + " places widened" + (steps.size() > TOLD_STEPS ? "; --json tells them all" : ""));
            }
            List<QualityRow> measured = quality.measured(List.of(recipe), methods, replace, common.work(1), words);
            common.answer(new Answer(out.toString(), written.widthPx(), written.heightPx(), dpi, method, boxed(actual.lpi()), boxed(actual.angleDeg()),
                    boxed(actual.dotMm()), actual.levels(), found.coverage(), found.tooFine(), found.bridgesLost(), found.looseIslands(), mirrored,
                    written.compression(), written.choice().isEmpty() ? null : written.choice(), written.sha256OfFile(), seconds,
                    steps.stream().map(MendRow::of).toList(), measured), words);
            List<Problem> problems = new ArrayList<>(artwork.warnings());
            problems.addAll(screening.advice(recipe));
            common.tell(problems);
            return problems.stream().anyMatch(problem -> problem.severity() != Severity.NOTE) ? ATTENTION : DONE;
        }
    }

    private ScreeningRecipe recipe() {
        ScreeningRecipe recipe = ScreeningRecipe.withDefaults().withMethod(method).withDpiAndLpi(dpi, lpi).withAngleDeg(angleDeg).withDot(dot).withDotMm(dotMm)
                .withFilter(filter).withNoiseSide(noiseSide).withCourse(course);
        if (raster) {
            recipe = recipe.withScan(ScreeningRecipe.Scan.RASTER);
        }
        return clusterDots == null ? recipe : recipe.withClusterDots(clusterDots);
    }

    private void requireMend() {
        for (String how : mend) {
            if (!how.strip().equals(Mending.THICKEN) && !how.strip().equals(Mending.STRENGTHEN)) {
                throw common.wrong("--mend takes thicken, strengthen or both with a comma, not '" + how + "'.");
            }
        }
    }

    private boolean mends(String how) {
        return mend.stream().anyMatch(word -> word.strip().equals(how));
    }

    /** What is screened, widened where that was asked for: then the picture is held whole. */
    private BitBands mended(BitBands screened, double openMm, double bridgeMm, List<Mending.Step> steps) throws IOException {
        if (mend.isEmpty()) {
            return screened;
        }
        try (screened) {
            PictureMending.Done done = PictureMending.all(BitPicture.of(screened), dpi, mends(Mending.THICKEN) ? openMm : 0,
                    mends(Mending.STRENGTHEN) ? bridgeMm : 0);
            steps.addAll(done.steps());
            return done.bits().bands();
        }
    }

    private void requireTone() {
        if (curve != null) {
            if ("linear".equals(tone)) {
                throw common.wrong("--tone linear leaves no room for --curve; leave one of them out.");
            }
            common.ofWords(() -> DrawnCurve.parse(curve));
        }
        if (tone != null && (from != null || to != null)) {
            throw common.wrong("--tone says the whole tone; leave out --from and --to.");
        }
        common.ofWords(() -> new Stretch(from == null ? 0 : from, to == null ? 1 : to));
    }

    private ToneTable toneTable(Artwork artwork, LayerChoice layer) throws IOException {
        if ("linear".equals(tone)) {
            return ToneTable.linear();
        }
        Optional<Calibration> calibration = tone == null ? Optional.empty() : Optional.of(WedgeFile.read(Path.of(tone)));
        GrayCoding coding = GrayCoding.SRGB_LUMINANCE;
        OptionalDouble upTo = to == null ? OptionalDouble.empty() : OptionalDouble.of(to);
        double bare = from == null ? 0 : from;
        Stretch stretch = upTo.isPresent() ? new Stretch(bare, upTo.getAsDouble()) : Stretch.of(bare, upTo, measured(artwork, layer, coding));
        return ToneTable.of(coding, stretch, DrawnCurve.parse(curve), calibration, EndLimits.NONE);
    }

    /** The drawn range shows at a low resolution already. */
    private GrayHistogram measured(Artwork artwork, LayerChoice layer, GrayCoding coding) throws IOException {
        RasterRequest coarse = RasterRequest.ofPage(artwork, Math.min(dpi, MEASURE_DPI), coding);
        GrayBands gray = artwork.gray(layer, coarse, common.work(1).part(0, coarse.heightPx()));
        return GrayHistogram.of(gray);
    }

    private boolean mirrored(StencilProcess process, TonerSide touches, Face painted) {
        return switch (mirror.toLowerCase(Locale.ROOT)) {
            case "auto" -> process.mirrored(touches, painted);
            case "yes" -> true;
            case "no" -> false;
            default -> throw common.wrong("--mirror takes auto, yes or no, not '" + mirror + "'.");
        };
    }

    private double limit(String option, Double mm, double usual) {
        if (mm != null && !(mm >= 0 && mm <= 5)) {
            throw common.wrong(option + " takes 0 to 5 mm, not " + mm + ".");
        }
        return mm == null ? usual : mm;
    }

    private <T> T word(String option, String given, T[] values, Function<T, String> key) {
        List<String> words = new ArrayList<>();
        for (T value : values) {
            if (key.apply(value).equalsIgnoreCase(given)) {
                return value;
            }
            words.add(key.apply(value));
        }
        throw common.wrong(option + " takes " + String.join(" or ", words) + ", not '" + given + "'.");
    }

    private String ending() {
        String name = String.valueOf(out.getFileName()).toLowerCase(Locale.ROOT);
        if (name.endsWith(".tif") || name.endsWith(".tiff")) {
            return "tif";
        }
        if (name.endsWith(".pdf")) {
            return "pdf";
        }
        if (name.endsWith(".png")) {
            return "png";
        }
        throw common.wrong("--out takes a name that ends in .tif, .pdf or .png, not '" + out + "'.");
    }

    private String description(ScreeningRecipe recipe, boolean mirrored) {
        return String.format(Locale.ROOT,
                "method: %s%nruling: %s lpi at %s degrees, %s dots%nscattered dots: %s mm, %s%nresolution: %s dpi%nprocess: %s%nmirrored: %s%n",
                recipe.method(), recipe.lpi(), recipe.angleDeg(), recipe.dot(), recipe.dotMm(), recipe.filter(), recipe.dpi(), processKey,
                mirrored ? "yes" : "no").replace("\r\n", "\n");
    }

    private static Double boxed(OptionalDouble value) {
        return value.isPresent() ? value.getAsDouble() : null;
    }

    private List<String> words(WrittenBits written, ActualScreen actual, LimitsFound found, boolean mirrored, StencilProcess process) {
        List<String> words = new ArrayList<>();
        words.add(String.format(Locale.ROOT, "%s: %d x %d px at %s dpi (%.1f x %.1f mm), %s", out, written.widthPx(), written.heightPx(), Units.plain(dpi),
                Units.mmOfPx(written.widthPx(), dpi), Units.mmOfPx(written.heightPx(), dpi), written.compression()));
        if (!written.choice().isEmpty()) {
            words.add("Packed as " + written.choice() + ".");
        }
        StringBuilder screen = new StringBuilder(method);
        actual.lpi().ifPresent(value -> screen.append(String.format(Locale.ROOT, ", %.3f lines an inch", value)));
        actual.angleDeg().ifPresent(value -> screen.append(String.format(Locale.ROOT, " at %.3f degrees", value)));
        actual.dotMm().ifPresent(value -> screen.append(String.format(Locale.ROOT, ", dots of %.3f mm", value)));
        words.add(screen + ", " + actual.levels() + " tones");
        words.add(String.format(Locale.ROOT, "%.2f %% prints; %d openings too fine, %d bridges lost, %d loose islands", 100 * found.coverage(),
                found.tooFine(), found.bridgesLost(), found.looseIslands()));
        words.add((mirrored ? "Mirrored" : "As drawn, not mirrored") + "; what prints is " + (process.printsWhite() ? "white." : "black."));
        words.add(process.caution());
        return words;
    }
}
