package saddlebar.stencil.sheet;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;

import saddlebar.model.units.Units;
import saddlebar.model.work.Work;
import saddlebar.stencil.BitBands;
import saddlebar.stencil.code.BitonalSettings;
import saddlebar.stencil.code.ProofPng;
import saddlebar.stencil.code.ReducedGray;

/** A sheet made small for a person to look at: its toner in grays, what must be taped hatched over it, words and cautions under it. */
public final class SheetProof {
    private static final double EM_MM = 3.2;
    private static final double BORDER_MM = 8;
    private static final double HATCH_MM = 4;

    private SheetProof() {
    }

    /**
     * Writes a proof from the rows of the finished sheet, read from its file or composed anew, and closes them.
     *
     * @param proofDpi px an inch of the proof, nearly
     * @param work     told one unit a row of the sheet
     */
    public static Path write(BitBands sheet, SheetPlan plan, Path target, double proofDpi, BitonalSettings settings, Work work) throws IOException {
        int factor = ProofPng.factor(plan.dpi(), proofDpi);
        double dpi = plan.dpi() / factor;
        ReducedGray gray = ReducedGray.of(sheet, factor, work);
        TapePlan tape = TapePlan.of(plan);
        try (SheetFont font = new SheetFont()) {
            double sheetMm = Units.mmOfPx(gray.heightPx(), dpi);
            PlanDrawing drawing = new PlanDrawing(font);
            TapeDrawing.areas(drawing, tape.areas(), 0, 0, 1, HATCH_MM);
            double mostMm = plan.paper().widthMm() - 2 * BORDER_MM;
            double lineMm = sheetMm + BORDER_MM + EM_MM;
            String title = font.fitted(new SheetWords().of("proof.title", tape.sheet()), 1.4 * EM_MM, mostMm);
            drawing.text(title, BORDER_MM, lineMm, 1.4 * EM_MM, TapeDrawing.INK);
            double endMm = TapeDrawing.words(drawing, tape, BORDER_MM, lineMm + 2.2 * EM_MM, EM_MM, mostMm) + BORDER_MM;
            BufferedImage image = new BufferedImage(gray.widthPx(), Units.pxOfMm(endMm, dpi), BufferedImage.TYPE_INT_RGB);
            Graphics2D under = image.createGraphics();
            under.setColor(Color.WHITE);
            under.fillRect(0, 0, image.getWidth(), image.getHeight());
            under.dispose();
            byte[] levels = gray.gray();
            int[] row = new int[gray.widthPx()];
            for (int y = 0; y < gray.heightPx(); y++) {
                for (int x = 0; x < row.length; x++) {
                    int level = levels[y * row.length + x] & 0xff;
                    row[x] = level << 16 | level << 8 | level;
                }
                image.getRaster().setDataElements(0, y, row.length, 1, row);
            }
            drawing.frame(new RectMm(0, 0, plan.paper().widthMm(), sheetMm), 0.2, TapeDrawing.INK);
            drawing.drawOn(image, dpi);
            return ProofPng.write(image, dpi, target, settings);
        }
    }
}
