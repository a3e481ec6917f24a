package saddlebar.kiln.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.function.IntFunction;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import saddlebar.kiln.couple.Thermocouple;
import saddlebar.model.problem.Refusal;

class LogReaderTest {
    @TempDir
    Path temp;

    private static String rows(String head, int n, IntFunction<String> row) {
        StringBuilder text = new StringBuilder(head).append('\n');
        for (int i = 0; i < n; i++) {
            text.append(row.apply(i)).append('\n');
        }
        return text.toString();
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.4f", value);
    }

    private static String refused(String text) {
        Refusal refusal = assertThrows(Refusal.class, () -> LogReader.read(text, "log.csv"));
        assertFalse(refusal.getMessage().contains("Exception") || refusal.getMessage().contains("\n"), refusal.getMessage());
        return refusal.getMessage();
    }

    /** The same firing in every unit and clock gives the same curve. */
    @Test
    void allUnitsTellTheSame() {
        FiringLog celsius = LogReader.read(rows("seconds,temperature_c", 100, i -> i * 60 + "," + number(20 + 6 * i)), "a.csv");
        String[] others = {
                rows("minutes,temperature_f", 100, i -> i + "," + number((20 + 6 * i) * 1.8 + 32)),
                rows("time,temperature_c", 100, i -> String.format("2026-03-01T%02d:%02d:00,", 8 + i / 60, i % 60) + number(20 + 6 * i)),
                rows("time,temperature_c", 100, i -> String.format("2026-03-01T%02d:%02dZ,", 8 + i / 60, i % 60) + number(20 + 6 * i)),
                rows("time,temperature_c", 100, i -> String.format("2026-03-01 %02d:%02d:00+0100,", 8 + i / 60, i % 60) + number(20 + 6 * i)),
                rows("seconds;Temp (\u00b0C)", 100, i -> i * 60 + ";" + number(20 + 6 * i).replace('.', ',')),
                rows("Elapsed min\tKiln temp [degF]", 100, i -> i + "\t" + number((20 + 6 * i) * 1.8 + 32)),
                "Logger,model x\nSerial,1234\nhours,setpoint,temperature_c\n"
                        + rows("", 100, i -> number(i / 60.0) + "00,5," + number(20 + 6 * i)).strip() + "\n"};
        for (String other : others) {
            FiringLog log = LogReader.read(other, "b.csv");
            assertEquals(100, log.curve().points(), other.substring(0, 40));
            for (int i = 0; i < 100; i++) {
                assertEquals(celsius.curve().timeS(i), log.curve().timeS(i), 0.4, other.substring(0, 40));
                assertEquals(celsius.curve().temperatureC(i), log.curve().temperatureC(i), 0.001, other.substring(0, 40));
            }
        }
        assertEquals("2026-03-01T08:00:00", LogReader.read(others[1], "b.csv").beganAt().orElseThrow());
    }

    @Property(tries = 60)
    void thermocouplesTellTheSame(@ForAll Thermocouple type, @ForAll @DoubleRange(min = 5, max = 45) double cold) {
        double junction = Math.rint(cold * 10) / 10;
        String text = rows(
                "seconds," + (type == Thermocouple.K ? "thermocouple_mv" : "thermocouple_" + type.name().toLowerCase(Locale.ROOT) + "_mv")
                        + ",cold_junction_c",
                60,
                i -> i * 60 + "," + String.format(Locale.ROOT, "%.6f", type.mv(50 + 14 * i) - type.mv(junction)) + "," + junction);
        FiringLog log = LogReader.read(text, "tc.csv");
        for (int i = 0; i < 60; i++) {
            assertEquals(50 + 14 * i, log.curve().temperatureC(i), 0.07);
        }
    }

    /** 26.000 mV read with the cold junction at 24 degC: 648.44 degC (NIST Monograph 175, published inverse). */
    @Test
    void coldJunctionIsAddedAsForce() {
        FiringLog log = LogReader.read("seconds,thermocouple_mv,cold_junction_c\n0,26.0,24\n60,26.0,24\n", "tc.csv");
        assertEquals(648.44, log.curve().temperatureC(0), 0.01);
    }

