package saddlebar.report.document;

import java.util.regex.Pattern;

/**
 * How documents look: one family in three cuts, a text of 9.5 on 13.5 points, a left margin wide enough to file, headings in the studio's colour, hairlines
 * in tables, figures aligned right. Widths in mm, so that paper decides and no screen.
 */
final class ReportStyle {
    private static final Pattern COLOUR = Pattern.compile("#[0-9A-Fa-f]{6}");
    static final String USUAL_ACCENT = "#2f4b5c";
    /** Left and right margins in mm. */
    static final double MARGINS_MM = 24 + 18;

    private ReportStyle() {
    }

    static String accent(String wanted) {
        return wanted != null && COLOUR.matcher(wanted).matches() ? wanted : USUAL_ACCENT;
    }

    static String css(ReportPaper paper, String accent, String head, String foot) {
        return """
                @page { size: %s; margin: 27mm 18mm 24mm 24mm;
                  @top-left { content: "%s"; font-family: Lato; font-size: 7.5pt; color: #6a6a6a; vertical-align: bottom; padding-bottom: 6mm; }
                  @bottom-left { content: "%s"; font-family: Lato; font-size: 7.5pt; color: #6a6a6a; vertical-align: top; padding-top: 6mm; }
                  @bottom-right { content: counter(page) " / " counter(pages); font-family: Lato; font-size: 7.5pt; color: #6a6a6a; vertical-align: top; padding-top: 6mm; } }
                @page :first { margin-top: 18mm; @top-left { content: none; } }
                """
                .formatted(paper.css(), quoted(head), quoted(foot)) + plain(accent);
    }

    /** What paper and mail share. */
    static String plain(String accent) {
        return """
                body { font-family: Lato, sans-serif; font-size: 9.5pt; line-height: 13.5pt; color: #1c1c1c; margin: 0; }
                p { margin: 0 0 2.4mm 0; orphans: 3; widows: 3; }
                h1 { font-size: 25pt; line-height: 29pt; font-weight: bold; margin: 0 0 7mm 0; color: ACCENT; }
                h2 { font-size: 14pt; line-height: 18pt; margin: 8mm 0 2.6mm 0; color: ACCENT; page-break-after: avoid; -fs-page-break-min-height: 30mm; }
                h2.new { page-break-before: always; margin-top: 0; }
                h3 { font-size: 10.5pt; line-height: 14pt; margin: 5mm 0 1.8mm 0; page-break-after: avoid; -fs-page-break-min-height: 24mm; }
                ol { margin: 0 0 3mm 0; padding-left: 5mm; } li { margin-bottom: 1mm; }
                table { border-collapse: collapse; width: 100%; }
                td, th { vertical-align: top; text-align: left; font-weight: normal; }
                table.list { -fs-table-paginate: paginate; margin: 0 0 4mm 0; font-size: 8.8pt; line-height: 12pt; }
                table.list th { font-weight: bold; font-size: 7.8pt; color: ACCENT; border-bottom: 0.9pt solid ACCENT; padding: 0 3mm 1.2mm 0; vertical-align: bottom; }
                table.list td { border-bottom: 0.35pt solid #c9c9c9; padding: 1.1mm 3mm 1.1mm 0; }
                table.list tr { page-break-inside: avoid; }
                table.list .number { text-align: right; white-space: nowrap; padding-right: 2mm; padding-left: 2mm; }
                table.list .narrow { white-space: nowrap; } table.list .key { width: 9%; white-space: nowrap; } div.together { page-break-inside: avoid; }
                table.list tr.sum td { border-bottom: 0; padding-top: 1.3mm; }
                table.list tr.last td { font-weight: bold; border-top: 0.9pt solid ACCENT; }
                table.facts { margin: 0 0 4mm 0; } table.facts th { width: 38mm; color: #5a5a5a; padding: 0.7mm 4mm 0.7mm 0; } table.facts td { padding: 0.7mm 0; }
                table.facts tr { page-break-inside: avoid; }
                table.figures { page-break-inside: avoid; margin: 1mm 0 4mm 0; } table.figures td { padding: 0 4mm 0 0; }
                .caption { font-size: 8pt; line-height: 11pt; color: #4a4a4a; margin-top: 1.2mm; }
                .remark { font-size: 8pt; line-height: 11pt; color: #4a4a4a; }
                .caution { font-size: 8.6pt; line-height: 12pt; border-left: 2.2pt solid #d55e00; background: #fbf1ea; padding: 1.8mm 3mm; page-break-inside: avoid; }
                table.masthead { margin-bottom: 22mm; } .studio { font-weight: bold; font-size: 10.5pt; margin: 2mm 0 0 0; } td.address { text-align: right; font-size: 8.5pt; line-height: 12pt; color: #4a4a4a; }
                .kind { font-size: 10pt; color: #5a5a5a; margin: 0 0 1mm 0; }
                div.card { page-break-inside: avoid; min-height: 98mm; margin-bottom: 8mm; } table.cardhead { margin-bottom: 3mm; border-bottom: 0.9pt solid ACCENT; } td.code { width: 30mm; text-align: right; padding-bottom: 2mm; }
                div.card h3 { font-size: 18pt; line-height: 22pt; margin: 0; color: ACCENT; } .kicker { font-size: 9.5pt; color: #5a5a5a; margin: 3mm 0 0 0; }
                table.blanks { margin: 5mm 0; } table.blanks td { border-top: 0.5pt solid #5a5a5a; border-right: 5mm solid #ffffff; padding: 1mm 4mm 9mm 0; font-size: 7.8pt; color: #5a5a5a; }
                """
                .replace("ACCENT", accent);
    }

    /** As a string of CSS; what XML would take for its own is written by its number. */
    private static String quoted(String text) {
        StringBuilder safe = new StringBuilder();
        text.codePoints().forEach(c -> {
            if (c == '"' || c == '\\' || c == '&' || c == '<' || c == '>' || c < ' ') {
                safe.append('\\').append(Integer.toHexString(Math.max(' ', c))).append(' ');
            } else {
                safe.appendCodePoint(c);
            }
        });
        return safe.toString();
    }
}
