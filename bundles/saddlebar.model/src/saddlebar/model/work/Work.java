package saddlebar.model.work;

/**
 * How long work tells what it has done and learns that it should stop. Core code takes one of these; the edges adapt it to a terminal's
 * bar or to the workbench. Implementations are safe to call from several threads at once.
 */
public interface Work {
    /** Nobody watches, nobody stops. */
    Work UNWATCHED = new Work() {
        @Override
        public void advance(long units) {
            // nobody watches
        }

        @Override
        public void checkpoint() {
            // nobody stops
        }
    };

    /** So many of the units that were agreed on are done. */
    void advance(long units);

    /**
     * Asked at most 0.1 s apart by every loop that can take long.
     *
     * @throws java.util.concurrent.CancellationException if the user asked to stop
     */
    void checkpoint();

    /** What is being done now, in the words of the trade; shown beside the bar. */
    default void say(String what) {
        // shown only where somebody looks
    }

    /**
     * A share of this work, handed to a step that counts in units of its own.
     *
     * @param share units of this work that the step is worth, at least 0
     * @param units units that the step will tell in all, at least 1
     */
    default Work part(long share, long units) {
        return new WorkPart(this, share, units);
    }
}
