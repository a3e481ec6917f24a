package saddlebar.cli;

import java.io.IOException;
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
import saddlebar.model.commission.Mesh;
import saddlebar.model.commission.Paint;
import saddlebar.model.commission.ToneCalibration;
import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Severity;
import saddlebar.model.store.Access;
import saddlebar.production.facts.CalibrationChoice;
import saddlebar.production.studio.CalibrationBook;
import saddlebar.production.studio.StudioThings;
import saddlebar.production.studio.WedgeFile;
import saddlebar.production.studio.WedgePicture;
import saddlebar.stencil.ScreeningMethod;
import saddlebar.stencil.ScreeningMethods;
import saddlebar.stencil.ScreeningRecipe;
import saddlebar.stencil.process.StencilProcesses;
import saddlebar.stencil.tone.Calibration;
import saddlebar.stencil.tone.MeasuredWedge;
import saddlebar.stencil.tone.WedgeReading;
import saddlebar.stencil.wedge.WedgeLayout;
import saddlebar.stencil.wedge.WedgePhotograph;

/** Readings of a fired wedge, or a photograph of it, to a tone calibration. */
@Component(service = BenchCommand.class, scope = ServiceScope.PROTOTYPE)
@Command(name = "tone", sortOptions = false,
        description = "Turns readings of a fired step wedge, or a photograph of it on a light box, into a tone calibration.",
        footer = {"", "Example: saddlebar tone readings.csv",
                "Example: saddlebar tone readings.csv --keep demo-projects/first-panel --paint \"pale matt\" --mesh 220-48 --method am",
                "Readings are CSV: nominal (0 to 1) and one of effective, density, transmittance."})
public final class ToneCommand implements BenchCommand {
    private static final int INVERSE_STEPS = 20;

    private final ArtworkReaders readers;
    private final ScreeningMethods methods;
    private final StencilProcesses processes;

    @Parameters(index = "0", paramLabel = "READINGS", description = "CSV of readings; a picture with --photograph.")
    private Path file;

    @Option(names = "--photograph", description = "READINGS is a photograph (PNG, JPEG, TIFF) of a wedge that saddlebar wedge drew, on a light box.")
    private boolean photograph;

    @Option(names = "--known", paramLabel = "D,D,...", split = ",", description = "Densities of the steps that lie in the wedge's window, from its left end.")
    private List<Double> known = List.of();

    @Option(names = "--known-mm", paramLabel = "W", defaultValue = "10", description = "Width of one of these steps in mm; 10 if not given.")
    private double knownMm;

    @Option(names = "--yule-nielsen", paramLabel = "N", defaultValue = "1",
            description = "1 for paint seen through glass (if not given); 1.6 to 2 for proofs on paper.")
    private double yuleNielsen;

    @Option(names = "--keep", paramLabel = "C-or-STUDIO",
            description = "Keep the calibration in this studio, dated; recipes with calibrated tone use it until a newer one for the same paint, mesh and method"
                    + " supersedes it.")
    private Path keep;

    @Option(names = "--paint", paramLabel = "NAME", description = "Paint that the wedge was printed with, by the studio's name. With --keep.")
    private String paint;

    @Option(names = "--mesh", paramLabel = "NAME", description = "Mesh that it was printed through, by the studio's name. With --keep.")
    private String mesh;

    @Option(names = "--method", paramLabel = "M", defaultValue = "am", description = "Screening method of the wedge; am if not given.")
    private String method;

    @Option(names = "--lpi", paramLabel = "L", defaultValue = "40", description = "Its ruling; 40 if not given.")
    private double lpi;

    @Option(names = "--dot-mm", paramLabel = "D", defaultValue = "0.254", description = "Its scattered dots in mm; 0.254 if not given.")
    private double dotMm;

    @Option(names = "--process", paramLabel = "P", defaultValue = "fused-sheet", description = "Process of its stencil; fused-sheet if not given.")
    private String processKey;

    @Option(names = "--measured", paramLabel = "DAY", description = "Day of the readings, such as 2026-03-17; today if not given.")
    private LocalDate measured;

    @Mixin
    private CommonOptions common;

    @Activate
    public ToneCommand(@Reference ArtworkReaders readers, @Reference ScreeningMethods methods, @Reference StencilProcesses processes) {
        this.readers = readers;
        this.methods = methods;
        this.processes = processes;
    }

    /** The JSON document. */
    record Answer(double[][] points, double gainAt50, double[][] inverse, List<double[]> densities, List<ProblemRow> problems,
            Kept kept) {
    }

