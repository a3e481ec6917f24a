package saddlebar.ui.make;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.concurrent.CancellationException;

import org.eclipse.core.runtime.NullProgressMonitor;
import org.junit.jupiter.api.Test;

class MakePartsTest {
    @Test
    void windowsAreNumberedOn() {
        assertEquals("W01", BringChoice.nextName(List.of()));
        assertEquals("W03", BringChoice.nextName(List.of("W01", "W02", "porch")));
        assertEquals("W10", BringChoice.nextName(List.of("W9", "W003")));
        assertEquals("W100", BringChoice.nextName(List.of("W99")));
    }

    @Test
    void theMonitorHearsTheWorkAndStopsIt() {
        int[] worked = {0};
        String[] said = {""};
        NullProgressMonitor monitor = new NullProgressMonitor() {
            @Override
            public void worked(int units) {
                worked[0] += units;
            }

            @Override
            public void subTask(String name) {
                said[0] = name;
            }
        };
        MonitorWork work = new MonitorWork(monitor);
        work.part(500, 10).advance(5);
        work.say("W01: pieces");
        work.checkpoint();
        assertEquals(250, worked[0]);
        assertEquals("W01: pieces", said[0]);
        monitor.setCanceled(true);
        assertThrows(CancellationException.class, work::checkpoint);
    }
}
