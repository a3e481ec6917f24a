package saddlebar.artwork.svg;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import saddlebar.artwork.drawing.Blend;
import saddlebar.artwork.svg.ColourWords.Colour;
import saddlebar.artwork.svg.StyleText.Declaration;

/**
 * Style as newer programs write it, put into the words of SVG 1.1 that Batik knows, where that says the same; and which unknown properties
 * change nothing that is painted.
 */
final class ModernStyle {
    private static final Set<String> OPACITIES = Set.of("opacity", "fill-opacity", "stroke-opacity", "stop-opacity", "flood-opacity");
    private static final Map<String, String> OPACITY_OF = Map.of("fill", "fill-opacity", "stroke", "stroke-opacity", "stop-color", "stop-opacity",
            "flood-color", "flood-opacity");
    private static final Set<String> LINES = Set.of("none", "underline", "overline", "line-through");
    /** Geometry that newer style sheets may set; told by attribute before. */
    private static final Set<String> GEOMETRY = Set.of("x", "y", "cx", "cy", "r", "rx", "ry", "width", "height");

    /** Unknown properties that never change a drawing. */
    private static final Set<String> HARMLESS = Set.of("isolation", "line-height", "text-align", "text-align-last", "user-select", "touch-action",
            "will-change", "solid-color", "solid-opacity", "shape-padding", "shape-margin", "shape-image-threshold", "font-optical-sizing",
            "font-synthesis", "font-kerning", "text-decoration-color", "position", "top", "left", "right", "bottom", "z-index", "float", "box-sizing",
            "outline", "object-fit", "max-width", "max-height", "min-width", "min-height", "tab-size", "hyphens", "speak", "page", "orphans", "widows");
    private static final List<String> HARMLESS_FAMILIES = List.of("-", "background", "border", "margin", "padding", "transition", "animation", "grid",
            "flex", "scroll", "caret", "column", "break", "page-break", "list-style");
    /** Unknown properties that change nothing at these values. */
    private static final Map<String, Set<String>> HARMLESS_VALUES = Map.ofEntries(Map.entry("mix-blend-mode", Set.of("normal")),
            Map.entry("mask-type", Set.of("luminance")), Map.entry("font-feature-settings", Set.of("normal")),
            Map.entry("font-variation-settings", Set.of("normal")), Map.entry("font-variant-ligatures", Set.of("normal")),
            Map.entry("font-variant-position", Set.of("normal")), Map.entry("font-variant-caps", Set.of("normal")),
            Map.entry("font-variant-numeric", Set.of("normal")), Map.entry("font-variant-alternates", Set.of("normal")),
            Map.entry("font-variant-east-asian", Set.of("normal")), Map.entry("text-indent", Set.of("0", "0px")),
            Map.entry("text-orientation", Set.of("mixed")), Map.entry("text-transform", Set.of("none")),
            Map.entry("text-decoration-line", Set.of("none")), Map.entry("text-decoration-style", Set.of("solid")),
            Map.entry("text-decoration-thickness", Set.of("auto")), Map.entry("text-underline-position", Set.of("auto")),
            Map.entry("text-underline-offset", Set.of("auto")), Map.entry("text-overflow", Set.of("clip")),
            Map.entry("white-space", Set.of("normal", "nowrap")), Map.entry("transform", Set.of("none")),
            Map.entry("transform-box", Set.of("view-box", "border-box", "fill-box", "content-box", "stroke-box")),
            Map.entry("mask-image", Set.of("none")), Map.entry("mask-mode", Set.of("match-source")), Map.entry("mask-repeat", Set.of("repeat")),
            Map.entry("mask-clip", Set.of("border-box")), Map.entry("mask-origin", Set.of("border-box")),
            Map.entry("mask-composite", Set.of("add")), Map.entry("mask-size", Set.of("auto")), Map.entry("mask-position", Set.of("0% 0%")),
            Map.entry("shape-inside", Set.of("none")), Map.entry("shape-subtract", Set.of("none")), Map.entry("inline-size", Set.of("0", "auto")),
            Map.entry("filter-margin-top", Set.of("0")), Map.entry("paint-order", Set.of("normal")), Map.entry("vector-effect", Set.of("none")),
            Map.entry("color-scheme", Set.of("normal", "light")), Map.entry("print-color-adjust", Set.of("economy", "exact")));

