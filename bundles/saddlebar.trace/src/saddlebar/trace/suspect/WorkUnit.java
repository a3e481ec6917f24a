package saddlebar.trace.suspect;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * One layer on one piece, as it was made: what is counted when causes are looked for.
 *
 * @param id       of the unit, for lists
 * @param bad      whether it has a flaw
 * @param factors  what it went through: name of the factor (screen, mix, shelf place) to the one it was
 * @param measures numbers taken on the way (peakC, humidity, pull); only finite ones
 */
public record WorkUnit(String id, boolean bad, Map<String, String> factors, Map<String, Double> measures) {
    public WorkUnit {
        factors = Collections.unmodifiableMap(new LinkedHashMap<>(factors));
        measures = Collections.unmodifiableMap(new LinkedHashMap<>(measures));
        measures.forEach((name, value) -> {
            if (!Double.isFinite(value)) {
                throw new IllegalArgumentException("measure " + name + " of " + id + " must be finite but is " + value);
            }
        });
    }
}
