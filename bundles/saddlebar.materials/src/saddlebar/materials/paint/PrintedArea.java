package saddlebar.materials.paint;

import saddlebar.model.units.Require;
import saddlebar.model.units.Units;

/**
 * What one stencil prints: its whole area, the share of it that prints, and how often.
 *
 * @param areaM2             of the whole stencil
 * @param coverage           bits that print over all bits, 0 to 1
 * @param prints             pulls
 * @param meshVolumeCm3PerM2 theoretical volume of its mesh
 */
public record PrintedArea(double areaM2, double coverage, int prints, double meshVolumeCm3PerM2) {
    public PrintedArea {
        Require.within("areaM2", areaM2, 0, 1000);
        Require.within("coverage", coverage, 0, 1);
        Require.within("prints", prints, 0, 1_000_000);
        Require.within("meshVolumeCm3PerM2", meshVolumeCm3PerM2, 0, 1000);
    }

    /** From the bits as they were written. */
    public static PrintedArea ofBits(int widthPx, int heightPx, double dpi, double coverage, int prints, double meshVolumeCm3PerM2) {
        Require.within("dpi", dpi, 1, 1e5);
        double areaM2 = Units.mmOfPx(widthPx, dpi) * Units.mmOfPx(heightPx, dpi) / 1e6;
        return new PrintedArea(areaM2, coverage, prints, meshVolumeCm3PerM2);
    }

    /** Wet paint on the glass in cm3, all pulls. */
    public double wetCm3(PaintRules rules) {
        return areaM2 * coverage * prints * rules.wetFilmUm(meshVolumeCm3PerM2);
    }
}
