package saddlebar.artwork.svg;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import org.apache.batik.anim.dom.SVGOMDocument;
import org.apache.batik.css.engine.CSSEngine;
import org.apache.batik.css.engine.CSSStylableElement;
import org.apache.batik.util.ParsedURL;
import org.w3c.dom.Attr;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;

import saddlebar.artwork.drawing.Blend;
import saddlebar.artwork.svg.StyleText.Block;
import saddlebar.artwork.svg.StyleText.Declaration;

/**
 * Leaves in styles and style attributes only what Batik understands, put into older words where needed; the rest is told. Without this one
 * unknown word would cost a whole style sheet.
 */
final class StyleTidy {
    private static final int MOST_NESTED = 20;

    private final SVGOMDocument document;
    private final SvgContext context;
    private final CSSEngine engine;
    private final Findings findings;
    private final Set<String> good = new HashSet<>();
    private final Map<String, String> variables = new HashMap<>();

    StyleTidy(SVGOMDocument document, SvgContext context, Findings findings) {
        this.document = document;
        this.context = context;
        this.engine = context.style();
        this.findings = findings;
    }

    /** All style sheets; to be called before the elements, since they may define variables. */
    void sheets(List<Element> styles) {
        for (Element style : styles) {
            for (Block block : StyleText.blocks(style.getTextContent())) {
                if (block.head().matches("(:root|svg|\\*)")) {
                    remember(StyleText.declarations(block.body()));
                }
            }
        }
        remember(StyleText.declarations(Source.attribute(document.getDocumentElement(), "style")));
        for (Element style : styles) {
            StringBuilder tidy = new StringBuilder();
            String media = Source.attribute(style, "media");
            String type = Source.attribute(style, "type");
            if (!type.isEmpty() && !"text/css".equals(type.strip().toLowerCase(Locale.ROOT))) {
                findings.warn("art-style", style, type, "styles of the kind " + type + " are not read; use CSS");
            } else if (media.isBlank() || isForScreen(media)) {
                blocks(style, style.getTextContent(), Source.line(style), tidy, 0);
            }
            style.removeAttributeNS(null, "media");
            while (style.hasChildNodes()) {
                style.removeChild(style.getFirstChild());
            }
            style.appendChild(document.createTextNode(tidy.toString()));
        }
    }

    private void remember(List<Declaration> declarations) {
        for (Declaration one : declarations) {
            if (one.name().startsWith("--")) {
                variables.put(one.name(), one.value());
            }
        }
    }

    private static boolean isForScreen(String media) {
        String low = media.toLowerCase(Locale.ROOT);
        return low.contains("all") || low.contains("screen");
    }

    private void blocks(Element style, String css, int firstLine, StringBuilder tidy, int depth) {
        for (Block block : StyleText.blocks(css)) {
            int line = firstLine + block.line();
            if (!block.isAt()) {
                rule(style, block, line, tidy);
                continue;
            }
            String head = block.head().toLowerCase(Locale.ROOT);
            if (head.startsWith("@media")) {
                String media = head.substring(6);
                if (media.contains("(")) {
                    warn(line, "media", "@media" + media + " is not followed, since a drawing for glass has no window size; its styles are left out");
                } else if (isForScreen(media) && depth < MOST_NESTED) {
                    blocks(style, block.body(), line, tidy, depth + 1);
                }
            } else if (head.startsWith("@import")) {
                warn(line, "outside", "a style sheet outside the drawing is not read; put the styles into the drawing");
            } else if (head.startsWith("@font-face")) {
                warn(line, "font", "a font that the drawing brings along is not used; turn its text into paths");
            } else if (head.startsWith("@supports") || head.startsWith("@layer") || head.startsWith("@container")) {
                warn(line, head, "the style rule " + block.head() + " is left out; write its styles plainly");
            }
        }
    }

    private void warn(int line, String kind, String sentence) {
        findings.add("art-style", saddlebar.model.problem.Severity.WARNING, line, kind, sentence);
    }

    private void rule(Element style, Block block, int line, StringBuilder tidy) {
        List<Declaration> left = new ArrayList<>();
        for (Declaration one : StyleText.declarations(block.body())) {
            judge(style, one, line, block.head(), left);
        }
        if (left.isEmpty()) {
            return;
        }
        String text = block.head() + "{" + left.stream().map(Declaration::text).collect(Collectors.joining(";")) + "}\n";
        context.styleFailed();
        engine.parseStyleSheet(text, new ParsedURL(document.getURL()), "all");
        if (context.styleFailed()) {
            warn(line, "selector", "the style rule for " + block.head() + " is not understood and left out; give these styles to the elements themselves");
        } else {
            tidy.append(text);
        }
    }

    /** The style attribute and the attributes that stand for properties. */
    void element(Element element) {
        String style = Source.attribute(element, "style");
        List<Declaration> left = new ArrayList<>();
        if (!style.isEmpty()) {
            for (Declaration one : StyleText.declarations(style)) {
                judge(element, one, Source.line(element), null, left);
            }
        }
        List<Declaration> extra = new ArrayList<>();
        for (Attr attribute : attributes(element)) {
            presentation(element, attribute, extra);
        }
        for (Declaration one : extra) {
            String before = one.name().endsWith("-opacity") ? Source.attribute(element, one.name()) : "";
            try { // a colour that was clear itself and is faded besides
                element.setAttributeNS(null, one.name(),
                        before.isEmpty() ? one.value() : ModernStyle.plain(Double.parseDouble(before) * Double.parseDouble(one.value())));
            } catch (NumberFormatException e) {
                element.setAttributeNS(null, one.name(), one.value());
            }
        }
        String tidy = left.stream().map(Declaration::text).collect(Collectors.joining(";"));
        if (tidy.isEmpty()) {
            element.removeAttributeNS(null, "style");
        } else if (!tidy.equals(style)) {
            element.setAttributeNS(null, "style", tidy);
        }
    }

