package saddlebar.kiln.chart;

/**
 * What a mark of a chart stands for, and how it is drawn: lines differ by colour and by dash, so that they can be told apart without colour. Colours of
 * curves: Okabe and Ito (2008), for all kinds of sight. On a dark screen {@link #PAPER} and {@link #TEXT} change places; see {@link #plain}.
 */
public enum Ink {
    PAPER(0xffffff, 1), TEXT(0x111111, 1), FRAME(0x555555, 1), GRID(0xdddddd, 1), LEVEL(0x777777, 1, 2, 4),
    SCHEDULED(0x000000, 1.6, 6, 4), KILN(0xE69F00, 2.2), CORE(0x0072B2, 2, 9, 3, 2, 3), MEASURED(0xD55E00, 2, 3, 2), SURFACE(0x009E73, 2),
    CENTRE(0xCC79A7, 2, 7, 3), LAG(0x0072B2, 2);

    private final int rgb;
    private final double widthPt;
    private final float[] dash;

    Ink(int rgb, double widthPt, float... dash) {
        this.rgb = rgb;
        this.widthPt = widthPt;
        this.dash = dash;
    }

    /** As 0xrrggbb, on white paper. */
    public int rgb() {
        return rgb;
    }

    public double widthPt() {
        return widthPt;
    }

    /** Lengths of strokes and gaps in pt; empty for an unbroken line. */
    public float[] dash() {
        return dash.clone();
    }

    /** Neither paper nor a colour of its own: takes the colour of writing where the ground is dark. */
    public boolean plain() {
        return this == TEXT || this == SCHEDULED;
    }
}
