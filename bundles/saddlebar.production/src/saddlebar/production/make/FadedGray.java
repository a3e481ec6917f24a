package saddlebar.production.make;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import org.locationtech.jts.geom.Geometry;

import saddlebar.model.art.GrayBands;
import saddlebar.model.art.GrayCoding;

/**
 * Gray whose darkness runs out towards the edges of pieces: darkness times k/16 in the k-th of nested regions. Darkness is that of linear light
 * where the coding is (IEC 61966-2-1), so that half the darkness covers half as much.
 */
final class FadedGray implements GrayBands {
    private static final int ROWS = 64;

    private final GrayBands gray;
    private final List<List<Path2D>> steps = new ArrayList<>();
    private final byte[][] weaker = new byte[SightLineMask.FADE_STEPS + 1][256];
    private final BufferedImage band;
    private final byte[] strength;
    private int row;

    /** @param fades for each piece its nested regions, widest first */
    FadedGray(GrayBands gray, List<List<Geometry>> fades, RasterPlace place) {
        this.gray = gray;
        for (int step = 0; step < SightLineMask.FADE_STEPS; step++) {
            List<Path2D> paths = new ArrayList<>();
            for (List<Geometry> fade : fades) {
                paths.add(Outlines.path(fade.get(step), place.originXMm(), place.originYMm(), place.pxPerMm()));
            }
            steps.add(paths);
        }
        for (int step = 0; step <= SightLineMask.FADE_STEPS; step++) {
            for (int code = 0; code < 256; code++) {
                weaker[step][code] = (byte) weakened(code, (double) step / SightLineMask.FADE_STEPS, gray.coding());
            }
        }
        band = new BufferedImage(place.widthPx(), ROWS, BufferedImage.TYPE_BYTE_GRAY);
        strength = ((DataBufferByte) band.getRaster().getDataBuffer()).getData();
    }

    private static int weakened(int code, double strength, GrayCoding coding) {
        if (coding == GrayCoding.CODE_VALUES) {
            return (int) Math.rint(255 - (255 - code) * strength);
        }
        double light = 1 - (1 - linear(code / 255.0)) * strength;
        double coded = light <= 0.0031308 ? 12.92 * light : 1.055 * Math.pow(light, 1 / 2.4) - 0.055;
        return (int) Math.rint(255 * coded);
    }

    private static double linear(double coded) {
        return coded <= 0.04045 ? coded / 12.92 : Math.pow((coded + 0.055) / 1.055, 2.4);
    }

    @Override
    public int widthPx() {
        return gray.widthPx();
    }

    @Override
    public int heightPx() {
        return gray.heightPx();
    }

    @Override
    public GrayCoding coding() {
        return gray.coding();
    }

    @Override
    public int read(byte[] target, int maxRows) throws IOException {
        int rows = gray.read(target, Math.min(maxRows, ROWS));
        if (rows == 0) {
            return 0;
        }
        Arrays.fill(strength, (byte) 0);
        Graphics2D graphics = band.createGraphics();
        // else edges are moved onto whole px, and by another px where the band cuts them
        graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        graphics.translate(0, -row);
        for (int step = 0; step < steps.size(); step++) {
            graphics.setColor(new Color(step + 1, step + 1, step + 1));
            for (Path2D path : steps.get(step)) {
                if (path.intersects(-1, row - 1, widthPx() + 2, rows + 2)) {
                    graphics.fill(path);
                }
            }
        }
        graphics.dispose();
        for (int i = 0; i < rows * widthPx(); i++) {
            target[i] = weaker[strength[i]][target[i] & 0xff];
        }
        row += rows;
        return rows;
    }

    @Override
    public void close() {
        gray.close();
    }
}
