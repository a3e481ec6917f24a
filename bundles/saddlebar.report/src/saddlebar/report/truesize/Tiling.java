package saddlebar.report.truesize;

import java.util.ArrayList;
import java.util.List;

import saddlebar.model.problem.Refusal;
import saddlebar.model.units.Require;

/**
 * How a drawing is cut apart into pages: a grid of equal windows onto it, each sharing a strip with the next, in which both show the same, so that
 * they can be laid over one another at the light.
 *
 * @param paper     as it lies
 * @param overlapMm shared strip, 0 to 50
 * @param columns   at least 1
 * @param rows      at least 1
 * @param tiles     row by row
 */
public record Tiling(PrintPaper paper, double overlapMm, int columns, int rows, List<Tile> tiles) {
    /** Left of the drawing, for the upright check rule. */
    static final double SIDE_MM = 9;
    /** Under the drawing, for the level check rule, the words and the caution. */
    static final double FOOT_MM = 17;
    /** Enough to glue or tape, and to lay register crosses over one another (common practice, no source). */
    public static final double USUAL_OVERLAP_MM = 12;
    /** More pages than anybody lays together. */
    public static final int MOST_TILES = 2_000;

    /**
     * One page's window onto the drawing; columns are letters, rows numbers: B3 is the second from the left in the third row.
     *
     * @param xMm      left of the window on the drawing
     * @param yMm      top of the window on the drawing
     */
    public record Tile(int column, int row, double xMm, double yMm, double widthMm, double heightMm) {
        public String name() {
            return name(column, row);
        }

        static String name(int column, int row) {
            StringBuilder letters = new StringBuilder();
            for (int c = column; c >= 0; c = c / 26 - 1) {
                letters.insert(0, (char) ('A' + c % 26));
            }
            return letters.append(row + 1).toString();
        }
    }

    public Tiling {
        Require.within("overlapMm", overlapMm, 0, 50);
        tiles = List.copyOf(tiles);
    }

    /**
     * The way to lie that needs fewer pages; upright where both need the same.
     *
     * @throws Refusal if it would take more than {@value #MOST_TILES} pages
     */
    public static Tiling of(TrueSizeDrawing drawing, PrintPaper paper, double overlapMm) {
        Tiling upright = lying(drawing, paper, overlapMm);
        Tiling across = lying(drawing, paper.turned(), overlapMm);
        Tiling best = across.columns * across.rows < upright.columns * upright.rows ? across : upright;
        if ((long) best.columns * best.rows > MOST_TILES) {
            throw new Refusal(drawing.title(), "it would take " + (long) best.columns * best.rows + " pages of " + paper.name(),
                    "choose a larger paper or a roll");
        }
        return best.columns * best.rows == 1 ? best : best.withTiles(drawing);
    }

    private static Tiling lying(TrueSizeDrawing drawing, PrintPaper paper, double overlapMm) {
        double widthMm = paper.widthMm() - 2 * paper.marginMm() - SIDE_MM;
        double heightMm = paper.heightMm() - 2 * paper.marginMm() - FOOT_MM;
        int columns = count(drawing.widthMm(), widthMm, overlapMm);
        int rows = count(drawing.heightMm(), heightMm, overlapMm);
        return new Tiling(paper, overlapMm, columns, rows, List.of(new Tile(0, 0, 0, 0, drawing.widthMm(), drawing.heightMm())));
    }

    private static int count(double lengthMm, double windowMm, double overlapMm) {
        return lengthMm <= windowMm ? 1 : (int) Math.min(Integer.MAX_VALUE / 4, Math.ceil((lengthMm - overlapMm) / (windowMm - overlapMm) - 1e-9));
    }

    /** Equal windows that just cover the drawing: no page with a sliver at the end. */
    private Tiling withTiles(TrueSizeDrawing drawing) {
        double widthMm = (drawing.widthMm() + (columns - 1) * overlapMm) / columns;
        double heightMm = (drawing.heightMm() + (rows - 1) * overlapMm) / rows;
        List<Tile> all = new ArrayList<>();
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                all.add(new Tile(column, row, column * (widthMm - overlapMm), row * (heightMm - overlapMm), widthMm, heightMm));
            }
        }
        return new Tiling(paper, overlapMm, columns, rows, all);
    }
}
