package saddlebar.kiln.log;

import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import saddlebar.kiln.couple.Thermocouple;
import saddlebar.kiln.read.CsvRows;
import saddlebar.model.problem.Refusal;

/**
 * Which column of a log is what, and in which unit: from the headings alone. {@code time}, {@code seconds}, {@code minutes}, {@code hours};
 * {@code temperature_c}, {@code temperature_f}; {@code thermocouple_mv} (type K), {@code thermocouple_s_mv} and so on with {@code cold_junction_c}.
 * Other ways of writing the same are taken: {@code Temp (°C)}, {@code T [degF]}, {@code Elapsed min}.
 */
final class LogColumns {
    private static final String WHICH = "name a column temperature_c, temperature_f or thermocouple_mv";
    private static final Pattern MV = Pattern.compile("(thermocouple|tc|couple|emf|type)_?([a-z])?_?(mv|millivolts?)?");

    enum Clock {
        DATE, SECONDS, MINUTES, HOURS
    }

    enum Reading {
        CELSIUS, FAHRENHEIT, MILLIVOLT
    }

    final int headRow;
    final int time;
    final Clock clock;
    final int reading;
    final Reading unit;
    final Thermocouple couple;
    final int coldJunction;
    final boolean coldFahrenheit;
    final int power;
    final int duty;

    private LogColumns(CsvRows table, int headRow) {
        this.headRow = headRow;
        CsvRows.Row head = table.rows().get(headRow);
        List<String> names = head.cells().stream().map(LogColumns::plain).toList();
        int timeAt = -1;
        Clock found = null;
        int readingAt = -1;
        Reading kind = null;
        Thermocouple type = null;
        int cold = -1;
        boolean coldF = false;
        int powerAt = -1;
        int dutyAt = -1;
        for (int i = 0; i < names.size(); i++) {
            String name = names.get(i);
            Clock clockHere = clock(name);
            if (clockHere != null && (timeAt < 0 || clockHere.ordinal() < found.ordinal() && clockHere != Clock.DATE)) {
                timeAt = i;
                found = clockHere;
            } else if (name.matches("(cold_?junction|cj|reference)(_temp(erature)?)?_(c|f)")) {
                cold = i;
                coldF = name.endsWith("f");
            } else if (name.matches("power_w|elements_w")) {
                powerAt = i;
            } else if (name.matches("(duty|output)(_?(percent|pct))?")) {
                dutyAt = i;
            } else if (readingAt < 0 && isTemperature(name)) {
                kind = unit(table, head, i, name);
                readingAt = i;
            } else if (readingAt < 0 && name.endsWith("mv")) {
                Matcher couples = MV.matcher(name);
                type = couples.matches() ? type(table, head, i, couples.group(2)) : Thermocouple.K;
                readingAt = i;
                kind = Reading.MILLIVOLT;
            }
        }
        String where = table.where(head);
        if (timeAt < 0) {
            throw new Refusal(where, "it has no column of time", "name a column time (ISO 8601), seconds or minutes");
        }
        if (readingAt < 0) {
            throw new Refusal(where, "it has no column of temperature", WHICH);
        }
        if (kind == Reading.MILLIVOLT && cold < 0) {
            throw new Refusal(where, "it has a thermocouple in mV but no column cold_junction_c",
                    "add the temperature of the logger's terminals, such as 24");
        }
        this.time = timeAt;
        this.clock = found;
        this.reading = readingAt;
        this.unit = kind;
        this.couple = type;
        this.coldJunction = cold;
        this.coldFahrenheit = coldF;
        this.power = powerAt;
        this.duty = dutyAt;
    }

    /** The headings are in the first row, or below some rows that a logger writes about itself. */
    static LogColumns find(CsvRows table) {
        int most = Math.min(60, table.rows().size());
        for (int i = 0; i < most; i++) {
            List<String> names = table.rows().get(i).cells().stream().map(LogColumns::plain).toList();
            boolean clock = names.stream().anyMatch(name -> clock(name) != null);
            boolean heat = names.stream().anyMatch(name -> isTemperature(name) || name.endsWith("mv"));
            if (clock && heat) {
                return new LogColumns(table, i);
            }
        }
        return new LogColumns(table, 0);
    }

    String heading(CsvRows table, int column) {
        return table.rows().get(headRow).cell(column);
    }

    /** Lower case, signs of degrees and brackets to underlines: {@code Temp (°C)} becomes {@code temp_c}. */
    static String plain(String heading) {
        String ascii = Normalizer.normalize(heading, Normalizer.Form.NFKC).toLowerCase(Locale.ROOT).replace("°", " ").replace("º", " ");
        return ascii.replaceAll("\\bdeg(rees?)?[ _.]?(?=[a-z])", " ").replaceAll("\\bcelsius\\b", "c").replaceAll("\\bfahrenheit\\b", "f")
                .replaceAll("[^a-z0-9%]+", "_").replace("%", "percent").replaceAll("deg_?(?=[cf]\\b)", "").replaceAll("^_|_$", "");
    }

    private static Clock clock(String name) {
        return switch (name) {
            case "time", "timestamp", "datetime", "date_time", "time_iso", "when" -> Clock.DATE;
            case "seconds", "sec", "s", "time_s", "time_sec", "time_seconds", "elapsed_s", "elapsed_seconds", "elapsed_sec" -> Clock.SECONDS;
            case "minutes", "min", "time_min", "time_minutes", "elapsed_min", "elapsed_minutes" -> Clock.MINUTES;
            case "hours", "h", "time_h", "time_hours", "elapsed_h", "elapsed_hours" -> Clock.HOURS;
            default -> null;
        };
    }

    private static boolean isTemperature(String name) {
        return name.matches("(kiln_?|chamber_?|measured_?|actual_?)?(temperature|temp|t)(_.*)?") && !name.matches("t(ime.*|ype.*)")
                || name.matches("[cf]");
    }

    private static Reading unit(CsvRows table, CsvRows.Row head, int column, String name) {
        if (name.matches("(.*_)?c")) {
            return Reading.CELSIUS;
        }
        if (name.matches("(.*_)?f")) {
            return Reading.FAHRENHEIT;
        }
        throw new Refusal(table.where(head), "the column '" + head.cell(column) + "' does not say degC or degF", WHICH);
    }

    private static Thermocouple type(CsvRows table, CsvRows.Row head, int column, String letter) {
        if (letter == null) {
            return Thermocouple.K;
        }
        return Thermocouple.of(letter).orElseThrow(() -> new Refusal(table.where(head),
                "the column '" + head.cell(column) + "' names a thermocouple of type " + letter.toUpperCase(Locale.ROOT),
                "types K, S, R and N are known"));
    }
}
