package saddlebar.trace.lineage;

import java.util.Comparator;
import java.util.List;

import saddlebar.model.index.IndexedRecord;
import saddlebar.model.index.Mention;

/**
 * One record as a node of the lineage.
 *
 * @param source number of the record book in which it stands, from 0
 * @param record what the index keeps of it
 */
public record Deed(int source, IndexedRecord record) {
    /** Of one moment, things are drawn, made, printed, fired and found in this order. */
    private static final List<String> ORDER = List.of("bring", "pieces", "stencil", "sheet", "document", "reclaim", "fuse", "mix", "pull", "fire", "glaze",
            "fix",
            "defect", "remake");

    /** By time, then by the order of the work, then by where it stands: total, so that nothing comes both before and after another. */
    static final Comparator<Deed> IN_TIME = Comparator.comparing((Deed deed) -> deed.record.time()).thenComparing(Deed::rank).thenComparing(Deed::source)
            .thenComparing(deed -> deed.record.ordinal());

    private int rank() {
        int rank = ORDER.indexOf(record.kind());
        return rank < 0 ? ORDER.size() : rank;
    }

    public String id() {
        return record.id();
    }

    public String kind() {
        return record.kind();
    }

    /** The word of a column, or nothing. */
    public String word(String column) {
        String start = column + "=";
        return record.mentions().stream().map(Mention::thing).filter(thing -> thing.startsWith(start)).findFirst()
                .map(thing -> thing.substring(start.length())).orElse("");
    }

    /** {@code W01/12/matt}, as far as it is told. */
    public String place() {
        String window = word("window");
        String piece = word("piece");
        String layer = word("layer");
        return window + (piece.isEmpty() ? "" : "/" + piece) + (layer.isEmpty() ? "" : "/" + layer);
    }

    /** Places are equal as records are: by where they stand. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Deed deed && deed.source == source && deed.record.ordinal() == record.ordinal();
    }

    @Override
    public int hashCode() {
        return 31 * source + record.ordinal();
    }
}
