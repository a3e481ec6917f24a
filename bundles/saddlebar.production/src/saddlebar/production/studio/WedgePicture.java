package saddlebar.production.studio;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

import saddlebar.artwork.Artwork;
import saddlebar.artwork.ArtworkReaders;
import saddlebar.artwork.LayerChoice;
import saddlebar.artwork.RasterRequest;
import saddlebar.artwork.ReadSettings;
import saddlebar.model.art.GrayCoding;
import saddlebar.model.units.Units;
import saddlebar.model.work.Work;
import saddlebar.stencil.wedge.WedgeLayout;
import saddlebar.stencil.wedge.WedgePhotograph;

/** A photograph of a wedge on a light box, read from its file. */
public final class WedgePicture {
    /** Enough for patches of a few mm, and little enough to be held. */
    private static final double LONG_SIDE_PX = 2000;

    private WedgePicture() {
    }

    /**
     * Reads it.
     *
     * @param known       densities of the steps in the wedge's window, from its left end; empty if none lie there
     * @param knownStepMm width of one of them
     * @throws saddlebar.model.problem.Refusal if no such wedge is found in it
     */
    public static WedgePhotograph.Read read(ArtworkReaders readers, Path file, WedgeLayout layout, List<Double> known, double knownStepMm, Work work)
            throws IOException {
        try (Artwork picture = readers.read(file, ReadSettings.asDrawn())) {
            double dpi = LONG_SIDE_PX / Math.max(picture.widthMm(), picture.heightMm()) * Units.MM_PER_INCH;
            RasterRequest place = RasterRequest.ofPage(picture, dpi, GrayCoding.SRGB_LUMINANCE);
            return WedgePhotograph.read(picture.gray(LayerChoice.all(), place, work.part(0, place.heightPx())), layout, known, knownStepMm);
        }
    }
}
