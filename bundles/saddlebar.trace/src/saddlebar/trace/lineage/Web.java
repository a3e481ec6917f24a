package saddlebar.trace.lineage;

import java.util.List;

/**
 * A part of the lineage.
 *
 * @param deeds  records, in the order of time
 * @param strands which record used what another one generated
 * @param cut    whether there was more than was asked for
 */
public record Web(List<Deed> deeds, List<Strand> strands, boolean cut) {
    /**
     * One use of a thing that another record generated.
     *
     * @param later   the record that used it
     * @param earlier the record that generated it: the last to do so before
     * @param thing   name of the thing
     */
    public record Strand(Deed later, Deed earlier, String thing) {
    }

    public Web {
        deeds = List.copyOf(deeds);
        strands = List.copyOf(strands);
    }

    public List<Deed> ofKind(String kind) {
        return deeds.stream().filter(deed -> deed.kind().equals(kind)).toList();
    }
}
