package saddlebar.ui.easel;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.util.List;
import java.util.Objects;

import saddlebar.model.work.Work;
import saddlebar.ui.easel.EaselLook.Overlay;

/**
 * Paints a scene into memory, as it looks with even white light behind it: the glass in its colours, each layer taking its share of the light
 * (linear light, see {@link PaintLook}), foil or came dark, then numbers and marks. Any part at any scale; one painter serves any number of
 * threads.
 */
public final class EaselPainter {
    /** Metal against the light. Not quite black, so that the edge of a black screen does not swallow it. */
    static final int METAL_RGB = 0x17181A;
    private static final int ROWS_A_CHECKPOINT = 64;

    private final EaselScene scene;
    private final EaselLook look;
    private final MarkPainter marks;

    public EaselPainter(EaselScene scene, EaselLook look) {
        this.scene = Objects.requireNonNull(scene, "scene");
        this.look = Objects.requireNonNull(look, "look");
        this.marks = new MarkPainter(scene, look);
    }

    /**
     * Paints a part.
     *
     * @param leftMm   left edge of the picture in mm
     * @param topMm    upper edge in mm
     * @param pxPerMm  scale
     * @param pxPerPt  device pixels a point: numbers and marks keep their size in points
     * @param widthPx  width of the picture
     * @param heightPx height of the picture
     * @param work     asked whether to stop
     */
    public BufferedImage paint(double leftMm, double topMm, double pxPerMm, double pxPerPt, int widthPx, int heightPx, Work work) {
        BufferedImage picture = paintGlass(leftMm, topMm, pxPerMm, widthPx, heightPx, work);
        Graphics2D pen = picture.createGraphics();
        try {
            smooth(pen);
            marks.paint(pen, new RectMm(leftMm, topMm, widthPx / pxPerMm, heightPx / pxPerMm), pxPerMm, pxPerPt);
        } finally {
            pen.dispose();
        }
        return picture;
    }

    /** The window alone, without numbers and marks. */
    public BufferedImage paintGlass(double leftMm, double topMm, double pxPerMm, int widthPx, int heightPx, Work work) {
        BufferedImage picture = new BufferedImage(widthPx, heightPx, BufferedImage.TYPE_INT_RGB);
        RectMm part = new RectMm(leftMm, topMm, widthPx / pxPerMm, heightPx / pxPerMm);
        Graphics2D pen = picture.createGraphics();
        try {
            smooth(pen);
            pen.setColor(new Color(look.surroundRgb()));
            pen.fillRect(0, 0, widthPx, heightPx);
            pen.scale(pxPerMm, pxPerMm);
            pen.translate(-leftMm, -topMm);
            RectMm near = part.grownBy(scene.metal().coverMm() + 1 / pxPerMm);
            List<ScenePiece> pieces = scene.pieces().stream().filter(piece -> piece.contour().bounds().touches(near)).toList();
            layGlass(pen, part, pieces, work);
            layPaint(picture, part, pxPerMm, work);
            if (look.shows(Overlay.METAL)) {
                layMetal(pen, pieces, work);
                layRoom(pen, near);
            }
        } finally {
            pen.dispose();
        }
        return picture;
    }

    private static void smooth(Graphics2D pen) {
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        pen.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    }

    private void layGlass(Graphics2D pen, RectMm part, List<ScenePiece> pieces, Work work) {
        pen.setColor(new Color(METAL_RGB));
        for (Contour outline : scene.outlines()) {
            if (outline.bounds().touches(part)) {
                pen.fill(outline.path());
            }
        }
        for (ScenePiece piece : pieces) {
            work.checkpoint();
            pen.setColor(new Color(piece.glass(look.colourway()).rgb()));
            pen.fill(piece.contour().path());
        }
    }

    private void layPaint(BufferedImage picture, RectMm part, double pxPerMm, Work work) {
        int[] pixels = ((DataBufferInt) picture.getRaster().getDataBuffer()).getData();
        int width = picture.getWidth();
        int[] covered = new int[width];
        for (SceneLayer layer : scene.layers()) {
            if (!look.showsLayer(layer.id()) || !layer.coverage().area().touches(part)) {
                continue;
            }
            int[][] through = throughTables(layer.paint());
            Coverage coverage = layer.coverageFor(part, pxPerMm, work);
            int level = coverage.levelFor(1 / pxPerMm);
            for (int y = 0; y < picture.getHeight(); y++) {
                if (y % ROWS_A_CHECKPOINT == 0) {
                    work.checkpoint();
                }
                double yMm = part.topMm() + (y + 0.5) / pxPerMm;
                coverage.sampleRow(level, part.leftMm() + 0.5 / pxPerMm, 1 / pxPerMm, yMm, covered, width);
                dim(pixels, y * width, covered, through, width);
            }
        }
    }

    /** For each channel the share of light, 0 to 65536, that comes through at each covered share, 0 to 255. */
    private static int[][] throughTables(PaintLook paint) {
        int[][] tables = new int[3][256];
        for (int channel = 0; channel < 3; channel++) {
            for (int covered = 0; covered < 256; covered++) {
                tables[channel][covered] = (int) Math.round(paint.through(channel, covered / 255.0) * 65536);
            }
        }
        return tables;
    }

    private static void dim(int[] pixels, int from, int[] covered, int[][] through, int count) {
        for (int i = 0; i < count; i++) {
            int share = covered[i];
            if (share != 0) {
                int rgb = pixels[from + i];
                int red = dimmed(rgb >> 16 & 0xff, through[0][share]);
                int green = dimmed(rgb >> 8 & 0xff, through[1][share]);
                int blue = dimmed(rgb & 0xff, through[2][share]);
                pixels[from + i] = red << 16 | green << 8 | blue;
            }
        }
    }

    private static int dimmed(int code, int through) {
        return Srgb.codeOf((int) ((long) Srgb.lightOf(code) * through >> 16));
    }

    private void layMetal(Graphics2D pen, List<ScenePiece> pieces, Work work) {
        pen.setColor(new Color(METAL_RGB));
        pen.setStroke(new BasicStroke((float) (2 * scene.metal().coverMm()), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        for (ScenePiece piece : pieces) {
            work.checkpoint();
            pen.draw(piece.contour().path());
        }
    }

    /** The room around the panels again, where the stroke of a rim went over their edge. */
    private void layRoom(Graphics2D pen, RectMm part) {
        Path2D room = new Path2D.Double(Path2D.WIND_EVEN_ODD);
        room.append(new Rectangle2D.Double(part.leftMm(), part.topMm(), part.widthMm(), part.heightMm()), false);
        boolean inside = false;
        for (Contour outline : scene.outlines()) {
            if (outline.bounds().touches(part)) {
                room.append(outline.path(), false);
                inside = true;
            }
        }
        if (inside) {
            pen.setColor(new Color(look.surroundRgb()));
            pen.fill(room);
        }
    }
}
