package saddlebar.kiln.log;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import saddlebar.kiln.glass.Glass;
import saddlebar.kiln.schedule.Schedule;
import saddlebar.kiln.schedule.ScheduleFile;
import saddlebar.kiln.schedule.Segment;
import saddlebar.model.problem.Refusal;

/** Files as they come out of a bad memory card: each is read, or refused in one sentence; nothing else happens. */
class DamagedTextTest {
    private static final Schedule TOLD = new Schedule("s", List.of(new Segment("", 150, 300, 10), new Segment("", 0, 650, 10)));
    private static final List<String> LOGS = List.of("seconds,temperature_c\n0,20\n60,30\n120,45\n180,50\n",
            "time,thermocouple_mv,cold_junction_c\n2026-03-01T08:00,1.0,24\n2026-03-01T08:01,2.5,24\n2026-03-01T08:02,3.5,24\n",
            "minutes;temperature_f;duty_percent\n0;70,5;10\n1;80;20\n2;1200;\n");
    private static final String SCHEDULE = "segment,rate_k_per_h,target_c,soak_min\n1,150,300,10\n2,,650,10\n\"3\",60,485,\n";
    private static final String LETTERS = "0123456789,;.\"\n\t\r -+eE#TZ:cfmvNaN\u00b0\u0000\uFEFF";

    private static String damaged(String text, long seed) {
        Random chance = new Random(seed);
        StringBuilder copy = new StringBuilder(text);
        int blows = 1 + chance.nextInt(6);
        for (int i = 0; i < blows && copy.length() > 1; i++) {
            int at = chance.nextInt(copy.length());
            switch (chance.nextInt(4)) {
                case 0 -> copy.deleteCharAt(at);
                case 1 -> copy.insert(at, LETTERS.charAt(chance.nextInt(LETTERS.length())));
                case 2 -> copy.setCharAt(at, LETTERS.charAt(chance.nextInt(LETTERS.length())));
                default -> copy.setLength(at);
            }
        }
        return copy.toString();
    }

    @Property(tries = 3000)
    void logs(@ForAll long seed) {
        try {
            FiringLog log = LogReader.read(damaged(LOGS.get((int) Math.floorMod(seed, 3L)), seed), "log.csv");
            assertTrue(log.curve().points() >= 2);
            LogReview.of(TOLD, log, Glass.DGG_I);
        } catch (Refusal refusal) {
            assertTrue(refusal.getMessage().startsWith("log.csv"), refusal.getMessage());
        }
    }

    @Property(tries = 2000)
    void schedules(@ForAll long seed) {
        try {
            Schedule schedule = ScheduleFile.read(damaged(SCHEDULE, seed), "s.csv");
            assertTrue(schedule.asWritten().endS() >= 0);
        } catch (Refusal refusal) {
            assertTrue(refusal.getMessage().startsWith("s.csv"), refusal.getMessage());
        }
    }
}
