package saddlebar.kiln.chart;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import saddlebar.kiln.fire.Firing;
import saddlebar.kiln.fire.Trace;
import saddlebar.kiln.glass.Vft;
import saddlebar.kiln.schedule.HeatCurve;
import saddlebar.model.file.PendingFile;
import saddlebar.model.problem.LockedException;
import saddlebar.model.units.Units;

/**
 * A firing as a drawing: temperatures (schedule, kiln, core of the glass, log), the difference through the glass, and stress on the face and in the
 * core. The same firing gives the same drawing, and the same bytes of a file.
 */
public final class FiringChart {
    private static final double PAGE_WIDTH_PT = 940;
    private static final double PAGE_HEIGHT_PT = 830;
    private static final double LEFT_PT = 90;
    private static final double RIGHT_PT = 30;
    private static final double LEGEND_ROW_PT = 20;
    private static final double KEY_PT = 41;
    private static final double LETTER_PT = 7.3;
    /** Room that is no diagram: heading, titles, time. */
    private static final double[] BETWEEN_PT = {75, 40, 50, 65};
    private static final double[] SHARES = {0.62, 0.15, 0.23};
    private static final double LEAST_PLOT_PT = 24;

    private final Firing firing;
    private final Optional<HeatCurve> log;
    private final ChartWords words;
    private final double width;
    private final double height;
    private final double hours;
    private final List<Mark> marks = new ArrayList<>();
    private final List<ChartDrawing.Plot> plots = new ArrayList<>();

    private FiringChart(Firing firing, Optional<HeatCurve> log, ChartWords words, double widthPt, double heightPt) {
        this.firing = firing;
        this.log = log;
        this.words = words;
        this.width = widthPt;
        this.height = heightPt;
        this.hours = Math.max(firing.hours(), log.map(HeatCurve::hours).orElse(0.0));
    }

    /** As large as it is asked for; a chart lower than 300 pt has no room for its words. */
    public static ChartDrawing drawing(Firing firing, Optional<HeatCurve> log, ChartWords words, double widthPt, double heightPt) {
        return new FiringChart(firing, log, words, widthPt, heightPt).draw();
    }

    /** On a page of its own, in English. */
    public static ChartDrawing drawing(Firing firing, Optional<HeatCurve> log) {
        return drawing(firing, log, ChartWords.ENGLISH, PAGE_WIDTH_PT, PAGE_HEIGHT_PT);
    }

    /**
     * Writes a drawing of vectors (SVG), or a picture where the file's name ends in {@code .png}.
     *
     * @throws LockedException if the file is there and {@code replace} is false
     */
    public static void write(Firing firing, Optional<HeatCurve> log, Path file, boolean replace) throws IOException {
        if (Files.exists(file) && !replace) {
            throw new LockedException(file + " exists already; nothing was written. Give --replace to replace it, or another name.");
        }
        boolean picture = file.getFileName().toString().toLowerCase(Locale.ROOT).endsWith(".png");
        ChartDrawing drawing = drawing(firing, log);
        try (PendingFile pending = PendingFile.beside(file)) {
            pending.out().write(picture ? ChartPng.bytes(drawing, 2) : ChartSvg.text(drawing).getBytes(StandardCharsets.UTF_8));
            pending.commit();
        }
    }

    public static String svg(Firing firing, Optional<HeatCurve> log) {
        return ChartSvg.text(drawing(firing, log));
    }

    private ChartDrawing draw() {
        marks.add(new Mark.Box(0, 0, width, height, Ink.PAPER, Ink.PAPER));
        marks.add(new Mark.Words(LEFT_PT, 28, String.format(Locale.ROOT, "%s: %s, %s mm of %s", firing.schedule().name(), firing.kiln().name(),
                Units.plain(firing.load().thicknessMm()), firing.load().glass().name()), Mark.Anchor.START, 18, false, false));
        List<Ink> lines = log.isPresent() ? List.of(Ink.SCHEDULED, Ink.KILN, Ink.CORE, Ink.MEASURED) : List.of(Ink.SCHEDULED, Ink.KILN, Ink.CORE);
        List<String> names = List.of(words.scheduled(), words.kiln(), words.core(), words.measured()).subList(0, lines.size());
        int rows = rows(words.temperature(), names);
        double free = height - BETWEEN_PT[0] - BETWEEN_PT[1] - BETWEEN_PT[2] - BETWEEN_PT[3] - LEGEND_ROW_PT * (rows - 1);
        double[] heights = new double[SHARES.length];
        for (int i = 0; i < SHARES.length; i++) {
            heights[i] = Math.max(LEAST_PLOT_PT, free * SHARES[i]);
        }
        double top = BETWEEN_PT[0] + LEGEND_ROW_PT * (rows - 1);
        temperatures(top, heights[0]);
        legend(top, rows, lines, names);
        top += heights[0] + BETWEEN_PT[1];
        HeatCurve lag = firing.trace().curve(Trace.Quantity.LAG_K);
        Panel lags = panel(top, heights[1], 0, Math.max(1, lag.peakC()));
        lags.axes(words.lag(), "K", "");
        lags.curve(lag, Ink.LAG);
        top += heights[1] + BETWEEN_PT[2];
        stresses(top, heights[2]);
        return new ChartDrawing(width, height, marks, plots);
    }

