package saddlebar.stencil.mesh;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import saddlebar.model.units.Require;
import saddlebar.model.units.Units;

/**
 * Which bands a ruling makes with a mesh. The ruling has the frequencies i S1 + j S2, S1 = lpi (cos t, sin t), S2 = lpi (-sin t, cos t), the
 * mesh u G1 + v G2 likewise with its threads an inch and its own angle; a beat is the difference of two. Its contrast is 2 |c_dot c_mesh|/(a A)
 * with c_dot = a 2 J1(z)/z, z = 2 pi sqrt(a/pi) sqrt(i^2 + j^2) for round dots of coverage a, and c_mesh = A sinc(u w/p) sinc(v w/p). Only beats
 * slower than half the ruling count; faster ones are the screen's own texture.
 *
 * <p>It overstates: wet paint flows and a stencil bridges openings. It ranks rulings and angles; it passes or fails none, until a studio's own
 * prints scale it. Scattered dots have no ruling and so no repeating beat.
 *
 * <p>Source: Amidror, The Theory of the Moire Phenomenon, vol. 1, 2nd ed., Springer, 2009, ch. 2.
 *
 * @param mesh         as woven
 * @param meshAngleDeg angle of the threads, x towards y, to the sheet
 */
public record MeshBeats(Mesh mesh, double meshAngleDeg) {
    /** Order of the ruling to which the slowest beat is sought. */
    private static final int SLOW_ORDER = 6;
    /** Order to which rulings are ranked: reaches the mesh for up to 7 threads a cell. */
    private static final int RANK_ORDER = 8;
    private static final double SAME = 1e-6;
    private static final double SHOWN_TONE = 0.3;
    private static final int TENTHS = 9;
    /** Tension widens a mesh and counts differ from bolt to bolt. */
    private static final double[] COUNT_SPREAD = {0.97, 1, 1.03};
    private static final List<Eye> EYES = List.of(new Eye(1), new Eye(2));
    private static final double LEAST_THREADS_A_CELL = 4;
    private static final double MOST_THREADS_A_CELL = 7;
    private static final double USUAL_LEAST_LPI = 32;
    private static final double USUAL_MOST_LPI = 60;
    private static final double ANGLE_STEP_DEG = 2.5;
    private static final double NEAR_DEG = 15;

    public MeshBeats(Mesh mesh) {
        this(mesh, 0);
    }

    public MeshBeats {
        Require.finite("meshAngleDeg", meshAngleDeg);
    }

    /** The slowest beat of the mesh as it is called, of whatever contrast. */
    public MeshBeat slowest(double lpi, double angleDeg) {
        Waves waves = Waves.of(lpi, angleDeg, mesh.threadsPerInch(), meshAngleDeg);
        int[] best = null;
        double least = Double.POSITIVE_INFINITY;
        for (int u = 0; u <= 2; u++) {
            for (int v = u == 0 ? 1 : -2; v <= 2; v++) {
                for (int i = -SLOW_ORDER; i <= SLOW_ORDER; i++) {
                    for (int j = -SLOW_ORDER; j <= SLOW_ORDER; j++) {
                        double f = waves.beat(i, j, u, v);
                        if (f < least - SAME || f < least + SAME && best != null && order(i, j) + order(u, v) < order(best[0], best[1])
                                + order(best[2], best[3])) {
                            best = new int[] {i, j, u, v};
                            least = f;
                        }
                    }
                }
            }
        }
        double contrast = 2 * dot(SHOWN_TONE, best[0], best[1]) * mesh(mesh.openingUm() / mesh.pitchUm(), best[2], best[3]);
        return new MeshBeat(best[0], best[1], best[2], best[3], least, contrast);
    }

    private static int order(int first, int second) {
        return Math.abs(first) + Math.abs(second);
    }

    /**
     * The worst that any beat shows: contrast times the eye's sensitivity, over tones of 10 to 90 %, counts 3 % off either way, seen from 1 and
     * 2 m.
     */
    public double score(double lpi, double angleDeg) {
        return score(lpi, angleDeg, new HashMap<>());
    }

    private double score(double lpi, double angleDeg, Map<Integer, Double> worstDots) {
        double worst = 0;
        for (double spread : COUNT_SPREAD) {
            double count = mesh.threadsPerInch() * spread;
            Waves waves = Waves.of(lpi, angleDeg, count, meshAngleDeg);
            double open = 1 - mesh.threadUm() * count / Units.UM_PER_INCH;
            for (int u = 0; u <= 2; u++) {
                for (int v = u == 0 ? 1 : -2; v <= 2; v++) {
                    double meshPart = mesh(open, u, v);
                    for (int i = -RANK_ORDER; i <= RANK_ORDER; i++) {
                        for (int j = -RANK_ORDER; j <= RANK_ORDER; j++) {
                            double f = waves.beat(i, j, u, v);
                            if (f < lpi / 2 && (i != 0 || j != 0)) {
                                double contrast = 2 * meshPart * worstDots.computeIfAbsent(i * i + j * j, MeshBeats::worstDot);
                                for (Eye eye : EYES) {
                                    worst = Math.max(worst, eye.seen(contrast, f / Units.MM_PER_INCH));
                                }
                            }
                        }
                    }
                }
            }
        }
        return worst;
    }

