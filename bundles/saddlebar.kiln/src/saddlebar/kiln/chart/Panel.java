package saddlebar.kiln.chart;

import java.util.Locale;

import saddlebar.kiln.schedule.HeatCurve;

/** One diagram of a chart: axes with units, grid, curves. Writes SVG; x in hours from the left. */
final class Panel {
    static final int LEFT = 90;
    static final int WIDTH = 820;
    private static final int MOST_POINTS = 900;

    private final StringBuilder svg;
    private final int top;
    private final int height;
    private final double hours;
    private final double least;
    private final double most;

    Panel(StringBuilder svg, int top, int height, double hours, double least, double most) {
        this.svg = svg;
        this.top = top;
        this.height = height;
        this.hours = hours;
        double step = step((most - least) / 5);
        this.least = Math.floor(least / step + 1e-9) * step;
        this.most = Math.max(this.least + step, Math.ceil(most / step - 1e-9) * step);
    }

    /** 1, 2 or 5 times a power of ten, at least so large. */
    static double step(double atLeast) {
        double power = Math.pow(10, Math.floor(Math.log10(Math.max(1e-9, atLeast))));
        for (double one : new double[] {1, 2, 5}) {
            if (one * power >= atLeast - 1e-12) {
                return one * power;
            }
        }
        return 10 * power;
    }

    double x(double atHours) {
        return LEFT + WIDTH * atHours / hours;
    }

    double y(double value) {
        return top + height * (most - value) / (most - least);
    }

    void axes(String title, String label, boolean timeLabels) {
        svg.append(String.format(Locale.ROOT, "<rect x=\"%d\" y=\"%d\" width=\"%d\" height=\"%d\" fill=\"#ffffff\" stroke=\"#555555\"/>\n", LEFT, top,
                WIDTH, height));
        double step = step((most - least) / 6);
        for (double v = least; v <= most + step * 1e-6; v += step) {
            svg.append(String.format(Locale.ROOT, "<line x1=\"%d\" x2=\"%d\" y1=\"%.1f\" y2=\"%.1f\" stroke=\"#dddddd\"/>\n", LEFT, LEFT + WIDTH,
                    y(v), y(v)));
            text(LEFT - 8, y(v) + 5, "end", number(v, step));
        }
        double hour = step(hours / 12);
        for (double h = 0; h <= hours + 1e-9; h += hour) {
            svg.append(String.format(Locale.ROOT, "<line x1=\"%.1f\" x2=\"%.1f\" y1=\"%d\" y2=\"%d\" stroke=\"#dddddd\"/>\n", x(h), x(h), top,
                    top + height));
            if (timeLabels) {
                text(x(h), top + height + 20, "middle", number(h, hour));
            }
        }
        if (timeLabels) {
            text(LEFT + WIDTH / 2.0, top + height + 42, "middle", "time in h");
        }
        svg.append(String.format(Locale.ROOT, "<text transform=\"translate(24 %.1f) rotate(-90)\" text-anchor=\"middle\">%s</text>\n",
                top + height / 2.0, FiringChart.escaped(label)));
        svg.append(String.format(Locale.ROOT, "<text x=\"%d\" y=\"%d\" font-weight=\"bold\">%s</text>\n", LEFT, top - 9, FiringChart.escaped(title)));
    }

    private void text(double x, double y, String anchor, String words) {
        svg.append(String.format(Locale.ROOT, "<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"%s\">%s</text>\n", x, y, anchor, words));
    }

    private static String number(double value, double step) {
        int decimals = (int) Math.max(0, -Math.floor(Math.log10(step) + 1e-9));
        String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
        return text.matches("-0(\\.0*)?") ? text.substring(1) : text;
    }

    /** A level that matters, with its name at the left end. */
    void level(double value, String name) {
        if (value > least && value < most) {
            svg.append(String.format(Locale.ROOT, "<line x1=\"%d\" x2=\"%d\" y1=\"%.1f\" y2=\"%.1f\" stroke=\"#777777\" stroke-dasharray=\"2 4\"/>\n",
                    LEFT, LEFT + WIDTH, y(value), y(value)));
            text(LEFT + 6, y(value) - 5, "start", FiringChart.escaped(name));
        }
    }

    /** @param factor on the curve's values */
    void curve(HeatCurve curve, double factor, Line line) {
        StringBuilder path = new StringBuilder();
        int n = curve.points();
        boolean all = n <= MOST_POINTS;
        int drawn = all ? n : MOST_POINTS;
        for (int i = 0; i < drawn; i++) {
            double seconds = all ? curve.timeS(i) : curve.startS() + (curve.endS() - curve.startS()) * i / (drawn - 1);
            double value = all ? curve.temperatureC(i) : curve.at(seconds);
            double clipped = Math.max(least, Math.min(most, factor * value));
            path.append(String.format(Locale.ROOT, "%s%.1f %.1f", i == 0 ? "M" : "L", x(Math.max(0, Math.min(hours, seconds / 3600))), y(clipped)));
        }
        svg.append("<path d=\"").append(path).append("\" fill=\"none\" ").append(line.style()).append("/>\n");
    }
}
