package saddlebar.cartoon.mend;

import java.util.List;

import saddlebar.model.art.DrawnLine;

/**
 * A cutline after mends that somebody agreed to.
 *
 * @param lines  in the order of the drawing
 * @param done   mends in the order in which they were done; the indexes of later ones count in the lines that earlier ones left
 * @param undone keys of agreed mends that found nothing to mend: the artwork has changed there, or another mend came first
 */
public record MendedCutline(List<DrawnLine> lines, List<Mend> done, List<String> undone) {
    public MendedCutline {
        lines = List.copyOf(lines);
        done = List.copyOf(done);
        undone = List.copyOf(undone);
    }
}
