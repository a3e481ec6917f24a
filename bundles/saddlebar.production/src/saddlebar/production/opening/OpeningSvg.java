package saddlebar.production.opening;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;

import saddlebar.cartoon.opening.OpeningPlan;
import saddlebar.cartoon.opening.SaddleBar;
import saddlebar.model.art.DrawnLine;
import saddlebar.model.file.PendingFile;

/** The outlines of an opening and its bars at true size (SVG 1.1, one user unit a mm): for looking, and to draw the cartoon in. */
public final class OpeningSvg {
    private static final double BORDER_MM = 10;

    private OpeningSvg() {
    }

    public static void write(Path target, OpeningPlan plan) throws IOException {
        try (PendingFile pending = PendingFile.beside(target)) {
            pending.out().write(text(plan).getBytes(StandardCharsets.UTF_8));
            pending.commit();
        }
    }

    static String text(OpeningPlan plan) {
        double[] box = OpeningPlan.box(plan.sizes().tight());
        double left = box[0] - BORDER_MM;
        double top = box[1] - BORDER_MM;
        double width = box[2] - box[0] + 2 * BORDER_MM;
        double height = box[3] - box[1] + 2 * BORDER_MM;
        StringBuilder svg = new StringBuilder("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
        svg.append(String.format(Locale.ROOT, "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%.3fmm\" height=\"%.3fmm\" viewBox=\"%.3f %.3f %.3f %.3f\">\n",
                width, height, left, top, width, height));
        svg.append("<title>").append(plan.shape().name()).append("</title>\n");
        path(svg, "tight-size", "#8a8a8a", plan.sizes().tight());
        path(svg, "panel", "#000", plan.sizes().panel());
        path(svg, "sight-size", "#0072b2", plan.sizes().sight());
        svg.append("<g id=\"bars\" stroke=\"#d55e00\">\n");
        for (SaddleBar bar : plan.division().bars()) {
            svg.append(String.format(Locale.ROOT, "<path stroke-width=\"%s\" d=\"M%.3f %.3fH%.3f\"/>\n", bar.division() ? "3" : "1", bar.leftMm(), bar.yMm(),
                    bar.rightMm()));
        }
        return svg.append("</g>\n</svg>\n").toString();
    }

    private static void path(StringBuilder svg, String id, String colour, DrawnLine line) {
        svg.append("<path id=\"").append(id).append("\" fill=\"none\" stroke=\"").append(colour).append("\" stroke-width=\"0.5\" d=\"");
        for (int i = 0; i < line.points(); i++) {
            svg.append(i == 0 ? "M" : " ").append(String.format(Locale.ROOT, "%.3f %.3f", line.x(i), line.y(i)));
        }
        svg.append("Z\"/>\n");
    }
}
