package saddlebar.kiln.shelf;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Severity;
import saddlebar.model.units.Require;

/**
 * Cold and hot places of a shelf, from witnesses (cones, test tiles, a second thermocouple) of several firings. A firing as a whole runs hot or cold, and
 * not every firing has a witness everywhere: so the readings are taken as firing + place, fitted by least squares over all of them (two-way layout
 * without interaction, unbalanced), and only the places' part is told.
 */
public final class ShelfPlaces {
    private static final int MOST_ROUNDS = 2000;
    private static final double LEAST_K = 3;
    private static final double CLEAR = 2;
    private static final int LEAST_WITNESSES = 3;

    private final Map<String, Place> places;
    private final double residualSd;

    private ShelfPlaces(Map<String, Place> places, double residualSd) {
        this.places = places;
        this.residualSd = residualSd;
    }

    /** One witness: which firing, where on the shelf, what it showed in degC. */
    public record Witness(String firing, String place, double shownC) {
        public Witness {
            Require.text("firing", firing);
            Require.text("place", place);
            Require.within("shownC", shownC, -50, 1500);
        }
    }

    /**
     * A place against the mean of all places.
     *
     * @param offK          hotter (positive) or cooler, K
     * @param standardError of it; NaN if it cannot be told
     * @param witnesses     how many
     */
    public record Place(String name, double offK, double standardError, int witnesses) {
        /** Three witnesses or more, 3 K or more, and two standard errors. */
        public boolean clear() {
            return witnesses >= LEAST_WITNESSES && Math.abs(offK) >= LEAST_K && Math.abs(offK) > CLEAR * standardError;
        }
    }

    public static ShelfPlaces of(List<Witness> witnesses) {
        Map<String, Double> firing = new TreeMap<>();
        Map<String, Double> place = new TreeMap<>();
        Map<String, Integer> perPlace = new TreeMap<>();
        Map<String, Integer> perFiring = new TreeMap<>();
        for (Witness w : witnesses) {
            firing.put(w.firing(), 0.0);
            place.put(w.place(), 0.0);
            perPlace.merge(w.place(), 1, Integer::sum);
            perFiring.merge(w.firing(), 1, Integer::sum);
        }
        for (int round = 0; round < MOST_ROUNDS; round++) { // each in turn takes the mean of what the other leaves: converges to least squares
            double change = settle(witnesses, firing, place, perFiring, true) + settle(witnesses, place, firing, perPlace, false);
            if (change < 1e-10) {
                break;
            }
        }
        double mean = place.values().stream().mapToDouble(Double::doubleValue).average().orElse(0);
        double rest = 0;
        for (Witness w : witnesses) {
            double off = w.shownC() - firing.get(w.firing()) - place.get(w.place());
            rest += off * off;
        }
        int spare = witnesses.size() - firing.size() - place.size() + 1;
        double sd = spare > 0 ? Math.sqrt(rest / spare) : Double.NaN;
        Map<String, Place> places = new TreeMap<>();
        place.forEach((name, value) -> places.put(name, new Place(name, value - mean, sd / Math.sqrt(perPlace.get(name)), perPlace.get(name))));
        return new ShelfPlaces(places, sd);
    }

    private static double settle(List<Witness> witnesses, Map<String, Double> mine, Map<String, Double> other, Map<String, Integer> counts,
            boolean firings) {
        Map<String, Double> sums = new TreeMap<>();
        for (Witness w : witnesses) {
            String key = firings ? w.firing() : w.place();
            sums.merge(key, w.shownC() - other.get(firings ? w.place() : w.firing()), Double::sum);
        }
        double change = 0;
        for (Map.Entry<String, Double> sum : sums.entrySet()) {
            double value = sum.getValue() / counts.get(sum.getKey());
            change = Math.max(change, Math.abs(value - mine.put(sum.getKey(), value)));
        }
        return change;
    }

    /** By name. */
    public List<Place> places() {
        return new ArrayList<>(places.values());
    }

    /** Scatter of one witness, K; NaN if it cannot be told. */
    public double residualSd() {
        return residualSd;
    }

    public List<Problem> cautions() {
        List<Problem> found = new ArrayList<>();
        for (Place place : places.values()) {
            if (place.clear()) {
                found.add(Problem.of(place.offK() > 0 ? "hot-place" : "cold-place", Severity.WARNING, place.name(), String.format(Locale.ROOT,
                        "%d witnesses: %.1f K %s than the shelf on the whole (+-%.1f); lay %s there.", place.witnesses(), Math.abs(place.offK()),
                        place.offK() > 0 ? "hotter" : "cooler", place.standardError(),
                        place.offK() > 0 ? "what matures hottest" : "what matures lowest")));
            }
        }
        return found;
    }
}
