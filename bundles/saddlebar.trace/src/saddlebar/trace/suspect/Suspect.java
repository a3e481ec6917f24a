package saddlebar.trace.suspect;

import java.util.List;
import java.util.Optional;

import saddlebar.trace.statistics.StratifiedOdds;
import saddlebar.trace.statistics.TwoByTwo;

/**
 * One suspect: one level, or several that always came together and cannot be told apart.
 *
 * @param levels   at least one, in order
 * @param table    flawed and good, with and without it
 * @param p        chance of so many flaws with it if it meant nothing (Fisher, one-sided); 1 if not tested
 * @param adjusted p adjusted for all that were tested (Benjamini and Hochberg)
 * @param standing what follows
 * @param within   odds within strata of the suspects before it, where it was looked at so
 * @param by       the suspects that explain it or cannot be separated from it
 */
public record Suspect(List<Level> levels, TwoByTwo table, double p, double adjusted, Standing standing, Optional<StratifiedOdds> within,
        List<Level> by) {
    public Suspect {
        levels = List.copyOf(levels);
        by = List.copyOf(by);
    }

    Suspect standing(Standing found, Optional<StratifiedOdds> strata, List<Level> explainedBy) {
        return new Suspect(levels, table, p, adjusted, found, strata, explainedBy);
    }

    Suspect adjusted(double value) {
        return new Suspect(levels, table, p, value, standing, within, by);
    }
}
