package saddlebar.stencil.tone;

import saddlebar.model.art.GrayCoding;

/** How much light a code value of a gray band stands for: 0 black to 1 white. */
public final class Light {
    private Light() {
    }

    public static double of(int code, GrayCoding coding) {
        return 1 - Darkness.of(code, coding);
    }
}
