package saddlebar.production.make;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;

import saddlebar.model.units.Require;
import saddlebar.report.truesize.OutlineFile;
import saddlebar.report.truesize.PrintPaper;

/**
 * What is to be printed at full size.
 *
 * @param windows   names; empty for all
 * @param kinds     at least one
 * @param paper     sheets or a roll
 * @param overlapMm strip that neighbouring pages share, 0 to 50
 * @param kerfMm    what a machine's cutter takes away, 0 to 5; for outlines only
 * @param folder    where the files go; made if absent
 * @param replace   whether files of the same names may be replaced
 */
public record FullSizeRequest(List<String> windows, List<FullSizeKind> kinds, PrintPaper paper, double overlapMm, double kerfMm, Path folder,
        boolean replace) {
    public FullSizeRequest {
        windows = List.copyOf(windows);
        kinds = List.copyOf(kinds);
        Objects.requireNonNull(paper, "paper");
        Require.within("overlapMm", overlapMm, 0, 50);
        Require.within("kerfMm", kerfMm, 0, OutlineFile.MOST_KERF_MM);
        Objects.requireNonNull(folder, "folder");
    }
}
