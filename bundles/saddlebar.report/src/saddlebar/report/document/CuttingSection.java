package saddlebar.report.document;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

import org.osgi.service.component.annotations.Component;

import saddlebar.model.commission.Panel;
import saddlebar.model.commission.Piece;
import saddlebar.model.commission.Placement;
import saddlebar.model.commission.Sheet;
import saddlebar.model.commission.Window;
import saddlebar.report.document.Leaf.Column;

/** For the bench: what is cut from which glass, where its pattern lies, and which sheets of film there are. */
@Component(service = ReportSection.class)
public final class CuttingSection implements ReportSection {
    @Override
    public Set<ReportKind> kinds() {
        return Set.of(ReportKind.WORKSHOP);
    }

    @Override
    public int order() {
        return 200;
    }

    @Override
    public boolean speaks(ReportMatter matter) {
        return matter.windows().stream().anyMatch(window -> window.getPanels().stream().anyMatch(panel -> !panel.getPieces().isEmpty()));
    }

    @Override
    public void write(ReportMatter matter, Leaf leaf) {
        Words words = leaf.words();
        leaf.heading(words.of("cutting.list"));
        leaf.caution(words.of("caution.cutting"));
        for (Window window : matter.windows()) {
            for (Panel panel : window.getPanels()) {
                List<Piece> pieces = panel.getPieces().stream().filter(piece -> !piece.isRetired() && piece.getNet() != null && !piece.getNet().isEmpty())
                        .sorted(Comparator.comparingInt(Piece::getNumber)).toList();
                if (pieces.isEmpty()) {
                    continue;
                }
                leaf.subheading((window.getName() + " " + Leaf.text(panel.getName()) + "  " + Leaf.text(window.getTitle())).strip());
                List<List<String>> rows = new ArrayList<>();
                Map<String, double[]> sums = new TreeMap<>();
                for (Piece piece : pieces) {
                    double[] box = piece.getNet().boundsMm();
                    String glass = PieceWords.glass(piece);
                    rows.add(List.of(String.valueOf(piece.getNumber()), glass.isEmpty() ? "\u2013" : glass, words.size(box[2] - box[0], box[3] - box[1]),
                            words.number(piece.getNetAreaMm2() / 100, 1), PieceWords.layers(piece), PieceWords.sheet(matter, window, piece)));
                    double[] sum = sums.computeIfAbsent(glass.isEmpty() ? words.of("no.glass") : glass, name -> new double[2]);
                    sum[0]++;
                    sum[1] += piece.getNetAreaMm2() / 100;
                }
                leaf.table(List.of(words.of("piece"), words.of("glass"), words.of("size"), words.of("cm2"), words.of("painted"), words.of("glass.sheet")),
                        List.of(Column.KEY, Column.TEXT, Column.NARROW, Column.NUMBER, Column.TEXT, Column.NARROW), rows);
                List<List<String>> perGlass = new ArrayList<>();
                sums.forEach((glass, sum) -> perGlass.add(List.of(glass, words.number(sum[0], 0), words.number(sum[1], 1))));
                leaf.table(List.of(words.of("glass"), words.of("pieces"), words.of("cm2")), List.of(Column.TEXT, Column.NUMBER, Column.NUMBER), perGlass);
            }
        }
        leaf.heading(words.of("patterns"));
        leaf.paragraph(words.of("patterns.where"));
        if (!matter.sheets().isEmpty()) {
            leaf.heading(words.of("glass.sheets"));
            leaf.table(List.of(words.of("glass"), words.of("glass.sheet"), words.of("size"), words.of("use"), words.of("pieces")),
                    List.of(Column.TEXT, Column.NARROW, Column.NARROW, Column.NUMBER, Column.TEXT),
                    matter.sheets().stream()
                            .map(sheet -> List.of(sheet.glass(), sheet.toBuy() ? words.of("to.buy") : sheet.name(),
                                    words.size(sheet.widthMm(), sheet.heightMm()),
                                    words.number(100 * sheet.use(), 0) + " %", String.join(", ", sheet.pieces())))
                            .toList());
        }
        List<Sheet> sheets = matter.commission().getSheets().stream().sorted(Comparator.comparingInt(Sheet::getNumber)).toList();
        if (!sheets.isEmpty()) {
            leaf.heading(words.of("film.sheets"));
            List<List<String>> rows = new ArrayList<>();
            for (Sheet sheet : sheets) {
                rows.add(List.of(String.valueOf(sheet.getNumber()), Leaf.text(sheet.getPaper()), words.known("process.", Leaf.text(sheet.getProcessKey())),
                        String.join(", ", sheet.getPlacements().stream().map(Placement::getStencil).filter(stencil -> stencil != null).map(PieceWords::stencil)
                                .toList())));
            }
            leaf.table(List.of(words.of("sheet"), words.of("paper"), words.of("process"), words.of("stencils")),
                    List.of(Column.KEY, Column.NARROW, Column.NARROW, Column.TEXT), rows);
        }
    }
}
