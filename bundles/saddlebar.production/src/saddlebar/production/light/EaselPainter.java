package saddlebar.production.light;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

import saddlebar.colour.Srgb;
import saddlebar.colour.picture.OverlapColours;
import saddlebar.model.work.Work;
import saddlebar.production.light.EaselLook.Overlay;

/**
 * Paints a scene into memory, as it looks with an even light behind it: the glass in its colours, dots mixed with what is bare between them (see
 * {@link saddlebar.colour.picture.OverlapColours}), foil or came dark, then numbers and marks. Any part at any scale; one painter serves any number of
 * threads.
 */
public final class EaselPainter {
    /** Metal against the light. Not quite black, so that the edge of a black screen does not swallow it. */
    static final int METAL_RGB = 0x17181A;

    private final EaselScene scene;
    private final EaselLook look;
    private final GlassTones tones;
    private final MarkPainter marks;

    /** By the screen's channels alone, as in daylight. */
    public EaselPainter(EaselScene scene, EaselLook look) {
        this(scene, look, Optional.empty());
    }

    /** By spectra, in the look's light. */
    public EaselPainter(EaselScene scene, EaselLook look, ColourShelf colours) {
        this(scene, look, Optional.of(colours));
    }

    private EaselPainter(EaselScene scene, EaselLook look, Optional<ColourShelf> colours) {
        this.scene = Objects.requireNonNull(scene, "scene");
        this.look = Objects.requireNonNull(look, "look");
        this.tones = new GlassTones(scene.layers().stream().filter(layer -> look.showsLayer(layer.id())).toList(), look.light(), colours);
        this.marks = new MarkPainter(scene, look, tones);
    }

    /** The colour of a bare glass in a light, as eyes see it; reckoned at the first time, so not on the screen's thread. */
    public static BareColour bare(GlassLook glass, LightLook light, ColourShelf colours) {
        OverlapColours tones = new GlassTones(List.of(), light, Optional.of(colours)).of(glass);
        Srgb seen = light.eye().seen(tones.bare());
        return new BareColour(ScreenLight.rgb(new float[] {(float) seen.red(), (float) seen.green(), (float) seen.blue()}), tones.outOfGamut());
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

    /** The window alone, without numbers and marks, as the look's eyes see it. */
    public BufferedImage paintGlass(double leftMm, double topMm, double pxPerMm, int widthPx, int heightPx, Work work) {
        if (!look.light().changesPicture()) {
            return paintPlain(leftMm, topMm, pxPerMm, widthPx, heightPx, work);
        }
        SeenPicture seen = SeenPicture.of(look.light(), scene.bounds(), pxPerMm);
        int margin = seen.marginPx();
        BufferedImage wider = paintPlain(leftMm - margin / pxPerMm, topMm - margin / pxPerMm, pxPerMm, widthPx + 2 * margin, heightPx + 2 * margin, work);
        return seen.of(wider, work);
    }

    private BufferedImage paintPlain(double leftMm, double topMm, double pxPerMm, int widthPx, int heightPx, Work work) {
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
            new PaintPass(tones, look.colourway(), part, pxPerMm).lay(picture, pieces, work);
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
            pen.setColor(new Color(tones.bareRgb(piece.glass(look.colourway()))));
            pen.fill(piece.contour().path());
        }
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
