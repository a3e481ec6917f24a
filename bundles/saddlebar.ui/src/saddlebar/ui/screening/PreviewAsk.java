package saddlebar.ui.screening;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

import saddlebar.stencil.ScreeningRecipe;
import saddlebar.production.light.WindowSketch.ArtPlace;
import saddlebar.stencil.limits.PictureMending;

/**
 * What a preview of dots is made from: plain values, taken from the model on the thread that owns it.
 *
 * @param art       the artwork
 * @param artLayer  its layer
 * @param screening how gray becomes dots
 * @param tone      how drawn gray becomes coverage
 * @param process   key of the stencil process
 * @param mirrored  whether left and right are exchanged
 * @param box       the layer's pieces on the page, in mm: left, top, right, bottom; empty: the whole page. Over it the range of tone is measured
 * @param place     middle of the preview on the page; empty: where the layer is nearest to half covered
 */
public record PreviewAsk(ArtPlace art, String artLayer, ScreeningRecipe screening, Optional<String> courseLayer, ToneWay tone,
        String process, boolean mirrored, Optional<Box> box, List<PictureMending.Wanted> mends, LimitsMm limits, Optional<PlaceMm> place) {
    /** A part of the page, mm. */
    public record Box(double leftMm, double topMm, double rightMm, double bottomMm) {
    }

    /** A place on the page, mm. */
    public record PlaceMm(double xMm, double yMm) {
    }

    /** Finest opening that prints and finest bridge that holds, mm; 0: not known. */
    public record LimitsMm(double openMm, double bridgeMm) {
    }

    public PreviewAsk {
        Objects.requireNonNull(courseLayer, "courseLayer");
        mends = List.copyOf(mends);
        Objects.requireNonNull(limits, "limits");
        Objects.requireNonNull(art, "art");
        Objects.requireNonNull(artLayer, "artLayer");
        Objects.requireNonNull(screening, "screening");
        Objects.requireNonNull(tone, "tone");
        Objects.requireNonNull(process, "process");
        Objects.requireNonNull(box, "box");
        Objects.requireNonNull(place, "place");
    }
}
