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
import saddlebar.artwork.Artwork;
import saddlebar.artwork.ArtworkReaders;
import saddlebar.artwork.LayerChoice;
import saddlebar.artwork.RasterRequest;
import saddlebar.artwork.ReadSettings;
import saddlebar.model.art.GrayCoding;
import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Severity;
import saddlebar.model.units.Units;
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
                "Readings are CSV: nominal (0 to 1) and one of effective, density, transmittance."})
public final class ToneCommand implements BenchCommand {
    private static final int INVERSE_STEPS = 20;
    private static final double PHOTOGRAPH_PX = 2000;

    private final ArtworkReaders readers;

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

    @Mixin
    private CommonOptions common;

    @Activate
    public ToneCommand(@Reference ArtworkReaders readers) {
        this.readers = readers;
    }

    /** The JSON document. */
    record Answer(double[][] points, double gainAt50, double[][] inverse, List<double[]> densities, List<ProblemRow> problems) {
    }

    @Override
    public Integer call() throws IOException {
        if (!(yuleNielsen >= 1 && yuleNielsen <= 3)) {
            throw common.wrong("--yule-nielsen takes 1 to 3, not " + yuleNielsen + ".");
        }
        if (!photograph && !known.isEmpty()) {
            throw common.wrong("--known goes with --photograph.");
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
        common.answer(new Answer(points, calibration.gainAt50(), inverse, densities, problems.stream().map(ProblemRow::of).toList()),
                words(calibration, inverse));
        common.tell(problems);
        return problems.stream().anyMatch(problem -> problem.severity() != Severity.NOTE) ? ATTENTION : DONE;
    }

    private List<WedgeReading> photographed(List<Problem> problems, List<double[]> densities) throws IOException {
        try (Artwork picture = readers.read(file, ReadSettings.asDrawn())) {
            double dpi = PHOTOGRAPH_PX / Math.max(picture.widthMm(), picture.heightMm()) * Units.MM_PER_INCH;
            RasterRequest place = RasterRequest.ofPage(picture, dpi, GrayCoding.SRGB_LUMINANCE);
            WedgePhotograph.Read read = WedgePhotograph.read(picture.gray(LayerChoice.all(), place, common.work(place.heightPx())), WedgeLayout.usual(), known,
                    knownMm);
            problems.addAll(read.problems());
            read.steps().forEach(step -> densities.add(new double[] {step.nominal(), step.density()}));
            return MeasuredWedge.readings(read.steps(), yuleNielsen);
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
