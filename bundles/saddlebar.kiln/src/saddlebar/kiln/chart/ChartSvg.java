package saddlebar.kiln.chart;

import java.util.Locale;

import saddlebar.model.units.Units;

/** A chart as SVG. */
public final class ChartSvg {
    private ChartSvg() {
    }

    public static String text(ChartDrawing drawing) {
        StringBuilder svg = new StringBuilder(200_000);
        svg.append(String.format(Locale.ROOT,
                "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%1$.0f\" height=\"%2$.0f\" viewBox=\"0 0 %1$.0f %2$.0f\" font-family=\"sans-serif\" "
                        + "font-size=\"%3$.0f\" fill=\"%4$s\">\n",
                drawing.widthPt(), drawing.heightPt(), Panel.FONT_PT, colour(Ink.TEXT)));
        drawing.marks().forEach(mark -> append(svg, mark));
        return svg.append("</svg>\n").toString();
    }

    private static void append(StringBuilder svg, Mark mark) {
        if (mark instanceof Mark.Box box) {
            svg.append(String.format(Locale.ROOT, "<rect x=\"%.1f\" y=\"%.1f\" width=\"%.1f\" height=\"%.1f\" fill=\"%s\" stroke=\"%s\"/>\n", box.x(),
                    box.y(), box.width(), box.height(), colour(box.fill()), colour(box.outline())));
        } else if (mark instanceof Mark.Rule rule) {
            svg.append(String.format(Locale.ROOT, "<line x1=\"%.1f\" y1=\"%.1f\" x2=\"%.1f\" y2=\"%.1f\" %s/>\n", rule.x1(), rule.y1(), rule.x2(), rule.y2(),
                    style(rule.ink())));
        } else if (mark instanceof Mark.Curve curve) {
            svg.append("<path d=\"");
            double[] xy = curve.xy();
            for (int i = 0; i < xy.length; i += 2) {
                svg.append(String.format(Locale.ROOT, "%s%.1f %.1f", i == 0 ? "M" : "L", xy[i], xy[i + 1]));
            }
            svg.append("\" fill=\"none\" ").append(style(curve.ink())).append("/>\n");
        } else if (mark instanceof Mark.Words words) {
            String place = words.upwards()
                    ? String.format(Locale.ROOT, "transform=\"translate(%.1f %.1f) rotate(-90)\"", words.x(), words.y())
                    : String.format(Locale.ROOT, "x=\"%.1f\" y=\"%.1f\"", words.x(), words.y());
            String size = words.sizePt() == Panel.FONT_PT ? "" : String.format(Locale.ROOT, " font-size=\"%.0f\"", words.sizePt());
            svg.append("<text ").append(place).append(size).append(words.bold() ? " font-weight=\"bold\"" : "").append(" text-anchor=\"")
                    .append(words.anchor().name().toLowerCase(Locale.ROOT)).append("\">").append(escaped(words.text())).append("</text>\n");
        }
    }

    private static String colour(Ink ink) {
        return String.format(Locale.ROOT, "#%06x", ink.rgb());
    }

    private static String style(Ink ink) {
        StringBuilder dash = new StringBuilder();
        for (float length : ink.dash()) {
            dash.append(dash.isEmpty() ? "" : " ").append(Units.plain(length));
        }
        return "stroke=\"" + colour(ink) + "\" stroke-width=\"" + Units.plain(ink.widthPt()) + "\" stroke-linejoin=\"round\""
                + (dash.isEmpty() ? "" : " stroke-dasharray=\"" + dash + "\"");
    }

    static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replace("\"", "&quot;").replaceAll("[\\x00-\\x08\\x0B-\\x1F]",
                " ");
    }
}
