package saddlebar.materials.job;

import java.math.BigDecimal;
import java.util.Optional;

import saddlebar.model.commission.GlassStock;
import saddlebar.model.commission.Piece;
import saddlebar.model.problem.Refusal;
import saddlebar.model.units.Require;

/**
 * A piece to cut.
 *
 * @param glass      name of its glass, empty if none was chosen
 * @param pricePerM2 of that glass, in the studio's currency; empty if its table has none
 */
public record PieceJob(int number, String glass, Optional<BigDecimal> pricePerM2, double netAreaMm2, double perimeterMm, double thicknessMm,
        double densityKgPerM3) {
    public PieceJob {
        Require.within("netAreaMm2", netAreaMm2, 0, 1e9);
        Require.within("perimeterMm", perimeterMm, 0, 1e9);
        Require.within("thicknessMm", thicknessMm, 0.1, 100);
        Require.within("densityKgPerM3", densityKgPerM3, 500, 10_000);
    }

    /**
     * A piece of the commission, cut from a glass of the stock.
     *
     * @throws Refusal if the table of that glass is out of range
     */
    public static PieceJob of(Piece piece, Optional<GlassStock> chosen) {
        chosen.filter(glass -> !(glass.getThicknessMm() >= 0.1 && glass.getThicknessMm() <= 100 && glass.getDensityKgPerM3() >= 500
                && glass.getDensityKgPerM3() <= 10_000)).ifPresent(glass -> {
                    throw new Refusal("glass " + glass.getName(), "its thickness or density is out of range",
                            "put in 0.1 to 100 mm and 500 to 10000 kg/m3");
                });
        return new PieceJob(piece.getNumber(), chosen.map(GlassStock::getName).orElse(""), chosen.map(GlassStock::getPricePerM2), piece.getNetAreaMm2(),
                piece.getPerimeterMm(), chosen.map(GlassStock::getThicknessMm).orElse(3.0), chosen.map(GlassStock::getDensityKgPerM3).orElse(2500.0));
    }
}
