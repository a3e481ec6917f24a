package saddlebar.report.truesize;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.zip.DeflaterOutputStream;

import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.graphics.color.PDDeviceGray;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

import saddlebar.model.file.Hashes;
import saddlebar.model.file.PendingFile;
import saddlebar.model.work.Work;
import saddlebar.report.truesize.Tiling.Tile;

/**
 * Writes a drawing at true size as PDF (ISO 32000-1): a map of the pages first where there are several, then page by page, each with its window onto
 * the drawing, register crosses and trim lines in the shared strips, the names of its neighbours and two check rules of 100 mm, since a printer may
 * stretch differently along and across. A page longer than 14,400 units has its unit enlarged (UserUnit). Text is text, the font is embedded.
 * The same drawing gives the same bytes.
 */
public final class TrueSizePdf {
    private static final int INK = 0x000000;
    private static final int QUIET = 0x5A5A5A;
    private static final String CAUTION = "Cutting: protect the eyes, wear shoes; brush splinters away, never wipe them with the hand.";
    private static final double HAIR_MM = 0.1;
    private static final double RULE_MM = 100;
    private static final double CROSS_MM = 4;
    private static final double LETTER_MM = 2.1;
    /** Annex C.2 of ISO 32000-1: no page side may be longer in its own units. */
    private static final double MOST_UNITS = 14_400;

    private final TrueSizeDrawing drawing;
    private final Tiling tiling;
    private final Map<Ink.Picture, PDImageXObject> pictures = new IdentityHashMap<>();

    private TrueSizePdf(TrueSizeDrawing drawing, Tiling tiling) {
        this.drawing = drawing;
        this.tiling = tiling;
    }

    /**
     * Writes drawings one after the other into one file.
     *
     * @param title    of the file
     * @param software written into the file as its creator
     * @param work     told one unit a page of a drawing, see {@link Tiling#tiles()}
     */
    public static void write(String title, List<LaidDrawing> drawings, Path target, String software, Work work) throws IOException {
        try (PendingFile pending = PendingFile.beside(target); PDDocument document = new PDDocument()) {
            PDType0Font font = FreeFont.in(document);
            StringBuilder identity = new StringBuilder(title).append('\n').append(software);
            for (LaidDrawing laid : drawings) {
                TrueSizePdf pages = new TrueSizePdf(laid.drawing(), laid.tiling());
                pages.fill(document, font, work);
                identity.append('\n').append(pages.identity());
            }
            document.getDocumentInformation().setTitle(title);
            document.getDocumentInformation().setCreator(software);
            PDViewerPreferences asIs = new PDViewerPreferences(new COSDictionary());
            asIs.setPrintScaling(PDViewerPreferences.PRINT_SCALING.None);
            document.getDocumentCatalog().setViewerPreferences(asIs);
            document.setDocumentId(Long.parseUnsignedLong(Hashes.sha256(identity.toString()).substring(0, 16), 16));
            document.save(pending.out(), CompressParameters.NO_COMPRESSION);
            pending.commit();
        }
    }

    private void fill(PDDocument document, PDType0Font font, Work work) throws IOException {
        for (Ink ink : drawing.ink()) {
            if (ink instanceof Ink.Picture picture) {
                pictures.put(picture, embedded(document, picture));
            }
        }
        if (tiling.tiles().size() > 1) {
            map(document, font);
        }
        for (Tile tile : tiling.tiles()) {
            page(document, font, tile);
            work.advance(1);
        }
    }

    private static PDImageXObject embedded(PDDocument document, Ink.Picture picture) throws IOException {
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        try (DeflaterOutputStream deflate = new DeflaterOutputStream(packed)) { // as they are: a buffered gray image would be taken for linear light
            deflate.write(picture.gray());
        }
        return new PDImageXObject(document, new ByteArrayInputStream(packed.toByteArray()), COSName.FLATE_DECODE, picture.widthPx(), picture.heightPx(), 8,
                PDDeviceGray.INSTANCE);
    }

    /** All that is drawn, so that the file's id comes from what is in it. */
    private String identity() {
        StringBuilder all = new StringBuilder(drawing.title() + "\n" + tiling.paper() + "\n" + tiling.columns() + "x" + tiling.rows() + "\n");
        for (Ink ink : drawing.ink()) {
            if (ink instanceof Ink.Words words) {
                all.append(words).append('\n');
            } else if (ink instanceof Ink.Picture picture) {
                all.append(Hashes.sha256(picture.gray())).append(' ').append(picture.xMm()).append(' ').append(picture.yMm()).append('\n');
            } else {
                List<double[]> paths = ink instanceof Ink.Line line ? line.paths() : ((Ink.Area) ink).rings();
                paths.forEach(path -> all.append(Arrays.hashCode(path)).append(' '));
            }
        }
        return all.toString();
    }

