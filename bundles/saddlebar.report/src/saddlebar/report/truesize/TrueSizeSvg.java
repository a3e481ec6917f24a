package saddlebar.report.truesize;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

import saddlebar.model.file.PendingFile;

/** A drawing as SVG 1.1, one user unit a mm. Pictures are left out: they belong on paper. The same drawing gives the same bytes. */
public final class TrueSizeSvg {
    private TrueSizeSvg() {
    }

    public static void write(TrueSizeDrawing drawing, Path target) throws IOException {
        try (PendingFile pending = PendingFile.beside(target)) {
            pending.out().write(text(drawing).getBytes(StandardCharsets.UTF_8));
            pending.commit();
        }
    }

    public static String text(TrueSizeDrawing drawing) {
        StringBuilder svg = new StringBuilder("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
        svg.append(
                String.format(Locale.ROOT, "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%1$.3fmm\" height=\"%2$.3fmm\" viewBox=\"0 0 %1$.3f %2$.3f\">\n",
                        drawing.widthMm(), drawing.heightMm()));
        svg.append("<title>").append(escaped(drawing.title())).append("</title>\n");
        for (Ink ink : drawing.ink()) {
            if (ink instanceof Ink.Line line) {
                svg.append(String.format(Locale.ROOT, "<path fill=\"none\" stroke=\"#%06x\" stroke-width=\"%.3f\" stroke-linejoin=\"round\"", line.rgb(),
                        line.widthMm()));
                if (line.dashMm().length > 0) {
                    svg.append(" stroke-dasharray=\"");
                    for (float dash : line.dashMm()) {
                        svg.append(dash).append(' ');
                    }
                    svg.append('"');
                }
                svg.append(" d=\"").append(path(line.paths(), line.closed())).append("\"/>\n");
            } else if (ink instanceof Ink.Area area) {
                svg.append(String.format(Locale.ROOT, "<path fill=\"#%06x\" fill-rule=\"evenodd\" d=\"%s\"/>\n", area.rgb(), path(area.rings(), true)));
            } else if (ink instanceof Ink.Words words) {
                svg.append(String.format(Locale.ROOT,
                        "<text x=\"%.3f\" y=\"%.3f\" font-family=\"sans-serif\" font-size=\"%.3f\" text-anchor=\"middle\" fill=\"#%06x\">%s</text>\n",
                        words.xMm(), words.yMm() + words.capitalMm() / 2, words.capitalMm() / PageInk.CAPITAL_EM, words.rgb(), escaped(words.text())));
            }
        }
        return svg.append("</svg>\n").toString();
    }

    private static String path(List<double[]> paths, boolean closed) {
        StringBuilder d = new StringBuilder();
        for (double[] xy : paths) {
            for (int i = 0; i + 1 < xy.length; i += 2) {
                d.append(String.format(Locale.ROOT, "%s%.3f %.3f", i == 0 ? "M" : "L", xy[i], xy[i + 1]));
            }
            d.append(closed ? "Z" : "");
        }
        return d.toString();
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
