package saddlebar.report.document;

import java.util.ArrayList;
import java.util.Base64;
import java.util.List;

/** Takes the words of a document and keeps them as HTML: headings that become bookmarks, tables, pictures, cautions. Everything is escaped here. */
public final class Leaf {
    private final Words words;
    private final StringBuilder html = new StringBuilder();
    private final List<Heading> headings = new ArrayList<>();

    /** A heading that readers can jump to. */
    record Heading(int level, String id, String title) {
    }

    /** How a column of a table stands. */
    public enum Column {
        TEXT, NUMBER, NARROW,
        /** What a row is looked up by: narrow, at the left. */
        KEY
    }

    Leaf(Words words) {
        this.words = words;
    }

    public Words words() {
        return words;
    }

    String html() {
        return html.toString();
    }

    List<Heading> headings() {
        return headings;
    }

    /** A part of the document. */
    public Leaf heading(String title) {
        return heading(2, title, "");
    }

    public Leaf subheading(String title) {
        return heading(3, title, "");
    }

    /** A part that begins a page. */
    public Leaf headingOnNewPage(String title) {
        return heading(2, title, " class=\"new\"");
    }

    private Leaf heading(int level, String title, String more) {
        String id = "h" + (headings.size() + 1);
        headings.add(new Heading(level, id, title));
        html.append("<h").append(level).append(" id=\"").append(id).append('"').append(more).append('>').append(escaped(title)).append("</h").append(level)
                .append(">\n");
        return this;
    }

    public Leaf paragraph(String text) {
        html.append("<p>").append(escaped(text)).append("</p>\n");
        return this;
    }

    /** A sentence in small letters, such as where a figure comes from. */
    public Leaf remark(String text) {
        html.append("<p class=\"remark\">").append(escaped(text)).append("</p>\n");
        return this;
    }

    /** What can hurt, beside the act. */
    public Leaf caution(String text) {
        html.append("<p class=\"caution\"><b>").append(escaped(words.of("caution"))).append("</b> ").append(escaped(text)).append("</p>\n");
        return this;
    }

    public Leaf list(List<String> items) {
        html.append("<ol>");
        items.forEach(item -> html.append("<li>").append(escaped(item)).append("</li>"));
        html.append("</ol>\n");
        return this;
    }

    /** Rows of two: what, how. */
    public Leaf facts(List<List<String>> rows) {
        html.append("<table class=\"facts\"><tbody>");
        for (List<String> row : rows) {
            html.append("<tr><th scope=\"row\">").append(escaped(row.get(0))).append("</th><td>").append(lines(row.get(1))).append("</td></tr>");
        }
        html.append("</tbody></table>\n");
        return this;
    }

    /** A table whose head stands again on each page; rows are never torn. */
    public Leaf table(List<String> head, List<Column> columns, List<List<String>> rows) {
        return table(head, columns, rows, List.of());
    }

    /** @param sums rows at the end, set apart */
    public Leaf table(List<String> head, List<Column> columns, List<List<String>> rows, List<List<String>> sums) {
        html.append("<table class=\"list\"><thead><tr>");
        for (int i = 0; i < head.size(); i++) {
            html.append("<th scope=\"col\"").append(style(columns.get(i))).append('>').append(escaped(head.get(i))).append("</th>");
        }
        html.append("</tr></thead><tbody>");
        rows.forEach(row -> row(row, columns, ""));
        for (int i = 0; i < sums.size(); i++) {
            row(sums.get(i), columns, i == sums.size() - 1 ? " class=\"sum last\"" : " class=\"sum\"");
        }
        html.append("</tbody></table>\n");
        return this;
    }

    private void row(List<String> row, List<Column> columns, String more) {
        html.append("<tr").append(more).append('>');
        for (int i = 0; i < row.size(); i++) {
            html.append("<td").append(style(columns.get(i))).append('>').append(lines(row.get(i))).append("</td>");
        }
        html.append("</tr>");
    }

    private static String style(Column column) {
        return switch (column) {
            case TEXT -> "";
            case NUMBER -> " class=\"number\"";
            case NARROW -> " class=\"narrow\"";
            case KEY -> " class=\"key\"";
        };
    }

