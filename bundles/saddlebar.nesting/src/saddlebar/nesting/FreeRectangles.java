package saddlebar.nesting;

import java.util.ArrayList;
import java.util.List;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;

import saddlebar.model.units.Require;

/**
 * The largest rectangles, sides along x and y, that are left of a sheet: found on a grid of cells that are wholly free, so each is right but may be short
 * by up to a cell on each side. The largest first; each is then taken away before the next is looked for. On a row of heights the largest rectangle is
 * found with a stack in one pass: O(cells) a rectangle.
 *
 * <p>Source: Vandevoorde, D. (1998). The maximal rectangle problem. Dr. Dobb's Journal 23(4), from memory; the tests hold it against trying all.
 */
public final class FreeRectangles {
    private static final GeometryFactory GEOMETRY = new GeometryFactory();
    private static final int MOST_CELLS_A_SIDE = 1000;

    private FreeRectangles() {
    }

    /**
     * @param sheet   its rectangle
     * @param taken   what lies there or is blocked, in mm of the sheet
     * @param keepMm  least distance from what is taken, 0 or more
     * @param cellMm  of the grid, at least 0.1; made larger for a sheet of more than 1,000 cells a side
     * @param leastMm shortest side that counts
     * @param most    how many
     */
    public static List<Envelope> of(SheetArea sheet, List<Polygon> taken, double keepMm, double cellMm, double leastMm, int most) {
        Require.within("keepMm", keepMm, 0, 1000);
        Require.within("cellMm", cellMm, 0.1, 1000);
        double cell = Math.max(cellMm, Math.max(sheet.widthMm(), sheet.heightMm()) / MOST_CELLS_A_SIDE);
        int columns = (int) Math.floor(sheet.widthMm() / cell + 1e-9);
        int rows = (int) Math.floor(sheet.heightMm() / cell + 1e-9);
        boolean[] full = new boolean[columns * rows];
        for (Polygon polygon : taken) {
            mark(full, columns, rows, cell, polygon, keepMm);
        }
        List<Envelope> found = new ArrayList<>();
        while (found.size() < most) {
            int[] best = largest(full, columns, rows);
            double width = (best[2] - best[0]) * cell;
            double height = (best[3] - best[1]) * cell;
            if (Math.min(width, height) < leastMm) {
                return found;
            }
            found.add(new Envelope(best[0] * cell, best[2] * cell, best[1] * cell, best[3] * cell));
            for (int row = best[1]; row < best[3]; row++) {
                for (int column = best[0]; column < best[2]; column++) {
                    full[row * columns + column] = true;
                }
            }
        }
        return found;
    }

    private static void mark(boolean[] full, int columns, int rows, double cell, Polygon polygon, double keepMm) {
        Geometry wide = keepMm > 0 ? polygon.buffer(keepMm) : polygon;
        PreparedGeometry prepared = PreparedGeometryFactory.prepare(wide);
        Envelope box = wide.getEnvelopeInternal();
        for (int row = Math.max(0, (int) Math.floor(box.getMinY() / cell)); row < Math.min(rows, Math.ceil(box.getMaxY() / cell)); row++) {
            for (int column = Math.max(0, (int) Math.floor(box.getMinX() / cell)); column < Math.min(columns, Math.ceil(box.getMaxX() / cell)); column++) {
                if (!full[row * columns + column]) {
                    double inset = 1e-6; // touching is not covering
                    full[row * columns + column] = prepared.intersects(square(column * cell + inset, row * cell + inset, cell - 2 * inset));
                }
            }
        }
    }

    private static Polygon square(double x, double y, double side) {
        return GEOMETRY.createPolygon(new Coordinate[] {new Coordinate(x, y), new Coordinate(x + side, y), new Coordinate(x + side, y + side),
                new Coordinate(x, y + side), new Coordinate(x, y)});
    }

    /** Left, top, right, bottom in cells; all 0 if nothing is free. */
    private static int[] largest(boolean[] full, int columns, int rows) {
        int[] height = new int[columns + 1];
        int[] stack = new int[columns + 1];
        int[] best = new int[4];
        long bestArea = 0;
        for (int row = 0; row < rows; row++) {
            int depth = 0;
            for (int column = 0; column <= columns; column++) {
                height[column] = column == columns || full[row * columns + column] ? 0 : height[column] + 1;
                while (depth > 0 && height[stack[depth - 1]] > height[column]) {
                    int high = height[stack[--depth]];
                    int from = depth == 0 ? 0 : stack[depth - 1] + 1;
                    long area = (long) high * (column - from);
                    if (area > bestArea) {
                        bestArea = area;
                        best = new int[] {from, row + 1 - high, column, row + 1};
                    }
                }
                stack[depth++] = column;
            }
        }
        return best;
    }
}
