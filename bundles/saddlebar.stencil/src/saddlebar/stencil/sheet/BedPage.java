package saddlebar.stencil.sheet;

import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

import saddlebar.model.art.OutlineMm;
import saddlebar.model.file.Hashes;
import saddlebar.model.problem.Refusal;
import saddlebar.model.units.Require;
import saddlebar.model.units.Units;
import saddlebar.stencil.code.BitonalSettings;
import saddlebar.stencil.code.OutputFile;

/**
 * The plan of a bed at true size, one PDF page to glue on its board: the outline of each piece where it lies under the stencil, two stops against its
 * lower side and one against its left (three points hold a flat thing in its plane), and a register cross at each corner of the stencil. A stop that would
 * stand where another piece lies is left out: pieces side by side hold one another, with a strip as thick as the gap between them. As seen from above, so
 * the interior face up; mirror it for a face that is printed from the other side.
 */
public final class BedPage {
    private static final double STOP_MM = 5;
    private static final double LINE_MM = 0.3;
    private static final double CROSS_MM = 6;
    private static final double EM_MM = 3.5;
    private static final double BORDER_MM = 12;

    /**
     * A piece on the bed.
     *
     * @param number    shown in its middle
     * @param outlineMm in mm of the stencil, x to the right and y down
     */
    public record BedPiece(String number, OutlineMm outlineMm) {
        public BedPiece {
            Require.text("number", number);
            if (outlineMm.isEmpty()) {
                throw new IllegalArgumentException("piece " + number + " has no outline");
            }
        }
    }

    private BedPage() {
    }