    /** Pictures side by side, each with words under it; they keep within the width. */
    public Leaf figures(List<Picture> pictures, List<String> captions, double widthMm, double mostHeightMm) {
        html.append("<table class=\"figures\"><tbody><tr>");
        double each = widthMm / pictures.size() - 4;
        for (int i = 0; i < pictures.size(); i++) {
            Picture picture = pictures.get(i);
            double scale = Math.min(each / picture.widthPx(), mostHeightMm / picture.heightPx());
            html.append("<td>").append(image(picture, picture.widthPx() * scale, picture.heightPx() * scale)).append("<div class=\"caption\">")
                    .append(escaped(captions.get(i))).append("</div></td>");
        }
        html.append("</tr></tbody></table>\n");
        return this;
    }

    private static String image(Picture picture, double widthMm, double heightMm) {
        return String.format(java.util.Locale.ROOT, "<img alt=\"%s\" style=\"width:%.1fmm;height:%.1fmm\" src=\"data:%s;base64,%s\"/>",
                escaped(picture.words()), widthMm,
                heightMm, picture.mime(), Base64.getEncoder().encodeToString(picture.bytes()));
    }

    /** Begins a card: a page of its own with its title, and its code at the right where there is one. */
    public Leaf card(String title, String kicker, Picture code) {
        String id = "h" + (headings.size() + 1);
        headings.add(new Heading(3, id, kicker + " " + title));
        html.append("<div class=\"card\"><table class=\"cardhead\"><tbody><tr><td><p class=\"kicker\">").append(escaped(kicker)).append("</p><h3 id=\"")
                .append(id)
                .append("\">").append(escaped(title)).append("</h3></td><td class=\"code\">").append(image(code, 26, 26))
                .append("</td></tr></tbody></table>\n");
        return this;
    }

    public Leaf endCard() {
        html.append("</div>\n");
        return this;
    }

    /** From here to the end of the block all stays on one page. */
    public Leaf together() {
        html.append("<div class=\"together\">");
        return this;
    }

    public Leaf endTogether() {
        html.append("</div>\n");
        return this;
    }

    /** Room for hand and pen. */
    public Leaf blanks(List<String> labels) {
        html.append("<table class=\"blanks\"><tbody><tr>");
        labels.forEach(label -> html.append("<td>").append(escaped(label)).append("</td>"));
        html.append("</tr></tbody></table>\n");
        return this;
    }

    /** The first page's head: mark, studio, kind of document, title and rows of facts. */
    Leaf title(ReportMatter matter, String kind, String title, List<List<String>> rows) {
        html.append("<table class=\"masthead\"><tbody><tr><td>");
        matter.mark().ifPresent(mark -> html.append(image(mark, 22.0 * mark.widthPx() / Math.max(mark.widthPx(), mark.heightPx()),
                22.0 * mark.heightPx() / Math.max(mark.widthPx(), mark.heightPx()))));
        html.append("<p class=\"studio\">").append(escaped(text(matter.studio().getName()))).append("</p></td><td class=\"address\">")
                .append(lines(
                        text(matter.studio().getAddress()) + (text(matter.studio().getContact()).isEmpty() ? "" : "\n" + text(matter.studio().getContact()))))
                .append("</td></tr></tbody></table>\n");
        html.append("<p class=\"kind\">").append(escaped(kind)).append("</p><h1 id=\"h0\">").append(escaped(title)).append("</h1>\n");
        return facts(rows);
    }

    static String text(String text) {
        return text == null ? "" : text.strip();
    }

    private static String lines(String text) {
        return escaped(text).replace("\n", "<br/>");
    }

    static String escaped(String text) {
        StringBuilder safe = new StringBuilder(text.length());
        text.codePoints().forEach(c -> {
            switch (c) {
                case '&' -> safe.append("&amp;");
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                case '"' -> safe.append("&quot;");
                default -> {
                    if (c >= ' ' || c == '\n') { // XML takes no other control characters
                        safe.appendCodePoint(c);
                    }
                }
            }
        });
        return safe.toString();
    }
}
