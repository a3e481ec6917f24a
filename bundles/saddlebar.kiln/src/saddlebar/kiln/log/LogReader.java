package saddlebar.kiln.log;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import saddlebar.kiln.read.Cells;
import saddlebar.kiln.read.CsvRows;
import saddlebar.kiln.schedule.HeatCurve;
import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Refusal;
import saddlebar.model.problem.Severity;
import saddlebar.model.units.Units;

/**
 * Reads the log of any logger. Of two rows of one time the later counts; time that runs back is refused. A row without a reading is a dropout.
 * A stretch is a gap where it is longer than 2.5 usual intervals. Up to three readings in a row that stand out from both sides, by more than the kiln
 * could move, are taken out. Local times that jump on by one hour while the kiln moves on as usual were set to summer time; the jump is closed up.
 */
public final class LogReader {
    public static final double MOST_C = 1400;
    public static final double LEAST_C = -20;
    private static final double GAP_INTERVALS = 2.5;
    private static final double LEAST_GAP_S = 5;
    private static final double HOUR_S = 3600;
    /** What no studio kiln does between two readings, beyond what its pace explains. */
    private static final double SPIKE_K = 12;
    private static final double SPIKE_PACES = 3;
    private static final double SPIKE_S = 1800;
    private static final int MOST_ROWS = 5_000_000;

    private final CsvRows table;
    private final LogColumns columns;
    private final double elementsW;
    private final List<Problem> remarks = new ArrayList<>();
    private double[] times = new double[1024];
    private double[] temperatures = new double[1024];
    private double[] powers = new double[1024];
    private int size;
    private int repeated;
    private int dropouts;
    private boolean powerKnown = true;
    private String beganAt;
    private Boolean offsets;

    private LogReader(CsvRows table, double elementsW) {
        this.table = table;
        this.columns = LogColumns.find(table);
        this.elementsW = elementsW;
    }

    /** @throws Refusal with file and line */
    public static FiringLog read(Path file) throws IOException {
        return read(file, Double.NaN);
    }

    /** @param elementsW power of the elements, for logs that tell only their duty; NaN if not known */
    public static FiringLog read(Path file, double elementsW) throws IOException {
        return new LogReader(CsvRows.of(file), elementsW).log();
    }

    public static FiringLog read(String text, String name) {
        return new LogReader(CsvRows.of(text, name), Double.NaN).log();
    }

    private FiringLog log() {
        List<CsvRows.Row> rows = table.rows();
        if (rows.size() - columns.headRow - 1 > MOST_ROWS) {
            throw new Refusal(table.name(), "it has more than " + MOST_ROWS + " rows", "cut it into single firings");
        }
        for (CsvRows.Row row : rows.subList(columns.headRow + 1, rows.size())) {
            add(row);
        }
        if (size < 2) {
            throw new Refusal(table.name(), size == 0 ? "it holds no reading" : "it holds one reading only", "export the whole firing");
        }
        times = Arrays.copyOf(times, size);
        temperatures = Arrays.copyOf(temperatures, size);
        double usual = usualInterval();
        closeSummerTime(usual);
        double first = times[0];
        for (int i = 0; i < size; i++) {
            times[i] -= first;
        }
        int spikes = takeOutSpikes();
        HeatCurve curve = HeatCurve.of(times, temperatures);
        tellTrouble(spikes);
        return new FiringLog(table.name(), curve, Optional.ofNullable(beganAt), gaps(usual), spikes, repeated, dropouts, energy(), remarks);
    }

