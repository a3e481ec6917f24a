package saddlebar.production.facts;

import java.util.Objects;

import saddlebar.model.art.OutlineMm;
import saddlebar.model.units.Require;

/** A piece as the model holds it; the id goes into no made file. */
public record PieceFacts(String id, int number, OutlineMm face, OutlineMm glass) {
    public PieceFacts {
        Require.text("id", id);
        Require.within("number", number, 1, 1_000_000);
        Objects.requireNonNull(face, "face");
        Objects.requireNonNull(glass, "glass");
    }
}
