package saddlebar.report.document;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

import org.osgi.service.component.annotations.Component;

import saddlebar.model.commission.Paint;
import saddlebar.model.commission.Panel;
import saddlebar.model.commission.Piece;
import saddlebar.model.commission.Window;
import saddlebar.report.document.Leaf.Column;

/** What was made, as the records say: pieces, paints, firings, photographs. */
@Component(service = ReportSection.class)
public final class AsMadeSection implements ReportSection {
    @Override
    public Set<ReportKind> kinds() {
        return Set.of(ReportKind.DOSSIER);
    }

    @Override
    public int order() {
        return 400;
    }

    @Override
    public boolean speaks(ReportMatter matter) {
        return !matter.windows().isEmpty();
    }

    @Override
    public void write(ReportMatter matter, Leaf leaf) {
        Words words = leaf.words();
        leaf.heading(words.of("as.made"));
        for (Window window : matter.windows()) {
            List<List<String>> rows = new ArrayList<>();
            for (Panel panel : window.getPanels()) {
                for (Piece piece : panel.getPieces().stream().filter(p -> !p.isRetired() && p.getNet() != null && !p.getNet().isEmpty())
                        .sorted(Comparator.comparingInt(Piece::getNumber)).toList()) {
                    double[] box = piece.getNet().boundsMm();
                    rows.add(List.of(String.valueOf(piece.getNumber()), PieceWords.glass(piece).isEmpty() ? "\u2013" : PieceWords.glass(piece),
                            words.size(box[2] - box[0], box[3] - box[1]), PieceWords.layers(piece)));
                }
            }
            if (!rows.isEmpty()) {
                leaf.subheading((window.getName() + "  " + Leaf.text(window.getTitle())).strip());
                leaf.table(List.of(words.of("piece"), words.of("glass"), words.of("size"), words.of("painted")),
                        List.of(Column.KEY, Column.TEXT, Column.NARROW, Column.TEXT), rows);
            }
        }
        Map<String, Paint> paints = new TreeMap<>();
        matter.windows().forEach(window -> window.getPanels().forEach(panel -> panel.getLayers().stream().filter(layer -> layer.getPaint() != null)
                .forEach(layer -> paints.put(Leaf.text(layer.getPaint().getName()), layer.getPaint()))));
        if (!paints.isEmpty()) {
            leaf.heading(words.of("paints"));
            leaf.table(List.of(words.of("paint"), words.of("family"), words.of("matures"), words.of("holds")),
                    List.of(Column.TEXT, Column.TEXT, Column.NARROW, Column.TEXT),
                    paints.values().stream().map(paint -> List.of(Leaf.text(paint.getName()), Leaf.text(paint.getFamily()),
                            paint.getMaturingToC() > 0
                                    ? words.number(paint.getMaturingFromC(), 0) + " \u2013 " + words.number(paint.getMaturingToC(), 0) + " °C"
                                    : "\u2013",
                            paint.isContainsLead() ? words.of("lead") : words.of("no.lead"))).toList());
        }
        List<ReportMatter.Deed> firings = matter.deeds().stream().filter(deed -> deed.kind().equals("fire")).toList();
        leaf.heading(words.of("firings"));
        if (firings.isEmpty()) {
            leaf.paragraph(words.of("firings.none"));
        } else {
            Map<String, int[]> runs = new LinkedHashMap<>();
            Map<String, ReportMatter.Deed> first = new LinkedHashMap<>();
            for (ReportMatter.Deed deed : firings) {
                String name = deed.word("firing").isEmpty() ? words.shortDay(deed.day()) : deed.word("firing");
                runs.computeIfAbsent(name, n -> new int[1])[0]++;
                first.putIfAbsent(name, deed);
            }
            leaf.table(List.of(words.of("firing"), words.of("day"), words.of("schedule"), words.of("peak"), words.of("records")),
                    List.of(Column.TEXT, Column.NARROW, Column.TEXT, Column.NUMBER, Column.NUMBER),
                    first.entrySet().stream()
                            .map(entry -> List.of(entry.getKey(), words.shortDay(entry.getValue().day()), entry.getValue().word("schedule"),
                                    entry.getValue().word("peak_c"),
                                    String.valueOf(runs.get(entry.getKey())[0])))
                            .toList());
        }
        if (!matter.photos().isEmpty()) {
            leaf.heading(words.of("photographs"));
            for (int from = 0; from < matter.photos().size(); from += 2) {
                List<ReportMatter.Photo> row = matter.photos().subList(from, Math.min(matter.photos().size(), from + 2));
                leaf.figures(row.stream().map(ReportMatter.Photo::picture).toList(), row.stream().map(ReportMatter.Photo::name).toList(), 84.0 * row.size(),
                        110);
            }
        }
    }
}
