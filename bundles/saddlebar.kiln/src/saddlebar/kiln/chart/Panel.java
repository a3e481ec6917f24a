package saddlebar.kiln.chart;

import java.util.List;
import java.util.Locale;

import saddlebar.kiln.chart.ChartDrawing.Plot;
import saddlebar.kiln.schedule.HeatCurve;

/** One diagram of a chart: axes with units, grid, curves; x in hours from the left. */
final class Panel {
    static final double FONT_PT = 14;
    private static final int MOST_POINTS = 900;
    private static final double HOUR_LABEL_PT = 62;
    private static final double VALUE_LABEL_PT = 40;

    private final List<Mark> marks;
    private final Plot plot;

    Panel(List<Mark> marks, double left, double top, double width, double height, double hours, double least, double most) {
        this.marks = marks;
        double step = step((most - least) / 5);
        double foot = Math.floor(least / step + 1e-9) * step;
        this.plot = new Plot(left, top, width, height, hours, foot, Math.max(foot + step, Math.ceil(most / step - 1e-9) * step));
    }

    Plot plot() {
        return plot;
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

    void axes(String title, String label, String timeLabel) {
        double right = plot.left() + plot.width();
        double foot = plot.top() + plot.height();
        marks.add(new Mark.Box(plot.left(), plot.top(), plot.width(), plot.height(), Ink.PAPER, Ink.GRID));
        double lines = Math.max(1, Math.min(6, Math.floor(plot.height() / VALUE_LABEL_PT)));
        double step = step((plot.most() - plot.least()) / lines);
        for (double v = Math.ceil(plot.least() / step - 1e-9) * step; v <= plot.most() + step * 1e-6; v += step) {
            marks.add(new Mark.Rule(plot.left(), plot.y(v), right, plot.y(v), Ink.GRID));
            text(plot.left() - 8, plot.y(v) + 5, Mark.Anchor.END, number(v, step));
        }
        double hour = step(plot.hours() / Math.max(1, Math.min(12, Math.floor(plot.width() / HOUR_LABEL_PT))));
        for (double h = 0; h <= plot.hours() + 1e-9; h += hour) {
            marks.add(new Mark.Rule(plot.x(h), plot.top(), plot.x(h), foot, Ink.GRID));
            if (!timeLabel.isEmpty()) {
                text(plot.x(h), foot + 20, Mark.Anchor.MIDDLE, number(h, hour));
            }
        }
        marks.add(new Mark.Rule(plot.left(), plot.top(), plot.left(), foot, Ink.FRAME));
        marks.add(new Mark.Rule(plot.left(), foot, right, foot, Ink.FRAME));
        if (!timeLabel.isEmpty()) {
            text(plot.left() + plot.width() / 2, foot + 42, Mark.Anchor.MIDDLE, timeLabel);
        }
        marks.add(new Mark.Words(24, plot.top() + plot.height() / 2, label, Mark.Anchor.MIDDLE, FONT_PT, false, true));
        marks.add(new Mark.Words(plot.left(), plot.top() - 9, title, Mark.Anchor.START, FONT_PT, true, false));
    }

    private void text(double x, double y, Mark.Anchor anchor, String words) {
        marks.add(new Mark.Words(x, y, words, anchor, FONT_PT, false, false));
    }

    private static String number(double value, double step) {
        int decimals = (int) Math.max(0, -Math.floor(Math.log10(step) + 1e-9));
        String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
        return text.matches("-0(\\.0*)?") ? text.substring(1) : text;
    }

    /** A level that matters, with its name at the left end. */
    void level(double value, String name) {
        if (value > plot.least() && value < plot.most()) {
            marks.add(new Mark.Rule(plot.left(), plot.y(value), plot.left() + plot.width(), plot.y(value), Ink.LEVEL));
            text(plot.left() + 6, plot.y(value) - 5, Mark.Anchor.START, name);
        }
    }

    void curve(HeatCurve curve, Ink ink) {
        int n = curve.points();
        boolean all = n <= MOST_POINTS;
        int drawn = all ? n : MOST_POINTS;
        double[] xy = new double[2 * drawn];
        for (int i = 0; i < drawn; i++) {
            double seconds = all ? curve.timeS(i) : curve.startS() + (curve.endS() - curve.startS()) * i / (drawn - 1);
            double value = all ? curve.temperatureC(i) : curve.at(seconds);
            xy[2 * i] = plot.x(Math.max(0, Math.min(plot.hours(), seconds / 3600)));
            xy[2 * i + 1] = plot.y(Math.max(plot.least(), Math.min(plot.most(), value)));
        }
        marks.add(new Mark.Curve(xy, ink));
    }
}
