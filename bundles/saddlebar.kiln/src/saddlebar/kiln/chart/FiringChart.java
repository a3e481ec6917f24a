package saddlebar.kiln.chart;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import saddlebar.kiln.fire.Firing;
import saddlebar.kiln.fire.Trace;
import saddlebar.kiln.glass.Vft;
import saddlebar.kiln.schedule.HeatCurve;
import saddlebar.model.file.PendingFile;
import saddlebar.model.problem.LockedException;

/**
 * A firing as a drawing in SVG: temperatures (schedule, kiln, core of the glass, log), the difference through the glass, and stress on the face and
 * in the core. The
 * same firing gives the same bytes.
 */
public final class FiringChart {
    private static final int PAGE_WIDTH = 940;
    private static final int PAGE_HEIGHT = 830;
    private static final int ENTRY = 178;

    private FiringChart() {
    }

    /** @throws LockedException if the file is there and {@code replace} is false */
    public static void write(Firing firing, Optional<HeatCurve> log, Path file, boolean replace) throws IOException {
        if (Files.exists(file) && !replace) {
            throw new LockedException(file + " exists already; nothing was written. Give --replace to replace it, or another name.");
        }
        try (PendingFile pending = PendingFile.beside(file)) {
            pending.out().write(svg(firing, log).getBytes(StandardCharsets.UTF_8));
            pending.commit();
        }
    }

    public static String svg(Firing firing, Optional<HeatCurve> log) {
        double hours = Math.max(firing.hours(), log.map(HeatCurve::hours).orElse(0.0));
        StringBuilder svg = new StringBuilder(200_000);
        svg.append(String.format(Locale.ROOT,
                "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%d\" height=\"%d\" viewBox=\"0 0 %d %d\" font-family=\"sans-serif\" "
                        + "font-size=\"14\" fill=\"#111111\">\n",
                PAGE_WIDTH, PAGE_HEIGHT, PAGE_WIDTH, PAGE_HEIGHT));
        svg.append("<rect width=\"100%\" height=\"100%\" fill=\"#ffffff\"/>\n");
        svg.append(String.format(Locale.ROOT, "<text x=\"%d\" y=\"28\" font-size=\"18\">%s</text>\n", Panel.LEFT, escaped(String.format(Locale.ROOT,
                "%s: %s, %s mm of %s", firing.schedule().name(), firing.kiln().name(), saddlebar.model.units.Units.plain(firing.load().thicknessMm()),
                firing.load().glass().name()))));
        temperatures(svg, firing, log, hours);
        HeatCurve lag = firing.trace().curve(Trace.Quantity.LAG_K);
        Panel lags = new Panel(svg, 485, 90, hours, 0, Math.max(1, lag.peakC()));
        lags.axes("Difference through the glass", "K", false);
        lags.curve(lag, 1, Line.LAG);
        stresses(svg, firing, hours);
        return svg.append("</svg>\n").toString();
    }

    private static void temperatures(StringBuilder svg, Firing firing, Optional<HeatCurve> log, double hours) {
        double most = Math.max(firing.peakC(), Math.max(firing.schedule().peakC(), log.map(HeatCurve::peakC).orElse(0.0)));
        Panel panel = new Panel(svg, 75, 370, hours, 0, most + 20);
        panel.axes("Temperature", "\u00b0C", false);
        Vft viscosity = firing.load().glass().viscosity();
        panel.level(viscosity.annealingC(), "annealing point");
        panel.curve(firing.schedule().asWritten(), 1, Line.SCHEDULED);
        panel.curve(firing.kilnCurve(), 1, Line.KILN);
        panel.curve(firing.coreCurve(), 1, Line.CORE);
        log.ifPresent(curve -> panel.curve(curve, 1, Line.MEASURED));
        legend(svg, 66,
                log.isPresent() ? List.of(Line.SCHEDULED, Line.KILN, Line.CORE, Line.MEASURED) : List.of(Line.SCHEDULED, Line.KILN, Line.CORE),
                List.of("schedule as written", "kiln, simulated", "core of the glass", "kiln, measured"));
    }

    private static void stresses(StringBuilder svg, Firing firing, double hours) {
        HeatCurve face = firing.trace().curve(Trace.Quantity.SURFACE_MPA);
        HeatCurve centre = firing.trace().curve(Trace.Quantity.CENTRE_MPA);
        double most = Math.max(face.peakC(), centre.peakC());
        double least = 0;
        for (int i = 0; i < face.points(); i++) {
            least = Math.min(least, Math.min(face.temperatureC(i), centre.temperatureC(i)));
        }
        Panel panel = new Panel(svg, 625, 140, hours, Math.min(least, -0.01), Math.max(most, 0.01));
        panel.axes("Stress in the glass, tension upwards", "MPa", true);
        panel.curve(face, 1, Line.SURFACE);
        panel.curve(centre, 1, Line.CENTRE);
        legend(svg, 616, List.of(Line.SURFACE, Line.CENTRE), List.of("upper face", "core"));
    }

    /** In the row of the panel's title, from the right. */
    private static void legend(StringBuilder svg, int row, List<Line> lines, List<String> names) {
        int x = Panel.LEFT + Panel.WIDTH - ENTRY * lines.size();
        for (int i = 0; i < lines.size(); i++) {
            int left = x + ENTRY * i;
            svg.append(String.format(Locale.ROOT, "<line x1=\"%d\" x2=\"%d\" y1=\"%d\" y2=\"%d\" %s/>\n", left, left + 34, row - 5, row - 5,
                    lines.get(i).style()));
            svg.append(String.format(Locale.ROOT, "<text x=\"%d\" y=\"%d\">%s</text>\n", left + 41, row, names.get(i)));
        }
    }

    static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replace("\"", "&quot;").replaceAll("[\\x00-\\x08\\x0B-\\x1F]",
                " ");
    }
}
