package saddlebar.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import saddlebar.model.store.Access;
import saddlebar.model.store.CommissionFolder;
import saddlebar.model.store.NewCommission;
import saddlebar.model.store.RecordReading;
import saddlebar.model.store.StudioLibrary;
import saddlebar.model.work.Work;
import saddlebar.production.record.DeedBook;
import saddlebar.production.record.DeedReader;
import saddlebar.trace.history.WorkHistory;
import saddlebar.trace.suspect.Findings;
import saddlebar.trace.suspect.Standing;
import saddlebar.trace.suspect.SuspectSearch;

/** From the demonstration notebooks to suspects: the planted causes come out, and where nothing is wrong nothing is accused. */
class YearOfPrintsTest {
    private static final Path BOOKS = Path.of("../../demo-projects/year-of-prints").toAbsolutePath().normalize();
    @TempDir
    private Path temp;

    private Findings findings(String book, Optional<String> kind) throws IOException {
        Path folder = temp.resolve("year" + kind.orElse(""));
        StudioLibrary tables = StudioLibrary.of(Path.of("../../shared").toAbsolutePath().normalize());
        DeedReader.Table table = new DeedReader(Instant.parse("2026-12-31T00:00:00Z"), ZoneOffset.UTC).table(BOOKS.resolve(book));
        assertEquals(List.of(), table.refused());
        try (CommissionFolder made = CommissionFolder.create(folder, NewCommission.titled("A year").stockedFrom(tables))) {
            DeedBook.Entered entered = new DeedBook(made, true).enter(table.deeds(), true);
            assertEquals(List.of(), entered.warnings());
            assertTrue(entered.records() > 1_900);
        }
        WorkHistory history = new WorkHistory(kind, Optional.empty());
        try (CommissionFolder open = CommissionFolder.open(folder, Access.READ); RecordReading reading = open.records().read()) {
            reading.forEach(history::take, Work.UNWATCHED);
            assertEquals(List.of(), reading.problems());
        }
        return SuspectSearch.withDefaults().among(history.units());
    }

    private static Set<String> found(Findings findings) {
        return findings.suspects().stream().filter(s -> s.standing() == Standing.LEADING || s.standing() == Standing.ALSO)
                .flatMap(s -> s.levels().stream()).map(level -> level.factor() + "=" + level.name()).collect(Collectors.toSet());
    }

    @Test
    void thePlantedCausesComeOut() throws IOException {
        Findings all = findings("notebook.csv", Optional.empty());
        assertEquals(960, all.units());
        assertTrue(found(all).containsAll(Set.of("screen=S07", "mix=M041", "shelf_place=back left")), found(all).toString());
        Set<String> first = all.suspects().stream().limit(3).flatMap(s -> s.levels().stream()).map(level -> level.factor() + "=" + level.name())
                .collect(Collectors.toSet());
        assertTrue(first.containsAll(Set.of("screen=S07", "mix=M041", "shelf_place=back left")), "not on top: " + first);
        assertEquals(3, all.suspects().stream().filter(s -> s.standing() == Standing.LEADING || s.standing() == Standing.ALSO).count(), found(all).toString());
        Findings cold = findings("notebook.csv", Optional.of("matt rubs off"));
        assertEquals(Set.of("shelf_place=back left"), found(cold));
        assertEquals("peak_c", cold.measures().get(0).name());
        assertTrue(cold.measures().get(0).differs() && cold.measures().get(0).medianBad() < cold.measures().get(0).medianGood());
    }

    @Test
    void whereNothingWasWrongNothingIsAccused() throws IOException {
        assertEquals(Set.of(), found(findings("notebook-nothing-wrong.csv", Optional.empty())));
    }
}
