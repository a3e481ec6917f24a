package saddlebar.kiln.paint;

import java.util.Objects;

import saddlebar.kiln.glass.Vft;
import saddlebar.model.units.Require;

/**
 * A paint as the kiln sees it: a flux that must flow enough and not too much.
 * <p>Where no viscosity of the flux is known, it is the float glass's curve moved so that it is 10^7 Pa s (between 10^6.5 and 10^7.5) in the
 * middle of the maturing range. The trade tells that range as peaks of ordinary firings; one with a soak of 10 minutes does as much as about 20
 * minutes
 * at its peak, the way up and down counted in (18.4 for 300 K/h up and 240 K/h down, more in a slow kiln). So the window of heat work reaches from 20
 * minutes at the low
 * end to 20 minutes at the high end. The ranges of the studio's table are common practice without a source, the 10^7 Pa s a studio setting: fire a
 * strip of tests and put in what you find.
 *
 * @param name          as in the studio's table
 * @param kind          what it is for
 * @param maturingFromC low end of the range
 * @param maturingToC   high end
 * @param flux          viscosity of the flux
 */
public record PaintFlux(String name, PaintKind kind, double maturingFromC, double maturingToC, Vft flux) {
    /** What an ordinary firing comes to, as seconds at its peak. */
    public static final double SOAK_S = 1200;
    public static final double LOG_MATURE = 7;

    public PaintFlux {
        Require.text("name", name);
        Objects.requireNonNull(kind, "kind");
        Require.within("maturingFromC", maturingFromC, 300, 1200);
        Require.within("maturingToC", maturingToC, Math.nextUp(maturingFromC), 1300);
        Objects.requireNonNull(flux, "flux");
    }

    /** A paint of which only the range is known. */
    public static PaintFlux of(String name, PaintKind kind, double fromC, double toC, Vft shape) {
        double middle = (fromC + toC) / 2;
        return new PaintFlux(name, kind, fromC, toC, shape.shifted(middle - shape.temperatureC(LOG_MATURE)));
    }

    /** Least Phi that matures it, 1/Pa. */
    public double leastPhi() {
        return SOAK_S * flux.fluidity(maturingFromC);
    }

    /** Phi beyond which lines sink and colour burns, 1/Pa. */
    public double mostPhi() {
        return SOAK_S * flux.fluidity(maturingToC);
    }

    /** What a heat work does to it. */
    public Maturity at(double phi) {
        return phi < leastPhi() ? Maturity.UNDERFIRED : phi > mostPhi() ? Maturity.BURNT : Maturity.MATURE;
    }

    /** State of a paint after its firings. */
    public enum Maturity {
        UNDERFIRED("underfired"), MATURE("mature"), BURNT("burnt out");

        private final String words;

        Maturity(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }
}