    /** Middles of the three stops of an outline: two at a quarter and three quarters of its lowest side, one at the middle of its left. */
    static double[][] stops(OutlineMm outline) {
        double[] ring = outline.ring(0);
        double left = Double.POSITIVE_INFINITY;
        double right = Double.NEGATIVE_INFINITY;
        double top = Double.POSITIVE_INFINITY;
        double bottom = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < ring.length; i += 2) {
            left = Math.min(left, ring[i]);
            right = Math.max(right, ring[i]);
            top = Math.min(top, ring[i + 1]);
            bottom = Math.max(bottom, ring[i + 1]);
        }
        double quarter = left + (right - left) / 4;
        double threeQuarters = right - (right - left) / 4;
        double middle = (top + bottom) / 2;
        return new double[][] {{quarter, farthest(ring, quarter, true) + STOP_MM / 2}, {threeQuarters, farthest(ring, threeQuarters, true) + STOP_MM / 2},
                {farthest(ring, middle, false) - STOP_MM / 2, middle}};
    }

    /** Lowest crossing of the ring with the upright at {@code at}, or leftmost with the level there. */
    private static double farthest(double[] ring, double at, boolean down) {
        double best = down ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY;
        int n = ring.length / 2;
        for (int i = 0; i < n; i++) {
            int j = (i + 1) % n;
            double a = down ? ring[2 * i] : ring[2 * i + 1];
            double b = down ? ring[2 * j] : ring[2 * j + 1];
            if (a == b || at < Math.min(a, b) || at > Math.max(a, b)) {
                continue;
            }
            double c = down ? ring[2 * i + 1] : ring[2 * i];
            double d = down ? ring[2 * j + 1] : ring[2 * j];
            double meets = c + (at - a) / (b - a) * (d - c);
            best = down ? Math.max(best, meets) : Math.min(best, meets);
        }
        return best;
    }

    /**
     * Writes the page, as large as the bed with a border.
     *
     * @param title shown above, such as stencil and window
     * @throws Refusal if the bed is larger than a PDF page may be
     */
    public static Path writePdf(List<BedPiece> pieces, double widthMm, double heightMm, String title, Path target, BitonalSettings settings)
            throws IOException {
        Require.within("widthMm", widthMm, 10, 5000);
        Require.within("heightMm", heightMm, 10, 5000);
        double pageWidthMm = widthMm + 2 * BORDER_MM;
        double pageHeightMm = heightMm + 2 * BORDER_MM + 2 * EM_MM;
        double ptPerMm = Units.PT_PER_INCH / Units.MM_PER_INCH;
        try (OutputFile file = OutputFile.open(target, settings.replace());
                SheetFont font = new SheetFont();
                PDDocument document = new PDDocument();
                InputStream fontFile = SheetFont.open()) {
            PlanDrawing drawing = new PlanDrawing(font);
            draw(drawing, font, pieces, widthMm, heightMm, title);
            PDPage page = new PDPage(new PDRectangle((float) (pageWidthMm * ptPerMm), (float) (pageHeightMm * ptPerMm)));
            document.addPage(page);
            PDType0Font pdfFont = PDType0Font.load(document, fontFile, true);
            try (PDPageContentStream content = new PDPageContentStream(document, page)) {
                drawing.drawOn(content, pdfFont, pageHeightMm);
            }
            document.getDocumentInformation().setTitle(title);
            document.getDocumentInformation().setCreator(settings.software());
            StringBuilder identity = new StringBuilder(title).append(widthMm).append(' ').append(heightMm);
            for (BedPiece piece : pieces) {
                identity.append(piece.number()).append(piece.outlineMm());
            }
            document.setDocumentId(Long.parseUnsignedLong(Hashes.sha256(identity.toString()).substring(0, 16), 16));
            document.save(file, CompressParameters.NO_COMPRESSION);
            try (PDDocument back = Loader.loadPDF(file.written().toFile())) {
                if (back.getNumberOfPages() != 1) {
                    throw new IOException(target + " reads back " + back.getNumberOfPages() + " pages");
                }
            }
            file.commit();
            return target;
        }
    }

    private static void draw(PlanDrawing drawing, SheetFont font, List<BedPiece> pieces, double widthMm, double heightMm, String title) throws IOException {
        double dx = BORDER_MM;
        double dy = BORDER_MM + EM_MM;
        drawing.text(font.fitted(title + String.format(Locale.ROOT, "  true size: %.1f x %.1f mm between the crosses", widthMm, heightMm), EM_MM,
                widthMm + BORDER_MM), BORDER_MM, BORDER_MM - 2, EM_MM, TapeDrawing.INK);
        for (double x : new double[] {0, widthMm}) {
            for (double y : new double[] {0, heightMm}) {
                drawing.fill(MarkShapes.register(new RectMm(dx + x - CROSS_MM / 2, dy + y - CROSS_MM / 2, CROSS_MM, CROSS_MM), LINE_MM), TapeDrawing.INK);
            }
        }
        List<Path2D> outlines = pieces.stream().map(piece -> outline(piece, dx, dy)).toList();
        for (int i = 0; i < pieces.size(); i++) {
            BedPiece piece = pieces.get(i);
            Path2D outline = outlines.get(i);
            Shape line = new BasicStroke((float) LINE_MM).createStrokedShape(outline);
            drawing.fill(new Path2D.Double(line), TapeDrawing.INK);
            for (double[] stop : stops(piece.outlineMm())) {
                RectMm square = new RectMm(dx + stop[0] - STOP_MM / 2, dy + stop[1] - STOP_MM / 2, STOP_MM, STOP_MM);
                boolean taken = outlines.stream().anyMatch(other -> other != outline
                        && other.intersects(square.xMm(), square.yMm(), square.widthMm(), square.heightMm()));
                if (!taken) {
                    drawing.fill(square, TapeDrawing.GLASS);
                    drawing.frame(square, LINE_MM, TapeDrawing.INK);
                }
            }
            Rectangle2D box = outline.getBounds2D();
            drawing.text(piece.number(), box.getCenterX() - font.widthMm(piece.number(), EM_MM) / 2, box.getCenterY() + EM_MM / 3, EM_MM, TapeDrawing.INK);
        }
    }

    private static Path2D outline(BedPiece piece, double dx, double dy) {
        Path2D outline = new Path2D.Double();
        for (int ring = 0; ring < piece.outlineMm().rings(); ring++) {
            double[] points = piece.outlineMm().ring(ring);
            outline.moveTo(dx + points[0], dy + points[1]);
            for (int i = 2; i < points.length; i += 2) {
                outline.lineTo(dx + points[i], dy + points[i + 1]);
            }
            outline.closePath();
        }
        return outline;
    }
}