    private ModernStyle() {
    }

    static boolean isHarmless(Declaration unknown) {
        String value = unknown.value().toLowerCase(Locale.ROOT);
        return HARMLESS.contains(unknown.name()) || HARMLESS_FAMILIES.stream().anyMatch(unknown.name()::startsWith)
                || HARMLESS_VALUES.getOrDefault(unknown.name(), Set.of()).contains(value) || "initial".equals(value) || "unset".equals(value);
    }

    /** The way of laying over that a value of mix-blend-mode names; normal for what is not known. */
    static Blend blend(String value) {
        try {
            Blend blend = Blend.valueOf(value.replace('-', '_').toUpperCase(Locale.ROOT));
            return blend == Blend.APART ? Blend.NORMAL : blend;
        } catch (IllegalArgumentException e) {
            return Blend.NORMAL;
        }
    }

    static boolean isGeometry(String name) {
        return GEOMETRY.contains(name);
    }

    /** The same in words of SVG 1.1, if there are such. */
    static Optional<List<Declaration>> inOldWords(Declaration modern) {
        String name = modern.name();
        String value = modern.value().strip();
        String low = value.toLowerCase(Locale.ROOT);
        if (OPACITIES.contains(name) && low.endsWith("%")) {
            return number(low.substring(0, low.length() - 1)).map(percent -> one(modern, plain(percent / 100)));
        } else if (OPACITY_OF.containsKey(name) || "color".equals(name) || "lighting-color".equals(name)) {
            return ColourWords.parse(value).map(colour -> colour(modern, colour));
        }
        String old = switch (name) {
            case "writing-mode" -> low.equals("horizontal-tb") ? "lr-tb" : low.startsWith("vertical-") ? "tb" : "";
            case "image-rendering" -> low.contains("pixelated") || low.contains("crisp")
                    ? "optimizeSpeed"
                    : low.equals("smooth") || low.equals("high-quality") ? "optimizeQuality" : "";
            case "font-stretch" -> low.equals("100%") ? "normal" : "";
            case "font-style" -> low.startsWith("oblique") ? "oblique" : "";
            case "font-weight" -> number(low).map(weight -> plain(100 * Math.max(1, Math.min(9, Math.rint(weight / 100))))).orElse("");
            case "display" -> "inline";
            case "text-decoration" -> java.util.Arrays.stream(low.split("\\s+")).filter(LINES::contains).collect(Collectors.joining(" "));
            case "mask" -> low.startsWith("url(") && low.endsWith(" add") || low.endsWith(" alpha") ? value.substring(0, value.lastIndexOf(' ')) : "";
            default -> "";
        };
        return old.isEmpty() ? Optional.empty() : Optional.of(one(modern, old));
    }

    private static List<Declaration> colour(Declaration modern, Colour colour) {
        Declaration plain = new Declaration(modern.name(), colour.hex(), modern.important());
        String opacity = OPACITY_OF.get(modern.name());
        return opacity == null || colour.opacity() >= 1
                ? List.of(plain)
                : List.of(plain, new Declaration(opacity, plain(colour.opacity()), modern.important()));
    }

    private static List<Declaration> one(Declaration modern, String value) {
        return List.of(new Declaration(modern.name(), value, modern.important()));
    }

    private static Optional<Double> number(String text) {
        try {
            return Optional.of(Double.valueOf(text.strip()));
        } catch (NumberFormatException e) {
            return Optional.empty();
        }
    }

    static String plain(double value) {
        return new java.math.BigDecimal(value).round(new java.math.MathContext(9)).stripTrailingZeros().toPlainString();
    }
}
