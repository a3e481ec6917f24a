package saddlebar.ui.tracing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.util.List;

import org.junit.jupiter.api.Test;

class WayBackLayoutTest {
    private static Trail.Step step(String kind) {
        return new Trail.Step(kind, Instant.EPOCH, kind, "W01/1", "", "");
    }

    private final WayBackLayout layout = WayBackLayout
            .of(new Trail("", List.of(step("mix"), step("fuse"), step("pull"), step("fire"), step("pull"), step("defect")),
                    List.of(), List.of()));

    @Test
    void aColumnForEachStepOfTheWorkAndNoneForWhatIsNotThere() {
        assertEquals(5, layout.columns());
        assertEquals(2, layout.rows());
        assertEquals(new WayBackLayout.Box(0, 0), layout.boxes().get(1), "the screen comes before the mix");
        assertEquals(new WayBackLayout.Box(1, 0), layout.boxes().get(0));
        assertEquals(new WayBackLayout.Box(2, 1), layout.boxes().get(4));
    }

    @Test
    void arrowsReachEveryStepAndStayWhereNothingIs() {
        assertEquals(3, layout.next(5, -1, 0));
        assertEquals(2, layout.next(3, -1, 0));
        assertEquals(4, layout.next(2, 0, 1));
        assertEquals(2, layout.next(4, 0, -1));
        assertEquals(5, layout.next(5, 1, 0));
    }
}
