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
import saddlebar.kiln.schedule.HeatCurve;
import saddlebar.model.file.PendingFile;
import saddlebar.model.problem.LockedException;
import saddlebar.model.units.Require;

/** A firing's chart in numbers, at even times: for who does not see it, and for a table of one's own. */
public final class FiringTable {
    private FiringTable() {
    }

    /**
     * One time.
     *
     * @param scheduledC as written; segments as fast as the kiln goes take no time there
     * @param measuredC  of the log, while it runs
     */
    public record Row(double hours, double scheduledC, double kilnC, double coreC, Optional<Double> measuredC, double lagK, double faceMpa, double centreMpa) {
    }

    /** @param everyMin step in minutes, 0.1 to 600 */
    public static List<Row> rows(Firing firing, Optional<HeatCurve> log, double everyMin) {
        Require.within("everyMin", everyMin, 0.1, 600);
        HeatCurve written = firing.schedule().asWritten();
        HeatCurve kiln = firing.kilnCurve();
        HeatCurve core = firing.coreCurve();
        HeatCurve lag = firing.trace().curve(Trace.Quantity.LAG_K);
        HeatCurve face = firing.trace().curve(Trace.Quantity.SURFACE_MPA);
        HeatCurve centre = firing.trace().curve(Trace.Quantity.CENTRE_MPA);
        double end = Math.max(firing.hours(), log.map(HeatCurve::hours).orElse(0.0)) * 3600;
        List<Row> rows = new ArrayList<>();
        int most = (int) Math.ceil(end / (everyMin * 60) - 1e-9);
        for (int i = 0; i <= most; i++) {
            double s = Math.min(end, i * everyMin * 60);
            Optional<Double> measured = log.filter(curve -> s <= curve.endS() - curve.startS()).map(curve -> curve.at(curve.startS() + s));
            rows.add(new Row(s / 3600, written.at(s), kiln.at(s), core.at(s), measured, lag.at(s), face.at(s), centre.at(s)));
        }
        return rows;
    }

    /** @throws LockedException if the file is there and {@code replace} is false */
    public static void write(List<Row> rows, Path file, boolean replace) throws IOException {
        if (Files.exists(file) && !replace) {
            throw new LockedException(file + " exists already; nothing was written. Give --replace to replace it, or another name.");
        }
        try (PendingFile pending = PendingFile.beside(file)) {
            pending.out().write(csv(rows).getBytes(StandardCharsets.UTF_8));
            pending.commit();
        }
    }

    /** As CSV with a line of headings. */
    public static String csv(List<Row> rows) {
        StringBuilder csv = new StringBuilder("hours,scheduled_c,kiln_c,core_c,measured_c,lag_k,face_mpa,core_mpa\n");
        for (Row row : rows) {
            csv.append(String.format(Locale.ROOT, "%.3f,%.1f,%.1f,%.1f,%s,%.2f,%.3f,%.3f\n", row.hours(), row.scheduledC(), row.kilnC(),
                    row.coreC(), row.measuredC().map(c -> String.format(Locale.ROOT, "%.1f", c)).orElse(""), row.lagK(), row.faceMpa(), row.centreMpa()));
        }
        return csv.toString();
    }
}