    @Test
    void latinDegreeSignsAndUtf16() throws IOException {
        Path latin = Files.write(temp.resolve("l.csv"), "seconds,Temp \u00b0C\n0,20\n60,30\n".getBytes(StandardCharsets.ISO_8859_1));
        assertEquals(30, LogReader.read(latin).curve().temperatureC(1));
        Path wide = Files.write(temp.resolve("w.csv"), "seconds,Temp \u00b0C\r\n0,20\r\n60,30\r\n".getBytes(StandardCharsets.UTF_16));
        assertEquals(30, LogReader.read(wide).curve().temperatureC(1));
    }

    @Test
    void headingsThatCannotBeUsed() {
        assertEquals("log.csv:1: the column 'temperature_r' does not say degC or degF; name a column temperature_c, temperature_f or thermocouple_mv",
                refused("seconds,temperature_r\n0,20\n60,30\n"));
        assertTrue(refused("seconds,temperature_k\n0,293\n60,300\n").startsWith("log.csv:1: the column 'temperature_k' does not say degC or degF; "));
        assertTrue(refused("seconds,temperature\n0,293\n60,300\n").startsWith("log.csv:1: the column 'temperature' does not say degC or degF; "));
        assertTrue(refused("temperature_c\n20\n30\n").startsWith("log.csv:1: it has no column of time; "));
        assertTrue(refused("seconds,pressure\n0,1\n60,1\n").startsWith("log.csv:1: it has no column of temperature; "));
        assertTrue(
                refused("seconds,thermocouple_mv\n0,1\n60,1\n").startsWith("log.csv:1: it has a thermocouple in mV but no column cold_junction_c; "));
        assertTrue(refused("seconds,thermocouple_j_mv,cold_junction_c\n0,1,20\n60,1,20\n")
                .startsWith("log.csv:1: the column 'thermocouple_j_mv' names a thermocouple of type J; "));
    }

    @Test
    void rowsThatCannotBeUsed() {
        assertEquals("log.csv:4: time runs back by 30 s; sort the rows, or cut the log into single firings",
                refused("seconds,temperature_c\n0,20\n60,30\n30,40\n"));
        assertEquals(
                "log.csv:4: time runs back by 3540 s; if the clock was set back, write the offset such as +01:00 behind each time, or use seconds",
                refused("time,temperature_c\n2026-10-25T02:58,500\n2026-10-25T02:59,501\n2026-10-25T02:00,502\n"));
        assertTrue(refused("seconds,temperature_c\n0,20\n60,1401\n").startsWith("log.csv:3: temperature_c is 1401, which is 1401 degC; "));
        assertTrue(refused("seconds,temperature_c\n0,-21\n60,20\n").startsWith("log.csv:2: temperature_c is -21, which is -21 degC; "));
        assertTrue(refused("seconds,temperature_f\n0,70\n60,2600\n").startsWith("log.csv:3: temperature_f is 2600, which is 1427 degC; "));
        assertTrue(refused("seconds,temperature_c\n0,20\n60,hot\n").startsWith("log.csv:3: temperature_c is 'hot', which is no number; "));
        assertTrue(refused("seconds,temperature_c\n0,20\n60,NaN\n").startsWith("log.csv:3: temperature_c is 'NaN', which is no number; "));
        assertTrue(refused("seconds,temperature_c\n0,20\nx,30\n").startsWith("log.csv:3: seconds is 'x', which is no number; "));
        assertTrue(refused("time,temperature_c\n03/01/2026 08:00,20\n")
                .startsWith("log.csv:2: time is '03/01/2026 08:00', which is no time in ISO 8601; "));
        assertTrue(refused("time,temperature_c\n2026-03-01T08:00Z,20\n2026-03-01T08:01,21\n")
                .startsWith("log.csv:3: some times have an offset from UTC and some have none; "));
        assertTrue(refused("seconds,thermocouple_mv,cold_junction_c\n0,1,20\n60,99,20\n")
                .startsWith("log.csv:3: thermocouple_mv is 99 with the cold junction at 20 degC; "));
        assertTrue(refused("seconds,temperature_c\n").startsWith("log.csv: it holds no reading; "));
        assertTrue(refused("seconds,temperature_c\n0,20\n").startsWith("log.csv: it holds one reading only; "));
        assertTrue(refused("").startsWith("log.csv: it is empty; "));
    }

    @Test
    void filesThatAreNoLogs() throws IOException {
        Path binary = Files.write(temp.resolve("b.csv"), new byte[] {1, 2, 3, 0, 5});
        assertEquals("b.csv: it is not text but a binary file; export it as CSV",
                assertThrows(Refusal.class, () -> LogReader.read(binary)).getMessage());
        assertTrue(assertThrows(Refusal.class, () -> LogReader.read(temp.resolve("none.csv"))).getMessage()
                .startsWith("none.csv: there is no such file; "));
        assertTrue(assertThrows(Refusal.class, () -> LogReader.read(temp)).getMessage().contains("this is a folder"));
    }

