package saddlebar.stencil.wedge;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

import saddlebar.model.art.GrayBands;
import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Refusal;
import saddlebar.model.problem.Severity;
import saddlebar.stencil.sheet.RectMm;
import saddlebar.stencil.tone.MeasuredStep;
import saddlebar.stencil.tone.MonotoneCubic;
import saddlebar.stencil.tone.TintDensity;

/**
 * Reads a fired wedge from a photograph of it on a light box, turned or mirrored as it may lie. The frame is found and its four corners place the
 * layout on the picture; the bare glass between patches tells the light at every place (a second-degree surface through its logarithms, least squares,
 * and what that misses by the nearest bare places: Shepard, D. (1968). A two-dimensional interpolation function for irregularly-spaced data, ACM);
 * steps of known density in the window tell what the camera makes of light (a rising curve from the logarithm of px against light to density). Each px
 * becomes transmittance before patches are averaged, since a camera may see single dots. Our own; geometry of ISO 5-2 is not claimed: a photograph is
 * for relative densities of one paint, not for certificates.
 */
public final class WedgePhotograph {
    /**
     * What was read.
     *
     * @param steps    densities against bare glass
     * @param lightPer how much the light falls off over the wedge: darkest over brightest bare place
     * @param problems what to know before use
     */
    public record Read(List<MeasuredStep> steps, double lightPer, List<Problem> problems) {
    }

    private static final double INNER = 0.6;
    private static final double DARKEST = 1e-3;
    private static final double UNEVEN = 0.5;

    private final LightPicture picture;
    private final WedgeLayout layout;
    private final Projection place;
    private final double[] light;
    private final List<double[]> bare;

    private WedgePhotograph(LightPicture picture, WedgeLayout layout, Projection place) {
        this.picture = picture;
        this.layout = layout;
        this.place = place;
        this.light = fittedLight();
        this.bare = List.copyOf(bareAgainstFit());
    }

    /**
     * Reads a photograph, to its end, and closes it.
     *
     * @param known       densities of the known steps, side by side from the window's left end; empty if there are none: then px are taken as
     *                    proportional to light, or as sRGB where the bands are coded so
     * @param knownStepMm width of one of them
     */
    public static Read read(GrayBands photograph, WedgeLayout layout, List<Double> known, double knownStepMm) throws IOException {
        LightPicture picture = LightPicture.of(photograph);
        double[][] corners = WedgeFrame.corners(picture);
        WedgePhotograph best = null;
        double bestScore = 0;
        for (Projection place : Projection.waysRound(corners, layout.widthMm(), layout.heightMm())) {
            WedgePhotograph way = new WedgePhotograph(picture, layout, place);
            double score = way.rising();
            if (score > bestScore) {
                bestScore = score;
                best = way;
            }
        }
        if (best == null || bestScore < 0.5) {
            throw new Refusal("photograph", "its patches do not darken from step to step as a wedge does",
                    "photograph the whole frame with some bare glass around it, and say the right steps");
        }
        return best.steps(known, knownStepMm);
    }

    private Read steps(List<Double> known, double knownStepMm) {
        List<Problem> problems = new ArrayList<>();
        Response response = known.isEmpty() ? Response.plain() : Response.of(knownValues(known, knownStepMm), known);
        if (known.isEmpty()) {
            problems.add(Problem.of("no-known-step", Severity.WARNING, "photograph",
                    "Without a step of known density beside it the camera is trusted to tell light truly; most do not. Lay a step tablet in the window."));
        }
        List<MeasuredStep> steps = new ArrayList<>();
        for (int step = 0; step < layout.steps().size(); step++) {
            double[] sum = new double[2];
            inside(layout.patch(step), INNER, (value, x, y) -> {
                sum[0] += TintDensity.transmittance(response.density(against(value, x, y)));
                sum[1]++;
            });
            steps.add(new MeasuredStep(layout.steps().get(step), TintDensity.density(Math.max(DARKEST, sum[0] / sum[1]))));
        }
        double fall = fall();
        if (fall < UNEVEN) {
            problems.add(Problem.of("light-uneven", Severity.WARNING, "photograph", String.format(Locale.ROOT,
                    "The light falls to %.0f %% over the wedge; it was allowed for, but lay the wedge in the middle of the light box.", 100 * fall)));
        }
        return new Read(steps, fall, problems);
    }

    private double[] knownValues(List<Double> known, double knownStepMm) {
        double[] values = new double[known.size()];
        for (int step = 0; step < values.length; step++) {
            double[] sum = new double[2];
            inside(layout.known(values.length, knownStepMm, step), INNER, (value, x, y) -> {
                sum[0] += value / light(x, y);
                sum[1]++;
            });
            values[step] = -StrictMath.log10(Math.max(DARKEST, sum[0] / sum[1]));
        }
        return values;
    }

    /** -log10 of a px against the light at its place. */
    private double against(double value, double xMm, double yMm) {
        return -StrictMath.log10(Math.max(DARKEST, value / light(xMm, yMm)));
    }

    private double light(double xMm, double yMm) {
        double u = xMm / layout.widthMm();
        double v = yMm / layout.heightMm();
        return StrictMath.exp(fit(u, v) + nearby(xMm, yMm));
    }

    private double fit(double u, double v) {
        return light[0] + light[1] * u + light[2] * v + light[3] * u * u + light[4] * u * v + light[5] * v * v;
    }

