package saddlebar.trace.lineage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static saddlebar.model.store.RecordKind.BRING;
import static saddlebar.model.store.RecordKind.DEFECT;
import static saddlebar.model.store.RecordKind.FIRE;
import static saddlebar.model.store.RecordKind.FIX;
import static saddlebar.model.store.RecordKind.FUSE;
import static saddlebar.model.store.RecordKind.GLAZE;
import static saddlebar.model.store.RecordKind.MIX;
import static saddlebar.model.store.RecordKind.PIECES;
import static saddlebar.model.store.RecordKind.PULL;
import static saddlebar.model.store.RecordKind.REMAKE;
import static saddlebar.model.store.RecordKind.SHEET;
import static saddlebar.model.store.RecordKind.STENCIL;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import saddlebar.model.store.RecordKind;

class LineageTest {
    private Notebook book;

    @BeforeEach
    void begin() throws IOException {
        book = new Notebook();
    }

    @AfterEach
    void end() throws IOException {
        book.close();
    }

    private static Set<String> ids(Web web) {
        return web.deeds().stream().map(Deed::id).collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private static Set<String> back(Lineage lineage, String id) {
        return ids(lineage.back(List.of(lineage.record(id).orElseThrow()), Integer.MAX_VALUE));
    }

    private static Set<String> forward(Lineage lineage, String id) {
        return ids(lineage.forward(List.of(lineage.record(id).orElseThrow()), Integer.MAX_VALUE));
    }

    private void oneWindow() {
        book.did("b1", "2026-03-01", BRING, "sha256", "aaa").did("p1", "2026-03-01", PIECES, "made", List.of("W01-1", "W01-2"), "artworkSha256", "aaa")
                .did("st1", "2026-03-02", STENCIL, "stencilId", "S-1", "made", List.of("S-1"), "artworkSha256", "aaa", "lpi", 40.0)
                .did("sh1", "2026-03-02", SHEET, "sheetId", "SH-1", "made", List.of("SH-1"), "stencilIds", List.of("S-1"), "number", 1L)
                .did("fu1", "2026-03-03", FUSE, "screen", "S04", "sheet", "1", "sheetId", "SH-1").did("m1", "2026-03-03", MIX, "mix", "M07", "lot", "L2")
                .did("m2", "2026-03-03", MIX, "mix", "M08", "lot", "L2")
                .did("pu1", "2026-03-04T10:00:00", PULL, "piece", "1", "layer", "matt", "screen", "S04", "mix", "M07")
                .did("pu2", "2026-03-04T10:05:00", PULL, "piece", "2", "layer", "matt", "screen", "S04", "mix", "M08")
                .did("fi1", "2026-03-05", FIRE, "piece", "1", "layer", "matt", "firing", "F1")
                .did("fi2", "2026-03-05", FIRE, "piece", "2", "layer", "matt", "firing", "F1")
                .did("d1", "2026-03-06", DEFECT, "piece", "1", "layer", "matt", "defect", "thin");
    }

    @Test
    void fromAFlawToEverythingThatMadeIt() throws IOException {
        oneWindow();
        Lineage lineage = book.lineage();
        assertEquals(Set.of("b1", "p1", "st1", "sh1", "fu1", "m1", "pu1", "fi1", "d1"), back(lineage, "d1"));
        assertEquals(Set.of("m1", "pu1", "fi1", "d1"), forward(lineage, "m1"));
        assertEquals(Set.of("st1", "sh1", "fu1", "pu1", "pu2", "fi1", "fi2", "d1"), forward(lineage, "st1"));
    }

    @Test
    void aScreenIsTheOneThatWasLoadedLast() throws IOException {
        oneWindow();
        book.did("fu2", "2026-03-07", FUSE, "screen", "S04", "sheet", "9").did("pu3", "2026-03-08", PULL, "piece", "1", "layer", "matt", "screen", "S04", "mix",
                "M07");
        Lineage lineage = book.lineage();
        assertFalse(back(lineage, "pu3").contains("fu1"));
        assertTrue(back(lineage, "pu3").contains("fu2"));
        assertFalse(forward(lineage, "fu1").contains("pu3"));
        assertEquals(List.of("W01/1/matt", "W01/2/matt"),
                new Exposure(lineage).of(List.of(lineage.record("fu1").orElseThrow())).stream().map(ExposedPiece::name).toList());
    }

    @Test
    void aCorrectionStandsInThePlaceOfWhatItCorrects() throws IOException {
        oneWindow();
        book.did("m1b", "2026-03-03", MIX, "mix", "M07", "lot", "L3", "supersedes", List.of("m1"))
                .did("m1c", "2026-03-03", MIX, "mix", "M07", "lot", "L4", "supersedes", List.of("m1b"))
                .did("pu9", "2026-03-09", PULL, "piece", "2", "layer", "trace", "mixId", "m1");
        Lineage lineage = book.lineage();
        assertTrue(back(lineage, "d1").contains("m1c"));
        assertFalse(back(lineage, "d1").contains("m1"));
        assertTrue(back(lineage, "pu9").contains("m1c"), "also where it is named by the id of the first telling");
        assertTrue(forward(lineage, "m1c").contains("pu9"));
        assertEquals("m1c", lineage.record("m1").orElseThrow().id());
    }

    @Test
    void whatBecameOfEachExposedPiece() throws IOException {
        oneWindow();
        book.did("re", "2026-03-07", REMAKE, "piece", "1", "layer", "matt").did("pu4", "2026-03-08", PULL, "piece", "1", "layer", "matt", "mix", "M08")
                .did("fi4", "2026-03-09", FIRE, "piece", "1", "layer", "matt", "firing", "F2")
                .did("gl", "2026-03-10", GLAZE, "pieceIds", List.of("W01-1", "W01-2"), "panelId", "P1").did("fx", "2026-03-11", FIX, "panelId", "P1");
        Lineage lineage = book.lineage();
        List<ExposedPiece> exposed = new Exposure(lineage).ofLevel("firing", "F1");
        assertEquals(List.of("W01/1/matt remade true", "W01/2/matt fixed false"),
                exposed.stream().map(piece -> piece.name() + " " + piece.state().words() + " " + piece.bad()).toList());
        assertEquals(List.of("W01/1/matt#2 fixed", "W01/2/matt fixed"),
                new Exposure(lineage).ofLevel("mix", "M08").stream().map(piece -> piece.name() + " " + piece.state().words()).toList());
    }

    @Test
    void aFlawWithoutALayerSpeaksOfAllThatIsOnThePiece() throws IOException {
        oneWindow();
        book.did("pu5", "2026-03-05T13:00:00", PULL, "piece", "1", "layer", "trace", "mix", "M09").did("d2", "2026-03-08", DEFECT, "piece", "1", "defect",
                "crack");
        Lineage lineage = book.lineage();
        assertTrue(back(lineage, "d2").containsAll(Set.of("pu1", "pu5", "fi1")));
        assertTrue(forward(lineage, "pu5").contains("d2"));
    }

    @Test
    void aPieceThatWasSplitLeadsToTheOneThatItCameFrom() throws IOException {
        oneWindow();
        book.did("p2", "2026-03-09", PIECES, "made", List.of("W01-1a", "W01-1b"), "former",
                java.util.Map.of("W01-1a", List.of("W01-1"), "W01-1b", List.of("W01-1")));
        book.did("pu6", "2026-03-10", PULL, "pieceId", "W01-1a", "piece", "12");
        Lineage lineage = book.lineage();
        assertEquals(List.of("former=W01-1a:W01-1"), lineage.thingsFrom("former=W01-1a:", 9));
        assertTrue(forward(lineage, "p1").contains("p2"));
    }

    /** Whatever was told in whatever order: b is found on the way back from a exactly when a is found on the way forward from b. */
    @Property(tries = 25)
    void backAndForwardAreOneRelation(@ForAll long seed) throws IOException {
        try (Notebook any = new Notebook()) {
            Random chance = new Random(seed);
            List<String> told = new ArrayList<>();
            for (int i = 0; i < 30; i++) {
                String id = "r" + i;
                String when = "2026-03-" + String.format("%02d", 1 + chance.nextInt(9));
                RecordKind kind = List.of(FUSE, MIX, PULL, PULL, FIRE, DEFECT, GLAZE, STENCIL).get(chance.nextInt(8));
                List<Object> words = new ArrayList<>(
                        List.of("piece", "" + chance.nextInt(3), "screen", "S" + chance.nextInt(2), "mix", "M" + chance.nextInt(2)));
                if (chance.nextBoolean()) {
                    words.addAll(List.of("layer", chance.nextBoolean() ? "matt" : "trace"));
                }
                if (!told.isEmpty() && chance.nextInt(4) == 0) {
                    words.addAll(List.of("supersedes", List.of(told.get(chance.nextInt(told.size())))));
                }
                if (!told.isEmpty() && chance.nextInt(4) == 0) {
                    words.addAll(List.of("aboutIds", List.of(told.get(chance.nextInt(told.size())))));
                }
                any.did(id, when, kind, words.toArray());
                told.add(id);
            }
            Lineage lineage = any.lineage();
            List<Deed> deeds = told.stream().map(id -> lineage.record(id).orElseThrow()).distinct().filter(deed -> told.contains(deed.id())).toList();
            for (Deed a : deeds) {
                if (!lineage.record(a.id()).orElseThrow().equals(a)) {
                    continue; // in a ring of corrections nothing stands
                }
                Set<String> back = back(lineage, a.id());
                for (Deed b : deeds) {
                    if (lineage.record(b.id()).orElseThrow().equals(b)) {
                        assertEquals(back.contains(b.id()), forward(lineage, b.id()).contains(a.id()), a.id() + " and " + b.id());
                    }
                }
            }
        }
    }
}
