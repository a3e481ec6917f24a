package saddlebar.trace.lineage;

/**
 * One layer on one piece that met something, as it stands now.
 *
 * @param pieceId  of the model
 * @param layerId  of the model; empty if the records tell none
 * @param window   its name
 * @param piece    its number
 * @param layer    its name; empty if the records tell none
 * @param time     1 for the first print of that layer on the piece, 2 after it was printed anew, …
 * @param state    where it stands
 * @param bad      whether a flaw was found on it
 */
public record ExposedPiece(String pieceId, String layerId, String window, String piece, String layer, int time, State state, boolean bad) {
    /** How far it came. */
    public enum State {
        PRINTED("printed"), FIRED("fired"), GLAZED("glazed"), FIXED("fixed"), TO_REMAKE("to remake"), REMADE("remade");

        private final String words;

        State(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** {@code W01/12/matt}, with {@code #2} for the second print and so on. */
    public String name() {
        return window + "/" + piece + (layer.isEmpty() ? "" : "/" + layer) + (time > 1 ? "#" + time : "");
    }
}