    @Test
    void ofTwoRowsOfOneTimeTheLaterCounts() {
        FiringLog log = LogReader.read("seconds,temperature_c\n0,20\n60,30\n60,35\n120,40\n", "log.csv");
        assertEquals(3, log.curve().points());
        assertEquals(35, log.curve().at(60));
        assertEquals(1, log.repeated());
    }

    @Test
    void gapsAndDropouts() {
        FiringLog log = LogReader.read(
                rows("minutes,temperature_c", 200, i -> i >= 50 && i < 80 ? "" : i >= 120 && i < 125 ? i + "," : i + "," + (20 + i)), "log.csv");
        assertEquals(2, log.gaps().size());
        assertEquals(31, log.gaps().get(0).minutes(), 1e-9);
        assertEquals(6, log.gaps().get(1).minutes(), 1e-9);
        assertEquals(5, log.dropouts());
        assertTrue(LogReader.read(rows("minutes,temperature_c", 200, i -> i % 17 == 3 ? "" : i + "," + (20 + i)), "log.csv").gaps().isEmpty(),
                "one missing row is no gap");
    }

    @Test
    void spikesAreTakenOutAndRampsStay() {
        FiringLog log = LogReader
                .read(rows("minutes,temperature_c", 100, i -> i + "," + (20 + 6 * i + (i == 40 ? 300 : i == 70 || i == 71 ? -90 : 0))), "log.csv");
        assertEquals(3, log.spikes());
        for (int i = 0; i < 100; i++) {
            assertEquals(20 + 6 * i, log.curve().temperatureC(i), 1e-9);
        }
        FiringLog steep = LogReader.read(rows("minutes,temperature_c", 60, i -> i + "," + (i < 30 ? 20 + 20 * i : 620 - 20 * (i - 30))), "log.csv");
        assertEquals(0, steep.spikes(), "a sharp peak is no spike");
        assertEquals(620, steep.curve().peakC());
    }

    @Test
    void aClockSetToSummerTimeIsClosedUp() {
        FiringLog log = LogReader.read(rows("time,temperature_c", 120, i -> {
            int minute = i < 60 ? i : i + 60; // 02:00 becomes 03:00
            return String.format("2026-03-29T%02d:%02d:00,%d", 1 + minute / 60, minute % 60, 100 + 4 * i);
        }), "log.csv");
        assertEquals(119 * 60, log.curve().endS(), 1e-9);
        assertTrue(log.gaps().isEmpty());
        assertEquals("clock-change", log.remarks().get(0).code());
        FiringLog gap = LogReader.read(rows("time,temperature_c", 120, i -> {
            int minute = i < 60 ? i : i + 60;
            return String.format("2026-03-29T%02d:%02d:00,%d", 1 + minute / 60, minute % 60, 100 + 4 * minute);
        }), "log.csv");
        assertEquals(1, gap.gaps().size(), "a kiln that went on during the hour shows a gap");
        FiringLog offset = LogReader.read(rows("time,temperature_c", 120, i -> i < 60
                ? String.format("2026-03-29T01:%02d:00+01:00,%d", i, 100 + i)
                : String.format("2026-03-29T03:%02d:00+02:00,%d", i - 60, 100 + i)), "log.csv");
        assertEquals(119 * 60, offset.curve().endS(), 1e-9, "with offsets there is nothing to guess");
    }

    @Test
    void energyFromPowerAndDuty() throws IOException {
        Path power = Files.writeString(temp.resolve("p.csv"), rows("minutes,temperature_c,power_w", 61, i -> i + "," + (20 + i) + ",2000"));
        assertEquals(2.0, LogReader.read(power).measuredKWh().orElseThrow(), 1e-9);
        Path duty = Files.writeString(temp.resolve("d.csv"), rows("minutes,temperature_c,duty_percent", 61, i -> i + "," + (20 + i) + ",50"));
        assertEquals(1.6, LogReader.read(duty, 3200).measuredKWh().orElseThrow(), 1e-9);
        assertTrue(LogReader.read(duty).measuredKWh().isEmpty(), "a duty tells nothing without the power");
    }
}
