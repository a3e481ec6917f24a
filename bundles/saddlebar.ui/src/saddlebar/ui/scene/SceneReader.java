package saddlebar.ui.scene;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

import saddlebar.model.problem.Problem;
import saddlebar.model.work.Work;
import saddlebar.ui.easel.Contour;
import saddlebar.ui.easel.EaselScene;
import saddlebar.ui.easel.Metal;
import saddlebar.ui.easel.RectMm;
import saddlebar.ui.easel.SceneLayer;
import saddlebar.ui.easel.ScenePiece;
import saddlebar.ui.scene.WindowSketch.PanelSketch;

/** Lays a window on the Easel: artwork, pieces, layers, problems. Long work for a thread of its own. */
public final class SceneReader {
    private final ArtworkShelf shelf;

    public SceneReader(ArtworkShelf shelf) {
        this.shelf = shelf;
    }

    /** Units that {@link #read} tells. */
    public static long units(WindowSketch window) {
        return window.panels().size() * PanelReader.UNITS;
    }

    /**
     * @param work {@link #units} in all
     * @return the scene; empty where there is no artwork yet
     * @throws IOException if the disk fails; what is wrong with an artwork is a problem of the scene instead
     */
    public EaselScene read(WindowSketch window, Work work) throws IOException {
        List<Contour> outlines = new ArrayList<>();
        List<ScenePiece> pieces = new ArrayList<>();
        List<SceneLayer> layers = new ArrayList<>();
        List<Problem> problems = new ArrayList<>();
        double coverMm = 0;
        for (PanelSketch panel : window.panels()) {
            PanelReader reader = new PanelReader(window.name(), panel, shelf);
            reader.read(work);
            outlines.addAll(reader.outlines());
            pieces.addAll(reader.pieces());
            layers.addAll(reader.layers());
            problems.addAll(reader.problems());
            coverMm = Math.max(coverMm, panel.coverMm());
        }
        problems.sort(Problem.WORST_FIRST);
        RectMm bounds = outlines.stream().map(Contour::bounds).reduce(RectMm::with).orElse(new RectMm(0, 0, 1, 1));
        return new EaselScene(window.name(), bounds, outlines, pieces, layers, problems, window.colourways(), new Metal(coverMm));
    }
}
