package saddlebar.production.light;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import saddlebar.colour.picture.OverlapColours;
import saddlebar.model.work.Work;

/**
 * Lays the paint over glass that is already painted bare. Which glass a pixel is of is drawn into a second picture with hard edges; where the first one has a
 * pixel that lies half on the glass, the paint takes there the share of light that it takes beside it.
 */
final class PaintPass {
    private static final int ROWS_A_CHECKPOINT = 64;
    /** So that pixels of a soft edge belong to a piece too. */
    private static final float EDGE_PX = 1.5f;

    /** Paint that is drawn over a gap takes its share of what little shines there as it does of clear glass. */
    private static final GlassLook BESIDE = new GlassLook("", 0xFFFFFF);

    private record Shown(int index, Coverage coverage, int level) {
    }

    private final GlassTones tones;
    private final int colourway;
    private final RectMm part;
    private final double pxPerMm;

    PaintPass(GlassTones tones, int colourway, RectMm part, double pxPerMm) {
        this.tones = tones;
        this.colourway = colourway;
        this.part = part;
        this.pxPerMm = pxPerMm;
    }

    /** @param pieces those that touch the part */
    void lay(BufferedImage picture, List<ScenePiece> pieces, Work work) {
        List<Shown> shown = new ArrayList<>();
        for (int i = 0; i < tones.layers().size(); i++) {
            SceneLayer layer = tones.layers().get(i);
            if (layer.coverage().area().touches(part)) {
                Coverage coverage = layer.coverageFor(part, pxPerMm, work);
                shown.add(new Shown(i, coverage, coverage.levelFor(1 / pxPerMm)));
            }
        }
        if (!shown.isEmpty() && !pieces.isEmpty()) {
            mix(picture, shown, pieces, work);
        }
    }

    private void mix(BufferedImage picture, List<Shown> shown, List<ScenePiece> pieces, Work work) {
        int width = picture.getWidth();
        List<OverlapColours> glasses = new ArrayList<>();
        glasses.add(tones.of(BESIDE));
        int[] glassAt = glassAt(width, picture.getHeight(), pieces, glasses, work);
        int[] pixels = ((DataBufferInt) picture.getRaster().getDataBuffer()).getData();
        int[] bare = glasses.stream().mapToInt(GlassTones::bareRgb).toArray();
        int films = tones.layers().size();
        float[] covered = new float[films * width];
        int[] row = new int[width];
        float[] work3 = new float[3 << films];
        for (int y = 0; y < picture.getHeight(); y++) {
            if (y % ROWS_A_CHECKPOINT == 0) {
                work.checkpoint();
            }
            double yMm = part.topMm() + (y + 0.5) / pxPerMm;
            for (Shown layer : shown) {
                layer.coverage().sampleRow(layer.level(), part.leftMm() + 0.5 / pxPerMm, 1 / pxPerMm, yMm, row, width);
                for (int x = 0; x < width; x++) {
                    covered[layer.index() * width + x] = row[x] / 255f;
                }
            }
            for (int x = 0; x < width; x++) {
                int at = y * width + x;
                int glass = glassAt[at];
                if (painted(covered, x, width, films)) {
                    glasses.get(glass).mix(covered, x, width, work3);
                    pixels[at] = pixels[at] == bare[glass] ? ScreenLight.rgb(work3) : dimmed(pixels[at], bare[glass], work3);
                }
            }
        }
    }

    private static boolean painted(float[] covered, int x, int width, int films) {
        for (int film = 0; film < films; film++) {
            if (covered[film * width + x] > 0) {
                return true;
            }
        }
        return false;
    }

    /** The pixel of a soft edge: each channel takes the share that it takes on the glass alone. */
    private static int dimmed(int rgb, int bareRgb, float[] mixed) {
        int dimmed = 0;
        for (int channel = 0; channel < 3; channel++) {
            int shift = 16 - 8 * channel;
            float bare = ScreenLight.lightOf(bareRgb >> shift & 0xff) / (float) ScreenLight.FULL_LIGHT;
            float share = bare <= 0 ? 1 : Math.min(1, mixed[channel] / bare);
            dimmed |= ScreenLight.codeOf(Math.round(ScreenLight.lightOf(rgb >> shift & 0xff) * share)) << shift;
        }
        return dimmed;
    }

    /** For each pixel the index of its glass in {@code glasses}, 0 beside all glass. */
    private int[] glassAt(int width, int height, List<ScenePiece> pieces, List<OverlapColours> glasses, Work work) {
        BufferedImage map = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Map<GlassLook, Integer> index = new HashMap<>();
        Graphics2D pen = map.createGraphics();
        try {
            pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_OFF);
            pen.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
            pen.scale(pxPerMm, pxPerMm);
            pen.translate(-part.leftMm(), -part.topMm());
            pen.setStroke(new BasicStroke((float) (EDGE_PX / pxPerMm), BasicStroke.CAP_BUTT, BasicStroke.JOIN_BEVEL));
            for (ScenePiece piece : pieces) {
                work.checkpoint();
                int number = index.computeIfAbsent(piece.glass(colourway), look -> {
                    glasses.add(tones.of(look));
                    return glasses.size() - 1;
                });
                pen.setColor(new Color(number));
                pen.draw(piece.contour().path());
            }
            for (ScenePiece piece : pieces) { // a piece's own area goes before its neighbour's edge
                pen.setColor(new Color(index.get(piece.glass(colourway))));
                pen.fill(piece.contour().path());
            }
        } finally {
            pen.dispose();
        }
        int[] glassAt = ((DataBufferInt) map.getRaster().getDataBuffer()).getData();
        for (int i = 0; i < glassAt.length; i++) {
            glassAt[i] &= 0xFFFFFF;
        }
        return glassAt;
    }
}
