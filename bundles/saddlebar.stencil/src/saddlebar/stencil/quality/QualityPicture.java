package saddlebar.stencil.quality;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

import saddlebar.model.units.Units;
import saddlebar.stencil.code.BitonalSettings;
import saddlebar.stencil.code.ProofPng;
import saddlebar.stencil.sheet.PlanDrawing;
import saddlebar.stencil.sheet.RectMm;
import saddlebar.stencil.sheet.SheetFont;
import saddlebar.stencil.wedge.WedgeSheet;

/**
 * Plots of {@link QualityRun}s, one below the other: power of the waves that a tone is made of, tone error of each patch, grain at the distance, and a
 * table with anisotropy and the worst repeat. Colours: Okabe, M., Ito, K. (2008). Color Universal Design.
 */
public final class QualityPicture {
    static final double WIDTH_MM = 250;
    static final double HEIGHT_MM = 118;
    private static final double DPI = 150;
    private static final double EM_MM = 2.7;
    private static final double LEAST_DB = -30;
    private static final double MOST_DB = 40;
    private static final Color INK = new Color(0x222222);
    private static final Color FAINT = new Color(0xD0D0D0);
    private static final List<Color> LINES = List.of(new Color(0x0072B2), new Color(0xD55E00), new Color(0x009E73), new Color(0xCC79A7), new Color(0x56B4E9));
    private static final List<Double> SHOWN = List.of(0.05, 0.25, 0.5, 0.75, 0.95);

    private final PlanDrawing drawing;
    private final SheetFont font;

    private QualityPicture(SheetFont font) {
        this.font = font;
        this.drawing = new PlanDrawing(font);
    }

    /** Writes the plots as PNG. */
    public static Path write(List<QualityRun> runs, Path target, BitonalSettings settings) throws IOException {
        try (SheetFont font = new SheetFont()) {
            QualityPicture picture = new QualityPicture(font);
            for (int i = 0; i < runs.size(); i++) {
                picture.run(runs.get(i), i * HEIGHT_MM);
            }
            BufferedImage image = new BufferedImage(Units.pxOfMm(WIDTH_MM, DPI), Units.pxOfMm(HEIGHT_MM * runs.size(), DPI), BufferedImage.TYPE_INT_RGB);
            Graphics2D white = image.createGraphics();
            white.setColor(Color.WHITE);
            white.fillRect(0, 0, image.getWidth(), image.getHeight());
            white.dispose();
            picture.drawing.drawOn(image, DPI);
            return ProofPng.write(image, DPI, target, settings);
        }
    }

    private void run(QualityRun run, double topMm) throws IOException {
        text(WedgeSheet.name(run.recipe()) + String.format(Locale.ROOT, " at %.0f dpi: how even its tones are", run.recipe().dpi()), 8, topMm + 7,
                1.35 * EM_MM);
        spectrum(run, new RectMm(20, topMm + 16, 100, 78));
        bars("tone error, points", run, new RectMm(142, topMm + 16, 44, 33), patch -> 100 * patch.quality().toneError());
        bars(String.format(Locale.ROOT, "grain seen at %s m, %% of a solid's step", Units.plain(run.distanceM())), run, new RectMm(142, topMm + 61, 44, 33),
                patch -> 100 * patch.quality().grain());
        table(run, 196, topMm + 16);
        drawing.fill(new RectMm(8, topMm + HEIGHT_MM - 2, WIDTH_MM - 16, 0.15), FAINT);
    }

    private void spectrum(QualityRun run, RectMm box) throws IOException {
        double most = Math.min(run.patches().isEmpty() ? 1 : run.cyclesPerMmARing() * run.patches().get(0).radial().length, reach(run));
        for (double db = LEAST_DB; db <= MOST_DB; db += 10) {
            double y = box.bottomMm() - (db - LEAST_DB) / (MOST_DB - LEAST_DB) * box.heightMm();
            drawing.fill(new RectMm(box.xMm(), y, box.widthMm(), db == 0 ? 0.3 : 0.12), db == 0 ? INK : FAINT);
            right(Units.plain(db), box.xMm() - 1.5, y + EM_MM * 0.35);
        }
        double step = most > 6 ? 2 : most > 3 ? 1 : 0.5;
        for (double f = 0; f <= most + 1e-9; f += step) {
            double x = box.xMm() + f / most * box.widthMm();
            drawing.fill(new RectMm(x, box.bottomMm(), 0.15, 1), INK);
            middle(Units.plain(f), x, box.bottomMm() + 4);
        }
        text("power, dB: 0 is chance", box.xMm(), box.yMm() - 2, EM_MM);
        middle("cycles a mm", box.xMm() + box.widthMm() / 2, box.bottomMm() + 8);
        int colour = 0;
        for (double tone : SHOWN) {
            for (PatchQuality patch : run.patches()) {
                if (patch.asked() == tone) {
                    line(patch.radial(), run.cyclesPerMmARing(), most, box, LINES.get(colour % LINES.size()));
                    double y = box.bottomMm() + 13;
                    double x = box.xMm() + colour * 19;
                    drawing.fill(new RectMm(x, y - 1.2, 5, 0.7), LINES.get(colour % LINES.size()));
                    text(Math.round(100 * tone) + " %", x + 6, y, EM_MM);
                    colour++;
                }
            }
        }
    }

