package saddlebar.materials.paint;

import java.util.List;

import saddlebar.model.units.Require;

/**
 * Paint for the prints of one paint, from the glass back to the bowl.
 *
 * @param netMixG   on the glass
 * @param wasteG    max(so much a screen-up, a share of the net)
 * @param batches   bowls that the pot life asks for; each is weighed by itself
 * @param batchG    mix in one bowl, rounded up
 * @param powderG   to weigh in all
 * @param mediumG   to weigh in all
 * @param firedUm   thickness of a solid after firing, the thickest of its meshes; 0 where nothing prints
 */
public record PaintNeed(double netMixG, double wasteG, int batches, double batchG, double powderG, double mediumG, double firedUm) {

    /** Mix to make in all, rounding included. */
    public double mixG() {
        return batches * batchG;
    }

    /** What is left when all goes as reckoned; a record, not a saving, until it is used. */
    public double leftG() {
        return mixG() - netMixG - wasteG;
    }

    /** @param prints every stencil printed with this paint; each is one screen-up */
    public static PaintNeed of(List<PrintedArea> prints, PaintMixture mixture, PaintRules rules) {
        double net = 0;
        double fired = 0;
        long pulls = 0;
        int screens = 0;
        for (PrintedArea print : prints) {
            double wet = print.wetCm3(rules);
            net += wet * mixture.densityGPerCm3();
            pulls += print.prints();
            if (print.prints() > 0) {
                screens++;
            }
            if (wet > 0) {
                fired = Math.max(fired, mixture.firedUm(rules.wetFilmUm(print.meshVolumeCm3PerM2())));
            }
        }
        if (net == 0) {
            return new PaintNeed(0, 0, 0, 0, 0, 0, 0);
        }
        double waste = Math.max(rules.wasteGPerScreenUp() * screens, rules.wasteShare() * net);
        int batches = (int) Math.max(1, Math.ceil(pulls / (rules.pullsPerH() * rules.potLifeH()) - 1e-9));
        return weighed(net, waste, batches, fired, mixture, rules);
    }

    private static PaintNeed weighed(double net, double waste, int batches, double fired, PaintMixture mixture, PaintRules rules) {
        Require.within("batches", batches, 1, 1_000_000);
        double batch = Math.ceil((net + waste) / batches / rules.roundUpToG() - 1e-9) * rules.roundUpToG();
        double mix = batch * batches;
        return new PaintNeed(net, waste, batches, batch, mix * mixture.powderShare(), mix * (1 - mixture.powderShare()), fired);
    }
}
