package saddlebar.production.make;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;

import saddlebar.artwork.ArtworkReaders;
import saddlebar.artwork.RasterRequest;
import saddlebar.model.art.GrayBands;
import saddlebar.model.commission.Colourway;
import saddlebar.model.commission.GlassChoice;
import saddlebar.model.commission.GlassStock;
import saddlebar.model.commission.Panel;
import saddlebar.model.commission.Piece;
import saddlebar.model.commission.Studio;
import saddlebar.model.commission.Window;
import saddlebar.model.problem.Refusal;
import saddlebar.model.units.Units;
import saddlebar.model.work.Work;
import saddlebar.production.facts.CommissionFacts;
import saddlebar.production.facts.CommissionFacts.PlacedPanel;
import saddlebar.production.facts.LayerFacts;
import saddlebar.stencil.tone.ToneTable;

/**
 * A window as it looks with white light behind it, colouring by colouring: glass in its colour, metal dark, and what is printed by the share of the glass it
 * covers. In each channel of linear light T = Tglass * product over layers of (1 - a + a * Tpaint), which is Murray-Davies for light that passes straight
 * through (COMPUTATION I3 for three channels in place of a spectrum). For documents; the stencils themselves are never made from it.
 */
public final class LightPictures {
    private static final int METAL = 0x24272A;
    private static final int NO_GLASS = 0xF2F2EE;

    private final ArtworkReaders readers;

    public LightPictures(ArtworkReaders readers) {
        this.readers = readers;
    }

    /** What is printed on a window, px by px, for all its colourings. */
    private record Printed(float[] red, float[] green, float[] blue) {
        static Printed none(int px) {
            float[] clear = new float[px];
            Arrays.fill(clear, 1);
            return new Printed(clear, clear.clone(), clear.clone());
        }
    }

    /** Pictures of one window; its printed layers are read once. */
    public final class OfWindow {
        private final Window window;
        private final Envelope box = new Envelope();
        private final double pxPerMm;
        private final int width;
        private final int height;
        private final Printed printed;

        private OfWindow(Window window, CommissionFacts facts, int longestPx, Work work) throws IOException {
            this.window = window;
            for (Panel panel : window.getPanels()) {
                for (Piece piece : panel.getPieces()) {
                    if (!piece.isRetired() && piece.getFace() != null && !piece.getFace().isEmpty()) {
                        double[] b = piece.getFace().boundsMm();
                        box.expandToInclude(new Envelope(b[0] + panel.getXMm(), b[2] + panel.getXMm(), b[1] + panel.getYMm(), b[3] + panel.getYMm()));
                    }
                }
            }
            pxPerMm = box.isNull() ? 1 : Math.min(20, longestPx / Math.max(box.getWidth(), box.getHeight()));
            width = box.isNull() ? 1 : Math.max(1, (int) Math.round(box.getWidth() * pxPerMm));
            height = box.isNull() ? 1 : Math.max(1, (int) Math.round(box.getHeight() * pxPerMm));
            printed = Printed.none(width * height);
            if (!box.isNull()) {
                print(facts, work);
            }
        }

        public boolean isEmpty() {
            return box.isNull();
        }

        private void print(CommissionFacts facts, Work work) throws IOException {
            Studio studio = window.getCommission() == null ? null : window.getCommission().getStudio();
            try (OpenArtworks artworks = new OpenArtworks(readers)) {
                LayerTones tones = new LayerTones(artworks);
                PieceStep step = new PieceStep(artworks);
                for (PlacedPanel placed : facts.panels().filter(p -> p.window().name().equals(window.getName())).toList()) {
                    if (placed.panel().art().isEmpty() || placed.panel().cutlineLayer().isEmpty()) {
                        continue;
                    }
                    Panel panel = window.getPanels().stream().filter(p -> placed.panel().id().equals(p.getId())).findFirst().orElseThrow();
                    PanelPieces pieces = step.run(placed, false, new StopOnly(work));
                    for (LayerFacts layer : placed.panel().layers()) {
                        work.say(placed.label() + " " + layer.name());
                        PaintedLayer painted = new PaintedLayer(placed, layer, placed.panel().art().get(), pieces.pieces(), pieces.key());
                        print(artworks, tones, painted, panel, colourOf(studio, layer.paintId()), work);
                    }
                }
            }
        }

