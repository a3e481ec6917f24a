package saddlebar.trace.suspect;

import java.util.List;

/**
 * @param units    all that was counted
 * @param bad      flawed of these
 * @param suspects the clearest first; those too few to test last
 * @param measures the clearest first
 * @param cautions what a reader must know before acting on it, in words
 */
public record Findings(int units, int bad, List<Suspect> suspects, List<Measured> measures, List<String> cautions) {
    public Findings {
        suspects = List.copyOf(suspects);
        measures = List.copyOf(measures);
        cautions = List.copyOf(cautions);
    }
}
