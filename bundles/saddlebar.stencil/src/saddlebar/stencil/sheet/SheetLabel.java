package saddlebar.stencil.sheet;

import java.util.Objects;

import saddlebar.model.units.Require;

/**
 * What a sheet is called.
 *
 * @param commission name of the commission
 * @param number     1 for the first sheet
 * @param of         number of sheets in all
 * @param note       more that a person at the press should read, such as paint and mesh; may be empty
 */
public record SheetLabel(String commission, int number, int of, String note) {
    public SheetLabel {
        Require.text("commission", commission);
        Require.within("of", of, 1, 1_000_000);
        Require.within("number", number, 1, of);
        Objects.requireNonNull(note, "note");
    }
}
