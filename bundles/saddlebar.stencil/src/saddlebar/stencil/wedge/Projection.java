package saddlebar.stencil.wedge;

import java.util.ArrayList;
import java.util.List;

/** From mm of a flat wedge to px of its photograph: x = (a X + b Y + c)/(g X + h Y + 1), y = (d X + e Y + f)/(g X + h Y + 1). */
final class Projection {
    private final double[] p;

    private Projection(double[] p) {
        this.p = p;
    }

    /** Takes the wedge's corners, top left and on to the right and down, to these px. */
    static Projection of(double[][] px, double widthMm, double heightMm) {
        double[][] mm = {{0, 0}, {widthMm, 0}, {widthMm, heightMm}, {0, heightMm}};
        double[][] a = new double[8][];
        for (int i = 0; i < 4; i++) {
            double x = mm[i][0];
            double y = mm[i][1];
            a[2 * i] = new double[] {x, y, 1, 0, 0, 0, -x * px[i][0], -y * px[i][0], px[i][0]};
            a[2 * i + 1] = new double[] {0, 0, 0, x, y, 1, -x * px[i][1], -y * px[i][1], px[i][1]};
        }
        return new Projection(LeastSquares.eliminated(a));
    }

    /** All eight ways in which the wedge may lie: four turns, seen from either side; those whose long side would be short are left out. */
    static List<Projection> waysRound(double[][] corners, double widthMm, double heightMm) {
        List<Projection> ways = new ArrayList<>();
        for (int mirror = 0; mirror < 2; mirror++) {
            for (int turn = 0; turn < 4; turn++) {
                double[][] order = new double[4][];
                for (int i = 0; i < 4; i++) {
                    order[i] = corners[mirror == 0 ? (turn + i) % 4 : (turn + 4 - i) % 4];
                }
                boolean long1 = distance(order[0], order[1]) >= distance(order[1], order[2]);
                if (long1 == widthMm >= heightMm) {
                    ways.add(of(order, widthMm, heightMm));
                }
            }
        }
        return ways;
    }

    double[] px(double xMm, double yMm) {
        double below = p[6] * xMm + p[7] * yMm + 1;
        return new double[] {(p[0] * xMm + p[1] * yMm + p[2]) / below, (p[3] * xMm + p[4] * yMm + p[5]) / below};
    }

    double lengthPx(double x1Mm, double y1Mm, double x2Mm, double y2Mm) {
        return distance(px(x1Mm, y1Mm), px(x2Mm, y2Mm));
    }

    private static double distance(double[] a, double[] b) {
        return Math.hypot(a[0] - b[0], a[1] - b[1]);
    }
}