    private void page(PDDocument document, PDType0Font font, Tile tile) throws IOException {
        PrintPaper paper = tiling.paper();
        double heightMm = paper.roll() ? tile.heightMm() + 2 * paper.marginMm() + Tiling.FOOT_MM : paper.heightMm();
        double userUnit = userUnit(paper.widthMm(), heightMm);
        PDPage page = sized(document, paper.widthMm(), heightMm, userUnit);
        double leftMm = paper.marginMm() + Tiling.SIDE_MM;
        double topMm = heightMm - paper.marginMm();
        try (PDPageContentStream content = new PDPageContentStream(document, page)) {
            PageInk ink = new PageInk(content, font, leftMm - tile.xMm(), topMm + tile.yMm(), 1, userUnit);
            content.saveGraphicsState();
            ink.clip(tile.xMm(), tile.yMm(), tile.widthMm(), tile.heightMm());
            for (Ink each : drawing.ink()) {
                if (each instanceof Ink.Picture picture) {
                    ink.draw(picture, pictures.get(picture));
                } else if (each instanceof Ink.Words words) {
                    ink.draw(new Ink.Words(FreeFont.shown(font, words.text()), words.xMm(), words.yMm(), words.capitalMm(), words.rgb()));
                } else {
                    ink.draw(each);
                }
            }
            for (Ink each : seams(tile)) {
                ink.draw(each);
            }
            content.restoreGraphicsState();
            foot(new PageInk(content, font, paper.marginMm(), topMm, 1, userUnit), font, tile);
        }
    }

    /** Points a unit of the page, so that no side is longer than the format allows. */
    static double userUnit(double widthMm, double heightMm) {
        double longest = Math.max(widthMm, heightMm) * PageInk.PT_PER_MM;
        return longest <= MOST_UNITS ? 1 : Math.ceil(longest / MOST_UNITS * 100) / 100;
    }

    static PDPage sized(PDDocument document, double widthMm, double heightMm, double userUnit) {
        PDPage page = new PDPage(new PDRectangle((float) (widthMm * PageInk.PT_PER_MM / userUnit), (float) (heightMm * PageInk.PT_PER_MM / userUnit)));
        if (userUnit != 1) {
            page.setUserUnit((float) userUnit);
        }
        document.addPage(page);
        return page;
    }

    /** Trim lines in the middle of the shared strips, and crosses where they meet the strip's ends; the same places on both pages. */
    private List<Ink> seams(Tile tile) {
        List<Ink> seams = new ArrayList<>();
        double half = tiling.overlapMm() / 2;
        List<double[]> trims = new ArrayList<>();
        List<double[]> crosses = new ArrayList<>();
        List<Double> xs = new ArrayList<>();
        List<Double> ys = new ArrayList<>();
        if (tile.column() > 0) {
            xs.add(tile.xMm() + half);
        }
        if (tile.column() < tiling.columns() - 1) {
            xs.add(tile.xMm() + tile.widthMm() - half);
        }
        if (tile.row() > 0) {
            ys.add(tile.yMm() + half);
        }
        if (tile.row() < tiling.rows() - 1) {
            ys.add(tile.yMm() + tile.heightMm() - half);
        }
        double topMm = tile.yMm();
        double bottomMm = tile.yMm() + tile.heightMm();
        double leftMm = tile.xMm();
        double rightMm = tile.xMm() + tile.widthMm();
        for (double x : xs) {
            trims.add(new double[] {x, topMm, x, bottomMm});
            for (double share : new double[] {0.25, 0.75}) {
                cross(crosses, x, topMm + share * tile.heightMm());
            }
        }
        for (double y : ys) {
            trims.add(new double[] {leftMm, y, rightMm, y});
            for (double share : new double[] {0.25, 0.75}) {
                cross(crosses, leftMm + share * tile.widthMm(), y);
            }
        }
        if (!trims.isEmpty()) {
            seams.add(new Ink.Line(trims, false, HAIR_MM, QUIET, new float[] {2, 2}));
            seams.add(Ink.Line.full(crosses, false, HAIR_MM, INK));
        }
        return seams;
    }

    private static void cross(List<double[]> crosses, double x, double y) {
        crosses.add(new double[] {x - CROSS_MM, y, x + CROSS_MM, y});
        crosses.add(new double[] {x, y - CROSS_MM, x, y + CROSS_MM});
    }

    /** Check rules, name, neighbours, title. Coordinates from the margin's left top. */
    private void foot(PageInk ink, PDType0Font font, Tile tile) throws IOException {
        double footMm = tile.heightMm() + 2;
        double leftMm = Tiling.SIDE_MM;
        double levelMm = Math.min(RULE_MM, Math.floor(tile.widthMm() / 10) * 10);
        double uprightMm = Math.min(RULE_MM, Math.floor(tile.heightMm() / 10) * 10);
        if (levelMm >= 10) {
            ink.draw(rule(leftMm, footMm + 1, levelMm, false));
        }
        if (uprightMm >= 10) {
            ink.draw(rule(3, 0, uprightMm, true));
        }
        String check = String.format(Locale.ROOT, "Both rules must measure %.0f mm%s: print at 100 %%, not fitted to the page.", levelMm,
                uprightMm == levelMm ? "" : String.format(Locale.ROOT, " (level) and %.0f mm (upright)", uprightMm));
        ink.textFrom(check, leftMm, footMm + 7.5, LETTER_MM * 0.85, INK);
        String name = tiling.tiles().size() > 1 ? tile.name() + " of " + tiling.columns() + " x " + tiling.rows() + "  " + neighbours(tile) + "   " : "";
        ink.textFrom(FreeFont.shown(font, name + drawing.title()), leftMm, footMm + 11.5, LETTER_MM, INK);
        ink.textFrom(CAUTION, leftMm, footMm + 14.7, LETTER_MM * 0.85, INK);
    }