    /** What now stands in the studio. */
    record Kept(String name, String measured, String superseded) {
    }

    @Override
    public Integer call() throws IOException {
        if (!(yuleNielsen >= 1 && yuleNielsen <= 3)) {
            throw common.wrong("--yule-nielsen takes 1 to 3, not " + yuleNielsen + ".");
        }
        if (!photograph && !known.isEmpty()) {
            throw common.wrong("--known goes with --photograph.");
        }
        if (keep == null && (paint != null || mesh != null || measured != null)) {
            throw common.wrong("--paint, --mesh and --measured say what --keep is to keep; give --keep C-or-STUDIO too.");
        }
        if (keep != null && (paint == null || mesh == null)) {
            throw common.wrong("--keep needs --paint and --mesh, by the studio's names.");
        }
        List<Problem> problems = new ArrayList<>();
        List<double[]> densities = new ArrayList<>();
        List<WedgeReading> readings = photograph ? photographed(problems, densities) : WedgeFile.readings(file, yuleNielsen);
        Calibration calibration = Calibration.of(readings);
        problems.addAll(calibration.problems());
        double[][] points = calibration.readings().stream().map(reading -> new double[] {reading.nominal(), reading.effective()}).toArray(double[][]::new);
        double[][] inverse = new double[INVERSE_STEPS + 1][];
        for (int i = 0; i <= INVERSE_STEPS; i++) {
            double wanted = (double) i / INVERSE_STEPS;
            inverse[i] = new double[] {wanted, calibration.toScreen(wanted)};
        }
        List<String> words = words(calibration, inverse);
        Kept kept = keep == null ? null : kept(readings, words);
        common.answer(new Answer(points, calibration.gainAt50(), inverse, densities, problems.stream().map(ProblemRow::of).toList(), kept), words);
        common.tell(problems);
        return problems.stream().anyMatch(problem -> problem.severity() != Severity.NOTE) ? ATTENTION : DONE;
    }

    private List<WedgeReading> photographed(List<Problem> problems, List<double[]> densities) throws IOException {
        WedgePhotograph.Read read = WedgePicture.read(readers, file, WedgeLayout.usual(), known, knownMm, common.work(1));
        problems.addAll(read.problems());
        read.steps().forEach(step -> densities.add(new double[] {step.nominal(), step.density()}));
        return MeasuredWedge.readings(read.steps(), yuleNielsen);
    }

    private Kept kept(List<WedgeReading> readings, List<String> words) throws IOException {
        common.ofWords(() -> processes.process(processKey));
        ScreeningMethod screening = common.ofWords(() -> methods.method(method));
        ScreeningRecipe recipe = common.ofWords(() -> ScreeningRecipe.withDefaults().withMethod(method).withLpi(lpi).withDotMm(dotMm));
        try (StudioAccess studio = StudioAccess.open(keep, Access.WRITE)) {
            Paint of = common.ofWords(() -> StudioThings.paint(studio.studio(), paint));
            Mesh through = common.ofWords(() -> StudioThings.mesh(studio.studio(), mesh));
            Optional<ToneCalibration> before = CalibrationChoice.of(studio.studio(), of, through, method);
            ToneCalibration calibration = CalibrationBook.keep(studio.studio(), CalibrationBook.Measured.of(of, through, recipe, screening.actual(recipe),
                    processKey, yuleNielsen, measured == null ? LocalDate.now() : measured, String.valueOf(file.getFileName()), readings));
            studio.save();
            words.add("Kept as " + calibration.getName() + "." + before.map(older -> calibration.getSupersededBy() == null
                    ? " It supersedes " + older.getName() + ", which stays to be looked at."
                    : " " + older.getName() + " is newer and stays in use.").orElse(""));
            String superseded = calibration.getSupersededBy() == null ? before.map(ToneCalibration::getName).orElse(null) : null;
            return new Kept(calibration.getName(), calibration.getMeasured().toString(), superseded);
        }
    }

    private static List<String> words(Calibration calibration, double[][] inverse) {
        List<String> words = new ArrayList<>();
        words.add(String.format(Locale.ROOT, "%d steps; 50 %% prints as %.1f %%: a gain of %.1f points", calibration.readings().size(),
                100 * calibration.printed(0.5), 100 * calibration.gainAt50()));
        words.add("To print this   screen this");
        for (int i = 0; i < inverse.length; i += 2) {
            words.add(String.format(Locale.ROOT, "%9.0f %%   %9.1f %%", 100 * inverse[i][0], 100 * inverse[i][1]));
        }
        return words;
    }
}