    static List<Attr> attributes(Element element) {
        NamedNodeMap map = element.getAttributes();
        List<Attr> all = new ArrayList<>(map.getLength());
        for (int i = 0; i < map.getLength(); i++) {
            Node attribute = map.item(i);
            if (attribute.getNamespaceURI() == null) {
                all.add((Attr) attribute);
            }
        }
        all.sort(java.util.Comparator.comparing(Attr::getName)); // whatever the map's own order is
        return all;
    }

    private void presentation(Element element, Attr attribute, List<Declaration> extra) {
        String name = attribute.getName();
        boolean known = engine.getPropertyIndex(name) >= 0 && !"src".equals(name) && !"clip".equals(name);
        boolean newer = "mix-blend-mode".equals(name) || "paint-order".equals(name) || "vector-effect".equals(name) || "mask-type".equals(name);
        if (!known && !newer || attribute.getValue().isBlank()) {
            return;
        }
        List<Declaration> left = new ArrayList<>();
        judge(element, new Declaration(name, attribute.getValue().strip(), false), Source.line(element), null, left);
        if (left.size() == 1 && left.get(0).name().equals(name) && left.get(0).value().equals(attribute.getValue())) {
            return;
        }
        element.removeAttributeNS(null, name);
        extra.addAll(left);
    }

    /** @param selector the rule's selectors, or null for the element itself */
    private void judge(Element element, Declaration one, int line, String selector, List<Declaration> left) {
        String name = one.name();
        if (name.startsWith("--")) {
            return;
        }
        Declaration declaration = one.value().contains("var(") ? new Declaration(name, substituted(one.value(), 0), one.important()) : one;
        if (good.contains(declaration.text())) {
            left.add(declaration);
            return;
        }
        if (isKnown(name)) {
            if (understood(element, declaration)) {
                good.add(declaration.text());
                left.add(declaration);
                return;
            }
            Optional<List<Declaration>> old = ModernStyle.inOldWords(declaration);
            if (old.isPresent() && old.get().stream().allMatch(word -> understood(element, word))) {
                left.addAll(old.get());
                return;
            }
        } else if (ModernStyle.isHarmless(declaration) || selector == null && kept(element, declaration)) {
            return;
        }
        String what = declaration.text() + (isKnown(name) ? " is not understood and left out" : " is not drawn and left out")
                + "; change the drawing so that it does without, if it shows";
        if (selector == null) {
            findings.add("art-style", saddlebar.model.problem.Severity.WARNING, line, name, Source.tag(element) + ": " + what);
        } else {
            warn(line, name, "style rule for " + selector + ": " + what);
        }
    }

    private boolean isKnown(String name) {
        return engine.getPropertyIndex(name) >= 0 || engine.getShorthandIndex(name) >= 0;
    }

    private boolean understood(Element element, Declaration declaration) {
        if (declaration.value().contains("var(")) {
            return false;
        }
        context.styleFailed();
        Element styled = element instanceof CSSStylableElement ? element : document.getDocumentElement(); // a style element has no style itself
        engine.setMainProperties((CSSStylableElement) styled, (property, value, important) -> {
            // only whether it can be read
        }, declaration.name(), declaration.value(), false);
        return !context.styleFailed();
    }

    /** Properties that Batik does not know but that can be kept in another way. */
    private static boolean kept(Element element, Declaration declaration) {
        String name = declaration.name();
        String value = declaration.value().toLowerCase(Locale.ROOT).strip();
        if ("paint-order".equals(name)) {
            Source.put(element, Source.Note.ORDER, value);
            return true;
        } else if ("vector-effect".equals(name) && "non-scaling-stroke".equals(value)) {
            Source.put(element, Source.Note.VECTOR, value);
            return true;
        } else if ("mix-blend-mode".equals(name) && ModernStyle.blend(value) != Blend.NORMAL) {
            Source.put(element, Source.Note.BLEND, value);
            return true;
        } else if ("white-space".equals(name) && value.startsWith("pre")) {
            element.setAttributeNS(Source.XML, "xml:space", "preserve");
            return true;
        } else if (ModernStyle.isGeometry(name) && value.matches("[-+.0-9e]+(px|mm|cm|in|pt|pc)?")) {
            element.setAttributeNS(null, name, value);
            return true;
        } else if ("transform".equals(name) && value.matches("[-+.,0-9a-z()\\s]+") && !value.contains("calc")) {
            element.setAttributeNS(null, "transform", declaration.value().replaceAll("(?<=[0-9.])(px|deg)", ""));
            return true;
        }
        return ModernStyle.isGeometry(name); // percentages and auto of a surrounding page
    }

    private String substituted(String value, int depth) {
        int at = value.indexOf("var(");
        if (at < 0 || depth > MOST_NESTED) {
            return value;
        }
        int end = at + 4;
        for (int open = 1; end < value.length() && open > 0; end++) {
            open += value.charAt(end) == '(' ? 1 : value.charAt(end) == ')' ? -1 : 0;
        }
        String inside = value.substring(at + 4, Math.max(at + 4, end - 1));
        List<String> words = StyleText.split(inside, ',');
        String known = variables.get(words.get(0).strip());
        if (known == null && words.size() > 1) {
            known = inside.substring(inside.indexOf(',') + 1).strip();
        }
        return known == null ? value : substituted(value.substring(0, at) + known + value.substring(end), depth + 1);
    }
}
