package saddlebar.kiln.chart;

import java.util.Objects;

/** One thing that is drawn; x to the right, y down, in pt from the top left of the drawing. */
public sealed interface Mark {
    /** Where words stand against their point. */
    enum Anchor {
        START, MIDDLE, END
    }

    /** A filled box with an outline. */
    record Box(double x, double y, double width, double height, Ink fill, Ink outline) implements Mark {
        public Box {
            Objects.requireNonNull(fill, "fill");
            Objects.requireNonNull(outline, "outline");
        }
    }

    /** A straight line: grid, level, key of a legend. */
    record Rule(double x1, double y1, double x2, double y2, Ink ink) implements Mark {
        public Rule {
            Objects.requireNonNull(ink, "ink");
        }
    }

    /**
     * A curve, straight between its points.
     *
     * @param xy shape [2 n]: x and y in turn; not changed by anybody
     */
    record Curve(double[] xy, Ink ink) implements Mark {
        public Curve {
            Objects.requireNonNull(ink, "ink");
            if (xy.length < 2 || xy.length % 2 != 0) {
                throw new IllegalArgumentException("xy must be pairs but is " + xy.length + " long");
            }
        }
    }

    /**
     * Words on their base line.
     *
     * @param sizePt  of the letters
     * @param bold    heavier
     * @param upwards read from below, as beside an axis
     */
    record Words(double x, double y, String text, Anchor anchor, double sizePt, boolean bold, boolean upwards) implements Mark {
        public Words {
            Objects.requireNonNull(text, "text");
            Objects.requireNonNull(anchor, "anchor");
        }
    }
}
