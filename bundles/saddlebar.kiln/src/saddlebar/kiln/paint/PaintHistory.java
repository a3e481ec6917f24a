package saddlebar.kiln.paint;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import saddlebar.kiln.schedule.HeatCurve;
import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Severity;

/**
 * The layers of one piece and all its firings, in order. A layer gathers the heat work of the firing it is laid for and of each one after it, always
 * with the viscosity of its own flux. Firing trace and matt at the same heat is everyday practice; we warn only when the sum leaves a layer's window.
 */
public final class PaintHistory {
    private final List<Fired> firings;

    private PaintHistory(List<Fired> firings) {
        this.firings = firings;
    }

    /** One firing: what was new on the glass, and what the glass went through. */
    public record Fired(String name, List<PaintFlux> newLayers, HeatCurve curve) {
        public Fired {
            newLayers = List.copyOf(newLayers);
        }
    }

    /**
     * A layer after all firings.
     *
     * @param paint     which
     * @param firstIn   index of the firing it was laid for
     * @param phi       heat work since, 1/Pa, with its own flux
     * @param lastShare share of it that the last firing gave
     * @param moreSuch  how many more firings like the last one it bears, 0 if none
     */
    public record Layer(PaintFlux paint, int firstIn, double phi, double lastShare, int moreSuch) {
        public PaintFlux.Maturity maturity() {
            return paint.at(phi);
        }
    }

    public static PaintHistory of(List<Fired> firings) {
        return new PaintHistory(List.copyOf(firings));
    }

    public List<Layer> layers() {
        List<Layer> layers = new ArrayList<>();
        for (int i = 0; i < firings.size(); i++) {
            for (PaintFlux paint : firings.get(i).newLayers()) {
                double phi = 0;
                double last = 0;
                for (int k = i; k < firings.size(); k++) {
                    last = HeatWork.of(firings.get(k).curve(), paint.flux());
                    phi += last;
                }
                int more = last <= 0 ? 99 : (int) Math.max(0, Math.min(99, Math.floor((paint.mostPhi() - phi) / last)));
                layers.add(new Layer(paint, i, phi, phi == 0 ? 0 : last / phi, more));
            }
        }
        return layers;
    }

    /** What the last of the firings would do to each layer: a warning before it burns out or stays raw, a note when it bears no more. */
    public List<Problem> cautions() {
        List<Problem> found = new ArrayList<>();
        for (Layer layer : layers()) {
            String where = layer.paint().name();
            boolean earlier = layer.firstIn() < firings.size() - 1;
            double equivalent = HeatWork.equivalentC(Math.max(layer.phi(), 1e-30), PaintFlux.SOAK_S, layer.paint().flux());
            String sum = String.format(Locale.ROOT,
                    "its heat work of %d firing%s is that of an ordinary firing with a peak of %.0f degC, its range is %.0f to %.0f degC",
                    firings.size() - layer.firstIn(), firings.size() - layer.firstIn() == 1 ? "" : "s", equivalent, layer.paint().maturingFromC(),
                    layer.paint().maturingToC());
            if (layer.maturity() == PaintFlux.Maturity.BURNT) {
                found.add(Problem.of(earlier ? "earlier-layer-burns" : "paint-overfired", Severity.WARNING, where,
                        "Lines may sink and colour burn out: " + sum + "; lower the peak or shorten its soak."));
            } else if (layer.maturity() == PaintFlux.Maturity.UNDERFIRED) {
                found.add(Problem.of("paint-underfired", Severity.WARNING, where,
                        "It will stay raw and rub off: " + sum + "; raise the peak or lengthen its soak."));
            } else {
                found.add(Problem.of("paint-matures", Severity.NOTE, where, "It matures: " + sum + (layer.moreSuch() == 0
                        ? "; one more such firing would burn it out."
                        : String.format(Locale.ROOT, "; it bears %d more such firing%s.", layer.moreSuch(),
                                layer.moreSuch() == 1 ? "" : "s"))));
            }
        }
        return found;
    }
}
