package saddlebar.stencil.method;

import java.util.Arrays;

import saddlebar.stencil.DiffusionFilter;

/**
 * Where error goes and how much of it: for tap i, {@code dx[i]} px on in the direction of scanning, {@code dy[i]} rows down, {@code weight[i]}
 * of {@code divisor}.
 */
record Spread(int[] dx, int[] dy, int[] weight, int divisor) {
    Spread {
        if (dx.length != dy.length || dx.length != weight.length || Arrays.stream(weight).sum() != divisor) {
            throw new IllegalArgumentException("weights " + Arrays.toString(weight) + " do not add up to " + divisor);
        }
    }

    /** The fixed weights of a filter; ostromoukhov has none. */
    static Spread of(DiffusionFilter filter) {
        return switch (filter) {
            case FLOYD_STEINBERG -> rows(16, new int[] {7}, new int[] {3, 5, 1});
            case JARVIS_JUDICE_NINKE -> rows(48, new int[] {7, 5}, new int[] {3, 5, 7, 5, 3}, new int[] {1, 3, 5, 3, 1});
            case STUCKI -> rows(42, new int[] {8, 4}, new int[] {2, 4, 8, 4, 2}, new int[] {1, 2, 4, 2, 1});
            case OSTROMOUKHOV -> throw new IllegalArgumentException("the weights of ostromoukhov go by tone");
        };
    }

    /** @param lines weights right of the px, then those of each row below, centred */
    private static Spread rows(int divisor, int[]... lines) {
        int taps = Arrays.stream(lines).mapToInt(line -> line.length).sum();
        int[] dx = new int[taps];
        int[] dy = new int[taps];
        int[] weight = new int[taps];
        int tap = 0;
        for (int row = 0; row < lines.length; row++) {
            int first = row == 0 ? 1 : -(lines[row].length / 2);
            for (int i = 0; i < lines[row].length; i++) {
                dx[tap] = first + i;
                dy[tap] = row;
                weight[tap++] = lines[row][i];
            }
        }
        return new Spread(dx, dy, weight, divisor);
    }
}
