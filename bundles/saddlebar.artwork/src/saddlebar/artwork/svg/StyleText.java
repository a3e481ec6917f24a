package saddlebar.artwork.svg;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Takes style text apart into rules and declarations (CSS Syntax, the part that style sheets of drawings use), so that each can be judged by
 * itself and one that is not understood does not take the others with it.
 */
final class StyleText {
    /** One property with its value. */
    record Declaration(String name, String value, boolean important) {
        String text() {
            return name + ":" + value + (important ? " !important" : "");
        }
    }

    /**
     * A block with what stands before it.
     *
     * @param head selectors, or an at-rule with its words
     * @param body what stands between the braces, empty for an at-rule without a block
     * @param line lines before it in the text, from 0
     */
    record Block(String head, String body, int line) {
        boolean isAt() {
            return head.startsWith("@");
        }
    }

    private StyleText() {
    }

    static List<Declaration> declarations(String body) {
        List<Declaration> all = new ArrayList<>();
        for (String one : split(withoutComments(body), ';')) {
            int colon = one.indexOf(':');
            if (colon <= 0) {
                continue;
            }
            String name = one.substring(0, colon).strip();
            String value = one.substring(colon + 1).strip();
            boolean important = false;
            int bang = value.lastIndexOf('!');
            if (bang >= 0 && "important".equals(value.substring(bang + 1).strip().toLowerCase(Locale.ROOT))) {
                important = true;
                value = value.substring(0, bang).strip();
            }
            if (!value.isEmpty()) {
                all.add(new Declaration(name.startsWith("--") ? name : name.toLowerCase(Locale.ROOT), value, important));
            }
        }
        return all;
    }

    static List<Block> blocks(String sheet) {
        String css = withoutComments(sheet);
        List<Block> all = new ArrayList<>();
        int from = 0;
        int depth = 0;
        int brace = -1;
        char quote = 0;
        for (int i = 0; i < css.length(); i++) {
            char c = css.charAt(i);
            if (quote != 0) {
                if (c == '\\') {
                    i++;
                } else if (c == quote) {
                    quote = 0;
                }
            } else if (c == '"' || c == '\'') {
                quote = c;
            } else if (c == '{') {
                if (depth++ == 0) {
                    brace = i;
                }
            } else if (c == '}') {
                if (depth > 0 && --depth == 0) {
                    add(all, css, from, brace, css.substring(brace + 1, i));
                    from = i + 1;
                }
            } else if (c == ';' && depth == 0) {
                add(all, css, from, i, "");
                from = i + 1;
            }
        }
        if (depth > 0) { // cut off: what is there counts, as CSS says
            add(all, css, from, brace, css.substring(brace + 1));
        }
        return all;
    }

    private static void add(List<Block> all, String css, int from, int to, String body) {
        String head = css.substring(from, to).replace("<!--", "").replace("-->", "").strip();
        if (!head.isEmpty()) {
            int start = from;
            while (start < to && Character.isWhitespace(css.charAt(start))) {
                start++;
            }
            all.add(new Block(head, body, (int) css.substring(0, start).chars().filter(c -> c == '\n').count()));
        }
    }

    /** Splits where the separator stands outside quotes and brackets. */
    static List<String> split(String text, char separator) {
        List<String> parts = new ArrayList<>();
        int from = 0;
        int depth = 0;
        char quote = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (quote != 0) {
                if (c == '\\') {
                    i++;
                } else if (c == quote) {
                    quote = 0;
                }
            } else if (c == '"' || c == '\'') {
                quote = c;
            } else if (c == '(') {
                depth++;
            } else if (c == ')') {
                depth--;
            } else if (c == separator && depth <= 0) {
                parts.add(text.substring(from, i));
                from = i + 1;
            }
        }
        parts.add(text.substring(from));
        return parts;
    }

    /** Comments become spaces, lines stay. */
    private static String withoutComments(String text) {
        int at = text.indexOf("/*");
        if (at < 0) {
            return text;
        }
        StringBuilder plain = new StringBuilder(text);
        while (at >= 0) {
            int end = plain.indexOf("*/", at + 2);
            int to = end < 0 ? plain.length() : end + 2;
            for (int i = at; i < to; i++) {
                if (plain.charAt(i) != '\n') {
                    plain.setCharAt(i, ' ');
                }
            }
            at = plain.indexOf("/*", to);
        }
        return plain.toString();
    }
}
