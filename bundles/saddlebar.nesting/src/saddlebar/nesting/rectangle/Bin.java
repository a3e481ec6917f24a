package saddlebar.nesting.rectangle;

/**
 * A sheet to be filled, in grid steps with the gap added to both sides.
 *
 * @param kind   number of the kind of sheet
 * @param alongX its width
 * @param alongY its height
 * @param upward filled from its top down instead of from its left to the right
 */
public record Bin(int kind, long alongX, long alongY, boolean upward) {
    long across() {
        return upward ? alongX : alongY;
    }

    long along() {
        return upward ? alongY : alongX;
    }

    Bin filledUpward(boolean up) {
        return up == upward ? this : new Bin(kind, alongX, alongY, up);
    }
}
