/**
 * A field between two lines: u runs along them, v from the first to the second. Feathers, scales and ripples are laid out in u and v and
 * so follow the form.
 */
record Patch(Curve first, Curve second) {
    /** Points x, y for pairs u, v. */
    double[] points(double... uv) {
        int n = uv.length / 2;
        double[] u = new double[n];
        for (int i = 0; i < n; i++) {
            u[i] = uv[2 * i];
        }
        double[][] a = first.along(u);
        double[][] b = second.along(u);
        double[] out = new double[2 * n];
        for (int i = 0; i < n; i++) {
            double v = uv[2 * i + 1];
            out[2 * i] = a[i][0] + (b[i][0] - a[i][0]) * v;
            out[2 * i + 1] = a[i][1] + (b[i][1] - a[i][1]) * v;
        }
        return out;
    }

    Curve line(double... uv) {
        return Curve.through(points(uv));
    }

    /** Straight across the field in v terms: from (u1, v1) to (u2, v2), bent by the field only. */
    Curve run(double u1, double v1, double u2, double v2) {
        double[] uv = new double[12];
        for (int i = 0; i < 6; i++) {
            double t = i / 5.0;
            uv[2 * i] = u1 + (u2 - u1) * t;
            uv[2 * i + 1] = v1 + (v2 - v1) * t;
        }
        return line(uv);
    }

    /** The whole field as a closed outline. */
    java.awt.geom.Path2D outline() {
        java.awt.geom.Path2D path = first.path();
        path.append(second.reversed().path(), true);
        path.closePath();
        return path;
    }
}