    /** Three dots or cells a mm and more show nothing that an eye sees. */
    private static double reach(QualityRun run) {
        double lpi = run.recipe().lpi();
        boolean dots = List.of("diffusion", "bluenoise", "greennoise").contains(run.recipe().method());
        return 3 * (dots ? 1 / run.recipe().dotMm() : lpi / Units.MM_PER_INCH);
    }

    private void line(double[] power, double perRing, double most, RectMm box, Color colour) {
        Path2D path = new Path2D.Double();
        boolean begun = false;
        for (int ring = 0; ring < power.length && (ring + 0.5) * perRing <= most; ring++) {
            double db = Math.max(LEAST_DB, Math.min(MOST_DB, 10 * Math.log10(Math.max(1e-12, power[ring]))));
            double x = box.xMm() + (ring + 0.5) * perRing / most * box.widthMm();
            double y = box.bottomMm() - (db - LEAST_DB) / (MOST_DB - LEAST_DB) * box.heightMm();
            if (begun) {
                path.lineTo(x, y);
            } else {
                path.moveTo(x, y);
                begun = true;
            }
        }
        drawing.fill(new Path2D.Double(new BasicStroke(0.35f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND).createStrokedShape(path)), colour);
    }

    private interface Measure {
        double of(PatchQuality patch);
    }

    private void bars(String title, QualityRun run, RectMm box, Measure measure) throws IOException {
        double most = run.patches().stream().mapToDouble(patch -> Math.abs(measure.of(patch))).max().orElse(1);
        double scale = Math.max(0.1, niceAbove(most));
        boolean signed = run.patches().stream().anyMatch(patch -> measure.of(patch) < 0);
        double zero = signed ? box.yMm() + box.heightMm() / 2 : box.bottomMm();
        double unit = (signed ? box.heightMm() / 2 : box.heightMm()) / scale;
        text(title, box.xMm() - 6, box.yMm() - 2, EM_MM);
        drawing.fill(new RectMm(box.xMm(), zero - 0.1, box.widthMm(), 0.2), INK);
        right(Units.plain(scale), box.xMm() - 1, zero - scale * unit + EM_MM * 0.7);
        right("0", box.xMm() - 1, zero + EM_MM * 0.35);
        if (signed) {
            right(Units.plain(-scale), box.xMm() - 1, zero + scale * unit);
        }
        for (PatchQuality patch : run.patches()) {
            double x = box.xMm() + patch.asked() * (box.widthMm() - 1.6);
            double high = measure.of(patch) * unit;
            drawing.fill(new RectMm(x, Math.min(zero, zero - high), 1.2, Math.max(0.12, Math.abs(high))), LINES.get(0));
        }
        text("0 %", box.xMm(), box.bottomMm() + 4, EM_MM);
        middle("tone", box.xMm() + box.widthMm() / 2, box.bottomMm() + 4);
        right("100 %", box.rightMm(), box.bottomMm() + 4);
    }

    private static double niceAbove(double value) {
        double power = Math.pow(10, Math.floor(Math.log10(Math.max(1e-6, value))));
        for (double step : new double[] {1, 2, 5, 10}) {
            if (value <= step * power) {
                return Math.rint(step * power * 1e6) / 1e6;
            }
        }
        return 10 * power;
    }

    private void table(QualityRun run, double xMm, double yMm) throws IOException {
        double[] columns = {8, 25, 37, 48};
        String[] heads = {"tone", "uneven dB", "repeat mm", "power"};
        text("direction and repeat", xMm, yMm - 2, EM_MM);
        double em = 0.8 * EM_MM;
        for (int i = 0; i < heads.length; i++) {
            right(heads[i], xMm + columns[i], yMm + 3, em);
        }
        double y = yMm + 3;
        for (PatchQuality patch : run.patches()) {
            y += 4.4;
            ToneQuality quality = patch.quality();
            right(Math.round(100 * patch.asked()) + " %", xMm + columns[0], y, em);
            right(String.format(Locale.ROOT, "%.1f", quality.anisotropyDb()), xMm + columns[1], y, em);
            right(String.format(Locale.ROOT, "%.1f", quality.repeatMm()), xMm + columns[2], y, em);
            right(String.format(Locale.ROOT, "%.1f", quality.repeatPower()), xMm + columns[3], y, em);
        }
    }

    private void text(String words, double xMm, double yMm, double emMm) {
        drawing.text(words, xMm, yMm, emMm, INK);
    }

    private void right(String words, double xMm, double yMm) throws IOException {
        right(words, xMm, yMm, EM_MM);
    }

    private void right(String words, double xMm, double yMm, double emMm) throws IOException {
        text(words, xMm - font.widthMm(words, emMm), yMm, emMm);
    }

    private void middle(String words, double xMm, double yMm) throws IOException {
        text(words, xMm - font.widthMm(words, EM_MM) / 2, yMm, EM_MM);
    }
}