    private String neighbours(Tile tile) {
        List<String> words = new ArrayList<>();
        if (tile.column() > 0) {
            words.add("left " + Tile.name(tile.column() - 1, tile.row()));
        }
        if (tile.column() < tiling.columns() - 1) {
            words.add("right " + Tile.name(tile.column() + 1, tile.row()));
        }
        if (tile.row() > 0) {
            words.add("above " + Tile.name(tile.column(), tile.row() - 1));
        }
        if (tile.row() < tiling.rows() - 1) {
            words.add("below " + Tile.name(tile.column(), tile.row() + 1));
        }
        return "(" + String.join(", ", words) + ")";
    }

    private static Ink rule(double xMm, double yMm, double lengthMm, boolean upright) {
        List<double[]> lines = new ArrayList<>();
        lines.add(upright ? new double[] {xMm, yMm, xMm, yMm + lengthMm} : new double[] {xMm, yMm, xMm + lengthMm, yMm});
        for (double at = 0; at <= lengthMm; at += 10) {
            double tick = at % 50 == 0 ? 2.4 : 1.4;
            lines.add(upright ? new double[] {xMm, yMm + at, xMm + tick, yMm + at} : new double[] {xMm + at, yMm, xMm + at, yMm + tick});
        }
        return Ink.Line.full(lines, false, 0.15, INK);
    }

    /** The whole drawing made small, with the pages' windows and names over it. */
    private void map(PDDocument document, PDType0Font font) throws IOException {
        PrintPaper paper = tiling.paper().roll() ? PrintPaper.of("a4") : tiling.paper();
        PDPage page = sized(document, paper.widthMm(), paper.heightMm(), 1);
        double borderMm = paper.marginMm() + 6;
        double roomWidthMm = paper.widthMm() - 2 * borderMm;
        double roomHeightMm = paper.heightMm() - 2 * borderMm - 34;
        double scale = Math.min(roomWidthMm / drawing.widthMm(), roomHeightMm / drawing.heightMm());
        try (PDPageContentStream content = new PDPageContentStream(document, page)) {
            PageInk words = new PageInk(content, font, borderMm, paper.heightMm() - borderMm, 1, 1);
            words.textFrom(FreeFont.shown(font, drawing.title()), 0, 4, 4, INK);
            words.textFrom(String.format(Locale.ROOT, "True size %.1f x %.1f mm on %d pages of %s, %d across and %d down, sharing %.0f mm.",
                    drawing.widthMm(), drawing.heightMm(), tiling.tiles().size(), tiling.paper().name(), tiling.columns(), tiling.rows(), tiling.overlapMm()),
                    0, 11, LETTER_MM, INK);
            words.textFrom("Print at 100 %, not fitted to the page. Measure both check rules of every page before you trust it.", 0, 16, LETTER_MM, INK);
            words.textFrom("Lay neighbours over one another at the light until the crosses meet, tape, and trim along the dashed lines.", 0, 21, LETTER_MM,
                    INK);
            PageInk small = new PageInk(content, font, borderMm, paper.heightMm() - borderMm - 28, scale, 1);
            for (Ink ink : drawing.ink()) {
                if (ink instanceof Ink.Line line) {
                    small.draw(Ink.Line.full(line.paths(), line.closed(), Math.min(20, HAIR_MM / scale), 0x9A9A9A));
                } else if (ink instanceof Ink.Area area) {
                    small.draw(area);
                } else if (ink instanceof Ink.Picture picture) {
                    small.draw(picture, pictures.get(picture));
                }
            }
            for (Tile tile : tiling.tiles()) {
                small.draw(Ink.Line.full(List.of(new double[] {tile.xMm(), tile.yMm(), tile.xMm() + tile.widthMm(), tile.yMm(), tile.xMm() + tile.widthMm(),
                        tile.yMm() + tile.heightMm(), tile.xMm(), tile.yMm() + tile.heightMm()}), true, Math.min(20, 0.25 / scale), 0x0072B2));
                double capitalMm = Math.min(200, Math.min(6 / scale, 0.3 * Math.min(tile.widthMm(), tile.heightMm())));
                small.draw(new Ink.Words(tile.name(), tile.xMm() + tile.widthMm() / 2, tile.yMm() + tile.heightMm() / 2, capitalMm, 0x0072B2));
            }
        }
    }
}
