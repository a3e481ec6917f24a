package saddlebar.cartoon.mend;

import java.util.List;
import java.util.stream.IntStream;

import saddlebar.model.art.DrawnLine;
import saddlebar.model.units.Require;

/**
 * A cutline after mends that somebody agreed to.
 *
 * @param lines  in the order of the drawing
 * @param done   mends in the order in which they were done; the indexes of later ones count in the lines that earlier ones left
 * @param origins for each line the index of the drawn line it comes from, ascending
 * @param undone keys of agreed mends that found nothing to mend: the artwork has changed there, or another mend came first
 */
public record MendedCutline(List<DrawnLine> lines, List<Integer> origins, List<Mend> done, List<String> undone) {
    public MendedCutline {
        lines = List.copyOf(lines);
        origins = List.copyOf(origins);
        Require.within("origins", origins.size(), lines.size(), lines.size());
        done = List.copyOf(done);
        undone = List.copyOf(undone);
    }

    /** Nothing agreed to, nothing done. */
    public static MendedCutline asDrawn(List<DrawnLine> lines) {
        return new MendedCutline(lines, IntStream.range(0, lines.size()).boxed().toList(), List.of(), List.of());
    }

    /** Index of the first mended line that comes from the drawn line of this index or a later one. */
    public int firstOf(int drawn) {
        int first = 0;
        while (first < origins.size() && origins.get(first) < drawn) {
            first++;
        }
        return first;
    }
}
