package saddlebar.materials.metal;

import java.util.List;

/**
 * One way to cut a stock length.
 *
 * @param lengthsHmm of the pieces, longest first
 * @param times      stock lengths cut so
 * @param restHmm    what is left of each, after the pieces and their kerfs
 */
public record CutPattern(List<Long> lengthsHmm, int times, long restHmm) {
    public CutPattern {
        lengthsHmm = List.copyOf(lengthsHmm);
    }
}
