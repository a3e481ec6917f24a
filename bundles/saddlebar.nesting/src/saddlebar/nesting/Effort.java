package saddlebar.nesting;

import saddlebar.model.units.Require;

/** How long a search may go on. */
public sealed interface Effort {
    /** A fixed number of steps of the search, counted and not timed: the same input gives the same layout on every machine. */
    record Rounds(int rounds) implements Effort {
        public Rounds {
            Require.within("rounds", rounds, 0, 1_000_000);
        }
    }

    /** As good as can be found within a time by the clock; another run may end with another layout. */
    record Seconds(double seconds) implements Effort {
        public Seconds {
            Require.within("seconds", seconds, 0, 86_400);
        }
    }

    /** @param rounds 0 takes the first layout; 100 is about a second or two for 100 shapes */
    static Effort rounds(int rounds) {
        return new Rounds(rounds);
    }

    static Effort seconds(double seconds) {
        return new Seconds(seconds);
    }
}
