package saddlebar.artwork;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

import saddlebar.model.units.Require;

/**
 * One filled area of the artwork. Areas stand in paint order: of those that hold a point, the last one is seen.
 *
 * @param element id or description of the drawn element
 * @param line    its line in the file, 0 if unknown
 * @param rgb     colour as 0xRRGGBB in sRGB code values; of a gradient the mean of its ramp
 * @param opacity 0 (clear) to 1 (opaque), with that of the groups around it
 * @param even    fill rule: a point is inside if an odd number of rings goes round it (even-odd); else by non-zero winding
 * @param rings   outlines x0, y0, x1, y1, … in mm, each closed without repeating its first point
 */
public record ColourArea(String element, int line, int rgb, double opacity, boolean even, List<double[]> rings) {
    public ColourArea {
        Objects.requireNonNull(element, "element");
        Require.within("rgb", rgb, 0, 0xFFFFFF);
        Require.within("opacity", opacity, 0, 1);
        List<double[]> copies = new ArrayList<>(rings.size());
        for (double[] ring : rings) {
            copies.add(ring.clone());
        }
        rings = List.copyOf(copies);
    }

    /** Copies, so that nobody moves the area. */
    @Override
    public List<double[]> rings() {
        return rings.stream().map(double[]::clone).toList();
    }

    /** Whether a point lies inside, by the fill rule; on the edge either may be told. */
    public boolean contains(double xMm, double yMm) {
        int winding = 0;
        int crossings = 0;
        for (double[] ring : rings) {
            int n = ring.length;
            double x0 = ring[n - 2];
            double y0 = ring[n - 1];
            for (int i = 0; i < n; i += 2) {
                double x1 = ring[i];
                double y1 = ring[i + 1];
                if (y0 <= yMm != y1 <= yMm && xMm < x0 + (yMm - y0) / (y1 - y0) * (x1 - x0)) {
                    crossings++;
                    winding += y1 > y0 ? 1 : -1;
                }
                x0 = x1;
                y0 = y1;
            }
        }
        return even ? crossings % 2 != 0 : winding != 0;
    }
}
