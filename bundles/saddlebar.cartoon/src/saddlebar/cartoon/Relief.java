package saddlebar.cartoon;

import java.util.List;
import java.util.Objects;

import saddlebar.model.art.DrawnLine;
import saddlebar.model.problem.PlaceMm;
import saddlebar.model.units.Require;

/**
 * A proposal of how the glass comes out of a deep inside curve.
 *
 * @param piece   number of the piece
 * @param kind    scores in the waste, or a joint in the drawing
 * @param at      deepest point of the curve
 * @param lines   in mm; scores from the edge of the glass inwards, in the order in which they are broken out
 * @param message one sentence
 */
public record Relief(int piece, Kind kind, PlaceMm at, List<DrawnLine> lines, String message) {
    /** What kind of line is proposed. */
    public enum Kind {
        /** Scores in the waste: each breaks out one crescent, until the curve itself is left. */
        RELIEF_CUTS("relief-cuts"),
        /** A line of the drawing that parts the piece in its deepest place. */
        JOINT("joint");

        private final String key;

        Kind(String key) {
            this.key = key;
        }

        /** The word in lists, never changed. */
        public String key() {
            return key;
        }
    }

    public Relief {
        Require.within("piece", piece, 1, 1_000_000);
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(at, "at");
        lines = List.copyOf(lines);
        Require.within("lines", lines.size(), 1, 1000);
        Require.text("message", message);
    }

    Relief ofPiece(int number) {
        return new Relief(number, kind, at, lines, message.replace("Piece " + piece + ":", "Piece " + number + ":"));
    }
}