    /** What the surface misses: the mean of what bare places say, near ones by the inverse square of their distance (Shepard, 1968). */
    private double nearby(double xMm, double yMm) {
        double sum = 0;
        double weights = 0;
        for (double[] place : bare) {
            double x = xMm - place[0];
            double y = yMm - place[1];
            double weight = 1 / (layout.gapMm() * layout.gapMm() / 4 + x * x + y * y);
            weight *= weight;
            sum += weight * place[2];
            weights += weight;
        }
        return bare.isEmpty() ? 0 : sum / weights;
    }

    private List<double[]> bareAgainstFit() {
        List<double[]> found = new ArrayList<>();
        for (RectMm box : layout.bare()) {
            double x = box.xMm() + box.widthMm() / 2;
            double y = box.yMm() + box.heightMm() / 2;
            found.add(new double[] {x, y, StrictMath.log(Math.max(DARKEST, mean(box))) - fit(x / layout.widthMm(), y / layout.heightMm())});
        }
        return found;
    }

    private double mean(RectMm box) {
        double[] sum = new double[2];
        inside(box, 0.8, (value, x, y) -> {
            sum[0] += value;
            sum[1]++;
        });
        return sum[0] / Math.max(1, sum[1]);
    }

    private double[] fittedLight() {
        List<double[]> rows = new ArrayList<>();
        List<Double> logs = new ArrayList<>();
        for (RectMm box : layout.bare()) {
            double u = (box.xMm() + box.widthMm() / 2) / layout.widthMm();
            double v = (box.yMm() + box.heightMm() / 2) / layout.heightMm();
            rows.add(new double[] {1, u, v, u * u, u * v, v * v});
            logs.add(StrictMath.log(Math.max(DARKEST, mean(box))));
        }
        return LeastSquares.solve(rows, logs);
    }

    private double fall() {
        double least = Double.POSITIVE_INFINITY;
        double most = 0;
        for (RectMm box : layout.bare()) {
            double here = light(box.xMm(), box.yMm());
            least = Math.min(least, here);
            most = Math.max(most, here);
        }
        return least / most;
    }

    /** Correlation of the steps with the patches' darkness, -1 to 1: 1 if the layout lies the right way round. */
    private double rising() {
        int n = layout.steps().size();
        double[] dark = new double[n];
        double meanStep = 0;
        double meanDark = 0;
        for (int step = 0; step < n; step++) {
            double[] sum = new double[2];
            inside(layout.patch(step), INNER, (value, x, y) -> {
                sum[0] += against(value, x, y);
                sum[1]++;
            });
            dark[step] = sum[0] / Math.max(1, sum[1]);
            meanStep += layout.steps().get(step) / n;
            meanDark += dark[step] / n;
        }
        double both = 0;
        double squareStep = 0;
        double squareDark = 0;
        for (int step = 0; step < n; step++) {
            double s = layout.steps().get(step) - meanStep;
            double d = dark[step] - meanDark;
            both += s * d;
            squareStep += s * s;
            squareDark += d * d;
        }
        return squareDark > 0 ? both / Math.sqrt(squareStep * squareDark) : 0;
    }

    /** About one sample a px of the middle of a box. */
    private void inside(RectMm box, double share, Sample sample) {
        double xMm = box.xMm() + box.widthMm() * (1 - share) / 2;
        double yMm = box.yMm() + box.heightMm() * (1 - share) / 2;
        int across = Math.max(2, (int) (share * place.lengthPx(box.xMm(), box.yMm(), box.rightMm(), box.yMm())));
        int down = Math.max(2, (int) (share * place.lengthPx(box.xMm(), box.yMm(), box.xMm(), box.bottomMm())));
        for (int j = 0; j < down; j++) {
            for (int i = 0; i < across; i++) {
                double x = xMm + share * box.widthMm() * (i + 0.5) / across;
                double y = yMm + share * box.heightMm() * (j + 0.5) / down;
                double[] px = place.px(x, y);
                sample.take(picture.at(px[0], px[1]), x, y);
            }
        }
    }

    @FunctionalInterface
    private interface Sample {
        void take(double value, double xMm, double yMm);
    }

    /** From -log10(px against light) to density. */
    private record Response(MonotoneCubic curve, double most, double slopeBeyond) {
        static Response plain() {
            return new Response(null, 0, 1);
        }

        static Response of(double[] values, List<Double> densities) {
            double[] x = new double[values.length + 1];
            double[] y = new double[values.length + 1];
            int n = 1; // bare glass is 0
            for (int i = 0; i < values.length; i++) {
                if (densities.get(i) <= 0.02) {
                    continue; // as good as bare
                }
                if (!(densities.get(i) > y[n - 1]) || !(values[i] > x[n - 1])) {
                    throw new Refusal("known steps", String.format(Locale.ROOT, "the step of density %.2f is not darker in the photograph than the one before",
                            densities.get(i)), "say the densities from the window's left end, rising, and expose so that the darkest is not black");
                }
                x[n] = values[i];
                y[n++] = densities.get(i);
            }
            if (n < 3) {
                throw new Refusal("known steps", "fewer than two known steps darken the light", "lay in a tablet with more steps");
            }
            double[] fewX = Arrays.copyOf(x, n);
            double[] fewY = Arrays.copyOf(y, n);
            return new Response(new MonotoneCubic(fewX, fewY), fewX[n - 1], (fewY[n - 1] - fewY[n - 2]) / (fewX[n - 1] - fewX[n - 2]));
        }

        double density(double value) {
            if (curve == null) {
                return value;
            }
            if (value <= 0) {
                return value * curve.at(0.02) / 0.02; // noise about bare glass goes both ways
            }
            return value > most ? curve.at(most) + slopeBeyond * (value - most) : curve.at(value);
        }
    }
}
