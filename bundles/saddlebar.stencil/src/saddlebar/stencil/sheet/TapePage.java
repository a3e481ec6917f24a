package saddlebar.stencil.sheet;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

import saddlebar.model.file.Hashes;
import saddlebar.model.units.Units;
import saddlebar.stencil.code.BitonalSettings;
import saddlebar.stencil.code.OutputFile;
import saddlebar.stencil.code.ProofPng;

/** The tape plan of a sheet as one page to lie beside the press: the sheet in outline, what is taped hatched, words and cautions under it. */
public final class TapePage {
    private static final double BORDER_MM = 14;
    private static final double EM_MM = 3.2;
    private static final double WORDS_MM = 72;
    private static final double PNG_DPI = 150;

    private final SheetPlan plan;
    private final TapePlan tape;
    private final Paper page;

    private TapePage(SheetPlan plan, TapePlan tape) {
        this.plan = plan;
        this.tape = tape;
        this.page = plan.paper().name().equals(Paper.LETTER.name()) || plan.paper().name().equals(Paper.TABLOID.name()) ? Paper.LETTER : Paper.A4;
    }

    /**
     * Writes the page as PDF, on letter beside sheets in inches, else on A4.
     *
     * @throws saddlebar.model.problem.LockedException if the target exists and may not be replaced, or cannot be written
     */
    public static Path writePdf(SheetPlan plan, Path target, BitonalSettings settings) throws IOException {
        TapePage page = new TapePage(plan, TapePlan.of(plan));
        try (OutputFile file = OutputFile.open(target, settings.replace()); SheetFont font = new SheetFont()) {
            page.write(page.drawing(font), file, settings);
            try (PDDocument document = Loader.loadPDF(file.written().toFile())) {
                if (document.getNumberOfPages() != 1) {
                    throw new IOException(target + " reads back " + document.getNumberOfPages() + " pages");
                }
            }
            file.commit();
            return target;
        }
    }

    /** Writes the page as PNG of 150 px an inch. */
    public static Path writePng(SheetPlan plan, Path target, BitonalSettings settings) throws IOException {
        TapePage page = new TapePage(plan, TapePlan.of(plan));
        try (SheetFont font = new SheetFont()) {
            BufferedImage image = new BufferedImage(page.page.widthPx(PNG_DPI), page.page.heightPx(PNG_DPI), BufferedImage.TYPE_INT_RGB);
            Graphics2D white = image.createGraphics();
            white.setColor(Color.WHITE);
            white.fillRect(0, 0, image.getWidth(), image.getHeight());
            white.dispose();
            page.drawing(font).drawOn(image, PNG_DPI);
            return ProofPng.write(image, PNG_DPI, target, settings);
        }
    }

    private PlanDrawing drawing(SheetFont font) throws IOException {
        PlanDrawing drawing = new PlanDrawing(font);
        double widthMm = page.widthMm() - 2 * BORDER_MM;
        double emMm = 1.6 * EM_MM;
        String title = font.fitted(new SheetWords().of("tape.title", tape.sheet()), emMm, widthMm);
        drawing.text(title, BORDER_MM, BORDER_MM + emMm, emMm, TapeDrawing.INK);
        double topMm = BORDER_MM + 1.8 * emMm;
        double roomMm = page.heightMm() - BORDER_MM - WORDS_MM - topMm;
        double scale = Math.min(widthMm / plan.paper().widthMm(), roomMm / plan.paper().heightMm());
        double xMm = BORDER_MM + (widthMm - scale * plan.paper().widthMm()) / 2;
        sheet(drawing, font, xMm, topMm, scale);
        TapeDrawing.words(drawing, tape, BORDER_MM, topMm + scale * plan.paper().heightMm() + 2.2 * EM_MM, EM_MM, widthMm);
        return drawing;
    }

    private void sheet(PlanDrawing drawing, SheetFont font, double xMm, double yMm, double scale) throws IOException {
        RectMm sheet = new RectMm(xMm, yMm, scale * plan.paper().widthMm(), scale * plan.paper().heightMm());
        for (PlacedStencil stencil : plan.stencils()) {
            RectMm place = stencil.placeMm(plan.dpi());
            RectMm box = new RectMm(xMm + scale * place.xMm(), yMm + scale * place.yMm(), scale * place.widthMm(), scale * place.heightMm());
            drawing.fill(box, TapeDrawing.GLASS);
            drawing.frame(box, 0.15, TapeDrawing.INK);
            double emMm = Math.min(EM_MM, Math.min(box.heightMm(), 1.4 * box.widthMm() / Math.max(1, font.widthMm(stencil.label(), 1))) * 0.7);
            double labelMm = font.widthMm(stencil.label(), emMm);
            drawing.text(stencil.label(), box.xMm() + (box.widthMm() - labelMm) / 2, box.yMm() + (box.heightMm() + 0.7 * emMm) / 2, emMm, TapeDrawing.INK);
        }
        TapeDrawing.areas(drawing, tape.areas(), xMm, yMm, scale, 1.4);
        drawing.frame(sheet, 0.3, TapeDrawing.INK);
    }

    private void write(PlanDrawing drawing, OutputFile file, BitonalSettings settings) throws IOException {
        double ptPerMm = Units.PT_PER_INCH / Units.MM_PER_INCH;
        try (PDDocument document = new PDDocument(); InputStream fontFile = SheetFont.open()) {
            PDPage pdfPage = new PDPage(new PDRectangle((float) (page.widthMm() * ptPerMm), (float) (page.heightMm() * ptPerMm)));
            document.addPage(pdfPage);
            PDType0Font pdfFont = PDType0Font.load(document, fontFile, true);
            try (PDPageContentStream content = new PDPageContentStream(document, pdfPage)) {
                drawing.drawOn(content, pdfFont, page.heightMm());
            }
            document.getDocumentInformation().setTitle(new SheetWords().of("tape.title", tape.sheet()));
            document.getDocumentInformation().setCreator(settings.software());
            String identity = tape + "\n" + page + "\n" + plan.paper() + "\n" + settings.software();
            document.setDocumentId(Long.parseUnsignedLong(Hashes.sha256(identity).substring(0, 16), 16));
            document.save(file, CompressParameters.NO_COMPRESSION);
        }
    }
}
