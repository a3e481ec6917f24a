package saddlebar.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

import saddlebar.materials.money.Prices;
import saddlebar.model.commission.Approval;
import saddlebar.model.commission.Colourway;
import saddlebar.model.commission.GlassStock;
import saddlebar.model.commission.Piece;
import saddlebar.model.commission.Window;
import saddlebar.model.store.CommissionFolder;
import saddlebar.production.colourway.ColourwayApproval;
import saddlebar.production.colourway.ColourwayComparison;
import saddlebar.production.colourway.ColourwayComparison.GlassBill;
import saddlebar.production.colourway.ColourwayComparison.PieceDifference;
import saddlebar.production.colourway.Colourways;
import saddlebar.production.light.LightBehind;

/** What {@code colourway} answers, as JSON documents and in words. */
final class ColourwayAnswer {
    private ColourwayAnswer() {
    }

    /** All colourways of some windows. */
    record Listed(List<WindowRow> windows) {
        List<String> words() {
            List<String> words = new ArrayList<>();
            for (WindowRow window : windows) {
                words.add(window.window + (window.colourways.isEmpty() ? ": no colourways yet" : ""));
                for (ColourwayRow row : window.colourways) {
                    words.add("  " + row.name + (row.chosen ? ", the one that is made" : "") + (row.approved
                            ? ", approved on " + row.approvedOn + (row.approvedBy == null ? "" : " by " + row.approvedBy)
                            : "") + (row.withoutGlass == 0 ? "" : ", " + row.withoutGlass + " without glass"));
                    words.add("    glass " + (row.cost == null ? "cannot be priced: " + row.why : row.cost + " " + row.currency) + ": "
                            + String.join(", ", row.glass.stream().map(glass -> glass.name + " " + glass.pieces).toList()));
                }
            }
            return words;
        }
    }

    record WindowRow(String window, List<ColourwayRow> colourways) {
    }

    record ColourwayRow(String name, boolean chosen, boolean approved, String approvedOn, String approvedBy, int pieces, int withoutGlass,
            List<GlassRow> glass, String cost, String currency, String why) {
    }

    record GlassRow(String name, int pieces, double areaMm2) {
    }

    static Listed listed(CommissionFolder commission, List<Window> windows, Prices prices) {
        List<WindowRow> rows = new ArrayList<>();
        for (Window window : windows) {
            rows.add(new WindowRow(window.getName(), window.getColourways().stream().map(one -> row(commission, window, one, prices)).toList()));
        }
        return new Listed(rows);
    }

    private static ColourwayRow row(CommissionFolder commission, Window window, Colourway colourway, Prices prices) {
        Map<String, GlassRow> byGlass = new TreeMap<>();
        List<Piece> pieces = Colourways.pieces(window);
        for (Piece piece : pieces) {
            Colourways.glass(piece, colourway).map(GlassStock::getName).ifPresent(name -> byGlass.merge(name, new GlassRow(name, 1,
                    piece.getNetAreaMm2()), (one, other) -> new GlassRow(name, one.pieces + other.pieces, one.areaMm2 + other.areaMm2)));
        }
        GlassBill bill = ColourwayComparison.bill(colourway, prices);
        Optional<Approval> approval = ColourwayApproval.of(colourway, commission.commission());
        return new ColourwayRow(Colourways.name(colourway), window.getChosen() == colourway, colourway.isApproved(),
                colourway.getApprovedOn() == null ? null : colourway.getApprovedOn().toString(), approval.map(Approval::getBy).orElse(null), pieces.size(),
                bill.withoutGlass(), List.copyOf(byGlass.values()), bill.amount().map(amount -> amount.toPlainString()).orElse(null), bill.currency(),
                bill.why().isEmpty() ? null : bill.why());
    }

    /** Two colourways side by side. */
    record Compared(String window, String first, String second, String light, long differing, Double greatestDeltaE2000, String firstCost,
            String secondCost, String costsMore, String currency, List<PieceRow> pieces, List<String> notes) {
        List<String> words() {
            List<String> words = new ArrayList<>();
            words.add(window + ": " + second + " beside " + first + ", light " + light);
            for (PieceRow piece : pieces) {
                if (!piece.first.equals(piece.second)) {
                    words.add(String.format(Locale.ROOT, "  piece %-4d %s -> %s%s", piece.number, named(piece.first), named(piece.second),
                            piece.deltaE2000 == null ? "" : String.format(Locale.ROOT, ", CIEDE2000 %.1f (%s)", piece.deltaE2000, piece.verdict)));
                }
            }
            words.add(differing == 0 ? "No piece differs." : differing + " of " + pieces.size() + " pieces differ.");
            if (costsMore != null) {
                words.add("Glass " + firstCost + " and " + secondCost + " " + currency + ": " + second + (costsMore.startsWith("-")
                        ? " costs " + costsMore.substring(1) + " less."
                        : " costs " + costsMore + " more."));
            }
            notes.forEach(note -> words.add("Note: " + note));
            return words;
        }

        private static String named(String glass) {
            return glass.isEmpty() ? "no glass" : glass;
        }
    }

    record PieceRow(int number, String first, String second, Double deltaE2000, String verdict) {
    }

    static Compared compared(String window, String first, String second, LightBehind light, ColourwayComparison comparison) {
        List<PieceRow> pieces = new ArrayList<>();
        for (PieceDifference piece : comparison.pieces()) {
            pieces.add(new PieceRow(piece.number(), piece.glass(), piece.other(), piece.deltaE2000().orElse(null),
                    piece.verdict().map(verdict -> verdict.words()).orElse(null)));
        }
        List<String> notes = new ArrayList<>();
        note(first, comparison.cost(), notes);
        note(second, comparison.other(), notes);
        return new Compared(window, first, second, light.word(), comparison.differing(), comparison.greatest().orElse(null), plain(comparison.cost()),
                plain(comparison.other()), comparison.costsMore().map(more -> more.toPlainString()).orElse(null), comparison.cost().currency(), pieces,
                notes);
    }

    private static void note(String name, GlassBill bill, List<String> notes) {
        if (!bill.why().isEmpty()) {
            notes.add("the glass of " + name + " cannot be priced: " + bill.why() + ".");
        }
        if (bill.withoutGlass() > 0) {
            notes.add(name + " has " + bill.withoutGlass() + (bill.withoutGlass() == 1 ? " piece" : " pieces") + " without glass; they are not in its cost.");
        }
    }

    private static String plain(GlassBill bill) {
        return bill.amount().map(amount -> amount.toPlainString()).orElse(null);
    }
}