        private void print(OpenArtworks artworks, LayerTones tones, PaintedLayer painted, Panel panel, float[] paint, Work work) throws IOException {
            ToneTable tone = tones.of(painted, new StopOnly(work));
            double dpi = pxPerMm * Units.MM_PER_INCH;
            RasterRequest request = new RasterRequest(box.getMinX() - panel.getXMm(), box.getMinY() - panel.getYMm(), width, height, dpi,
                    LayerTones.coding(painted.layer().recipe().tone()));
            try (GrayBands bands = artworks.gray(painted.art(), painted.layer().artLayer(), request, new StopOnly(work))) {
                byte[] band = new byte[width * 64];
                int at = 0;
                for (int rows = bands.read(band, 64); rows > 0; rows = bands.read(band, 64)) {
                    for (int i = 0; i < rows * width; i++, at++) {
                        float a = (float) Math.max(0, Math.min(1, tone.coverage(band[i] & 255)));
                        if (a > 0) {
                            printed.red[at] *= 1 - a + a * paint[0];
                            printed.green[at] *= 1 - a + a * paint[1];
                            printed.blue[at] *= 1 - a + a * paint[2];
                        }
                    }
                }
            }
        }

        /** @param colourway empty for each piece's own glass */
        public BufferedImage in(Optional<Colourway> colourway) {
            BufferedImage glass = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
            BufferedImage mask = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
            Graphics2D colours = smooth(glass);
            Graphics2D clear = smooth(mask);
            colours.setColor(Color.WHITE);
            colours.fillRect(0, 0, width, height);
            clear.setColor(Color.WHITE);
            Map<Piece, GlassStock> chosen = new HashMap<>();
            colourway.ifPresent(way -> way.getChoices().forEach((GlassChoice choice) -> chosen.put(choice.getPiece(), choice.getGlass())));
            for (int pass = 0; pass < 2; pass++) {
                for (Panel panel : window.getPanels()) {
                    for (Piece piece : panel.getPieces()) {
                        if (piece.isRetired() || piece.getNet() == null || piece.getNet().isEmpty()) {
                            continue;
                        }
                        Polygon region = Outlines.polygon(pass == 0 ? piece.getFace() : piece.getNet());
                        Path2D path = Outlines.path(region, box.getMinX() - panel.getXMm(), box.getMinY() - panel.getYMm(), pxPerMm);
                        if (pass == 0) {
                            colours.setColor(new Color(METAL));
                            colours.fill(path);
                            colours.draw(path);
                        } else {
                            GlassStock stock = chosen.getOrDefault(piece, piece.getGlass());
                            colours.setColor(new Color(stock == null ? NO_GLASS : hex(stock.getColour(), NO_GLASS)));
                            colours.fill(path);
                            clear.fill(path);
                        }
                    }
                }
            }
            colours.dispose();
            clear.dispose();
            light(glass, mask);
            return glass;
        }

        private void light(BufferedImage glass, BufferedImage mask) {
            float[] linear = linearOfCode();
            for (int y = 0; y < height; y++) {
                for (int x = 0; x < width; x++) {
                    float there = (mask.getRGB(x, y) & 255) / 255f;
                    if (there > 0) {
                        int i = y * width + x;
                        int rgb = glass.getRGB(x, y);
                        glass.setRGB(x, y, code(linear[rgb >> 16 & 255] * (1 - there + there * printed.red[i])) << 16
                                | code(linear[rgb >> 8 & 255] * (1 - there + there * printed.green[i])) << 8
                                | code(linear[rgb & 255] * (1 - there + there * printed.blue[i])));
                    }
                }
            }
        }
    }

    /**
     * @param facts     the window's commission
     * @param longestPx of the longer side
     */
    public OfWindow of(Window window, CommissionFacts facts, int longestPx, Work work) throws IOException {
        return new OfWindow(window, facts, longestPx, work);
    }

    private static float[] colourOf(Studio studio, String paintId) {
        float[] linear = linearOfCode();
        int rgb = studio == null
                ? 0x303030
                : studio.getPaints().stream().filter(paint -> paintId.equals(paint.getId())).map(paint -> hex(paint.getColour(), 0x303030)).findFirst()
                        .orElse(0x303030);
        return new float[] {linear[rgb >> 16 & 255], linear[rgb >> 8 & 255], linear[rgb & 255]};
    }

    private static int hex(String colour, int otherwise) {
        if (colour == null || colour.isBlank()) {
            return otherwise;
        }
        if (!colour.matches("#[0-9A-Fa-f]{6}")) {
            throw new Refusal("colour " + colour, "it is no colour", "write it as #rrggbb");
        }
        return Integer.parseInt(colour.substring(1), 16);
    }

    private static Graphics2D smooth(BufferedImage image) {
        Graphics2D graphics = image.createGraphics();
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        return graphics;
    }

    /** IEC 61966-2-1. */
    private static float[] linearOfCode() {
        float[] linear = new float[256];
        for (int code = 0; code < 256; code++) {
            double c = code / 255.0;
            linear[code] = (float) (c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4));
        }
        return linear;
    }

    private static int code(float linear) {
        double c = linear <= 0.0031308 ? 12.92 * linear : 1.055 * Math.pow(linear, 1 / 2.4) - 0.055;
        return (int) Math.max(0, Math.min(255, Math.round(255 * c)));
    }
}
