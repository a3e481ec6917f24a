package saddlebar.production.stock;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import org.locationtech.jts.algorithm.construct.MaximumInscribedCircle;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;

import saddlebar.model.art.OutlineMm;
import saddlebar.model.work.Work;
import saddlebar.production.make.Outlines;
import saddlebar.report.truesize.GlassSheetDrawing;
import saddlebar.report.truesize.LaidDrawing;
import saddlebar.report.truesize.PatternPiece;
import saddlebar.report.truesize.PrintPaper;
import saddlebar.report.truesize.TrueSizeDrawing;
import saddlebar.report.truesize.TrueSizePdf;
import saddlebar.report.truesize.TrueSizeSvg;

/** A layout as drawings: for each sheet a PDF as large as the sheet and the same as SVG, with numbers, flaws, off-cuts and the way the grain runs. */
public final class LayoutDrawings {
    private static final String SOFTWARE = "Saddlebar 1";
    private static final double CIRCLE_MM = 0.2;

    private LayoutDrawings() {
    }

    /** @return files made, for each sheet the PDF and then the SVG */
    public static List<Path> write(List<LaidGlass> sheets, Path folder, Work work) throws IOException {
        Files.createDirectories(folder);
        List<Path> files = new ArrayList<>();
        for (LaidGlass laid : sheets) {
            TrueSizeDrawing drawing = drawing(laid);
            String name = Normalizer.normalize(laid.glass() + "-" + laid.sheet().name(), Normalizer.Form.NFKD).replaceAll("[^A-Za-z0-9._-]+", "-");
            Path pdf = folder.resolve(name + ".pdf");
            Path svg = folder.resolve(name + ".svg");
            TrueSizePdf.write(drawing.title(), List.of(LaidDrawing.of(drawing, PrintPaper.roll(Math.min(2000, Math.max(100, drawing.widthMm() + 40))), 12)),
                    pdf,
                    SOFTWARE, work);
            TrueSizeSvg.write(drawing, svg);
            files.add(pdf);
            files.add(svg);
        }
        return files;
    }

    public static TrueSizeDrawing drawing(LaidGlass laid) {
        ShelfSheet sheet = laid.sheet();
        List<PatternPiece> pieces = new ArrayList<>();
        for (LaidPiece piece : laid.pieces()) {
            Polygon glass = Outlines.polygon(piece.outline());
            MaximumInscribedCircle circle = new MaximumInscribedCircle(glass, CIRCLE_MM);
            Point middle = circle.getCenter();
            pieces.add(new PatternPiece(piece.label(), piece.outline(), middle.getX(), middle.getY(), circle.getRadiusLine().getLength(), ""));
        }
        String title = String.format(Locale.ROOT, "%s, sheet %s, %.0f x %.0f mm, %d pieces, %.0f %% used", laid.glass(), sheet.name(), sheet.widthMm(),
                sheet.heightMm(), pieces.size(), 100 * laid.use());
        List<OutlineMm> offcuts = laid.offcuts().stream().map(o -> OutlineMm.rectangle(o.xMm(), o.yMm(), o.widthMm(), o.heightMm())).toList();
        return GlassSheetDrawing.of(title, sheet.outline().orElse(OutlineMm.rectangle(0, 0, sheet.widthMm(), sheet.heightMm())), sheet.flaws(), pieces, offcuts,
                sheet.alongWidth());
    }
}