    /**
     * Rulings and angles with the least beat, best first: rulings that divide the device grid, four to seven threads a cell and, where the mesh
     * allows it, 32 to 60 lines an inch, at angles of 0 to 45 degrees; of one ruling only angles more than 15 degrees apart.
     *
     * @param count most pairs wanted
     */
    public List<ScoredRuling> better(double dpi, int count) {
        double most = Math.min(USUAL_MOST_LPI, mesh.threadsPerInch() / LEAST_THREADS_A_CELL);
        double least = mesh.threadsPerInch() / MOST_THREADS_A_CELL; // coarser ones beat in orders that are not looked at
        if (most > USUAL_LEAST_LPI) {
            least = Math.max(least, USUAL_LEAST_LPI);
        }
        return better(dpi, least, most, count);
    }

    /** As {@link #better(double, int)}, among rulings from {@code leastLpi} to {@code mostLpi}. */
    public List<ScoredRuling> better(double dpi, double leastLpi, double mostLpi, int count) {
        List<ScoredRuling> all = new ArrayList<>(map(dpi, leastLpi, mostLpi));
        all.sort(Comparator.comparingDouble(ScoredRuling::score).thenComparing(ScoredRuling::lpi).thenComparing(ScoredRuling::angleDeg));
        List<ScoredRuling> chosen = new ArrayList<>();
        for (ScoredRuling ruling : all) {
            if (chosen.size() < count && chosen.stream()
                    .noneMatch(c -> c.lpi() == ruling.lpi() && Math.abs(c.angleDeg() - ruling.angleDeg()) <= NEAR_DEG)) {
                chosen.add(ruling);
            }
        }
        return chosen;
    }

    /** Every ruling from {@code leastLpi} to {@code mostLpi} that divides the device grid, finest first, at angles of 0 to 45 degrees in steps of 2.5. */
    public List<ScoredRuling> map(double dpi, double leastLpi, double mostLpi) {
        List<ScoredRuling> all = new ArrayList<>();
        Map<Integer, Double> worstDots = new HashMap<>();
        for (int px = (int) Math.ceil(dpi / mostLpi - SAME); px <= dpi / leastLpi + SAME; px++) {
            for (double angle = 0; angle <= 45; angle += ANGLE_STEP_DEG) {
                all.add(new ScoredRuling(dpi / px, angle, score(dpi / px, angle, worstDots)));
            }
        }
        return all;
    }

    private static double worstDot(int squaredOrder) {
        double worst = 0;
        for (int tenth = 1; tenth <= TENTHS; tenth++) {
            worst = Math.max(worst, dot(tenth / 10.0, Math.sqrt(squaredOrder)));
        }
        return worst;
    }

    private static double dot(double tone, int i, int j) {
        return dot(tone, Math.hypot(i, j));
    }

    /** |c_dot| / a. */
    private static double dot(double tone, double order) {
        double z = 2 * Math.PI * Math.sqrt(tone / Math.PI) * order;
        return z == 0 ? 1 : Math.abs(2 * Bessel.j1(z) / z);
    }

    /** |c_mesh| / A. */
    private static double mesh(double openShare, int u, int v) {
        return Math.abs(sinc(u * openShare) * sinc(v * openShare));
    }

    private static double sinc(double x) {
        return x == 0 ? 1 : StrictMath.sin(Math.PI * x) / (Math.PI * x);
    }

    /** The frequency vectors of a ruling and a mesh, in cycles an inch. */
    private record Waves(double sx, double sy, double gx, double gy) {
        static Waves of(double lpi, double angleDeg, double count, double meshAngleDeg) {
            double ruling = StrictMath.toRadians(angleDeg);
            double threads = StrictMath.toRadians(meshAngleDeg);
            return new Waves(lpi * StrictMath.cos(ruling), lpi * StrictMath.sin(ruling), count * StrictMath.cos(threads),
                    count * StrictMath.sin(threads));
        }

        double beat(int i, int j, int u, int v) {
            double x = i * sx - j * sy - (u * gx - v * gy);
            double y = i * sy + j * sx - (u * gy + v * gx);
            return Math.sqrt(x * x + y * y);
        }
    }
}
