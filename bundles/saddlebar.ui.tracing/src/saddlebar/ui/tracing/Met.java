package saddlebar.ui.tracing;

import java.util.List;

import saddlebar.trace.lineage.ExposedPiece;

/** All pieces that met one thing. */
record Met(String thing, List<ExposedPiece> pieces) {
    static final Met NONE = new Met("", List.of());

    Met {
        pieces = List.copyOf(pieces);
    }
}
