package saddlebar.report.truesize;

import java.util.List;

import saddlebar.model.units.Require;

/** One thing on a drawing, in mm of the drawing. Colours are 0xRRGGBB. Arrays are not copied and must not be changed. */
public sealed interface Ink {
    /**
     * Lines along paths.
     *
     * @param paths   each x0, y0, x1, y1, …
     * @param closed  whether each path returns to its start
     * @param widthMm of the line, 0.01 to 20
     * @param dashMm  on, off, on, …; empty for a full line
     */
    record Line(List<double[]> paths, boolean closed, double widthMm, int rgb, float[] dashMm) implements Ink {
        private static final float[] FULL = {};

        public Line {
            paths = List.copyOf(paths);
            Require.within("widthMm", widthMm, 0.01, 20);
        }

        public static Line full(List<double[]> paths, boolean closed, double widthMm, int rgb) {
            return new Line(paths, closed, widthMm, rgb, FULL);
        }
    }

    /** An area within rings, by the even-odd rule. */
    record Area(List<double[]> rings, int rgb) implements Ink {
        public Area {
            rings = List.copyOf(rings);
        }
    }

    /**
     * A line of words, centred on its place both ways.
     *
     * @param capitalMm height of a capital letter, 0.3 to 200
     */
    record Words(String text, double xMm, double yMm, double capitalMm, int rgb) implements Ink {
        public Words {
            Require.text("text", text);
            Require.within("capitalMm", capitalMm, 0.3, 200);
        }
    }

    /**
     * A picture in gray, such as painted layers under a cutline. The last rows and columns end exactly at the picture's right and bottom.
     *
     * @param gray {@code heightPx} rows of {@code widthPx} bytes from the top, 0 black to 255 white
     */
    record Picture(int widthPx, int heightPx, byte[] gray, double xMm, double yMm, double widthMm, double heightMm) implements Ink {
        public Picture {
            Require.within("widthPx", widthPx, 1, 100_000);
            Require.within("heightPx", heightPx, 1, 100_000);
            if (gray.length != widthPx * heightPx) {
                throw new IllegalArgumentException("gray has " + gray.length + " bytes for " + widthPx + " x " + heightPx + " px");
            }
            Require.within("widthMm", widthMm, 0.1, 1e5);
            Require.within("heightMm", heightMm, 0.1, 1e5);
        }

        Picture moved(double dx, double dy) {
            return new Picture(widthPx, heightPx, gray, xMm + dx, yMm + dy, widthMm, heightMm);
        }
    }
}
