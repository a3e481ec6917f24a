package saddlebar.ui.make;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;

import saddlebar.artwork.LayerGuess.Ground;
import saddlebar.production.bring.LayerPurpose;
import saddlebar.production.bring.LayerPurpose.Source;

class RoleRowsTest {
    private static LayerPurpose row(String id, String purpose) {
        return new LayerPurpose(id, id, purpose, Source.GUESSED, Ground.NAME);
    }

    @Test
    void whatIsSaidIsKeptAndWhatIsMissingIsTold() {
        RoleRows rows = new RoleRows();
        assertEquals(Optional.empty(), rows.fault());
        rows.read(List.of(row("a", "trace"), row("b", "none"), row("c", "none")));
        assertEquals(Optional.of(RoleRows.Fault.NO_CUTLINE), rows.fault());
        rows.say("b", "cutline");
        assertEquals(Optional.empty(), rows.fault());
        assertEquals(List.of(Source.GUESSED, Source.SAID, Source.GUESSED), rows.rows().stream().map(LayerPurpose::source).toList());
        rows.say("c", "trace");
        assertEquals(Optional.of(RoleRows.Fault.TWICE), rows.fault());
        rows.say("c", "glass");
        rows.say("a", "glass");
        assertEquals(Optional.empty(), rows.fault());
    }

    @Test
    void everyPurposeHasItsWord() {
        assertEquals(RoleRows.PURPOSES.size(), RoleRows.PURPOSES.stream().map(RoleTable::words).distinct().count());
    }
}
