package saddlebar.colour.picture;

import java.util.List;

import saddlebar.colour.Bradford;
import saddlebar.colour.Light;
import saddlebar.colour.PaintFilm;
import saddlebar.colour.PrintedGlass;
import saddlebar.colour.ScreenColour;
import saddlebar.colour.Spectrum;
import saddlebar.colour.Srgb;
import saddlebar.colour.Xyz;
import saddlebar.model.units.Require;

/**
 * The colours of one glass under every overlap of its paints, in the screen's linear light, from which each pixel of a picture is mixed. Light adds up over
 * the area (Neugebauer 1937, Demichel 1924; see {@link PrintedGlass}), and so does the screen's linear light: mixing the overlaps' colours by the dots'
 * shares is the same as mixing their spectra, at a hundredth of the cost. What the screen cannot show loses chroma overlap by overlap
 * ({@link ScreenColour}); mixtures then stay within the screen.
 */
public final class OverlapColours {
    private final int films;
    private final float[] linear;
    private final boolean outOfGamut;

    private OverlapColours(int films, float[] linear, boolean outOfGamut) {
        this.films = films;
        this.linear = linear;
        this.outOfGamut = outOfGamut;
    }

    /**
     * By spectra.
     *
     * @param plain     what the bare glass lets through, 0 to 1
     * @param films     what solids of the paints let through, at most {@value PrintedGlass#MOST_MATTS}
     * @param eyeIsUsed whether the eye is used to the light, so that the bare light is white; else it is used to daylight
     */
    public static OverlapColours of(Spectrum plain, List<PaintFilm> films, Light light, boolean eyeIsUsed) {
        Require.within("films", films.size(), 0, PrintedGlass.MOST_MATTS);
        Bradford toScreen = new Bradford(eyeIsUsed ? light.white() : Light.D65.white(), Srgb.WHITE);
        float[] linear = new float[3 << films.size()];
        boolean bareIsOut = false;
        for (int inks = 0; inks < 1 << films.size(); inks++) {
            Spectrum passed = plain;
            for (int ink = 0; ink < films.size(); ink++) {
                if ((inks >> ink & 1) == 1) {
                    passed = passed.times(films.get(ink).transmittance());
                }
            }
            Xyz seen = light.through(passed);
            ScreenColour colour = ScreenColour.of(toScreen.adapt(seen));
            bareIsOut |= inks == 0 && colour.outOfGamut();
            linear[3 * inks] = (float) colour.shown().red();
            linear[3 * inks + 1] = (float) colour.shown().green();
            linear[3 * inks + 2] = (float) colour.shown().blue();
        }
        return new OverlapColours(films.size(), linear, bareIsOut);
    }

    /**
     * By the screen's three channels, where no spectrum is known: each paint takes its share of each channel.
     *
     * @param bare  linear red, green, blue of the glass, 0 to 1
     * @param films for each paint the shares of red, green, blue that a solid lets through, 0 to 1
     */
    public static OverlapColours ofChannels(double[] bare, List<double[]> films) {
        Require.within("films", films.size(), 0, PrintedGlass.MOST_MATTS);
        float[] linear = new float[3 << films.size()];
        for (int inks = 0; inks < 1 << films.size(); inks++) {
            for (int channel = 0; channel < 3; channel++) {
                double passed = Require.within("bare", bare[channel], 0, 1);
                for (int ink = 0; ink < films.size(); ink++) {
                    passed *= (inks >> ink & 1) == 1 ? Require.within("film", films.get(ink)[channel], 0, 1) : 1;
                }
                linear[3 * inks + channel] = (float) passed;
            }
        }
        return new OverlapColours(films.size(), linear, false);
    }

    public int films() {
        return films;
    }

    /** Whether the bare glass is stronger than the screen can show. */
    public boolean outOfGamut() {
        return outOfGamut;
    }

    /** The bare glass, on the screen. */
    public Srgb bare() {
        return new Srgb(linear[0], linear[1], linear[2]);
    }

    /**
     * One pixel.
     *
     * @param covered share of the pixel that each paint covers, 0 to 1, one a film from {@code from} on
     * @param step    from one film's share to the next in {@code covered}
     * @param work    at least 3 * 2^films values; afterwards its first three are linear red, green, blue
     */
    public void mix(float[] covered, int from, int step, float[] work) {
        int active = 0;
        int only = -1;
        for (int film = 0; film < films; film++) {
            if (covered[from + film * step] > 0) {
                active++;
                only = film;
            }
        }
        if (active == 0) {
            System.arraycopy(linear, 0, work, 0, 3);
        } else if (active == 1) {
            float share = covered[from + only * step];
            int solid = 3 << only;
            for (int channel = 0; channel < 3; channel++) {
                work[channel] = linear[channel] + share * (linear[solid + channel] - linear[channel]);
            }
        } else {
            System.arraycopy(linear, 0, work, 0, 3 << only + 1);
            for (int film = only; film >= 0; film--) {
                float share = covered[from + film * step];
                int half = 3 << film;
                for (int i = 0; share > 0 && i < half; i++) {
                    work[i] += share * (work[i + half] - work[i]);
                }
            }
        }
    }
}
