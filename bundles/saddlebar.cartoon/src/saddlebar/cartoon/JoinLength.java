package saddlebar.cartoon;

import java.util.Objects;

import saddlebar.model.units.Require;

/**
 * How much of a panel's inner joints is joined in one way.
 *
 * @param join     what lies there
 * @param lengthMm of the joints, each counted once
 */
public record JoinLength(Join join, double lengthMm) {
    public JoinLength {
        Objects.requireNonNull(join, "join");
        Require.within("lengthMm", lengthMm, 0, 1e9);
    }
}
