package saddlebar.artwork.svg;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.w3c.dom.Element;

import saddlebar.model.problem.Refusal;

/**
 * How large the page is. Lengths are mm, cm, Q, in, pt (1/72 in), pc (1/6 in) and px (1/96 in), bare numbers are px (CSS 2.1, 4.3.2, and CSS
 * Values 3). Percentages, which ask a window for its size, and absent sizes fall back to the viewBox in px.
 *
 * @param widthPx  width in px; NaN if only what is drawn can tell
 * @param heightPx height in px; NaN likewise
 */
record SvgSize(double widthPx, double heightPx) {
    static final double PX_PER_INCH = 96;
    private static final double MOST_PX = 1e10;
    /** A page to draw on until it is known how large it should be. */
    private static final double PROVISIONAL_PX = 1000;
    private static final Pattern LENGTH = Pattern.compile("([-+]?(?:[0-9]+\\.?[0-9]*|\\.[0-9]+)(?:[eE][-+]?[0-9]+)?)([a-zA-Z%]*)");

    /** Position and size in user units. */
    record Box(double x, double y, double width, double height) {
    }

    /** Reads the size from the outermost element and rewrites that in px, so that Batik and we mean the same. */
    static SvgSize of(Element root, Findings findings) {
        Box box = null;
        String viewBox = Source.attribute(root, "viewBox");
        if (!viewBox.isBlank()) {
            box = viewBox(viewBox);
            if (box == null) {
                findings.warn("art-size", root, "viewBox", "viewBox=\"" + viewBox + "\" cannot be read and is left out");
                root.removeAttributeNS(null, "viewBox");
            } else if (!(box.width > 0 && box.height > 0)) {
                throw new Refusal(findings.where(root), "the drawing's page has no size: its viewBox is " + box.width + " wide and " + box.height + " high",
                        "set the page size in the drawing");
            }
        }
        double width = length(root, "width", findings);
        double height = length(root, "height", findings);
        boolean bare = Double.isNaN(width) || Double.isNaN(height) || isPx(root, "width") || isPx(root, "height");
        if (box != null) {
            if (Double.isNaN(width) && Double.isNaN(height)) {
                width = box.width;
                height = box.height;
            } else if (Double.isNaN(width)) {
                width = height * box.width / box.height;
            } else if (Double.isNaN(height)) {
                height = width * box.height / box.width;
            }
        }
        if (!Double.isNaN(width) && !Double.isNaN(height)) {
            if (bare) {
                findings.note("art-size", root, "bare", String.format(Locale.ROOT, "the drawing does not say in mm or inches how large it is; it is read"
                        + " at 96 px an inch, so its page is %.1f x %.1f mm", width * 25.4 / PX_PER_INCH, height * 25.4 / PX_PER_INCH));
            }
            write(root, "width", width);
            write(root, "height", height);
        } else {
            write(root, "width", Double.isNaN(width) ? PROVISIONAL_PX : width);
            write(root, "height", Double.isNaN(height) ? PROVISIONAL_PX : height);
        }
        return new SvgSize(width, height);
    }

    /** Four numbers, or null. */
    static Box viewBox(String text) {
        Scanner in = new Scanner(text);
        double[] n = new double[4];
        try {
            in.space();
            for (int i = 0; i < 4; i++) {
                n[i] = in.number();
                in.separator();
            }
        } catch (NumberFormatException e) {
            return null;
        }
        return in.atEnd() && n[2] >= 0 && n[3] >= 0 && n[2] < MOST_PX && n[3] < MOST_PX ? new Box(n[0], n[1], n[2], n[3]) : null;
    }

    private static void write(Element root, String name, double px) {
        root.setAttributeNS(null, name, new java.math.BigDecimal(px).round(new java.math.MathContext(12)).toPlainString());
    }

    private static boolean isPx(Element root, String name) {
        return Source.attribute(root, name).strip().matches("[-+.0-9eE]*(px)?");
    }

    private static double length(Element root, String name, Findings findings) {
        String text = Source.attribute(root, name).strip();
        if (text.isEmpty() || "auto".equals(text)) {
            return Double.NaN;
        }
        Matcher parts = LENGTH.matcher(text);
        if (!parts.matches()) {
            findings.warn("art-size", root, name, name + "=\"" + text + "\" cannot be read; the page size is taken from the viewBox or from what is drawn");
            return Double.NaN;
        }
        double number = Double.parseDouble(parts.group(1));
        double unit = switch (parts.group(2).toLowerCase(Locale.ROOT)) {
            case "", "px" -> 1;
            case "mm" -> PX_PER_INCH / 25.4;
            case "cm" -> PX_PER_INCH / 2.54;
            case "q" -> PX_PER_INCH / 101.6;
            case "in" -> PX_PER_INCH;
            case "pt" -> PX_PER_INCH / 72;
            case "pc" -> PX_PER_INCH / 6;
            default -> Double.NaN;
        };
        if (Double.isNaN(unit)) {
            if (!"%".equals(parts.group(2)) || number != 100) {
                findings.warn("art-size", root, name, name + "=\"" + text + "\" is no size of a sheet; it is taken from the viewBox in px instead");
            }
            return Double.NaN;
        }
        double px = number * unit;
        if (!(px > 0)) {
            throw new Refusal(findings.where(root), "the drawing's page has no size: its " + name + " is " + text, "set the page size in the drawing");
        }
        if (px > MOST_PX) {
            throw new Refusal(findings.where(root), "the drawing's " + name + " of " + text + " is more than thousands of kilometres",
                    "set the page size in the drawing");
        }
        return px;
    }
}
