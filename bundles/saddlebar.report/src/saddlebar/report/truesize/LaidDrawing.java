package saddlebar.report.truesize;

/** A drawing and how it is cut apart into pages. */
public record LaidDrawing(TrueSizeDrawing drawing, Tiling tiling) {
    public static LaidDrawing of(TrueSizeDrawing drawing, PrintPaper paper, double overlapMm) {
        return new LaidDrawing(drawing, Tiling.of(drawing, paper, overlapMm));
    }

    /** Pages in all, with the map where there is one. */
    public int pages() {
        return tiling.tiles().size() + (tiling.tiles().size() > 1 ? 1 : 0);
    }
}