    private Panel panel(double top, double high, double least, double most) {
        Panel panel = new Panel(marks, LEFT_PT, top, Math.max(LEAST_PLOT_PT, width - LEFT_PT - RIGHT_PT), high, hours, least, most);
        plots.add(panel.plot());
        return panel;
    }

    private void temperatures(double top, double high) {
        double most = Math.max(firing.peakC(), Math.max(firing.schedule().peakC(), log.map(HeatCurve::peakC).orElse(0.0)));
        Panel panel = panel(top, high, 0, most + 20);
        panel.axes(words.temperature(), "\u00b0C", "");
        Vft viscosity = firing.load().glass().viscosity();
        panel.level(viscosity.annealingC(), words.annealingPoint());
        panel.curve(firing.schedule().asWritten(), Ink.SCHEDULED);
        panel.curve(firing.kilnCurve(), Ink.KILN);
        panel.curve(firing.coreCurve(), Ink.CORE);
        log.ifPresent(curve -> panel.curve(curve, Ink.MEASURED));
    }

    private void stresses(double top, double high) {
        HeatCurve face = firing.trace().curve(Trace.Quantity.SURFACE_MPA);
        HeatCurve centre = firing.trace().curve(Trace.Quantity.CENTRE_MPA);
        double most = Math.max(face.peakC(), centre.peakC());
        double least = 0;
        for (int i = 0; i < face.points(); i++) {
            least = Math.min(least, Math.min(face.temperatureC(i), centre.temperatureC(i)));
        }
        Panel panel = panel(top, high, Math.min(least, -0.01), Math.max(most, 0.01));
        panel.axes(words.stress(), "MPa", words.hours());
        panel.curve(face, Ink.SURFACE);
        panel.curve(centre, Ink.CENTRE);
        List<String> names = List.of(words.face(), words.centre());
        legend(top, rows(words.stress(), names), List.of(Ink.SURFACE, Ink.CENTRE), names);
    }

    private static double entryPt(String name) {
        return KEY_PT + LETTER_PT * name.length() + 14;
    }

    /** Rows that a legend takes: in the row of its title where there is room beside it. */
    private int rows(String title, List<String> names) {
        double all = names.stream().mapToDouble(FiringChart::entryPt).sum();
        double room = width - LEFT_PT - RIGHT_PT;
        if (all + (LETTER_PT + 1) * title.length() + 14 <= room) {
            return 1;
        }
        return 1 + (int) Math.max(1, Math.ceil(all / Math.max(1, room)));
    }

    /** Beside the title from the right; where that has no room, in rows of their own above it. */
    private void legend(double top, int rows, List<Ink> lines, List<String> names) {
        double room = width - LEFT_PT - RIGHT_PT;
        double x = rows == 1 ? width - RIGHT_PT - names.stream().mapToDouble(FiringChart::entryPt).sum() : LEFT_PT;
        double y = top - 9 - LEGEND_ROW_PT * (rows - 1);
        for (int i = 0; i < lines.size(); i++) {
            if (rows > 1 && x > LEFT_PT && x + entryPt(names.get(i)) > LEFT_PT + room) {
                x = LEFT_PT;
                y += LEGEND_ROW_PT;
            }
            marks.add(new Mark.Rule(x, y - 5, x + KEY_PT - 7, y - 5, lines.get(i)));
            marks.add(new Mark.Words(x + KEY_PT, y, names.get(i), Mark.Anchor.START, Panel.FONT_PT, false, false));
            x += entryPt(names.get(i));
        }
    }
}
