package saddlebar.materials.job;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

import saddlebar.materials.metal.PanelWeight;
import saddlebar.materials.metal.SolderBead;

/**
 * A panel to put together.
 *
 * @param leaded    in lead came; else in copper foil
 * @param joints    came or foil
 * @param solder    that holds it
 * @param widthMm   of its outline
 * @param areaM2    of its outline
 * @param edgeMm    around its outline
 * @param innerMm   of all joints between pieces
 * @param jointsMm  each joint between two pieces, for the cutting plan of came
 */
public record PanelJob(String name, boolean leaded, Metal joints, Solder solder, double widthMm, double heightMm, double areaM2, double edgeMm, double innerMm,
        List<Double> jointsMm, List<PieceJob> pieces, List<LayerJob> layers) {
    /** Came or foil by the metre, prices in the studio's currency. */
    public record Metal(String name, double widthMm, double massGPerM, Optional<BigDecimal> pricePerM, Optional<Double> soldLengthMm) {
    }

    /** Solder, price in the studio's currency. */
    public record Solder(String name, boolean lead, double densityGPerCm3, Optional<BigDecimal> pricePerKg) {
    }

    public PanelJob {
        jointsMm = List.copyOf(jointsMm);
        pieces = List.copyOf(pieces);
        layers = List.copyOf(layers);
    }

    /** Lengths of came around the panel: its four sides, or one run that is bent where it is no rectangle. */
    public List<Double> frameMm() {
        return Math.abs(edgeMm - 2 * (widthMm + heightMm)) < 1 ? List.of(widthMm, widthMm, heightMm, heightMm) : List.of(edgeMm);
    }

    public double perimetersMm() {
        return pieces.stream().mapToDouble(PieceJob::perimeterMm).sum();
    }

    public double glassKg() {
        return pieces.stream().mapToDouble(piece -> PanelWeight.glassKg(piece.netAreaMm2(), piece.thicknessMm(), piece.densityKgPerM3())).sum();
    }

    /** Solder to melt in g, waste included. Leaded panels: a joint at each end of every length of came, both faces, 1 g each (studio setting). */
    public double solderG() {
        return leaded
                ? jointsMm.size() * 2 * 2 * (1 + SolderBead.WASTE_SHARE)
                : SolderBead.massG(innerMm, edgeMm, solder.densityGPerCm3());
    }

    public PanelWeight weight() {
        double stays = solderG() / (1 + SolderBead.WASTE_SHARE) / 1000;
        return leaded
                ? PanelWeight.leaded(glassKg(), (innerMm + edgeMm) / 1000 * joints.massGPerM() / 1000 + stays)
                : PanelWeight.foiled(glassKg(), perimetersMm() / 1000 * joints.massGPerM() / 1000 + stays);
    }
}