    private void add(CsvRows.Row row) {
        double time = time(row);
        if (row.cell(columns.reading).isEmpty()) {
            dropouts++;
            return;
        }
        double degC = temperature(row);
        if (degC > MOST_C || degC < LEAST_C || Double.isNaN(degC)) {
            throw new Refusal(table.where(row), String.format(Locale.ROOT, "%s is %s, which is %.0f degC", columns.heading(table, columns.reading),
                    row.cell(columns.reading), degC),
                    "a kiln's log lies between -20 and 1400 degC; check the unit in the heading and the thermocouple");
        }
        double watts = watts(row);
        if (size > 0 && time < times[size - 1]) {
            String hour = Math.abs(times[size - 1] - time - HOUR_S) < 600 && columns.clock == LogColumns.Clock.DATE
                    ? "; if the clock was set back, write the offset such as +01:00 behind each time, or use seconds"
                    : "; sort the rows, or cut the log into single firings";
            throw new Refusal(table.where(row), "time runs back by " + Units.plain(Math.round(times[size - 1] - time)) + " s", hour.substring(2));
        }
        if (size > 0 && time == times[size - 1]) {
            repeated++;
            size--;
        }
        if (size == times.length) {
            times = Arrays.copyOf(times, 2 * size);
            temperatures = Arrays.copyOf(temperatures, 2 * size);
            powers = Arrays.copyOf(powers, 2 * size);
        }
        times[size] = time;
        temperatures[size] = degC;
        powers[size++] = watts;
    }

    private double time(CsvRows.Row row) {
        String heading = columns.heading(table, columns.time);
        if (columns.clock == LogColumns.Clock.DATE) {
            String text = row.cell(columns.time);
            LogTime.Instant instant = LogTime.parse(text)
                    .orElseThrow(() -> new Refusal(table.where(row), heading + " is '" + text + "', which is no time in ISO 8601",
                            "write 2026-03-01T08:00:00, or use a column seconds or minutes"));
            if (offsets != null && offsets != instant.offset()) {
                throw new Refusal(table.where(row), "some times have an offset from UTC and some have none", "write all of them in one way");
            }
            offsets = instant.offset();
            beganAt = beganAt == null ? text : beganAt;
            return instant.seconds();
        }
        double value = Cells.number(table, row, columns.time, heading, "write the time as a number");
        return switch (columns.clock) {
            case MINUTES -> value * 60;
            case HOURS -> value * 3600;
            default -> value;
        };
    }

    private double temperature(CsvRows.Row row) {
        String heading = columns.heading(table, columns.reading);
        double value = Cells.number(table, row, columns.reading, heading,
                "write the temperature as a number, or leave the cell empty where the logger failed");
        return switch (columns.unit) {
            case CELSIUS -> value;
            case FAHRENHEIT -> (value - 32) / 1.8;
            case MILLIVOLT -> {
                double cold = Cells.number(table, row, columns.coldJunction, columns.heading(table, columns.coldJunction),
                        "write the temperature of the logger's terminals");
                double coldC = columns.coldFahrenheit ? (cold - 32) / 1.8 : cold;
                if (!columns.couple.covers(value, coldC)) {
                    throw new Refusal(table.where(row),
                            heading + " is " + Units.plain(value) + " with the cold junction at " + Units.plain(coldC) + " degC",
                            "a thermocouple of type " + columns.couple + " gives no such force in a kiln; check the type and the unit in the heading");
                }
                yield columns.couple.degC(value, coldC);
            }
        };
    }

    private double watts(CsvRows.Row row) {
        int column = columns.power >= 0 ? columns.power : columns.duty;
        if (column < 0 || columns.power < 0 && !(elementsW > 0) || row.cell(column).isEmpty()) {
            powerKnown = false;
            return 0;
        }
        double value = Cells.number(table, row, column, columns.heading(table, column), "write a number, or leave the column out");
        if (columns.power >= 0) {
            return value;
        }
        boolean percent = LogColumns.plain(columns.heading(table, column)).matches(".*(percent|pct)");
        return elementsW * (percent ? value / 100 : value);
    }

    private double usualInterval() {
        double[] steps = new double[size - 1];
        for (int i = 1; i < size; i++) {
            steps[i - 1] = times[i] - times[i - 1];
        }
        Arrays.sort(steps);
        return steps[steps.length / 2];
    }

