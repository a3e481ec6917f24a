package saddlebar.ui.easel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import saddlebar.ui.easel.RulerScale.Tick;
import saddlebar.ui.easel.RulerScale.Unit;

class RulerScaleTest {
    private static List<String> labels(RulerScale scale, double fromMm, double toMm, double ptPerMm) {
        return scale.ticks(fromMm, toMm, ptPerMm).stream().map(Tick::label).filter(label -> !label.isEmpty()).toList();
    }

    @Test
    void millimetresGoInOnesTwosAndFives() {
        assertEquals(List.of("0", "50", "100", "150", "200"), labels(RulerScale.of(Unit.MM, 1, 50), 0, 200, 1));
        assertEquals(List.of("-2", "0", "2"), labels(RulerScale.of(Unit.MM, 30, 50), -3, 3, 30));
        assertEquals(List.of("0.0", "0.5", "1").subList(1, 3), labels(RulerScale.of(Unit.MM, 120, 50), 0.2, 1, 120));
    }

    @Test
    void inchesGoInHalvesDownToSixteenths() {
        double ptPerMm = 96 / 25.4;
        assertEquals(List.of("0", "1", "2"), labels(RulerScale.of(Unit.INCH, ptPerMm, 56), 0, 51, ptPerMm));
        assertEquals(List.of("0", "1/4", "1/2", "3/4", "1", "1 1/4"), labels(RulerScale.of(Unit.INCH, 3 * ptPerMm, 56), 0, 32, 3 * ptPerMm));
        assertEquals(List.of("1/16", "1/8", "3/16"), labels(RulerScale.of(Unit.INCH, 10 * ptPerMm, 56), 1, 5, 10 * ptPerMm));
        assertEquals(List.of("-1/2"), labels(RulerScale.of(Unit.INCH, 2 * ptPerMm, 56), -13, -1, 2 * ptPerMm));
    }

    @Property
    void labelsNeverCrowdAndNeverFail(@ForAll @DoubleRange(min = Viewport.LEAST_PT_PER_MM, max = Viewport.MOST_PT_PER_MM) double ptPerMm,
            @ForAll Unit unit, @ForAll @DoubleRange(min = -1000, max = 1000) double fromMm) {
        RulerScale scale = RulerScale.of(unit, ptPerMm, 50);
        List<Tick> ticks = scale.ticks(fromMm, fromMm + 800 / ptPerMm, ptPerMm);
        double last = Double.NEGATIVE_INFINITY;
        double lastTick = Double.NEGATIVE_INFINITY;
        for (Tick tick : ticks) {
            assertTrue((tick.atMm() - lastTick) * ptPerMm > 3.9 || lastTick == Double.NEGATIVE_INFINITY, "ticks crowd");
            lastTick = tick.atMm();
            if (!tick.label().isEmpty()) {
                assertTrue((tick.atMm() - last) * ptPerMm > 49.9, "labels crowd");
                last = tick.atMm();
            }
        }
        assertTrue(ticks.size() < 260);
    }
}
