package saddlebar.production.colourway;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import saddlebar.colour.Appearance;
import saddlebar.colour.ColourMatch;
import saddlebar.colour.Lab;
import saddlebar.materials.cost.GlassCost;
import saddlebar.materials.cost.ReckonedLine;
import saddlebar.materials.job.PieceJob;
import saddlebar.materials.money.Prices;
import saddlebar.model.commission.Colourway;
import saddlebar.model.commission.GlassStock;
import saddlebar.model.commission.Piece;
import saddlebar.model.commission.Window;
import saddlebar.model.problem.Refusal;
import saddlebar.production.light.ColourShelf;
import saddlebar.production.light.GlassLook;
import saddlebar.production.light.LightBehind;
import saddlebar.production.light.WindowSketcher;

/**
 * Two colourways of a window side by side: each piece's glass with its difference in the light (CIEDE2000 of the bare glass, the eye used to the light), and
 * what the glass costs.
 *
 * @param pieces every piece, by number
 * @param cost   of the first
 * @param other  of the second
 */
public record ColourwayComparison(List<PieceDifference> pieces, GlassBill cost, GlassBill other) {
    /**
     * One piece.
     *
     * @param glass      name in the first, empty if none is chosen
     * @param other      name in the second
     * @param deltaE2000 empty if one of them has no glass, or a glass has no colour
     */
    public record PieceDifference(int number, String pieceId, String glass, String other, Optional<Double> deltaE2000) {
        public boolean differs() {
            return !glass.equals(other);
        }

        public Optional<ColourMatch.Verdict> verdict() {
            return deltaE2000.map(ColourMatch::verdictOf);
        }
    }

    /**
     * What the glass of a colourway costs.
     *
     * @param amount empty if it cannot be told
     * @param why    it cannot be told, in words, or empty
     */
    public record GlassBill(Optional<BigDecimal> amount, String currency, int withoutGlass, String why) {
    }

    public ColourwayComparison {
        pieces = List.copyOf(pieces);
    }

    /** What the second costs more than the first (less if negative); empty if one of them cannot be told. */
    public Optional<BigDecimal> costsMore() {
        return cost.amount().flatMap(first -> other.amount().map(second -> second.subtract(first)));
    }

    public long differing() {
        return pieces.stream().filter(PieceDifference::differs).count();
    }

    /** The greatest difference of a piece; empty if none can be told. */
    public Optional<Double> greatest() {
        return pieces.stream().flatMap(piece -> piece.deltaE2000().stream()).max(Double::compare);
    }

    public static ColourwayComparison of(Colourway first, Colourway second, LightBehind light, ColourShelf colours, Prices prices) {
        Window window = first.getWindow();
        List<PieceDifference> pieces = new ArrayList<>();
        for (Piece piece : Colourways.pieces(window)) {
            Optional<GlassStock> one = Colourways.glass(piece, first);
            Optional<GlassStock> two = Colourways.glass(piece, second);
            Optional<Double> difference = one.flatMap(glass -> lab(glass, light, colours))
                    .flatMap(lab -> two.flatMap(glass -> lab(glass, light, colours)).map(against -> ColourMatch.of(against, lab).deltaE2000()));
            pieces.add(new PieceDifference(piece.getNumber(), piece.getId(), one.map(GlassStock::getName).orElse(""),
                    two.map(GlassStock::getName).orElse(""), difference));
        }
        return new ColourwayComparison(pieces, bill(first, prices), bill(second, prices));
    }

    /** The colour of a glass of the stock, beside the bare light. */
    public static Optional<Lab> lab(GlassStock stock, LightBehind light, ColourShelf colours) {
        GlassLook look = WindowSketcher.look(stock);
        boolean known = stock.getColour() != null || !look.sheet().transmittance().isBlank();
        return known ? colours.glass(look).map(spectrum -> Appearance.of(spectrum, light.light()).lab()) : Optional.empty();
    }

    /** What the glass of a colourway costs at the day's prices. */
    public static GlassBill bill(Colourway colourway, Prices prices) {
        Window window = colourway.getWindow();
        List<PieceJob> jobs = new ArrayList<>();
        int without = 0;
        for (Piece piece : Colourways.pieces(window)) {
            Optional<GlassStock> glass = Colourways.glass(piece, colourway);
            without += glass.isEmpty() ? 1 : 0;
            try {
                jobs.add(PieceJob.of(piece, glass));
            } catch (Refusal e) {
                return new GlassBill(Optional.empty(), prices.currency(), without, e.getMessage());
            }
        }
        int alike = window.getOpening() == null ? 1 : Math.max(1, window.getOpening().getCount());
        try {
            BigDecimal amount = GlassCost.of(window.getName(), alike, jobs, prices, Map.of()).stream().map(ReckonedLine::amount).reduce(BigDecimal.ZERO,
                    BigDecimal::add);
            return new GlassBill(Optional.of(amount), prices.currency(), without, "");
        } catch (Refusal e) {
            return new GlassBill(Optional.empty(), prices.currency(), without, e.getMessage());
        }
    }
}