    /** A local clock that was set on by an hour: the step is an hour and a usual interval, the temperature moved no more than before. */
    private void closeSummerTime(double usual) {
        if (columns.clock != LogColumns.Clock.DATE || Boolean.TRUE.equals(offsets) || usual > 900) {
            return;
        }
        for (int i = 2; i < size - 1; i++) {
            double step = times[i] - times[i - 1];
            if (Math.abs(step - HOUR_S - usual) <= Math.max(usual / 2, 2)) {
                double pace = Math.max(Math.abs(temperatures[i - 1] - temperatures[i - 2]) / (times[i - 1] - times[i - 2]),
                        Math.abs(temperatures[i + 1] - temperatures[i]) / (times[i + 1] - times[i]));
                boolean moved = pace * HOUR_S > 20; // a kiln that stands still tells nothing
                if (moved && Math.abs(temperatures[i] - temperatures[i - 1]) < 3 * pace * (step - HOUR_S) + 2) {
                    for (int k = i; k < size; k++) {
                        times[k] -= HOUR_S;
                    }
                    remarks.add(Problem.of("clock-change", Severity.WARNING, table.name(), String.format(Locale.ROOT,
                            "The clock jumps on by an hour at %.0f degC while the kiln moves on as usual: taken as summer time and closed up.",
                            temperatures[i])));
                }
            }
        }
    }

    private int takeOutSpikes() {
        int taken = 0;
        for (int i = 1; i < size - 1; i++) {
            for (int length = 1; length <= 3 && i + length < size; length++) {
                if (isSpike(i, length)) {
                    for (int k = i; k < i + length; k++) {
                        double share = (times[k] - times[i - 1]) / (times[i + length] - times[i - 1]);
                        temperatures[k] = temperatures[i - 1] + share * (temperatures[i + length] - temperatures[i - 1]);
                    }
                    taken += length;
                    break;
                }
            }
        }
        return taken;
    }

    /** Jumps off to one side and back again, both times much farther than the kiln moved just before and after. */
    private boolean isSpike(int from, int length) {
        int to = from + length;
        double before = from >= 2 ? Math.abs(temperatures[from - 1] - temperatures[from - 2]) : 0;
        double after = to + 1 < size ? Math.abs(temperatures[to + 1] - temperatures[to]) : 0;
        double limit = SPIKE_K + SPIKE_PACES * Math.max(before, after);
        double off = temperatures[from] - temperatures[from - 1];
        double back = temperatures[to - 1] - temperatures[to];
        if (Math.abs(off) < limit || Math.abs(back) < limit || off * back < 0 || times[to] - times[from - 1] > SPIKE_S) {
            return false;
        }
        for (int k = from; k < to; k++) {
            double share = (times[k] - times[from - 1]) / (times[to] - times[from - 1]);
            double aside = temperatures[k] - temperatures[from - 1] - share * (temperatures[to] - temperatures[from - 1]);
            if (aside * off < 0 || Math.abs(aside) < limit) {
                return false;
            }
        }
        return true;
    }

    private List<FiringLog.Gap> gaps(double usual) {
        List<FiringLog.Gap> gaps = new ArrayList<>();
        double limit = Math.max(GAP_INTERVALS * usual, LEAST_GAP_S);
        for (int i = 1; i < size; i++) {
            if (times[i] - times[i - 1] > limit) {
                gaps.add(new FiringLog.Gap(times[i - 1], times[i], temperatures[i - 1], temperatures[i]));
            }
        }
        return gaps;
    }

    private Optional<Double> energy() {
        if (!powerKnown || columns.power < 0 && columns.duty < 0) {
            return Optional.empty();
        }
        double joule = 0;
        for (int i = 1; i < size; i++) {
            joule += (powers[i] + powers[i - 1]) / 2 * (times[i] - times[i - 1]);
        }
        return Optional.of(joule / 3.6e6);
    }

    private void tellTrouble(int spikes) {
        if (spikes > 0) {
            remarks.add(Problem.of("log-spikes", Severity.NOTE, table.name(), spikes + " reading" + (spikes == 1 ? " stands" : "s stand")
                    + " out from both neighbours and was not believed; look at the thermocouple's wires."));
        }
        if (repeated > 0) {
            remarks.add(Problem.of("log-repeated", Severity.NOTE, table.name(), repeated + " time" + (repeated == 1 ? " stands" : "s stand")
                    + " there twice; the later row counts."));
        }
        if (dropouts > 0) {
            remarks.add(Problem.of("log-dropouts", Severity.NOTE, table.name(),
                    dropouts + " row" + (dropouts == 1 ? " has" : "s have") + " no reading."));
        }
    }
}
