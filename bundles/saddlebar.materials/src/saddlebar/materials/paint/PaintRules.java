package saddlebar.materials.paint;

import saddlebar.model.units.Require;

/**
 * A studio's habits with paint. All defaults are common practice or studio settings without a source.
 *
 * @param transfer          share of the mesh's theoretical volume that reaches the glass, 0.1 to 1; usual 0.5 to 0.7
 * @param wasteGPerScreenUp mix lost each time a screen is put up: bowl, screen, first pulls
 * @param wasteShare        the least that is lost, as a share of the net mix
 * @param roundUpToG        batches are weighed to whole steps of this, rounded up
 * @param potLifeH          hours in which a mix must be used up
 * @param pullsPerH         pulls printed in an hour, by which the pot life bounds a mix
 */
public record PaintRules(double transfer, double wasteGPerScreenUp, double wasteShare, double roundUpToG, double potLifeH, double pullsPerH) {
    public static final PaintRules USUAL = new PaintRules(0.6, 15, 0.3, 5, 8, 30);

    public PaintRules {
        Require.within("transfer", transfer, 0.1, 1);
        Require.within("wasteGPerScreenUp", wasteGPerScreenUp, 0, 1000);
        Require.within("wasteShare", wasteShare, 0, 5);
        Require.within("roundUpToG", roundUpToG, 0.01, 1000);
        Require.within("potLifeH", potLifeH, 0.1, 1000);
        Require.within("pullsPerH", pullsPerH, 0.1, 1000);
    }

    /** Wet film of a solid in um (cm3/m2). */
    public double wetFilmUm(double meshVolumeCm3PerM2) {
        return meshVolumeCm3PerM2 * transfer;
    }
}
