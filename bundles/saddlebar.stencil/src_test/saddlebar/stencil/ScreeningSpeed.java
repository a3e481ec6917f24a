package saddlebar.stencil;

import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.Locale;

import saddlebar.stencil.limits.LimitsCheck;
import saddlebar.stencil.limits.LimitsFound;
import saddlebar.stencil.tone.ToneTable;

/**
 * Measures the screening kernels, Mpx/s on one thread, on a band of a tabloid sheet at 1200 dpi (13200 px wide): a ramp with noise. Not a test:
 * run its main. Argument: rounds, 7 if not given; the median is told.
 */
public final class ScreeningSpeed {
    private static final int WIDTH = 13200;
    private static final int ROWS = 1200;

    private ScreeningSpeed() {
    }

    public static void main(String[] args) {
        int rounds = args.length > 0 ? Integer.parseInt(args[0]) : 7;
        byte[] gray = new byte[WIDTH * ROWS];
        byte[] noise = Fields.noise(gray.length, 1);
        for (int i = 0; i < gray.length; i++) {
            gray[i] = (byte) Math.max(0, Math.min(255, i % WIDTH * 256 / WIDTH + noise[i] / 8));
        }
        ScreeningRecipe recipe = ScreeningRecipe.withDefaults();
        PrintStream out = System.out;
        measure(out, "am 40 lpi 22.5 deg", "am", recipe, gray, rounds);
        measure(out, "am 40 lpi 0 deg", "am", recipe.withAngleDeg(0), gray, rounds);
        measure(out, "am 133 lpi 45 deg", "am", recipe.withLpi(133).withAngleDeg(45), gray, rounds);
        measure(out, "floyd-steinberg 1 px", "diffusion", recipe.withDotMm(0.021), gray, rounds);
        measure(out, "floyd-steinberg 12 px", "diffusion", recipe, gray, rounds);
        measure(out, "jarvis-judice-ninke 1 px", "diffusion", recipe.withDotMm(0.021).withFilter("jarvis-judice-ninke"), gray, rounds);
        measure(out, "ostromoukhov 1 px", "diffusion", recipe.withDotMm(0.021).withFilter("ostromoukhov"), gray, rounds);
        measure(out, "bluenoise 1 px", "bluenoise", recipe.withDotMm(0.021), gray, rounds);
        measure(out, "greennoise 1 px", "greennoise", recipe.withDotMm(0.021), gray, rounds);
        measure(out, "solid", "solid", recipe, gray, rounds);
        limits(out, "limits of 8 px on am 40 lpi", "am", recipe, gray, 0.163, 0.15);
        limits(out, "limits of 8 px on 12 px dots", "diffusion", recipe, gray, 0.163, 0.15);
        limits(out, "limits of 47 px on am 40 lpi", "am", recipe, gray, 1, 1);
    }

    /** Time that this thread had a processor, so that a busy machine does not count. */
    private static long cpuNanos() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    private static void measure(PrintStream out, String what, String method, ScreeningRecipe recipe, byte[] gray, int rounds) {
        double[] mpxPerS = new double[rounds];
        int rowsAtOnce = 24;
        byte[] band = new byte[rowsAtOnce * WIDTH];
        long[] bits = new long[rowsAtOnce * ((WIDTH + 63) >> 6)];
        long painted = 0;
        for (int round = 0; round < rounds; round++) {
            Screener screener = ScreeningMethods.ownMethods().method(method).start(recipe, ToneTable.linear(), WIDTH, ROWS);
            long nanos = 0;
            painted = 0;
            for (int row = 0; row < ROWS; row += rowsAtOnce) {
                System.arraycopy(gray, row * WIDTH, band, 0, band.length);
                long start = cpuNanos();
                screener.screen(band, rowsAtOnce, bits);
                nanos += cpuNanos() - start;
                for (long word : bits) {
                    painted += Long.bitCount(word);
                }
            }
            mpxPerS[round] = 1e3 * WIDTH * ROWS / nanos;
        }
        Arrays.sort(mpxPerS);
        out.printf(Locale.ROOT, "%-26s %8.0f Mpx/s (best %.0f), %.4f painted%n", what, mpxPerS[rounds / 2], mpxPerS[rounds - 1],
                (double) painted / WIDTH / ROWS);
    }

    private static void limits(PrintStream out, String what, String method, ScreeningRecipe recipe, byte[] gray, double openMm, double bridgeMm) {
        long[] bits = new long[ROWS * ((WIDTH + 63) >> 6)];
        Screener screener = ScreeningMethods.ownMethods().method(method).start(recipe, ToneTable.linear(), WIDTH, ROWS);
        for (int i = 0; i < gray.length; i++) {
            gray[i] = (byte) (i % WIDTH * 256 / WIDTH); // without noise
        }
        screener.screen(gray, ROWS, bits);
        for (int round = 0; round < 3; round++) {
            long start = cpuNanos();
            LimitsCheck check = new LimitsCheck(WIDTH, ROWS, recipe.dpi(), openMm, bridgeMm);
            check.add(bits, ROWS);
            LimitsFound found = check.finish();
            out.printf(Locale.ROOT, "%-26s %8.0f Mpx/s, %d too fine, %d bridges lost, %d islands of %.0f cells%n", what,
                    1e3 * WIDTH * ROWS / (cpuNanos() - start), found.tooFine(), found.bridgesLost(), found.looseIslands(),
                    WIDTH * ROWS / 900.0);
        }
    }
}
