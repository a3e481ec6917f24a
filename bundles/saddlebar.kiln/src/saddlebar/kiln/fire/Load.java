package saddlebar.kiln.fire;

import java.util.Objects;

import saddlebar.kiln.glass.Glass;
import saddlebar.kiln.plate.MaxwellPlate;
import saddlebar.model.units.Require;

/**
 * What is fired: the thickest glass of the load decides.
 *
 * @param glass       which
 * @param thicknessMm mm, 0.5 to 60
 * @param largestMm   longest side of the largest piece in mm
 * @param shelf       what it lies on
 * @param hold        free to bow, or held flat
 */
public record Load(Glass glass, double thicknessMm, double largestMm, Shelf shelf, MaxwellPlate.Hold hold) {
    public Load {
        Objects.requireNonNull(glass, "glass");
        Require.within("thicknessMm", thicknessMm, 0.5, 60);
        Require.within("largestMm", largestMm, 5, 5000);
        Objects.requireNonNull(shelf, "shelf");
        Objects.requireNonNull(hold, "hold");
    }

    /** Pieces of up to 150 mm on a ceramic shelf, free to bow. */
    public static Load of(Glass glass, double thicknessMm) {
        return new Load(glass, thicknessMm, 150, Shelf.USUAL, MaxwellPlate.Hold.FREE);
    }

    public Load withLargestMm(double mm) {
        return new Load(glass, thicknessMm, mm, shelf, hold);
    }

    public Load on(Shelf other) {
        return new Load(glass, thicknessMm, largestMm, other, hold);
    }

    public Load held(MaxwellPlate.Hold other) {
        return new Load(glass, thicknessMm, largestMm, shelf, other);
    }

    /**
     * Highest rate at which cut pieces are heated below the strain point, K/h. Common practice, no source: 250 for small pieces of 3 mm down to 150 for
     * those of 400 mm and more, less in proportion as the glass is thicker. What it guards against is not the difference through
     * the thickness, which is small, but that between a piece's edge and its middle.
     */
    public double practiceRateKPerH() {
        double size = Math.max(0, Math.min(1, (largestMm - 100) / 300));
        return (250 - 100 * size) * Math.min(1, 3 / thicknessMm);
    }
}
