package saddlebar.production.make;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

import org.locationtech.jts.geom.Envelope;

import saddlebar.cartoon.Relief;
import saddlebar.production.facts.PieceFacts;

/**
 * The cutting list of a panel as a table any spreadsheet reads (RFC 4180): one row a piece with glass, size and what is painted on it, then the
 * sums of each glass. Sizes are of the glass as cut.
 */
final class CuttingList {
    private CuttingList() {
    }

    /**
     * @param painted for each piece's label the layers that print on it, in firing order
     * @param reliefs how deep inside curves are taken out
     */
    static String text(PanelPieces panel, Map<String, List<String>> painted, List<Relief> reliefs) {
        Map<Integer, String> stock = new TreeMap<>();
        for (PieceFacts piece : panel.placed().panel().pieces()) {
            stock.put(piece.number(), piece.stock());
        }
        StringBuilder text = new StringBuilder("piece,glass,width_mm,height_mm,area_cm2,edge_mm,painted,inside_curves\r\n");
        Map<String, double[]> sums = new TreeMap<>();
        for (CutPiece piece : panel.pieces()) {
            String glass = stock.getOrDefault(piece.number(), "");
            Envelope box = piece.glass().getEnvelopeInternal();
            double areaCm2 = piece.glass().getArea() / 100;
            text.append(String.format(Locale.ROOT, "%s,%s,%.1f,%.1f,%.2f,%.0f,%s,%s\r\n", cell(piece.label()), cell(glass), box.getWidth(), box.getHeight(),
                    areaCm2, piece.glass().getLength(), cell(String.join("; ", painted.getOrDefault(piece.label(), List.of()))),
                    cell(reliefs(piece.number(), reliefs))));
            double[] sum = sums.computeIfAbsent(glass, name -> new double[2]);
            sum[0]++;
            sum[1] += areaCm2;
        }
        sums.forEach((glass, sum) -> text.append(String.format(Locale.ROOT, "%s,%s,,,%.2f,,,\r\n", cell("sum of " + Math.round(sum[0])),
                cell(glass.isEmpty() ? "no glass chosen" : glass), sum[1])));
        return text.toString();
    }

    private static String reliefs(int piece, List<Relief> reliefs) {
        return String.join("; ", reliefs.stream().filter(relief -> relief.piece() == piece).map(relief -> switch (relief.kind()) {
            case RELIEF_CUTS -> relief.lines().size() + " relief cuts";
            case JOINT -> "or a joint here";
        }).toList());
    }

    /** Quoted where a comma, a quotation mark or a line end would tear the row. */
    private static String cell(String text) {
        return text.matches(".*[,\"\\r\\n].*") ? '"' + text.replace("\"", "\"\"") + '"' : text;
    }
}
