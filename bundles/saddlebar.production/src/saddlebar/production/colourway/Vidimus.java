package saddlebar.production.colourway;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

import saddlebar.artwork.ArtworkReaders;
import saddlebar.model.problem.Refusal;
import saddlebar.model.work.Work;
import saddlebar.production.light.ArtworkShelf;
import saddlebar.production.light.ColourShelf;
import saddlebar.production.light.EaselLook;
import saddlebar.production.light.EaselLook.Overlay;
import saddlebar.production.light.EaselPainter;
import saddlebar.production.light.EaselScene;
import saddlebar.production.light.GlassLook;
import saddlebar.production.light.RectMm;
import saddlebar.production.light.SceneReader;
import saddlebar.production.light.ScenePiece;
import saddlebar.stencil.code.BitonalSettings;
import saddlebar.stencil.code.ProofPng;

/**
 * The vidimus: the picture of a window in the light that is shown to the client, in one colourway. No screen is needed. Keep it open for all pictures of a
 * commission: each artwork is read once.
 */
public final class Vidimus implements AutoCloseable {
    private static final int ROOM_RGB = 0xFFFFFF;
    private static final double PNG_DPI = 150;

    private final ArtworkShelf shelf = new ArtworkShelf(ArtworkReaders.ownReaders());
    private final ColourShelf colours = new ColourShelf();

    /** Units that the methods tell for an order. */
    public static long units(VidimusOrder order) {
        return Math.max(1, SceneReader.units(order.sketch()));
    }

    /**
     * The window alone, on white.
     *
     * @throws Refusal if the window has no artwork yet
     */
    public BufferedImage picture(VidimusOrder order, Work work) throws IOException {
        return paint(scene(order, work), order, work);
    }

    /** The window over its captions: what and how large it is, which colourway, approved or not, in which light, and each glass with its colour there. */
    public BufferedImage captioned(VidimusOrder order, VidimusWords words, Work work) throws IOException {
        EaselScene scene = scene(order, work);
        return new VidimusPage(words, order, scene.bounds(), keys(scene, order)).lay(paint(scene, order, work));
    }

    /**
     * Writes a picture as PNG, whole or not at all.
     *
     * @param replace whether a file of that name may be replaced
     */
    public static Path write(BufferedImage picture, Path file, String title, boolean replace) throws IOException {
        return ProofPng.write(picture, PNG_DPI, file, BitonalSettings.at(PNG_DPI).withTitle(title).replacing(replace));
    }

    private EaselScene scene(VidimusOrder order, Work work) throws IOException {
        EaselScene scene = new SceneReader(shelf).read(order.sketch(), work);
        if (scene.isEmpty()) {
            throw new Refusal(order.window(), "there is nothing to show yet", "bring its artwork first");
        }
        return scene;
    }

    private BufferedImage paint(EaselScene scene, VidimusOrder order, Work work) {
        RectMm bounds = scene.bounds();
        double pxPerMm = order.sidePx() / Math.max(bounds.widthMm(), bounds.heightMm());
        int width = Math.max(1, (int) Math.round(bounds.widthMm() * pxPerMm));
        int height = Math.max(1, (int) Math.round(bounds.heightMm() * pxPerMm));
        EaselLook look = new EaselLook(order.colourway(), Set.of(Overlay.METAL), Set.of(), ROOM_RGB, order.light());
        return new EaselPainter(scene, look, colours).paintGlass(bounds.leftMm(), bounds.topMm(), pxPerMm, width, height, work);
    }

    private List<VidimusPage.Key> keys(EaselScene scene, VidimusOrder order) {
        Map<GlassLook, Integer> counts = new LinkedHashMap<>();
        for (ScenePiece piece : scene.pieces()) {
            counts.merge(piece.glass(order.colourway()), 1, Integer::sum);
        }
        List<VidimusPage.Key> keys = new ArrayList<>();
        counts.forEach((glass, count) -> keys.add(new VidimusPage.Key(glass.name(), EaselPainter.bare(glass, order.light(), colours), count)));
        keys.sort((one, other) -> Integer.compare(other.pieces(), one.pieces()));
        return keys;
    }

    @Override
    public void close() {
        shelf.close();
    }
}
