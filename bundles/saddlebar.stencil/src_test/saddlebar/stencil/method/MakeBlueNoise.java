package saddlebar.stencil.method;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Writes the shipped threshold arrays anew: arguments: the folder of the resource, the side (64 or 128). */
public final class MakeBlueNoise {
    private MakeBlueNoise() {
    }

    public static void main(String[] args) throws IOException {
        int n = Integer.parseInt(args[1]);
        int[] ranks = VoidAndCluster.ranks(n, BlueNoiseMethod.SIGMA_DOTS, BlueNoiseMethod.SEED);
        StringBuilder text = new StringBuilder("# Made by VoidAndCluster: ranks of " + n + " x " + n + " dots, sigma " + BlueNoiseMethod.SIGMA_DOTS
                + ", seed " + BlueNoiseMethod.SEED + ". Method: Ulichney, Proc. SPIE 1913, 1993, 332-343.\n");
        for (int i = 0; i < ranks.length; i++) {
            text.append(ranks[i]).append(i % n == n - 1 ? '\n' : ' ');
        }
        Files.writeString(Path.of(args[0], "bluenoise-" + n + ".txt"), text);
    }
}
