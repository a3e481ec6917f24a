package saddlebar.colour;

/** Three by three numbers, by rows. */
final class Matrix3 {
    private final double[] m;

    Matrix3(double... rows) {
        if (rows.length != 9) {
            throw new IllegalArgumentException("9 numbers make a matrix, not " + rows.length);
        }
        m = rows.clone();
    }

    double[] times(double a, double b, double c) {
        return new double[] {m[0] * a + m[1] * b + m[2] * c, m[3] * a + m[4] * b + m[5] * c, m[6] * a + m[7] * b + m[8] * c};
    }

    Matrix3 inverse() {
        double c0 = m[4] * m[8] - m[5] * m[7];
        double c1 = m[5] * m[6] - m[3] * m[8];
        double c2 = m[3] * m[7] - m[4] * m[6];
        double d = m[0] * c0 + m[1] * c1 + m[2] * c2;
        return new Matrix3(c0 / d, (m[2] * m[7] - m[1] * m[8]) / d, (m[1] * m[5] - m[2] * m[4]) / d, c1 / d, (m[0] * m[8] - m[2] * m[6]) / d,
                (m[2] * m[3] - m[0] * m[5]) / d, c2 / d, (m[1] * m[6] - m[0] * m[7]) / d, (m[0] * m[4] - m[1] * m[3]) / d);
    }
}
