package saddlebar.production.make;

import java.util.List;
import java.util.Objects;

import saddlebar.model.units.Require;

/**
 * What is asked to be made.
 *
 * @param windows names of the windows wanted; empty for all. Stencils that windows share and sheets are planned over the whole commission all
 *                the same
 * @param until   how far
 * @param afresh  make even what has not changed
 * @param hands   things made at once, 1 to 256; the bytes do not depend on it
 */
public record MakeRequest(List<String> windows, Stage until, boolean afresh, int hands) {
    public MakeRequest {
        windows = List.copyOf(windows);
        Objects.requireNonNull(until, "until");
        Require.within("hands", hands, 1, 256);
    }

    /** Everything that changed, with all the hands there are. */
    public static MakeRequest all() {
        return new MakeRequest(List.of(), Stage.CARDS, false, Math.min(256, Runtime.getRuntime().availableProcessors()));
    }

    boolean wants(String window) {
        return windows.isEmpty() || windows.contains(window);
    }
}
