package saddlebar.kiln.schedule;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import saddlebar.kiln.read.Cells;
import saddlebar.kiln.read.CsvRows;
import saddlebar.model.file.PendingFile;
import saddlebar.model.problem.LockedException;
import saddlebar.model.problem.Refusal;
import saddlebar.model.units.Units;

/**
 * Schedules as CSV with the columns {@code segment,rate_k_per_h,target_c,soak_min} in any order; other columns are left out, {@code segment} and
 * {@code soak_min} may be absent. {@code rate_f_per_h} and {@code target_f} are taken in place of the metric columns. A rate that is empty or 0 is
 * as fast as the kiln goes; an empty soak is none.
 */
public final class ScheduleFile {
    private static final String COLUMNS = "write the columns segment,rate_k_per_h,target_c,soak_min";

    private final CsvRows table;
    private final List<String> headings;

    private ScheduleFile(CsvRows table) {
        this.table = table;
        this.headings = table.rows().get(0).cells().stream().map(cell -> cell.toLowerCase(Locale.ROOT)).toList();
    }

    /** @throws Refusal with file and line */
    public static Schedule read(Path file) throws IOException {
        return new ScheduleFile(CsvRows.of(file)).schedule();
    }

    /** @throws Refusal with the name and the line */
    public static Schedule read(String text, String name) {
        return new ScheduleFile(CsvRows.of(text, name)).schedule();
    }

    private Schedule schedule() {
        boolean metricRate = headings.contains("rate_k_per_h");
        boolean metricTarget = headings.contains("target_c");
        need(metricRate || headings.contains("rate_f_per_h"), "rate_k_per_h");
        need(metricTarget || headings.contains("target_f"), "target_c");
        List<Segment> segments = new ArrayList<>();
        for (CsvRows.Row row : table.rows().subList(1, table.rows().size())) {
            if (segments.size() == Schedule.MOST_SEGMENTS) {
                throw new Refusal(table.where(row), "there are more than " + Schedule.MOST_SEGMENTS + " segments",
                        "cut the schedule into single firings");
            }
            segments.add(segment(row, metricRate ? "rate_k_per_h" : "rate_f_per_h", metricTarget ? "target_c" : "target_f"));
        }
        if (segments.isEmpty()) {
            throw new Refusal(table.name(), "the schedule is empty", "write a line for each segment below the line of column names");
        }
        String name = table.name().replaceFirst("(?i)\\.csv$", "");
        return new Schedule(name.isBlank() ? table.name() : name, segments);
    }

    private void need(boolean there, String column) {
        if (!there) {
            throw new Refusal(table.name() + ":" + table.rows().get(0).line(), "it has no column " + column, COLUMNS);
        }
    }

    private Segment segment(CsvRows.Row row, String rateColumn, String targetColumn) {
        double rate = optional(row, rateColumn, "write K an hour such as 150, or leave it empty for as fast as the kiln goes");
        if (rate < 0) {
            throw new Refusal(table.where(row), rateColumn + " is " + Units.plain(rate) + "; the target gives a segment its direction",
                    "write " + Units.plain(-rate) + ", or leave it empty for as fast as the kiln goes");
        }
        double rateK = rateColumn.equals("rate_f_per_h") ? rate / 1.8 : rate;
        if (rateK > Segment.MOST_RATE) {
            throw new Refusal(table.where(row), rateColumn + " is " + row.cell(headings.indexOf(rateColumn)),
                    "write at most " + Units.plain(Segment.MOST_RATE) + ", or leave it empty for as fast as the kiln goes");
        }
        double target = Cells.number(table, row, headings.indexOf(targetColumn), targetColumn, "write the temperature that the segment goes to");
        double targetC = targetColumn.equals("target_f") ? (target - 32) / 1.8 : target;
        if (targetC < Segment.LEAST_C || targetC > Segment.MOST_C) {
            throw new Refusal(table.where(row), targetColumn + " is " + Units.plain(target), "write a temperature from 20 to 1400 degC");
        }
        double soak = optional(row, "soak_min", "write minutes, or leave it empty for none");
        if (soak < 0 || soak > Segment.MOST_SOAK_MIN) {
            throw new Refusal(table.where(row), "soak_min is " + Units.plain(soak), "write minutes from 0 to " + Units.plain(Segment.MOST_SOAK_MIN));
        }
        int nameAt = headings.indexOf("segment");
        return new Segment(row.cell(nameAt), rateK, targetC, soak);
    }

    private double optional(CsvRows.Row row, String column, String remedy) {
        int at = headings.indexOf(column);
        return at < 0 || row.cell(at).isEmpty() ? 0 : Cells.number(table, row, at, column, remedy);
    }

    /** The schedule as such a file, lines ended by a line feed; read back it is the same schedule. */
    public static String text(Schedule schedule) {
        StringBuilder text = new StringBuilder("segment,rate_k_per_h,target_c,soak_min\n");
        for (Segment segment : schedule.segments()) {
            text.append(quoted(segment.name())).append(',').append(segment.fullRate() ? "" : Units.plain(segment.rateKPerH())).append(',')
                    .append(Units.plain(segment.targetC())).append(',').append(Units.plain(segment.soakMin())).append('\n');
        }
        return text.toString();
    }

    private static String quoted(String name) {
        return name.matches("[^,;\"\\t\\r\\n]*") && !name.startsWith("#") ? name : '"' + name.replace("\"", "\"\"") + '"';
    }

    /** @throws LockedException if the file is there and {@code replace} is false */
    public static void write(Schedule schedule, Path file, boolean replace) throws IOException {
        if (Files.exists(file) && !replace) {
            throw new LockedException(file + " exists already; nothing was written. Give --replace to replace it, or another name.");
        }
        try (PendingFile pending = PendingFile.beside(file)) {
            pending.out().write(text(schedule).getBytes(StandardCharsets.UTF_8));
            pending.commit();
        }
    }
}
