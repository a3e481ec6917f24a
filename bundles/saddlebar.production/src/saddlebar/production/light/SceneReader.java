package saddlebar.production.light;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

import saddlebar.model.problem.Problem;
import saddlebar.model.work.Work;
import saddlebar.production.light.WindowSketch.PanelSketch;

/** Lays a window on the Easel: artwork, pieces, layers, problems. Long work for a thread of its own. */
public final class SceneReader {
    private final ArtworkShelf shelf;
    private List<PlacedMend> mends = List.of();

    public SceneReader(ArtworkShelf shelf) {
        this.shelf = shelf;
    }

    /** Units that {@link #read} tells. */
    public static long units(WindowSketch window) {
        return window.panels().size() * PanelReader.UNITS;
    }

    /**
     * Reads a window whole.
     *
     * @param work {@link #units} in all
     * @return the scene; empty where there is no artwork yet
     * @throws IOException if the disk fails; what is wrong with an artwork is a problem of the scene instead
     */
    public EaselScene read(WindowSketch window, Work work) throws IOException {
        return read(window, work, soFar -> work.checkpoint());
    }

    /** As {@link #read(WindowSketch, Work)}, and hands over what can be shown already: first the glass, then layer by layer. */
    public EaselScene read(WindowSketch window, Work work, Consumer<EaselScene> soFar) throws IOException {
        List<PanelReader> panels = window.panels().stream().map(panel -> new PanelReader(window.name(), panel, shelf)).toList();
        for (PanelReader panel : panels) {
            panel.readGlass(work);
        }
        for (PanelReader panel : panels) {
            for (int layer = 0; layer < panel.layerCount(); layer++) {
                soFar.accept(scene(window, panels));
                panel.readLayer(layer, work);
            }
        }
        soFar.accept(scene(window, panels));
        for (PanelReader panel : panels) {
            panel.readProblems(work);
        }
        mends = panels.stream().flatMap(panel -> panel.mends().stream()).toList();
        return scene(window, panels);
    }

    /** What could be mended in the window that was read last. */
    public List<PlacedMend> mends() {
        return mends;
    }

    private static EaselScene scene(WindowSketch window, List<PanelReader> panels) {
        List<Contour> outlines = new ArrayList<>();
        List<ScenePiece> pieces = new ArrayList<>();
        List<SceneLayer> layers = new ArrayList<>();
        List<Problem> problems = new ArrayList<>();
        for (PanelReader panel : panels) {
            outlines.addAll(panel.outlines());
            pieces.addAll(panel.pieces());
            layers.addAll(panel.layers());
            problems.addAll(panel.problems());
        }
        problems.sort(Problem.WORST_FIRST);
        double coverMm = window.panels().stream().mapToDouble(PanelSketch::coverMm).max().orElse(0);
        RectMm bounds = outlines.stream().map(Contour::bounds).reduce(RectMm::with).orElse(new RectMm(0, 0, 1, 1));
        return new EaselScene(window.name(), bounds, outlines, pieces, layers, problems, window.colourways(), new Metal(coverMm)).withHints(panels.stream().flatMap(panel -> panel.hints().stream()).toList());
    }
}
