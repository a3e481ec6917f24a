package saddlebar.stencil.quality;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

import saddlebar.model.units.Require;
import saddlebar.model.units.Units;
import saddlebar.model.work.Work;
import saddlebar.stencil.ActualScreen;
import saddlebar.stencil.BitPicture;
import saddlebar.stencil.ScreeningMethod;
import saddlebar.stencil.ScreeningRecipe;
import saddlebar.stencil.mesh.Eye;
import saddlebar.stencil.wedge.FlatTone;

/**
 * How even a recipe is over its tones: each is screened flat and measured ({@link ToneQuality}). For comparing recipes, not a pass or fail of glass.
 *
 * @param recipe     what was measured
 * @param distanceM  from which grain was judged
 * @param cyclesPerMmARing width of an annulus of the spectra, cycles a mm
 * @param patches    in the order of the tones; without those that are all bare or all solid
 */
public record QualityRun(ScreeningRecipe recipe, double distanceM, double cyclesPerMmARing, List<PatchQuality> patches) {
    /** Tones that a wedge shows, without its ends, where there are no dots. */
    public static final List<Double> TONES = List.of(0.02, 0.05, 0.1, 0.2, 0.25, 0.3, 0.4, 0.5, 0.6, 0.7, 0.75, 0.8, 0.9, 0.95, 0.98);
    /** Px along a window of the spectrum: at 1200 an inch 11 mm, which holds 17 cells of 40 an inch. */
    static final int SIDE_PX = 512;
    private static final int PICTURE_PX = 2 * SIDE_PX;

    public QualityRun {
        Require.within("distanceM", distanceM, 0.1, 100);
        patches = List.copyOf(patches);
    }

    /**
     * Measures.
     *
     * @param tones each above 0 and below 1
     * @param work  told one unit a tone
     */
    public static QualityRun of(ScreeningMethod method, ScreeningRecipe recipe, List<Double> tones, double distanceM, Work work) throws IOException {
        Eye eye = new Eye(distanceM);
        double dotPx = Math.max(1, Math.min(SIDE_PX, dotPx(method.actual(recipe), recipe)));
        List<PatchQuality> patches = new ArrayList<>();
        for (double tone : tones) {
            work.checkpoint();
            Require.within("tone", tone, 1e-4, 1 - 1e-4);
            BitPicture bits = FlatTone.bits(method, recipe, tone, PICTURE_PX, PICTURE_PX);
            double painted = (double) bits.count() / PICTURE_PX / PICTURE_PX;
            if (painted > 0 && painted < 1) {
                Spectrum spectrum = Spectrum.of(bits, SIDE_PX);
                patches.add(new PatchQuality(tone, painted, ToneQuality.of(spectrum, painted, tone, recipe.dpi(), dotPx, eye, SIDE_PX), spectrum.radial()));
            }
            work.advance(1);
        }
        return new QualityRun(recipe, distanceM, recipe.dpi() / Units.MM_PER_INCH / SIDE_PX, patches);
    }

    private static double dotPx(ActualScreen actual, ScreeningRecipe recipe) {
        return actual.lpi().isPresent() ? recipe.dpi() / actual.lpi().getAsDouble() : actual.dotMm().orElse(recipe.dotMm()) * recipe.dpi() / Units.MM_PER_INCH;
    }

    /** Largest difference of painted and asked. */
    public double worstToneError() {
        return patches.stream().mapToDouble(patch -> Math.abs(patch.quality().toneError())).max().orElse(0);
    }

    /** Most grain of any tone at the distance, as a share of the step from bare to solid. */
    public double mostGrain() {
        return patches.stream().mapToDouble(patch -> patch.quality().grain()).max().orElse(0);
    }
}
