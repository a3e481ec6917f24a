package saddlebar.stencil.mesh;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;

/** Beats of bands with a ruling, by closed forms. */
class EngineBandsTest {
    /** At 0 degrees only the ruling's own frequencies down the sheet count: 40/25.4 = 1.5748 a mm against 1/0.66 = 1.5152: 1/0.0597 = 16.76 mm. */
    @Test
    void bandsNearTheRuling() {
        EngineBands found = EngineBands.slowest(0.66, 40, 0);
        assertEquals(1 / (40 / 25.4 - 1 / 0.66), found.beatMm(), 1e-6);
        assertTrue(found.slow());
        assertTrue(EngineBands.advice(List.of(0.66), 40, 0).orElseThrow().message().contains("16.8 mm"));
    }

    @Test
    void bandsInStepAndFarOff() {
        assertTrue(Double.isInfinite(EngineBands.slowest(0.635, 40, 0).beatMm()), "the ruling's own period, 25.4/40");
        assertFalse(EngineBands.slowest(0.66, 40, 22.5).slow(), "turned away from the feed");
        assertTrue(EngineBands.advice(List.of(), 40, 0).isEmpty());
        assertTrue(EngineBands.advice(List.of(38.0), 40, 22.5).isEmpty(), "bands of their own, far slower than dots");
    }
}
