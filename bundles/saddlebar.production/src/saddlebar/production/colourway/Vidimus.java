package saddlebar.production.colourway;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import saddlebar.artwork.ArtworkReaders;
import saddlebar.model.commission.Approval;
import saddlebar.model.commission.Colourway;
import saddlebar.model.commission.Commission;
import saddlebar.model.commission.Window;
import saddlebar.model.problem.Refusal;
import saddlebar.model.store.CommissionFolder;
import saddlebar.model.units.Require;
import saddlebar.model.work.Work;
import saddlebar.production.light.ArtworkShelf;
import saddlebar.production.light.ColourShelf;
import saddlebar.production.light.EaselLook;
import saddlebar.production.light.EaselLook.Overlay;
import saddlebar.production.light.EaselPainter;
import saddlebar.production.light.EaselScene;
import saddlebar.production.light.GlassLook;
import saddlebar.production.light.LightLook;
import saddlebar.production.light.RectMm;
import saddlebar.production.light.SceneReader;
import saddlebar.production.light.ScenePiece;
import saddlebar.production.light.WindowSketch;
import saddlebar.production.light.WindowSketcher;
import saddlebar.stencil.code.BitonalSettings;
import saddlebar.stencil.code.ProofPng;

/**
 * The vidimus: the picture of a window in the light that is shown to the client, in one colourway. No screen is needed. Read the artwork of each window once
 * and keep this open for all its pictures.
 */
public final class Vidimus implements AutoCloseable {
    public static final int LEAST_PX = 100;
    public static final int MOST_PX = 8000;
    private static final int ROOM_RGB = 0xFFFFFF;
    private static final double PNG_DPI = 150;

    private final Path folder;
    private final Commission commission;
    private final ArtworkShelf shelf = new ArtworkShelf(ArtworkReaders.ownReaders());
    private final ColourShelf colours = new ColourShelf();

    public Vidimus(CommissionFolder folder) {
        this.folder = folder.path();
        this.commission = folder.commission();
    }

    /** Units that the methods tell for a window. */
    public static long units(Window window) {
        return Math.max(1, window.getPanels().size() * 1000L);
    }

    /**
     * The window alone, on white.
     *
     * @param colourway empty: of a window that has none
     * @param sidePx    of the longer side, {@value #LEAST_PX} to {@value #MOST_PX}
     * @throws Refusal if the window has no artwork yet
     */
    public BufferedImage picture(Window window, Optional<Colourway> colourway, LightLook light, int sidePx, Work work) throws IOException {
        return paint(scene(window, work), index(window, colourway), light, sidePx);
    }

    /** The window over its captions: what and how large it is, which colourway, approved or not, in which light, and each glass with its colour there. */
    public BufferedImage captioned(Window window, Optional<Colourway> colourway, LightLook light, int sidePx, VidimusWords words, Work work)
            throws IOException {
        EaselScene scene = scene(window, work);
        int index = index(window, colourway);
        BufferedImage glass = paint(scene, index, light, sidePx);
        Optional<Approval> approval = colourway.flatMap(chosen -> ColourwayApproval.of(chosen, commission));
        List<VidimusPage.Key> keys = keys(scene, index, light);
        String title = text(commission.getTitle());
        String name = window.getName() + (text(window.getTitle()).isEmpty() ? "" : " " + window.getTitle());
        return new VidimusPage(words, title, name, colourway.map(Colourways::name), approval, light.behind(), scene.bounds(), keys).lay(glass);
    }

    /**
     * Writes a picture as PNG, whole or not at all.
     *
     * @param replace whether a file of that name may be replaced
     */
    public static Path write(BufferedImage picture, Path file, String title, boolean replace) throws IOException {
        return ProofPng.write(picture, PNG_DPI, file, BitonalSettings.at(PNG_DPI).withTitle(title).replacing(replace));
    }

    private EaselScene scene(Window window, Work work) throws IOException {
        WindowSketch sketch = new WindowSketcher(folder, commission).sketch(window);
        EaselScene scene = new SceneReader(shelf).read(sketch, work.part(units(window), SceneReader.units(sketch)));
        if (scene.isEmpty()) {
            throw new Refusal(window.getName(), "there is nothing to show yet", "bring its artwork first");
        }
        return scene;
    }

    private static int index(Window window, Optional<Colourway> colourway) {
        return colourway.map(chosen -> window.getColourways().indexOf(chosen)).filter(at -> at >= 0).orElse(0);
    }

    private BufferedImage paint(EaselScene scene, int colourway, LightLook light, int sidePx) {
        Require.within("sidePx", sidePx, LEAST_PX, MOST_PX);
        RectMm bounds = scene.bounds();
        double pxPerMm = sidePx / Math.max(bounds.widthMm(), bounds.heightMm());
        int width = Math.max(1, (int) Math.round(bounds.widthMm() * pxPerMm));
        int height = Math.max(1, (int) Math.round(bounds.heightMm() * pxPerMm));
        EaselLook look = new EaselLook(colourway, Set.of(Overlay.METAL), Set.of(), ROOM_RGB, light);
        return new EaselPainter(scene, look, colours).paintGlass(bounds.leftMm(), bounds.topMm(), pxPerMm, width, height, Work.UNWATCHED);
    }

    private List<VidimusPage.Key> keys(EaselScene scene, int colourway, LightLook light) {
        Map<GlassLook, Integer> counts = new LinkedHashMap<>();
        for (ScenePiece piece : scene.pieces()) {
            counts.merge(piece.glass(colourway), 1, Integer::sum);
        }
        List<VidimusPage.Key> keys = new ArrayList<>();
        counts.forEach((glass, count) -> keys.add(new VidimusPage.Key(glass.name(), EaselPainter.bare(glass, light, colours), count)));
        keys.sort((one, other) -> Integer.compare(other.pieces(), one.pieces()));
        return keys;
    }

    private static String text(String text) {
        return text == null ? "" : text.strip();
    }

    @Override
    public void close() {
        shelf.close();
    }
}
