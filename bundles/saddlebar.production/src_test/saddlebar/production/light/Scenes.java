package saddlebar.production.light;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Severity;

/** Small windows for tests. */
final class Scenes {
    static final RectMm PAGE = new RectMm(0, 0, 120, 180);
    private static final int[] GLASS = {0x2E6FB0, 0x86C5D8, 0xE9C46A, 0xB9533D, 0x4C8C4A, 0xF2EFE0};

    private Scenes() {
    }

    /** A round-headed panel of six pieces about a roundel with a hole, a matt that darkens downwards, a stroke of trace and a stained spot. */
    static EaselScene roundHead() {
        List<ScenePiece> pieces = new ArrayList<>();
        add(pieces, Contour.of(ring(arc(60, 60, 59.6, 180, 270, 24), new double[] {59.6, 20.4}, arc(60, 60, 39.6, 269.5, 180.5, 16))), 32, 32, 9);
        add(pieces, Contour.of(ring(arc(60, 60, 59.6, 270, 360, 24), arc(60, 60, 39.6, 359.5, 270.5, 16))), 88, 32, 9);
        add(pieces, Contour.of(List.of(arc(60, 60, 39, 0, 357, 60), arc(60, 60, 16, 0, 354, 40))), 60, 88, 11);
        add(pieces, Contour.of(arc(60, 60, 15.4, 0, 354, 40)), 60, 60, 15);
        add(pieces, Contour.of(ring(new double[] {0.4, 60.4, 20.2, 60.4}, arc(60, 60, 39.8, 179.4, 90.6, 20), new double[] {59.6, 179.6, 0.4, 179.6})),
                24, 140, 22);
        add(pieces, Contour.of(ring(arc(60, 60, 39.8, 89.4, 0.6, 20), new double[] {119.6, 60.4, 119.6, 179.6, 60.4, 179.6})), 96, 140, 22);
        Contour outline = Contour.of(ring(arc(60, 60, 60, 180, 360, 48), new double[] {120, 180, 0, 180}));
        List<SceneLayer> layers = List.of(new SceneLayer("matt", "Matt", PaintLook.ofRgb(0x6B4F3F), matt()),
                new SceneLayer("trace", "Trace", PaintLook.ofRgb(0x1C1512), trace()),
                new SceneLayer("stain", "Stain", new PaintLook(0.98, 0.72, 0.12), spot()));
        List<Problem> problems = List.of(Problem.at("sliver", Severity.ERROR, 30, 100, "A sliver."),
                Problem.at("needle", Severity.WARNING, 60, 130, "A needle point."), Problem.at("small", Severity.NOTE, 90, 100, "Small."));
        return new EaselScene("W01", PAGE, List.of(outline), pieces, layers, problems, List.of("Morning", "Evening"), new Metal(1.6));
    }

    private static void add(List<ScenePiece> pieces, Contour contour, double xMm, double yMm, double radiusMm) {
        int n = pieces.size();
        pieces.add(new ScenePiece("p" + (n + 1), "" + (n + 1), contour, xMm, yMm, radiusMm,
                List.of(new GlassLook("first " + n, GLASS[n % GLASS.length]), new GlassLook("second " + n, GLASS[(n + 3) % GLASS.length]))));
    }

    private static Coverage matt() {
        byte[] covered = new byte[240 * 360];
        for (int y = 0; y < 360; y++) {
            for (int x = 0; x < 240; x++) {
                covered[240 * y + x] = (byte) Math.round(255.0 * y / 359);
            }
        }
        return new Coverage(PAGE, 240, 360, covered);
    }

    private static Coverage trace() {
        byte[] covered = new byte[480 * 720];
        for (int y = 0; y < 720; y++) {
            double at = 240 + 90 * Math.sin(y / 110.0);
            for (int x = 0; x < 480; x++) {
                double half = 3 + 5 * Math.abs(Math.sin(y / 60.0));
                covered[480 * y + x] = (byte) Math.round(255 * Math.max(0, Math.min(1, half + 0.5 - Math.abs(x + 0.5 - at))));
            }
        }
        return new Coverage(PAGE, 480, 720, covered);
    }

    private static Coverage spot() {
        byte[] covered = new byte[240 * 360];
        for (int y = 0; y < 360; y++) {
            for (int x = 0; x < 240; x++) {
                covered[240 * y + x] = (byte) (Math.hypot(x + 0.5 - 120, y + 0.5 - 120) < 26 ? 255 : 0);
            }
        }
        return new Coverage(PAGE, 240, 360, covered);
    }

    private static double[] arc(double x, double y, double radius, double fromDeg, double toDeg, int steps) {
        double[] points = new double[2 * (steps + 1)];
        for (int i = 0; i <= steps; i++) {
            double turn = Math.toRadians(fromDeg + (toDeg - fromDeg) * i / steps);
            points[2 * i] = x + radius * Math.cos(turn);
            points[2 * i + 1] = y + radius * Math.sin(turn);
        }
        return points;
    }

    private static double[] ring(double[]... parts) {
        return Arrays.stream(parts).flatMapToDouble(Arrays::stream).toArray();
    }
}
