package saddlebar.trace.history;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.junit.jupiter.api.Test;

import saddlebar.model.store.RecordLine;
import saddlebar.trace.suspect.WorkUnit;

class WorkHistoryTest {
    private int number;

    private RecordLine line(String when, String kind, String who, Object... settings) {
        Map<String, Object> map = new LinkedHashMap<>();
        for (int i = 0; i < settings.length; i += 2) {
            map.put((String) settings[i], settings[i + 1]);
        }
        Instant time = Instant.parse(when + "T12:00:00Z");
        number++;
        return new RecordLine("id" + number, time, time, kind, who, "w", List.of(), List.of(), map, List.of(), "", "", "", "f", number, 0);
    }

    private static List<WorkUnit> units(RecordLine... lines) {
        WorkHistory history = new WorkHistory(Optional.empty(), Optional.empty());
        List.of(lines).forEach(history::take);
        return history.units();
    }

    @Test
    void aPullAndTheFiringsAfterItAreOneUnit() {
        List<WorkUnit> units = units(
                line("2026-03-01", "pull", "A", "window", "W01", "piece", "12", "layer", "matt", "mix", "M07", "pull", 3.0, "humidity", 0.6),
                line("2026-03-02", "fire", "B", "window", "W01", "piece", "12", "layer", "matt", "firing", "F031", "shelf_place", "back left", "peak_c", 655.0),
                line("2026-03-03", "defect", "A", "window", "W01", "piece", "12", "layer", "matt", "defect", "pinholes"));
        assertEquals(1, units.size());
        WorkUnit unit = units.get(0);
        assertEquals("W01/12/matt", unit.id());
        assertTrue(unit.bad());
        assertEquals(Map.of("who", "A", "fired_by", "B", "mix", "M07", "pull", "3", "firing", "F031", "shelf_place", "back left", "when", "2026-03-01",
                "fired_on", "2026-03-02"), unit.factors());
        assertEquals(Map.of("humidity", 0.6, "pull", 3.0, "peak_c", 655.0), unit.measures());
    }

    @Test
    void aSecondPullIsAUnitOfItsOwnAndTheFlawIsTheFirstOnes() {
        List<WorkUnit> units = units(line("2026-03-01", "pull", "A", "window", "W01", "piece", "12", "layer", "matt", "mix", "M07"),
                line("2026-03-03", "defect", "A", "window", "W01", "piece", "12", "layer", "matt", "defect", "smear"),
                line("2026-03-04", "pull", "A", "window", "W01", "piece", "12", "layer", "matt", "mix", "M08"));
        assertEquals(List.of("W01/12/matt", "W01/12/matt#2"), units.stream().map(WorkUnit::id).toList());
        assertTrue(units.get(0).bad());
        assertFalse(units.get(1).bad());
        assertEquals("M08", units.get(1).factors().get("mix"));
    }

    @Test
    void aDefectWithoutALayerIsOfAllLayersOfItsPiece() {
        List<WorkUnit> units = units(line("2026-03-01", "pull", "", "window", "W01", "piece", "1", "layer", "matt"),
                line("2026-03-01", "pull", "", "window", "W01", "piece", "1", "layer", "trace"),
                line("2026-03-01", "pull", "", "window", "W01", "piece", "2", "layer", "trace"),
                line("2026-03-05", "defect", "", "window", "W01", "piece", "1", "defect", "crack"));
        assertEquals(List.of(true, true, false), units.stream().map(WorkUnit::bad).toList());
    }

    @Test
    void firingsAloneAndADefectBeforeAnythingWasDone() {
        List<WorkUnit> units = units(line("2026-01-01", "defect", "", "window", "W01", "piece", "1", "layer", "stain", "defect", "dirt"),
                line("2026-03-01", "fire", "", "window", "W01", "piece", "1", "layer", "stain", "firing", "F1"),
                line("2026-03-09", "fire", "", "window", "W01", "piece", "1", "layer", "stain", "firing", "F2"));
        assertEquals(1, units.size());
        assertFalse(units.get(0).bad());
        assertEquals("F1", units.get(0).factors().get("firing"), "the first that touched it counts");
    }

    @Test
    void whatIsSupersededAndOtherKindsAndWindowsDoNotCount() {
        RecordLine wrong = line("2026-03-01", "pull", "", "window", "W01", "piece", "1", "layer", "matt", "mix", "M1");
        RecordLine right = new RecordLine("r", wrong.time(), wrong.written(), "pull", "", "w", List.of(), List.of(),
                Map.of("window", "W01", "piece", "1", "layer", "matt", "mix", "M2"), List.of(wrong.id()), "", "", "", "f", 9, 0);
        WorkHistory history = new WorkHistory(Optional.of("smear"), Optional.of("W01"));
        List.of(wrong, right, line("2026-03-02", "pull", "", "window", "W02", "piece", "1", "layer", "matt"),
                line("2026-03-03", "defect", "", "window", "W01", "piece", "1", "layer", "matt", "defect", "dirt"), line("2026-03-03", "stencil", ""))
                .forEach(history::take);
        assertEquals(List.of("M2"), history.units().stream().map(unit -> unit.factors().get("mix")).toList());
        assertFalse(history.units().get(0).bad());
    }
}
