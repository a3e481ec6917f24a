package saddlebar.stencil.quality;

import java.util.Arrays;

import saddlebar.model.units.Require;
import saddlebar.model.units.Units;
import saddlebar.stencil.BitPicture;
import saddlebar.stencil.mesh.Eye;

/**
 * How even a screened flat tone is.
 *
 * @param toneError     painted share less the share that was asked for
 * @param grain         root mean square of the dots after the eye's filter at the viewing distance, in shares of full contrast; 0 is perfectly even
 * @param lowPower      mean power below half the principal frequency of blue noise of such dots; 1 is chance
 * @param anisotropyDb  the strongest anisotropy over annuli in which there is power; -10 lg(windows) favours no direction
 * @param repeatMm      period of the strongest wave that is slower than half the principal frequency
 * @param repeatPower   its power; 1 is chance
 */
public record ToneQuality(double toneError, double grain, double lowPower, double anisotropyDb, double repeatMm, double repeatPower) {
    private static final double SOME_POWER = 0.05;

    /**
     * Measures a picture.
     *
     * @param bits     a flat tone, not all bare nor all painted
     * @param asked    coverage that was asked for, between 0 and 1
     * @param dpi      px an inch
     * @param dotPx    pitch of the dots or cells in px, at least 1
     * @param distance of the eye
     * @param side     of the windows, a power of two
     */
    public static ToneQuality of(BitPicture bits, double asked, double dpi, double dotPx, Eye distance, int side) {
        Require.within("asked", asked, 0, 1);
        Require.within("dotPx", dotPx, 1, side);
        double painted = (double) bits.count() / bits.widthPx() / bits.heightPx();
        return of(Spectrum.of(bits, side), painted, asked, dpi, dotPx, distance, side);
    }

    static ToneQuality of(Spectrum spectrum, double painted, double asked, double dpi, double dotPx, Eye distance, int side) {
        double half = Math.max(2.0 / side, Spectrum.principalFrequency(painted) / dotPx / 2);
        double[] radial = spectrum.radial();
        double most = Arrays.stream(radial).max().orElse(0);
        double anisotropy = Double.NEGATIVE_INFINITY;
        for (int ring = 1; ring < radial.length; ring++) {
            if (radial[ring] > SOME_POWER * most) {
                anisotropy = Math.max(anisotropy, spectrum.anisotropyDb(ring));
            }
        }
        Spectrum.Repeat repeat = spectrum.worstRepeat(half);
        return new ToneQuality(painted - asked, grain(spectrum, painted, dpi, distance, side), spectrum.meanBetween(0, half), anisotropy,
                Units.mmOfPx(1, dpi) * repeat.periodPx(), repeat.power());
    }

    /** By Parseval: the sum of power times the squared sensitivity over its best. */
    private static double grain(Spectrum spectrum, double painted, double dpi, Eye eye, int side) {
        double sum = 0;
        for (int fy = 0; fy < side; fy++) {
            for (int fx = 0; fx < side; fx++) {
                if (fx == 0 && fy == 0) {
                    continue;
                }
                double f = Math.sqrt(Math.pow(Math.min(fx, side - fx), 2) + Math.pow(Math.min(fy, side - fy), 2)) / side;
                double seen = eye.seen(1, f * dpi / Units.MM_PER_INCH);
                sum += spectrum.powerAt(fx, fy) * seen * seen;
            }
        }
        return Math.sqrt(sum * painted * (1 - painted) / side / side);
    }
}
