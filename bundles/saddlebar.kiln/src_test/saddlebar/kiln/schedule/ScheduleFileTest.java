package saddlebar.kiln.schedule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import saddlebar.model.problem.LockedException;
import saddlebar.model.problem.Refusal;

class ScheduleFileTest {
    private static final String HEAD = "segment,rate_k_per_h,target_c,soak_min\n";

    @TempDir
    Path temp;

    private static String refused(String text) {
        Refusal refusal = assertThrows(Refusal.class, () -> ScheduleFile.read(text, "s.csv"));
        assertFalse(refusal.getMessage().contains("Exception"), refusal.getMessage());
        assertFalse(refusal.getMessage().contains("\n"), refusal.getMessage());
        return refusal.getMessage();
    }

    @Test
    void readsColumnsInAnyOrderAndLeavesOthersOut() {
        Schedule schedule = ScheduleFile.read("note,target_c,soak_min,rate_k_per_h,segment\nx,300,10,150,dry\n\n# remark\ny,650,,,peak\n", "my.csv");
        assertEquals(List.of(new Segment("dry", 150, 300, 10), new Segment("peak", 0, 650, 0)), schedule.segments());
        assertEquals("my", schedule.name());
        assertTrue(schedule.segments().get(1).fullRate());
        assertEquals(1, schedule.peakIndex());
    }

    @Test
    void readsSemicolonsDecimalCommasMarksAndFahrenheit() {
        Schedule schedule = ScheduleFile.read("\uFEFFsegment;rate_k_per_h;target_c;soak_min\r\n1;150,5;300;10\r\n", "s.csv");
        assertEquals(150.5, schedule.segments().get(0).rateKPerH());
        Schedule us = ScheduleFile.read("segment,rate_f_per_h,target_f,soak_min\n1,270,1202,10\n", "s.csv");
        assertEquals(150, us.segments().get(0).rateKPerH(), 1e-9);
        assertEquals(650, us.segments().get(0).targetC(), 1e-9);
    }

    @Test
    void refusesWithLineAndRemedy() {
        assertEquals(
                "s.csv:7: rate_k_per_h is -80; the target gives a segment its direction; write 80, or leave it empty for as fast as the kiln goes",
                refused(HEAD + "\n\n# a\n\n1,100,300,0\n2,-80,20,0\n"));
        assertTrue(refused(HEAD + "1,fast,300,0\n").startsWith("s.csv:2: rate_k_per_h is 'fast', which is no number; "));
        assertTrue(refused(HEAD + "1,100,,0\n").startsWith("s.csv:2: target_c is empty; "));
        assertTrue(refused(HEAD + "1,100,1500,0\n").startsWith("s.csv:2: target_c is 1500; "));
        assertTrue(refused(HEAD + "1,100,-5,0\n").startsWith("s.csv:2: target_c is -5; "));
        assertTrue(refused(HEAD + "1,100,NaN,0\n").startsWith("s.csv:2: target_c is 'NaN', which is no number; "));
        assertTrue(refused(HEAD + "1,100,500,-1\n").startsWith("s.csv:2: soak_min is -1; "));
        assertTrue(refused(HEAD + "1,99999,500,1\n").startsWith("s.csv:2: rate_k_per_h is 99999; "));
        assertTrue(refused("segment,target_c,soak_min\n1,500,1\n").startsWith("s.csv:1: it has no column rate_k_per_h; "));
        assertTrue(refused("1,100,300,0\n").startsWith("s.csv:1: it has no column rate_k_per_h; "));
        assertEquals("s.csv: the schedule is empty; write a line for each segment below the line of column names", refused(HEAD));
        assertTrue(refused("  \n").startsWith("s.csv: it is empty; "));
        assertTrue(refused(HEAD + "\"1,100,300,0\n").startsWith("s.csv:2: a quotation mark is never closed; "));
        assertTrue(refused(HEAD + "1,100,300,0\n".repeat(201)).startsWith("s.csv:202: there are more than 200 segments; "));
    }

    @Test
    void refusesWhatIsNoFile() throws IOException {
        assertTrue(assertThrows(Refusal.class, () -> ScheduleFile.read(temp.resolve("none.csv"))).getMessage()
                .startsWith("none.csv: there is no such file; "));
        assertTrue(assertThrows(Refusal.class, () -> ScheduleFile.read(temp)).getMessage().contains("this is a folder, not a file; "));
        Path binary = Files.write(temp.resolve("b.csv"), new byte[] {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10, 0, 0, 0, 13});
        assertEquals("b.csv: it is not text but a binary file; export it as CSV",
                assertThrows(Refusal.class, () -> ScheduleFile.read(binary)).getMessage());
        Path empty = Files.write(temp.resolve("e.csv"), new byte[0]);
        assertTrue(assertThrows(Refusal.class, () -> ScheduleFile.read(empty)).getMessage().startsWith("e.csv: it is empty; "));
    }

    @Test
    void writesNeverOverAFileUnasked() throws IOException {
        Schedule schedule = ScheduleFile.read(HEAD + "1,100,300,5\n", "s.csv");
        Path out = temp.resolve("out.csv");
        ScheduleFile.write(schedule, out, false);
        assertEquals(HEAD + "1,100,300,5\n", Files.readString(out));
        Files.writeString(out, "mine");
        assertThrows(LockedException.class, () -> ScheduleFile.write(schedule, out, false));
        assertEquals("mine", Files.readString(out));
        ScheduleFile.write(schedule, out, true);
        assertEquals(HEAD + "1,100,300,5\n", Files.readString(out));
    }

    @Property(tries = 200)
    void readsWhatItWrote(@ForAll("schedules") Schedule schedule) {
        assertEquals(schedule.segments(), ScheduleFile.read(ScheduleFile.text(schedule), "s.csv").segments());
    }

    @Provide
    Arbitrary<Schedule> schedules() {
        Arbitrary<String> names = Arbitraries.strings().withChars("ab ,;\"#\u00e9\t'").ofMaxLength(6).map(String::strip);
        Arbitrary<Segment> segments = Combinators.combine(names, Arbitraries.doubles().between(0, 20000), Arbitraries.doubles().between(20, 1400),
                Arbitraries.doubles().between(0, 6000)).as(Segment::new);
        return segments.list().ofMinSize(1).ofMaxSize(12).map(list -> new Schedule("s", list));
    }

    @Test
    void asWritten() {
        HeatCurve curve = ScheduleFile.read(HEAD + "1,100,320,30\n2,,120,0\n3,50,20,0\n", "s.csv").asWritten();
        assertEquals(3 * 3600 + 1800 + 2 * 3600, curve.endS(), 1e-9);
        assertEquals(170, curve.at(1.5 * 3600), 1e-9);
        assertEquals(320, curve.at(3.2 * 3600), 1e-9);
        assertEquals(120, curve.at(3.5 * 3600), 1e-9, "a fall as fast as the kiln goes takes no time as written");
        assertEquals(30 + 20.0 / 100 * 60, curve.minutesAbove(300), 1e-9);
        assertEquals(320, curve.peakC());
        assertEquals(3 * 3600, curve.peakS(), 1e-9);
    }
}
