package saddlebar.production.facts;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

import saddlebar.model.problem.Problem;
import saddlebar.model.units.Require;

/**
 * A commission as making sees it.
 *
 * @param folder     where it lies; made things go to {@code made/} in it
 * @param title      for labels
 * @param number     the studio's number for it, may be empty
 * @param papers     sizes of sheets in use
 * @param printer    the one that the sheets go to
 * @param sheetGapMm between stencils on a sheet
 * @param windows    those to make
 * @param problems   what was found while reading the model, such as a layer without paint
 */
public record CommissionFacts(Path folder, String title, String number, List<PaperFacts> papers, PrinterFacts printer, double sheetGapMm,
        List<WindowFacts> windows,
        List<Problem> problems) {
    public CommissionFacts {
        Objects.requireNonNull(folder, "folder");
        Require.text("title", title);
        Objects.requireNonNull(number, "number");
        papers = List.copyOf(papers);
        Objects.requireNonNull(printer, "printer");
        Require.within("sheetGapMm", sheetGapMm, 0, 100);
        windows = List.copyOf(windows);
        problems = List.copyOf(problems);
    }

    /** Panels with the windows they are in. */
    public Stream<PlacedPanel> panels() {
        return windows.stream().flatMap(window -> window.panels().stream().map(panel -> new PlacedPanel(window, panel)));
    }

    /** A panel and its window. */
    public record PlacedPanel(WindowFacts window, PanelFacts panel) {
        public String label() {
            return window.label(panel);
        }
    }

    /** Words for sheets and lists. */
    public String label() {
        return number.isBlank() ? title : number + " " + title;
    }
}
