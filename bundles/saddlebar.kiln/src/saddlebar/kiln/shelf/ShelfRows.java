package saddlebar.kiln.shelf;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import saddlebar.model.units.Require;

/**
 * Lays pieces on a shelf in rows, the deepest first, free of the rim and of each other, on whole mm. A start for a person who lays them as hands and places want it, no
 * densest load; O(n log n).
 *
 * @param load what lies
 * @param left names of what has no room
 */
public record ShelfRows(ShelfLoad load, List<String> left) {
    public ShelfRows {
        left = List.copyOf(left);
    }

    /** One piece in its box, upright as drawn. */
    public record Box(String piece, double widthMm, double heightMm, double thicknessMm) {
        public Box {
            Require.text("piece", piece);
            Require.within("widthMm", widthMm, 1, 10_000);
            Require.within("heightMm", heightMm, 1, 10_000);
            Require.within("thicknessMm", thicknessMm, 0.5, 100);
        }
    }

    public static ShelfRows of(List<Box> boxes, double widthMm, double depthMm) {
        List<Box> deepest = boxes.stream().sorted(Comparator.comparingDouble(Box::heightMm).reversed().thenComparing(Box::piece)).toList();
        List<ShelfLoad.Lay> lays = new ArrayList<>();
        List<String> left = new ArrayList<>();
        double right = widthMm - ShelfLoad.RIM_MM;
        double back = depthMm - ShelfLoad.RIM_MM;
        double x = ShelfLoad.RIM_MM;
        double y = ShelfLoad.RIM_MM;
        double row = 0;
        for (Box box : deepest) {
            if (x > ShelfLoad.RIM_MM && x + box.widthMm() > right) {
                x = ShelfLoad.RIM_MM;
                y += Math.ceil(row + ShelfLoad.APART_MM);
                row = 0;
            }
            if (x + box.widthMm() > right || y + box.heightMm() > back) {
                left.add(box.piece());
                continue;
            }
            lays.add(new ShelfLoad.Lay(box.piece(), x, y, box.widthMm(), box.heightMm(), box.thicknessMm()));
            x += Math.ceil(box.widthMm() + ShelfLoad.APART_MM);
            row = Math.max(row, box.heightMm());
        }
        return new ShelfRows(new ShelfLoad(widthMm, depthMm, lays), left);
    }
}
