package saddlebar.model.work;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.concurrent.atomic.AtomicLong;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

class WorkPartTest {
    @Property
    void tellsItsShareToTheLastUnitWhateverTheSteps(@ForAll @IntRange(max = 1000) int share, @ForAll @IntRange(min = 1, max = 1000) int units) {
        AtomicLong told = new AtomicLong();
        Work whole = new Work() {
            @Override
            public void advance(long more) {
                told.addAndGet(more);
            }

            @Override
            public void checkpoint() {
                // never stops
            }
        };
        Work part = whole.part(share, units);
        for (int done = 0; done < units; done += 7) {
            part.advance(7);
        }
        assertEquals(share, told.get());
    }
}
